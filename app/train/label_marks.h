// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Limits that want attention, each written at the part it stands at.

#include "train/label_writer.h"

namespace feedwright {

bool whip_governs(const TrainGeometry& train);
/// A clear one in ink: it governs, but is no trouble.
Tone tone_of_mark(const GoverningMark& mark);
/// All but the whip, whose own label says it; those of one part under each other.
void label_marks(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan);

} // namespace feedwright
