// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/train_tips.h"

#include "limits/number_text.h"
#include "text/words.h"

#include <QCoreApplication>
#include <QStringList>

namespace feedwright::train_tips {

namespace {

struct TrainTips {
  Q_DECLARE_TR_FUNCTIONS(Train)
};

QString words_about_transmission(const TrainGeometry& train) {
  QStringList said{train.transmission_text};
  if (train.loop) {
    for (std::size_t i = 0; i < train.loop->pulleys.size(); ++i) {
      const LoopPulleyDrawing& pulley = train.loop->pulleys[i];
      said << TrainTips::tr("pulley %1: %2", "number, what it is").arg(i + 1).arg(pulley.text);
    }
    if (train.loop->belt.isEmpty()) {
      said << TrainTips::tr("The belt does not fit round the pulleys.");
    }
  }
  return said.join(QLatin1Char('\n'));
}

QString words_about(const TrainGeometry& train, PartSlot slot) {
  switch (slot) {
  case PartSlot::supply: return train.supply_text;
  case PartSlot::controller: return train.controller_text;
  case PartSlot::axis: return train.travel_text.words;
  case PartSlot::targets: return train.cut_text;
  case PartSlot::duty: return train.duty_text;
  case PartSlot::carriage: return train.carriage_text;
  case PartSlot::guides: return train.guides_text;
  case PartSlot::sides:
    return train.opposed_text.isEmpty() ? train.sides_text
                                        : train.sides_text + QLatin1Char('\n') + train.opposed_text;
  case PartSlot::motor: return train.motor_text;
  case PartSlot::transmission: return words_about_transmission(train);
  case PartSlot::spindle: return words::part_name(slot);
  case PartSlot::drive: break;
  }
  QStringList said{train.screw_text};
  if (!train.nut_text.isEmpty()) {
    said << train.nut_text;
  }
  said << train.span_text.words;
  if (train.whip) {
    said << train.whip->text;
    if (train.whip->nearness) {
      said << TrainTips::tr("the wanted feed turns it at %1 % of that")
                  .arg(number_text(100.0 * *train.whip->nearness, 3));
    }
  }
  return said.join(QLatin1Char('\n'));
}

} // namespace

QString about(const TrainGeometry& train, PartSlot slot) {
  QString text = words_about(train, slot);
  if (train.governing && train.governing->slot == slot) {
    text += QLatin1Char('\n') +
            TrainTips::tr("%1: %2", "what governs: verdict")
                .arg(train.governing->text, words::verdict_word(train.governing->verdict));
  }
  for (const GoverningMark& mark : train.also) {
    if (mark.slot == slot) {
      text += QLatin1Char('\n') + mark.text;
    }
  }
  return text;
}

} // namespace feedwright::train_tips
