// SPDX-License-Identifier: GPL-3.0-or-later

// What would do: each remedy does what it says, and no smaller change of its sort does.

#include "core/choosing/choosing_support.h"
#include "core/sizing/random_trains.h"
#include "sizing/finding_weight.h"
#include "units/read_quantity.h"

#include <set>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::by_field;
using feedwright::testing::Dice;
using feedwright::testing::listed_parts;
using feedwright::testing::remedies_of;
using feedwright::testing::sample_machine;
using feedwright::testing::screw_of;
using feedwright::testing::si_after;

namespace {

constexpr unsigned seed = 20240611;

/// Asks enough of a machine that something is over or close.
Machine strained(Dice& dice) {
  Machine machine = testing::random_train(dice);
  Axis& axis = machine.axes[0];
  Targets& targets = axis.targets;
  targets.feed = dice.of<Positive<Velocity>>(0.02, 0.4);
  targets.acceleration = dice.of<Positive<Acceleration>>(0.2, 3.0);
  targets.cutting_feed = dice.of<Positive<Velocity>>(0.01, 0.1);
  targets.thrust = dice.of<Positive<Force>>(50.0, 900.0);
  targets.resolution = dice.of<Positive<Length>>(2e-6, 30e-6);
  targets.lost_motion = dice.of<Positive<Length>>(10e-6, 60e-6);
  machine.supply.power = dice.of<Positive<Power>>(20.0, 300.0);
  machine.supply.voltage_limit = dice.of<Positive<Voltage>>(50.0, 80.0);
  if (auto* screw = std::get_if<Screw>(&axis.drive)) {
    screw->backlash = dice.of<NonNegative<Length>>(5e-6, 1e-4);
    screw->bearing_thrust_limit = dice.of<Positive<Force>>(200.0, 3000.0);
    screw->static_rating = dice.of<Positive<Force>>(1e3, 20e3);
  }
  return machine;
}

double goal(const Limit& limit) {
  return limit.verdict == Verdict::close ? 1.2 : 1.0;
}

bool well(const Limit& limit, double margin) {
  return !limit.applies || (limit.margin && *limit.margin >= margin - 1e-9);
}

bool same(const Limit& a, const Limit& b) {
  return a.applies == b.applies && a.margin == b.margin && a.reached == b.reached &&
         a.wanted == b.wanted && a.verdict == b.verdict;
}

/// Calls `check(machine, limit before, remedy)` for every remedy of many strained machines.
template <class Check>
int over_many(int machines, std::span<const ListedPart> parts, Check&& check) {
  Dice dice(seed);
  int remedies_seen = 0;
  for (int i = 0; i < machines; ++i) {
    const Machine machine = strained(dice);
    const AxisResults now = size_axis(machine, machine.axes[0]);
    for (const LimitId id : limits_in_trouble(now)) {
      for (const Remedy& remedy : remedies_of(machine, id, parts)) {
        CAPTURE(i, descriptor(id).name,
                remedy.changes.empty() ? std::string() : std::string(remedy.changes[0].member));
        check(machine, now.limit(id), remedy);
        ++remedies_seen;
      }
    }
  }
  return remedies_seen;
}

} // namespace

TEST_CASE("a remedy taken gives exactly what it promises and is sound") {
  const auto parts = listed_parts();
  const int seen =
      over_many(60, parts, [&](const Machine& machine, const Limit& before, const Remedy& remedy) {
        const auto changed = with_remedy(machine, 0, remedy, parts);
        REQUIRE(changed);
        REQUIRE(faults_of(*changed).empty());
        const AxisResults after = size_axis(*changed, changed->axes[0]);
        CHECK(well(after.limit(before.id), goal(before)));
        for (const LimitDescriptor& about : limit_descriptors()) {
          CHECK(same(after.limit(about.id), remedy.limit(about.id)));
        }
        if (descriptor(before.id).scale == LimitScale::feed) {
          CHECK(remedy.governing == after.governing);
        }
      });
  CHECK(seen > 300);
}

