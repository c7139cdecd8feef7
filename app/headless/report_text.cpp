// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/report_text.h"

#include "headless/text_table.h"
#include "limits/cautions.h"
#include "sheet/lay_out_sheet.h"
#include "sheet/sheet_words.h"
#include "sheet/together_rows.h"
#include "text/printed_words.h"
#include "text/text_of.h"
#include "text/words.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>

namespace feedwright::headless {

namespace {

using sheet::margin_text;
using sheet::value_or_open;
using sheet::verdict_text;

/// Number and unit apart, so that numbers align at their end and units at their start.
QStringList number_and_unit(const QString& value) {
  const auto gap = std::find(value.begin(), value.end(), QLatin1Char(' '));
  const auto at = gap - value.begin();
  return {value.left(at), value.mid(at + 1)};
}

/// Digits parted by thin spaces are for paper; here a figure stays one word.
QString without_groups(QString text) {
  static const QRegularExpression gap(QStringLiteral("(?<=\\d)\\x{202f}(?=\\d{3})"));
  return text.remove(gap);
}

/// A note may have lines; in a table it is one.
QString one_line(const QString& text) {
  return text.simplified();
}

class Report {
  Q_DECLARE_TR_FUNCTIONS(Headless)

public:
  explicit Report(const SheetContent& content) : content_(content) {}

  QString text() {
    head();
    for (const SheetAxis& axis : content_.axes) {
      out_ += QLatin1Char('\n') + sheet::axis_title(axis.letter, axis.name) + QLatin1Char('\n');
      limits(axis);
      for (const QString& line : answered_limits(axis.limits, axis.answers, content_.units)) {
        out_ += QStringLiteral("    ") + one_line(line) + QLatin1Char('\n');
      }
      cautions(axis);
      set_up(axis.set_up);
      results(axis);
    }
    together();
    out_ += QLatin1Char('\n') + sheet::verdict_key() + QLatin1Char('\n') + sheet::care_text() +
            QLatin1Char('\n');
    return without_groups(out_);
  }

private:
  void head() {
    const QString name = QString::fromStdString(content_.machine_name);
    out_ += (name.isEmpty() ? tr("Machine") : name) + QLatin1Char('\n');
    const auto version = content_.program_version;
    out_ += tr("File: %1 · content %2 · Feedwright %3")
                .arg(QString::fromStdString(content_.identity.file_name),
                     QString::fromStdString(content_.identity.fingerprint), text_of(version)) +
            QLatin1Char('\n');
  }

  void together() {
    out_ += QLatin1Char('\n') + tr("All axes at once") + QLatin1Char('\n');
    std::vector<std::string> letters;
    for (const SheetAxis& axis : content_.axes) {
      letters.push_back(axis.letter);
    }
    const sheet::Together all{content_.together, content_.answers, letters, content_.units};
    std::vector<QStringList> rows{sheet::machine_limit_heads()};
    for (const QStringList& row : sheet::machine_limit_rows(all)) {
      rows.push_back(row);
    }
    out_ += text_table(
        rows,
        {Side::left, Side::left, Side::right, Side::right, Side::right, Side::right, Side::left},
        4);
    for (const QString& line : sheet::machine_limit_answers(all)) {
      out_ += QStringLiteral("    ") + one_line(line) + QLatin1Char('\n');
    }
    rows = {sheet::share_heads()};
    for (const QStringList& row : sheet::share_rows(all)) {
      rows.push_back(row);
    }
    out_ +=
        QLatin1Char('\n') +
        text_table(
            rows, {Side::left, Side::right, Side::right, Side::right, Side::right, Side::right}, 4);
    for (const QString& line : sheet::together_sentences(all)) {
      out_ += QStringLiteral("    ") + line + QLatin1Char('\n');
    }
  }

  void title(const QString& text) { out_ += QStringLiteral("\n  ") + text + QLatin1Char('\n'); }

  void limits(const SheetAxis& axis) {
    title(tr("Limits"));
    std::vector<QStringList> rows;
    rows.push_back({tr("reads"), tr("limit"), tr("reached"), {}, tr("wanted"), {}, tr("margin")});
    QStringList open;
    for (const Limit& limit : axis.limits) {
      const std::string_view unit = descriptor(descriptor(limit.id).result).unit;
      QStringList row{verdict_text(limit.verdict), words::limit_name(limit.id)};
      row += number_and_unit(value_or_open(content_.units, limit.reached, unit));
      if (limit.at_least) {
        row[2].prepend(QStringLiteral("≥ "));
      }
      row += limit.wanted ? number_and_unit(value_or_open(content_.units, limit.wanted, unit))
                          : QStringList{QString(), QString()};
      row += limit.margin ? margin_text(*limit.margin) : QString();
      row += axis.governing == limit.id          ? tr("governs the feed")
             : axis.governing_thrust == limit.id ? tr("governs the axial force")
                                                 : QString();
      rows.push_back(row);
      if (limit.verdict == Verdict::open) {
        open.append(tr("%1: %2", "limit: why it is open")
                        .arg(words::limit_name(limit.id), words::open_reason(limit)));
      }
    }
    out_ += text_table(rows,
                       {Side::left, Side::left, Side::right, Side::left, Side::right, Side::left,
                        Side::right, Side::left},
                       4);
    for (const QString& reason : open) {
      out_ += QStringLiteral("    ") + reason + QLatin1Char('\n');
    }
  }

  void cautions(const SheetAxis& axis) {
    if (axis.findings.empty()) {
      return;
    }
    title(tr("Cautions"));
    std::vector<QStringList> rows;
    for (const Caution& caution : cautions_of(axis.findings, axis.answers, content_.units)) {
      rows.push_back({caution.subjects, caution.text});
      if (!caution.answer.isEmpty()) {
        rows.push_back({{}, one_line(caution.answer)});
      }
    }
    out_ += text_table(rows, {Side::left, Side::left}, 4);
  }

  void set_up(const SetUp& figures) {
    title(tr("Set-up"));
    std::vector<QStringList> rows;
    const auto add = [&](const QString& name, const QString& value) {
      rows.push_back(QStringList{name} + number_and_unit(value));
    };
    add(tr("steps"), figures.steps_per_length
                         ? words::printed_quantity(*figures.steps_per_length, "steps/mm", 7)
                         : sheet::open_word());
    if (figures.steps) {
      add(words::field_name(PartSlot::motor, figures.steps->info.member),
          words::field_value(*figures.steps));
    }
    add(tr("top feed, limits clear"), value_or_open(content_.units, figures.top_feed, "m/min"));
    add(figures.acceleration_as_wanted ? tr("acceleration, as wanted")
                                       : tr("acceleration at the wanted feed"),
        value_or_open(content_.units, figures.acceleration, "m/s²"));
    out_ += text_table(rows, {Side::left, Side::right, Side::left}, 4);
  }

  void results(const SheetAxis& axis) {
    title(tr("Results"));
    std::vector<QStringList> rows;
    for (const SheetResult& result : axis.results) {
      if (!result.value) {
        continue;
      }
      const ResultDescriptor& about = descriptor(result.id);
      const QString symbol = text_of(about.symbol);
      rows.push_back(QStringList{words::result_name(result.id), symbol} +
                     number_and_unit(value_or_open(content_.units, result.value, about.unit)));
    }
    out_ += text_table(rows, {Side::left, Side::left, Side::right, Side::left}, 4);
  }

  const SheetContent& content_;
  QString out_;
};

} // namespace

QString report_text(const SheetContent& content) {
  return Report(content).text();
}

} // namespace feedwright::headless
