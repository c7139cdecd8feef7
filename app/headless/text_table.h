// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include <vector>

namespace feedwright::headless {

enum class Side : std::uint8_t { left, right };

/// Rows of a fixed-pitch table, two spaces between columns, none at the ends of lines.
QString text_table(const std::vector<QStringList>& rows, const std::vector<Side>& sides,
                   int indent);

} // namespace feedwright::headless
