// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/fault_list.h"
#include "machine/machine_file.h"
#include "machine/read_answers.h"
#include "machine/read_value.h"
#include "machine/write_value.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace feedwright {

namespace {

class MachineReader {
public:
  MachineReader(std::string_view source, const JsonNode& root) : source_(source), root_(root) {}

  /// With `sound`, what is unsound is a fault too.
  tl::expected<Machine, std::vector<Fault>> read(bool sound) {
    if (!read_format()) {
      return tl::unexpected(faults_.take());
    }
    read_text("name", machine_.name, true);
    read_text("story", machine_.story, false);
    read_part("supply", machine_.supply, {"supply", 0, PartSlot::supply}, root_, true);
    read_part("controller", machine_.controller, {"controller", 0, PartSlot::controller}, root_,
              false);
    read_part("spindle", machine_.spindle, {"spindle", 0, PartSlot::spindle}, root_, false);
    read_axes();
    machine_.answers = read_answers(faults_, source_, {}, root_);
    keep_unknown(root_,
                 {"format", "name", "story", "supply", "controller", "spindle", "axes", "answers"},
                 machine_.unknown);
    if (sound && faults_.list().empty()) {
      faults_.add_with_lines(faults_of(machine_), root_);
    }
    if (!faults_.list().empty()) {
      return tl::unexpected(faults_.take());
    }
    return machine_;
  }

private:
  std::string slice(const JsonNode& node) const {
    return std::string(source_.substr(node.begin, node.end - node.begin));
  }

  void keep_unknown(const JsonNode& node, const std::vector<std::string_view>& known,
                    std::vector<std::pair<std::string, std::string>>& unknown) const {
    for (const auto& [name, value] : node.members) {
      if (std::ranges::find(known, std::string_view(name)) == known.end()) {
        unknown.emplace_back(name, slice(value));
      }
    }
  }

  bool read_format() {
    const JsonNode* format = root_.find("format");
    const JsonNode* name = format != nullptr ? format->find("name") : nullptr;
    if (name == nullptr || name->type != JsonNode::Type::string || name->text != format_name) {
      faults_.add(FaultCode::not_a_machine, {}, "format", format != nullptr ? format : &root_);
      return false;
    }
    const auto version = [&](std::string_view member) {
      const JsonNode* node = format->find(member);
      const bool whole = node != nullptr && node->type == JsonNode::Type::number &&
                         node->number >= 0.0 && node->number <= 1e6 &&
                         node->number == std::floor(node->number);
      return whole ? std::optional(static_cast<int>(node->number)) : std::nullopt;
    };
    const auto major = version("major");
    const auto minor = version("minor");
    if (!major || !minor) {
      faults_.missing({"format", 0, std::nullopt}, major ? "minor" : "major", *format);
      return false;
    }
    if (*major > format_major || *major < oldest_major) {
      faults_.add(FaultCode::newer_major, {}, "format", format).found =
          format->find("major")->text + "." + format->find("minor")->text;
      return false;
    }
    major_ = *major;
    machine_.newer_minor = *major == format_major && *minor > format_minor ? *minor : 0;
    keep_unknown(*format, {"name", "major", "minor"}, machine_.unknown_format);
    return true;
  }

  void read_text(std::string_view member, std::string& into, bool required) {
    const JsonNode* node = root_.find(member);
    if (node == nullptr) {
      if (required) {
        faults_.missing({}, member, root_);
      }
    } else if (node->type != JsonNode::Type::string) {
      faults_.wrong_type({}, member, *node, "string");
    } else {
      into = node->text;
    }
  }

  void read_axes() {
    const JsonNode* axes = root_.find("axes");
    if (axes == nullptr) {
      faults_.missing({}, "axes", root_);
      return;
    }
    if (axes->type != JsonNode::Type::array) {
      faults_.wrong_type({}, "axes", *axes, "array");
      return;
    }
    faults_.remember("axes", *axes);
    if (axes->items.size() > most_axes) {
      faults_.add(FaultCode::too_many_axes, {}, "axes", axes).most = most_axes;
      return;
    }
    for (std::size_t i = 0; i < axes->items.size(); ++i) {
      read_axis(axes->items[i], i);
    }
  }

