// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Belts round about the chosen one: whole teeth, where each would stand, and whether shops keep it.

#include "parts/transmission.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace feedwright {

/// Tooth counts of endless belts that shops keep, of one profile.
struct StockBelts {
  std::string profile;
  std::string source;
  std::vector<int> teeth; ///< rising
};

/// A list of stock belts; nothing if it is none. A row without its members is left out.
std::optional<std::vector<StockBelts>> read_stock_belts(std::string_view json);

struct BeltChoice {
  int teeth;
  Length place;  ///< centre distance of two pulleys; of a loop the slide's place
  bool in_stock; ///< only where the profile's list is known
};

/// The belts of whole teeth nearest to the one that is, those in stock first looked for: up to
/// `each_way` on either side of it and itself, by teeth. Where shops' lists know the profile only
/// those and the present one. Empty for a coupling.
std::vector<BeltChoice> belts_round_about(const Transmission& transmission,
                                          const std::vector<StockBelts>& stock, int each_way);

} // namespace feedwright
