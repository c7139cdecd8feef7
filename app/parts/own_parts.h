// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The user's own parts lists, written: one file a kind in own_parts_folder().

#include "machine/parts_list.h"

#include <QString>

#include <tl/expected.hpp>

namespace feedwright {

/// Puts the part into the user's own list of its kind, in place of one of the same name. Gives the
/// path of the list, or a sentence on why it cannot be written; a list that cannot be read is left
/// as it stands.
tl::expected<QString, QString> keep_own_part(const ListedPart& part);

} // namespace feedwright
