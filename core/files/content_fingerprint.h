// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace feedwright {

/// FNV-1a, 64 bits, as 16 lower-case hexadecimal digits. The same for the same bytes on every
/// machine. It notices changes; it does not withstand somebody who forges them.
/// Source: G. Fowler, L. Noll, K.-P. Vo, D. Eastlake, "The FNV Non-Cryptographic Hash Algorithm".
std::string content_fingerprint(std::string_view bytes);

} // namespace feedwright
