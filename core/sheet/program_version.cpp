// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/program_version.h"

namespace feedwright {

std::string_view program_version() {
  return FEEDWRIGHT_VERSION;
}

} // namespace feedwright
