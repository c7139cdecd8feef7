// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Belts for a drive train that changes: pulleys laid out so that the belt goes round, and a whole
// number of teeth that fits, of a length shops keep where one does.

#include "machine/belt_choices.h"

#include <optional>
#include <vector>

namespace feedwright {

/// Teeth of the belt for two pulleys whose shafts stand about one and a half times both diameters
/// apart, and no less than 100 mm: near enough for a plate, far enough for motor and bearing.
int stage_belt_teeth(const BeltStage& stage, const std::vector<StockBelts>& stock);

struct LoopWish {
  int motor_teeth = 20;
  int screw_teeth = 20;
  /// Between two screws; one screw if not given.
  std::optional<Length> spacing;
};

/// A loop of that belt: with two screws the motor below their middle between two rollers on the
/// belt's back, that its pulley is well wrapped, or without them where there is no room; with one
/// screw the motor below it and a sliding roller on the belt's back. Nothing if none goes round.
std::optional<BeltLoopDrive> laid_out_loop(const BeltBody& body, const LoopWish& wish,
                                           const std::vector<StockBelts>& stock);

/// The loop with one more roller on the belt's back, at the longest span that takes it; its
/// number. Nothing if none does.
std::optional<BeltLoopDrive> with_idler(const BeltLoopDrive& loop,
                                        const std::vector<StockBelts>& stock);

/// The loop without one of its idlers (by its place in the table); a slide that goes with it is
/// taken over by the motor. Nothing if the rest is no loop.
std::optional<BeltLoopDrive> without_idler(const BeltLoopDrive& loop, std::size_t pulley,
                                           const std::vector<StockBelts>& stock);

/// A belt that fits the pulleys as they stand, in stock if one is; nothing if none does.
std::optional<BeltLoopDrive> with_fitting_belt(BeltLoopDrive loop,
                                               const std::vector<StockBelts>& stock);

} // namespace feedwright
