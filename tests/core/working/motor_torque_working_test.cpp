// SPDX-License-Identifier: GPL-3.0-or-later

// The motor's torque is told with the formula that gives it: a reader who puts the figures shown
// into the formula shown gets the torque shown.

#include "sizing/size_axis.h"
#include "support/axes.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <map>

using namespace feedwright;
using namespace feedwright::literals;

namespace {

/// What stands behind the torque at the wanted feed.
struct Told {
  std::string_view equation;
  double torque = 0.0;
  std::map<std::string_view, double> figures; ///< by field, in SI units; the speed as "n"
};

Told told(Machine machine, Velocity feed) {
  machine.axes[0].targets.feed = Positive<Velocity>::of(feed);
  Working working;
  size_axis(machine, machine.axes[0], working);
  const WorkingStep* step = working.find(ResultId::whole_torque);
  REQUIRE(step != nullptr);
  const Expression& how = *step->how;
  Told result{how.name, step->value.si, {}};
  for (const auto& operand : how.operands) {
    const bool is_speed = operand->form == Expression::Form::result;
    result.figures[is_speed ? std::string_view("n") : operand->name] = operand->value.si;
  }
  return result;
}

Machine by_ratings() {
  Machine machine = testing::ordinary_router();
  StepperByRatings motor;
  motor.detent_torque = NonNegative<Torque>::of(0.05_N_m);
  machine.axes[0].motor = motor;
  return machine;
}

/// The formulas as the program prints them (app/text/working_words.cpp).
double by_current(const Told& t) {
  const double k =
      t.figures.at("holding_torque") / (std::sqrt(2.0) * t.figures.at("rated_current"));
  return k * std::sqrt(2.0) * t.figures.at("drive_current") - t.figures.at("detent_torque");
}

struct Circuit {
  double k, x, z2, w, r, u;
  explicit Circuit(const Told& t)
      : k(t.figures.at("holding_torque") / (std::sqrt(2.0) * t.figures.at("rated_current"))),
        x(t.figures.at("N_r") * t.figures.at("n") * t.figures.at("inductance")),
        z2(t.figures.at("resistance") * t.figures.at("resistance") + x * x), w(t.figures.at("n")),
        r(t.figures.at("resistance")), u(t.figures.at("voltage")) {}
};

double by_voltage(const Told& t) {
  const Circuit c(t);
  return c.k * (c.u / std::sqrt(c.z2) - c.k * c.w * c.r / c.z2) - t.figures.at("detent_torque");
}

double by_both(const Told& t) {
  const Circuit c(t);
  const double limit = std::sqrt(2.0) * t.figures.at("drive_current");
  const double q = -c.k * c.w * c.r / c.z2;
  const double d = c.k * c.w * c.x / c.z2;
  const double far = std::sqrt(q * q + d * d);
  const double a = (limit * limit - c.u * c.u / c.z2 + far * far) / (2.0 * far);
  return c.k * (q * a + d * std::sqrt(limit * limit - a * a)) / far - t.figures.at("detent_torque");
}

} // namespace

TEST_CASE("torque by ratings is told with the formula of what limits it") {
  std::map<std::string_view, int> seen;
  for (double feed = 0.2; feed < 30.0; feed *= 1.15) {
    const Told t = told(by_ratings(), from_si<Velocity>(feed / 60.0));
    INFO("at " << feed << " m/min by " << t.equation);
    const double reckoned = t.equation == "ratings_by_current"   ? by_current(t)
                            : t.equation == "ratings_by_voltage" ? by_voltage(t)
                                                                 : by_both(t);
    CHECK(t.torque == Approx(std::max(0.0, reckoned)).epsilon(1e-9));
    ++seen[t.equation];
  }
  CHECK(seen["ratings_by_current"] > 0);
  CHECK(seen["ratings_by_both"] > 0);
  CHECK(seen["ratings_by_voltage"] > 0);
}

TEST_CASE("points are told apart: as they are, taken down for a lower supply, or fitted") {
  Machine machine = testing::ordinary_router();
  CHECK(told(machine, 3_m_per_min).equation == "motor_points");
  machine.supply.voltage = Positive<Voltage>::of(24_V);
  const Told lower = told(machine, 1_m_per_min);
  CHECK(lower.equation == "motor_points_taken_down");
  CHECK(lower.figures.at("voltage") == 24.0);
}

TEST_CASE("a servo's torque is what its data sheet says, past the rated speed less by the ratio") {
  Machine machine = testing::ordinary_router();
  const Servo servo;
  machine.axes[0].motor = servo;
  Working working;
  machine.axes[0].targets.feed = Positive<Velocity>::of(1_m_per_min);
  size_axis(machine, machine.axes[0], working);
  CHECK(working.find(ResultId::whole_torque)->how->name == "peak_torque");
  Working quick;
  machine.axes[0].targets.feed = Positive<Velocity>::of(20_m_per_min);
  size_axis(machine, machine.axes[0], quick);
  const WorkingStep* step = quick.find(ResultId::whole_torque);
  REQUIRE(step != nullptr);
  const double speed = quick.find(ResultId::motor_speed)->value.si;
  REQUIRE(speed > si_value(*servo.rated_speed));
  CHECK(step->value.si ==
        Approx(si_value(*servo.peak_torque) * si_value(*servo.rated_speed) / speed));
  CHECK(step->how->form != Expression::Form::solved);
}
