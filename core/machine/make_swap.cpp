// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/make_swap.h"

#include "machine/swap_belts.h"
#include "mechanics/rotor.h"
#include "units/literals.h"

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

using namespace literals;

/// One axis changed part by part, each field with where its value comes from.
class Swapper {
public:
  Swapper(Machine& machine, std::size_t axis, const SwapAids& aids, bool remember)
      : machine_(machine), number_(axis), aids_(aids), remember_(remember) {}

  /// False if the loop cannot be laid out.
  bool make(const Swap& swap) {
    switch (swap.kind) {
    case SwapKind::coupling: return tie_with(part_type_name<Coupling>);
    case SwapKind::belt_stage: return tie_with(part_type_name<BeltStage>);
    case SwapKind::belt_loop: return tie_with_loop(false);
    case SwapKind::add_idler: return change_loop(with_idler(loop(), aids_.stock));
    case SwapKind::remove_idler:
      return change_loop(without_idler(loop(), swap.pulley, aids_.stock));
    case SwapKind::one_side: return lay_out(DriveLayout::one);
    case SwapKind::two_motors: return lay_out(DriveLayout::two_motors);
    case SwapKind::one_motor: return lay_out_round_one_motor();
    case SwapKind::screw: return put_screw();
    case SwapKind::hauling_belt: return put_hauling_belt();
    case SwapKind::screw_turns: return put(PartSlot::drive, "driven", std::string("screw"));
    case SwapKind::nut_turns: return turn_nut();
    case SwapKind::brake: return put(PartSlot::carriage, "brake", true);
    case SwapKind::no_brake: return put(PartSlot::carriage, "brake", false);
    case SwapKind::add_load_case: return add_load_case();
    case SwapKind::stepper_by_points: return put_motor(part_type_name<StepperByPoints>);
    case SwapKind::stepper_by_ratings: return put_motor(part_type_name<StepperByRatings>);
    case SwapKind::servo: return put_motor(part_type_name<Servo>);
    default: return hold_end(swap.kind);
    }
  }

private:
  Axis& axis() { return machine_.axes.at(number_); }
  BeltLoopDrive& loop() { return std::get<BeltLoopDrive>(axis().transmission); }

  /// What was asked for counts as entered; figures and counts that only have to go with it are the
  /// program's own, and say so.
  bool put(PartSlot slot, std::string_view member, const FieldValue& value) {
    const bool asked_for =
        std::holds_alternative<std::string>(value) || std::holds_alternative<bool>(value);
    return set_field(machine_, number_, slot, member, value,
                     {{}, asked_for ? Origin::entered : Origin::preset});
  }

  /// A part of this session that stood there before and that `wanted` accepts; the latest.
  template <class Part, class Variant>
  const Part* remembered(Variant Axis::*place, const auto& wanted) const {
    if (!remember_) {
      return nullptr;
    }
    for (auto at = aids_.made.rbegin(); at != aids_.made.rend(); ++at) {
      const SwapStep& step = *at;
      const Part* part = std::get_if<Part>(&(step.before.*place));
      if (part != nullptr && wanted(*part)) {
        return part;
      }
    }
    return nullptr;
  }

  /// Screws no longer wound against each other, where nothing can hold them so.
  bool share() {
    return axis().sides.pairing == Pairing::share ||
           put(PartSlot::sides, "pairing", std::string("share"));
  }

  bool set_layout(DriveLayout layout) {
    if (axis().sides.layout == layout) {
      return true;
    }
    const auto name = fields::Names<DriveLayout>::list[static_cast<std::size_t>(layout)];
    return put(PartSlot::sides, "layout", std::string(name));
  }

  /// Teeth of motor and screw in what ties them now.
  LoopWish present_teeth() {
    LoopWish wish;
    if (const auto* stage = std::get_if<BeltStage>(&axis().transmission)) {
      wish.motor_teeth = stage->motor_pulley_teeth;
      wish.screw_teeth = stage->screw_pulley_teeth;
    } else if (std::holds_alternative<BeltLoopDrive>(axis().transmission)) {
      for (const LoopMember& pulley : loop().pulleys) {
        if (pulley.role == PulleyRole::motor && pulley.teeth > 0) {
          wish.motor_teeth = pulley.teeth;
        } else if (pulley.role == PulleyRole::screw && pulley.teeth > 0) {
          wish.screw_teeth = pulley.teeth;
        }
      }
    }
    return wish;
  }

