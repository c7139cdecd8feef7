// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What is done with whole axes, each one undoable step.

#include "document/machine_document.h"

class QMimeData;

namespace feedwright {

/// Whether the machine may have `more` axes besides those it has.
bool has_room_for_axes(const MachineDocument& document, std::size_t more = 1);

void add_axis(MachineDocument& document);
void duplicate_axis(MachineDocument& document);
void remove_axis(MachineDocument& document);
/// Whether the selected axis has a place above (-1) or below (1) it.
bool can_move_axis(const MachineDocument& document, int by);
void move_axis(MachineDocument& document, int by);

/// Puts the selected axis on the clipboard.
void copy_axis(const MachineDocument& document);
/// Appends the axes of the clip, under letters of their own. Empty, or the sentence that says why
/// nothing was done.
QString paste_axes(MachineDocument& document, const QMimeData& clip);

} // namespace feedwright
