// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "train/train_room.h"

namespace feedwright {

/// Puts motor, coupling, belt or belt loop in their places; the screw already stands in its own.
void place_drive(TrainPlan& plan, const TrainGeometry& train, const TrainRoom& room,
                 const QRectF& rect);

/// Puts the second screw or hauling belt above the first, with its nut and its motor.
void place_twin(TrainPlan& plan, const TrainGeometry& train, const TrainRoom& room);

} // namespace feedwright
