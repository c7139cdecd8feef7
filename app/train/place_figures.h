// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "train/train_plan.h"
#include "window/text_measure.h"

namespace feedwright {

/// Finds the figures of the drawing's words in the labels that were placed, in the order the
/// keyboard visits their parts.
void place_figures(TrainPlan& plan, const TrainGeometry& train, const TextMeasure& metrics);

} // namespace feedwright
