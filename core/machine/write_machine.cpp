// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/machine_file.h"

#include "machine/write_value.h"

#include <algorithm>

namespace feedwright {

namespace {

using Unknown = std::vector<std::pair<std::string, std::string>>;

void write_unknown(JsonWriter& json, const Unknown& unknown) {
  for (const auto& [name, slice] : unknown) {
    json.member(name).raw(slice);
  }
}

/// Whether the member belongs in the file: presets only where somebody gave or changed them.
bool is_written(const FieldInfo& info, const FieldValue& value, const FieldValue& preset,
                const EntryNote* note) {
  if (std::holds_alternative<std::monostate>(value)) {
    return false;
  }
  if (const auto* text = std::get_if<std::string>(&value);
      text != nullptr && info.type == FieldType::text && text->empty()) {
    return info.presence == Presence::required;
  }
  return info.presence != Presence::preset || note != nullptr || value != preset;
}

void write_names(JsonWriter& json, std::string_view member,
                 const std::vector<std::string_view>& names) {
  if (names.empty()) {
    return;
  }
  json.member(member).begin_array();
  for (const std::string_view name : names) {
    json.value(name);
  }
  json.end_array();
}

template <class Part>
void write_fields(JsonWriter& json, const Part& part) {
  const Part fresh;
  std::vector<std::string_view> changed;
  std::vector<std::string_view> presets;
  for (const Field<Part>& field : FieldsOf<Part>::list()) {
    const FieldValue value = field.get(part);
    const auto found = part.notes.entries.find(field.info.member);
    const EntryNote* note = found != part.notes.entries.end() ? &found->second : nullptr;
    if (!is_written(field.info, value, field.get(fresh), note)) {
      continue;
    }
    json.member(field.info.member);
    write_value(json, field.info, value, note);
    // Written because a file must say it, but nobody has given it.
    if (note == nullptr && may_be_preset(field.info)) {
      presets.push_back(field.info.member);
    } else if (note == nullptr || note->origin == Origin::entered) {
      changed.push_back(field.info.member);
    }
  }
  if (!part.notes.source.empty()) {
    json.member("source").value(part.notes.source);
    write_names(json, "changed", changed);
  }
  write_names(json, "presets", presets);
}

template <class Part>
void write_part(JsonWriter& json, std::string_view member, const Part& part) {
  json.member(member).begin_object();
  if (!part_type_name<Part>.empty()) {
    json.member("type").value(part_type_name<Part>);
  }
  write_fields(json, part);
  write_unknown(json, part.notes.unknown);
  json.end_object();
}

/// The same for a part that most machines do without: only where somebody gave it something.
template <class Part>
void write_part_if_given(JsonWriter& json, std::string_view member, const Part& part) {
  if (!(part == Part())) {
    write_part(json, member, part);
  }
}

void write_text_if_given(JsonWriter& json, std::string_view member, const std::string& text) {
  if (!text.empty()) {
    json.member(member).value(text);
  }
}

void write_answers(JsonWriter& json, const std::vector<Answer>& answers) {
  if (answers.empty()) {
    return;
  }
  json.member("answers").begin_array();
  for (const Answer& answer : answers) {
    json.begin_object();
    const bool to_finding = answer.to == AnswerTo::finding;
    json.member(to_finding ? "finding" : "limit").value(answer.code);
    if (to_finding) {
      json.member("part").value(answer.part);
    } else {
      write_text_if_given(json, "part", answer.part);
    }
    json.member("note").value(answer.note);
    write_text_if_given(json, "actual", answer.actual);
    write_text_if_given(json, "allowed", answer.allowed);
    write_unknown(json, answer.unknown);
    json.end_object();
  }
  json.end_array();
}

/// Answers came with 2.1; a machine without them is written as any 2.0 program reads it.
int least_minor(const Machine& machine) {
  const auto answered = [](const Axis& axis) { return !axis.answers.empty(); };
  return !machine.answers.empty() || std::ranges::any_of(machine.axes, answered) ? 1 : 0;
}

void write_axis(JsonWriter& json, const Axis& axis) {
  json.begin_object();
  write_fields(json, axis.basics);
  write_part(json, "targets", axis.targets);
  write_part(json, "carriage", axis.carriage);
  write_part(json, "guides", axis.guides);
  write_part_if_given(json, "sides", axis.sides);
  write_part_if_given(json, "duty", axis.duty);
  std::visit([&](const auto& motor) { write_part(json, "motor", motor); }, axis.motor);
  std::visit([&](const auto& part) { write_part(json, "transmission", part); }, axis.transmission);
  std::visit([&](const auto& part) { write_part(json, "drive", part); }, axis.drive);
  write_answers(json, axis.answers);
  write_unknown(json, axis.basics.notes.unknown);
  json.end_object();
}

} // namespace

std::string write_machine(const Machine& machine) {
  JsonWriter json;
  json.begin_object();
  json.member("format").begin_object();
  json.member("name").value(format_name);
  json.member("major").value(format_major);
  json.member("minor").value(machine.newer_minor > format_minor ? machine.newer_minor
                                                                : least_minor(machine));
  write_unknown(json, machine.unknown_format);
  json.end_object();
  json.member("name").value(machine.name);
  if (!machine.story.empty()) {
    json.member("story").value(machine.story);
  }
  write_part(json, "supply", machine.supply);
  write_part(json, "controller", machine.controller);
  write_part_if_given(json, "spindle", machine.spindle);
  json.member("axes").begin_array();
  for (const Axis& axis : machine.axes) {
    write_axis(json, axis);
  }
  json.end_array();
  write_answers(json, machine.answers);
  write_unknown(json, machine.unknown);
  json.end_object();
  return std::move(json).finish();
}

} // namespace feedwright
