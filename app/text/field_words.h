// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Tables of the fields' names and help, a part of the machine to a file; part_words looks them up.

#include <span>
#include <string_view>

namespace feedwright::words {

struct FieldWords {
  std::string_view key; ///< slot.member
  const char* name;     ///< both marked with QT_TRANSLATE_NOOP("Words", …)
  const char* help;
};

std::span<const FieldWords> motion_field_words(); ///< supply to duty
std::span<const FieldWords> motor_field_words();
std::span<const FieldWords> transmission_field_words();
std::span<const FieldWords> drive_field_words();

} // namespace feedwright::words
