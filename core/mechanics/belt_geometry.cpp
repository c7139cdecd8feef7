// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/belt_geometry.h"

#include <algorithm>

namespace feedwright {

namespace {

double half_angle(Length diameter_1, Length diameter_2, Length centre_distance) {
  const double sine = (diameter_2 - diameter_1) / (2.0 * centre_distance);
  return std::asin(std::clamp(sine, -1.0, 1.0));
}

} // namespace

Length open_belt_length(Length diameter_1, Length diameter_2, Length centre_distance) {
  const double beta = half_angle(diameter_1, diameter_2, centre_distance);
  return 2.0 * centre_distance * std::cos(beta) + (pi / 2.0) * (diameter_1 + diameter_2) +
         beta * (diameter_2 - diameter_1);
}

std::optional<Length> centre_distance(Length diameter_1, Length diameter_2, Length belt_length) {
  const Length touching = (diameter_1 + diameter_2) / 2.0;
  if (!(belt_length >= open_belt_length(diameter_1, diameter_2, touching))) {
    return std::nullopt;
  }
  // dL/dC = 2 cos β: Newton from above converges without a bracket, L being convex in C.
  Length distance = belt_length / 2.0;
  constexpr int most_rounds = 60;
  for (int round = 0; round < most_rounds; ++round) {
    const Length error = open_belt_length(diameter_1, diameter_2, distance) - belt_length;
    const Length next = std::max(
        touching,
        Length(distance - error / (2.0 * std::cos(half_angle(diameter_1, diameter_2, distance)))));
    const bool settled = abs(next - distance) <= 4e-16 * distance;
    distance = next;
    if (settled) {
      break;
    }
  }
  return distance;
}

Angle smaller_pulley_wrap(Length diameter_1, Length diameter_2, Length centre_distance) {
  return (pi - 2.0 * std::abs(half_angle(diameter_1, diameter_2, centre_distance))) * radian;
}

} // namespace feedwright
