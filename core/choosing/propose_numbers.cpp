// SPDX-License-Identifier: GPL-3.0-or-later

// Inputs that may have any value: the least change of each that reaches the limit, on a grid that
// a builder can work to.

#include "choosing/lengthen.h"
#include "choosing/trial.h"
#include "units/read_quantity.h"
#include "units/write_quantity.h"

#include <algorithm>
#include <cmath>

namespace feedwright::choosing {

namespace {

enum class Way : std::uint8_t { less, more };

/// An input a builder can change, or can ask of a part.
struct NumberInput {
  PartSlot slot;
  std::string_view member;
  Way way;
  std::string_view step; ///< what is worth telling apart
  double farthest;       ///< beyond so many times its value it is another machine
  RemedyNature nature;
};

// Safety factors, shares that may be used and readings that are less careful are not here: to
// loosen them changes the answer, not the machine.
using S = PartSlot;
using N = RemedyNature;
constexpr double any_part = 20.0;
constexpr NumberInput inputs[] = {
    {S::drive, "span", Way::less, "1 mm", 4.0, N::change},
    {S::drive, "preload", Way::less, "10 N", 10.0, N::change},
    {S::drive, "preload", Way::more, "10 N", 10.0, N::change},
    {S::drive, "backlash", Way::less, "1 µm", any_part, N::better_part},
    {S::drive, "tooth_gap", Way::less, "1 µm", any_part, N::better_part},
    {S::drive, "speed_limit", Way::more, "10 rpm", any_part, N::better_part},
    {S::drive, "ball_speed_limit", Way::more, "1000 mm·rpm", 3.0, N::better_part},
    {S::drive, "static_rating", Way::more, "0.1 kN", any_part, N::better_part},
    {S::drive, "dynamic_rating", Way::more, "0.1 kN", any_part, N::better_part},
    {S::drive, "bearing_thrust_limit", Way::more, "0.1 kN", any_part, N::better_part},
    {S::drive, "nut_stiffness", Way::more, "1 N/µm", any_part, N::better_part},
    {S::drive, "bearing_stiffness", Way::more, "1 N/µm", any_part, N::better_part},
    {S::drive, "allowable_pull", Way::more, "10 N", any_part, N::better_part},
    {S::drive, "specific_stiffness", Way::more, "1 kN", any_part, N::better_part},
    {S::transmission, "tooth_gap", Way::less, "1 µm", any_part, N::better_part},
    {S::transmission, "torque_limit", Way::more, "0.1 N·m", any_part, N::better_part},
    {S::transmission, "stiffness", Way::more, "1 N·m/rad", any_part, N::better_part},
    {S::transmission, "speed_limit", Way::more, "1 m/s", any_part, N::better_part},
    {S::transmission, "allowable_pull", Way::more, "10 N", any_part, N::better_part},
    {S::transmission, "specific_stiffness", Way::more, "1 kN", any_part, N::better_part},
    {S::carriage, "mass", Way::less, "0.1 kg", 4.0, N::change},
    {S::guides, "friction", Way::less, "0.001", 10.0, N::better_part},
    {S::guides, "seal_drag", Way::less, "0.5 N", any_part, N::better_part},
    {S::guides, "cover_drag", Way::less, "1 N", any_part, N::better_part},
    {S::guides, "speed_limit", Way::more, "1 m/min", any_part, N::better_part},
    {S::guides, "block_spacing", Way::more, "1 mm", 4.0, N::change},
    {S::controller, "step_rate_limit", Way::more, "1 kHz", any_part, N::better_part},
    {S::supply, "power", Way::more, "10 W", any_part, N::better_part},
    {S::supply, "capacitance", Way::more, "100 µF", 100.0, N::change},
    {S::supply, "voltage_limit", Way::more, "1 V", 2.0, N::better_part},
    {S::targets, "feed", Way::less, "0.01 m/min", 10.0, N::asks_less},
    {S::targets, "acceleration", Way::less, "0.01 m/s²", 10.0, N::asks_less},
    {S::targets, "cutting_feed", Way::less, "0.01 m/min", 10.0, N::asks_less},
    {S::targets, "thrust", Way::less, "1 N", 10.0, N::asks_less},
    {S::targets, "resolution", Way::more, "0.1 µm", 10.0, N::asks_less},
    {S::targets, "lost_motion", Way::more, "1 µm", 10.0, N::asks_less},
    {S::targets, "reversal_error", Way::more, "1 µm", 10.0, N::asks_less},
    {S::targets, "cutting_error", Way::more, "1 µm", 10.0, N::asks_less},
    {S::targets, "life", Way::less, "10 h", 10.0, N::asks_less},
    {S::targets, "inertia_match", Way::more, "0.1", 10.0, N::asks_less},
};

/// 1, 2 or 5 times a power of ten, not above the value.
double round_step(double value) {
  const double power = std::pow(10.0, std::floor(std::log10(value)));
  constexpr double rounding = 1.0 + 1e-9;
  for (const double step : {5.0, 2.0}) {
    if (step * power <= value * rounding) {
      return step * power;
    }
  }
  return power;
}

/// The values an input may be set to, by number: 0 is what it is, then one step after the other.
class Grid {
public:
  /// Nothing if the field is open or leaves no step to make.
  static std::optional<Grid> of(const FieldView& field, const Unit& unit, const NumberInput& input,
                                std::optional<AnyQuantity> most) {
    const auto* present = std::get_if<AnyQuantity>(&field.value);
    const Unit* usual = find_unit(field.info.kind, field.info.unit);
    const auto step = read_quantity(input.step, field.info.kind, usual);
    if (present == nullptr || !step) {
      return std::nullopt;
    }
    const double now = present->si / unit.factor;
    double fine = step->value.si / unit.factor;
    if (now > 0.0) {
      constexpr double steps_at_least = 50.0;
      fine = std::min(fine, now / steps_at_least);
    }
    Grid grid(field, unit, input);
    grid.step_ = round_step(fine);
    const double end = most         ? most->si / unit.factor
                       : grid.less_ ? now / input.farthest
                                    : now * input.farthest;
    grid.lay(now, end);
    return grid.last_ > 0 ? std::optional(grid) : std::nullopt;
  }

