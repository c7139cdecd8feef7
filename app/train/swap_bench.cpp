// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/swap_bench.h"

#include "parts/part_shelf.h"
#include "train/swap_words.h"

namespace feedwright {

SwapAids& SwapBench::aids() {
  if (!stock_) {
    stock_ = read_part_shelf().stock_belts;
  }
  SwapAids& of_axis = aids_[QString::fromStdString(document_.current_axis()->basics.letter)];
  of_axis.stock = *stock_;
  return of_axis;
}

tl::expected<Machine, Fault> SwapBench::tried(const Swap& swap) {
  return swapped(document_.machine(), document_.selection().axis, swap, aids());
}

bool SwapBench::make(const Swap& swap) {
  auto made = tried(swap);
  if (!made) {
    return false;
  }
  const std::size_t axis = document_.selection().axis;
  const Axis before = document_.machine().axes.at(axis);
  const Axis after = made->axes.at(axis);
  document_.edit(*std::move(made), swap_words::step(swap, before));
  constexpr std::size_t most = 100;
  std::vector<SwapStep>& steps = aids().made;
  steps.push_back({before, after});
  if (steps.size() > most) {
    steps.erase(steps.begin());
  }
  return true;
}

void SwapBench::forget() {
  aids_.clear();
}

} // namespace feedwright
