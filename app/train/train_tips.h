// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// All that the drawing knows of a part, in words: for tips and for screen readers.

#include "train/train_geometry.h"

namespace feedwright::train_tips {

/// A line each; with the limits that stand at the part.
QString about(const TrainGeometry& train, PartSlot slot);

} // namespace feedwright::train_tips
