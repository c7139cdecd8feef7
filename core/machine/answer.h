// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What a builder answers to something that deserves care. It stands in the machine file, so that
// whoever reads the machine later sees that it was weighed, and with which figures.

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace feedwright {

enum class AnswerTo : std::uint8_t { finding, limit };

/// Why something is all right, in the builder's words. Codes are kept as texts: a file may answer
/// what this version does not know.
struct Answer {
  AnswerTo to = AnswerTo::finding;
  std::string code; ///< stable id of the finding or the limit
  std::string part; ///< name of the finding's part; empty for a limit
  std::string note; ///< plain text, perhaps of several lines
  /// The figures when it was answered, each with its unit; empty where there was none.
  std::string actual;
  std::string allowed;
  /// Members this version does not know, with their source text.
  std::vector<std::pair<std::string, std::string>> unknown;
  friend bool operator==(const Answer&, const Answer&) = default;
};

/// A note's longest text, in bytes.
inline constexpr std::size_t longest_answer = 2000;
/// Of one axis, or of the machine itself.
inline constexpr std::size_t most_answers = 200;

/// The answer to that, or nullptr. `part` is empty for a limit.
const Answer* find_answer(const std::vector<Answer>& answers, AnswerTo to, std::string_view code,
                          std::string_view part);

/// Puts the answer in the place of the one to the same thing, or at the end.
void set_answer(std::vector<Answer>& answers, Answer answer);

/// Takes the answer to that away; false if there is none.
bool remove_answer(std::vector<Answer>& answers, AnswerTo to, std::string_view code,
                   std::string_view part);

} // namespace feedwright
