// SPDX-License-Identifier: GPL-3.0-or-later
// Compiled twice, see CMakeLists.txt. One call is one axis, everything computed, from the machine
// as read to its limits and cautions.
#include "sizing/size_axis.h"
#include "support/axes.h"

namespace {

const feedwright::Machine& machine() {
  static const feedwright::Machine ordinary = feedwright::testing::ordinary_router();
  return ordinary;
}

} // namespace

double KERNEL() {
  const auto results = feedwright::size_axis(machine(), machine().axes.front());
  return feedwright::si_value(*results.governing_feed);
}
