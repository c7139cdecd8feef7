// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/parts_list.h"

#include "machine/fault_list.h"
#include "machine/read_value.h"
#include "machine/write_value.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace feedwright {

namespace {

struct KindAbout {
  ListedKind kind;
  std::string_view name; ///< in files
  PartSlot slot;
  std::string_view type; ///< what must stand in the slot to read the figures; empty for any
};

constexpr KindAbout kinds[] = {
    {ListedKind::screw, "screw", PartSlot::drive, "screw"},
    {ListedKind::belt, "belt", PartSlot::transmission, "belt"},
    {ListedKind::end_bearings, "end_bearings", PartSlot::drive, "screw"},
    {ListedKind::guides, "guides", PartSlot::guides, ""},
    {ListedKind::coupling, "coupling", PartSlot::transmission, "coupling"},
    {ListedKind::stepper_by_points, "stepper_by_points", PartSlot::motor, "stepper_by_points"},
    {ListedKind::stepper_by_ratings, "stepper_by_ratings", PartSlot::motor, "stepper_by_ratings"},
    {ListedKind::servo, "servo", PartSlot::motor, "servo"},
    {ListedKind::material, "material", PartSlot::duty, ""},
};

const KindAbout& about(ListedKind kind) {
  return kinds[static_cast<std::size_t>(kind)];
}

/// The fields a row of the kind may name, as descriptors.
std::vector<FieldInfo> fields_for(const KindAbout& kind) {
  std::vector<FieldInfo> infos;
  if (kind.kind == ListedKind::material) {
    for (const Field<LoadCase>& field : FieldsOf<LoadCase>::list()) {
      infos.push_back(field.info);
    }
    return infos;
  }
  Machine machine;
  machine.axes.emplace_back();
  if (!kind.type.empty()) {
    set_part_type(machine, 0, kind.slot, kind.type);
  }
  for (const FieldView& field : fields_of(machine, 0, kind.slot)) {
    infos.push_back(field.info);
  }
  return infos;
}

class PartsReader {
public:
  PartsReader(std::string_view source, const JsonNode& root) : source_(source), root_(root) {}

  tl::expected<std::vector<ListedPart>, std::vector<Fault>> read() {
    const KindAbout* kind = read_head();
    const JsonNode* rows = root_.find("rows");
    if (kind != nullptr && (rows == nullptr || rows->type != JsonNode::Type::array)) {
      faults_.missing({}, "rows", root_);
    }
    if (!faults_.list().empty()) {
      return tl::unexpected(faults_.take());
    }
    const auto fields = fields_for(*kind);
    for (std::size_t i = 0; i < rows->items.size(); ++i) {
      read_row(*kind, fields, rows->items[i], i);
    }
    if (!faults_.list().empty()) {
      return tl::unexpected(faults_.take());
    }
    return std::move(parts_);
  }

private:
  /// The kind of the list; nothing, and a fault, if it is no parts list of this format.
  const KindAbout* read_head() {
    const JsonNode* format = root_.find("format");
    const JsonNode* name = format != nullptr ? format->find("name") : nullptr;
    const JsonNode* major = format != nullptr ? format->find("major") : nullptr;
    if (name == nullptr || name->text != parts_format_name || major == nullptr) {
      faults_.add(FaultCode::not_a_parts_list, {}, "format", format != nullptr ? format : &root_);
      return nullptr;
    }
    if (major->number != double(parts_format_major)) {
      faults_.add(FaultCode::newer_major, {}, "format", format).found = major->text;
      return nullptr;
    }
    const JsonNode* part = root_.find("part");
    const auto* found = std::ranges::find_if(kinds, [&](const KindAbout& kind) {
      return part != nullptr && part->type == JsonNode::Type::string && kind.name == part->text;
    });
    if (found == std::end(kinds)) {
      faults_.add(FaultCode::not_a_parts_list, {}, "part", part != nullptr ? part : &root_);
      return nullptr;
    }
    return found;
  }

