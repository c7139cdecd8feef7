// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/swap_words.h"

#include "text/words.h"

#include <QCoreApplication>

namespace feedwright::swap_words {

namespace {

struct SwapWords {
  Q_DECLARE_TR_FUNCTIONS(SwapWords)
};

constexpr const char* ids[] = {"coupling",
                               "belt_stage",
                               "belt_loop",
                               "add_idler",
                               "remove_idler",
                               "one_side",
                               "two_motors",
                               "one_motor",
                               "screw",
                               "hauling_belt",
                               "screw_turns",
                               "nut_turns",
                               "motor_end_fixed",
                               "motor_end_supported",
                               "motor_end_free",
                               "far_end_fixed",
                               "far_end_supported",
                               "far_end_free",
                               "stepper_by_points",
                               "stepper_by_ratings",
                               "servo",
                               "brake",
                               "no_brake",
                               "add_load_case"};

QString chosen(const char* member, const char* choice) {
  return words::choice_name(member, choice);
}

QString of_transmission(const Swap& swap) {
  switch (swap.kind) {
  case SwapKind::coupling: return words::part_type_title(part_type_name<Coupling>);
  case SwapKind::belt_stage: return words::part_type_title(part_type_name<BeltStage>);
  case SwapKind::belt_loop: return words::part_type_title(part_type_name<BeltLoopDrive>);
  case SwapKind::add_idler: return SwapWords::tr("one more idler pulley");
  default: return SwapWords::tr("without pulley %1", "its number").arg(swap.pulley + 1);
  }
}

QString of_drive(SwapKind kind) {
  switch (kind) {
  case SwapKind::screw: return words::part_type_title(part_type_name<Screw>);
  case SwapKind::hauling_belt: return words::part_type_title(part_type_name<HaulingBelt>);
  case SwapKind::screw_turns: return SwapWords::tr("the screw turns");
  case SwapKind::nut_turns: return SwapWords::tr("the nut turns");
  case SwapKind::motor_end_fixed: return chosen("motor_end", "fixed");
  case SwapKind::motor_end_supported: return chosen("motor_end", "supported");
  case SwapKind::motor_end_free: return chosen("motor_end", "free");
  case SwapKind::far_end_fixed: return chosen("far_end", "fixed");
  case SwapKind::far_end_supported: return chosen("far_end", "supported");
  default: return chosen("far_end", "free");
  }
}

} // namespace

QString title(const Swap& swap) {
  switch (swap.kind) {
  case SwapKind::coupling:
  case SwapKind::belt_stage:
  case SwapKind::belt_loop:
  case SwapKind::add_idler:
  case SwapKind::remove_idler: return of_transmission(swap);
  case SwapKind::one_side: return chosen("layout", "one");
  case SwapKind::two_motors: return chosen("layout", "two_motors");
  case SwapKind::one_motor: return chosen("layout", "one_motor");
  case SwapKind::stepper_by_points: return words::part_type_title(part_type_name<StepperByPoints>);
  case SwapKind::stepper_by_ratings:
    return words::part_type_title(part_type_name<StepperByRatings>);
  case SwapKind::servo: return words::part_type_title(part_type_name<Servo>);
  case SwapKind::brake: return SwapWords::tr("with a brake");
  case SwapKind::no_brake: return SwapWords::tr("without a brake");
  case SwapKind::add_load_case: return SwapWords::tr("one more load case");
  default: return of_drive(swap.kind);
  }
}

PartSlot slot_of(SwapKind kind) {
  if (kind <= SwapKind::remove_idler) {
    return PartSlot::transmission;
  }
  if (kind <= SwapKind::one_motor) {
    return PartSlot::sides;
  }
  if (kind <= SwapKind::far_end_free) {
    return PartSlot::drive;
  }
  if (kind <= SwapKind::servo) {
    return PartSlot::motor;
  }
  return kind == SwapKind::add_load_case ? PartSlot::duty : PartSlot::carriage;
}

QString step(const Swap& swap, const Axis& axis) {
  const bool at_motor =
      swap.kind >= SwapKind::motor_end_fixed && swap.kind <= SwapKind::motor_end_free;
  const bool at_far = swap.kind >= SwapKind::far_end_fixed && swap.kind <= SwapKind::far_end_free;
  const QString part = at_motor ? words::field_name(PartSlot::drive, "motor_end")
                       : at_far ? words::field_name(PartSlot::drive, "far_end")
                                : words::part_name(slot_of(swap.kind));
  return SwapWords::tr("%1 %2: %3", "axis letter, part, what it became")
      .arg(QString::fromStdString(axis.basics.letter), part, title(swap));
}

QString id(const Swap& swap) {
  const QString name = QString::fromLatin1(ids[static_cast<std::size_t>(swap.kind)]);
  return swap.kind == SwapKind::remove_idler ? name + QString::number(swap.pulley + 1) : name;
}

} // namespace feedwright::swap_words
