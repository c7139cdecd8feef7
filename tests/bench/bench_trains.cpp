// SPDX-License-Identifier: GPL-3.0-or-later
// What sizing costs for each kind of train, recording off, and how it grows with pulleys and load
// cases. "ready" has the motor's curve and the belt's geometry made before, as a search has;
// "whole" makes them anew. Each figure is the median of many turns; the ratio is against the plain
// coupled screw measured in the same turn.
#include "files/read_file.h"
#include "machine/machine_file.h"
#include "sizing/size_axis.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <filesystem>
#include <set>
#include <string>
#include <vector>

using namespace feedwright;

namespace {

constexpr int turns = 41;
constexpr int calls = 400;

template <class F>
double microseconds(const F& call) {
  const auto start = std::chrono::steady_clock::now();
  for (int i = 0; i < calls; ++i) {
    benchmark::DoNotOptimize(call());
  }
  const auto end = std::chrono::steady_clock::now();
  return std::chrono::duration<double, std::micro>(end - start).count() / calls;
}

double median(std::vector<double> values) {
  std::ranges::sort(values);
  return values[values.size() / 2];
}

struct Cost {
  double ready, whole, ratio;
};

/// The plain train that the others are held against: a coupled screw without duty.
Machine plain_machine() {
  Machine machine;
  machine.name = "plain";
  Axis axis;
  StepperByRatings motor;
  axis.motor = motor;
  axis.targets.feed = Positive<Velocity>::of(from_si<Velocity>(0.05));
  axis.targets.acceleration = Positive<Acceleration>::of(from_si<Acceleration>(0.5));
  axis.targets.thrust = Positive<Force>::of(from_si<Force>(100.0));
  axis.targets.cutting_feed = Positive<Velocity>::of(from_si<Velocity>(0.02));
  machine.axes.push_back(axis);
  return machine;
}

Cost cost_of(const Machine& machine, const Axis& axis) {
  static const Machine plain = plain_machine();
  static const AxisPreparation plain_ready(plain, plain.axes[0]);
  const AxisPreparation ready(machine, axis);
  std::vector<double> prepared, whole, ratios;
  for (int turn = 0; turn < turns; ++turn) {
    const double base = microseconds([&] { return size_axis(plain, plain.axes[0], plain_ready); });
    prepared.push_back(microseconds([&] { return size_axis(machine, axis, ready); }));
    whole.push_back(microseconds([&] { return size_axis(machine, axis); }));
    ratios.push_back(prepared.back() / base);
  }
  return {median(prepared), median(whole), median(ratios)};
}

void print(const std::string& name, const Cost& cost) {
  std::printf("%-44s %8.2f %8.2f %8.2f\n", name.c_str(), cost.ready, cost.whole, cost.ratio);
}

/// A loop of that many pulleys on a circle, one on the motor, one on a screw.
Machine looped(int pulleys) {
  Machine machine = plain_machine();
  BeltLoopDrive loop;
  loop.pulleys.clear();
  for (int i = 0; i < pulleys; ++i) {
    LoopMember member;
    const double angle = 2.0 * pi * i / pulleys;
    member.role = i == 0 ? PulleyRole::motor : i == 1 ? PulleyRole::screw : PulleyRole::idler;
    member.teeth = 20;
    member.x = Finite<Length>::of(from_si<Length>(0.3 * std::cos(angle)));
    member.y = Finite<Length>::of(from_si<Length>(0.3 * std::sin(angle)));
    loop.pulleys.push_back(member);
  }
  loop.slide_direction = Finite<Angle>::of(Angle());
  for (loop.belt_teeth = 100; !loop_layout(loop) && loop.belt_teeth < 800; ++loop.belt_teeth) {
  }
  machine.axes[0].transmission = loop;
  return machine;
}

} // namespace

int main(int, char** argv) {
  const std::filesystem::path folder =
      std::filesystem::path(FEEDWRIGHT_SOURCE_DIR) / "tests/machines";
  std::set<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(folder)) {
    if (entry.path().extension() == ".feedwright") {
      files.insert(entry.path());
    }
  }
  std::printf("%-44s %8s %8s %8s\n", "microseconds for an axis", "ready", "whole", "ratio");
  double worst = 0.0;
  for (const auto& path : files) {
    const auto text = read_file(path, std::size_t{1} << 20U);
    const auto machine = text ? read_machine(*text) : read_machine("");
    if (!machine) {
      std::fprintf(stderr, "%s: cannot be read by %s\n", path.c_str(), argv[0]);
      return 1;
    }
    for (const Axis& axis : machine->axes) {
      const Cost cost = cost_of(*machine, axis);
      worst = std::max(worst, cost.ready);
      print(path.stem().string() + " " + axis.basics.letter + " (" + axis.basics.name + ")", cost);
    }
  }
  for (const int pulleys : {2, 3, 5, 9, 16}) {
    const Machine machine = looped(pulleys);
    print("loop of " + std::to_string(pulleys) + " pulleys", cost_of(machine, machine.axes[0]));
  }
  for (const int cases : {0, 1, 4, 16, 64}) {
    Machine machine = plain_machine();
    machine.axes[0].duty.load_cases.assign(static_cast<std::size_t>(cases), LoadCase());
    print(std::to_string(cases) + " load cases", cost_of(machine, machine.axes[0]));
  }
  for (const int moves : {1, 4, 16}) {
    Machine machine = plain_machine();
    machine.axes[0].duty.moves.assign(static_cast<std::size_t>(moves), RapidMove());
    print(std::to_string(moves) + " moves", cost_of(machine, machine.axes[0]));
  }
  std::printf("worst of the test machines, ready: %.2f µs\n", worst);
  return 0;
}
