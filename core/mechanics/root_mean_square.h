// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "working/traced.h"

#include <optional>

namespace feedwright {

/// Mean of the square of a quantity that runs evenly from a to b: (a² + ab + b²)/3.
/// Source: integration.
template <class A>
auto mean_square(const A& from, const A& to) {
  return (square(from) + from * to + square(to)) / 3.0;
}

/// Root mean square of a torque over a cycle given piece by piece: √(Σ∫T² dt/Σt). It is the
/// steady torque with the same winding loss, and is set against a motor's continuous torque.
/// Holds while the torque is proportional to the current and the cycle is short against the
/// motor's thermal time constant. Durations ≥ 0; a piece that is not is left out.
class RmsTorque {
public:
  /// A piece of constant torque; nil for standstill.
  void add(Torque torque, Time duration) { add_linear(torque, torque, duration); }

  /// A piece over which torque runs evenly from one value to another.
  void add_linear(Torque from, Torque to, Time duration) {
    if (duration > Time()) {
      squares_ += mean_square(from, to) * duration;
      duration_ += duration;
    }
  }

  /// Nothing before a piece with a duration was added.
  std::optional<Torque> value() const {
    if (!(duration_ > Time())) {
      return std::nullopt;
    }
    return Torque(sqrt(squares_ / duration_));
  }

  Time duration() const { return duration_; }

private:
  Times<Times<Torque, Torque>, Time> squares_{};
  Time duration_{};
};

} // namespace feedwright
