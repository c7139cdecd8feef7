// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/fields_form.h"

#include "fields/belt_chooser.h"
#include "fields/field_section.h"
#include "fields/machine_form.h"
#include "fields/part_header.h"
#include "text/field_guide.h"
#include "text/symbol_text.h"
#include "text/text_of.h"
#include "text/words.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace feedwright {

FieldsForm::FieldsForm(const FormContext& context, std::size_t axis,
                       const std::vector<PartSlot>& slots_shown, FoldedSections& folded,
                       bool stacked, QWidget* parent)
    : QWidget(parent), context_(context), axis_(axis), folded_(folded), stacked_(stacked),
      widths_(form_widths(context.document.machine(), axis, slots_shown, fontMetrics())) {
  layout_ = new QVBoxLayout(this);
  layout_->setContentsMargins(0, 4, 6, 4);
  layout_->setSpacing(4);
  const bool machine = !slots_shown.empty() && of_machine(slots_shown.front());
  if (machine) {
    machine_form_ = new MachineForm(context_.document, this);
    layout_->addWidget(machine_form_);
  }
  for (const PartSlot slot : slots_shown) {
    add_part(slot, slots_shown.size() > 1);
  }
  layout_->addStretch(1);
  open_the_first();
  open_as_remembered();
  refresh();
  order_tabs();
}

FieldsForm::~FieldsForm() {
  // The keyboard passes from editor to editor as they go; none has anything to say any more.
  for (const auto& row : rows_) {
    row->blockSignals(true);
    for (QWidget* stop : row->tab_stops()) {
      stop->blockSignals(true);
    }
  }
  // Rows take their widgets along while those still have their parents.
  rows_.clear();
}

void FieldsForm::add_header(PartSlot slot) {
  auto* header = new PartHeader(context_, axis_, slot, this);
  if (!header->is_needed()) {
    delete header;
    return;
  }
  connect(header, &PartHeader::picked, this,
          [this, slot](const ListedPart& part) { emit picked(slot, part); });
  connect(header, &PartHeader::own_list_changed, this, &FieldsForm::own_list_changed);
  layout_->addWidget(header);
  headers_.push_back(header);
}

void FieldsForm::add_part(PartSlot slot, bool titled) {
  add_header(slot);
  for (const FieldView& field : fields_of(context_.document.machine(), axis_, slot)) {
    add_row(section_for(slot, field.info.section, titled), slot, field);
  }
}

/// The section of that name, made below the others if there is none yet.
FieldsForm::Section& FieldsForm::section_for(PartSlot slot, std::string_view section, bool titled) {
  const std::string name = std::string(slot_name(slot)) + "." + std::string(section);
  const auto type = part_type(context_.document.machine(), axis_, slot);
  const QString key = QString::fromStdString(name) + QLatin1Char('/') + text_of(type);
  const auto found = std::ranges::find(sections_, key, &Section::key);
  if (found != sections_.end()) {
    return *found;
  }
  const QString title = !section.empty() ? words::section_name(slot, section)
                        : titled         ? words::part_name(slot)
                                         : QString();
  Section made;
  made.key = key;
  made.widget =
      new FieldSection(title, QStringLiteral("section.") + QString::fromStdString(name), this);
  made.starts_open = section.empty();
  QGridLayout& grid = made.widget->grid();
  grid.setColumnStretch(0, 6);
  grid.setColumnStretch(1, 7);
  // Alike in every section, whatever stands in it.
  grid.setColumnMinimumWidth(2, widths_.origin);
  if (!stacked_) {
    grid.setColumnMinimumWidth(0, widths_.name);
    grid.setColumnMinimumWidth(1, widths_.editor);
  }
  connect(made.widget, &FieldSection::toggled, this,
          [this, key](bool open) { folded_[key] = open; });
  connect(made.widget, &FieldSection::typed, this,
          [this, key](QKeyEvent* typed) { type_into(key, *typed); });
  layout_->addWidget(made.widget);
  sections_.push_back(made);
  return sections_.back();
}

