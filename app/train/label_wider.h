// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The words of belt loops, second sides, turning and paired nuts, and hauling belts.

#include "train/label_writer.h"

namespace feedwright {

void take_loop(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan);
void take_twin(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan);
void take_haul(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan);

/// The end view's scale, before any other word.
void label_loop_head(LabelWriter& writer, const TrainPlan& plan, const TrainOptions& options);
/// What its pulleys are.
void label_loop(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan);
void label_nut(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan);
/// What the second side is, above it; false if there is none or no room.
bool label_twin(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan);
/// Where neither the second side nor the title has room for them.
void label_sides(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan);
void label_duty(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan);
/// Brake and counterbalance where the carriage itself has no room for them.
void label_carriage(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan);

} // namespace feedwright
