// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the machine view's tables are put together from: figures of one series in one unit with the
// same decimals, cells, and the doors they are.

#include "overview/figure_table.h"
#include "sheet/file_units.h"
#include "sizing/results.h"

#include <QString>

#include <vector>

namespace feedwright::overview {

/// "Feed [m/min]"; the name alone where the unit is none.
QString with_unit(const QString& name, std::string_view unit);

QString at_most(const QString& value);

/// So many decimals that the smallest has three digits that count, and the largest not over five
/// unless the smallest would be left with fewer than two.
int decimals_for(const std::vector<double>& values);

QString fixed(double value, int decimals);

double in_unit(const AnyQuantity& value, const Unit& unit);

/// Values of one kind, shown in one unit with the same decimals.
class Series {
public:
  Series(const FileUnits& units, Kind kind, std::string_view usual);

  void note(const std::optional<AnyQuantity>& value);
  QString text(const std::optional<AnyQuantity>& value) const;
  QString head(const QString& name) const;

private:
  const Unit& unit_;
  std::vector<double> values_;
};

FigureDoor door_to(std::size_t axis, PartSlot slot, std::string_view member = {},
                   std::optional<LimitId> limit = std::nullopt);

/// To what an open limit wants, or to what a builder would change.
FigureDoor door_to_limit(std::size_t axis, const Limit& limit);

FigureCell words_cell(const QString& text, std::optional<FigureDoor> door = std::nullopt);
FigureCell figure_cell(const QString& text, std::optional<FigureDoor> door = std::nullopt);

template <class Q>
std::optional<AnyQuantity> as_any(const std::optional<Q>& value) {
  return value ? std::optional(any(*value)) : std::nullopt;
}

} // namespace feedwright::overview