/// What is typed on a section's head is meant for its first field: that which takes words or
/// figures before one that offers a choice.
void FieldsForm::type_into(const QString& section, QKeyEvent& key) {
  const auto found = std::ranges::find(sections_, section, &Section::key);
  const auto shown = [this](std::size_t row) {
    return rows_[row]->editor()->isVisibleTo(this) && rows_[row]->editor()->isEnabled();
  };
  found->widget->set_open(true);
  folded_[section] = true;
  FieldRow* into = nullptr;
  for (const std::size_t row : found->rows) {
    const bool line = qobject_cast<QLineEdit*>(rows_[row]->editor()) != nullptr;
    if (shown(row) && (line || into == nullptr)) {
      into = rows_[row].get();
    }
    if (into != nullptr && line) {
      break;
    }
  }
  if (into == nullptr) {
    return;
  }
  into->take_focus();
  QWidget* editor = into->editor();
  QKeyEvent again(key.type(), key.key(), key.modifiers(), key.text(), key.isAutoRepeat());
  QCoreApplication::sendEvent(editor->focusProxy() != nullptr ? editor->focusProxy() : editor,
                              &again);
}

void FieldsForm::add_row(Section& section, PartSlot slot, const FieldView& field) {
  rows_.push_back(FieldRow::make(context_, axis_, slot, field));
  FieldRow& row = *rows_.back();
  section.rows.push_back(rows_.size() - 1);
  // What must be given is in sight from the start.
  section.starts_open |= field.info.presence == Presence::required;
  row.add_to(section.widget->grid(), section.widget->body(), stacked_);
  connect(&row, &FieldRow::entered, this, [this, &row] { emit row_entered(&row); });
  connect(&row, &FieldRow::help_wanted, this,
          [this, slot, member = field.info.member] { emit help_wanted(slot, text_of(member)); });
  if (slot == PartSlot::transmission && field.info.member == "belt_teeth") {
    belts_ =
        new BeltChooser(context_.document, context_.shelf.stock_belts, &section.widget->body());
    QGridLayout& grid = section.widget->grid();
    grid.addWidget(belts_, grid.rowCount(), 0, 1, 3);
  }
}

/// A form of few fields is open whole; one of many, where nothing must be given, at its first part.
void FieldsForm::open_the_first() {
  constexpr std::size_t few = 12;
  if (std::ranges::any_of(sections_, &Section::starts_open)) {
    return;
  }
  for (Section& section : sections_) {
    section.starts_open = rows_.size() <= few || &section == &sections_.front();
  }
}

void FieldsForm::open_as_remembered() {
  for (Section& section : sections_) {
    const auto remembered = folded_.find(section.key);
    section.widget->set_open(remembered != folded_.end() ? remembered->second
                                                         : section.starts_open);
  }
}

void FieldsForm::refresh() {
  for (const auto& row : rows_) {
    row->refresh();
  }
  for (PartHeader* header : headers_) {
    header->refresh();
  }
  if (machine_form_ != nullptr) {
    machine_form_->refresh();
  }
  if (belts_ != nullptr) {
    belts_->refresh();
  }
  look_for_reasons();
}

/// A section opens by itself when something in it comes to want a look, not again and again; one
/// that the user has folded opens for trouble only.
void FieldsForm::look_for_reasons() {
  for (Section& section : sections_) {
    const auto remembered = folded_.find(section.key);
    const bool folded = remembered != folded_.end() && !remembered->second;
    const bool reason = std::ranges::any_of(section.rows, [&](std::size_t row) {
      return rows_[row]->has_trouble() || (!folded && !rows_[row]->wanted_by().isEmpty());
    });
    if (reason && !section.has_reason) {
      section.widget->set_open(true);
    }
    section.has_reason = reason;
    section.widget->say(summary(section));
  }
}

QString FieldsForm::summary(const Section& section) const {
  int given = 0;
  int wanted = 0;
  int refused = 0;
  for (const std::size_t row : section.rows) {
    given += rows_[row]->is_given() ? 1 : 0;
    wanted += rows_[row]->wanted_by().isEmpty() ? 0 : 1;
    refused += rows_[row]->has_trouble() ? 1 : 0;
  }
  QStringList said;
  if (refused > 0) {
    said << words::verdict_sign(Verdict::over) + QLatin1Char(' ') +
                tr("%n to mend", "fields of a section", refused);
  }
  if (wanted > 0) {
    said << words::verdict_sign(Verdict::open) + QLatin1Char(' ') +
                tr("%n wanted", "fields of a section", wanted);
  }
  said << tr("%n given", "fields of a section", given);
  return said.join(QStringLiteral(" · "));
}

