// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "train/train_geometry.h"
#include "train/train_words.h"

namespace feedwright {

/// The drawing's words that hold figures somebody typed, with the fields they are of.
std::vector<FigureText> figure_texts(const TrainGeometry& train, const ShownAxis& axis);

} // namespace feedwright