TEST_CASE("what a remedy makes worse is told, and such remedies come last") {
  const auto parts = listed_parts();
  Dice dice(seed);
  int moved = 0;
  int fallen_back = 0;
  for (int i = 0; i < 60; ++i) {
    const Machine machine = strained(dice);
    const AxisResults now = size_axis(machine, machine.axes[0]);
    for (const LimitId id : limits_in_trouble(now)) {
      bool worse_before = false;
      for (const Remedy& remedy : remedies_of(machine, id, parts)) {
        const auto changed = with_remedy(machine, 0, remedy, parts);
        REQUIRE(changed);
        const AxisResults after = size_axis(*changed, changed->axes[0]);
        std::set<LimitId> over;
        std::set<LimitId> further;
        for (const LimitDescriptor& about : limit_descriptors()) {
          const auto is_over = [&](const AxisResults& r) {
            return r.limit(about.id).applies && r.limit(about.id).verdict == Verdict::over;
          };
          if (is_over(after) && !is_over(now)) {
            over.insert(about.id);
          }
          if (is_over(after) && is_over(now) &&
              *after.limit(about.id).margin < 0.98 * *now.limit(about.id).margin) {
            further.insert(about.id);
          }
        }
        std::set<LimitId> told;
        for (const AxisLimit& limit : remedy.newly_over) {
          told.insert(limit.id);
        }
        CHECK(over == told);
        std::set<LimitId> told_further;
        for (const AxisLimit& limit : remedy.further_over) {
          told_further.insert(limit.id);
        }
        CHECK(further == told_further);
        fallen_back += further.empty() ? 0 : 1;
        const bool worse = remedy.outcome == RemedyOutcome::moves_trouble;
        CHECK(worse == (!remedy.newly_over.empty() || !remedy.further_over.empty() ||
                        !remedy.newly_grave.empty()));
        CHECK((remedy.outcome != RemedyOutcome::all_well || remedy.newly_open.empty()));
        CHECK((worse || !worse_before));
        worse_before = worse_before || worse;
        moved += worse ? 1 : 0;
      }
    }
  }
  CHECK(moved > 20);
  CHECK(fallen_back > 0);
}

TEST_CASE("one step less of a length, a mass or a force would not do") {
  // The steps a builder works to; the machines speak in the usual units.
  struct Stepped {
    PartSlot slot;
    std::string_view member;
    double step;
    bool less;
  };
  constexpr Stepped steps[] = {{PartSlot::drive, "span", 1e-3, true},
                               {PartSlot::carriage, "mass", 0.1, true},
                               {PartSlot::targets, "thrust", 1.0, true},
                               {PartSlot::targets, "acceleration", 0.01, true},
                               {PartSlot::supply, "power", 10.0, false}};
  int checked = 0;
  over_many(120, {}, [&](const Machine& machine, const Limit& before, const Remedy& remedy) {
    const FieldChange& change = remedy.changes.at(0);
    for (const Stepped& stepped : steps) {
      // Of small values the steps are finer.
      const bool mine = change.slot == stepped.slot && change.member == stepped.member &&
                        std::get<AnyQuantity>(change.before).si > 100.0 * stepped.step;
      if (!mine) {
        continue;
      }
      const double shown = si_after(remedy) / stepped.step;
      CHECK(shown == Approx(std::round(shown)).epsilon(1e-9));
      Machine nearly = machine;
      const double back = si_after(remedy) + (stepped.less ? stepped.step : -stepped.step);
      const double was = std::get<AnyQuantity>(change.before).si;
      if (stepped.less ? back >= was : back <= was) {
        continue;
      }
      REQUIRE(set_field(nearly, 0, change.slot, change.member,
                        AnyQuantity{std::get<AnyQuantity>(change.before).kind, back}, {}));
      CHECK_FALSE(well(size_axis(nearly, nearly.axes[0]).limit(before.id), goal(before)));
      ++checked;
    }
  });
  CHECK(checked > 40);
}

TEST_CASE("of sizes the next one that does it is taken") {
  const auto parts = listed_parts();
  int checked = 0;
  over_many(60, {}, [&](const Machine& machine, const Limit& before, const Remedy& remedy) {
    const FieldChange& change = remedy.changes.at(0);
    const auto* now = std::get_if<std::int64_t>(&change.before);
    const auto* then = std::get_if<std::int64_t>(&change.after);
    if (change.member != "microsteps" || now == nullptr || then == nullptr) {
      return;
    }
    Machine nearly = machine;
    const std::int64_t back = *then > *now ? *then / 2 : *then * 2;
    REQUIRE(set_field(nearly, 0, change.slot, change.member, back, {}));
    CHECK_FALSE(well(size_axis(nearly, nearly.axes[0]).limit(before.id), goal(before)));
    ++checked;
  });
  CHECK(checked > 10);
}

