// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"

#include <QWidget>

class QLineEdit;
class QPlainTextEdit;

namespace feedwright {

/// The machine's own name and notes.
class MachineForm : public QWidget {
  Q_OBJECT
public:
  explicit MachineForm(MachineDocument& document, QWidget* parent = nullptr);

  void refresh();
  /// Takes the name as it is typed.
  void hand_in();

private:
  void take_name();
  void take_notes();

  MachineDocument& document_;
  QLineEdit* name_ = nullptr;
  QPlainTextEdit* notes_ = nullptr;
};

} // namespace feedwright