  void read_row(const KindAbout& kind, const std::vector<FieldInfo>& fields, const JsonNode& node,
                std::size_t index) {
    std::array<char, 24> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), index).ptr;
    const Place at{"rows[" + std::string(digits.data(), end) + "]", 0, kind.slot};
    if (node.type != JsonNode::Type::object) {
      faults_.wrong_type(at, "", node, "object");
      return;
    }
    ListedPart part{kind.kind, text_of(node, "name", at), text_of(node, "source", at), {}};
    for (const auto& [member, value] : node.members) {
      if (member != "name" && member != "source") {
        read_member(part, fields, at, member, value);
      }
    }
    parts_.push_back(std::move(part));
  }

  std::string text_of(const JsonNode& node, std::string_view member, const Place& at) {
    const JsonNode* given = node.find(member);
    if (given == nullptr || given->type != JsonNode::Type::string || given->text.empty()) {
      faults_.missing(at, member, node);
      return {};
    }
    return given->text;
  }

  void read_member(ListedPart& part, const std::vector<FieldInfo>& fields, const Place& at,
                   const std::string& member, const JsonNode& node) {
    const auto info = std::ranges::find_if(
        fields, [&](const FieldInfo& field) { return field.member == member; });
    if (info == fields.end()) {
      faults_.add(FaultCode::unknown_member, at, member, &node);
      return;
    }
    EntryNote note;
    auto value = read_value(faults_, source_, *info, at, node, note);
    if (!value) {
      return;
    }
    const auto* quantity = std::get_if<AnyQuantity>(&*value);
    if (quantity != nullptr && !within(info->bound, quantity->si)) {
      Fault& made = faults_.add(FaultCode::out_of_bounds, at, member, &node);
      made.found = node.text;
      made.bound = info->bound;
      made.kind = info->kind;
      made.unit = info->unit;
      return;
    }
    part.values.push_back({member, *std::move(value), note.text});
  }

  std::string_view source_;
  const JsonNode& root_;
  FaultList faults_;
  std::vector<ListedPart> parts_;
};

bool take_material(DutyCycle& duty, const ListedPart& part, std::size_t load_case) {
  if (load_case >= duty.load_cases.size()) {
    return false;
  }
  LoadCase changed = duty.load_cases[load_case];
  for (const ListedValue& value : part.values) {
    for (const Field<LoadCase>& field : FieldsOf<LoadCase>::list()) {
      if (field.info.member == value.member && !field.set(changed, value.value)) {
        return false;
      }
    }
  }
  duty.load_cases[load_case] = changed;
  duty.notes.entries["load_cases"] = {{}, Origin::entered};
  return true;
}

/// The figures a part is bought with, by the list it stands in. What is cut, mounted or chosen by
/// the builder (lengths, end supports, safeties) is not among them.
std::span<const std::string_view> bought_figures(ListedKind kind) {
  static constexpr std::string_view screw[] = {"thread",         "nominal_diameter",
                                               "core_diameter",  "pitch_diameter",
                                               "lead",           "starts",
                                               "bore",           "thread_friction",
                                               "efficiency",     "nuts",
                                               "backlash",       "preload",
                                               "preload_drag",   "ball_speed_limit",
                                               "speed_limit",    "static_rating",
                                               "dynamic_rating", "nut_stiffness",
                                               "grade"};
  static constexpr std::string_view belt[] = {"profile",        "pitch",
                                              "width",          "mass_per_length",
                                              "speed_limit",    "tooth_gap",
                                              "allowable_pull", "rated_pull",
                                              "base_width",     "specific_stiffness",
                                              "tooth_loads",    "most_teeth_counted",
                                              "least_teeth"};
  static constexpr std::string_view guides[] = {"friction",    "blocks",          "seal_drag",
                                                "speed_limit", "block_stiffness", "block_rating"};
  static constexpr std::string_view coupling[] = {"inertia", "torque_limit", "stiffness"};
  static constexpr std::string_view stepper[] = {
      "frame",         "points",     "points_voltage", "holding_torque",        "rated_current",
      "resistance",    "inductance", "drive_current",  "drive_current_reading", "rotor_inertia",
      "detent_torque", "step_angle", "closed_loop"};
  static constexpr std::string_view servo[] = {
      "frame",     "continuous_torque", "peak_torque",   "rated_speed",
      "top_speed", "rotor_inertia",     "steps_per_turn"};
  switch (kind) {
  case ListedKind::screw: return screw;
  case ListedKind::belt: return belt;
  case ListedKind::guides: return guides;
  case ListedKind::coupling: return coupling;
  case ListedKind::stepper_by_points:
  case ListedKind::stepper_by_ratings: return stepper;
  case ListedKind::servo: return servo;
  case ListedKind::end_bearings:
  case ListedKind::material: break;
  }
  return {};
}

/// What a part's notes say where it is from; bearings are named beside the screw they hold.
std::string source_with(const std::string& before, const ListedPart& part) {
  std::string own = part.name + ": " + part.source;
  if (part.kind != ListedKind::end_bearings) {
    return own;
  }
  const std::string head = before.substr(0, before.find("; end bearings "));
  return head.empty() ? "end bearings " + own : head + "; end bearings " + own;
}

} // namespace

tl::expected<std::vector<ListedPart>, std::vector<Fault>> read_parts(std::string_view json) {
  const auto root = read_json(json);
  if (!root) {
    return tl::unexpected(faults_of_json(root.error()));
  }
  return PartsReader(json, *root).read();
}

std::string_view list_name(ListedKind kind) {
  return about(kind).name;
}

PartSlot slot_of(ListedKind kind) {
  return about(kind).slot;
}

bool fits(ListedKind kind, PartSlot slot) {
  return about(kind).slot == slot || (kind == ListedKind::belt && slot == PartSlot::drive);
}

