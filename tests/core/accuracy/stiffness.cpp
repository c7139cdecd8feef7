// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/stiffness.h"
#include "core/accuracy/agreement.h"

namespace feedwright::testing {

namespace {
constexpr int tries = 500;
} // namespace

Agreements agreement_of_stiffness() {
  Agreement one("shaft stiffness, one end"), both("shaft stiffness, both ends"),
      twist("torsional stiffness of a shaft"), along("torsional stiffness along the axis"),
      series("springs in series"), nut("nut stiffness at a load"),
      natural("natural frequency along the axis"), torsional("torsional frequency");
  Dice dice(31);
  for (int i = 0; i < tries; ++i) {
    const auto area = from_si<Area>(dice.over(2e-5, 2e-3));
    const auto modulus = from_si<Pressure>(dice.in(60e9, 220e9));
    const auto span = from_si<Length>(dice.in(0.2, 2.5));
    const auto x = from_si<Length>(dice.in(0.01, 0.99) * si_value(span));
    const Ref ea = ref(area) * ref(modulus);
    one.add(shaft_stiffness_one_end(area, modulus, x), ea / ref(x));
    both.add(shaft_stiffness_both_ends(area, modulus, span, x),
             ea / ref(x) + ea / (ref(span) - ref(x)));

    const auto diameter = from_si<Length>(dice.in(5e-3, 50e-3));
    const auto shear = from_si<Pressure>(dice.in(25e9, 85e9));
    const auto twisted = shaft_torsional_stiffness(shear, diameter, span);
    const Ref of_twist = ref(shear) * ref_pi() * pow(ref(diameter) / 2, 4) / (2 * ref(span));
    twist.add(twisted, of_twist);
    const auto travel = from_si<TravelPerAngle>(dice.over(1e-4, 3e-2));
    along.add(along_the_axis(twisted, travel), of_twist / pow(ref(travel), 2));

    const auto a = from_si<Stiffness>(dice.over(1e5, 2e9)),
               b = from_si<Stiffness>(dice.over(1e5, 2e9));
    series.add(in_series(a, b), 1 / (1 / ref(a) + 1 / ref(b)));
    const auto load = from_si<Force>(dice.over(5.0, 1e4)),
               rating = from_si<Force>(dice.over(1e3, 8e4));
    const bool preloaded = dice.chance(0.5);
    nut.add(nut_stiffness_at(a, load, rating, preloaded),
            ref(a) * 4 / 5 * cbrt(ref(load) * 10 / ((preloaded ? 1 : 3) * ref(rating))));

    const auto mass = from_si<Mass>(dice.over(0.5, 300.0));
    natural.add(axial_frequency(a, mass), sqrt(ref(a) / ref(mass)) / (2 * ref_pi()));
    const auto spring = from_si<TorsionalStiffness>(dice.over(1.0, 1e5));
    const auto j1 = from_si<Inertia>(dice.over(1e-6, 1e-2)),
               j2 = from_si<Inertia>(dice.over(1e-6, 1e-2));
    torsional.add(torsional_frequency(spring, j1, j2),
                  sqrt(ref(spring) * (ref(j1) + ref(j2)) / (ref(j1) * ref(j2))) / (2 * ref_pi()));
  }
  return {one, both, twist, along, series, nut, natural, torsional};
}

} // namespace feedwright::testing
