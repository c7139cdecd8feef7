// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/machine_file.h"

#include "json/write_json.h"

namespace feedwright {

namespace {

void write_choices(JsonWriter& json, std::span<const std::string_view> choices) {
  json.member("enum").begin_array();
  for (const std::string_view choice : choices) {
    json.value(choice);
  }
  json.end_array();
}

void write_quantity_type(JsonWriter& json, const FieldInfo& info) {
  if (info.kind == Kind::number) {
    json.member("type").begin_array().value("string").value("number").end_array();
  } else {
    json.member("type").value("string");
    json.member("pattern").value("[0-9]");
  }
  if (!info.unit.empty()) {
    json.member("examples").begin_array().value("1 " + std::string(info.unit)).end_array();
  }
}

void write_field(JsonWriter& json, const FieldInfo& info);

void write_plain_rows(JsonWriter& json, std::span<const FieldInfo> columns) {
  json.member("type").value("array");
  json.member("minItems").value(static_cast<std::int64_t>(columns.size()));
  json.member("maxItems").value(static_cast<std::int64_t>(columns.size()));
  json.member("items").begin_object().member("type").value("string").end_object();
}

void write_row_objects(JsonWriter& json, std::span<const FieldInfo> columns) {
  json.member("type").value("object");
  json.member("properties").begin_object();
  for (const FieldInfo& column : columns) {
    write_field(json, column);
  }
  json.end_object();
  json.member("required").begin_array();
  for (const FieldInfo& column : columns) {
    if (column.presence == Presence::required) {
      json.value(column.member);
    }
  }
  json.end_array();
}

void write_table_type(JsonWriter& json, const FieldInfo& info) {
  json.member("type").value("array");
  json.member("minItems").value(static_cast<std::int64_t>(info.table->least_rows));
  json.member("items").begin_object();
  const auto columns = info.table->columns();
  info.table->plain_rows ? write_plain_rows(json, columns) : write_row_objects(json, columns);
  json.end_object();
}

void write_field(JsonWriter& json, const FieldInfo& info) {
  json.member(info.member).begin_object();
  switch (info.type) {
  case FieldType::quantity: write_quantity_type(json, info); break;
  case FieldType::count:
    json.member("type").value("integer");
    json.member("minimum").value(info.least);
    json.member("maximum").value(info.most);
    break;
  case FieldType::choice: write_choices(json, info.choices); break;
  case FieldType::flag: json.member("type").value("boolean"); break;
  case FieldType::text: json.member("type").value("string"); break;
  case FieldType::table: write_table_type(json, info); break;
  }
  json.end_object();
}

template <class Part>
void write_properties(JsonWriter& json) {
  for (const Field<Part>& field : FieldsOf<Part>::list()) {
    write_field(json, field.info);
  }
  json.member("source").begin_object().member("type").value("string").end_object();
  for (const std::string_view names : {"changed", "presets"}) {
    json.member(names).begin_object().member("type").value("array");
    json.member("items").begin_object().member("type").value("string").end_object();
    json.end_object();
  }
}

template <class Part>
void write_required_fields(JsonWriter& json) {
  for (const Field<Part>& field : FieldsOf<Part>::list()) {
    if (field.info.presence == Presence::required) {
      json.value(field.info.member);
    }
  }
}

template <class Part>
void write_part_schema(JsonWriter& json) {
  json.begin_object();
  json.member("type").value("object");
  json.member("properties").begin_object();
  if (!part_type_name<Part>.empty()) {
    json.member("type").begin_object().member("const").value(part_type_name<Part>).end_object();
  }
  write_properties<Part>(json);
  json.end_object();
  json.member("required").begin_array();
  if (!part_type_name<Part>.empty()) {
    json.value("type");
  }
  write_required_fields<Part>(json);
  json.end_array();
  json.end_object();
}

template <class Variant>
struct ChoiceSchema;
template <class... Parts>
struct ChoiceSchema<std::variant<Parts...>> {
  static void write(JsonWriter& json) {
    json.begin_object().member("oneOf").begin_array();
    (write_part_schema<Parts>(json), ...);
    json.end_array().end_object();
  }
};

void write_text_schema(JsonWriter& json, std::string_view member) {
  json.member(member).begin_object().member("type").value("string");
  json.member("maxLength").value(static_cast<std::int64_t>(longest_answer));
  json.end_object();
}

void write_answers_schema(JsonWriter& json) {
  json.member("answers").begin_object();
  json.member("type").value("array");
  json.member("maxItems").value(static_cast<std::int64_t>(most_answers));
  json.member("items").begin_object();
  json.member("type").value("object");
  json.member("properties").begin_object();
  for (const char* member : {"finding", "limit", "part", "note", "actual", "allowed"}) {
    write_text_schema(json, member);
  }
  json.end_object();
  json.member("required").begin_array().value("note").end_array();
  json.member("oneOf").begin_array();
  json.begin_object().member("required").begin_array();
  json.value("finding").value("part").end_array().end_object();
  json.begin_object().member("required").begin_array().value("limit").end_array().end_object();
  json.end_array();
  json.end_object();
  json.end_object();
}

void write_axis_schema(JsonWriter& json) {
  json.begin_object();
  json.member("type").value("object");
  json.member("properties").begin_object();
  write_properties<AxisBasics>(json);
  write_part_schema<Targets>(json.member("targets"));
  write_part_schema<Carriage>(json.member("carriage"));
  write_part_schema<Guides>(json.member("guides"));
  write_part_schema<Sides>(json.member("sides"));
  write_part_schema<DutyCycle>(json.member("duty"));
  ChoiceSchema<Motor>::write(json.member("motor"));
  ChoiceSchema<Transmission>::write(json.member("transmission"));
  ChoiceSchema<FinalDrive>::write(json.member("drive"));
  write_answers_schema(json);
  json.end_object();
  json.member("required").begin_array();
  write_required_fields<AxisBasics>(json);
  for (const char* part : {"carriage", "motor", "transmission", "drive"}) {
    json.value(part);
  }
  json.end_array().end_object();
}

void write_format_schema(JsonWriter& json) {
  json.member("format").begin_object();
  json.member("type").value("object");
  json.member("properties").begin_object();
  json.member("name").begin_object().member("const").value(format_name).end_object();
  json.member("major").begin_object().member("const").value(format_major).end_object();
  json.member("minor").begin_object().member("type").value("integer").end_object();
  json.end_object();
  json.member("required").begin_array().value("name").value("major").value("minor").end_array();
  json.end_object();
}

} // namespace

std::string machine_schema() {
  JsonWriter json;
  json.begin_object();
  json.member("$schema").value("http://json-schema.org/draft-07/schema#");
  json.member("title").value("Feedwright machine");
  json.member("description")
      .value("Quantities are texts with their unit, as people write them. "
             "Members not named here are kept.");
  json.member("type").value("object");
  json.member("properties").begin_object();
  write_format_schema(json);
  json.member("name").begin_object().member("type").value("string").end_object();
  json.member("story").begin_object().member("type").value("string").end_object();
  write_part_schema<Supply>(json.member("supply"));
  write_part_schema<Controller>(json.member("controller"));
  write_part_schema<Spindle>(json.member("spindle"));
  json.member("axes").begin_object().member("type").value("array");
  json.member("minItems").value(1);
  json.member("maxItems").value(64);
  write_axis_schema(json.member("items"));
  json.end_object();
  write_answers_schema(json);
  json.end_object();
  json.member("required").begin_array();
  for (const char* member : {"format", "name", "supply", "axes"}) {
    json.value(member);
  }
  json.end_array().end_object();
  return std::move(json).finish();
}

} // namespace feedwright
