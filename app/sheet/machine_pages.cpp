// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/cautions.h"
#include "sheet/lay_out_sheet.h"
#include "sheet/sheet_table.h"
#include "sheet/sheet_words.h"
#include "sheet/together_rows.h"
#include "text/words.h"

#include <QCoreApplication>

#include <functional>

#include <algorithm>

namespace feedwright::sheet {

namespace {

constexpr std::size_t axes_abreast = 4;

class MachinePages {
  Q_DECLARE_TR_FUNCTIONS(Sheet)

public:
  MachinePages(Pages& pages, const SheetContent& content) : pages_(pages), content_(content) {}

  void add() {
    pages_.begin_page({});
    if (!content_.story.empty()) {
      pages_.paragraph(QString::fromStdString(content_.story), {body_size, false});
    }
    pages_.heading(tr("Axes"), 120.0);
    for (std::size_t first = 0; first < content_.summary.size(); first += axes_abreast) {
      const std::size_t last = std::min(first + axes_abreast, content_.summary.size());
      add_table(pages_, axes_table(first, last));
      pages_.skip(6.0);
    }
    pages_.paragraph(verdict_key(), {small_size, false});
    dangers();
    together();
    pages_.heading(tr("Supply and controller"));
    add_table(pages_, machine_inputs());
    pages_.heading(tr("Parts to buy"));
    add_table(pages_, parts_to_buy());
  }

private:
  using Cell = std::function<QString(const SummaryRow&)>;

  QString value(const std::optional<AnyQuantity>& reached, std::string_view unit) const {
    return value_or_open(content_.units, reached, unit);
  }

  QString unit_pair(const std::optional<AnyQuantity>& reached,
                    const std::optional<AnyQuantity>& wanted, std::string_view unit) const {
    return wanted ? tr("%1, wanted %2").arg(value(reached, unit), value(wanted, unit))
                  : value(reached, unit);
  }

  static QString limit_or_open(const std::optional<LimitId>& limit) {
    return limit ? words::limit_name(*limit) : open_word();
  }

  static QString lowest(const SummaryRow& row) {
    if (!row.lowest) {
      return verdict_text(Verdict::open);
    }
    return tr("%1 (%2): %3", "sign and verdict (limit): margin")
        .arg(verdict_text(row.lowest->verdict), words::limit_name(row.lowest->limit),
             margin_text(row.lowest->margin));
  }

  static QString transmission(const SummaryRow& row) {
    const QString pieces = pieces_text(row.transmission);
    const QString title = words::part_type_title(row.transmission_type);
    return pieces.isEmpty() ? title : title + QStringLiteral(": ") + pieces;
  }

  static QString final_drive(const SummaryRow& row) {
    return words::part_type_title(row.drive_type) + QStringLiteral(": ") + pieces_text(row.drive);
  }

  static QString motor(const SummaryRow& row) {
    return words::part_type_title(row.motor_type) + QStringLiteral(": ") + pieces_text(row.motor);
  }

  /// How many limits read what, the worst first; without what there is none of.
  static QString limits_by_verdict(const SheetAxis& axis) {
    QStringList texts;
    for (const Verdict verdict : {Verdict::over, Verdict::close, Verdict::open, Verdict::clear}) {
      const auto count = std::ranges::count(axis.limits, verdict, &Limit::verdict);
      if (count > 0) {
        texts << tr("%1: %2", "sign and verdict, how many limits")
                     .arg(verdict_text(verdict))
                     .arg(count);
      }
    }
    return texts.join(QStringLiteral(", "));
  }

  Table axes_table(std::size_t first, std::size_t last) const {
    Table table;
    table.columns.push_back({tr("Axis"), 0.7});
    for (std::size_t axis = first; axis < last; ++axis) {
      const SummaryRow& row = content_.summary[axis];
      table.columns.push_back({axis_title(row.letter, row.name)});
    }
    const auto add = [&](const QString& name, bool bold, bool group, const Cell& cell) {
      Row made{{name}, bold, group};
      for (std::size_t axis = first; axis < last; ++axis) {
        made.cells.append(cell(content_.summary[axis]));
      }
      table.rows.push_back(made);
    };
    add(words::part_name(PartSlot::motor), false, false, motor);
    add(words::part_name(PartSlot::transmission), false, true, transmission);
    add(words::part_name(PartSlot::drive), false, true, final_drive);
    add(tr("Feed"), true, true,
        [this](const SummaryRow& row) { return unit_pair(row.feed, row.feed_wanted, "m/min"); });
    add(tr("Feed governed by"), false, false,
        [](const SummaryRow& row) { return limit_or_open(row.governing); });
    add(tr("Acceleration"), true, true, [this](const SummaryRow& row) {
      return unit_pair(row.acceleration, row.acceleration_wanted, "m/s²");
    });
    add(tr("Axial force"), true, true,
        [this](const SummaryRow& row) { return unit_pair(row.thrust, row.thrust_wanted, "N"); });
    add(tr("Axial force governed by"), false, false,
        [](const SummaryRow& row) { return limit_or_open(row.governing_thrust_limit); });
    add(tr("Resolution"), false, true,
        [this](const SummaryRow& row) { return value(row.resolution, "µm"); });
    add(tr("Lost motion"), false, false,
        [this](const SummaryRow& row) { return value(row.lost_motion, "µm"); });
    add(tr("Lowest margin"), true, true, lowest);
    Row counts{{tr("Limits")}};
    for (std::size_t axis = first; axis < last; ++axis) {
      counts.cells.append(limits_by_verdict(content_.axes[axis]));
    }
    table.rows.push_back(counts);
    return table;
  }

