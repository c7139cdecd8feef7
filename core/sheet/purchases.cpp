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

/// The two pulleys of a belt differ in the name of the field only.
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
    const auto per_axis = std::int64_t{1};
    add(PurchaseKind::motor, PartSlot::motor, per_axis,
        {"frame", "holding_torque", "rated_current", "continuous_torque", "peak_torque",
         "rated_speed", "step_angle"});
    transmission(axis);
    add(PurchaseKind::screw, PartSlot::screw, per_axis,
        {"thread", "nominal_diameter", "lead",
         axis.screw.overall_length ? "overall_length" : "span"});
    bearing(axis.screw.motor_end);
    bearing(axis.screw.far_end);
    if (axis.guides.blocks > 0) {
      add(PurchaseKind::guide_blocks, PartSlot::guides, axis.guides.blocks, {});
    }
    if (axis.carriage.brake) {
      add(PurchaseKind::brake, PartSlot::carriage, per_axis, {});
    }
  }

  std::vector<Purchase> take() {
    axis_.reset();
    add(PurchaseKind::supply, PartSlot::supply, 1, {"voltage"});
    std::ranges::stable_sort(purchases_, {}, &Purchase::kind);
    return std::move(purchases_);
  }

private:
  void transmission(const Axis& axis) {
    if (std::holds_alternative<Coupling>(axis.transmission)) {
      add(PurchaseKind::coupling, PartSlot::transmission, 1, {});
      return;
    }
    add(PurchaseKind::belt, PartSlot::transmission, 1, {"profile", "pitch", "width", "belt_teeth"});
    add(PurchaseKind::pulley, PartSlot::transmission, 1,
        {"profile", "pitch", "width", "motor_pulley_teeth"});
    add(PurchaseKind::pulley, PartSlot::transmission, 1,
        {"profile", "pitch", "width", "screw_pulley_teeth"});
  }

  void bearing(EndSupport end) {
    if (end == EndSupport::free) {
      return;
    }
    add(end == EndSupport::fixed ? PurchaseKind::fixed_bearing : PurchaseKind::support_bearing,
        PartSlot::screw, 1, {"nominal_diameter"});
  }

  void add(PurchaseKind kind, PartSlot slot, std::int64_t count,
           std::initializer_list<std::string_view> members) {
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
