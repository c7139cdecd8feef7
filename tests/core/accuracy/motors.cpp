// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/accuracy/agreement.h"
#include "mechanics/best_travel.h"
#include "mechanics/bus_energy.h"
#include "mechanics/root_mean_square.h"
#include "mechanics/stepper_torque.h"

#include <array>

namespace feedwright::testing {

namespace {

constexpr int tries = 500;

StepperWinding random_winding(Dice& dice) {
  const double rated = dice.in(0.8, 6.0);
  return {dice.chance(0.8) ? 50.0 : 100.0,
          torque_constant(from_si<Torque>(dice.over(0.2, 12.0)), from_si<Current>(rated)),
          from_si<Resistance>(dice.over(0.25, 4.0)),
          from_si<Inductance>(dice.over(0.8e-3, 15e-3)),
          from_si<Current>(rated * dice.in(0.5, 1.5)),
          from_si<Voltage>(dice.in(18.0, 80.0))};
}

enum class Branch : std::size_t { current, voltage, both };

struct WantedTorque {
  Branch branch;
  Ref torque;
};

/// Largest torque, by angles: with current i at angle θ the phase voltage is
/// Z² i² + E² + 2 E i Z sin(θ + χ), tan χ = X/R. Nothing where no current will do.
std::optional<WantedTorque> wanted_torque(const StepperWinding& w, AngularVelocity speed) {
  const Ref r = ref(w.resistance), x = Ref(w.rotor_teeth) * ref(speed) * ref(w.inductance);
  const Ref k = ref(w.torque_constant), emf = k * ref(speed), most = ref(w.current_limit);
  const Ref volts = ref(w.voltage_limit), z = sqrt(r * r + x * x);
  const Ref lean = atan2(x, r);
  const auto voltage_at = [&](const Ref& i, const Ref& angle) {
    return Ref(sqrt(z * z * i * i + emf * emf + 2 * emf * i * z * sin(angle + lean)));
  };
  if (voltage_at(most, ref_pi() / 2) <= volts) {
    return WantedTorque{Branch::current, k * most};
  }
  const Ref top = (volts - emf * cos(lean)) / z, aside = -emf * sin(lean) / z;
  if (top * top + aside * aside <= most * most) {
    return WantedTorque{Branch::voltage, k * top};
  }
  const Ref sine = (volts * volts - z * z * most * most - emf * emf) / (2 * emf * most * z);
  if (abs(sine) > 1) {
    return std::nullopt;
  }
  const Ref one = sin(asin(sine) - lean), other = sin(ref_pi() - asin(sine) - lean);
  return WantedTorque{Branch::both, k * most * std::max(one, other)};
}

void of_steppers(Agreements& all) {
  std::array<Agreement, 3> branches{Agreement("pull-out torque, current limits"),
                                    Agreement("pull-out torque, voltage limits"),
                                    Agreement("pull-out torque, both limit")};
  Dice dice(61);
  for (int i = 0; i < 8000; ++i) {
    const StepperWinding winding = random_winding(dice);
    const auto speed = from_si<AngularVelocity>(dice.over(0.5, 400.0));
    const auto wanted = wanted_torque(winding, speed);
    // Down to a twentieth of the torque at rest, where curves are drawn to: nearer its end it is
    // the small difference of two voltages.
    if (!wanted ||
        wanted->torque < ref(winding.torque_constant) * ref(winding.current_limit) / 20) {
      continue;
    }
    branches[static_cast<std::size_t>(wanted->branch)].add(pull_out_torque(winding, speed),
                                                           wanted->torque);
  }
  all.insert(all.end(), branches.begin(), branches.end());
}

void of_torque(Agreements& all) {
  Agreement rms("root mean square torque");
  Dice dice(62);
  for (int i = 0; i < tries; ++i) {
    RmsTorque gathered;
    Ref squares(0), whole(0);
    for (int piece = dice.whole(1, 20); piece > 0; --piece) {
      const auto from = from_si<Torque>(dice.in(-5.0, 5.0)),
                 to = from_si<Torque>(dice.in(-5.0, 5.0));
      const auto time = from_si<Time>(dice.over(1e-3, 60.0));
      gathered.add_linear(from, to, time);
      // ∫ of the square about the mean: mean² + (difference)²/12
      squares += (pow((ref(from) + ref(to)) / 2, 2) + pow(ref(to) - ref(from), 2) / 12) * ref(time);
      whole += ref(time);
    }
    rms.add(*gathered.value(), sqrt(squares / whole));
  }
  all.push_back(rms);
}

} // namespace

Agreements agreement_of_motors() {
  Agreements all;
  of_steppers(all);
  of_torque(all);
  Agreement bus("bus voltage after braking"), lead("best travel per turn of the motor"),
      reduction("best reduction");
  Dice dice(63);
  for (int i = 0; i < tries; ++i) {
    const auto from = from_si<Voltage>(dice.in(12.0, 90.0));
    const auto capacitance = from_si<Capacitance>(dice.over(1e-4, 5e-2));
    const auto energy = from_si<Energy>(dice.over(1e-3, 200.0));
    bus.add(raised_voltage(from, capacitance, energy),
            sqrt(pow(ref(from), 2) + 2 * ref(energy) / ref(capacitance)));

    const auto torque = from_si<Torque>(dice.over(0.05, 10.0));
    const auto force = from_si<Force>(dice.over(0.1, 2000.0));
    const double efficiency = dice.in(0.2, 1.0);
    const auto inertia = from_si<Inertia>(dice.over(5e-6, 5e-3));
    const auto mass = from_si<Mass>(dice.over(0.5, 300.0));
    // The root of m T r² + 2 F J r − J η T = 0
    const Ref fj = ref(force) * ref(inertia), mt = ref(mass) * ref(torque);
    lead.add(best_motor_travel(torque, force, efficiency, inertia, mass),
             (sqrt(fj * fj + mt * ref(inertia) * Ref(efficiency) * ref(torque)) - fj) / mt);
    const auto load = from_si<Torque>(dice.over(0.01, 20.0));
    const auto load_inertia = from_si<Inertia>(dice.over(1e-6, 1e-1));
    // The root of T i² − 2 T_L i − T J_L/J_M = 0
    const Ref ratio = ref(load) / ref(torque);
    reduction.add(best_reduction(torque, load, load_inertia, inertia),
                  ratio + sqrt(ratio * ratio + ref(load_inertia) / ref(inertia)));
  }
  all.insert(all.end(), {bus, lead, reduction});
  return all;
}

} // namespace feedwright::testing