  std::int64_t last() const { return last_; }
  const FieldValue& before() const { return field_.value; }

  /// The value of a step as it would be typed, and what it then is.
  FieldChange change(const NumberInput& input, std::int64_t step) const {
    const double shown = double(first_ + (less_ ? -step : step)) * step_;
    constexpr int digits = 12; // sheds what the product adds
    FieldChange made{input.slot, field_.info.member, field_.value, {}, {}};
    made.text = write_quantity({field_.info.kind, shown * unit_.factor}, unit_, digits);
    const auto read = read_quantity(made.text, field_.info.kind, &unit_);
    if (read) {
      made.after = read->value;
    }
    return made;
  }
  /// The same for trying only.
  FieldValue value(std::int64_t step) const {
    const double shown = double(first_ + (less_ ? -step : step)) * step_;
    return AnyQuantity{field_.info.kind, shown * unit_.factor};
  }

private:
  Grid(const FieldView& field, const Unit& unit, const NumberInput& input)
      : field_(field), unit_(unit), less_(input.way == Way::less) {}

  /// Steps from the first beside `now` to the last before `end`.
  void lay(double now, double end) {
    constexpr double rounding = 1e-6;
    const double at = now / step_;
    constexpr double countable = 1e15; // steps beyond that are lost in the number itself
    if (!(at < countable && end / step_ < countable)) {
      return;
    }
    if (less_) {
      first_ = std::int64_t(std::ceil(at - rounding));
      const std::int64_t least = field_.info.bound == Bound::positive ? 1 : 0;
      const bool any_small = field_.info.bound == Bound::non_negative;
      last_ = first_ - std::max(least, any_small ? std::int64_t{0}
                                                 : std::int64_t(std::ceil(end / step_ - rounding)));
    } else {
      first_ = std::int64_t(std::floor(at + rounding));
      last_ = std::int64_t(std::floor(end / step_ + rounding)) - first_;
    }
  }

  FieldView field_;
  const Unit& unit_;
  bool less_;
  double step_ = 1.0;
  std::int64_t first_ = 0;
  std::int64_t last_ = 0;
};

/// What moves along with a length between bearings: the whole shaft is as much shorter.
std::optional<FieldChange> overall_length_with(const Trial& trial, const FieldChange& span) {
  const auto overall = field_of(trial.machine(), 0, PartSlot::drive, "overall_length");
  const Length less =
      from_si<Length>(std::get<AnyQuantity>(span.before).si - std::get<AnyQuantity>(span.after).si);
  return overall
             ? lengthened_field(PartSlot::drive, *overall, Length(-less), trial.unit_of(*overall))
             : std::nullopt;
}

class NumberSearch {
public:
  NumberSearch(Trial& trial, const NumberInput& input, const Grid& grid)
      : trial_(trial), input_(input), grid_(grid) {}

