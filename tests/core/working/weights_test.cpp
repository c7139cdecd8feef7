// SPDX-License-Identifier: GPL-3.0-or-later

// How far a change passes on. The exponents of an equation of products and powers are known by
// looking at it; those of everything else are checked against a difference quotient.

#include "files/read_file.h"
#include "machine/machine_file.h"
#include "sizing/size_axis.h"
#include "support/axes.h"
#include "working/elasticity.h"
#include "working/sensitivity.h"
#include "working/write_working.h"

#include <catch2/catch.hpp>

#include <filesystem>

using namespace feedwright;
using feedwright::testing::ordinary_router;

namespace {

WrittenStep written(const Machine& machine, ResultId id) {
  Working working;
  size_axis(machine, machine.axes[0], working);
  const WorkingStep* step = working.find(id);
  REQUIRE(step != nullptr);
  return write_step(*step, machine, 0, DecimalMark::point);
}

double share_of(const WrittenStep& step, const std::string& symbol) {
  for (const WrittenTerm& term : step.terms) {
    if (term.symbol == symbol) {
      REQUIRE(term.share);
      return *term.share;
    }
  }
  FAIL("no such symbol: " << symbol);
  return 0.0;
}

double share_of(const std::vector<Sensitivity>& all, PartSlot slot, std::string_view member) {
  for (const Sensitivity& one : all) {
    if (one.input == input_ref(slot, member)) {
      return one.share;
    }
  }
  return 0.0;
}

} // namespace

TEST_CASE("in the equation of whip each symbol weighs as its exponent says") {
  // Source: W. T. Thomson, Theory of Vibration with Applications, App. D: ω = β² √(EI/(ρA L⁴)),
  // with √(I/A) = d/4.
  const WrittenStep whip = written(ordinary_router(), ResultId::whip_speed);
  CHECK(share_of(whip, "L_w") == Approx(-2.0));
  CHECK(share_of(whip, "λ") == Approx(2.0));
  CHECK(share_of(whip, "d_r") == Approx(1.0));
  CHECK(share_of(whip, "E") == Approx(0.5));
  CHECK(share_of(whip, "ρ") == Approx(-0.5));
}

TEST_CASE("sizing the axis anew finds the same exponents, through everything in between") {
  const auto all = sensitivities(ordinary_router(), 0, ResultId::whip_feed);
  REQUIRE_FALSE(all.empty());
  CHECK(all[0].input == input_ref(PartSlot::drive, "span"));
  CHECK(share_of(all, PartSlot::drive, "span") == Approx(-2.0).epsilon(1e-4));
  CHECK(share_of(all, PartSlot::drive, "core_diameter") == Approx(1.0).epsilon(1e-4));
  CHECK(share_of(all, PartSlot::drive, "lead") == Approx(1.0).epsilon(1e-4));
  CHECK(share_of(all, PartSlot::drive, "whip_share") == Approx(1.0).epsilon(1e-4));
  CHECK(share_of(all, PartSlot::drive, "density") == Approx(-0.5).epsilon(1e-4));
  CHECK(share_of(all, PartSlot::carriage, "mass") == 0.0);
}

TEST_CASE("of Euler's load the length weighs with two, of Johnson's with less") {
  // Source: Shigley, Mechanical Engineering Design, ch. 4: P = C π² E A/(l/k)².
  Machine slender = ordinary_router();
  testing::screw_of(slender.axes[0]).core_diameter = Positive<Length>::of(from_si<Length>(0.006));
  REQUIRE(faults_of(slender).empty());
  const WrittenStep euler = written(slender, ResultId::buckling_load);
  CHECK(share_of(euler, "s") == Approx(-2.0));
  Machine stocky = ordinary_router();
  Screw& screw = testing::screw_of(stocky.axes[0]);
  screw.nominal_diameter = Positive<Length>::of(from_si<Length>(0.063));
  screw.pitch_diameter = Positive<Length>::of(from_si<Length>(0.0635));
  screw.core_diameter = Positive<Length>::of(from_si<Length>(0.058));
  REQUIRE(faults_of(stocky).empty());
  const WrittenStep johnson = written(stocky, ResultId::buckling_load);
  CHECK(share_of(johnson, "s") > -2.0);
  CHECK(share_of(johnson, "s") < 0.0);
}

TEST_CASE("the parts of a sum make up the whole, the largest can be named") {
  const WrittenStep inertia = written(ordinary_router(), ResultId::load_inertia);
  REQUIRE(inertia.parts.size() >= 2);
  double all = 0.0;
  for (const WrittenPart& part : inertia.parts) {
    CHECK(part.share >= 0.0);
    all += part.share;
  }
  CHECK(all == Approx(1.0));
  CHECK(written(ordinary_router(), ResultId::whip_speed).parts.empty());
}

TEST_CASE("what a solved equation hides is not said to weigh anything") {
  const WrittenStep feed = written(ordinary_router(), ResultId::motor_torque_feed);
  CHECK_FALSE(feed.solved.empty());
  for (const WrittenTerm& term : feed.terms) {
    if (term.symbol != "r_m") {
      CHECK_FALSE(term.share);
    }
  }
}

