// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Limits that want attention, each written at the part it stands at.

#include "train/label_writer.h"

namespace feedwright {

/// The whip's, if it governs or is as near; its own label says it. Null if neither.
const GoverningMark* whip_mark(const TrainGeometry& train);
/// A clear one in ink: it governs, but is no trouble.
Tone tone_of_mark(const GoverningMark& mark);
/// All but the whip's; those of one part under each other.
void label_marks(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan);

} // namespace feedwright
