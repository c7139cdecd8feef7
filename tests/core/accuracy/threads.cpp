// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/accuracy/agreement.h"
#include "mechanics/screw_life.h"
#include "mechanics/screw_preload.h"
#include "mechanics/screw_thread.h"

namespace feedwright::testing {

namespace {

constexpr int tries = 500;

struct Thread {
  Length lead, diameter;
  double friction;
};

Thread random_thread(Dice& dice, bool ball) {
  const double diameter = dice.in(6e-3, 50e-3);
  return {from_si<Length>(diameter * dice.over(0.05, 1.5)), from_si<Length>(diameter),
          ball ? dice.over(0.002, 0.02) : dice.over(0.03, 0.35)};
}

/// Tangents t of the lead angle and m of the friction angle; by Shigley's square-thread equations
/// η = t (1 − m t)/(t + m) and η_r = (t − m)/(t (1 + m t)).
struct Wanted {
  Ref t, m;
  Ref forward() const { return t * (1 - m * t) / (t + m); }
  Ref backward() const { return (t - m) / (t * (1 + m * t)); }
  /// The difference t − m as a sum: near self-locking the efficiency is as good as these.
  Ref terms() const { return (t + m) / (t * (1 + m * t)); }
};

Wanted wanted(const Thread& thread, bool ball) {
  const Ref t = ref(thread.lead) / (ref_pi() * ref(thread.diameter));
  const Ref mu(thread.friction);
  if (ball) {
    return {t, mu};
  }
  // tan α_n = tan 15° cos φ with cos φ = 1/√(1 + t²); 1/cos α_n = √(1 + tan² α_n)
  const Ref flank = (2 - sqrt(Ref(3))) / sqrt(1 + t * t);
  return {t, mu * sqrt(1 + flank * flank)};
}

void of_pairs(Agreements& all) {
  Agreement drag("drag of a preloaded ball nut"), opposed("drag of two threads wound together"),
      collar("torque of a thrust washer");
  Dice dice(22);
  for (int i = 0; i < tries; ++i) {
    const auto preload = from_si<Force>(dice.over(20.0, 5000.0));
    const auto travel = from_si<TravelPerAngle>(dice.over(1e-4, 8e-3));
    const double tangent = dice.over(0.02, 0.5);
    drag.add(ball_preload_drag(preload, travel, tangent),
             ref(preload) * ref(travel) / (20 * sqrt(Ref(tangent))));
    const double forward = dice.in(0.15, 0.97);
    const double backward = dice.in(-1.0, forward);
    opposed.add(opposed_thread_drag(preload, travel, forward, backward),
                ref(preload) * ref(travel) * (1 - Ref(forward) * Ref(backward)) /
                    (2 * Ref(forward)));
    const double friction = dice.over(0.002, 0.2);
    const auto mean = from_si<Length>(dice.in(8e-3, 60e-3));
    collar.add(collar_torque(friction, preload, mean),
               Ref(friction) * ref(preload) * ref(mean) / 2);
  }
  all.insert(all.end(), {drag, opposed, collar});
}

void of_life(Agreements& all) {
  Agreement loaded("load of the loaded half of a pair"),
      // Towards 2^(3/2) preloads it is the small difference of F_1 and F.
      relieved("load of the relieved half, over the preload"), life("rated life"),
      both("life of two halves"), mean("cubic mean load");
  Dice dice(23);
  for (int i = 0; i < tries; ++i) {
    const auto preload = from_si<Force>(dice.over(50.0, 5000.0));
    const auto load = from_si<Force>(dice.in(0.0, 3.2) * si_value(preload));
    const Ref limit = 2 * sqrt(Ref(2)) * ref(preload);
    const bool lost = ref(load) >= limit;
    const Ref first = lost ? ref(load) : ref(preload) * pow(1 + ref(load) / limit, Ref(3) / 2);
    const PairLoads halves = pair_loads(load, preload);
    loaded.add(halves.loaded, first);
    relieved.add_over(halves.relieved, lost ? Ref(0) : first - ref(load), ref(preload));

    const auto rating = from_si<Force>(dice.over(1e3, 8e4));
    const auto of_mean = from_si<Force>(dice.over(20.0, 1e4));
    const double factor = dice.in(1.0, 3.0);
    life.add(*rated_revolutions(rating, factor, of_mean),
             1000000 * pow(ref(rating) / (Ref(factor) * ref(of_mean)), 3));
    const double a = dice.over(1e5, 1e13), b = dice.over(1e5, 1e13);
    // L_a (1 + (L_a/L_b)^(10/9))^(−9/10)
    both.add(life_of_pair(a, b), Ref(a) * pow(1 + pow(Ref(a) / Ref(b), Ref(10) / 9), Ref(-9) / 10));

    CubicMeanLoad gathered;
    Ref cubes(0), turns(0);
    for (int piece = dice.whole(1, 12); piece > 0; --piece) {
      const auto force = from_si<Force>(dice.over(1.0, 5000.0));
      const double revolutions = dice.over(0.1, 1e5);
      gathered.add(force, revolutions);
      cubes += pow(ref(force), 3) * Ref(revolutions);
      turns += Ref(revolutions);
    }
    mean.add(gathered.value(), cbrt(cubes / turns));
  }
  all.insert(all.end(), {loaded, relieved, life, both, mean});
}

} // namespace

Agreements agreement_of_threads() {
  Agreements all;
  for (const bool ball : {true, false}) {
    const std::string of = ball ? "ball screw" : "trapezoidal screw";
    Agreement forward("efficiency of a " + of);
    // Where lead and friction angle are alike the efficiency passes through zero, and a rounding of
    // either angle is large beside it: held against the terms of the difference.
    Agreement backward("back-driving efficiency of a " + of + ", over its terms");
    Dice dice(ball ? 20 : 21);
    for (int i = 0; i < tries; ++i) {
      const Thread thread = random_thread(dice, ball);
      const Ratio tangent = lead_angle_tangent(thread.lead, thread.diameter);
      const double angle = ball ? ball_friction_angle(thread.friction)
                                : trapezoidal_friction_angle(thread.friction, tangent);
      const Wanted right = wanted(thread, ball);
      forward.add(thread_efficiency(tangent, angle), right.forward());
      backward.add_over(thread_back_efficiency(tangent, angle), right.backward(), right.terms());
    }
    all.insert(all.end(), {forward, backward});
  }
  of_pairs(all);
  of_life(all);
  return all;
}

} // namespace feedwright::testing
