// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace feedwright::headless {

/// Codes of the languages there are, for a sentence: "en, de".
QString language_codes();

/// Puts words and decimal mark in that language; English for an empty code. False, and nothing
/// changed, if there is no such language. Needs the application object.
bool use_language(const QString& code);

} // namespace feedwright::headless
