// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "train/train_plan.h"

namespace feedwright {

/// Lists what a click finds, from the shapes already in their places.
void list_parts(TrainPlan& plan, const TrainGeometry& train);

} // namespace feedwright