TEST_CASE("the same machine gives the same remedies in the same order") {
  const auto parts = listed_parts();
  const Machine machine = sample_machine("sample-machines/plank-router.feedwright");
  const auto once = remedies_of(machine, LimitId::whip, parts);
  const auto again = remedies_of(machine, LimitId::whip, parts);
  REQUIRE(once.size() == again.size());
  REQUIRE(once.size() > 4);
  for (std::size_t i = 0; i < once.size(); ++i) {
    CHECK(once[i].changes == again[i].changes);
    CHECK(once[i].part == again[i].part);
  }
}

TEST_CASE("a limit that is clear or open has no remedies, and none is named in trouble") {
  Machine machine = testing::ordinary_router();
  machine.axes[0].targets.feed.reset();
  CHECK(remedies_of(machine, LimitId::whip).empty());
  const AxisResults open = size_axis(machine, machine.axes[0]);
  for (const LimitId id : limits_in_trouble(open)) {
    CHECK(open.limit(id).margin);
  }
  machine.axes[0].targets.feed = Positive<Velocity>::of(1_m_per_min);
  CHECK(remedies_of(machine, LimitId::whip).empty());
}

TEST_CASE("limits in trouble are those over or close, the least margin first") {
  Dice dice(seed);
  for (int i = 0; i < 40; ++i) {
    const Machine machine = strained(dice);
    const AxisResults now = size_axis(machine, machine.axes[0]);
    double before = 0.0;
    for (const LimitId id : limits_in_trouble(now)) {
      CHECK(now.limit(id).applies);
      CHECK(*now.limit(id).margin >= before);
      CHECK(*now.limit(id).margin < 1.2);
      before = *now.limit(id).margin;
    }
  }
}

TEST_CASE("no remedy loosens a safety, a share that may be used, or takes a brake away") {
  constexpr std::string_view kept[] = {"whip_share",    "whip_span",     "buckling_safety",
                                       "stress_safety", "static_safety", "usable_share",
                                       "load_factor",   "reliability",   "brake",
                                       "efficiency",    "yield_strength"};
  const auto parts = listed_parts();
  over_many(60, parts, [&](const Machine& machine, const Limit&, const Remedy& remedy) {
    const auto changed = with_remedy(machine, 0, remedy, parts);
    REQUIRE(changed);
    for (const PartSlot slot : {PartSlot::drive, PartSlot::motor, PartSlot::carriage}) {
      if (part_type(machine, 0, slot) != part_type(*changed, 0, slot)) {
        continue;
      }
      for (const std::string_view member : kept) {
        const auto was = field_of(machine, 0, slot, member);
        const auto is = field_of(*changed, 0, slot, member);
        CHECK((!was || (is && was->value == is->value)));
      }
    }
  });
}

TEST_CASE("a span typed in inches is told in inches, and what goes with it in its own unit") {
  Machine machine = testing::ordinary_router();
  machine.axes[0].targets.feed = Positive<Velocity>::of(9_m_per_min);
  REQUIRE(set_field(machine, 0, PartSlot::drive, "span", any(Length(50_in)),
                    {"50 in", Origin::entered}));
  REQUIRE(set_field(machine, 0, PartSlot::drive, "overall_length", any(Length(1350_mm)),
                    {"1350 mm", Origin::entered}));
  const auto found = remedies_of(machine, LimitId::whip);
  const Remedy* span = by_field(found, PartSlot::drive, "span");
  REQUIRE(span != nullptr);
  CHECK(span->sense == ChangeSense::at_most);
  CHECK(span->changes[0].text.ends_with(" in"));
  REQUIRE(span->changes.size() == 2);
  CHECK(span->changes[1].text.ends_with(" mm"));
  // The shaft is as much shorter as the length between its bearings.
  CHECK(si_value(50_in) - si_after(*span) ==
        Approx(si_value(1350_mm) - si_after(*span, 1)).epsilon(1e-9));
  const auto changed = with_remedy(machine, 0, *span, {});
  REQUIRE(changed);
  CHECK(field_of(*changed, 0, PartSlot::drive, "span")->note ==
        EntryNote{span->changes[0].text, Origin::entered});
  // What is written is what was reckoned.
  const auto again = read_machine(write_machine(*changed));
  REQUIRE(again);
  CHECK(*screw_of(again->axes[0]).span == *screw_of(changed->axes[0]).span);
}

