// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "train/train_plan.h"
#include "window/style.h"

class QPainter;

namespace feedwright {

/// Paints the drive train to scale into `rect`, on a window or on paper. Text is `options.font`;
/// the stated scale counts on `options.units_per_mm` painter units to the millimetre. Everything
/// needed is said in words and line patterns too, so that it reads in black and white. The
/// background is left as it is.
void paint_train(QPainter& painter, const TrainGeometry& train, const QRectF& rect,
                 const Look& look, const TrainOptions& options);

/// The same from a plan already made for that rectangle, font and device.
void paint_train(QPainter& painter, const TrainGeometry& train, const TrainPlan& plan,
                 const Look& look, const TrainOptions& options);

/// The least height in which nothing is crowded, for a font's line height.
double least_train_height(double line_height);

} // namespace feedwright
