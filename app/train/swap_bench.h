// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "machine/swap_parts.h"

#include <QHash>

namespace feedwright {

/// Swaps parts of the chosen axis, each as one named step of Undo, and remembers what was there for
/// as long as the document stays.
class SwapBench {
public:
  explicit SwapBench(MachineDocument& document) : document_(document) {}

  /// The machine with the swap made, or the fault that keeps it from being made.
  tl::expected<Machine, Fault> tried(const Swap& swap);
  /// False where it cannot be made.
  bool make(const Swap& swap);
  /// What was swapped belongs to another machine.
  void forget();

private:
  /// With the shops' belts, read when first wanted.
  SwapAids& aids();

  MachineDocument& document_;
  QHash<QString, SwapAids> aids_; ///< by the axis' letter
  std::optional<std::vector<StockBelts>> stock_;
};

} // namespace feedwright
