// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Tables of words by a code of core, translated when asked for.

#include "text/text_of.h"

#include <QCoreApplication>
#include <QString>

#include <string_view>

namespace feedwright::words {

struct Word {
  std::string_view key;
  const char* text; ///< marked with QT_TRANSLATE_NOOP("Words", …)
};

inline QString translated(const char* text) {
  return QCoreApplication::translate("Words", text);
}

/// Empty if the table has no such key.
template <std::size_t n>
QString looked_up(const Word (&table)[n], std::string_view key) {
  for (const Word& word : table) {
    if (word.key == key) {
      return translated(word.text);
    }
  }
  return {};
}

} // namespace feedwright::words