  void read_axis(const JsonNode& node, std::size_t index) {
    std::string path = "axes[";
    std::array<char, 8> digits{};
    path.append(digits.data(), std::to_chars(digits.data(), digits.data() + 8, index).ptr);
    path += "]";
    const Place at{path, index, PartSlot::axis};
    if (node.type != JsonNode::Type::object) {
      faults_.wrong_type(at, "", node, "object");
      return;
    }
    Axis& axis = machine_.axes.emplace_back();
    faults_.remember(path, node);
    read_fields(axis.basics, at, node,
                {"targets", "carriage", "guides", "sides", "duty", "motor", "transmission",
                 drive_member(), "answers"});
    axis.answers = read_answers(faults_, source_, at, node);
    const auto place_of = [&](PartSlot slot) {
      return Place{path + "." + std::string(slot_name(slot)), index, slot};
    };
    read_part("targets", axis.targets, place_of(PartSlot::targets), node, false);
    read_part("carriage", axis.carriage, place_of(PartSlot::carriage), node, true);
    read_part("guides", axis.guides, place_of(PartSlot::guides), node, false);
    read_part("sides", axis.sides, place_of(PartSlot::sides), node, false);
    read_part("duty", axis.duty, place_of(PartSlot::duty), node, false);
    read_choice("motor", axis.motor, place_of(PartSlot::motor), node);
    read_choice("transmission", axis.transmission, place_of(PartSlot::transmission), node);
    if (major_ == 1) {
      // Before 2.0 an axis had a screw, of no other type.
      read_part("screw", axis.drive.emplace<Screw>(), {path + ".screw", index, PartSlot::drive},
                node, true);
    } else {
      read_choice("drive", axis.drive, place_of(PartSlot::drive), node);
    }
  }

  std::string_view drive_member() const { return major_ == 1 ? "screw" : "drive"; }

  /// The object of a part, if it is there and is one.
  const JsonNode* part_object(std::string_view member, const Place& at, const JsonNode& parent,
                              bool required) {
    const JsonNode* node = parent.find(member);
    if (node == nullptr) {
      if (required) {
        const auto dot = at.path.find_last_of('.');
        const Place above{dot == std::string::npos ? std::string() : at.path.substr(0, dot),
                          at.axis, at.slot};
        faults_.missing(above, member, parent);
      }
      return nullptr;
    }
    if (node->type != JsonNode::Type::object) {
      faults_.wrong_type(at, "", *node, "object");
      return nullptr;
    }
    faults_.remember(at.path, *node);
    return node;
  }

  template <class Part>
  void read_part(std::string_view member, Part& part, const Place& at, const JsonNode& parent,
                 bool required) {
    if (const JsonNode* node = part_object(member, at, parent, required)) {
      read_fields(part, at, *node, {});
    }
  }

  template <class... Types>
  void read_choice(std::string_view member, std::variant<Types...>& part, const Place& at,
                   const JsonNode& parent) {
    const JsonNode* node = part_object(member, at, parent, true);
    if (node == nullptr) {
      return;
    }
    const JsonNode* type = node->find("type");
    if (type == nullptr) {
      faults_.missing(at, "type", *node);
      return;
    }
    if (type->type != JsonNode::Type::string) {
      faults_.wrong_type(at, "type", *type, "string");
      return;
    }
    const bool known =
        ((type->text == part_type_name<Types> &&
          (read_fields(part.template emplace<Types>(), at, *node, {"type"}), true)) ||
         ...);
    if (!known) {
      Fault& made = faults_.add(FaultCode::unknown_choice, at, "type", type);
      made.found = type->text;
      made.choices = part_types(*at.slot);
    }
  }

