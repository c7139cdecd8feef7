// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace feedwright {

/// Where the program keeps what outlives a run and is neither a setting nor a document:
/// $XDG_STATE_HOME/feedwright, by default ~/.local/state/feedwright.
/// Source: XDG Base Directory Specification, version 0.8.
QString state_folder();

/// Makes the folder, for its owner's eyes only, if it is not there. False if it cannot be had.
bool make_private_folder(const QString& path);

} // namespace feedwright
