// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Where the carriage may be off: on reversal, over the travel, under cut. A sum with an unknown
// term stays open.

#include "mechanics/screw_accuracy.h"
#include "sizing/stiffness_steps.h"

namespace feedwright {

/// Sum and root of the sum of squares of up to three terms.
struct TwoSums {
  Length sum, root;
};

inline TwoSums two_sums(std::initializer_list<Length> terms) {
  Length sum{};
  Area squares{};
  for (const Length& term : terms) {
    sum += term;
    squares += term * term;
  }
  return {sum, sqrt(squares)};
}

/// How far behind its field an open-loop stepper stands under a torque, at the carriage; nothing
/// past its pull-out torque. Zero for a motor that corrects its position.
template <class W>
std::optional<Length> load_angle_travel(const SizingState<W>& s, Torque torque,
                                        AngularVelocity speed) {
  if (!s.motor.is_stepper() || s.motor.holds_position()) {
    return Length();
  }
  const auto whole = s.motor.torque(speed, Duty::short_time);
  const Torque size = abs(torque);
  if (!whole || *whole <= Torque() || size > *whole) {
    return std::nullopt;
  }
  const double angle = std::asin(size / *whole) / s.motor.rotor_teeth();
  return Length(angle * radian * value_of(s.motor_travel));
}

/// That travel with what it comes from.
template <class W, class T>
auto lagging(const SizingState<W>& s, Length lag, const T& torque, AngularVelocity speed) {
  const auto teeth = s.constant("N_r", s.motor.rotor_teeth());
  const auto whole = s.constant("T_po", s.motor.torque(speed, Duty::short_time).value_or(Torque()));
  return s.solved("load_angle", lag, torque, whole, teeth, s.motor_travel);
}

template <class W>
void tooth_gaps(SizingState<W>& s) {
  const BeltBody* belt = belt_of(s.axis.transmission);
  const auto free = free_lengths(s);
  if (belt == nullptr || !free) {
    FEEDWRIGHT_KEEP(s, tooth_gap_error, s.constant("0", Length()));
  } else if (belt->tooth_gap) {
    // Play at both pulleys, brought to the carriage by the travel of the rim.
    const auto gap = s.in(PartSlot::transmission, "tooth_gap", **belt->tooth_gap);
    FEEDWRIGHT_KEEP(
        s, tooth_gap_error,
        2.0 * gap * number(times_radian(s.motor_travel) / s.constant("r_1", free->motor_radius)));
  }
}

template <class W>
void reversal_errors(SizingState<W>& s) {
  tooth_gaps(s);
  if (s.out.axis_stiffness) {
    FEEDWRIGHT_KEEP(s, windup_error,
                    2.0 * FEEDWRIGHT_EARLIER(s, friction_force) /
                        FEEDWRIGHT_EARLIER(s, axis_stiffness));
  }
  const auto steady = steady_torque(s, s.friction);
  if (const auto lag = load_angle_travel(s, value_of(steady), AngularVelocity())) {
    FEEDWRIGHT_KEEP(s, friction_load_angle, 2.0 * lagging(s, *lag, steady, AngularVelocity()));
  }
  if (s.out.lost_motion && s.out.tooth_gap_error && s.out.windup_error &&
      s.out.friction_load_angle) {
    const auto sums = two_sums({*s.out.lost_motion, *s.out.tooth_gap_error, *s.out.windup_error,
                                *s.out.friction_load_angle});
    const auto terms = FEEDWRIGHT_EARLIER(s, lost_motion) + FEEDWRIGHT_EARLIER(s, tooth_gap_error) +
                       FEEDWRIGHT_EARLIER(s, windup_error) +
                       FEEDWRIGHT_EARLIER(s, friction_load_angle);
    FEEDWRIGHT_KEEP(s, reversal_error, terms);
    FEEDWRIGHT_KEEP(s, reversal_error_rss, s.solved("root_sum", sums.root, terms));
  }
}

inline std::optional<int> grade_number(LeadGrade grade) {
  constexpr int grades[] = {0, 1, 2, 3, 4, 5, 7, 10};
  const int number = grades[static_cast<std::size_t>(grade)];
  return number > 0 ? std::optional(number) : std::nullopt;
}

template <class W>
void lead_errors(SizingState<W>& s) {
  constexpr auto slot = PartSlot::drive;
  if (s.screw->travel_deviation) {
    FEEDWRIGHT_KEEP(s, lead_error, s.in(slot, "travel_deviation", **s.screw->travel_deviation));
    return;
  }
  const auto grade = grade_number(s.screw->grade);
  if (grade) {
    // Over less than 150 mm the variation within 300 mm still counts whole.
    const auto variation = s.constant("V_300p", *lead_variation_per_300(*grade));
    const auto over_travel =
        transport_travel_error(variation, s.in(PartSlot::axis, "travel", *s.axis.basics.travel));
    FEEDWRIGHT_KEEP(s, lead_error,
                    value_of(over_travel) < value_of(variation) ? variation : over_travel);
  }
}

/// What a warmer screw adds over the travel; a stretched one first loses its stretch.
template <class W>
void heat_errors(SizingState<W>& s) {
  constexpr auto slot = PartSlot::drive;
  const Screw& screw = *s.screw;
  if (!screw.temperature_rise) {
    return;
  }
  const auto travel = s.in(PartSlot::axis, "travel", *s.axis.basics.travel);
  const auto expansion = s.in(slot, "expansion", *screw.expansion);
  const auto rise = s.in(slot, "temperature_rise", **screw.temperature_rise);
  const auto modulus = s.in(slot, "elastic_modulus", *screw.elastic_modulus);
  const auto area = carrying_area(s);
  const auto growth = thermal_growth(expansion, travel, rise);
  if (both_ends_fixed(screw)) {
    FEEDWRIGHT_KEEP(s, stretch_needed, stretch_for_heat(modulus, area, expansion, rise));
  }
  if (*screw.stretch == Force()) {
    FEEDWRIGHT_KEEP(s, heat_error, growth);
    return;
  }
  const auto kept = s.in(slot, "stretch", *screw.stretch) / (modulus * area) * travel;
  const auto left = growth - kept;
  FEEDWRIGHT_KEEP(s, heat_error, value_of(left) < Length() ? s.constant("0", Length()) : left);
}

template <class W>
void travel_errors(SizingState<W>& s) {
  if (s.screw == nullptr) {
    return;
  }
  lead_errors(s);
  heat_errors(s);
  if (s.out.lead_error && s.out.heat_error) {
    const auto terms = FEEDWRIGHT_EARLIER(s, lead_error) + FEEDWRIGHT_EARLIER(s, heat_error);
    FEEDWRIGHT_KEEP(s, travel_error, terms);
    FEEDWRIGHT_KEEP(
        s, travel_error_rss,
        s.solved("root_sum", two_sums({*s.out.lead_error, *s.out.heat_error}).root, terms));
  }
}

template <class W>
void cutting_errors(SizingState<W>& s) {
  if (!s.axis.targets.thrust) {
    return;
  }
  if (s.out.axis_stiffness) {
    const auto thrust = s.in(PartSlot::targets, "thrust", **s.axis.targets.thrust);
    if (s.out.worst_side_share) {
      // The tool stands off the middle: each side gives way to its share, and the tool between
      // them.
      const auto share = number(FEEDWRIGHT_EARLIER(s, worst_side_share));
      FEEDWRIGHT_KEEP(s, cutting_deflection,
                      (square(share) + square(1.0 - share)) * thrust /
                          FEEDWRIGHT_EARLIER(s, drive_stiffness));
    } else {
      FEEDWRIGHT_KEEP(s, cutting_deflection, thrust / FEEDWRIGHT_EARLIER(s, axis_stiffness));
    }
  }
  if (s.axis.targets.cutting_feed && s.out.cutting_torque) {
    const AngularVelocity speed = **s.axis.targets.cutting_feed / value_of(s.motor_travel);
    if (const auto lag = load_angle_travel(s, *s.out.cutting_torque, speed)) {
      FEEDWRIGHT_KEEP(s, cutting_load_angle,
                      lagging(s, *lag, FEEDWRIGHT_EARLIER(s, cutting_torque), speed));
    }
  }
  if (s.out.cutting_deflection && s.out.cutting_load_angle) {
    const auto terms =
        FEEDWRIGHT_EARLIER(s, cutting_deflection) + FEEDWRIGHT_EARLIER(s, cutting_load_angle);
    FEEDWRIGHT_KEEP(s, cutting_error, terms);
    FEEDWRIGHT_KEEP(s, cutting_error_rss,
                    s.solved("root_sum",
                             two_sums({*s.out.cutting_deflection, *s.out.cutting_load_angle}).root,
                             terms));
  }
}

template <class W>
void errors(SizingState<W>& s) {
  reversal_errors(s);
  travel_errors(s);
  cutting_errors(s);
}

} // namespace feedwright
