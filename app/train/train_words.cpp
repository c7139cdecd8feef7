// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/train_words.h"

#include "text/printed_words.h"
#include "text/words.h"

#include <QCoreApplication>
#include <QStringList>

namespace feedwright {

QString ShownAxis::shown(PartSlot slot, std::string_view member) const {
  const auto field = field_of(machine, number, slot, member);
  const bool missing = !field || std::holds_alternative<std::monostate>(field->value);
  return missing ? QString() : words::left_to_right(words::field_value(*field));
}

namespace train_words {

namespace {

struct Train {
  Q_DECLARE_TR_FUNCTIONS(Train)
};

} // namespace

QString title(const ShownAxis& axis) {
  const AxisBasics& basics = axis.axis().basics;
  const QString letter = QString::fromStdString(basics.letter);
  return basics.name.empty() ? letter
                             : Train::tr("%1 · %2", "axis letter, axis name")
                                   .arg(letter, QString::fromStdString(basics.name));
}

QString screw(const ShownAxis& axis) {
  return Train::tr("Ø %1 × %2, core %3", "nominal diameter × lead, core diameter")
      .arg(axis.shown(PartSlot::drive, "nominal_diameter"), axis.shown(PartSlot::drive, "lead"),
           axis.shown(PartSlot::drive, "core_diameter"));
}

QString hauling_belt(const ShownAxis& axis) {
  return Train::tr("hauling belt %1, %2 × %3, pulleys %4 z", "profile, width, length, teeth")
      .arg(axis.shown(PartSlot::drive, "profile"), axis.shown(PartSlot::drive, "width"),
           axis.shown(PartSlot::drive, "belt_length"), axis.shown(PartSlot::drive, "pulley_teeth"));
}

QString nut(const Screw& screw) {
  QStringList said;
  if (screw.driven == DrivenMember::nut) {
    said << Train::tr("nut turns");
  }
  if (screw.nuts == NutArrangement::preloaded_pair) {
    said << Train::tr("two nuts, preloaded");
  }
  return said.join(QStringLiteral(", "));
}

QString sides(const ShownAxis& shown) {
  const Axis& axis = shown.axis();
  const bool screws = std::holds_alternative<Screw>(axis.drive);
  if (axis.sides.layout == DriveLayout::one) {
    return screws ? Train::tr("1 screw") : Train::tr("1 hauling belt");
  }
  QStringList said{screws ? Train::tr("2 screws") : Train::tr("2 hauling belts")};
  if (axis.sides.spacing) {
    said << Train::tr("%1 apart", "distance").arg(shown.shown(PartSlot::sides, "spacing"));
  }
  said << (axis.sides.layout == DriveLayout::two_motors ? Train::tr("2 motors")
                                                        : Train::tr("1 motor"));
  return said.join(QStringLiteral(", "));
}

QString opposed() {
  return Train::tr("wound against each other", "two screws");
}

QString duty(const DutyCycle& duty) {
  QStringList said;
  if (!duty.load_cases.empty()) {
    said << Train::tr("load cases %1", "how many").arg(duty.load_cases.size());
  }
  if (!duty.moves.empty()) {
    said << Train::tr("moves %1", "how many without cutting").arg(duty.moves.size());
  }
  return said.isEmpty() ? Train::tr("no duty cycle given")
                        : Train::tr("duty: %1").arg(said.join(QStringLiteral(", ")));
}

QString carriage(const ShownAxis& axis) {
  QStringList said{axis.shown(PartSlot::carriage, "mass")};
  if (axis.axis().carriage.brake) {
    said << Train::tr("brake");
  }
  if (*axis.axis().carriage.counterbalance > Force()) {
    said << Train::tr("counterbalance %1").arg(axis.shown(PartSlot::carriage, "counterbalance"));
  }
  return said.join(QLatin1Char('\n'));
}

QString transmission(const ShownAxis& axis) {
  const auto* belt = std::get_if<BeltStage>(&axis.axis().transmission);
  if (belt == nullptr) {
    return Train::tr("coupling");
  }
  return Train::tr("%1 : %2 teeth", "teeth of the motor's pulley : of the screw's pulley")
             .arg(belt->motor_pulley_teeth)
             .arg(belt->screw_pulley_teeth) +
         QLatin1Char('\n') +
         Train::tr("belt %1, %2, %3 teeth", "profile, width, number of teeth")
             .arg(QString::fromStdString(belt->profile),
                  axis.shown(PartSlot::transmission, "width"))
             .arg(belt->belt_teeth);
}

} // namespace train_words
} // namespace feedwright
