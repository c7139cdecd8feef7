// SPDX-License-Identifier: GPL-3.0-or-later
#include "json/open_value.h"

#include <fmt/format.h>

namespace feedwright {

std::string json_pointer(const std::vector<OpenValue>& open) {
  constexpr std::size_t most = 1024;
  std::string path;
  for (const OpenValue& at : open) {
    if (at.node.type == JsonNode::Type::array) {
      path += '/';
      path += fmt::format_int(at.node.items.size()).str();
    } else if (at.name) {
      path += '/';
      for (const char c : *at.name) {
        path += c == '~' ? "~0" : c == '/' ? "~1" : std::string(1, c);
      }
    }
    if (path.size() > most) {
      return {};
    }
  }
  return path;
}

} // namespace feedwright
