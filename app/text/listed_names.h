// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace feedwright::words {

/// The name of a part in a list, in the language where its words are those of the program's own
/// lists. What stands for it in files is the name as it is in the list.
QString listed_name(const QString& name);

/// Likewise where its figures are from, with or without its name before; what a user wrote stays
/// as it is.
QString listed_source(const QString& source);

} // namespace feedwright::words
