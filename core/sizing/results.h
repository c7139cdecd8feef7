// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What sizing an axis gives. Each result is one line of results.def; this header turns the lines
// into an id, a typed place in AxisResults, and a descriptor.

#include "machine/machine.h"

#include <array>
#include <optional>
#include <span>
#include <vector>

namespace feedwright {

enum class ResultId : std::uint8_t {
#define RESULT(name, type, symbol, unit, publication) name,
#include "sizing/results.def"
#undef RESULT
};

struct AxisResults;

/// How a margin reads: clear from 1.2, close from 1, over below 1, open without target or input.
enum class Verdict : std::uint8_t { clear, close, over, open };

/// On which scale a limit stands.
enum class LimitScale : std::uint8_t { feed, thrust, other };

enum class LimitId : std::uint8_t {
  whip,
  ball_speed,
  screw_speed,
  motor_torque,
  motor_speed,
  step_rate,
  belt_speed,
  guide_speed,
  buckling,
  core_stress,
  static_capacity,
  bearing_thrust,
  motor_thrust,
  acceleration,
  inertia_match,
  resolution,
  lost_motion,
  belt_pull,
  haul_pull,
  coupling_torque,
  rms_torque,
  reversal_error,
  cutting_error,
  life,
  supply_power,
  bus_voltage,
  load_cases,
};
inline constexpr std::size_t limit_count = 27;

/// One limit as it stands: nothing computed (open) names the input it wants.
struct Limit {
  LimitId id{};
  std::optional<AnyQuantity> reached; ///< allowed or available value
  std::optional<AnyQuantity> wanted;
  std::optional<double> margin; ///< allowed over wanted, so that 1 is the edge; more is better
  Verdict verdict = Verdict::open;
  InputRef missing;    ///< set when open for want of an input
  bool applies = true; ///< false where the train has no such part (no belt, no balls)
  /// The limit lies at `reached` or above: what is known ends there before the limit is met. It
  /// then never governs.
  bool at_least = false;
};

/// What was computed but deserves care. Words are made elsewhere.
enum class FindingCode : std::uint8_t {
  axis_can_fall, ///< actual: torque gravity puts on the motor unpowered; allowed: what resists
  self_locking_not_promised, ///< thread that does not back-drive; vibration may defeat it
  near_whip,                 ///< wanted feed turns the screw past its allowed speed
  whip_beyond_critical,      ///< wanted feed turns the screw at or past the first critical speed
  stall_at_rest,             ///< usable torque cannot even start the axis
  motor_curve_ends,          ///< wanted feed lies past the last known point of the motor's curve
  points_at_other_voltage,   ///< torque points taken at more than the supply gives, taken down
  few_teeth_in_mesh,         ///< fewer than 6 belt teeth carry
  long_open_screw,           ///< a turning screw longer than half a metre: guard it
  hold_beyond_motor,         ///< gravity asks more than the motor can hold
  typical_figures,           ///< a part's figures are typical, not the supplier's
  nut_near_shaft_frequency,  ///< a turning nut shakes its still shaft near its own frequency
  preload_lost,              ///< the load exceeds what keeps both halves of a pair loaded
  slack_belt,                ///< the set pull lets the slack side go limp at peak pull
  too_few_pulley_teeth,      ///< a pulley smaller than the belt's least
  curve_reckoned_anew,       ///< the motor's curve was fitted for another voltage
  cut_capped_by_spindle,     ///< a load case asks more than the spindle gives
  guard_moving_belt,         ///< a long open belt: guard it
  sides_can_skew,            ///< two motors: one that stalls skews the gantry
  bus_over_limit,            ///< braking lifts the supply past the drives' limit
  held_unpowered_by_detent,  ///< nothing but friction and detent torque keeps the axis from falling
  screw_too_short,           ///< actual: length between bearings; allowed: what travel and nut want
  brake_not_judged,    ///< actual: torque at the motor's shaft that the brake fitted has to hold
  overall_below_span,  ///< actual: whole length of the screw; allowed: length between its bearings
  preset_figures,      ///< actual: how many of a bought part's figures nobody has given
  torque_from_ratings, ///< a stepper's torque at speed is reckoned, not measured
  curve_of_less_voltage, ///< torque points taken at less than the supply gives, used as they are
  lifting_axis_flat,     ///< an axis by the letter that usually lifts is given as lying flat
  axis_can_rise, ///< actual: torque a too strong counterbalance puts on the motor unpowered;
                 ///< allowed: what resists
};

struct Finding {
  FindingCode code;
  PartSlot subject;
  std::optional<AnyQuantity> actual;
  std::optional<AnyQuantity> allowed;
};

/// One pulley of a belt loop, in the table's order.
struct PulleyResult {
  Angle wrap;
  double teeth_in_mesh; ///< zero for a smooth roller
  Length span_after;    ///< free length to the next pulley
};

/// A load case as it was reckoned.
struct CaseResult {
  Force thrust;  ///< along the axis, at the tool
  bool capped;   ///< by the spindle's power
  Force axial;   ///< on the harder-loaded screw (or belt)
  Torque torque; ///< at the motor
  Velocity feed;
  Force pushed; ///< by the harder-loaded motor
};

/// Immutable once returned. A missing value is open.
struct AxisResults {
#define RESULT(name, type, symbol, unit, publication) std::optional<type> name;
#include "sizing/results.def"
#undef RESULT
  std::array<Limit, limit_count> limits{};
  std::optional<LimitId> governing; ///< of the feed
  std::optional<LimitId> governing_thrust_limit;
  /// The counterbalance pulls more than the axis weighs: what is left of both points upwards.
  bool overbalanced = false;
  std::vector<Finding> findings;
  std::vector<PulleyResult> loop;
  std::vector<CaseResult> cases;

  const Limit& limit(LimitId id) const {
    return limits[static_cast<std::size_t>(id)];
  }
};

struct ResultDescriptor {
  ResultId id;
  std::string_view name;
  std::string_view symbol;
  Kind kind;
  std::string_view unit;
  std::string_view publication; ///< where the equation is from; empty for definitions and sums
  std::optional<double> (*si_of)(const AxisResults&); ///< in coherent SI units

  /// The value in the results; nothing if it is open.
  std::optional<AnyQuantity> get(const AxisResults& results) const {
    const auto si = si_of(results);
    return si ? std::optional(AnyQuantity{kind, *si}) : std::nullopt;
  }
};

std::span<const ResultDescriptor> result_descriptors();
const ResultDescriptor& descriptor(ResultId id);

/// A limit, declared once: its scale, the result it is, the target it is held against, the part
/// and field a builder would change first.
struct LimitDescriptor {
  LimitId id;
  std::string_view name; ///< stable id
  LimitScale scale;
  ResultId result;
  std::string_view target; ///< member of the targets (or of the part) it is held against
  bool at_most;            ///< the result must stay below the target
  PartSlot part;
  std::string_view member; ///< field to show when the limit is chosen
};

std::span<const LimitDescriptor> limit_descriptors();
const LimitDescriptor& descriptor(LimitId id);

std::string_view verdict_name(Verdict verdict);  ///< stable id
std::string_view finding_name(FindingCode code); ///< stable id

} // namespace feedwright
