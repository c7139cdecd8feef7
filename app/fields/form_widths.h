// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/machine.h"

#include <QFontMetrics>

#include <vector>

namespace feedwright {

/// What the columns of a form need so that no word is cut: the longest word of a field's name, the
/// longest choice, the longest origin. In pixels.
struct FormWidths {
  int name = 0;
  int editor = 0;
  int origin = 0;
};

FormWidths form_widths(const Machine& machine, std::size_t axis,
                       const std::vector<PartSlot>& slots_shown, const QFontMetrics& metrics);

/// Whether names and editors have room beside each other in a form of that width.
bool have_room(const FormWidths& widths, int width);

} // namespace feedwright
