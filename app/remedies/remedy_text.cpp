// SPDX-License-Identifier: GPL-3.0-or-later
#include "remedies/remedy_text.h"

#include "text/listed_names.h"
#include "text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

constexpr int digits = 3;

class RemedyWriter {
  Q_DECLARE_TR_FUNCTIONS(Remedies)

public:
  RemedyWriter(const Remedy& remedy, const RemedyContext& context)
      : remedy_(remedy), about_(context) {}

  RemedyText written() const {
    RemedyText made;
    const bool worse = remedy_.outcome == RemedyOutcome::moves_trouble;
    const Limit& limit = remedy_.limit(about_.limit);
    // What is known no more is not well, though nobody can say it is bad.
    made.verdict = worse                         ? Verdict::over
                   : !remedy_.newly_open.empty() ? Verdict::open
                   : limit.applies               ? limit.verdict
                                                 : Verdict::clear;
    made.what = by_nature(what(true));
    made.then = then();
    if (const QString unknown = known_no_more(); !unknown.isEmpty()) {
      made.then += QStringLiteral(". ") + unknown;
    }
    made.trouble = trouble();
    QStringList all{made.what, made.then};
    if (!made.trouble.isEmpty()) {
      all << made.trouble;
    }
    made.spoken = all.join(QStringLiteral(" – "));
    made.details = details();
    made.step = what(false);
    return made;
  }

  QString heading(bool any) const {
    const Limit& limit = about_.now.limit(about_.limit);
    const QString name = words::limit_name(limit.id);
    const QString sign = words::verdict_sign(limit.verdict);
    const QString word = words::verdict_word(limit.verdict);
    const LimitDescriptor& described = descriptor(limit.id);
    const QString has = quantity(*limit.reached, described);
    const QString asked = quantity(*limit.wanted, described);
    const QString standing = described.at_most ? tr("%1 %2: %3 has %4, wanted at most %5.",
                                                    "sign, verdict, limit, value, wanted value")
                                                     .arg(sign, word, name, has, asked)
                                               : tr("%1 %2: %3 allows %4, wanted is %5.",
                                                    "sign, verdict, limit, value, wanted value")
                                                     .arg(sign, word, name, has, asked);
    if (!any) {
      return standing + QLatin1Char(' ') +
             tr("No single change would do; two together may, or another layout.");
    }
    return standing + QLatin1Char(' ') +
           (limit.verdict == Verdict::over ? tr("To reach it, one of:")
                                           : tr("To be clear of it, one of:"));
  }

private:
  QString quantity(const AnyQuantity& value, const LimitDescriptor& limit) const {
    const Unit& unit = about_.units.unit_of(value.kind, descriptor(limit.result).unit);
    return words::quantity(value, unit.symbol, digits);
  }
  QString value_of(const Limit& limit) const {
    return limit.reached ? quantity(*limit.reached, descriptor(limit.id))
                         : words::open_reason(limit);
  }

  /// The value and, where the change moves what is wanted too, against what it now stands.
  QString value_then(const Limit& limit) const {
    const Limit& now = about_.now.limit(limit.id);
    if (!limit.reached || !limit.wanted || !now.wanted) {
      return value_of(limit);
    }
    const LimitDescriptor& described = descriptor(limit.id);
    const QString wanted = quantity(*limit.wanted, described);
    return wanted == quantity(*now.wanted, described)
               ? value_of(limit)
               : tr("%1 where %2 is wanted", "value reached, value wanted")
                     .arg(value_of(limit), wanted);
  }

  QString field_value(const FieldChange& change, bool after) const {
    auto field = field_of(about_.machine, about_.axis, change.slot, change.member);
    if (!field) {
      return {};
    }
    if (after) {
      field->value = change.after;
      field->note = {change.text, Origin::entered};
    }
    const QString text = words::field_text(*field);
    return text.isEmpty() ? tr("open") : text;
  }

