// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/machine.h"

namespace feedwright {

/// A sound machine to start from: one axis of ordinary parts, by their dimensions.
Machine new_machine();

/// An axis of ordinary parts under the first letter the machine does not have.
Axis new_axis(const Machine& machine);

/// An axis from elsewhere, under its own letter if that is free here, else under a free one.
Axis guest_axis(const Machine& machine, Axis axis);

} // namespace feedwright
