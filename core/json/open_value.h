// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "json/json_node.h"

#include <optional>
#include <set>

namespace feedwright {

/// An array or object whose end has not been read yet.
struct OpenValue {
  JsonNode node;
  std::optional<std::string> name; ///< of the member being read
  std::set<std::string, std::less<>> seen;
};

/// JSON Pointer (RFC 6901) to what is being read inside these, outermost first; empty if it would
/// be longer than 1 KiB.
std::string json_pointer(const std::vector<OpenValue>& open);

} // namespace feedwright
