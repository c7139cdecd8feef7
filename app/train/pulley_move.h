// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"

#include <QPointF>

namespace feedwright {

/// The loop of the chosen axis, if it has one.
const BeltLoopDrive* chosen_loop(const MachineDocument& document);

/// Where a loop's pulley is drawn in its table, in mm, y upwards.
QPointF pulley_place(const BeltLoopDrive& loop, std::size_t pulley);

/// Puts a pulley of the chosen axis' loop at that place, in mm rounded to whole ones, y upwards.
/// Moves of one `drag` become one step of Undo.
void move_pulley(MachineDocument& document, std::size_t pulley, const QPointF& place, int drag);

} // namespace feedwright
