// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/ladder.h"

#include "limits/number_text.h"
#include "sizing/limits.h"
#include "text/text_of.h"
#include "text/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cfloat>
#include <cmath>

namespace feedwright {

namespace {

class LadderMaker {
  Q_DECLARE_TR_FUNCTIONS(Limits)

public:
  LadderMaker(const AxisResults& results, LimitScale scale, const FileUnits& units)
      : results_(results), units_(units) {
    ladder_.scale = scale;
  }

  Ladder made() {
    ladder_.title = title();
    ladder_.unit = unit();
    ladder_.governs_label = tr("governs");
    ladder_.open_label = tr("open:");
    for (const LimitDescriptor& about : limit_descriptors()) {
      const Limit& limit = results_.limit(about.id);
      if (about.scale == ladder_.scale && limit.applies) {
        ladder_.rows.push_back(row_of(limit, about));
      }
    }
    sort_rows();
    tell_ties();
    take_common_wanted();
    if (ladder_.scale == LimitScale::thrust && ladder_.wanted && results_.worst_side_share) {
      ladder_.title = tr("Limits of axial force, worst side");
    }
    choose_scale();
    return std::move(ladder_);
  }

private:
  /// The lowest bar on top; where each has its own wanted value, the one with the least to spare.
  void sort_rows() {
    std::optional<double> common;
    bool alike = true;
    for (const LadderRow& row : ladder_.rows) {
      if (row.length && row.wanted) {
        alike = alike && (!common || *common == *row.wanted);
        common = row.wanted;
      }
    }
    const auto key = [alike](const LadderRow& row) {
      if (!row.length) {
        return HUGE_VAL;
      }
      return alike ? *row.length : row.wanted ? *row.length / *row.wanted : DBL_MAX;
    };
    std::stable_sort(ladder_.rows.begin(), ladder_.rows.end(), [&](const auto& a, const auto& b) {
      return key(a) != key(b) ? key(a) < key(b) : a.governs && !b.governs;
    });
  }

  bool by_margin() const { return ladder_.scale == LimitScale::other; }

  QString title() const {
    switch (ladder_.scale) {
    case LimitScale::feed: return tr("Limits of feed");
    case LimitScale::thrust: return tr("Limits of axial force");
    case LimitScale::other: break;
    }
    return tr("Other margins");
  }

  QString unit() const {
    for (const LimitDescriptor& about : limit_descriptors()) {
      if (about.scale == ladder_.scale && !by_margin()) {
        return text_of(unit_of(about).symbol);
      }
    }
    return tr("allowed ÷ wanted");
  }

  const Unit& unit_of(const LimitDescriptor& about) const {
    const ResultDescriptor& result = descriptor(about.result);
    return units_.unit_of(result.kind, result.unit);
  }

  /// Where the limit lies at its figure or above.
  static QString bound_sign(const Limit& limit) {
    return limit.at_least ? QStringLiteral("≥ ") : QString();
  }

  LadderRow row_of(const Limit& limit, const LimitDescriptor& about) const {
    LadderRow row;
    row.id = limit.id;
    row.verdict = limit.verdict;
    row.sign = words::verdict_sign(limit.verdict);
    row.name = words::limit_name(limit.id);
    row.governs = results_.governing == limit.id || results_.governing_thrust_limit == limit.id;
    const std::string_view unit = unit_of(about).symbol;
    if (by_margin()) {
      fill_margin(row, limit, about, unit);
    } else if (limit.reached) {
      row.length = number_in(*limit.reached, unit);
      row.value = bound_sign(limit) + number_text(*row.length, 3);
      if (limit.wanted) {
        row.wanted = number_in(*limit.wanted, unit);
      }
    } else {
      row.value = words::open_reason(limit);
    }
    row.tooltip = tooltip(row, limit, unit);
    return row;
  }

  void fill_margin(LadderRow& row, const Limit& limit, const LimitDescriptor& about,
                   std::string_view unit) const {
    if (!limit.reached) {
      row.value = words::open_reason(limit);
      return;
    }
    const QString reached = bound_sign(limit) + words::quantity(*limit.reached, unit, 3);
    if (!limit.margin || !limit.wanted) {
      row.value = tr("%1 · %2", "reached value, why it is not judged")
                      .arg(reached, words::open_reason(limit));
      return;
    }
    row.length = *limit.margin;
    const QString wanted = words::quantity(*limit.wanted, unit, 3);
    const QString bare = bound_sign(limit) + number_text(number_in(*limit.reached, unit), 3);
    row.value = about.at_most ? tr("%1, at most %2", "value, wanted with unit").arg(bare, wanted)
                              : tr("%1, wanted %2", "value, wanted with unit").arg(bare, wanted);
  }

