// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/loop_layout.h"

#include "mechanics/belt_geometry.h"

#include <algorithm>

namespace feedwright {

namespace {

std::optional<std::vector<LoopPulley>> drawn_pulleys(const BeltLoopDrive& drive,
                                                     LayoutError& error) {
  std::vector<LoopPulley> pulleys;
  for (std::size_t i = 0; i < drive.pulleys.size(); ++i) {
    const LoopMember& member = drive.pulleys[i];
    const auto diameter = loop_pitch_diameter(drive, member);
    if (!diameter) {
      error = {LayoutFault::pulley_without_size, i, std::nullopt};
      return std::nullopt;
    }
    pulleys.push_back({*member.x, *member.y, *diameter, member.face == BeltFace::back});
  }
  return pulleys;
}

std::optional<LayoutError> assign_roles(const BeltLoopDrive& drive, LoopLayout& layout) {
  std::size_t motors = 0;
  for (std::size_t i = 0; i < drive.pulleys.size(); ++i) {
    const LoopMember& member = drive.pulleys[i];
    if (member.role == PulleyRole::idler) {
      continue;
    }
    if (member.teeth == 0) {
      return LayoutError{LayoutFault::pulley_without_size, i, std::nullopt};
    }
    if (member.face == BeltFace::back) {
      return LayoutError{LayoutFault::driven_on_back, i, std::nullopt};
    }
    if (member.role == PulleyRole::motor) {
      ++motors;
      layout.motor = i;
      layout.motor_teeth = member.teeth;
      continue;
    }
    if (!layout.screws.empty() && member.teeth != layout.screw_teeth) {
      return LayoutError{LayoutFault::screw_teeth_differ, i, std::nullopt};
    }
    layout.screws.push_back(i);
    layout.screw_teeth = member.teeth;
  }
  if (motors != 1) {
    return LayoutError{LayoutFault::no_single_motor, 0, std::nullopt};
  }
  if (layout.screws.empty() || layout.screws.size() > 2) {
    return LayoutError{LayoutFault::screws_not_one_or_two, 0, std::nullopt};
  }
  return std::nullopt;
}

TakeUp take_up_of(const BeltLoopDrive& drive) {
  return {static_cast<std::size_t>(drive.sliding_pulley) - 1, *drive.slide_direction,
          *drive.slide_back, *drive.slide_forth};
}

} // namespace

std::optional<Length> loop_pitch_diameter(const BeltLoopDrive& drive, const LoopMember& member) {
  // Behind the belt a roller's surface touches the back; before it, a smooth one touches the tooth
  // tips, about as far from the pitch line.
  if (member.teeth > 0 && member.face == BeltFace::toothed) {
    return pulley_pitch_diameter(double(member.teeth), *drive.pitch);
  }
  if (member.diameter) {
    return **member.diameter + 2.0 * *drive.back_height;
  }
  return std::nullopt;
}

tl::expected<LoopLayout, LayoutError> loop_layout(const BeltLoopDrive& drive) {
  LoopLayout layout;
  if (const auto error = assign_roles(drive, layout)) {
    return tl::unexpected(*error);
  }
  if (static_cast<std::size_t>(drive.sliding_pulley) > drive.pulleys.size()) {
    return tl::unexpected(LayoutError{LayoutFault::no_such_slide, 0, std::nullopt});
  }
  LayoutError error;
  const auto drawn = drawn_pulleys(drive, error);
  if (!drawn) {
    return tl::unexpected(error);
  }
  if (const auto path = belt_loop(*drawn); !path) {
    return tl::unexpected(LayoutError{LayoutFault::geometry, 0, path.error()});
  }
  const auto position =
      position_for(*drawn, take_up_of(drive), double(drive.belt_teeth) * *drive.pitch);
  if (!position) {
    return tl::unexpected(LayoutError{LayoutFault::belt_does_not_fit, 0, std::nullopt});
  }
  layout.slide_position = *position;
  layout.pulleys = at_position(*drawn, take_up_of(drive), *position);
  auto path = belt_loop(layout.pulleys, loop_sense(*drawn));
  if (!path) {
    return tl::unexpected(LayoutError{LayoutFault::geometry, 0, path.error()});
  }
  layout.path = *std::move(path);
  return layout;
}

std::vector<TakeUpPosition> fitting_belts(const BeltLoopDrive& drive, int most) {
  LayoutError error;
  const auto drawn = drawn_pulleys(drive, error);
  const bool slides = static_cast<std::size_t>(drive.sliding_pulley) <= drive.pulleys.size();
  return drawn && slides ? whole_tooth_positions(*drawn, take_up_of(drive), *drive.pitch, most)
                         : std::vector<TakeUpPosition>();
}

TakeUpTravel tensioner_travel(const BeltLoopDrive& drive, const LoopLayout& layout) {
  LayoutError error;
  const auto drawn = drawn_pulleys(drive, error);
  if (!drawn) {
    return {};
  }
  // Over a pulley's flange the belt must come loose by about half a tooth; it stretches by about
  // one part in five hundred when set to its pull. Common practice, no source.
  const Length ease = *drive.pitch / 2.0;
  const Length stretch = layout.path.length / 500.0;
  return take_up_travel(*drawn, take_up_of(drive), layout.slide_position, ease, stretch);
}

} // namespace feedwright