  template <class Part>
  void read_fields(Part& part, const Place& at, const JsonNode& node,
                   std::initializer_list<std::string_view> also_known) {
    std::vector<std::string_view> known(also_known);
    known.insert(known.end(), {"source", "changed", "presets"});
    const NamedMembers named = read_notes(part.notes, at, node);
    for (const Field<Part>& field : FieldsOf<Part>::list()) {
      known.push_back(field.info.member);
      const JsonNode* given = node.find(field.info.member);
      if (given == nullptr) {
        if (field.info.presence == Presence::required) {
          faults_.missing(at, field.info.member, node, &field.info);
        }
        continue;
      }
      faults_.remember(at.path + "." + std::string(field.info.member), *given);
      read_field(part, field, at, *given, named);
    }
    keep_unknown(node, known, part.notes.unknown);
  }

  struct NamedMembers {
    std::vector<std::string_view> changed; ///< since the part was taken from its source
    std::vector<std::string_view> presets; ///< in the file because it must be; given by nobody
  };

  static bool has(const std::vector<std::string_view>& names, std::string_view member) {
    return std::ranges::find(names, member) != names.end();
  }

  std::vector<std::string_view> read_names(std::string_view member, const Place& at,
                                           const JsonNode& node) {
    std::vector<std::string_view> names;
    if (const JsonNode* list = node.find(member)) {
      if (list->type != JsonNode::Type::array) {
        faults_.wrong_type(at, member, *list, "array");
        return names;
      }
      for (const JsonNode& item : list->items) {
        names.emplace_back(item.text);
      }
    }
    return names;
  }

  /// The part's source, and members that are told apart by where they came from.
  NamedMembers read_notes(PartNotes& notes, const Place& at, const JsonNode& node) {
    if (const JsonNode* source = node.find("source")) {
      if (source->type == JsonNode::Type::string) {
        notes.source = source->text;
      } else {
        faults_.wrong_type(at, "source", *source, "string");
      }
    }
    return {read_names("changed", at, node), read_names("presets", at, node)};
  }

  template <class Part>
  void read_field(Part& part, const Field<Part>& field, const Place& at, const JsonNode& node,
                  const NamedMembers& named) {
    EntryNote note;
    const bool listed = !part.notes.source.empty() && !has(named.changed, field.info.member);
    note.origin = listed ? Origin::part_list : Origin::entered;
    const auto value = read_value(faults_, source_, field.info, at, node, note);
    if (!value) {
      return;
    }
    if (field.set(part, *value)) {
      // A text that no program writes was typed into the file, whatever its list still says.
      const FieldValue taken = field.get(part);
      const bool untyped = taken == field.get(Part()) || is_plain(field.info, taken, note.text);
      const bool preset =
          has(named.presets, field.info.member) && may_be_preset(field.info) && untyped;
      if (!preset) {
        part.notes.entries[std::string(field.info.member)] = note;
      }
      return;
    }
    const bool is_choice = field.info.type == FieldType::choice;
    Fault& made = faults_.add(is_choice ? FaultCode::unknown_choice : FaultCode::out_of_bounds, at,
                              field.info.member, &node);
    made.found = node.text;
    made.bound = field.info.bound;
    made.kind = field.info.kind;
    made.unit = field.info.unit;
    made.choices = field.info.choices;
  }

  std::string_view source_;
  const JsonNode& root_;
  Machine machine_;
  int major_ = format_major;
  FaultList faults_;
};

} // namespace

namespace {

tl::expected<Machine, std::vector<Fault>> read(std::string_view json, bool sound) {
  const auto root = read_json(json);
  if (!root) {
    return tl::unexpected(faults_of_json(root.error()));
  }
  return MachineReader(json, *root).read(sound);
}

} // namespace

tl::expected<Machine, std::vector<Fault>> read_machine(std::string_view json) {
  return read(json, true);
}

tl::expected<Machine, std::vector<Fault>> read_machine_as_typed(std::string_view json) {
  return read(json, false);
}

} // namespace feedwright
