// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the axes ask of the machine together: of its one supply, its one bus, its controller.

#include "sizing/results.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace feedwright {

/// What one axis adds to the machine. A missing value is open.
struct AxisTally {
  std::int64_t motors = 1;       ///< each with a drive and an output of the controller
  Mass moved{};                  ///< by this axis; axes that ride on it are part of it
  std::optional<Power> power;    ///< from the supply, at the axis' own largest
  std::optional<Power> standing; ///< heat of its windings with the current set, at rest
  std::optional<Energy> returned;
  std::optional<Voltage> bus_alone; ///< to which this axis alone lifts the bus
  /// Largest torque asked of the motor over what it may be asked at that speed: fast moves and cut.
  std::optional<double> torque_used;
  /// RMS torque over a duty cycle, over the torque that may be asked for ever; of servos.
  std::optional<double> rms_used;
  std::optional<Frequency> top_step_rate; ///< at the feed reached
};

/// A straight move of two axes at right angles.
struct DiagonalFeed {
  std::size_t first = 0;
  std::size_t second = 0;
  Velocity together; ///< both at the feeds they reach: √(v₁² + v₂²)
  Velocity evenly;   ///< at 45°, where the slower one holds back: √2 · the lower feed
};

enum class MachineLimitId : std::uint8_t { supply_power, bus_voltage };
inline constexpr std::size_t machine_limit_count = 2;

/// A limit of all axes at once.
struct MachineLimit {
  MachineLimitId id{};
  std::optional<AnyQuantity> reached; ///< what is asked
  std::optional<AnyQuantity> single;  ///< the most that one axis alone asks
  std::optional<std::size_t> largest; ///< that axis
  std::optional<AnyQuantity> allowed;
  std::optional<double> margin; ///< allowed over reached
  Verdict verdict = Verdict::open;
  /// Some axes' share is open: what is reached is the least it can be. It may still be over.
  bool partial = false;
  InputRef missing;                     ///< set when open or partial
  std::optional<std::size_t> open_axis; ///< whose input is missing; nothing: the machine's
};

struct MachineResults {
  std::vector<AxisTally> axes;
  std::int64_t motors = 0;
  std::optional<Current> current;        ///< of all at once, over the supply's voltage
  std::optional<Power> standing;         ///< heat of all windings at rest; nothing if one is open
  std::optional<Energy> returned_energy; ///< of the axes for which it is known
  /// That keeps the bus at its limit when all brake at once; nothing if the limit is not given or
  /// not above the supply's own voltage.
  std::optional<Capacitance> capacitance_needed;
  /// In whatever direction: the lowest of the feeds reached.
  std::optional<Velocity> feed_any_direction;
  std::vector<DiagonalFeed> diagonals; ///< of the first axes, two by two
  std::array<MachineLimit, machine_limit_count> limits{};
  std::vector<Finding> findings;

  const MachineLimit& limit(MachineLimitId id) const {
    return limits[static_cast<std::size_t>(id)];
  }
};

/// All axes at once, each at its own largest: the sum is never too low, and a router that cuts a
/// slope asks it. No diversity is taken off, for no input says how seldom axes move together.
/// `results` are those of the machine's axes, in their order. The spindle has a supply of its own.
MachineResults size_machine(const Machine& machine, std::span<const AxisResults> results);

std::string_view machine_limit_code(MachineLimitId id); ///< stable id
/// The machine's part and field a builder would change first.
InputRef machine_limit_input(MachineLimitId id);

/// Whether a limit of all axes together is over.
bool any_limit_over(const MachineResults& results);

} // namespace feedwright
