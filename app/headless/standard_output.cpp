// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/standard_output.h"

#include <cstdio>

namespace feedwright::headless {

bool print(std::string_view bytes) {
  const bool written = std::fwrite(bytes.data(), 1, bytes.size(), stdout) == bytes.size();
  return std::fflush(stdout) == 0 && written;
}

void complain(const QString& sentence) {
  QByteArray line = sentence.toUtf8();
  // A name from a file or the command line must not pass for a line of its own.
  line.replace('\n', ' ');
  line.append('\n');
  std::fwrite(line.constData(), 1, static_cast<std::size_t>(line.size()), stderr);
}

} // namespace feedwright::headless
