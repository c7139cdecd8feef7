// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Machines on disk, with words for what goes wrong.

#include "machine/machine.h"

#include <tl/expected.hpp>

#include <QString>
#include <QStringList>

namespace feedwright {

/// Larger than any machine somebody writes, smaller than any file that would hurt.
inline constexpr std::size_t largest_machine_file = std::size_t{8} << 20U;

struct StoredMachine {
  Machine machine;
  QString fingerprint; ///< of the file's bytes
};

/// The machine in the file, sound or not, or a sentence for each thing that keeps it from being
/// read: what was saved half done opens again half done.
tl::expected<StoredMachine, QStringList> load_machine(const QString& path);

/// Writes the machine, whole or not at all; gives the fingerprint of what was written, or the
/// sentence that says why not.
tl::expected<QString, QString> store_machine(const Machine& machine, const QString& path);

/// Fingerprint of the file as it is now; empty if it cannot be read.
QString fingerprint_of_file(const QString& path);

} // namespace feedwright