  /// The first step that reaches; nothing if none does before the machine is no more sound.
  std::optional<std::vector<FieldChange>> least() {
    if (bears_not()) {
      return std::nullopt;
    }
    std::int64_t low = 0; // falls short
    std::int64_t high = 1;
    while (tried(high) == Tried::short_of) {
      if (high == grid_.last()) {
        return std::nullopt;
      }
      low = high;
      high = std::min(2 * high, grid_.last());
    }
    while (high - low > 1) {
      const std::int64_t middle = low + (high - low) / 2;
      (tried(middle) == Tried::short_of ? low : high) = middle;
    }
    return settled(high);
  }

private:
  Tried tried(std::int64_t step) {
    FieldChange change{input_.slot, input_.member, grid_.before(), grid_.value(step), {}};
    return trial_.with(with_others(std::move(change)));
  }

  std::vector<FieldChange> with_others(FieldChange change) const {
    std::vector<FieldChange> changes{std::move(change)};
    if (input_.slot == PartSlot::drive && input_.member == "span") {
      if (auto overall = overall_length_with(trial_, changes.front())) {
        changes.push_back(*std::move(overall));
      }
    }
    return changes;
  }

  /// The step as it is written, or the next if writing it lost what it needs.
  std::optional<std::vector<FieldChange>> settled(std::int64_t step) {
    constexpr std::int64_t tries = 2;
    for (std::int64_t i = step; i < std::min(step + tries, grid_.last() + 1); ++i) {
      auto changes = with_others(grid_.change(input_, i));
      if (trial_.with(changes) == Tried::reached) {
        return changes;
      }
    }
    return std::nullopt;
  }

  /// Whether the limit does not depend on the input at all, as far as the far end tells.
  bool bears_not() {
    for (const std::int64_t step : {grid_.last(), (grid_.last() + 7) / 8}) {
      FieldChange change{input_.slot, input_.member, grid_.before(), grid_.value(step), {}};
      const auto results = trial_.sized(with_others(std::move(change)));
      if (results) {
        const Limit& now = trial_.before().limit(trial_.limit());
        const Limit& then = results->limit(trial_.limit());
        return then.applies && then.margin == now.margin;
      }
    }
    return false;
  }

  Trial& trial_;
  const NumberInput& input_;
  const Grid& grid_;
};

double size_of(const FieldChange& change) {
  const double before = std::get<AnyQuantity>(change.before).si;
  const double after = std::get<AnyQuantity>(change.after).si;
  constexpr double all_of_it = 0.8; // to or from nothing
  return before > 0.0 && after > 0.0 ? std::abs(std::log(after / before)) : all_of_it;
}

void propose(Trial& trial, const NumberInput& input, std::optional<AnyQuantity> most,
             std::vector<Proposal>& proposals) {
  const auto field = field_of(trial.machine(), 0, input.slot, input.member);
  if (!field) {
    return;
  }
  const auto grid = Grid::of(*field, trial.unit_of(*field), input, most);
  if (!grid) {
    return;
  }
  if (auto changes = NumberSearch(trial, input, *grid).least()) {
    const double size = size_of(changes->front());
    proposals.push_back({input.nature,
                         input.way == Way::less ? ChangeSense::at_most : ChangeSense::at_least,
                         *std::move(changes), std::nullopt, size});
  }
}

/// The highest setting of the drive that keeps the winding's rated current.
std::optional<AnyQuantity> rated_drive_current(const Motor& motor) {
  const auto setting = [](Current rated, CurrentReading reading) {
    return any(reading == CurrentReading::peak ? Current(rated * std::numbers::sqrt2) : rated);
  };
  if (const auto* known = std::get_if<StepperByRatings>(&motor)) {
    return setting(*known->rated_current, known->drive_current_reading);
  }
  const auto* points = std::get_if<StepperByPoints>(&motor);
  if (points != nullptr && points->rated_current) {
    return setting(**points->rated_current, points->drive_current_reading);
  }
  return std::nullopt;
}

} // namespace

void propose_numbers(Trial& trial, std::vector<Proposal>& proposals) {
  for (const NumberInput& input : inputs) {
    propose(trial, input, std::nullopt, proposals);
  }
  const AxisResults& now = trial.before();
  if (now.gravity_force && *now.gravity_force > Force()) {
    // Until nothing of the weight is left.
    propose(trial, {S::carriage, "counterbalance", Way::more, "1 N", 1.0, N::change},
            any(Force(*trial.axis().carriage.counterbalance + *now.gravity_force)), proposals);
  }
  if (now.stretch_needed) {
    propose(trial, {S::drive, "stretch", Way::more, "10 N", 1.0, N::change},
            any(*now.stretch_needed), proposals);
  }
  if (const auto most = rated_drive_current(trial.axis().motor)) {
    propose(trial, {S::motor, "drive_current", Way::more, "0.1 A", 1.0, N::change}, most,
            proposals);
  }
}

} // namespace feedwright::choosing
