// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/accuracy/agreement.h"
#include "mechanics/cutting_force.h"
#include "mechanics/two_sides.h"

namespace feedwright::testing {

namespace {

MillingCut random_cut(Dice& dice) {
  const double diameter = dice.over(1e-3, 20e-3);
  return {from_si<Pressure>(dice.over(20e6, 3e9)),
          dice.in(0.0, 0.35),
          from_si<Length>(dice.over(1e-4, 2e-2)),
          from_si<Length>(diameter * (dice.chance(0.2) ? 1.0 : dice.over(1e-4, 1.0))),
          from_si<Length>(diameter),
          dice.whole(1, 6),
          from_si<AngularVelocity>(dice.over(50.0, 3000.0)),
          from_si<Velocity>(dice.over(1e-3, 0.2)),
          dice.in(0.0, 0.6)};
}

} // namespace

Agreements agreement_of_cuts() {
  Agreement arc("arc of engagement"), chip("mean chip thickness"), specific("Kienzle's k_c"),
      tangential("mean tangential force"), power("power of a cut"),
      // A radial and a tangential part may cancel along or across the feed.
      parts("mean forces along and across the feed, over the tangential"),
      share("share of the harder-loaded side");
  Dice dice(81);
  for (int i = 0; i < 500; ++i) {
    const MillingCut cut = random_cut(dice);
    const auto forces = milling_forces(cut, std::nullopt);
    const Ref ratio = ref(cut.width) / ref(cut.diameter);
    const Ref over = acos(1 - 2 * ratio);
    const Ref tooth = 2 * ref_pi() * ref(cut.feed) / (cut.teeth * ref(cut.spindle_speed));
    const Ref mean = 2 * tooth * ratio / over;
    const Ref k = ref(cut.specific_force) * exp(-Ref(cut.exponent) * log(1000 * mean));
    const Ref watts = k * ref(cut.depth) * ref(cut.width) * ref(cut.feed);
    const Ref force = 2 * watts / (ref(cut.spindle_speed) * ref(cut.diameter));
    arc.add(engagement_angle(cut.width, cut.diameter), over);
    chip.add(forces->mean_chip_thickness, mean);
    specific.add(forces->specific_force, k);
    power.add(forces->power, watts);
    tangential.add(forces->tangential, force);

    // ∫ sin φ cos φ and ∫ sin² φ over the arc, over ∫ sin φ
    const Ref along = force * pow(sin(over), 2) / 2 / (1 - cos(over));
    const Ref across = force * (over / 2 - sin(2 * over) / 4) / (1 - cos(over));
    const Ref radial(cut.radial_ratio);
    parts.add_over(forces->up.against_feed, along + radial * across, force);
    parts.add_over(forces->up.across, radial * along - across, force);
    parts.add_over(forces->down.against_feed, radial * across - along, force);
    parts.add_over(forces->down.across, across + radial * along, force);

    const auto travel = from_si<Length>(dice.in(0.0, 1.0));
    const auto spacing = from_si<Length>(dice.in(1.0, 2.0));
    share.add(worst_side_share(travel, spacing), (ref(spacing) + ref(travel)) / (2 * ref(spacing)));
  }
  return {arc, chip, specific, tangential, power, parts, share};
}

} // namespace feedwright::testing
