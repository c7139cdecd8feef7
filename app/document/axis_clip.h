// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// An axis on its way between windows, or to a text editor and back: a machine file of one axis.

#include "machine/machine.h"

#include <tl/expected.hpp>

#include <QString>

#include <memory>
#include <vector>

class QMimeData;

namespace feedwright {

/// The type it goes by on the clipboard and while it is dragged; as plain text it goes along too.
inline constexpr char axis_mime_type[] = "application/x-feedwright-axis+json";

std::unique_ptr<QMimeData> axis_clip(const Machine& machine, std::size_t axis);

/// Every axis of the machine in there, or the sentence that says why there is none.
tl::expected<std::vector<Axis>, QString> axes_in(const QMimeData& clip);

} // namespace feedwright
