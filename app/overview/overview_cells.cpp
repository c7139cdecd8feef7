// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/overview_cells.h"

#include "sheet/sheet_words.h"
#include "text/text_of.h"
#include "text/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace feedwright::overview {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(MachineView)

public:
  static QString with_unit(const QString& name, std::string_view unit) {
    return unit.empty() ? name : tr("%1 [%2]", "figure, its unit").arg(name, text_of(unit));
  }
};

} // namespace

QString with_unit(const QString& name, std::string_view unit) {
  return Words::with_unit(name, unit);
}

QString at_most(const QString& value) {
  return QStringLiteral("≤ ") + value;
}

int decimals_for(const std::vector<double>& values) {
  double least = 0.0;
  double most = 0.0;
  for (const double value : values) {
    const double size = std::abs(value);
    if (size > 0.0 && std::isfinite(size)) {
      least = least > 0.0 ? std::min(least, size) : size;
      most = std::max(most, size);
    }
  }
  if (!(least > 0.0)) {
    return 0;
  }
  constexpr int finest = 6;
  const int small = static_cast<int>(std::floor(std::log10(least)));
  const int large = static_cast<int>(std::floor(std::log10(most)));
  return std::clamp(std::min(2 - small, std::max(4 - large, 1 - small)), 0, finest);
}

QString fixed(double value, int decimals) {
  QString text = QString::number(value, 'f', decimals);
  return text.replace(QLatin1Char('.'), QLatin1Char(static_cast<char>(words::decimal_mark())));
}

double in_unit(const AnyQuantity& value, const Unit& unit) {
  return (value.si - unit.offset) / unit.factor;
}

Series::Series(const FileUnits& units, Kind kind, std::string_view usual)
    : unit_(units.unit_of(kind, usual)) {}

void Series::note(const std::optional<AnyQuantity>& value) {
  if (value) {
    values_.push_back(in_unit(*value, unit_));
  }
}

QString Series::text(const std::optional<AnyQuantity>& value) const {
  return value ? fixed(in_unit(*value, unit_), decimals_for(values_)) : sheet::open_word();
}

QString Series::head(const QString& name) const {
  return with_unit(name, unit_.symbol);
}

FigureDoor door_to(std::size_t axis, PartSlot slot, std::string_view member,
                   std::optional<LimitId> limit) {
  return {{axis, slot, text_of(member), false}, limit};
}

FigureDoor door_to_limit(std::size_t axis, const Limit& limit) {
  const bool open = limit.verdict == Verdict::open && !limit.missing.member.empty();
  const LimitDescriptor& about = descriptor(limit.id);
  const auto slot = open ? static_cast<PartSlot>(limit.missing.slot) : about.part;
  return door_to(axis, slot, open ? limit.missing.member : about.member, limit.id);
}

FigureCell words_cell(const QString& text, std::optional<FigureDoor> door) {
  FigureCell cell;
  cell.text = text;
  cell.door = std::move(door);
  return cell;
}

FigureCell figure_cell(const QString& text, std::optional<FigureDoor> door) {
  FigureCell cell = words_cell(text, std::move(door));
  cell.figure = true;
  return cell;
}

} // namespace feedwright::overview
