// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "train/position_text.h"
#include "train/train_plan.h"
#include "window/style.h"

#include <QPainter>

namespace feedwright {

/// Where the read-out stands in a window of that size: the corner, or the place beside, where it
/// covers least of what is drawn; `shift` from the plan's coordinates to the window's.
QRectF read_out_area(const ReadOut& read_out, const TrainPlan& plan, const QPointF& shift,
                     const QRectF& window, const QFontMetricsF& metrics);

void paint_read_out(QPainter& painter, const ReadOut& read_out, const QRectF& area,
                    const Look& look, const QFont& font);

} // namespace feedwright
