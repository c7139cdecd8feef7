// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/belt_chooser.h"

#include "fields/wheel_guard.h"
#include "text/words.h"

#include <QComboBox>
#include <QHBoxLayout>

namespace feedwright {

BeltChooser::BeltChooser(MachineDocument& document, const std::vector<StockBelts>& stock,
                         QWidget* parent)
    : QWidget(parent), document_(document), stock_(stock) {
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  box_ = new QComboBox(this);
  box_->setObjectName(QStringLiteral("belt_chooser"));
  box_->setAccessibleName(tr("Belts round about"));
  box_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  new WheelGuard(box_);
  layout->addWidget(box_);
  setFocusProxy(box_);
  connect(box_, &QComboBox::activated, this, &BeltChooser::choose);
  refresh();
}

QString BeltChooser::said(const BeltChoice& choice, bool loop) const {
  const Unit& unit = document_.units().unit_of(Kind::length, "mm");
  const QString place = words::quantity(any(choice.place), unit.symbol, 5);
  const QString text = loop ? tr("%1 teeth: slide at %2").arg(choice.teeth).arg(place)
                            : tr("%1 teeth: centres %2 apart").arg(choice.teeth).arg(place);
  return choice.in_stock ? tr("%1, usually in stock", "belt").arg(text) : text;
}

void BeltChooser::refresh() {
  const Axis* axis = document_.current_axis();
  if (axis == nullptr) {
    return;
  }
  constexpr int each_way = 6;
  const auto choices = belts_round_about(axis->transmission, stock_, each_way);
  const auto* stage = std::get_if<BeltStage>(&axis->transmission);
  const auto* loop = std::get_if<BeltLoopDrive>(&axis->transmission);
  const int present = stage != nullptr ? stage->belt_teeth : loop != nullptr ? loop->belt_teeth : 0;
  box_->clear();
  for (const BeltChoice& choice : choices) {
    box_->addItem(said(choice, loop != nullptr), choice.teeth);
  }
  box_->setCurrentIndex(box_->findData(present));
  setVisible(box_->count() > 0);
}

void BeltChooser::choose(int index) {
  const auto teeth = static_cast<std::int64_t>(box_->itemData(index).toInt());
  document_.edit_field(document_.selection().axis, PartSlot::transmission, "belt_teeth", teeth,
                       {{}, Origin::entered});
}

} // namespace feedwright
