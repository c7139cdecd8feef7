// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/read_answers.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace feedwright {

namespace {

constexpr std::string_view known_members[] = {"finding", "limit",  "part",
                                              "note",    "actual", "allowed"};

class AnswersReader {
public:
  AnswersReader(FaultList& faults, std::string_view source) : faults_(faults), source_(source) {}

  std::vector<Answer> read(const Place& at, const JsonNode& parent) {
    const JsonNode* list = parent.find("answers");
    if (list == nullptr) {
      return {};
    }
    if (list->type != JsonNode::Type::array) {
      faults_.wrong_type(at, "answers", *list, "array");
      return {};
    }
    if (list->items.size() > most_answers) {
      faults_.add(FaultCode::too_many_answers, at, "answers", list).most = most_answers;
      return {};
    }
    std::vector<Answer> answers;
    for (std::size_t i = 0; i < list->items.size(); ++i) {
      answers.push_back(read_one(place_of(at, i), list->items[i]));
    }
    return answers;
  }

private:
  static Place place_of(const Place& at, std::size_t index) {
    std::array<char, 24> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), index).ptr;
    Place made = at;
    made.path += at.path.empty() ? "answers[" : ".answers[";
    made.path.append(digits.data(), end);
    made.path += "]";
    return made;
  }

  Answer read_one(const Place& at, const JsonNode& node) {
    Answer answer;
    if (node.type != JsonNode::Type::object) {
      faults_.wrong_type(at, "", node, "object");
      return answer;
    }
    const bool to_finding = node.find("finding") != nullptr;
    if (to_finding == (node.find("limit") != nullptr)) {
      faults_.add(FaultCode::answer_to_nothing, at, "", &node);
      return answer;
    }
    answer.to = to_finding ? AnswerTo::finding : AnswerTo::limit;
    answer.code = text(at, to_finding ? "finding" : "limit", node, true);
    answer.part = text(at, "part", node, to_finding);
    answer.note = text(at, "note", node, true);
    answer.actual = text(at, "actual", node, false);
    answer.allowed = text(at, "allowed", node, false);
    for (const auto& [name, value] : node.members) {
      if (std::ranges::find(known_members, std::string_view(name)) == std::end(known_members)) {
        answer.unknown.emplace_back(
            name, std::string(source_.substr(value.begin, value.end - value.begin)));
      }
    }
    return answer;
  }

  std::string text(const Place& at, std::string_view member, const JsonNode& parent,
                   bool required) {
    const JsonNode* node = parent.find(member);
    if (node == nullptr) {
      if (required) {
        faults_.missing(at, member, parent);
      }
      return {};
    }
    if (node->type != JsonNode::Type::string) {
      faults_.wrong_type(at, member, *node, "string");
      return {};
    }
    if (node->text.size() > longest_answer) {
      faults_.add(FaultCode::answer_too_long, at, member, node).most = longest_answer;
      return {};
    }
    return node->text;
  }

  FaultList& faults_;
  std::string_view source_;
};

} // namespace

std::vector<Answer> read_answers(FaultList& faults, std::string_view source, const Place& at,
                                 const JsonNode& parent) {
  return AnswersReader(faults, source).read(at, parent);
}

} // namespace feedwright
