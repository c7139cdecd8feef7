// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/accuracy/agreement.h"
#include "mechanics/belt_geometry.h"
#include "mechanics/belt_strength.h"
#include "mechanics/belt_tension.h"

namespace feedwright::testing {

namespace {

constexpr int tries = 500;

/// Belt length by its pieces: the free spans, and on each pulley the arc π ± 2β.
Ref length_of(const Ref& d1, const Ref& d2, const Ref& c) {
  const Ref rise = (d2 - d1) / 2;
  const Ref beta = atan(rise / sqrt(c * c - rise * rise));
  return 2 * sqrt(c * c - rise * rise) + (ref_pi() - 2 * beta) * d1 / 2 +
         (ref_pi() + 2 * beta) * d2 / 2;
}

/// Centre distance of that belt length, by Newton's method from nearby; dL/dC = 2 cos β.
Ref distance_of(const Ref& d1, const Ref& d2, const Ref& length, const Ref& near) {
  Ref c = near;
  for (int i = 0; i < 8; ++i) {
    const Ref rise = (d2 - d1) / 2;
    c -= (length_of(d1, d2, c) - length) / (2 * sqrt(1 - rise * rise / (c * c)));
  }
  return c;
}

void of_geometry(Agreements& all) {
  Agreement length("belt length, two pulleys"), wrap("wrap of the smaller pulley"),
      distance("centre distance (solved)", root_solved);
  Dice dice(41);
  for (int i = 0; i < tries; ++i) {
    const double pitch = dice.chance(0.5) ? 3e-3 : 5e-3;
    const Length d1 = pulley_pitch_diameter(double(dice.whole(12, 72)), from_si<Length>(pitch));
    const Length d2 =
        dice.chance(0.1)
            ? d1
            : Length(pulley_pitch_diameter(double(dice.whole(12, 72)), from_si<Length>(pitch)));
    const Length c = (d1 + d2) / 2.0 + from_si<Length>(dice.over(1e-4, 1.0));
    length.add(open_belt_length(d1, d2, c), length_of(ref(d1), ref(d2), ref(c)));
    const Ref rise = abs(ref(d2) - ref(d1)) / 2;
    wrap.add(smaller_pulley_wrap(d1, d2, c), 2 * acos(rise / ref(c)));
    const Length belt = open_belt_length(d1, d2, c);
    distance.add(*centre_distance(d1, d2, belt), distance_of(ref(d1), ref(d2), ref(belt), ref(c)));
  }
  all.insert(all.end(), {length, wrap, distance});
}

} // namespace

Agreements agreement_of_belts() {
  Agreements all;
  of_geometry(all);
  Agreement pull("allowed pull of a belt, ISO 5295"), note("frequency of a belt span"),
      heard("pull of a span heard"), shaft("load of a belt on its shaft"),
      stiffness("belt stiffness at the pitch line");
  Dice dice(42);
  for (int i = 0; i < tries; ++i) {
    const auto base = from_si<Force>(dice.over(50.0, 3000.0));
    const auto width = from_si<Length>(dice.in(6e-3, 50e-3));
    const auto base_width = from_si<Length>(dice.in(6e-3, 25e-3));
    const auto mass = from_si<LinearDensity>(dice.in(0.01, 0.3));
    const int teeth = dice.whole(2, 12);
    const Ref mesh = teeth >= 6 ? Ref(1) : 1 - Ref(6 - teeth) / 5;
    const Ref carried = mesh * exp(Ref(114) / 100 * log(ref(width) / ref(base_width))) * ref(base);
    // Up to where the running belt's own pull takes half: beyond, no machine is set so.
    const auto speed = from_si<Velocity>(
        std::sqrt(dice.in(0.0, 0.5) * static_cast<double>(carried) / si_value(mass)));
    pull.add(iso_allowed_pull(*mesh_factor(double(teeth)), width_factor(width, base_width), base,
                              centrifugal_pull(mass, speed)),
             carried - ref(mass) * pow(ref(speed), 2));

    const auto set = from_si<Force>(dice.over(5.0, 3000.0));
    const auto span = from_si<Length>(dice.over(0.03, 2.0));
    const Frequency tone = span_frequency(set, mass, span);
    note.add(tone, sqrt(ref(set) / (4 * ref(mass) * pow(ref(span), 2))));
    heard.add(pull_of_frequency(tone, mass, span), 4 * ref(mass) * pow(ref(span) * ref(tone), 2));
    const auto wrapped = from_si<Angle>(dice.in(0.5, 5.5));
    shaft.add(static_shaft_load(set, wrapped), 2 * ref(set) * sin(ref(wrapped) / 2));
    const auto other = from_si<Length>(dice.over(0.03, 2.0));
    const auto specific = from_si<Force>(dice.over(1e4, 2e6));
    stiffness.add(belt_stiffness(specific, span, other),
                  ref(specific) * (ref(span) + ref(other)) / (ref(span) * ref(other)));
  }
  all.insert(all.end(), {pull, note, heard, shaft, stiffness});
  return all;
}

} // namespace feedwright::testing
