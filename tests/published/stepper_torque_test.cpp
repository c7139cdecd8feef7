// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/monotone_cubic.h"
#include "mechanics/stepper_torque.h"
#include "support/near.h"

#include <math.h> // before pchip.hpp, which calls isnan unqualified in Boost 1.74

#include <boost/math/interpolators/pchip.hpp>

#include <complex>
#include <random>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::near;

namespace {

const StepperWinding example{50.0, from_si<TorquePerCurrent>(50.0 * 4.5e-3), 1_ohm, 2.5_mH, 1e9_A,
                             24_V};

/// Largest torque over all phasors inside both limits, found by scanning: no geometry.
Torque scanned(const StepperWinding& w, AngularVelocity speed) {
  const std::complex<double> z(si_value(w.resistance),
                               w.rotor_teeth * si_value(speed) * si_value(w.inductance));
  const double emf = si_value(w.torque_constant) * si_value(speed);
  const double limit = si_value(w.current_limit);
  double best = 0.0;
  constexpr int angles = 4000;
  for (int i = 0; i < angles; ++i) {
    const auto direction = std::polar(1.0, 2.0 * pi * i / angles);
    // along each direction of voltage at its limit, and of current at its limit
    const auto by_voltage = (si_value(w.voltage_limit) * direction - emf) / z;
    if (std::abs(by_voltage) <= limit) {
      best = std::max(best, by_voltage.real());
    }
    const auto by_current = limit * direction;
    if (std::abs(z * by_current + emf) <= si_value(w.voltage_limit)) {
      best = std::max(best, by_current.real());
    }
  }
  return w.torque_constant * from_si<Current>(best);
}

std::vector<Knot> knots_of(const std::vector<double>& x, const std::vector<double>& y) {
  std::vector<Knot> knots;
  for (std::size_t i = 0; i < x.size(); ++i) {
    knots.push_back({x[i], y[i]});
  }
  set_monotone_slopes(knots);
  return knots;
}

} // namespace

TEST_CASE("a 1.8° step angle has fifty rotor teeth") {
  // P. P. Acarnley, Stepping Motors, ch. 1: two-phase hybrid, step angle = 90°/N_r
  CHECK(rotor_teeth(1.8_deg) == Approx(50.0).epsilon(1e-12));
}

TEST_CASE("voltage-limited pull-out agrees with the textbook's formula", "[published]") {
  // P. P. Acarnley, Stepping Motors, ch. 5, model: T = pψV/√(R²+ω²L²) − pωψ²R/(R²+ω²L²) with
  // R 1 Ω, L 2.5 mH, p 50, ψ 4.5 mWb, V 24 V (numbers of our own): 5.308454 and 3.175792 N·m
  CHECK(near(pull_out_torque(example, 1_rad_per_s), 5.308454_N_m, 1e-6));
  CHECK(near(pull_out_torque(example, 10_rad_per_s), 3.175792_N_m, 1e-6));
}

TEST_CASE("pull-out torque agrees with scanning all phasors") {
  // independent computation
  StepperWinding motor{50.0, torque_constant(1.9_N_m, 2.8_A), 1.13_ohm, 3.6_mH, 3.96_A, 36_V};
  for (double rpm = 1.0; rpm < 3000.0; rpm *= 1.35) {
    const AngularVelocity speed = from_si<AngularVelocity>(rpm * pi / 30.0);
    const Torque torque = pull_out_torque(motor, speed);
    INFO("at " << rpm << " rpm");
    CHECK(std::abs(si_value(torque) - si_value(scanned(motor, speed))) < 2e-3 * 1.9);
  }
}

TEST_CASE("pull-out torque never rises with speed and never exceeds what the current gives") {
  const StepperWinding motor{50.0, torque_constant(1.9_N_m, 2.8_A), 1.13_ohm, 3.6_mH, 3.96_A, 36_V};
  Torque before = 1e3_N_m;
  for (int rpm = 0; rpm < 6000; rpm += 10) {
    const Torque torque = pull_out_torque(motor, from_si<AngularVelocity>(rpm * pi / 30.0));
    CHECK(torque <= before);
    CHECK(torque <= motor.torque_constant * motor.current_limit);
    before = torque * (1.0 + 1e-12);
  }
}

TEST_CASE("more voltage never costs torque") {
  StepperWinding motor{50.0, torque_constant(1.9_N_m, 2.8_A), 1.13_ohm, 3.6_mH, 3.96_A, 24_V};
  StepperWinding stronger = motor;
  stronger.voltage_limit = 48_V;
  for (int rpm = 0; rpm < 3000; rpm += 50) {
    const AngularVelocity speed = from_si<AngularVelocity>(rpm * pi / 30.0);
    CHECK(pull_out_torque(stronger, speed) >= pull_out_torque(motor, speed));
  }
}

TEST_CASE("torque points are joined as the reference library joins them inside") {
  // Boost.Math 1.74 pchip (Fritsch-Butland); equal spacing, given our end slopes
  const std::vector<double> x{0, 10, 20, 30, 40, 50};
  const std::vector<double> y{1.9, 1.85, 1.5, 1.1, 0.8, 0.3};
  auto knots = knots_of(x, y);
  auto xs = x;
  auto ys = y;
  const boost::math::interpolators::pchip<std::vector<double>> reference(
      std::move(xs), std::move(ys), knots.front().slope, knots.back().slope);
  for (double at = 0.0; at <= 50.0; at += 0.37) {
    CHECK(hermite_value(knots, at) == Approx(reference(at)).epsilon(1e-12));
  }
}

TEST_CASE("the joined curve stays between neighbouring points") {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> step(0.1, 5.0);
  std::uniform_real_distribution<double> level(0.0, 3.0);
  for (int round = 0; round < 2000; ++round) {
    std::vector<double> x{0.0};
    std::vector<double> y{level(random)};
    for (int i = 0; i < 2 + round % 8; ++i) {
      x.push_back(x.back() + step(random));
      y.push_back(level(random));
    }
    const auto knots = knots_of(x, y);
    for (std::size_t i = 1; i < x.size(); ++i) {
      const auto [low, high] = std::minmax(y[i - 1], y[i]);
      for (int k = 0; k <= 20; ++k) {
        const double v = hermite_value(knots, x[i - 1] + (x[i] - x[i - 1]) * k / 20.0);
        REQUIRE((v >= low - 1e-12 && v <= high + 1e-12));
      }
    }
  }
}
