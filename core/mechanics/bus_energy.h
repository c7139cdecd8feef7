// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "working/traced.h"

namespace feedwright {

/// ½ J ω² of what turns. Source: elementary mechanics.
template <NumberOf<Inertia> J, NumberOf<AngularVelocity> W>
auto turning_energy(const J& inertia, const W& speed) {
  return inertia * square(speed) / 2.0;
}

/// ½ m v² of what slides. Source: elementary mechanics.
template <NumberOf<Mass> M, NumberOf<Velocity> V>
auto sliding_energy(const M& mass, const V& speed) {
  return mass * square(speed) / 2.0;
}

/// ½ C (V₂² − V₁²), what the capacitance of a supply takes up between two voltages: with V₂ the
/// voltage a drive trips at, the energy it can absorb. Negative if V₂ < V₁.
/// Source: elementary electricity.
template <NumberOf<Capacitance> C, NumberOf<Voltage> V>
auto capacitor_energy(const C& capacitance, const V& from, const V& to) {
  return capacitance * (square(to) - square(from)) / 2.0;
}

/// V₂ = √(V₁² + 2E/C), to which energy E returned raises the bus. Capacitance > 0, energy ≥ 0.
/// On the safe side: nothing flows off, in the winding, the drive or the supply, meanwhile.
template <NumberOf<Voltage> V, NumberOf<Capacitance> C, NumberOf<Energy> E>
auto raised_voltage(const V& from, const C& capacitance, const E& energy) {
  return sqrt(square(from) + 2.0 * energy / capacitance);
}

/// C = 2E/(V₂² − V₁²), the capacitance that keeps the bus below V₂. V₂ > V₁.
template <NumberOf<Energy> E, NumberOf<Voltage> V>
auto wanted_capacitance(const E& energy, const V& from, const V& to) {
  return 2.0 * energy / (square(to) - square(from));
}

} // namespace feedwright
