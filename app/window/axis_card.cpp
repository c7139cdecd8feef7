// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/axis_card.h"

#include "choosing/remedies.h"
#include "limits/number_text.h"
#include "sizing/finding_weight.h"
#include "text/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <vector>

namespace feedwright {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(AxesPanel)

public:
  static QString axes(std::size_t count) {
    return tr("%n axis(es)", nullptr, static_cast<int>(count));
  }
  static QString to_settle(std::size_t count) {
    return tr("%n to settle", nullptr, static_cast<int>(count));
  }
  static QString unnamed() { return tr("Machine without a name"); }
  static QString supply_over() { return tr("supply over"); }
  static QString bus_over() { return tr("bus over"); }
  static QString faulty() { return tr("not computed"); }
  static QString governs(const QString& limit) { return tr("%1 governs").arg(limit); }
  static QString nothing_governs() { return tr("no feed limit known"); }
  static QString wanted(const QString& feed) { return tr("wanted %1").arg(feed); }
  static QString axis(const QString& letter) { return tr("Axis %1").arg(letter); }
  static QString over(const QString& limit) { return tr("%1 over", "limit").arg(limit); }
  static QString close(const QString& limit) { return tr("%1 close", "limit").arg(limit); }
  static QString and_more(const QString& first, int others) {
    return others == 0 ? first : tr("%1 and %n more", "trouble of an axis", others).arg(first);
  }
  /// What may hurt somebody, in as few words as a card holds; the caution says it in full.
  static QString danger(FindingCode code) {
    switch (code) {
    case FindingCode::axis_can_fall: return tr("can fall");
    case FindingCode::axis_can_rise: return tr("can rise");
    case FindingCode::whip_beyond_critical: return tr("would whip");
    case FindingCode::hold_beyond_motor: return tr("can slip at rest");
    case FindingCode::near_whip: return tr("runs near whip");
    case FindingCode::nut_near_shaft_frequency: return tr("screw may shake");
    case FindingCode::bus_over_limit: return tr("braking lifts the supply");
    case FindingCode::stall_at_rest: return tr("may stall from rest");
    default: return tr("danger");
    }
  }
};

/// What is worse than, or as bad as, what governs the feed, and so must not hide behind it.
void set_trouble(AxisCard& card, const AxisResults& results) {
  std::vector<FindingCode> grave;
  for (const Finding& finding : results.findings) {
    if (is_grave(finding.code)) {
      grave.push_back(finding.code);
    }
  }
  std::ranges::sort(grave, {}, weight_of);
  std::vector<LimitId> limits;
  for (const LimitId id : limits_in_trouble(results)) {
    const bool over = results.limit(id).verdict == Verdict::over;
    if (id != results.governing && (over || card.verdict != Verdict::over)) {
      limits.push_back(id);
    }
  }
  if (grave.empty() && limits.empty()) {
    return;
  }
  const bool over = !grave.empty() || results.limit(limits.front()).verdict == Verdict::over;
  const QString name = limits.empty() ? QString() : words::limit_name(limits.front());
  const QString first = !grave.empty() ? Words::danger(grave.front())
                        : over         ? Words::over(name)
                                       : Words::close(name);
  card.trouble_verdict = over ? Verdict::over : Verdict::close;
  card.trouble = words::verdict_sign(card.trouble_verdict) + QLatin1Char(' ') +
                 Words::and_more(first, static_cast<int>(grave.size() + limits.size()) - 1);
}

/// Feeds on the card's bar: the wanted one stands at two thirds.
void set_shares(AxisCard& card, double reached, const std::optional<double>& wanted) {
  constexpr double wanted_at = 2.0 / 3.0;
  if (wanted && *wanted > 0.0) {
    card.wanted_share = wanted_at;
    card.share = std::clamp(reached / *wanted * wanted_at, 0.0, 1.0);
  } else {
    card.share = reached > 0.0 ? 1.0 : 0.0;
  }
}

} // namespace

QString AxisCard::spoken() const {
  QStringList parts{letter.isEmpty() ? name : Words::axis(letter)};
  for (const QString& part : {letter.isEmpty() ? QString() : name, trouble, governs, waiting,
                              reached, wanted, words::verdict_word(verdict)}) {
    if (!part.isEmpty()) {
      parts << part;
    }
  }
  return parts.join(QStringLiteral(", "));
}

AxisCard machine_card(const Machine& machine, std::size_t to_settle,
                      const MachineResults* together) {
  AxisCard card;
  card.name = machine.name.empty() ? Words::unnamed() : QString::fromStdString(machine.name);
  QStringList parts{Words::axes(machine.axes.size())};
  const auto is_over = [together](MachineLimitId id) {
    return together != nullptr && together->limit(id).verdict == Verdict::over;
  };
  if (is_over(MachineLimitId::supply_power) || is_over(MachineLimitId::bus_voltage)) {
    card.verdict = Verdict::over;
    card.sign = words::verdict_sign(Verdict::over);
    parts << (is_over(MachineLimitId::supply_power) ? Words::supply_over() : Words::bus_over());
  } else {
    parts << words::quantity(any(*machine.supply.voltage), "V", 3);
  }
  parts << (together != nullptr ? Words::to_settle(to_settle) : Words::faulty());
  card.governs = parts.join(QStringLiteral(" · "));
  return card;
}

AxisCard axis_card(const Axis& axis, const AxisResults* results) {
  AxisCard card;
  card.letter = QString::fromStdString(axis.basics.letter);
  card.name = QString::fromStdString(axis.basics.name);
  if (axis.targets.feed) {
    // The unit stands beside it, at the feed that is reached.
    const double wanted = number_in(any(**axis.targets.feed), "m/min");
    card.wanted = Words::wanted(number_text(wanted, 3));
  }
  if (results == nullptr) {
    card.governs = Words::faulty();
    return card;
  }
  if (!results->governing) {
    card.governs = Words::nothing_governs();
    set_trouble(card, *results);
    return card;
  }
  const Limit& limit = results->limit(*results->governing);
  card.verdict = limit.verdict;
  card.sign = words::verdict_sign(limit.verdict);
  card.governs = Words::governs(words::limit_name(limit.id));
  card.reached = words::quantity(*limit.reached, "m/min", 3);
  set_shares(card, limit.reached->si,
             limit.wanted ? std::optional(limit.wanted->si) : std::nullopt);
  set_trouble(card, *results);
  return card;
}

} // namespace feedwright
