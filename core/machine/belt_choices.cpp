// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/belt_choices.h"

#include "machine/loop_layout.h"
#include "mechanics/belt_geometry.h"
#include "json/read_json.h"

#include <algorithm>

namespace feedwright {

namespace {

std::vector<int> rising_teeth(const JsonNode& list) {
  std::vector<int> teeth;
  for (const JsonNode& item : list.items) {
    if (item.type == JsonNode::Type::number && item.number >= 1.0 && item.number <= 1e5) {
      teeth.push_back(static_cast<int>(item.number));
    }
  }
  std::ranges::sort(teeth);
  return teeth;
}

const StockBelts* stock_of(const std::vector<StockBelts>& stock, const std::string& profile) {
  const auto found = std::ranges::find(stock, profile, &StockBelts::profile);
  return found != stock.end() ? &*found : nullptr;
}

/// Tooth counts on either side of `present`: the list's nearest, or each whole number.
std::vector<int> counts_round(int present, const StockBelts* stock, int each_way) {
  std::vector<int> counts{present};
  if (stock == nullptr) {
    for (int i = 1; i <= each_way; ++i) {
      counts.insert(counts.end(), {present - i, present + i});
    }
  } else {
    const auto above = std::ranges::upper_bound(stock->teeth, present);
    const auto below = std::ranges::lower_bound(stock->teeth, present);
    const auto up = std::min<std::ptrdiff_t>(each_way, stock->teeth.end() - above);
    const auto down = std::min<std::ptrdiff_t>(each_way, below - stock->teeth.begin());
    counts.insert(counts.end(), above, above + up);
    counts.insert(counts.end(), below - down, below);
  }
  std::ranges::sort(counts);
  return counts;
}

bool is_in(const StockBelts* stock, int teeth) {
  return stock != nullptr && std::ranges::binary_search(stock->teeth, teeth);
}

std::optional<Length> place_of(const BeltStage& stage, int teeth) {
  return centre_distance(pulley_pitch_diameter(double(stage.motor_pulley_teeth), *stage.pitch),
                         pulley_pitch_diameter(double(stage.screw_pulley_teeth), *stage.pitch),
                         double(teeth) * *stage.pitch);
}

std::optional<Length> place_of(const BeltLoopDrive& loop, int teeth) {
  BeltLoopDrive tried = loop;
  tried.belt_teeth = teeth;
  const auto layout = loop_layout(tried);
  return layout ? std::optional(layout->slide_position) : std::nullopt;
}

template <class Drive>
std::vector<BeltChoice> choices(const Drive& drive, const std::vector<StockBelts>& stock,
                                int each_way) {
  const StockBelts* kept = stock_of(stock, drive.profile);
  std::vector<BeltChoice> made;
  for (const int teeth : counts_round(drive.belt_teeth, kept, each_way)) {
    if (const auto place = place_of(drive, teeth)) {
      made.push_back({teeth, *place, is_in(kept, teeth)});
    }
  }
  return made;
}

} // namespace

std::optional<std::vector<StockBelts>> read_stock_belts(std::string_view json) {
  const auto root = read_json(json);
  if (!root) {
    return std::nullopt;
  }
  const JsonNode* part = root->find("part");
  const JsonNode* rows = root->find("rows");
  if (part == nullptr || part->text != "belt_lengths" || rows == nullptr) {
    return std::nullopt;
  }
  std::vector<StockBelts> stock;
  for (const JsonNode& row : rows->items) {
    const JsonNode* profile = row.find("profile");
    const JsonNode* source = row.find("source");
    const JsonNode* teeth = row.find("teeth");
    if (profile != nullptr && source != nullptr && teeth != nullptr) {
      stock.push_back({profile->text, source->text, rising_teeth(*teeth)});
    }
  }
  return stock;
}

std::vector<BeltChoice> belts_round_about(const Transmission& transmission,
                                          const std::vector<StockBelts>& stock, int each_way) {
  if (const auto* stage = std::get_if<BeltStage>(&transmission)) {
    return choices(*stage, stock, each_way);
  }
  if (const auto* loop = std::get_if<BeltLoopDrive>(&transmission)) {
    return choices(*loop, stock, each_way);
  }
  return {};
}

} // namespace feedwright
