// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What weighs most in a recorded equation: how far a small change of each symbol passes on, and
// which part of a sum is the largest.

#include "working/traced.h"

#include <vector>

namespace feedwright {

/// One per cent on the leaf moves the whole by `share` per cent: d ln y/d ln x.
struct LeafShare {
  const Expression* leaf;
  double share;
};

/// Of every input, constant and result in the expression, by the chain rule over the recorded
/// values. Nothing for a leaf that a solved equation hides, nothing at all where
/// the whole is zero.
std::vector<LeafShare> leaf_shares(const Expression& whole);

/// The leaves below solved equations, whose share is not known.
std::vector<const Expression*> hidden_leaves(const Expression& whole);

struct SumShare {
  const Expression* part;
  double share; ///< of the sum of all magnitudes; of their squares in a root of squares
};

/// The parts of the sum that the expression is, or is but for factors; empty if there is none.
std::vector<SumShare> sum_shares(const Expression& whole);

} // namespace feedwright
