// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Tables of the results' names and meanings; result_words looks them up.

#include <span>
#include <string_view>

namespace feedwright::words {

struct ResultWords {
  std::string_view key; ///< the result's name in core
  const char* name;     ///< both marked with QT_TRANSLATE_NOOP("Words", …)
  const char* meaning;
};

std::span<const ResultWords> train_result_words();   ///< kinematics to torques
std::span<const ResultWords> limits_result_words();  ///< limits of feed and thrust, belts
std::span<const ResultWords> outcome_result_words(); ///< stiffness to power

} // namespace feedwright::words
