// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A belt loop drive as its geometry: which pulley is whose, and where the slide stands for its
// belt.

#include "mechanics/belt_take_up.h"
#include "parts/transmission.h"

#include <tl/expected.hpp>

namespace feedwright {

/// A loop whose belt fits.
struct LoopLayout {
  std::vector<LoopPulley> pulleys; ///< at the slide's position
  BeltLoop path;
  Length slide_position; ///< along the slide from the drawn centre
  std::size_t motor = 0;
  std::vector<std::size_t> screws; ///< one or two
  int motor_teeth = 0;
  int screw_teeth = 0;
};

/// Why a loop cannot be laid out.
enum class LayoutFault : std::uint8_t {
  no_single_motor, ///< none or several pulleys on motors
  screws_not_one_or_two,
  pulley_without_size, ///< `first`: neither teeth nor a diameter; a driven one has no teeth
  screw_teeth_differ,  ///< two screws must turn alike
  driven_on_back,      ///< `first`: a motor's or screw's pulley on the belt's smooth back
  no_such_slide,       ///< the sliding pulley's number is not in the table
  geometry,            ///< see `loop`
  belt_does_not_fit,   ///< no place of the slide makes the belt's length
};

struct LayoutError {
  LayoutFault code{};
  std::size_t first = 0;
  std::optional<LoopFault> loop;
};

/// Diameter of the belt's pitch line round a pulley.
std::optional<Length> loop_pitch_diameter(const BeltLoopDrive& drive, const LoopMember& member);

tl::expected<LoopLayout, LayoutError> loop_layout(const BeltLoopDrive& drive);

/// Whole-tooth belts that fit within the slide's range, nearest to its drawn place first chosen,
/// by teeth; empty where the loop itself has a fault.
std::vector<TakeUpPosition> fitting_belts(const BeltLoopDrive& drive, int most);

/// Slide travel that lets the belt on and takes up its stretch, from where it runs.
TakeUpTravel tensioner_travel(const BeltLoopDrive& drive, const LoopLayout& layout);

} // namespace feedwright
