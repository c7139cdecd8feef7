// SPDX-License-Identifier: GPL-3.0-or-later

// Where the carriage may be off, column by column, and what each is made of.

#include "sizing/error_budget.h"
#include "studies/figure_maker.h"
#include "studies/figures.h"
#include "text/text_of.h"
#include "text/words.h"

#include <algorithm>

namespace feedwright {

namespace {

class ErrorsMaker : FigureMaker {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  using FigureMaker::FigureMaker;

  StudyFigure make() {
    set_y(tr("error"), small());
    double most = 0.0;
    const std::vector<ErrorColumn> columns = error_budget(axis_, results_);
    for (const ErrorColumn& column : columns) {
      out_.stacks.push_back(stack(column));
      const StudyStack& made = out_.stacks.back();
      most = std::max(most, in_unit(column.known, small()));
      for (const StackTick& tick : made.ticks) {
        most = std::max(most, tick.at);
      }
    }
    out_.x_end = double(out_.stacks.size());
    panel().y_end = most > 0.0 ? most * 1.1 : 1.0;
    out_.summary = summary(columns);
    return std::move(out_);
  }

private:
  const Unit& small() const { return unit(Kind::length, "µm"); }

  static QString column_name(ErrorPlace place) {
    switch (place) {
    case ErrorPlace::on_reversal: return tr("on reversal");
    case ErrorPlace::over_travel: return tr("over the travel");
    case ErrorPlace::under_cut: break;
    }
    return tr("under cut");
  }

  StudyStack stack(const ErrorColumn& column) const {
    StudyStack made{column_name(column.place)};
    int hatching = 0;
    for (const ErrorTerm& term : column.terms) {
      if (term.size) {
        made.parts.push_back(
            {words::result_name(term.id), in_unit(*term.size, small()), hatching++});
        if (term.id == ResultId::lost_motion) {
          hold_lost_motion(made);
        }
      } else {
        add_note(made, open_term(term));
      }
    }
    if (column.sum) {
      made.ticks.push_back({tr("sum"), in_unit(*column.sum, small()), false, column.verdict});
    } else if (column.known > Length()) {
      made.ticks.push_back({tr("known so far"), in_unit(column.known, small())});
    }
    if (column.root) {
      made.ticks.push_back({tr("root of squares"), in_unit(*column.root, small())});
    }
    if (column.wanted) {
      made.ticks.push_back({allowed_name(column.place), in_unit(*column.wanted, small()), true});
    }
    if (column.place == ErrorPlace::on_reversal && results_.resolution) {
      made.ticks.push_back({tr("one step"), in_unit(*results_.resolution, small())});
    }
    return made;
  }

  static QString allowed_name(ErrorPlace place) {
    return place == ErrorPlace::on_reversal ? tr("allowed on reversal") : tr("allowed under cut");
  }

  /// Its target measures that part alone, and its verdict is no other's; nought is left unsaid.
  void hold_lost_motion(StudyStack& stack) const {
    const auto& wanted = axis_.targets.lost_motion;
    StackPart& part = stack.parts.back();
    if (wanted && part.size > 0.0) {
      part.verdict = results_.limit(LimitId::lost_motion).verdict;
      stack.ticks.push_back({tr("allowed as lost motion"), in_unit(Length(**wanted), small()), true,
                             Verdict::open, stack.parts.size() - 1});
    }
  }

  static StackNote open_term(const ErrorTerm& term) {
    const QString name = words::result_name(term.id);
    if (term.missing.member.empty()) {
      return {tr("%1 %2 is open", "sign, a part of an error")
                  .arg(words::verdict_sign(Verdict::open), name),
              tr("%1: open, past the motor's pull-out torque").arg(name)};
    }
    const auto slot = static_cast<PartSlot>(term.missing.slot);
    const QString field = words::field_name(slot, term.missing.member);
    return {tr("%1 %2 is missing", "sign, a field").arg(words::verdict_sign(Verdict::open), field),
            tr("%1: missing %2 (%3)", "what is open, the field it wants, the part it belongs to")
                .arg(name, field, words::part_name(slot))};
  }

  /// Several terms may want the same field: it is named once.
  static void add_note(StudyStack& stack, StackNote note) {
    for (StackNote& there : stack.notes) {
      if (there.label == note.label) {
        there.full = tr("%1; %2", "two sentences").arg(there.full, note.full);
        return;
      }
    }
    stack.notes.push_back(std::move(note));
  }

  QString summary(const std::vector<ErrorColumn>& columns) const {
    const auto said = [&](ErrorPlace place) {
      const auto column = std::ranges::find(columns, place, &ErrorColumn::place);
      if (column == columns.end() || (!column->sum && column->known <= Length())) {
        return tr("open");
      }
      return column->sum ? text(*column->sum, small())
                         : tr("at least %1 (not all is known)", "sum of errors")
                               .arg(text(column->known, small()));
    };
    if (std::holds_alternative<HaulingBelt>(axis_.drive)) {
      return tr("Added up: on reversal %1, under cut %2; a belt's own pitch error over the travel "
                "is not reckoned.")
          .arg(said(ErrorPlace::on_reversal), said(ErrorPlace::under_cut));
    }
    return tr("Added up: on reversal %1, over the travel %2, under cut %3.")
        .arg(said(ErrorPlace::on_reversal), said(ErrorPlace::over_travel),
             said(ErrorPlace::under_cut));
  }
};

} // namespace

StudyFigure errors_figure(const StudySubject& subject) {
  return ErrorsMaker(subject).make();
}

} // namespace feedwright
