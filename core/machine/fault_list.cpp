// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/fault_list.h"

#include <algorithm>
#include <array>

namespace feedwright {

std::string_view type_name(JsonNode::Type type) {
  constexpr std::array<std::string_view, 6> names{"null",   "boolean", "number",
                                                  "string", "array",   "object"};
  return names[static_cast<std::size_t>(type)];
}

std::string path_of_pointer(std::string_view pointer) {
  std::string path;
  while (!pointer.empty()) {
    pointer.remove_prefix(1);
    const std::string_view step = pointer.substr(0, pointer.find('/'));
    pointer.remove_prefix(step.size());
    const bool index =
        !step.empty() && std::ranges::all_of(step, [](char c) { return c >= '0' && c <= '9'; });
    if (!index && !path.empty()) {
      path += '.';
    }
    path += index ? '[' + std::string(step) + ']' : std::string(step);
  }
  return path;
}

std::vector<Fault> faults_of_json(std::span<const JsonError> errors) {
  std::vector<Fault> faults;
  for (const JsonError& error : errors) {
    Fault& made = faults.emplace_back();
    made.code = FaultCode::not_json;
    made.path = path_of_pointer(error.path);
    made.line = error.line;
    made.column = error.column;
    made.json = error;
  }
  return faults;
}

Fault& FaultList::add(FaultCode code, const Place& at, std::string_view member,
                      const JsonNode* node) {
  Fault& made = faults_.emplace_back();
  made.code = code;
  made.path = at.path;
  if (!at.path.empty() && !member.empty()) {
    made.path += '.';
  }
  made.path += member;
  made.axis = at.axis;
  made.slot = at.slot;
  made.member = member;
  if (node != nullptr) {
    made.line = node->line;
    made.column = node->column;
  }
  return made;
}

void FaultList::wrong_type(const Place& at, std::string_view member, const JsonNode& node,
                           std::string_view wanted, const FieldInfo* info) {
  Fault& made = add(FaultCode::wrong_type, at, member, &node);
  made.found = type_name(node.type);
  made.wanted = wanted;
  if (info != nullptr) {
    made.kind = info->kind;
    made.unit = info->unit;
  }
}

void FaultList::missing(const Place& at, std::string_view member, const JsonNode& parent,
                        const FieldInfo* info) {
  Fault& made = add(FaultCode::missing_member, at, member, &parent);
  if (info != nullptr) {
    made.kind = info->kind;
    made.unit = info->unit;
  }
}

void FaultList::remember(const std::string& path, const JsonNode& node) {
  places_[path] = {node.line, node.column};
}

void FaultList::add_with_lines(std::vector<Fault> found, const JsonNode& root) {
  for (Fault& fault : found) {
    place(fault, root);
    faults_.push_back(std::move(fault));
  }
}

void FaultList::place(Fault& fault, const JsonNode& root) const {
  std::string path = fault.path;
  while (!path.empty()) {
    if (const auto found = places_.find(path); found != places_.end()) {
      fault.line = found->second.first;
      fault.column = found->second.second;
      return;
    }
    const auto dot = path.find_last_of('.');
    path.resize(dot == std::string::npos ? 0 : dot);
  }
  fault.line = root.line;
  fault.column = root.column;
}

} // namespace feedwright