TEST_CASE("of every machine's every equation, the shares agree with a difference quotient") {
  std::size_t checked = 0;
  for (const char* folder : {"/sample-machines", "/tests/machines"}) {
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(FEEDWRIGHT_SOURCE_DIR) + folder)) {
      if (entry.path().extension() != ".feedwright") {
        continue;
      }
      const auto text = read_file(entry.path().string(), 1U << 20U);
      REQUIRE(text);
      const auto machine = read_machine(*text);
      REQUIRE(machine);
      for (std::size_t axis = 0; axis < machine->axes.size(); ++axis) {
        Working working;
        size_axis(*machine, machine->axes[axis], working);
        for (const WorkingStep& step : working.steps()) {
          // Each leaf is moved in the recorded tree, all else as it was.
          for (const LeafShare& leaf : leaf_shares(*step.how)) {
            constexpr double h = 1e-6;
            const auto moved = [&](double factor) {
              const auto evaluate = [&](const auto& self, const Expression& e) -> double {
                const auto x = [&](std::size_t i) { return self(self, *e.operands[i]); };
                using Form = Expression::Form;
                switch (e.form) {
                case Form::add: return x(0) + x(1);
                case Form::subtract: return x(0) - x(1);
                case Form::multiply: return x(0) * x(1);
                case Form::divide: return x(0) / x(1);
                case Form::negate: return -x(0);
                case Form::square: return x(0) * x(0);
                case Form::function:
                  return e.name == "sqrt"   ? std::sqrt(x(0))
                         : e.name == "tan"  ? std::tan(x(0))
                         : e.name == "atan" ? std::atan(x(0))
                         : e.name == "sin"  ? std::sin(x(0))
                                            : std::cos(x(0));
                default: return &e == leaf.leaf ? e.value.si * factor : e.value.si;
                }
              };
              return evaluate(evaluate, *step.how);
            };
            const double difference = (moved(1.0 + h) - moved(1.0 - h)) / (2.0 * h) / step.value.si;
            INFO(entry.path().string() << " " << descriptor(step.result).name);
            CHECK(leaf.share == Approx(difference).epsilon(1e-3).margin(1e-3));
            ++checked;
          }
        }
      }
    }
  }
  CHECK(checked > 1000);
}

TEST_CASE("values in a working come in the units the machine is typed in") {
  Machine machine = ordinary_router();
  const AnyQuantity feed{Kind::velocity, 100.0 * 0.0254 / 60.0};
  REQUIRE(set_field(machine, 0, PartSlot::targets, "feed", feed, {"100 in/min", Origin::entered}));
  const WrittenStep whip = written(machine, ResultId::whip_feed);
  CHECK(whip.value.ends_with(" in/min"));
  CHECK(whip.si_value.ends_with(" m/s"));
  CHECK(whip.value_notation.unit == "in/min");
  const WrittenStep metric = written(ordinary_router(), ResultId::whip_feed);
  CHECK(metric.value.ends_with(" m/min"));
}

TEST_CASE("what a sum takes away again has no share in it, and a single term is none") {
  const auto named = [](std::string_view symbol, double value) {
    return Working().constant(symbol, from_si<Ratio>(value));
  };
  const auto a = named("a", 5.0);
  const auto b = named("b", 3.0);
  const auto c = named("c", 1.0);
  CHECK(sum_shares(*(a + b - a).how).empty());
  CHECK(sum_shares(*(a - (a - b)).how).empty());
  CHECK(sum_shares(*((1.0 + number(named("0", 0.0))) * b).how).empty());
  const auto left = sum_shares(*(a + b - a + c).how);
  REQUIRE(left.size() == 2);
  CHECK(left[0].share == Approx(0.75));
  CHECK(left[1].share == Approx(0.25));
  // What stays on either side counts by its size.
  CHECK(sum_shares(*(b - c).how).at(1).share == Approx(0.25));
}

TEST_CASE("the reflected inertia is pulleys, belt, screw and carriage, without the rotor") {
  const Machine machine = ordinary_router();
  const WrittenStep load = written(machine, ResultId::load_inertia);
  for (const WrittenTerm& term : load.terms) {
    CHECK(term.input != input_ref(PartSlot::motor, "rotor_inertia"));
  }
  REQUIRE(load.parts.size() == 4);
  const AxisResults r = size_axis(machine, machine.axes[0]);
  const double reduction = double(*r.reduction);
  const double whole = si_value(*r.load_inertia);
  const double expected[] = {si_value(*r.motor_pulley_inertia) / whole,
                             si_value(*r.belt_inertia) / whole,
                             (si_value(*r.screw_inertia) + si_value(*r.screw_pulley_inertia)) /
                                 reduction / reduction / whole,
                             si_value(*r.carriage_inertia) / whole};
  for (std::size_t i = 0; i < 4; ++i) {
    CHECK(load.parts[i].share == Approx(expected[i]).epsilon(1e-9));
  }
  CHECK(written(machine, ResultId::belt_tension_needed).parts.empty());
}

TEST_CASE("lengths, heat and power show where they come from") {
  Machine machine = ordinary_router();
  auto& motor = std::get<StepperByPoints>(machine.axes[0].motor);
  motor.resistance = Positive<Resistance>::of(from_si<Resistance>(1.13));
  motor.rated_current = Positive<Current>::of(from_si<Current>(2.8));
  CHECK(written(machine, ResultId::buckling_length).with_numbers == "(900 mm + 750 mm) / 2");
  CHECK(written(machine, ResultId::whip_length).formula == "L");
  CHECK(written(machine, ResultId::winding_heat).with_numbers == "2 · (2.8 A)² · 1.13 Ω");
  // 600 rpm: 60 % of the point's 1.1 N·m
  CHECK(written(machine, ResultId::usable_torque).with_numbers == "1.1 N·m · 60 %");
  CHECK(written(machine, ResultId::motor_power).solved.empty());
}
