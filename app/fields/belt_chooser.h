// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "machine/belt_choices.h"

#include <QWidget>

class QComboBox;

namespace feedwright {

/// Offers the belts round about the chosen one, each with where its pulleys would stand.
class BeltChooser : public QWidget {
  Q_OBJECT
public:
  BeltChooser(MachineDocument& document, const std::vector<StockBelts>& stock, QWidget* parent);

  void refresh();

private:
  QString said(const BeltChoice& choice, bool loop) const;
  void choose(int index);

  MachineDocument& document_;
  const std::vector<StockBelts>& stock_;
  QComboBox* box_ = nullptr;
};

} // namespace feedwright
