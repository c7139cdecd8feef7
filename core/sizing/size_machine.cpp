// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/size_machine.h"

#include "mechanics/bus_energy.h"
#include "sizing/limits.h"

#include <algorithm>
#include <cassert>

namespace feedwright {

namespace {

/// What is asked over what there is; nothing where either is open or nothing is there.
std::optional<double> share(const std::optional<Torque>& asked,
                            const std::optional<Torque>& there) {
  if (!asked || !there || !(*there > Torque())) {
    return std::nullopt;
  }
  return number(Ratio(*asked / *there));
}

std::optional<double> larger(const std::optional<double>& a, const std::optional<double>& b) {
  return a && b ? std::max(*a, *b) : (a ? a : b);
}

AxisTally tally(const Machine& machine, const Axis& axis, const AxisResults& results) {
  AxisTally made;
  made.motors = axis.sides.layout == DriveLayout::two_motors ? 2 : 1;
  made.moved = *axis.carriage.mass;
  made.power = results.supply_power;
  if (results.winding_heat) {
    made.standing = double(made.motors) * *results.winding_heat;
  }
  made.returned = results.returned_energy;
  if (made.returned && machine.supply.capacitance) {
    made.bus_alone =
        raised_voltage(*machine.supply.voltage, **machine.supply.capacitance, *made.returned);
  }
  made.torque_used = larger(share(results.rapid_torque, results.usable_torque),
                            share(results.cutting_torque, results.usable_torque_cutting));
  if (results.limit(LimitId::rms_torque).applies) {
    made.rms_used = share(results.rms_torque, results.continuous_torque);
  }
  if (results.governing_feed && results.steps_per_length) {
    made.top_step_rate = *results.governing_feed * *results.steps_per_length;
  }
  return made;
}

/// A sum over the axes, with the largest share and the first axis whose share is open.
template <class Q>
struct Sum {
  Q all{};
  std::optional<Q> largest;
  std::optional<std::size_t> largest_axis;
  std::optional<std::size_t> open_axis;
  bool any = false;

  void add(std::size_t axis, const std::optional<Q>& share) {
    if (!share) {
      open_axis = open_axis.value_or(axis);
      return;
    }
    any = true;
    all = all + *share;
    if (!largest || *share > *largest) {
      largest = *share;
      largest_axis = axis;
    }
  }
};

template <class Q>
Sum<Q> sum_of(const std::vector<AxisTally>& axes, std::optional<Q> AxisTally::*share) {
  Sum<Q> sum;
  for (std::size_t axis = 0; axis < axes.size(); ++axis) {
    sum.add(axis, axes[axis].*share);
  }
  return sum;
}

class MachineJudge {
public:
  MachineJudge(const Machine& machine, std::span<const AxisResults> results, MachineResults& out)
      : machine_(machine), results_(results), out_(out) {}

  void supply_power() {
    const auto sum = sum_of(out_.axes, &AxisTally::power);
    MachineLimit& limit = begin(MachineLimitId::supply_power, sum, LimitId::supply_power);
    if (sum.any) {
      limit.reached = feedwright::any(sum.all);
      limit.single = feedwright::any(*sum.largest);
      out_.current = sum.all / *machine_.supply.voltage;
    }
    if (machine_.supply.power) {
      limit.allowed = feedwright::any(**machine_.supply.power);
    }
    judge(limit, input_ref(PartSlot::supply, "power"));
  }

