// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "studies/study_figure.h"
#include "window/style.h"

#include <QFont>
#include <QImage>
#include <QSize>

namespace feedwright {

/// Pixels of a picture to one of the screen.
inline constexpr double picture_fineness = 2.0;

/// A figure as a plot of that size; of a larger one, within bounds, where its names have no room in
/// it, for a picture is read without the table beside it.
QImage study_picture(const StudyFigure& figure, const Look& look, const QFont& font, QSize size);

} // namespace feedwright
