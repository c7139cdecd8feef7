// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/answer.h"

#include <algorithm>

namespace feedwright {

namespace {

/// The place of the answer to that; the end if there is none.
template <class Answers>
auto place_of(Answers& answers, AnswerTo to, std::string_view code, std::string_view part) {
  return std::find_if(answers.begin(), answers.end(), [&](const Answer& answer) {
    return answer.to == to && answer.code == code && answer.part == part;
  });
}

} // namespace

const Answer* find_answer(const std::vector<Answer>& answers, AnswerTo to, std::string_view code,
                          std::string_view part) {
  const auto found = place_of(answers, to, code, part);
  return found != answers.end() ? &*found : nullptr;
}

void set_answer(std::vector<Answer>& answers, Answer answer) {
  const auto found = place_of(answers, answer.to, answer.code, answer.part);
  if (found == answers.end()) {
    answers.push_back(std::move(answer));
    return;
  }
  answer.unknown = found->unknown;
  *found = std::move(answer);
}

bool remove_answer(std::vector<Answer>& answers, AnswerTo to, std::string_view code,
                   std::string_view part) {
  const auto found = place_of(answers, to, code, part);
  if (found == answers.end()) {
    return false;
  }
  answers.erase(found);
  return true;
}

} // namespace feedwright
