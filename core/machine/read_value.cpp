// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/read_value.h"

#include "units/read_quantity.h"

#include <cmath>

namespace feedwright {

namespace {

class ValueReader {
public:
  ValueReader(FaultList& faults, std::string_view source) : faults_(faults), source_(source) {}

  std::optional<FieldValue> read(const FieldInfo& info, const Place& at, const JsonNode& node,
                                 EntryNote& note) {
    using Type = JsonNode::Type;
    switch (info.type) {
    case FieldType::quantity: return read_quantity_value(info, at, node, note);
    case FieldType::count: return read_count(info, at, node);
    case FieldType::flag:
      if (node.type == Type::boolean) {
        return node.boolean;
      }
      faults_.wrong_type(at, info.member, node, "boolean");
      return std::nullopt;
    case FieldType::choice:
    case FieldType::text:
      if (node.type == Type::string) {
        return node.text;
      }
      faults_.wrong_type(at, info.member, node, "string", &info);
      return std::nullopt;
    case FieldType::points: break;
    }
    note.text = source_.substr(node.begin, node.end - node.begin);
    return read_points(info, at, node);
  }

private:
  std::optional<FieldValue> read_quantity_value(const FieldInfo& info, const Place& at,
                                                const JsonNode& node, EntryNote& note) {
    if (node.type == JsonNode::Type::number && info.kind == Kind::number) {
      note.text = node.text;
      return AnyQuantity{Kind::number, node.number};
    }
    if (node.type != JsonNode::Type::string) {
      faults_.wrong_type(at, info.member, node, "string", &info);
      return std::nullopt;
    }
    const auto read = read_quantity(node.text, info.kind);
    if (!read) {
      unreadable(info, at, node, read.error());
      return std::nullopt;
    }
    note.text = node.text;
    return read->value;
  }

  Fault& unreadable(const FieldInfo& info, const Place& at, const JsonNode& node,
                    const ReadError& error) {
    Fault& made = faults_.add(FaultCode::unreadable_quantity, at, info.member, &node);
    made.found = node.text;
    made.quantity = error;
    made.kind = error.wanted;
    made.unit = info.unit;
    return made;
  }

  std::optional<FieldValue> read_count(const FieldInfo& info, const Place& at,
                                       const JsonNode& node) {
    if (node.type != JsonNode::Type::number) {
      faults_.wrong_type(at, info.member, node, "number");
      return std::nullopt;
    }
    const bool whole = node.number == std::floor(node.number);
    if (!whole || node.number < double(info.least) || node.number > double(info.most)) {
      Fault& made = faults_.add(FaultCode::out_of_bounds, at, info.member, &node);
      made.found = node.text;
      made.least = info.least;
      made.most = info.most;
      return std::nullopt;
    }
    return static_cast<std::int64_t>(node.number);
  }

  std::optional<FieldValue> read_points(const FieldInfo& info, const Place& at,
                                        const JsonNode& node) {
    if (node.type != JsonNode::Type::array) {
      faults_.wrong_type(at, info.member, node, "array");
      return std::nullopt;
    }
    std::vector<TorquePoint> points;
    const std::size_t faults_before = faults_.list().size();
    for (const JsonNode& item : node.items) {
      if (item.type != JsonNode::Type::array || item.items.size() != 2) {
        faults_.wrong_type(at, info.member, item, "pair");
        continue;
      }
      const auto speed = read_point_part(info, at, item.items[0], Kind::angular_velocity);
      const auto torque = read_point_part(info, at, item.items[1], Kind::torque);
      if (speed && torque) {
        points.push_back({from_si<AngularVelocity>(*speed), from_si<Torque>(*torque)});
      }
    }
    return faults_.list().size() == faults_before ? std::optional<FieldValue>(points)
                                                  : std::nullopt;
  }

  std::optional<double> read_point_part(const FieldInfo& info, const Place& at,
                                        const JsonNode& node, Kind kind) {
    if (node.type != JsonNode::Type::string) {
      faults_.wrong_type(at, info.member, node, "string", &info);
      return std::nullopt;
    }
    const auto read = read_quantity(node.text, kind);
    if (!read) {
      unreadable(info, at, node, read.error()).unit = units_of(kind).front().symbol;
      return std::nullopt;
    }
    return read->value.si;
  }

  FaultList& faults_;
  std::string_view source_;
};

} // namespace

std::optional<FieldValue> read_value(FaultList& faults, std::string_view source,
                                     const FieldInfo& info, const Place& at, const JsonNode& node,
                                     EntryNote& note) {
  return ValueReader(faults, source).read(info, at, node, note);
}

} // namespace feedwright
