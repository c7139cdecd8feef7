// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "train/train_plan.h"

#include <QFontMetricsF>

namespace feedwright {

/// Puts the words of the drawing where they cover nothing. A word with no room is left out of the
/// drawing; the view still says it.
void label_train(TrainPlan& plan, const TrainGeometry& train, const QRectF& rect,
                 const TrainOptions& options, const QFontMetricsF& metrics);

/// "1 : 6".
QString ratio_text(double scale, const TrainOptions& options);

/// "1 : 6", with what is exaggerated.
QString scale_text(const TrainPlan& plan, const TrainOptions& options);

} // namespace feedwright