/// Figures of a part that its builder chooses, whichever part it is.
bool is_chosen(std::string_view member) {
  static constexpr std::string_view chosen[] = {
      "nuts", "preload", "blocks", "drive_current", "drive_current_reading", "closed_loop"};
  return std::ranges::find(chosen, member) != std::end(chosen);
}

/// What the part before had from its list, or was measured on it, is not the new part's: open
/// again, or the preset. What was chosen stays.
void give_up_listed(Machine& machine, std::size_t axis, PartSlot slot, ListedKind kind) {
  Machine fresh;
  fresh.axes.resize(1);
  set_part_type(fresh, 0, slot, part_type(machine, axis, slot));
  for (const std::string_view member : bought_figures(kind)) {
    const auto field = field_of(machine, axis, slot, member);
    const bool of_part = field && (field->note.origin == Origin::part_list ||
                                   (field->note.origin == Origin::entered && !is_chosen(member)));
    if (!of_part) {
      continue;
    }
    if (field->info.presence == Presence::open) {
      set_field(machine, axis, slot, member, {}, {});
    } else if (const auto preset = field_of(fresh, 0, slot, member);
               preset && field->info.presence == Presence::preset) {
      set_field(machine, axis, slot, member, preset->value, {{}, Origin::preset});
    }
  }
}

bool take_part(Machine& machine, std::size_t axis, PartSlot slot, const ListedPart& part,
               std::size_t load_case) {
  if (part.kind == ListedKind::material) {
    return take_material(machine.axes.at(axis).duty, part, load_case);
  }
  Machine changed = machine;
  const std::string_view now = part_type(changed, axis, slot);
  if (part.kind == ListedKind::belt) {
    const bool has_belt = now == part_type_name<BeltLoopDrive> ||
                          now == part_type_name<BeltStage> || now == part_type_name<HaulingBelt>;
    if (!has_belt) {
      set_part_type(changed, axis, slot,
                    slot == PartSlot::drive ? part_type_name<HaulingBelt>
                                            : part_type_name<BeltStage>);
    }
  } else if (!about(part.kind).type.empty()) {
    set_part_type(changed, axis, slot, about(part.kind).type);
  }
  give_up_listed(changed, axis, slot, part.kind);
  for (const ListedValue& value : part.values) {
    if (!set_field(changed, axis, slot, value.member, value.value,
                   {value.text, Origin::part_list})) {
      return false;
    }
  }
  visit_part(changed, axis, slot,
             [&](auto& held) { held.notes.source = source_with(held.notes.source, part); });
  machine = std::move(changed);
  return true;
}

bool is_source(std::string_view source, const ListedPart& part) {
  return source.find(part.name + ": " + part.source) != std::string_view::npos;
}

std::optional<ListedKind> list_for(const Machine& machine, std::size_t axis, PartSlot slot) {
  const std::string_view type = part_type(machine, axis, slot);
  const bool belt = type == part_type_name<BeltLoopDrive> || type == part_type_name<HaulingBelt>;
  for (const KindAbout& kind : kinds) {
    const bool whole = kind.kind != ListedKind::end_bearings && kind.kind != ListedKind::material;
    if (whole && kind.slot == slot && kind.type == type) {
      return kind.kind;
    }
  }
  return belt ? std::optional(ListedKind::belt) : std::nullopt;
}

ListedPart as_listed(const Machine& machine, std::size_t axis, PartSlot slot, ListedKind kind,
                     std::string name, std::string source) {
  ListedPart part{kind, std::move(name), std::move(source), {}};
  for (const std::string_view member : bought_figures(kind)) {
    const auto field = field_of(machine, axis, slot, member);
    const bool given = field && !std::holds_alternative<std::monostate>(field->value);
    const bool preset =
        given && field->info.presence == Presence::preset && field->note.origin == Origin::preset;
    const auto* text = given ? std::get_if<std::string>(&field->value) : nullptr;
    if (given && !preset && !(text != nullptr && text->empty())) {
      part.values.push_back({std::string(member), field->value, field->note.text});
    }
  }
  return part;
}

std::string write_parts(ListedKind kind, std::span<const ListedPart> parts) {
  const auto fields = fields_for(about(kind));
  JsonWriter json;
  json.begin_object().member("format").begin_object();
  json.member("name").value(parts_format_name);
  json.member("major").value(parts_format_major);
  json.member("minor").value(0);
  json.end_object();
  json.member("part").value(about(kind).name);
  json.member("rows").begin_array();
  for (const ListedPart& part : parts) {
    json.begin_object();
    json.member("name").value(part.name);
    json.member("source").value(part.source);
    for (const ListedValue& value : part.values) {
      const auto info = std::ranges::find(fields, value.member, &FieldInfo::member);
      if (info != fields.end()) {
        const EntryNote note{value.text, Origin::part_list};
        write_value(json.member(value.member), *info, value.value, &note);
      }
    }
    json.end_object();
  }
  json.end_array().end_object();
  return std::move(json).finish();
}

} // namespace feedwright