  /// Of a table the first cell that changes: "teeth in row 1: 16".
  QString table_piece(const FieldChange& change, const TableRows& before,
                      const TableRows& after) const {
    const auto field = field_of(about_.machine, about_.axis, change.slot, change.member);
    if (!field || field->info.table == nullptr) {
      return words::field_name(change.slot, change.member);
    }
    const auto columns = field->info.table->columns();
    for (std::size_t row = 0; row < std::min(before.rows.size(), after.rows.size()); ++row) {
      for (std::size_t i = 0; i < std::min(columns.size(), after.rows[row].size()); ++i) {
        if (before.rows[row][i] != after.rows[row][i]) {
          const FieldView cell{columns[i], field_value_of(after.rows[row][i]), {}};
          return tr("%1: %2 in row %3: %4", "table, column, row, value")
              .arg(words::field_name(change.slot, change.member),
                   words::column_name(change.slot, change.member, columns[i].member),
                   QString::number(row + 1), words::field_text(cell));
        }
      }
    }
    return words::field_name(change.slot, change.member);
  }
  static FieldValue field_value_of(const CellValue& cell) { return feedwright::field_value(cell); }

  QString piece(const FieldChange& change, bool with_sense) const {
    const auto* before = std::get_if<TableRows>(&change.before);
    const auto* after = std::get_if<TableRows>(&change.after);
    if (before != nullptr && after != nullptr) {
      return table_piece(change, *before, *after);
    }
    const QString name = words::field_name(change.slot, change.member);
    QString value = field_value(change, true);
    if (with_sense) { // for show: a number keeps its unit beside it
      value.replace(QLatin1Char(' '), QChar(QChar::Nbsp));
    }
    if (!std::holds_alternative<AnyQuantity>(change.after) &&
        !std::holds_alternative<std::int64_t>(change.after)) {
      return tr("%1: %2", "field: choice").arg(name, value);
    }
    const bool asks = remedy_.nature == RemedyNature::asks_less;
    const ChangeSense sense =
        with_sense && !asks && !remedy_.part ? remedy_.sense : ChangeSense::exactly;
    switch (sense) {
    case ChangeSense::at_most: return tr("%1 ≤ %2", "field, value").arg(name, value);
    case ChangeSense::at_least: return tr("%1 ≥ %2", "field, value").arg(name, value);
    case ChangeSense::exactly: break;
    }
    return tr("%1 %2", "field, value").arg(name, value);
  }

  /// The change itself. What goes along with a number (a shaft's whole length) stays in the
  /// details; what a choice needs (the inertia of a nut that turns) is part of it.
  QString what(bool with_sense) const {
    QStringList pieces;
    for (const FieldChange& change : remedy_.changes) {
      const FieldValue& first = remedy_.changes.front().after;
      const bool choice =
          std::holds_alternative<std::string>(first) || std::holds_alternative<TableRows>(first);
      if (pieces.isEmpty() || choice || remedy_.part) {
        pieces << piece(change, with_sense);
      }
    }
    QString joined = pieces.join(QStringLiteral(", "));
    if (!remedy_.part) {
      return joined;
    }
    const ListedPart& part = about_.parts[*remedy_.part];
    const QString name = words::listed_name(QString::fromStdString(part.name));
    if (part.kind == ListedKind::screw && !joined.isEmpty()) {
      return tr("%1 (%2)", "figures of a screw, its name in the list").arg(joined, name);
    }
    if (part.kind == ListedKind::end_bearings) {
      return tr("End bearings: %1", "name in the list").arg(name);
    }
    return tr("%1: %2", "part, its name in the list")
        .arg(words::part_name(slot_of(part.kind)), name);
  }

  QString by_nature(const QString& change) const {
    switch (remedy_.nature) {
    case RemedyNature::better_part:
      return tr("a part with %1", "figure a bought part must have").arg(change);
    case RemedyNature::asks_less: return tr("ask less: %1", "target and value").arg(change);
    case RemedyNature::change: break;
    }
    return change;
  }

  QString then() const {
    const LimitDescriptor& described = descriptor(about_.limit);
    if (described.scale != LimitScale::other) {
      return remedy_.governing ? governs(remedy_.limit(*remedy_.governing))
                               : tr("then nothing governs");
    }
    const Limit& limit = remedy_.limit(about_.limit);
    QString own = limit.applies ? tr("then %1: %2", "value of the limit afterwards, verdict")
                                      .arg(value_then(limit), words::verdict_word(limit.verdict))
                                : tr("then it is no limit any more");
    if (!remedy_.governing || remedy_.governing == about_.now.governing) {
      return own;
    }
    const Limit& feed = remedy_.limit(*remedy_.governing);
    return tr("%1; the feed is then governed by %2: %3", "what becomes of the limit, limit, feed")
        .arg(own, words::limit_name(feed.id), value_of(feed));
  }

  QString governs(const Limit& limit) const {
    return tr("then %1 governs: %2, %3", "limit, value, verdict")
        .arg(words::limit_name(limit.id), value_then(limit), words::verdict_word(limit.verdict));
  }

