// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "headless/command_line.h"
#include "machine/machine.h"
#include "sheet/sheet_content.h"

#include <QByteArray>

namespace feedwright::headless {

std::size_t study_count();

/// The window, as it opens on the machine, as PNG; nothing if there is no such study.
std::optional<QByteArray> window_picture(const Machine& machine, const SheetIdentity& identity,
                                         const Command& command);

} // namespace feedwright::headless
