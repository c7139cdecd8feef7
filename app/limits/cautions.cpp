// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/cautions.h"

#include "sizing/concerns.h"
#include "text/machine_words.h"
#include "text/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace feedwright {

namespace {

struct CautionWords {
  Q_DECLARE_TR_FUNCTIONS(Cautions)

public:
  static QString answered(const QString& limit, const QString& answer) {
    return tr("%1: %2", "limit, answer").arg(limit, answer);
  }
};

} // namespace

std::vector<Caution> cautions_of(const std::vector<Finding>& findings,
                                 const std::vector<Answer>& answers, const FileUnits& units) {
  std::vector<Finding> ordered = findings;
  std::stable_sort(ordered.begin(), ordered.end(), [](const Finding& a, const Finding& b) {
    return weight_of(a.code) < weight_of(b.code);
  });
  std::vector<Caution> cautions;
  for (const Finding& finding : ordered) {
    const QString subject = words::part_name(finding.subject);
    const QString text = words::finding_text(finding);
    const Answer* answer = find_answer(answers, AnswerTo::finding, finding_name(finding.code),
                                       slot_name(finding.subject));
    const QString answered =
        answer != nullptr ? words::answer_text(*answer, finding.actual, finding.allowed, units)
                          : QString();
    if (!cautions.empty() && cautions.back().text == text && cautions.back().answer == answered) {
      cautions.back().subjects += QStringLiteral(", ") + subject;
    } else {
      cautions.push_back({subject, text, is_grave(finding.code), answered});
    }
  }
  return cautions;
}

QStringList answered_limits(std::span<const Limit> limits, const std::vector<Answer>& answers,
                            const FileUnits& units) {
  QStringList lines;
  for (const Limit& limit : limits) {
    const Answer* answer =
        find_answer(answers, AnswerTo::limit, descriptor(limit.id).name, std::string_view());
    if (answer != nullptr && limit.applies) {
      const AskedAndAllowed figures = asked_and_allowed(limit);
      lines << CautionWords::answered(
          words::limit_name(limit.id),
          words::answer_text(*answer, figures.asked, figures.allowed, units));
    }
  }
  return lines;
}

} // namespace feedwright
