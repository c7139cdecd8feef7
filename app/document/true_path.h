// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace feedwright {

/// The same however a file is reached, through a link or straight, and before it is there; asks the
/// disk. Empty for an empty path.
QString true_path(const QString& path);

/// Whether both paths lead to one file, or both to none.
bool same_file(const QString& a, const QString& b);

} // namespace feedwright
