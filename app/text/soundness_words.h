// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/fault.h"

#include <QString>

namespace feedwright::words {

/// What keeps a machine that can be read from being computed, without its place.
QString soundness_text(const Fault& fault);

} // namespace feedwright::words
