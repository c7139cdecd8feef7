// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"

#include <QWidget>

class QListWidget;
class QPushButton;

namespace feedwright {

/// The machine and its axes down the edge: what governs each, and the feed it reaches against the
/// one wanted.
class AxesPanel : public QWidget {
  Q_OBJECT
public:
  explicit AxesPanel(MachineDocument& document, QWidget* parent = nullptr);

signals:
  void add_axis_wanted();

private:
  void refresh();
  void take_selection();
  void choose(int row);

  MachineDocument& document_;
  QListWidget* list_ = nullptr;
  bool filling_ = false;
};

} // namespace feedwright