TEST_CASE("a screw from a list is taken whole, with its source") {
  const auto parts = listed_parts();
  const Machine machine = sample_machine("sample-machines/plank-router.feedwright");
  const auto found = remedies_of(machine, LimitId::whip, parts);
  const Remedy* lead = by_field(found, PartSlot::drive, "lead");
  REQUIRE(lead != nullptr);
  REQUIRE(lead->part);
  const auto changed = with_remedy(machine, 0, *lead, parts);
  REQUIRE(changed);
  const Screw& screw = screw_of(changed->axes[0]);
  CHECK(screw.notes.source.starts_with(parts[*lead->part].name));
  CHECK(screw.notes.entries.at("lead").origin == Origin::part_list);
  CHECK(screw.dynamic_rating);
  CHECK(si_value(*screw.nominal_diameter) == Approx(0.016));
  CHECK(si_value(*screw.span) == Approx(1.48));
}

TEST_CASE("a finer lead that no list has comes from the usual ones") {
  Machine machine = testing::ordinary_router();
  machine.axes[0].targets.resolution = Positive<Length>::of(from_si<Length>(2e-6));
  const auto found = remedies_of(machine, LimitId::resolution);
  const Remedy* lead = by_field(found, PartSlot::drive, "lead");
  REQUIRE(lead != nullptr);
  CHECK_FALSE(lead->part);
  CHECK(lead->changes[0].text == "3 mm");
}

TEST_CASE("a longer lead that lets an upright axis fall says so and comes last") {
  const auto parts = listed_parts();
  Machine machine = testing::ordinary_router();
  Axis& axis = machine.axes[0];
  axis.basics.incline = Finite<Angle>::of(from_si<Angle>(pi / 2.0));
  axis.carriage.mass = Positive<Mass>::of(15_kg);
  axis.targets.feed = Positive<Velocity>::of(1_m_per_min);
  machine.controller.step_rate_limit = Positive<Frequency>::of(from_si<Frequency>(12e3));
  Screw& screw = screw_of(axis);
  screw.thread = ThreadForm::trapezoidal;
  screw.nominal_diameter = Positive<Length>::of(8_mm);
  screw.core_diameter = Positive<Length>::of(from_si<Length>(5.5e-3));
  screw.pitch_diameter = Positive<Length>::of(7_mm);
  screw.lead = Positive<TravelPerAngle>::of(from_si<TravelPerAngle>(1.5e-3 / (2.0 * pi)));
  screw.thread_friction = Share::of(0.12);
  const AxisResults now = size_axis(machine, axis);
  REQUIRE(now.limit(LimitId::step_rate).verdict == Verdict::over);
  const auto found = remedies_of(machine, LimitId::step_rate, parts);
  int falling = 0;
  for (const Remedy& remedy : found) {
    const auto changed = with_remedy(machine, 0, remedy, parts);
    REQUIRE(changed);
    const AxisResults after = size_axis(*changed, changed->axes[0]);
    const auto falls = [](const Finding& finding) {
      return finding.code == FindingCode::axis_can_fall;
    };
    CHECK(std::ranges::any_of(after.findings, falls) ==
          std::ranges::any_of(remedy.newly_grave, falls));
    falling += std::ranges::any_of(remedy.newly_grave, falls) ? 1 : 0;
  }
  CHECK(falling > 0);
  REQUIRE_FALSE(found.empty());
  CHECK(found.front().newly_grave.empty());
}

TEST_CASE("a pulley of a loop changes with a belt that fits") {
  Machine machine = sample_machine("tests/machines/looped-screws.feedwright");
  const Length finer = 0.95 * *size_axis(machine, machine.axes[0]).resolution;
  REQUIRE(set_field(machine, 0, PartSlot::targets, "resolution", any(finer), {}));
  const auto found = remedies_of(machine, LimitId::resolution);
  const Remedy* pulleys = by_field(found, PartSlot::transmission, "pulleys");
  REQUIRE(pulleys != nullptr);
  const auto changed = with_remedy(machine, 0, *pulleys, {});
  REQUIRE(changed);
  CHECK(faults_of(*changed).empty());
  const auto again = read_machine(write_machine(*changed));
  REQUIRE(again);
  const auto& read = std::get<BeltLoopDrive>(again->axes[0].transmission);
  const auto& made = std::get<BeltLoopDrive>(changed->axes[0].transmission);
  CHECK(read.pulleys == made.pulleys);
  CHECK(read.belt_teeth == made.belt_teeth);
  CHECK(*size_axis(*again, again->axes[0]).limit(LimitId::resolution).margin ==
        Approx(*pulleys->limit(LimitId::resolution).margin).epsilon(1e-12));
}

