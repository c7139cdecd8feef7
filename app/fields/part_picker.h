// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/part_shelf.h"

#include <QWidget>

class QComboBox;

namespace feedwright {

/// Offers what the parts lists have for a place of the machine; typing narrows the offer.
class PartPicker : public QWidget {
  Q_OBJECT
public:
  PartPicker(const PartShelf& shelf, PartSlot slot, QWidget* parent);

  /// Whether there is anything to offer.
  bool has_parts() const;
  /// Offers what the shelf has now.
  void refill();

signals:
  void picked(const feedwright::ListedPart& part);

private:
  void fill();
  void choose(int index);

  const PartShelf& shelf_;
  PartSlot slot_;
  QComboBox* box_ = nullptr;
};

} // namespace feedwright
