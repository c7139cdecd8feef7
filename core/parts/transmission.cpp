// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/transmission.h"

namespace feedwright {

std::vector<LoopMember> BeltLoopDrive::default_pulleys() {
  const auto at = [](PulleyRole role, double x, double y, int teeth, BeltFace face) {
    LoopMember made;
    made.role = role;
    made.x = Finite<Length>::of(from_si<Length>(x));
    made.y = Finite<Length>::of(from_si<Length>(y));
    made.teeth = teeth;
    made.face = face;
    return made;
  };
  return {at(PulleyRole::motor, 0.15, -0.08, 20, BeltFace::toothed),
          at(PulleyRole::screw, 0.3, 0.0, 20, BeltFace::toothed),
          at(PulleyRole::screw, 0.0, 0.0, 20, BeltFace::toothed)};
}

const BeltBody* belt_of(const Transmission& transmission) {
  if (const auto* stage = std::get_if<BeltStage>(&transmission)) {
    return stage;
  }
  return std::get_if<BeltLoopDrive>(&transmission);
}

} // namespace feedwright
