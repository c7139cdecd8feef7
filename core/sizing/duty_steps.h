// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What a cycle of moves and cuts does: life, mean torque, energy and power.

#include "machine/milling_case.h"
#include "mechanics/bus_energy.h"
#include "mechanics/move_profile.h"
#include "mechanics/root_mean_square.h"
#include "mechanics/screw_life.h"
#include "sizing/belt_steps.h"

namespace feedwright {

/// Everything a cycle gathers on its way.
struct CycleSums {
  RmsTorque torque;
  CubicMeanLoad load;     ///< of a single nut, or of the loaded half
  CubicMeanLoad relieved; ///< of the other half of a preloaded pair
  double turns = 0.0;     ///< of the screw
  Length travelled{};
};

/// One of the loads of a cycle, on one screw, for so many turns.
template <class W>
void take_load(const SizingState<W>& s, CycleSums& sums, Force of_motor, double turns) {
  const Force on_screw = abs(of_motor) * value_of(s.screw_share);
  if (s.screw != nullptr && s.screw->preload) {
    // Two screws wound against each other are the halves: the pair carries what both motors push.
    const bool opposed = s.axis.sides.pairing == Pairing::opposed;
    const Force on_pair = opposed ? Force(abs(of_motor) * (s.two_motors ? 2.0 : 1.0)) : on_screw;
    const PairLoads halves = pair_loads(on_pair, **s.screw->preload);
    sums.load.add(halves.loaded, turns);
    sums.relieved.add(halves.relieved, turns);
  } else {
    sums.load.add(on_screw, turns);
  }
  sums.turns += turns;
}

template <class W>
double turns_over(const SizingState<W>& s, Length distance) {
  return distance / (2.0 * pi * radian * value_of(s.screw_travel));
}

template <class W>
void take_cases(SizingState<W>& s, CycleSums& sums) {
  for (std::size_t i = 0; i < s.out.cases.size(); ++i) {
    const CaseResult& load = s.out.cases[i];
    const Time time = *s.axis.duty.load_cases[i].time;
    sums.torque.add(load.torque, time);
    const Length distance = load.feed * time;
    sums.travelled += distance;
    take_load(s, sums, load.pushed, turns_over(s, distance));
  }
}

/// The wanted limits of a move without cutting; nothing while a target is open.
template <class W>
std::optional<MoveLimits> move_limits(const SizingState<W>& s) {
  const Targets& targets = s.axis.targets;
  if (!targets.feed || !targets.acceleration) {
    return std::nullopt;
  }
  std::optional<Jerk> jerk;
  if (s.axis.duty.jerk) {
    jerk = **s.axis.duty.jerk;
  }
  return MoveLimits{**targets.feed, **targets.acceleration, jerk};
}

/// A move up the slope and the same down it, each counting half.
template <class W>
void take_move(const SizingState<W>& s, CycleSums& sums, const MoveProfile& profile, Time rest) {
  for (const double up : {1.0, -1.0}) {
    const Force steady = value_of(s.friction) + up * value_of(s.gravity);
    for (const MoveSegment& segment : profile.segments) {
      if (segment.duration <= Time()) {
        continue;
      }
      const Acceleration from = segment.acceleration_at_start;
      const Acceleration to = from + segment.jerk * segment.duration;
      const auto torque = [&](Acceleration a) {
        return Torque(value_of(moving_torque(s, as_step(s, a), as_step(s, steady))));
      };
      sums.torque.add_linear(torque(from), torque(to), segment.duration / 2.0);
      const Acceleration middle = (from + to) / 2.0;
      const Length covered = segment.velocity_at_start * segment.duration +
                             from * square(segment.duration) / 2.0 +
                             segment.jerk * square(segment.duration) * segment.duration / 6.0;
      take_load(s, sums, value_of(accelerating_force(s, as_step(s, middle))) + steady,
                turns_over(s, Length(covered / 2.0)));
    }
  }
  sums.torque.add(s.out.holding_torque_needed.value_or(Torque()), rest);
  sums.travelled += profile.distance;
}

template <class W>
void take_moves(SizingState<W>& s, CycleSums& sums, const MoveLimits& limits) {
  for (const RapidMove& move : s.axis.duty.moves) {
    if (const auto profile = least_time_move(*move.distance, limits)) {
      take_move(s, sums, *profile, *move.rest);
    }
  }
}

template <class W>
void life(SizingState<W>& s, const CycleSums& sums) {
  if (s.screw == nullptr || s.screw->thread != ThreadForm::ball || !(sums.turns > 0.0)) {
    return;
  }
  constexpr auto slot = PartSlot::drive;
  const auto mean = FEEDWRIGHT_KEEP(
      s, mean_load, s.solved("mean_load", sums.load.value(), s.gravity, s.friction));
  if (!s.screw->dynamic_rating) {
    return;
  }
  const Force rating = **s.screw->dynamic_rating;
  const double factor = *s.screw->load_factor;
  auto turns = rated_revolutions(rating, factor, value_of(mean));
  if (turns && s.screw->preload) {
    if (const auto other = rated_revolutions(rating, factor, sums.relieved.value())) {
      turns = life_of_pair(*turns, *other);
    }
  }
  if (!turns) {
    return;
  }
  const double sure = *turns * reliability_factor(*s.screw->reliability);
  const auto total =
      FEEDWRIGHT_KEEP(s, life_turns,
                      s.solved("screw_life", sure, s.in(slot, "dynamic_rating", rating),
                               s.in(slot, "load_factor", factor), mean,
                               s.in(slot, "reliability", *s.screw->reliability)));
  FEEDWRIGHT_KEEP(s, life_distance, total * (2.0 * pi * times_radian(s.screw_travel)));
  if (sums.torque.duration() > Time()) {
    FEEDWRIGHT_KEEP(s, life_time,
                    total / s.constant("n_Σ", sums.turns) *
                        s.constant("t_Σ", sums.torque.duration()));
  }
}

/// Blocks share the weight of their rail, of two sides the heavier one; the couple of one central
/// drive loads half of the blocks each way.
template <class W>
void guides(SizingState<W>& s) {
  const Guides& guides = s.axis.guides;
  if (!guides.block_rating || guides.blocks < 1) {
    return;
  }
  const auto blocks = s.in(PartSlot::guides, "blocks", double(guides.blocks));
  const auto whole = s.in(PartSlot::carriage, "mass", *s.axis.carriage.mass);
  const auto g = s.constant("g", standard_gravity);
  auto load = whole * g / blocks;
  if (s.out.worst_side_share && guides.blocks > 1) {
    const auto crossing = s.in(PartSlot::sides, "crossing_mass", *s.axis.sides.crossing_mass);
    const auto rail =
        (whole - crossing) / 2.0 + number(FEEDWRIGHT_EARLIER(s, worst_side_share)) * crossing;
    load = rail * g / (blocks / 2.0);
  }
  if (s.out.couple_force) {
    const double each_way = std::max(1.0, double(guides.blocks) / 2.0);
    load = load + FEEDWRIGHT_EARLIER(s, couple_force) / each_way;
  }
  const auto kept = FEEDWRIGHT_KEEP(s, guide_block_load, load);
  const auto ratio = number(s.in(PartSlot::guides, "block_rating", **guides.block_rating) / kept);
  FEEDWRIGHT_KEEP(s, guide_life,
                  ratio * square(ratio) * s.constant("100 km", from_si<Length>(1e5)));
}

template <class W>
void cycle(SizingState<W>& s) {
  CycleSums sums;
  take_cases(s, sums);
  // Moves whose limits are not known would be left out of life and torque: then both stay open.
  const bool whole = s.axis.duty.moves.empty() || move_limits(s);
  if (const auto limits = move_limits(s)) {
    take_moves(s, sums, *limits);
    if (const auto stroke = least_time_move(*s.axis.basics.travel, *limits)) {
      FEEDWRIGHT_KEEP(
          s, full_travel_time,
          s.solved("least_time", stroke->total,
                   s.in(PartSlot::axis, "travel", *s.axis.basics.travel),
                   s.in(PartSlot::targets, "feed", **s.axis.targets.feed),
                   s.in(PartSlot::targets, "acceleration", **s.axis.targets.acceleration)));
    }
  }
  if (const auto mean = whole ? sums.torque.value() : std::nullopt) {
    FEEDWRIGHT_KEEP(s, cycle_time, s.constant("t_Σ", sums.torque.duration()));
    FEEDWRIGHT_KEEP(
        s, rms_torque,
        s.solved("rms_torque", *mean, s.motor_side_inertia, s.screw_side_inertia, s.friction));
  }
  if (const auto* servo = std::get_if<Servo>(&s.axis.motor)) {
    FEEDWRIGHT_KEEP(s, continuous_torque,
                    s.in(PartSlot::motor, "continuous_torque", *servo->continuous_torque) *
                        s.in(PartSlot::motor, "usable_share", s.motor.usable_share()));
  }
  if (whole) {
    life(s, sums);
  }
  guides(s);
}

/// Energy that comes back to the supply when the axis stops from its wanted feed, going down where
/// it can: each motor's share, brought through the stages against the power's flow.
template <class W>
void braking_energy(SizingState<W>& s) {
  if (!s.axis.targets.feed || !s.axis.targets.acceleration) {
    return;
  }
  const auto feed = s.in(PartSlot::targets, "feed", **s.axis.targets.feed);
  const auto a = s.in(PartSlot::targets, "acceleration", **s.axis.targets.acceleration);
  const auto path = square(feed) / (2.0 * a);
  const auto back_share =
      value_of(s.back_efficiency) > 0.0 ? s.back_efficiency : s.constant("0", 0.0);
  const auto sliding = sliding_energy(s.mass, feed) + (s.gravity - s.friction) * path;
  const auto turning = turning_energy(s.screw_side_inertia, feed / s.screw_travel);
  const auto lost = s.drag * (path / s.screw_travel);
  const auto at_stage = turning + back_share * sliding - lost;
  const auto whole =
      turning_energy(s.motor_side_inertia, feed / s.motor_travel) + s.stage_efficiency * at_stage;
  const auto motors = s.constant("N_m", s.two_motors ? 2.0 : 1.0);
  const auto returned = FEEDWRIGHT_KEEP(
      s, returned_energy, value_of(whole) > Energy() ? motors * whole : s.constant("0", Energy()));
  if (s.machine.supply.capacitance) {
    FEEDWRIGHT_KEEP(
        s, bus_voltage,
        raised_voltage(s.in(PartSlot::supply, "voltage", *s.machine.supply.voltage),
                       s.in(PartSlot::supply, "capacitance", **s.machine.supply.capacitance),
                       returned));
  }
}

/// The current a drive is set to and the resistance of a phase: two phases at the effective
/// current, 2 I² R.
template <class W, class I, class R>
auto phase_heat(const I& current, CurrentReading reading, const R& resistance) {
  const auto of_peak = square(current) * resistance;
  using Result = std::remove_cvref_t<decltype(2.0 * of_peak)>;
  return reading == CurrentReading::peak ? Result(of_peak) : Result(2.0 * of_peak);
}

/// Heat in a stepper's windings; nothing if current or resistance is not known.
template <class W>
auto stepper_heat(const SizingState<W>& s) {
  using Heat = std::optional<typename SizingState<W>::template N<Power>>;
  constexpr auto slot = PartSlot::motor;
  if (const auto* ratings = std::get_if<StepperByRatings>(&s.axis.motor)) {
    return Heat(phase_heat<W>(s.in(slot, "drive_current", *ratings->drive_current),
                              ratings->drive_current_reading,
                              s.in(slot, "resistance", *ratings->resistance)));
  }
  const auto* points = std::get_if<StepperByPoints>(&s.axis.motor);
  if (points == nullptr || !points->resistance ||
      !(points->drive_current || points->rated_current)) {
    return Heat();
  }
  const auto resistance = s.in(slot, "resistance", **points->resistance);
  return points->drive_current
             ? Heat(phase_heat<W>(s.in(slot, "drive_current", **points->drive_current),
                                  points->drive_current_reading, resistance))
             : Heat(phase_heat<W>(s.in(slot, "rated_current", **points->rated_current),
                                  CurrentReading::rms, resistance));
}

/// Largest shaft power over the known cases, the winding's heat, and what the supply must give.
template <class W>
void power(SizingState<W>& s) {
  std::optional<typename SizingState<W>::template N<Power>> most;
  const auto take = [&](ResultId id, const std::optional<Torque>& torque, std::string_view member,
                        const auto& feed) {
    if (torque && feed) {
      const auto shaft =
          s.earlier(id, *torque) * (s.in(PartSlot::targets, member, **feed) / s.motor_travel);
      if (!most || value_of(shaft) > value_of(*most)) {
        most = shaft;
      }
    }
  };
  take(ResultId::rapid_torque, s.out.rapid_torque, "feed", s.axis.targets.feed);
  take(ResultId::cutting_torque, s.out.cutting_torque, "cutting_feed", s.axis.targets.cutting_feed);
  const auto heat = stepper_heat(s);
  if (heat) {
    FEEDWRIGHT_KEEP(s, winding_heat, *heat);
  }
  if (!most) {
    return;
  }
  const auto shaft = FEEDWRIGHT_KEEP(s, motor_power, *most);
  if (!heat && s.motor.is_stepper()) {
    return;
  }
  // A servo's copper loss is not known from its data sheet; its drive loses some too.
  constexpr double usual_servo_efficiency = 0.8;
  const auto each = heat ? shaft + FEEDWRIGHT_EARLIER(s, winding_heat)
                         : shaft / s.constant("η_m", usual_servo_efficiency);
  const auto all =
      FEEDWRIGHT_KEEP(s, supply_power, s.two_motors ? s.constant("N_m", 2.0) * each : each);
  FEEDWRIGHT_KEEP(s, supply_current,
                  all / s.in(PartSlot::supply, "voltage", *s.machine.supply.voltage));
}

} // namespace feedwright
