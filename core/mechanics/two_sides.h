// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "working/traced.h"

namespace feedwright {

/// Largest share of a load that one of two sides carries while the load travels across: ½ + y/W,
/// y half the cross travel, W between the sides. Source: statics of a beam on two supports.
template <NumberOf<Length> Y, NumberOf<Length> W>
auto worst_side_share(const Y& cross_travel, const W& spacing) {
  return 0.5 + number(cross_travel / spacing) / 2.0;
}

/// Force on the guide blocks each way that takes a couple: a force F off the drive's line by y,
/// blocks b apart: N = F y/b.
template <NumberOf<Force> F, NumberOf<Length> Y, NumberOf<Length> B>
auto couple_force(const F& force, const Y& offset, const B& block_spacing) {
  return force * (offset / block_spacing);
}

/// Skew over a width W when blocks b apart give way to the couple force N sideways, two blocks
/// taking it at each end: 2 (N/2k) W/b.
template <NumberOf<Force> N, NumberOf<Stiffness> K, NumberOf<Length> W, NumberOf<Length> B>
auto skew_of_blocks(const N& couple_force, const K& block_stiffness, const W& width,
                    const B& block_spacing) {
  return couple_force / block_stiffness * (width / block_spacing);
}

} // namespace feedwright