  /// What the axes ask of supply, bus and controller at once.
  void together() {
    std::vector<std::string> letters;
    for (const SummaryRow& row : content_.summary) {
      letters.push_back(row.letter);
    }
    const Together all{content_.together, content_.answers, letters, content_.units};
    pages_.heading(tr("All axes at once"), 100.0);
    const QStringList heads = machine_limit_heads();
    Table limits{{{heads[0], 0.8},
                  {heads[1], 1.9},
                  {heads[2], 0.9, Qt::AlignRight},
                  {heads[3], 1.1, Qt::AlignRight},
                  {heads[4], 0.9, Qt::AlignRight},
                  {heads[5], 0.7, Qt::AlignRight},
                  {heads[6], 2.0}},
                 {},
                 body_size};
    std::size_t at = 0;
    for (const QStringList& row : machine_limit_rows(all)) {
      limits.rows.push_back({row, content_.together.limits[at].verdict == Verdict::over});
      ++at;
    }
    add_table(pages_, limits);
    for (const QString& line : machine_limit_answers(all)) {
      pages_.paragraph(line);
    }
    cautions();
    pages_.skip(6.0);
    Table shares{{}, {}, body_size};
    for (const QString& head : share_heads()) {
      const bool first = shares.columns.empty();
      shares.columns.push_back({head, 1.0, first ? Qt::AlignLeft : Qt::AlignRight});
    }
    for (const QStringList& row : share_rows(all)) {
      shares.rows.push_back({row});
    }
    shares.rows.back().begins_group = true;
    shares.rows.back().bold = true;
    add_table(pages_, shares);
    pages_.skip(3.0);
    for (const QString& line : together_sentences(all)) {
      pages_.paragraph(line, {small_size});
    }
  }

  /// What may hurt somebody stands on the first page, axis by axis.
  void dangers() {
    Table table{{{{}, 1.0}, {{}, 5.0}}, {}, body_size};
    for (const SheetAxis& axis : content_.axes) {
      for (const Caution& caution : cautions_of(axis.findings, axis.answers, content_.units)) {
        if (caution.grave) {
          table.rows.push_back({{axis_title(axis.letter, axis.name), caution.text}, true});
        }
      }
    }
    if (!table.rows.empty()) {
      pages_.heading(tr("Dangers"), 60.0);
      add_table(pages_, table);
    }
  }

  void cautions() {
    Table table{{{{}, 1.0}, {{}, 5.0}}, {}, body_size};
    for (const Caution& caution :
         cautions_of(content_.together.findings, content_.answers, content_.units)) {
      table.rows.push_back({{caution.subjects, caution.text}, caution.grave});
      // A row a line, for rows stay whole on their page.
      for (const QString& line : caution.answer.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        table.rows.push_back({{{}, line}});
      }
    }
    if (!table.rows.empty()) {
      pages_.skip(4.0);
      add_table(pages_, table);
    }
  }

  Table machine_inputs() const {
    Table table{{{{}, 1.4}, {{}, 1.0, Qt::AlignRight}, {{}, 1.0}, {{}, 1.4}}, {}, body_size};
    for (const SheetInputs& part : content_.machine_inputs) {
      for (const FieldView& field : part.fields) {
        const bool missing = std::holds_alternative<std::monostate>(field.value);
        table.rows.push_back({{words::field_name(part.slot, field.info.member),
                               missing ? open_word() : input_text(field),
                               missing ? QString() : words::origin_name(field.note.origin),
                               {}}});
      }
    }
    return table;
  }

  Table parts_to_buy() const {
    Table table{{{tr("Count"), 0.5, Qt::AlignRight},
                 {tr("Part"), 1.6},
                 {tr("Description"), 4.2},
                 {tr("Axes"), 0.7}},
                {},
                body_size};
    for (const Purchase& purchase : content_.purchases) {
      QStringList letters;
      for (const std::string& letter : purchase.letters) {
        letters.append(QString::fromStdString(letter));
      }
      table.rows.push_back({{QString::number(purchase.count), purchase_name(purchase),
                             purchase_text(purchase), letters.join(QStringLiteral(", "))}});
    }
    return table;
  }

  Pages& pages_;
  const SheetContent& content_;
};

} // namespace

QString axis_title(const std::string& letter, const std::string& name) {
  const QString short_name = QString::fromStdString(letter);
  return name.empty() ? short_name
                      : QStringLiteral("%1 · %2").arg(short_name, QString::fromStdString(name));
}

void add_machine_pages(Pages& pages, const SheetContent& content) {
  MachinePages(pages, content).add();
}

} // namespace feedwright::sheet