TEST_CASE("a supply that brings another axis over its limit is told with that axis") {
  Machine machine = sample_machine("tests/machines/direct-screws.feedwright");
  const auto troubled = [&](std::size_t axis) {
    return limits_in_trouble(size_axis(machine, machine.axes[axis]));
  };
  int machine_wide = 0;
  for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
    for (const LimitId id : troubled(axis)) {
      for (const Remedy& remedy : remedies_of(machine, id, {}, axis)) {
        if (remedy.changes.front().slot != PartSlot::supply) {
          continue;
        }
        ++machine_wide;
        const auto changed = with_remedy(machine, axis, remedy, {});
        REQUIRE(changed);
        for (std::size_t other = 0; other < machine.axes.size(); ++other) {
          const AxisResults now = size_axis(machine, machine.axes[other]);
          const AxisResults then = size_axis(*changed, changed->axes[other]);
          for (const LimitDescriptor& about : limit_descriptors()) {
            const auto over = [&](const AxisResults& r) {
              return r.limit(about.id).applies && r.limit(about.id).verdict == Verdict::over;
            };
            const bool told = std::ranges::find(remedy.newly_over, AxisLimit{other, about.id}) !=
                              remedy.newly_over.end();
            CHECK(told == (over(then) && !over(now)));
          }
        }
      }
    }
  }
  CHECK(machine_wide > 0);
}

TEST_CASE("a figure a remedy has to invent is the program's own until somebody looks it up") {
  const Machine machine = sample_machine("sample-machines/plank-router.feedwright");
  const auto found = remedies_of(machine, LimitId::whip);
  const Remedy* turning = by_field(found, PartSlot::drive, "driven");
  REQUIRE(turning != nullptr);
  const auto changed = with_remedy(machine, 0, *turning, {});
  REQUIRE(changed);
  CHECK(field_of(*changed, 0, PartSlot::drive, "driven")->note.origin == Origin::entered);
  const auto inertia = field_of(*changed, 0, PartSlot::drive, "nut_inertia");
  CHECK_FALSE(std::holds_alternative<std::monostate>(inertia->value));
  CHECK(inertia->note.origin == Origin::preset);
}

TEST_CASE("finer microsteps are no remedy where they would make nothing finer") {
  Machine machine = testing::ordinary_router();
  for (const char* wanted : {"20 µm", "5 µm", "1 µm", "0.2 µm"}) {
    const auto read = read_quantity(wanted, Kind::length);
    machine.axes[0].targets.resolution = Positive<Length>::of(from_si<Length>(read->value.si));
    for (const Remedy& remedy : remedies_of(machine, LimitId::resolution)) {
      for (const FieldChange& change : remedy.changes) {
        INFO(wanted);
        CHECK((change.member != "microsteps" || std::get<std::int64_t>(change.after) <= 16));
      }
    }
  }
}

TEST_CASE("against whip no screw is offered that travel and nut do not fit on") {
  Machine machine = testing::ordinary_router();
  const Length least = 750_mm + 2.0 * (16_mm + 5_mm) + 10_mm;
  int offered = 0;
  for (const Velocity& feed : {9_m_per_min, 11_m_per_min, 12_m_per_min, 13_m_per_min, 14_m_per_min,
                               16_m_per_min, 20_m_per_min}) {
    machine.axes[0].targets.feed = Positive<Velocity>::of(feed);
    const auto found = remedies_of(machine, LimitId::whip);
    if (const Remedy* span = by_field(found, PartSlot::drive, "span")) {
      ++offered;
      CHECK(si_after(*span) >= si_value(least) - 1e-9);
    }
  }
  CHECK(offered > 0);
}

TEST_CASE("the motor that is there is not offered in another description") {
  Machine machine = sample_machine("sample-machines/plank-router.feedwright");
  const auto parts = listed_parts();
  const auto fitted = field_of(machine, 0, PartSlot::motor, "holding_torque");
  REQUIRE(fitted);
  const auto torque_of = [&](const Remedy& remedy) -> const FieldValue* {
    const auto& values = parts[*remedy.part].values;
    const auto found = std::ranges::find(values, "holding_torque", &ListedValue::member);
    return found != values.end() ? &found->value : nullptr;
  };
  int offered = 0;
  for (const double newton : {400.0, 500.0, 520.0, 540.0, 560.0, 580.0, 600.0, 800.0, 1200.0}) {
    machine.axes[0].targets.thrust = Positive<Force>::of(from_si<Force>(newton));
    for (const Remedy& remedy : remedies_of(machine, LimitId::motor_thrust, parts)) {
      if (remedy.part && torque_of(remedy) != nullptr) {
        ++offered;
        INFO(newton << " N: " << parts[*remedy.part].name);
        CHECK_FALSE(*torque_of(remedy) == fitted->value);
      }
    }
  }
  CHECK(offered > 0);
}