  void bus_voltage() {
    const auto sum = sum_of(out_.axes, &AxisTally::returned);
    MachineLimit& limit = begin(MachineLimitId::bus_voltage, sum, LimitId::bus_voltage);
    const Supply& supply = machine_.supply;
    if (supply.voltage_limit) {
      limit.allowed = feedwright::any(**supply.voltage_limit);
    }
    if (sum.any) {
      out_.returned_energy = sum.all;
      if (supply.voltage_limit && **supply.voltage_limit > *supply.voltage && !sum.open_axis) {
        out_.capacitance_needed =
            wanted_capacitance(sum.all, *supply.voltage, **supply.voltage_limit);
      }
    }
    if (sum.any && supply.capacitance) {
      limit.reached =
          feedwright::any(Voltage(raised_voltage(*supply.voltage, **supply.capacitance, sum.all)));
      limit.single = feedwright::any(*out_.axes[*sum.largest_axis].bus_alone);
    } else if (!sum.open_axis) {
      limit.missing = input_ref(PartSlot::supply, "capacitance");
      return;
    }
    judge(limit, input_ref(PartSlot::supply, "voltage_limit"));
    if (limit.verdict == Verdict::over) {
      out_.findings.push_back(
          {FindingCode::bus_over_limit, PartSlot::supply, limit.reached, limit.allowed});
    }
  }

private:
  template <class Q>
  MachineLimit& begin(MachineLimitId id, const Sum<Q>& sum, LimitId of_axis) {
    MachineLimit& limit = out_.limits[static_cast<std::size_t>(id)];
    limit.id = id;
    limit.largest = sum.largest_axis;
    if (sum.open_axis) {
      limit.partial = sum.any;
      limit.open_axis = sum.open_axis;
      limit.missing = results_[*sum.open_axis].limit(of_axis).missing;
      // The machine's own field may be what the axis waits for.
      if (of_machine(static_cast<PartSlot>(limit.missing.slot))) {
        limit.open_axis.reset();
      }
    }
    return limit;
  }

  /// Over as soon as what is known is over; clear or close only when all is known.
  static void judge(MachineLimit& limit, InputRef unset) {
    if (!limit.allowed && limit.missing.member.empty()) {
      limit.missing = unset;
    }
    if (!limit.reached || !limit.allowed) {
      return;
    }
    constexpr double boundless = 1e6;
    const double asked = limit.reached->si;
    const double margin =
        asked > limit.allowed->si / boundless ? limit.allowed->si / asked : boundless;
    const Verdict verdict = verdict_of(margin);
    if (!limit.partial || verdict == Verdict::over) {
      limit.margin = margin;
      limit.verdict = verdict;
    }
  }

  const Machine& machine_;
  std::span<const AxisResults> results_;
  MachineResults& out_;
};

/// Feeds of straight moves: the speed along the path is what the axes' feeds add up to at right
/// angles. Source: elementary geometry.
void straight_moves(std::span<const AxisResults> results, MachineResults& out) {
  constexpr std::size_t most_crossed = 4;
  for (std::size_t a = 0; a < results.size(); ++a) {
    const auto& feed = results[a].governing_feed;
    if (!feed) {
      out.feed_any_direction.reset();
      return;
    }
    out.feed_any_direction = a == 0 ? *feed : std::min(*out.feed_any_direction, *feed);
  }
  const std::size_t crossed = std::min(results.size(), most_crossed);
  for (std::size_t a = 0; a < crossed; ++a) {
    for (std::size_t b = a + 1; b < crossed; ++b) {
      const Velocity first = *results[a].governing_feed;
      const Velocity second = *results[b].governing_feed;
      out.diagonals.push_back(
          {a, b, sqrt(square(first) + square(second)), std::sqrt(2.0) * std::min(first, second)});
    }
  }
}

constexpr std::string_view limit_names[machine_limit_count] = {"supply_power", "bus_voltage"};

} // namespace

MachineResults size_machine(const Machine& machine, std::span<const AxisResults> results) {
  assert(results.size() == machine.axes.size());
  MachineResults out;
  for (std::size_t axis = 0; axis < results.size(); ++axis) {
    out.axes.push_back(tally(machine, machine.axes[axis], results[axis]));
    out.motors += out.axes.back().motors;
  }
  const auto standing = sum_of(out.axes, &AxisTally::standing);
  if (standing.any && !standing.open_axis) {
    out.standing = standing.all;
  }
  MachineJudge judge(machine, results, out);
  judge.supply_power();
  judge.bus_voltage();
  straight_moves(results, out);
  return out;
}

std::string_view machine_limit_code(MachineLimitId id) {
  return limit_names[static_cast<std::size_t>(id)];
}

InputRef machine_limit_input(MachineLimitId id) {
  return id == MachineLimitId::supply_power ? input_ref(PartSlot::supply, "power")
                                            : input_ref(PartSlot::supply, "capacitance");
}

bool any_limit_over(const MachineResults& results) {
  return std::ranges::any_of(
      results.limits, [](const MachineLimit& limit) { return limit.verdict == Verdict::over; });
}

} // namespace feedwright
