// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/content_fingerprint.h"

#include <fmt/format.h>

#include <cstdint>

namespace feedwright {

std::string content_fingerprint(std::string_view bytes) {
  constexpr std::uint64_t offset_basis = 0xcbf29ce484222325U;
  constexpr std::uint64_t prime = 0x100000001b3U;
  std::uint64_t hash = offset_basis;
  for (const char c : bytes) {
    hash = (hash ^ static_cast<unsigned char>(c)) * prime;
  }
  return fmt::format("{:016x}", hash);
}

} // namespace feedwright
