// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace feedwright {

/// Version of this program, "0.1.0", as sheets and results carry it.
std::string_view program_version();

} // namespace feedwright
