// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What is asked of the motor in each of its usual states, how it divides, and how far up its curve
// it has that much.

#include "machine/machine.h"
#include "sizing/results.h"

#include <array>
#include <optional>
#include <vector>

namespace feedwright {

enum class MotorState : std::uint8_t {
  accelerating, ///< at the wanted feed with the wanted acceleration, up the slope, not cutting
  cutting,      ///< at the cutting feed with the wanted thrust, up the slope
  holding,      ///< standing on a slope
};

/// Where a torque at the motor goes. Those of the load as they would be without loss; what thread
/// and stage lose on the way counts by itself.
enum class TorqueShare : std::uint8_t {
  motor_side,  ///< turns the rotor and what sits on its shaft
  screw_side,  ///< turns the screws
  mass,        ///< speeds the moving mass up, with what the guides rub under its couple
  gravity,     ///< lifts
  guides,      ///< rubs: guides, seals, covers
  drag,        ///< bearings and preload of the screws
  thrust,      ///< cuts, with what the guides rub under its couple
  thread_loss, ///< below zero where friction helps to hold
  stage_loss,
};
inline constexpr std::size_t torque_share_count = 9;

struct MotorNeed {
  MotorState state;
  Torque torque;             ///< at the harder-loaded motor
  AngularVelocity speed;     ///< at which it is asked
  Velocity feed;             ///< of the axis at that speed
  std::optional<Torque> has; ///< usable there; nothing past the end of the motor's curve
  Verdict verdict;           ///< of what it has over what is asked
  AngularVelocity up_to;     ///< speed at which the usable torque has fallen to the need
  Velocity up_to_feed;
  std::array<Torque, torque_share_count> shares; ///< by TorqueShare; their sum is the torque

  Torque share(TorqueShare which) const { return shares[static_cast<std::size_t>(which)]; }
};

/// The states that the axis' targets and slope give, in the order of MotorState. Holding is asked
/// on a slope only, and held against what the motor holds at rest.
std::vector<MotorNeed> motor_needs(const Machine&, const Axis&);

} // namespace feedwright
