// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "studies/typed_length.h"

class QPushButton;

namespace feedwright {

/// Makes the whole axis longer in one step: what its travel grows by is typed, what all becomes
/// with it is told, and a press does it.
class LengthenRow : public TypedLength {
  Q_OBJECT
public:
  explicit LengthenRow(MachineDocument& document, QWidget* parent = nullptr);

  /// What is typed is judged anew against the axis as it is now; of another axis it is given up.
  void show_axis();

protected:
  void keyPressEvent(QKeyEvent* event) override;

private:
  std::optional<Length> typed();
  void judge();
  void lengthen();

  MachineDocument& document_;
  QPushButton* button_ = nullptr;
  std::size_t axis_ = 0;
};

} // namespace feedwright
