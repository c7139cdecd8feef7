// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace feedwright {

/// Number and unit held together, and a unit with a slash: no line ends within a quantity. For what
/// is painted in lines; what is copied and spoken stays as it was written.
QString with_whole_quantities(const QString& sentence);

} // namespace feedwright
