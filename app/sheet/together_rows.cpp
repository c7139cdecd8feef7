// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/together_rows.h"

#include "sheet/sheet_words.h"
#include "sizing/concerns.h"
#include "text/machine_words.h"
#include "text/words.h"

#include <QCoreApplication>

namespace feedwright::sheet {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Together)

public:
  static QStringList limit_heads() {
    return {tr("Reads"),   tr("Limit"),  tr("All at once"), tr("Most of one axis"),
            tr("Allowed"), tr("Margin"), tr("Note")};
  }
  static QStringList share_heads() {
    return {tr("Axis"),         tr("Motors"),          tr("Power"),
            tr("Heat at rest"), tr("Energy returned"), tr("Steps at the feed reached")};
  }
  static QString all() { return tr("All"); }
  static QString at_least(const QString& value) { return tr("at least %1").arg(value); }
  static QString of_axis(const QString& value, const QString& letter) {
    return tr("%1 (%2)", "figure (axis letter)").arg(value, letter);
  }
  static QString missing_on(const QString& letter, const QString& reason) {
    return tr("axis %1: %2").arg(letter, reason);
  }
  static QString answered(const QString& limit, const QString& answer) {
    return tr("%1: %2", "limit, answer").arg(limit, answer);
  }
  static QString current(const QString& current) {
    return tr("For this power the supply gives %1 at its own voltage.").arg(current);
  }
  static QString capacitance(const QString& capacitance) {
    return tr("%1 of capacitance keep the bus at its voltage limit when all axes brake at once.")
        .arg(capacitance);
  }
  static QString any_direction(const QString& feed) {
    return tr("Every direction is reached at %1.").arg(feed);
  }
  static QString diagonal(const QString& first, const QString& second, const QString& together,
                          const QString& evenly) {
    return tr("%1 and %2 together, at right angles: %3 with each at its own feed; %4 at 45°.")
        .arg(first, second, together, evenly);
  }
  static QString how() {
    return tr("The power is the sum of what each axis takes at its own largest; the energy that of "
              "all axes stopping at once from their wanted feeds. Nothing is taken off for axes "
              "that seldom move together. The spindle and its supply are not in it.");
  }
};

std::string_view unit_of(MachineLimitId id) {
  return id == MachineLimitId::supply_power ? "W" : "V";
}

template <class Q>
QString shown(const Together& together, const std::optional<Q>& value, std::string_view unit) {
  return value_or_open(together.units, value ? std::optional(any(*value)) : std::nullopt, unit);
}

QString letter(const Together& together, std::size_t axis) {
  return QString::fromStdString(together.letters.at(axis));
}

QString note(const Together& together, const MachineLimit& limit) {
  if (limit.missing.member.empty()) {
    return {};
  }
  Limit open;
  open.missing = limit.missing;
  const QString reason = words::open_reason(open);
  return limit.open_axis ? Words::missing_on(letter(together, *limit.open_axis), reason) : reason;
}

} // namespace

QStringList machine_limit_heads() {
  return Words::limit_heads();
}

std::vector<QStringList> machine_limit_rows(const Together& together) {
  std::vector<QStringList> rows;
  for (const MachineLimit& limit : together.results.limits) {
    const std::string_view unit = unit_of(limit.id);
    const QString reached = value_or_open(together.units, limit.reached, unit);
    const QString single = value_or_open(together.units, limit.single, unit);
    rows.push_back(
        {verdict_text(limit.verdict), words::machine_limit_name(limit.id),
         limit.partial && limit.reached ? Words::at_least(reached) : reached,
         limit.single ? Words::of_axis(single, letter(together, *limit.largest)) : single,
         limit.allowed ? QStringLiteral("≤ ") + value_or_open(together.units, limit.allowed, unit)
                       : open_word(),
         limit.margin ? margin_text(*limit.margin) : QString(), note(together, limit)});
  }
  return rows;
}

QStringList machine_limit_answers(const Together& together) {
  QStringList lines;
  for (const MachineLimit& limit : together.results.limits) {
    const Answer* answer =
        find_answer(together.answers, AnswerTo::limit, machine_limit_code(limit.id), {});
    if (answer != nullptr) {
      lines << Words::answered(
          words::machine_limit_name(limit.id),
          words::answer_text(*answer, limit.reached, limit.allowed, together.units));
    }
  }
  return lines;
}

QStringList share_heads() {
  return Words::share_heads();
}

std::vector<QStringList> share_rows(const Together& together) {
  std::vector<QStringList> rows;
  for (std::size_t axis = 0; axis < together.results.axes.size(); ++axis) {
    const AxisTally& tally = together.results.axes[axis];
    rows.push_back({letter(together, axis), QString::number(tally.motors),
                    shown(together, tally.power, "W"), shown(together, tally.standing, "W"),
                    shown(together, tally.returned, "J"),
                    shown(together, tally.top_step_rate, "kHz")});
  }
  const MachineResults& all = together.results;
  const MachineLimit& power = all.limit(MachineLimitId::supply_power);
  rows.push_back({Words::all(),
                  QString::number(all.motors),
                  power.partial ? open_word() : value_or_open(together.units, power.reached, "W"),
                  shown(together, all.standing, "W"),
                  all.limit(MachineLimitId::bus_voltage).partial
                      ? open_word()
                      : shown(together, all.returned_energy, "J"),
                  {}});
  return rows;
}

QStringList together_sentences(const Together& together) {
  const MachineResults& all = together.results;
  QStringList lines{Words::how()};
  if (all.current && !all.limit(MachineLimitId::supply_power).partial) {
    lines << Words::current(shown(together, all.current, "A"));
  }
  if (all.capacitance_needed) {
    lines << Words::capacitance(shown(together, all.capacitance_needed, "µF"));
  }
  if (all.feed_any_direction && all.axes.size() > 1) {
    lines << Words::any_direction(shown(together, all.feed_any_direction, "m/min"));
  }
  for (const DiagonalFeed& diagonal : all.diagonals) {
    lines << Words::diagonal(letter(together, diagonal.first), letter(together, diagonal.second),
                             shown(together, std::optional(diagonal.together), "m/min"),
                             shown(together, std::optional(diagonal.evenly), "m/min"));
  }
  return lines;
}

} // namespace feedwright::sheet