bool FieldsForm::matches(const FieldRow& row, const QString& text) const {
  const auto has = [&](const QString& in) { return in.contains(text, Qt::CaseInsensitive); };
  return has(words::field_name(row.slot(), row.info().member)) ||
         plain_symbols(text_of(row.info().symbol)).compare(text, Qt::CaseSensitive) == 0 ||
         has(text_of(row.info().member));
}

void FieldsForm::filter(const QString& text) {
  const bool was_filtered = !filtered_by_.isEmpty();
  filtered_by_ = text.trimmed();
  for (const Section& section : sections_) {
    bool any = false;
    for (const std::size_t row : section.rows) {
      const bool shown = filtered_by_.isEmpty() || matches(*rows_[row], filtered_by_);
      rows_[row]->set_shown(shown);
      any = any || shown;
    }
    section.widget->setVisible(any);
    if (!filtered_by_.isEmpty()) {
      section.widget->set_open(true);
    }
  }
  for (PartHeader* header : headers_) {
    header->setVisible(filtered_by_.isEmpty());
  }
  if (filtered_by_.isEmpty() && was_filtered) {
    open_as_remembered();
  }
}

bool FieldsForm::finds(const QString& text) const {
  return std::ranges::any_of(rows_, [&](const auto& row) { return matches(*row, text); });
}

FieldRow* FieldsForm::first_shown() const {
  const auto found =
      std::ranges::find_if(rows_, [](const auto& row) { return row->editor()->isVisible(); });
  return found != rows_.end() ? found->get() : nullptr;
}

FieldRow* FieldsForm::row_of(PartSlot slot, std::string_view member) const {
  const auto found = std::ranges::find_if(
      rows_, [&](const auto& row) { return row->slot() == slot && row->info().member == member; });
  return found != rows_.end() ? found->get() : nullptr;
}

QWidget* FieldsForm::aside_of(PartSlot slot, std::string_view member) const {
  if (member == TypedAt::source) {
    const auto found = std::ranges::find(headers_, slot, &PartHeader::slot);
    return found != headers_.end() ? (*found)->source_editor() : nullptr;
  }
  return machine_form_ != nullptr ? machine_form_->editor_of(member) : nullptr;
}

void FieldsForm::reveal(const FieldRow& row) {
  for (const Section& section : sections_) {
    for (const std::size_t index : section.rows) {
      if (rows_[index].get() == &row) {
        section.widget->set_open(true);
        return;
      }
    }
  }
}

void FieldsForm::hand_in() {
  if (machine_form_ != nullptr) {
    machine_form_->hand_in();
  }
  for (PartHeader* header : headers_) {
    header->hand_in();
  }
  for (const auto& row : rows_) {
    row->hand_in();
  }
}

void FieldsForm::keep_typed() {
  if (machine_form_ != nullptr) {
    machine_form_->keep_typed();
  }
  for (PartHeader* header : headers_) {
    header->keep_typed();
  }
  for (const auto& row : rows_) {
    row->keep_typed();
  }
}

void FieldsForm::take_shelf() {
  for (PartHeader* header : headers_) {
    header->take_shelf();
  }
}

/// The reading order: section by section, whatever the order in which the fields are declared.
void FieldsForm::order_tabs() {
  QWidget* last = nullptr;
  const auto then = [&](QWidget* next) {
    if (last != nullptr && next != nullptr) {
      setTabOrder(last, next);
    }
    last = next != nullptr ? next : last;
  };
  for (const Section& section : sections_) {
    then(section.widget->head());
    for (const std::size_t row : section.rows) {
      const auto inside = rows_[row]->tab_stops();
      for (QWidget* stop : inside) {
        then(stop);
      }
      if (belts_ != nullptr && rows_[row]->info().member == "belt_teeth") {
        then(belts_->focusProxy());
      }
    }
  }
}

} // namespace feedwright