  QString tooltip(const LadderRow& row, const Limit& limit, std::string_view unit) const {
    const QString word = words::verdict_word(limit.verdict);
    if (!limit.reached) {
      return tr("%1: %2. %3", "limit, verdict, why open").arg(row.name, word, row.value);
    }
    const QString reached = bound_sign(limit) + words::quantity(*limit.reached, unit);
    const QString governs = row.governs ? tr(" This limit governs.") : QString();
    if (!limit.wanted) {
      return tr("%1: %2. Reaches %3; nothing is wanted of it.").arg(row.name, word, reached) +
             governs;
    }
    return tr("%1: %2. Reaches %3, wanted is %4.")
               .arg(row.name, word, reached, words::quantity(*limit.wanted, unit)) +
           governs;
  }

  /// Which limits govern together, as a sentence.
  void tell_ties() {
    if (by_margin()) {
      return;
    }
    const NearTie tie = near_tie(results_, ladder_.scale);
    if (tie.limits.size() < 2) {
      return;
    }
    QStringList names;
    for (LadderRow& row : ladder_.rows) {
      row.ties = std::ranges::find(tie.limits, row.id) != tie.limits.end();
    }
    for (const LimitId id : tie.limits) {
      names << words::limit_name(id);
    }
    const QString last = names.takeLast();
    const QString all = tr("%1 and %2", "list of limits, the last").arg(names.join(tr(", ")), last);
    const double percent = std::max(1.0, std::ceil(100.0 * tie.gap - 1e-6));
    ladder_.tie = tie.limits.size() == 2
                      ? tr("%1 are within %2 %: both govern.").arg(all, number_text(percent, 2))
                      : tr("%1 are within %2 %: all govern.").arg(all, number_text(percent, 2));
  }

  void take_common_wanted() {
    if (by_margin()) {
      ladder_.wanted = 1.0;
      ladder_.wanted_label = tr("as wanted");
      return;
    }
    std::optional<double> common;
    ladder_.wanted_label = tr("wanted");
    for (const LadderRow& row : ladder_.rows) {
      if (row.length && (!row.wanted || (common && *common != *row.wanted))) {
        say_each_wanted();
        return;
      }
      if (row.length) {
        common = row.wanted;
      }
    }
    if (common) {
      ladder_.wanted = common;
      ladder_.wanted_label = tr("wanted %1").arg(number_text(*common, 3));
      for (LadderRow& row : ladder_.rows) {
        row.wanted.reset();
      }
    }
  }

  /// Each row has its own, which tells why a longer bar may leave less to spare.
  void say_each_wanted() {
    for (LadderRow& row : ladder_.rows) {
      if (row.length && row.wanted) {
        row.value = tr("%1, wanted %2", "value, wanted with unit")
                        .arg(row.value, number_text(*row.wanted, 3));
      }
    }
  }

  /// Long enough for all, unless one bar would dwarf the rest.
  void choose_scale() {
    double longest = ladder_.wanted.value_or(0.0);
    double lowest = HUGE_VAL;
    double needed = longest;
    for (const LadderRow& row : ladder_.rows) {
      if (row.length) {
        longest = std::max(longest, *row.length);
        lowest = std::min(lowest, *row.length);
        needed = std::max(needed, row.wanted.value_or(0.0));
      }
    }
    if (lowest == HUGE_VAL) {
      lowest = needed;
    }
    const double sensible = by_margin() ? 2.0 : std::max(4.0 * lowest, 2.2 * needed);
    const double end = std::max(std::min(longest * 1.02, sensible), 1e-9);
    ladder_.tick = nice_step(end);
    ladder_.end = by_margin() ? 2.0 : std::ceil(end / ladder_.tick - 1e-9) * ladder_.tick;
  }

  static double nice_step(double end) {
    const double rough = end / 6.0;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double step : {1.0, 2.0, 5.0}) {
      if (rough <= step * power) {
        return step * power;
      }
    }
    return 10.0 * power;
  }

  const AxisResults& results_;
  const FileUnits& units_;
  Ladder ladder_;
};

} // namespace

Ladder ladder_of(const AxisResults& results, LimitScale scale, const FileUnits& units) {
  return LadderMaker(results, scale, units).made();
}

} // namespace feedwright
