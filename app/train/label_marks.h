// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Limits that want attention, each written at the part it stands at.

#include "train/label_writer.h"

#include <QStringList>

namespace feedwright {

/// The whip's, if it governs or is as near; its own label says it. Null if neither.
const GoverningMark* whip_mark(const TrainGeometry& train);
/// A clear one in ink: it governs, but is no trouble.
Tone tone_of_mark(const GoverningMark& mark);
/// What is said of a part, a line each; the tone of the worst.
struct MarksAt {
  QStringList lines;
  Tone tone = Tone::faint;
};
MarksAt marks_at(const TrainGeometry& train, PartSlot slot);
/// All but the whip's and those in the boxes of supply and controller; those of one part under each
/// other.
void label_marks(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan);

} // namespace feedwright
