// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"

#include <QStringList>
#include <QWidget>

#include <array>
#include <vector>

class QLabel;
class QVBoxLayout;

namespace feedwright {

class LadderWidget;

/// Every limit of the selected axis on its scale, and what deserves care. A bar is a door to the
/// part and field it comes from, and to its working.
class LimitsView : public QWidget {
  Q_OBJECT
public:
  explicit LimitsView(MachineDocument& document, QWidget* parent = nullptr);

signals:
  void limit_chosen(feedwright::LimitId id);

private:
  void refresh();
  void show_faults();
  void show_results(const AxisResults& results);
  void choose(LimitId id);

  /// Plain sentences one below the other; labels are kept and used again.
  struct Notes {
    QVBoxLayout* layout = nullptr;
    std::vector<QLabel*> labels = {};
  };
  void show_notes(Notes& notes, const QStringList& texts);

  MachineDocument& document_;
  std::array<LadderWidget*, 3> ladders_{};
  QLabel* not_computed_ = nullptr;
  Notes grave_;    ///< above the ladders: not to be missed
  Notes ordinary_; ///< below them
};

} // namespace feedwright
