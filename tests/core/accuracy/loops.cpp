// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/accuracy/agreement.h"
#include "mechanics/belt_take_up.h"

namespace feedwright::testing {

namespace {

struct RefPulley {
  Ref x, y, radius;
  int turn; ///< +1 counter-clockwise, −1 clockwise
};

/// Length round a counter-clockwise loop, by angles: each span leaves the line of its centres by
/// the arcsine of the radii's difference (or sum, where it changes sides) over the distance.
Ref length_round(const std::vector<RefPulley>& pulleys) {
  std::vector<Ref> headings;
  Ref length(0);
  for (std::size_t i = 0; i < pulleys.size(); ++i) {
    const RefPulley& a = pulleys[i];
    const RefPulley& b = pulleys[(i + 1) % pulleys.size()];
    const Ref dx = b.x - a.x, dy = b.y - a.y;
    const Ref apart = sqrt(dx * dx + dy * dy);
    const Ref lean = asin((a.turn * a.radius - b.turn * b.radius) / apart);
    headings.push_back(atan2(dy, dx) + lean);
    length += apart * cos(lean);
  }
  for (std::size_t i = 0; i < pulleys.size(); ++i) {
    const Ref& in = headings[(i + pulleys.size() - 1) % pulleys.size()];
    Ref wrap = pulleys[i].turn * (headings[i] - in);
    while (wrap < 0) {
      wrap += 2 * ref_pi();
    }
    while (wrap >= 2 * ref_pi()) {
      wrap -= 2 * ref_pi();
    }
    length += wrap * pulleys[i].radius;
  }
  return length;
}

std::vector<RefPulley> in_ref(const std::vector<LoopPulley>& pulleys) {
  std::vector<RefPulley> made;
  for (const LoopPulley& p : pulleys) {
    made.push_back({ref(p.x), ref(p.y), ref(p.pitch_diameter) / 2, p.back_face ? -1 : 1});
  }
  return made;
}

/// From 2 to 8 pulleys round an oval, counter-clockwise, and at times an idler that presses the
/// belt inwards from its back.
std::vector<LoopPulley> drawn_loop(Dice& dice) {
  std::vector<LoopPulley> pulleys;
  const int count = dice.whole(2, 8);
  const double wide = dice.in(0.15, 0.6), high = dice.in(0.15, 0.6), start = dice.in(0.0, 6.0);
  for (int i = 0; i < count; ++i) {
    const double at = start + 2.0 * pi * (i + dice.in(-0.2, 0.2)) / count;
    pulleys.push_back({from_si<Length>(wide * std::cos(at)), from_si<Length>(high * std::sin(at)),
                       from_si<Length>(dice.in(0.02, 0.08)), false});
  }
  if (dice.chance(0.5)) {
    const LoopPulley &a = pulleys.back(), &b = pulleys.front();
    const double share = dice.in(0.4, 0.6), pressed = dice.in(0.0, 0.04);
    const Length dx = b.x - a.x, dy = b.y - a.y;
    const Length apart = sqrt(dx * dx + dy * dy);
    const Length out = from_si<Length>(0.045 - pressed);
    pulleys.push_back({a.x + share * dx + out * double(dy / apart),
                       a.y + share * dy - out * double(dx / apart),
                       from_si<Length>(dice.in(0.015, 0.05)), true});
  }
  return pulleys;
}

std::vector<LoopPulley> sound_loop(Dice& dice) {
  for (;;) {
    auto pulleys = drawn_loop(dice);
    if (belt_loop_length(pulleys, LoopSense::counter_clockwise) &&
        loop_sense(pulleys) == LoopSense::counter_clockwise) {
      return pulleys;
    }
  }
}

/// Length with one pulley slid along its line.
Ref slid_length(std::vector<RefPulley> pulleys, const TakeUp& take_up, const Ref& position) {
  const Ref direction = ref(take_up.direction);
  pulleys[take_up.pulley].x += position * cos(direction);
  pulleys[take_up.pulley].y += position * sin(direction);
  return length_round(pulleys);
}

/// The slide's place next to `near` that makes the length, by secants. Nothing where the length
/// hardly changes with the place: there it is not well known.
std::optional<Ref> place_of(const std::vector<RefPulley>& pulleys, const TakeUp& take_up,
                            const Ref& length, const Ref& near) {
  Ref a = near, b = near + Ref("1e-6");
  Ref at_a = slid_length(pulleys, take_up, a) - length;
  for (int i = 0; i < 12; ++i) {
    const Ref at_b = slid_length(pulleys, take_up, b) - length;
    if (at_a == at_b) {
      break;
    }
    const Ref slope = (at_b - at_a) / (b - a);
    if (abs(slope) < 0.1) {
      return std::nullopt;
    }
    a = b;
    at_a = at_b;
    b -= at_b / slope;
    if (abs(b - a) < Ref("1e-30")) {
      break;
    }
  }
  return b;
}

} // namespace

Agreements agreement_of_loops() {
  Agreement length("loop length, 2 to 9 pulleys"),
      // The place may be nil: the drawn one.
      place("take-up position (solved), over the slide's range", root_solved);
  Dice dice(51);
  for (int i = 0; i < 500; ++i) {
    const auto pulleys = sound_loop(dice);
    const auto as_ref = in_ref(pulleys);
    length.add(*belt_loop_length(pulleys, LoopSense::counter_clockwise), length_round(as_ref));

    const auto which =
        static_cast<std::size_t>(dice.whole(0, static_cast<int>(pulleys.size()) - 1));
    const TakeUp slide{which, from_si<Angle>(dice.in(-3.1, 3.1)), from_si<Length>(0.01),
                       from_si<Length>(dice.in(5e-3, 0.02))};
    const auto slid = belt_loop_length(at_position(pulleys, slide, dice.in(-0.9, 0.9) * slide.back),
                                       LoopSense::counter_clockwise);
    const auto found = slid ? position_for(pulleys, slide, *slid) : std::nullopt;
    if (found) {
      if (const auto wanted = place_of(as_ref, slide, ref(*slid), ref(*found))) {
        place.add_over(*found, *wanted, ref(slide.back) + ref(slide.forth));
      }
    }
  }
  return {length, place};
}

} // namespace feedwright::testing
