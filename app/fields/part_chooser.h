// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"

#include <QComboBox>

namespace feedwright {

/// The parts of the chosen axis and the machine, to choose from; says where something typed waits.
class PartChooser : public QComboBox {
  Q_OBJECT
public:
  explicit PartChooser(MachineDocument& document, QWidget* parent = nullptr);

  void refresh();

private:
  void add(PartSlot slot, const QString& name, bool waits);

  MachineDocument& document_;
};

} // namespace feedwright
