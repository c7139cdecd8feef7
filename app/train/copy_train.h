// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "train/train_geometry.h"

#include <QByteArray>
#include <QFont>
#include <QImage>
#include <QSize>

namespace feedwright {

/// The whole drawing on light paper, as for a page; of twice the size in dots.
QImage train_image(const TrainGeometry& train, const QSize& size, const QFont& font);
QByteArray train_svg(const TrainGeometry& train, const QSize& size, const QFont& font);

/// Both on the clipboard.
void copy_train(const TrainGeometry& train, const QSize& size, const QFont& font);

} // namespace feedwright
