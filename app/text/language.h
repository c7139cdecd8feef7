// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <span>

namespace feedwright {

struct Language {
  const char* code; ///< ISO 639-1
  const char* name; ///< in the language itself; not translated
};

/// Those the program speaks, English first.
std::span<const Language> languages();

/// Their codes, for a sentence: "en, de".
QString language_codes();

/// The one that goes best with the desktop's settings.
QString language_of_desktop();

/// The code last put in use.
QString current_language();

/// Puts words, decimal mark and the library's own dialogs in that language; English for an empty
/// code. False, and nothing changed, if there is no such language. Needs the application object.
bool use_language(const QString& code);

} // namespace feedwright
