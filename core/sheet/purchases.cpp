// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_content.h"

#include <algorithm>

namespace feedwright {

namespace {

bool given(const FieldView& field) {
  const auto* text = std::get_if<std::string>(&field.value);
  return !std::holds_alternative<std::monostate>(field.value) &&
         (text == nullptr || !text->empty());
}

std::string source_of(const Machine& machine, std::size_t axis, PartSlot slot) {
  return visit_part(machine, axis, slot, [](const auto& part) { return part.notes.source; });
}

/// Pulleys of one belt differ in the name of the field only.
bool same_piece(const PurchasePiece& a, const PurchasePiece& b) {
  return a.field.info.unit == b.field.info.unit && a.field.value == b.field.value;
}

bool same_part(const Purchase& a, const Purchase& b) {
  return a.kind == b.kind && a.type == b.type && a.source == b.source &&
         std::ranges::equal(a.pieces, b.pieces, same_piece);
}

class Basket {
public:
  explicit Basket(const Machine& machine) : machine_(machine) {}

  void axis(std::size_t index) {
    axis_ = index;
    const Axis& axis = machine_.axes[index];
    motors_ = axis.sides.layout == DriveLayout::two_motors ? 2 : 1;
    drives_ = axis.sides.layout == DriveLayout::one ? 1 : 2;
    add(PurchaseKind::motor, PartSlot::motor, motors_,
        {"frame", "holding_torque", "rated_current", "continuous_torque", "peak_torque",
         "rated_speed", "step_angle"});
    transmission(axis);
    std::visit([this](const auto& drive) { final_drive(drive); }, axis.drive);
    if (axis.guides.blocks > 0) {
      add(PurchaseKind::guide_blocks, PartSlot::guides, axis.guides.blocks, {});
    }
    if (axis.carriage.brake) {
      add(PurchaseKind::brake, PartSlot::carriage, motors_, {});
    }
  }

  std::vector<Purchase> take() {
    axis_.reset();
    add(PurchaseKind::supply, PartSlot::supply, 1, {"voltage"});
    std::ranges::stable_sort(purchases_, {}, &Purchase::kind);
    return std::move(purchases_);
  }

private:
  void final_drive(const Screw& screw) {
    add(PurchaseKind::screw, PartSlot::drive, drives_,
        {"thread", "nominal_diameter", "lead", screw.overall_length ? "overall_length" : "span"});
    bearing(screw.motor_end);
    bearing(screw.far_end);
  }

  void final_drive(const HaulingBelt&) {
    add(PurchaseKind::belt, PartSlot::drive, drives_, {"profile", "pitch", "width", "belt_length"});
    add(PurchaseKind::pulley, PartSlot::drive, 2 * drives_,
        {"profile", "pitch", "width", "pulley_teeth"});
  }

  void transmission(const Axis& axis) {
    constexpr auto slot = PartSlot::transmission;
    if (std::holds_alternative<Coupling>(axis.transmission)) {
      add(PurchaseKind::coupling, slot, motors_, {});
      return;
    }
    add(PurchaseKind::belt, slot, motors_, {"profile", "pitch", "width", "belt_teeth"});
    if (const auto* loop = std::get_if<BeltLoopDrive>(&axis.transmission)) {
      for (const LoopMember& member : loop->pulleys) {
        loop_pulley(member);
      }
      return;
    }
    add(PurchaseKind::pulley, slot, motors_, {"profile", "pitch", "width", "motor_pulley_teeth"});
    add(PurchaseKind::pulley, slot, motors_, {"profile", "pitch", "width", "screw_pulley_teeth"});
  }

  /// A pulley of a loop has no field of its own: its count of teeth or its diameter is a cell.
  void loop_pulley(const LoopMember& member) {
    const bool toothed = member.teeth > 0;
    const PurchaseKind kind = toothed ? PurchaseKind::pulley : PurchaseKind::roller;
    FieldView size;
    if (toothed) {
      size.info.member = "teeth";
      size.info.type = FieldType::count;
      size.value = std::int64_t{member.teeth};
    } else {
      size.info.member = "diameter";
      size.info.kind = Kind::length;
      size.info.unit = "mm";
      size.value = member.diameter ? FieldValue(any(**member.diameter)) : FieldValue();
    }
    add(kind, PartSlot::transmission, 1, {"profile", "pitch", "width"}, size);
  }

  void bearing(EndSupport end) {
    if (end == EndSupport::free) {
      return;
    }
    add(end == EndSupport::fixed ? PurchaseKind::fixed_bearing : PurchaseKind::support_bearing,
        PartSlot::drive, drives_, {"nominal_diameter"});
  }

  void add(PurchaseKind kind, PartSlot slot, std::int64_t count,
           std::initializer_list<std::string_view> members,
           const std::optional<FieldView>& also = std::nullopt) {
    const std::size_t at = axis_.value_or(0);
    Purchase made{kind, 0, {}, {}, source_of(machine_, at, slot), {}};
    if (kind == PurchaseKind::motor) {
      made.type = part_type(machine_, at, slot);
    }
    for (const std::string_view member : members) {
      if (auto field = field_of(machine_, at, slot, member); field && given(*field)) {
        made.pieces.push_back({slot, *std::move(field)});
      }
    }
    if (also) {
      made.pieces.push_back({slot, *also});
    }
    Purchase& kept = alike_or_new(made);
    kept.count += count;
    if (axis_) {
      const std::string& letter = machine_.axes[at].basics.letter;
      if (std::ranges::find(kept.letters, letter) == kept.letters.end()) {
        kept.letters.push_back(letter);
      }
    }
  }

  Purchase& alike_or_new(const Purchase& made) {
    const auto found = std::ranges::find_if(
        purchases_, [&](const Purchase& other) { return same_part(made, other); });
    return found != purchases_.end() ? *found : purchases_.emplace_back(made);
  }

  const Machine& machine_;
  std::optional<std::size_t> axis_;
  std::int64_t motors_ = 1;
  std::int64_t drives_ = 1;
  std::vector<Purchase> purchases_;
};

} // namespace

std::vector<Purchase> purchases_of(const Machine& machine) {
  Basket basket(machine);
  for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
    basket.axis(axis);
  }
  return basket.take();
}

} // namespace feedwright
