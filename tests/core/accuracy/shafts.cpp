// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/accuracy/agreement.h"
#include "mechanics/column_buckling.h"
#include "mechanics/rotor.h"
#include "mechanics/screw_accuracy.h"
#include "mechanics/shaft_whip.h"

namespace feedwright::testing {

namespace {

constexpr int tries = 800;

/// First root of the frequency equation, by Newton's method from a nearby value:
/// cos λ cosh λ = ±1, or tan λ = tanh λ for `sign` zero.
Ref eigenvalue(int sign, double near) {
  Ref x(near);
  for (int i = 0; i < 12; ++i) {
    const Ref value =
        sign == 0 ? Ref(sin(x) * cosh(x) - cos(x) * sinh(x)) : Ref(cos(x) * cosh(x) - Ref(sign));
    const Ref slope =
        sign == 0 ? Ref(2 * sin(x) * sinh(x)) : Ref(cos(x) * sinh(x) - sin(x) * cosh(x));
    x -= value / slope;
  }
  return x;
}

struct Ends {
  EndSupport a, b;
  Ref eigenvalue;
  Ref constant; ///< of Euler's load, as catalogues take it
};

std::vector<Ends> all_ends() {
  using enum EndSupport;
  return {{fixed, free, eigenvalue(-1, 1.875), Ref(1) / 4},
          {supported, supported, ref_pi(), Ref(1)},
          {supported, fixed, eigenvalue(0, 3.927), Ref(2)},
          {fixed, fixed, eigenvalue(1, 4.730), Ref(4)}};
}

struct Bar {
  Length length, diameter;
  Pressure modulus, yield;
  Density density;
};

Bar random_bar(Dice& dice) {
  const double diameter = dice.in(6e-3, 40e-3);
  return {from_si<Length>(diameter * dice.over(3.0, 150.0)), from_si<Length>(diameter),
          from_si<Pressure>(dice.in(60e9, 220e9)), from_si<Pressure>(dice.in(150e6, 1200e6)),
          from_si<Density>(dice.in(2600.0, 8100.0))};
}

} // namespace

Agreements agreement_of_shafts() {
  Agreement whip("whip speed"), euler("Euler's load"), johnson("Johnson's load"),
      edge("slenderness where Johnson's load meets Euler's"), inertia("inertia of a cylinder"),
      growth("growth by heat"), stretch("pull that keeps a warm screw tight"),
      variation("lead error over the travel");
  Dice dice(11);
  const std::vector<Ends> ends = all_ends();
  for (int i = 0; i < tries; ++i) {
    const Ends& at = ends[static_cast<std::size_t>(i) % ends.size()];
    const Bar bar = random_bar(dice);
    const Ref l = ref(bar.length), d = ref(bar.diameter), e = ref(bar.modulus);
    const Ref s = ref(bar.yield), rho = ref(bar.density);
    // (λ/L)² √(E I/(ρ A))
    const Ref area = ref_pi() * d * d / 4, second = ref_pi() * pow(d, 4) / 64;
    whip.add(critical_speed(*whip_eigenvalue(at.a, at.b), bar.length, bar.diameter, bar.modulus,
                            bar.density),
             pow(at.eigenvalue / l, 2) * sqrt(e * second / (rho * area)));

    const double c = *buckling_constant(at.a, at.b);
    const Ratio slender = slenderness_ratio(bar.length, bar.diameter);
    const Ref wanted_edge = sqrt(2 * ref_pi() * ref_pi() * at.constant * e / s);
    const Ref of_euler = at.constant * ref_pi() * ref_pi() * e * second / (l * l);
    edge.add(slenderness_transition(c, bar.modulus, bar.yield), wanted_edge);
    euler.add(euler_load(c, bar.modulus, round_area(bar.diameter), slender), of_euler);
    // Used up to where it meets Euler's, at half the yield strength: no cancellation. There it is
    // S A (1 − S A/(4 P_Euler)).
    if (Ref(4) * l / d <= wanted_edge) {
      johnson.add(johnson_load(c, bar.modulus, bar.yield, round_area(bar.diameter), slender),
                  s * area * (1 - s * area / (4 * of_euler)));
    }

    inertia.add(cylinder_inertia(bar.density, bar.length, bar.diameter),
                rho * area * l * d * d / 8);
    const auto expansion = from_si<Expansion>(dice.in(10e-6, 24e-6));
    const auto rise = from_si<Temperature>(dice.in(0.1, 40.0));
    growth.add(thermal_growth(expansion, bar.length, rise), ref(expansion) * ref(rise) * l);
    stretch.add(stretch_for_heat(bar.modulus, round_area(bar.diameter), expansion, rise),
                ref(expansion) * ref(rise) * e * area);
    const auto per_300 = from_si<Length>(dice.in(5e-6, 210e-6));
    variation.add(transport_travel_error(per_300, bar.length), ref(per_300) * l * 20 / 3);
  }
  return {whip, euler, johnson, edge, inertia, growth, stretch, variation};
}

} // namespace feedwright::testing
