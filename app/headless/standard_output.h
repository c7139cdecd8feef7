// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <string_view>

namespace feedwright::headless {

/// All of the bytes to standard output. False if they did not all get there.
bool print(std::string_view bytes);

/// One sentence on a line of standard error.
void complain(const QString& sentence);

} // namespace feedwright::headless
