// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "files/file_error.h"

#include <QString>

namespace feedwright::words {

/// One sentence: which file, what is wrong with it.
QString file_error_text(const FileError& error);

} // namespace feedwright::words