  QString named(const AxisLimit& limit) const {
    const QString name = words::limit_name(limit.id);
    return limit.axis == about_.axis
               ? name
               : tr("%1 of axis %2", "limit, letter")
                     .arg(name,
                          QString::fromStdString(about_.machine.axes[limit.axis].basics.letter));
  }

  /// What was over and falls back further, with both values where they are this axis'.
  QString fallen(const AxisLimit& limit) const {
    if (limit.axis != about_.axis) {
      return named(limit);
    }
    const Limit& now = about_.now.limit(limit.id);
    const Limit& then = remedy_.limit(limit.id);
    return tr("%1 %2 (now %3)", "limit, value afterwards, value at present")
        .arg(words::limit_name(limit.id), value_then(then), value_of(now));
  }

  QString trouble() const {
    QStringList sentences;
    if (!remedy_.newly_over.empty()) {
      QStringList names;
      for (const AxisLimit& limit : remedy_.newly_over) {
        names << named(limit);
      }
      sentences << tr("It only moves the trouble, over is then: %1.", "limits")
                       .arg(names.join(QStringLiteral(", ")));
    }
    if (!remedy_.further_over.empty()) {
      QStringList names;
      for (const AxisLimit& limit : remedy_.further_over) {
        names << fallen(limit);
      }
      sentences << tr("Further over than before: %1.", "limits, with their values")
                       .arg(names.join(QStringLiteral(", ")));
    }
    for (const Finding& finding : remedy_.newly_grave) {
      sentences << words::finding_text(finding);
    }
    return sentences.join(QLatin1Char(' '));
  }

  QString known_no_more() const {
    QStringList names;
    for (const LimitId id : remedy_.newly_open) {
      names << words::limit_name(id);
    }
    return names.isEmpty()
               ? QString()
               : tr("No longer known then: %1.", "limits").arg(names.join(QStringLiteral(", ")));
  }

  /// Every limit that moves by more than can be told from rounding.
  QStringList moved_limits() const {
    QStringList lines;
    for (const LimitDescriptor& described : limit_descriptors()) {
      const Limit& before = about_.now.limit(described.id);
      const Limit& after = remedy_.limit(described.id);
      if (!before.applies && !after.applies) {
        continue;
      }
      const QString name = words::limit_name(described.id);
      if (!after.applies) {
        lines
            << tr("%1: %2 → no limit any more", "limit, value before").arg(name, value_of(before));
      } else if (const QString was = before.applies ? value_of(before) : tr("no limit");
                 was != value_of(after) || before.verdict != after.verdict) {
        lines << tr("%1: %2 → %3, %4 %5", "limit, value before, after, sign, verdict")
                     .arg(name, was, value_of(after), words::verdict_sign(after.verdict),
                          words::verdict_word(after.verdict));
      }
    }
    return lines;
  }

  QString details() const {
    QStringList lines;
    if (remedy_.part) {
      const ListedPart& part = about_.parts[*remedy_.part];
      lines << tr("%1, all its figures from the list: %2", "name of a listed part, its source")
                   .arg(words::listed_name(QString::fromStdString(part.name)),
                        words::listed_source(QString::fromStdString(part.source)));
    }
    for (const FieldChange& change : remedy_.changes) {
      if (std::holds_alternative<TableRows>(change.after)) {
        lines << piece(change, false);
        continue;
      }
      lines << tr("%1: %2 → %3", "field, value before, value after")
                   .arg(words::field_name(change.slot, change.member), field_value(change, false),
                        field_value(change, true));
    }
    const QStringList moved = moved_limits();
    if (!moved.isEmpty()) {
      lines << QString() << moved << tr("All other limits stay as they are.");
    }
    for (const Finding& finding : remedy_.new_cautions) {
      lines << QString() << words::finding_text(finding);
    }
    return lines.join(QLatin1Char('\n'));
  }

  const Remedy& remedy_;
  const RemedyContext& about_;
};

} // namespace

RemedyText text_of(const Remedy& remedy, const RemedyContext& context) {
  return RemedyWriter(remedy, context).written();
}

QString limit_heading(const RemedyContext& context, bool any) {
  const Remedy none;
  return RemedyWriter(none, context).heading(any);
}

QString limit_entry(const Limit& limit) {
  return words::verdict_sign(limit.verdict) + QLatin1Char(' ') + words::limit_name(limit.id);
}

} // namespace feedwright
