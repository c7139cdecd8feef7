// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mechanics/belt_loop.h"

#include <optional>

namespace feedwright {

/// One pulley of a loop slides on a straight line through its drawn centre. Positions are measured
/// along `direction` from the drawn centre and lie in [−back, +forth].
struct TakeUp {
  std::size_t pulley = 0; ///< index into the loop
  Angle direction = Angle();
  Length back = Length();
  Length forth = Length();
};

struct TakeUpPosition {
  int belt_teeth;
  Length position;
};

/// Slides from a fitted belt's position, signed along `direction`: nothing where the loop comes to
/// a fault (pulleys meet, an idler loses the belt) before its length has changed so much.
struct TakeUpTravel {
  std::optional<Length> to_ease;    ///< makes the loop shorter by the ease: the belt goes on
  std::optional<Length> to_stretch; ///< makes the loop longer by the stretch: the belt tightens
};

/// The pulleys with the sliding one at that position.
std::vector<LoopPulley> at_position(std::span<const LoopPulley> pulleys, const TakeUp& take_up,
                                    Length position);

/// The positions that make a whole number of belt teeth of that pitch: of all in the slide's range
/// the `most` nearest to the drawn centre, by teeth, then by position. The same tooth count stands
/// twice where the slide first lengthens and then shortens the loop. Empty if none, or if the
/// take-up is not one (no such pulley, no range, pitch ≤ 0). The sense is that of the loop as
/// drawn. Solved to 1e-12 of the range (TOMS 748) between samples of 1/256 of the range; two
/// faulty stretches closer than that are not told apart.
std::vector<TakeUpPosition> whole_tooth_positions(std::span<const LoopPulley> pulleys,
                                                  const TakeUp& take_up, Length pitch, int most);

/// The position in the slide's range, nearest to the drawn centre, that makes the pitch length so;
/// nothing if there is none.
std::optional<Length> position_for(std::span<const LoopPulley> pulleys, const TakeUp& take_up,
                                   Length belt_length);

/// Slides needed from `position` to ease the loop and to stretch it, both lengths ≥ 0. Not limited
/// by the slide's range, so that a range too small can be named with what it lacks. Searched to
/// a fifth of the loop's length.
TakeUpTravel take_up_travel(std::span<const LoopPulley> pulleys, const TakeUp& take_up,
                            Length position, Length ease, Length stretch);

} // namespace feedwright
