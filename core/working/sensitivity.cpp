// SPDX-License-Identifier: GPL-3.0-or-later
#include "working/sensitivity.h"

#include "machine/machine_file.h"
#include "sizing/size_axis.h"

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

constexpr double small_change = 1e-3;

class Shaker {
public:
  Shaker(const Machine& machine, std::size_t axis, ResultId result)
      : machine_(machine), axis_(axis), about_(descriptor(result)),
        ready_(machine_, machine_.axes[axis]), at_rest_(sized(PartSlot::axis)) {}

  bool can_be_moved() const { return at_rest_ && *at_rest_ != 0.0; }

  void shake(PartSlot slot, std::vector<Sensitivity>& found) {
    for (const FieldView& field : fields_of(machine_, axis_, slot)) {
      const auto* value = std::get_if<AnyQuantity>(&field.value);
      if (value == nullptr || value->si == 0.0) {
        continue;
      }
      const double share = share_of(slot, field, *value);
      constexpr double least = 0.01;
      // Beyond that it is a jump, of whole teeth for instance, and no slope.
      constexpr double most = 20.0;
      if (std::abs(share) >= least && std::abs(share) <= most) {
        found.push_back({input_ref(slot, field.info.member), share});
      }
    }
  }

private:
  /// With a figure of that slot changed. The motor's curve and the belt's geometry are made anew
  /// only where they could have changed.
  std::optional<double> sized(PartSlot slot) const {
    const Axis& axis = machine_.axes[axis_];
    const bool anew =
        slot == PartSlot::supply || slot == PartSlot::motor || slot == PartSlot::transmission;
    return about_.si_of(anew ? size_axis(machine_, axis) : size_axis(machine_, axis, ready_));
  }

  /// The result with the field changed by that factor; nothing where the machine would be unsound.
  std::optional<double> with(PartSlot slot, const FieldView& field, const AnyQuantity& value,
                             double factor) {
    const AnyQuantity changed{value.kind, value.si * factor};
    if (!set_field(machine_, axis_, slot, field.info.member, changed, {})) {
      return std::nullopt;
    }
    auto moved = faults_of(machine_).empty() ? sized(slot) : std::nullopt;
    set_field(machine_, axis_, slot, field.info.member, field.value, field.note);
    return moved;
  }

  /// Zero where it cannot be said.
  double share_of(PartSlot slot, const FieldView& field, const AnyQuantity& value) {
    const auto up = with(slot, field, value, 1.0 + small_change);
    if (up && *up == *at_rest_) {
      return 0.0; // most figures have no part in it
    }
    const auto down = with(slot, field, value, 1.0 - small_change);
    const double above = up ? *up / *at_rest_ : 1.0;
    const double below = down ? *down / *at_rest_ : 1.0;
    const double step =
        std::log((up ? 1.0 + small_change : 1.0) / (down ? 1.0 - small_change : 1.0));
    if (above <= 0.0 || below <= 0.0 || step == 0.0) {
      return 0.0;
    }
    return std::log(above / below) / step;
  }

  Machine machine_;
  std::size_t axis_;
  const ResultDescriptor& about_;
  AxisPreparation ready_;
  std::optional<double> at_rest_;
};

} // namespace

std::vector<Sensitivity> sensitivities(const Machine& machine, std::size_t axis, ResultId result) {
  std::vector<Sensitivity> found;
  Shaker shaker(machine, axis, result);
  if (!shaker.can_be_moved()) {
    return found;
  }
  for (const PartSlot slot : machine_slots) {
    shaker.shake(slot, found);
  }
  for (const PartSlot slot : axis_slots) {
    shaker.shake(slot, found);
  }
  std::stable_sort(found.begin(), found.end(), [](const Sensitivity& a, const Sensitivity& b) {
    return std::abs(a.share) > std::abs(b.share);
  });
  return found;
}

} // namespace feedwright
