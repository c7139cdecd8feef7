// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace feedwright {

/// Lines of cells from pasted or imported text: split at tabs or semicolons; at commas where a line
/// has neither and every line splits into as many; at runs of blanks otherwise. Empty lines and
/// lines of one cell are left out, a first line without any digit is a heading and is left out.
std::vector<QStringList> table_cells(const QString& text);

} // namespace feedwright
