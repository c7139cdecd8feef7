// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"

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
  void show_notes(const std::vector<QString>& texts);
  void choose(LimitId id);

  MachineDocument& document_;
  std::array<LadderWidget*, 3> ladders_{};
  QLabel* not_computed_ = nullptr;
  QVBoxLayout* notes_layout_ = nullptr;
  std::vector<QLabel*> notes_;
};

} // namespace feedwright