  BeltBody present_belt() {
    const BeltBody* belt = belt_of(axis().transmission);
    return belt != nullptr ? *belt : BeltBody();
  }

  bool loops_two_screws() {
    const auto* drive = std::get_if<BeltLoopDrive>(&axis().transmission);
    return drive != nullptr &&
           std::ranges::count(drive->pulleys, PulleyRole::screw, &LoopMember::role) == 2;
  }

  /// A coupling or two pulleys. Two screws then want a motor each.
  bool tie_with(std::string_view type) {
    if (axis().sides.layout == DriveLayout::one_motor) {
      set_layout(DriveLayout::two_motors);
      share();
    }
    return tie_one_screw_with(type);
  }

  bool tie_one_screw_with(std::string_view type) {
    if (type == part_type_name<Coupling>) {
      const auto* before =
          remembered<Coupling>(&Axis::transmission, [](const auto&) { return true; });
      before != nullptr ? void(axis().transmission = *before)
                        : void(set_part_type(machine_, number_, PartSlot::transmission, type));
      return true;
    }
    const auto* before =
        remembered<BeltStage>(&Axis::transmission, [](const auto&) { return true; });
    if (before != nullptr) {
      axis().transmission = *before;
      return true;
    }
    const LoopWish teeth = present_teeth();
    const BeltBody belt = present_belt();
    set_part_type(machine_, number_, PartSlot::transmission, type);
    auto& stage = std::get<BeltStage>(axis().transmission);
    static_cast<BeltBody&>(stage) = belt;
    stage.heard_note.reset(); // it was another span's
    stage.notes.entries.erase("heard_note");
    put(PartSlot::transmission, "motor_pulley_teeth", std::int64_t{teeth.motor_teeth});
    put(PartSlot::transmission, "screw_pulley_teeth", std::int64_t{teeth.screw_teeth});
    return put(PartSlot::transmission, "belt_teeth",
               std::int64_t{stage_belt_teeth(stage, aids_.stock)});
  }

  /// A loop to one screw or to two; with two the sides' spacing is what it spans.
  bool tie_with_loop(bool two_screws) {
    const auto as_many = [two_screws](const BeltLoopDrive& drive) {
      return (std::ranges::count(drive.pulleys, PulleyRole::screw, &LoopMember::role) == 2) ==
             two_screws;
    };
    if (const auto* before = remembered<BeltLoopDrive>(&Axis::transmission, as_many)) {
      axis().transmission = *before;
      return true;
    }
    LoopWish wish = present_teeth();
    if (two_screws) {
      wish.spacing = **axis().sides.spacing;
    }
    auto made = laid_out_loop(present_belt(), wish, aids_.stock);
    if (!made) {
      return false;
    }
    set_part_type(machine_, number_, PartSlot::transmission, part_type_name<BeltLoopDrive>);
    return change_loop(std::move(made));
  }

  /// Puts a loop's pulleys, slide and belt in place; the belt's other figures keep their notes.
  bool change_loop(std::optional<BeltLoopDrive> made) {
    if (!made) {
      return false;
    }
    made->notes = loop().notes;
    for (const char* member : {"pulleys", "belt_teeth", "sliding_pulley", "slide_direction",
                               "slide_back", "slide_forth", "heard_note"}) {
      made->notes.entries.erase(member);
    }
    loop() = *std::move(made);
    return put(PartSlot::transmission, "belt_teeth", std::int64_t{loop().belt_teeth});
  }

  /// One side, or a motor to each of two.
  bool lay_out(DriveLayout layout) {
    set_layout(layout);
    share();
    const bool crosses = *axis().sides.cross_travel > Length();
    if (layout == DriveLayout::one && crosses && !axis().guides.block_spacing) {
      put(PartSlot::guides, "block_spacing", any(usual_block_spacing));
    }
    if (layout == DriveLayout::two_motors && crosses) {
      give_spacing();
    }
    return !loops_two_screws() || tie_one_screw_with(part_type_name<BeltStage>);
  }

  bool lay_out_round_one_motor() {
    set_layout(DriveLayout::one_motor);
    give_spacing();
    return loops_two_screws() || tie_with_loop(true);
  }

  void give_spacing() {
    if (!axis().sides.spacing) {
      put(PartSlot::sides, "spacing",
          any(std::max(usual_spacing, Length(*axis().sides.cross_travel + 100_mm))));
    }
  }

