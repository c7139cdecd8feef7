// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/stepper_fit.h"
#include "support/near.h"

#include <vector>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

StepperWinding winding(Inductance inductance, Voltage voltage) {
  return {50.0,       torque_constant(1.9_N_m, 2.8_A),      1.13_ohm,
          inductance, Current(2.8_A * std::numbers::sqrt2), voltage};
}

/// A curve as a maker would print it, of a motor whose inductance and loss we know.
std::vector<PullOutPoint> measured(const FittedStepper& motor) {
  std::vector<PullOutPoint> points;
  for (const double rpm : {0.0, 150.0, 300.0, 600.0, 900.0, 1200.0, 1500.0}) {
    const auto speed = from_si<AngularVelocity>(rpm * pi / 30.0);
    points.push_back({speed, pull_out_torque(motor, speed)});
  }
  return points;
}

} // namespace

TEST_CASE("a fit finds inductance and loss of a motor that is known") {
  // independent computation: the points come from the model itself
  for (const double millihenry : {1.2, 3.6, 9.0}) {
    for (const double loss : {0.0, 5e-4, 2e-3}) {
      const FittedStepper known{winding(from_si<Inductance>(millihenry * 1e-3), 36_V),
                                from_si<SpeedLoss>(loss), Torque()};
      const auto fitted = fit_to_points(winding(3_mH, 36_V), measured(known));
      INFO(millihenry << " mH, loss " << loss);
      CHECK(near(fitted.winding.inductance, known.winding.inductance, 1e-3));
      CHECK(si_value(fitted.loss) == Approx(loss).margin(2e-6));
      CHECK(fitted.residual < from_si<Torque>(1e-4));
    }
  }
}

TEST_CASE("reckoned for its own voltage a fitted motor gives its points back") {
  const FittedStepper known{winding(4_mH, 24_V), from_si<SpeedLoss>(8e-4), Torque()};
  const auto points = measured(known);
  const auto fitted = fit_to_points(winding(2_mH, 24_V), points);
  for (const PullOutPoint& point : points) {
    CHECK(si_value(pull_out_torque(fitted, point.speed)) ==
          Approx(si_value(point.torque)).margin(1e-3));
  }
}

TEST_CASE("more voltage never takes torque from a fitted motor") {
  const FittedStepper known{winding(4_mH, 24_V), from_si<SpeedLoss>(8e-4), Torque()};
  auto fitted = fit_to_points(winding(3_mH, 24_V), measured(known));
  for (const double rpm : {0.0, 200.0, 600.0, 1200.0, 2400.0}) {
    const auto speed = from_si<AngularVelocity>(rpm * pi / 30.0);
    fitted.winding.voltage_limit = 24_V;
    const Torque before = pull_out_torque(fitted, speed);
    fitted.winding.voltage_limit = 48_V;
    CHECK(pull_out_torque(fitted, speed) >= before);
  }
}

TEST_CASE("a loss beyond the motor's torque leaves none, not a negative one") {
  const FittedStepper lossy{winding(4_mH, 24_V), from_si<SpeedLoss>(1.0), Torque()};
  CHECK(pull_out_torque(lossy, 3000_rpm) == Torque());
}
