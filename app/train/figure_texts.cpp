// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/figure_texts.h"

#include <QStringList>

#include <initializer_list>

namespace feedwright {

namespace {

FigureText of(const ShownAxis& axis, const QString& text, PartSlot slot,
              std::initializer_list<const char*> members) {
  FigureText made{text, {}};
  for (const char* member : members) {
    if (field_of(axis.machine, axis.number, slot, member)) {
      made.figures.push_back({slot, QString::fromLatin1(member), axis.shown(slot, member)});
    }
  }
  return made;
}

} // namespace

std::vector<FigureText> figure_texts(const TrainGeometry& train, const ShownAxis& axis) {
  const bool stage = train.belt.has_value();
  std::vector<FigureText> all{
      of(axis, train.travel_text.words, PartSlot::axis, {"travel"}),
      of(axis, train.lying_text, PartSlot::axis, {"incline"}),
      of(axis, train.cut_text, PartSlot::targets, {"thrust"}),
      of(axis, train.supply_text, PartSlot::supply, {"voltage"}),
      of(axis, train.controller_text, PartSlot::controller, {"step_rate_limit"}),
      of(axis, train.sides_text, PartSlot::sides, {"spacing"}),
      of(axis, train.motor_text, PartSlot::motor, {"frame", "holding_torque", "continuous_torque"}),
      stage ? of(axis, train.transmission_text, PartSlot::transmission,
                 {"motor_pulley_teeth", "screw_pulley_teeth", "profile", "width", "belt_teeth"})
            : of(axis, train.transmission_text, PartSlot::transmission,
                 {"profile", "width", "belt_teeth"}),
      of(axis, train.screw_text, PartSlot::drive,
         {"nominal_diameter", "lead", "core_diameter", "profile", "width", "belt_length",
          "pulley_teeth"}),
      of(axis, train.carriage_text, PartSlot::carriage, {"mass", "counterbalance"}),
      of(axis, train.guides_text, PartSlot::guides, {"friction"})};
  if (!train.haul) {
    all.push_back(of(axis, train.span_text.words, PartSlot::drive, {"span"}));
  }
  return all;
}

} // namespace feedwright
