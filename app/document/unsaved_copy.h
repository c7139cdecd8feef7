// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/machine.h"

#include <QDateTime>
#include <QString>

#include <optional>
#include <string>

namespace feedwright {

/// A machine as it stood before it was saved, put aside in case the program does not live to save
/// it.
struct UnsavedCopy {
  QString file;    ///< path of the file it belongs to; empty while it has none
  QString base;    ///< fingerprint of that file's bytes when they were last read or written
  QDateTime time;  ///< when it was put aside
  QString program; ///< version that did
  Machine machine; ///< as typed, sound or not
};

/// A JSON object of these members, the machine in it as in a machine file.
std::string write_unsaved_copy(const UnsavedCopy& copy);
/// Nothing if the text is no such copy, or its machine cannot be read.
std::optional<UnsavedCopy> read_unsaved_copy(std::string_view text);

} // namespace feedwright
