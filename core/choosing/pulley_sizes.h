// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace feedwright::choosing {

/// Tooth counts of pulleys that shops keep. Common practice, no source.
inline constexpr std::int64_t usual_pulleys[] = {10, 12, 14, 15, 16, 18, 20, 22, 24, 25, 26, 28,
                                                 30, 32, 36, 40, 44, 48, 50, 56, 60, 72, 80};

} // namespace feedwright::choosing
