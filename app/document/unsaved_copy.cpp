// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/unsaved_copy.h"

#include "machine/machine_file.h"
#include "text/text_of.h"
#include "json/read_json.h"
#include "json/write_json.h"

namespace feedwright {

namespace {

constexpr std::string_view copy_format = "feedwright unsaved copy";
constexpr int copy_major = 1;

QString text_in(const JsonNode& parent, std::string_view member) {
  const JsonNode* node = parent.find(member);
  return node != nullptr && node->type == JsonNode::Type::string ? text_of(node->text) : QString();
}

bool is_copy(const JsonNode& root) {
  const JsonNode* format = root.find("format");
  const JsonNode* major = format != nullptr ? format->find("major") : nullptr;
  return major != nullptr && major->number == double(copy_major) &&
         text_in(*format, "name") == text_of(copy_format);
}

} // namespace

std::string write_unsaved_copy(const UnsavedCopy& copy) {
  std::string machine = write_machine(copy.machine);
  while (machine.ends_with('\n')) {
    machine.pop_back();
  }
  JsonWriter json;
  json.begin_object();
  json.member("format").begin_object();
  json.member("name").value(copy_format);
  json.member("major").value(copy_major);
  json.end_object();
  json.member("file").value(copy.file.toStdString());
  json.member("base").value(copy.base.toStdString());
  json.member("time").value(copy.time.toUTC().toString(Qt::ISODateWithMs).toStdString());
  json.member("program").value(copy.program.toStdString());
  json.member("machine").raw(machine);
  json.end_object();
  return std::move(json).finish();
}

std::optional<UnsavedCopy> read_unsaved_copy(std::string_view text) {
  const auto root = read_json(text);
  if (!root || !is_copy(*root)) {
    return std::nullopt;
  }
  const JsonNode* machine = root->find("machine");
  if (machine == nullptr) {
    return std::nullopt;
  }
  auto read = read_machine_as_typed(text.substr(machine->begin, machine->end - machine->begin));
  if (!read) {
    return std::nullopt;
  }
  return UnsavedCopy{text_in(*root, "file"), text_in(*root, "base"),
                     QDateTime::fromString(text_in(*root, "time"), Qt::ISODateWithMs),
                     text_in(*root, "program"), *std::move(read)};
}

} // namespace feedwright