  bool put_screw() {
    const auto* before = remembered<Screw>(&Axis::drive, [](const auto&) { return true; });
    if (before != nullptr) {
      axis().drive = *before;
      return true;
    }
    const AxisBasics& basics = axis().basics;
    const Length start = basics.nut_at_start ? **basics.nut_at_start : 75_mm;
    const Length span = start + *basics.travel + 75_mm;
    set_part_type(machine_, number_, PartSlot::drive, part_type_name<Screw>);
    return put(PartSlot::drive, "span", any(up_to_ten(span)));
  }

  bool put_hauling_belt() {
    share();
    const auto* before = remembered<HaulingBelt>(&Axis::drive, [](const auto&) { return true; });
    if (before != nullptr) {
      axis().drive = *before;
      return true;
    }
    const auto* screw = std::get_if<Screw>(&axis().drive);
    const Length span = screw != nullptr ? *screw->span : *axis().basics.travel;
    set_part_type(machine_, number_, PartSlot::drive, part_type_name<HaulingBelt>);
    const auto& belt = std::get<HaulingBelt>(axis().drive);
    const Length run = std::max(span, Length(*axis().basics.travel + 100_mm));
    return put(PartSlot::drive, "belt_length",
               any(up_to_ten(2.0 * run + double(belt.pulley_teeth) * *belt.pitch)));
  }

  static Length up_to_ten(Length length) {
    return from_si<Length>(std::ceil(si_value(length) * 1e2 - 1e-9) * 1e-2);
  }

  /// A turning nut wants its inertia: a steel ring of usual size, three diameters long and two and
  /// a half across, with its pulley as much again. Common practice, no source.
  bool turn_nut() {
    const auto& screw = std::get<Screw>(axis().drive);
    if (!screw.nut_inertia) {
      const Length inner = *screw.nominal_diameter;
      const Inertia ring =
          cylinder_inertia(*screw.density, Length(3.0 * inner), Length(2.5 * inner)) -
          cylinder_inertia(*screw.density, Length(3.0 * inner), inner);
      const double grid = 1e-6; // kg·m²: the hundredth of a kg·cm²
      const double rounded = std::max(grid, std::round(2.0 * si_value(ring) / grid) * grid);
      put(PartSlot::drive, "nut_inertia", any(from_si<Inertia>(rounded)));
    }
    return put(PartSlot::drive, "driven", std::string("nut"));
  }

  bool hold_end(SwapKind kind) {
    const bool at_motor = kind <= SwapKind::motor_end_free;
    const auto first = at_motor ? SwapKind::motor_end_fixed : SwapKind::far_end_fixed;
    const auto support = static_cast<std::size_t>(kind) - static_cast<std::size_t>(first);
    put(PartSlot::drive, at_motor ? "motor_end" : "far_end",
        std::string(fields::Names<EndSupport>::list[support]));
    const auto& screw = std::get<Screw>(axis().drive);
    const bool both = screw.motor_end == EndSupport::fixed && screw.far_end == EndSupport::fixed;
    return both || *screw.stretch == Force() || put(PartSlot::drive, "stretch", any(Force()));
  }

  bool put_motor(std::string_view type) {
    for (auto at = aids_.made.rbegin(); at != aids_.made.rend(); ++at) {
      const SwapStep& step = *at;
      const bool same = std::visit(
          [&](const auto& motor) {
            return part_type_name<std::remove_cvref_t<decltype(motor)>> == type;
          },
          step.before.motor);
      if (remember_ && same) {
        axis().motor = step.before.motor;
        return true;
      }
    }
    return set_part_type(machine_, number_, PartSlot::motor, type);
  }

  bool add_load_case() {
    LoadCase made;
    const Targets& targets = axis().targets;
    if (targets.thrust) {
      made.thrust = NonNegative<Force>::of(**targets.thrust);
    }
    if (targets.cutting_feed) {
      made.feed = *targets.cutting_feed;
    }
    axis().duty.load_cases.push_back(made);
    axis().duty.notes.entries.erase("load_cases");
    return true;
  }

  static constexpr Length usual_spacing = 300_mm;
  static constexpr Length usual_block_spacing = 200_mm;

  Machine& machine_;
  std::size_t number_;
  const SwapAids& aids_;
  bool remember_;
};

} // namespace

bool make_swap(Machine& machine, std::size_t axis, const Swap& swap, const SwapAids& aids,
               bool remember) {
  return Swapper(machine, axis, aids, remember).make(swap);
}

} // namespace feedwright
