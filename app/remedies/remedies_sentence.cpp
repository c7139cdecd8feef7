// SPDX-License-Identifier: GPL-3.0-or-later
#include "remedies/remedies_sentence.h"

#include "sizing/finding_weight.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace feedwright {

namespace {

bool has_danger(const AxisResults& results) {
  return std::ranges::any_of(results.findings, is_grave, &Finding::code);
}

/// What whip threatens is what its own remedies take away.
bool is_left(FindingCode code, LimitId limit) {
  const bool whips = code == FindingCode::whip_beyond_critical || code == FindingCode::near_whip;
  return is_grave(code) && !(whips && limit == LimitId::whip);
}

struct Said {
  Q_DECLARE_TR_FUNCTIONS(feedwright::RemediesView)

public:
  static QString on_machine(const QStringList& troubled, bool danger) {
    if (!troubled.isEmpty()) {
      return tr("A limit is over or close on %1. Choose the axis to see what would do.",
                "letters of axes")
          .arg(troubled.join(QStringLiteral(", ")));
    }
    return danger ? tr("On no axis is a limit over or close, but there is a danger: read the "
                       "cautions.")
                  : tr("On no axis is a limit over or close.");
  }
  static QString danger_in_calm() {
    return tr("No limit is over or close, but there is a danger: read the cautions.");
  }
  static QString calm(int open) {
    return open == 0 ? tr("Nothing is over or close.")
                     : tr("Nothing known is over or close; %n limit(s) are open.", nullptr, open);
  }
  static QString danger_first(const QString& sentence) {
    return tr("See to the danger among the cautions first. %1", "sentence on a limit")
        .arg(sentence);
  }
};

} // namespace

QString sentence_on_machine(const Machine& machine, const std::vector<AxisResults>& results) {
  QStringList troubled;
  for (std::size_t axis = 0; axis < results.size(); ++axis) {
    if (!limits_in_trouble(results[axis]).empty()) {
      troubled << QString::fromStdString(machine.axes[axis].basics.letter);
    }
  }
  return Said::on_machine(troubled, std::ranges::any_of(results, has_danger));
}

QString sentence_on_calm(const AxisResults& results) {
  if (has_danger(results)) {
    return Said::danger_in_calm();
  }
  const auto is_open = [](const Limit& limit) {
    return limit.applies && limit.verdict == Verdict::open;
  };
  return Said::calm(int(std::ranges::count_if(results.limits, is_open)));
}

QString sentence_on_limit(const RemedyContext& context, bool any) {
  const QString heading = limit_heading(context, any);
  const bool danger = std::ranges::any_of(context.now.findings, [&](const Finding& finding) {
    return is_left(finding.code, context.limit);
  });
  return danger ? Said::danger_first(heading) : heading;
}

} // namespace feedwright
