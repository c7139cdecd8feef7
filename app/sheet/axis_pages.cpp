// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/cautions.h"
#include "sheet/lay_out_sheet.h"

#include "sheet/figure_groups.h"
#include "sheet/sheet_figures.h"
#include "sheet/sheet_words.h"
#include "text/listed_names.h"
#include "text/printed_words.h"
#include "text/text_of.h"
#include "text/words.h"

#include <QCoreApplication>
#include <QPainter>

namespace feedwright::sheet {

namespace {

class AxisPages {
  Q_DECLARE_TR_FUNCTIONS(Sheet)

public:
  AxisPages(Pages& pages, const SheetAxis& content, const FileUnits& units)
      : pages_(pages), content_(content), units_(units) {}

  void set_up() {
    const SetUp& figures = content_.set_up;
    pages_.heading(tr("Set-up"));
    Table table{{{tr("Steps"), 1.0},
                 {figures.steps ? words::field_name(PartSlot::motor, figures.steps->info.member)
                                : QString(),
                  1.0},
                 {tr("Top feed, limits clear"), 1.2},
                 {figures.acceleration_as_wanted ? tr("Acceleration, as wanted")
                                                 : tr("Acceleration at the wanted feed"),
                  1.3}},
                {},
                body_size};
    // Seven digits: over a metre of travel the last one is under a micrometre.
    const QString steps = figures.steps_per_length
                              ? words::printed_quantity(*figures.steps_per_length, "steps/mm", 7)
                              : open_word();
    table.rows.push_back({{steps, figures.steps ? words::field_value(*figures.steps) : QString(),
                           value_or_open(units_, figures.top_feed, "m/min"),
                           value_or_open(units_, figures.acceleration, "m/s²")},
                          true});
    add_table(pages_, table);
  }

  void limits() {
    pages_.heading(tr("Limits"), 80.0);
    Table table{{{tr("Reads"), 0.8},
                 {tr("Limit"), 1.6},
                 {tr("Reached"), 1.35, Qt::AlignRight},
                 {tr("Wanted"), 1.0, Qt::AlignRight},
                 {tr("Margin"), 0.8, Qt::AlignRight},
                 {tr("Note"), 2.1}},
                {},
                body_size};
    std::optional<LimitScale> scale;
    for (const Limit& limit : content_.limits) {
      Row row = limit_row(limit);
      row.begins_group = scale && *scale != descriptor(limit.id).scale;
      scale = descriptor(limit.id).scale;
      table.rows.push_back(row);
    }
    add_table(pages_, table);
    if (!content_.not_applying.empty()) {
      QStringList names;
      for (const LimitId id : content_.not_applying) {
        names.append(words::limit_name(id));
      }
      pages_.paragraph(
          tr("Does not apply to this train: %1.").arg(names.join(QStringLiteral(", "))),
          {small_size});
    }
    pages_.paragraph(verdict_key(), {small_size});
    for (const QString& line : answered_limits(content_.limits, content_.answers, units_)) {
      pages_.paragraph(line);
    }
  }

  void cautions() {
    if (content_.findings.empty()) {
      return;
    }
    pages_.heading(tr("Cautions"));
    Table table{{{{}, 1.0}, {{}, 5.0}}, {}, body_size};
    for (const Caution& caution : cautions_of(content_.findings, content_.answers, units_)) {
      table.rows.push_back({{caution.subjects, caution.text}, caution.grave});
      // A row a line, for rows stay whole on their page.
      for (const QString& line : caution.answer.split(QLatin1Char('\n'), Qt::SkipEmptyParts)) {
        table.rows.push_back({{{}, line}});
      }
    }
    add_table(pages_, table);
  }

  void figures() {
    const auto groups = figure_groups(content_, units_);
    if (groups.empty()) {
      return;
    }
    pages_.heading(tr("Figures"), 120.0);
    add_two_columns(pages_, {{{}, 2.0}, {{}, 0.7, Qt::AlignLeft, true}, {{}, 1.4, Qt::AlignRight}},
                    groups);
  }

  void inputs() {
    pages_.heading(tr("Inputs"), 120.0);
    std::vector<TableGroup> groups;
    for (const SheetInputs& part : content_.inputs) {
      groups.push_back(input_group(part));
    }
    add_two_columns(pages_, {{{}, 1.9}, {{}, 1.5, Qt::AlignRight}, {{}, 0.75}}, groups);
  }

private:
  Row limit_row(const Limit& limit) const {
    const LimitDescriptor& about = descriptor(limit.id);
    const std::string_view unit = descriptor(about.result).unit;
    const bool of_feed = content_.governing == limit.id;
    const bool governs = of_feed || content_.governing_thrust == limit.id;
    const QString at_most = about.at_most && limit.wanted ? QStringLiteral("≤ ") : QString();
    const QString at_least = limit.at_least ? QStringLiteral("≥ ") : QString();
    const QString note = of_feed                          ? tr("governs the feed")
                         : governs                        ? tr("governs the axial force")
                         : limit.verdict == Verdict::open ? words::open_reason(limit)
                                                          : QString();
    return {{verdict_text(limit.verdict), words::limit_name(limit.id),
             at_least + life_or_value(units_, limit.reached, unit, limit.wanted),
             limit.wanted ? at_most + value_or_open(units_, limit.wanted, unit) : QString(),
             limit.margin ? margin_text(*limit.margin) : QString(), note},
            governs || limit.verdict == Verdict::over};
  }

  static TableGroup input_group(const SheetInputs& part) {
    TableGroup group;
    group.title = part.type.empty()
                      ? words::part_name(part.slot)
                      : tr("%1: %2", "part: type of part")
                            .arg(words::part_name(part.slot), words::part_type_title(part.type));
    for (const FieldView& field : part.fields) {
      group.rows.push_back(input_row(part.slot, field));
    }
    if (!part.source.empty()) {
      group.rows.push_back({{tr("source"), words::listed_source(text_of(part.source)), {}}});
    }
    return group;
  }

  static Row input_row(PartSlot slot, const FieldView& field) {
    const QString name = words::field_name(slot, field.info.member);
    if (std::holds_alternative<std::monostate>(field.value)) {
      return {{name, open_word(), {}}};
    }
    const QString value = input_text(field);
    return value.isEmpty() ? Row{{name, QStringLiteral("–"), {}}}
                           : Row{{name, value, words::origin_name(field.note.origin)}};
  }

  Pages& pages_;
  const SheetAxis& content_;
  const FileUnits& units_;
};

} // namespace

void add_axis_pages(Pages& pages, const Machine& machine, std::size_t axis,
                    const AxisResults& results, const SheetAxis& content, const FileUnits& units) {
  pages.begin_subject(axis_title(content.letter, content.name));
  AxisPages part(pages, content, units);
  add_train(pages, machine, axis, results);
  part.cautions();
  part.set_up();
  part.limits();
  add_plots(pages, machine, axis, results);
  part.figures();
  part.inputs();
}

} // namespace feedwright::sheet
