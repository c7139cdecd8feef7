// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/fields_panel.h"

#include "fields/belt_chooser.h"
#include "fields/listed_parts.h"
#include "fields/machine_form.h"
#include "fields/part_picker.h"
#include "fields/wheel_guard.h"
#include "text/text_of.h"
#include "text/words.h"
#include "window/plain_label.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace feedwright {

namespace {

void put_text(QLineEdit& edit, const std::string& text) {
  const QString shown = QString::fromStdString(text);
  if (edit.text() != shown) {
    edit.setText(shown);
    edit.setCursorPosition(0);
  }
}

} // namespace

FieldsPanel::FieldsPanel(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("fields_panel"));
  setAccessibleName(tr("Fields"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 4, 8);
  make_chooser();
  layout->addWidget(chooser_);
  scroll_ = new QScrollArea(this);
  scroll_->setObjectName(QStringLiteral("fields_scroll"));
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setFocusPolicy(Qt::NoFocus);
  scroll_->setWidgetResizable(true);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  layout->addWidget(scroll_, 1);
  help_ = plain_label({}, this);
  help_->setObjectName(QStringLiteral("field_help"));
  help_->setForegroundRole(QPalette::PlaceholderText);
  help_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  // Room for the longest sentence, so that the form does not jump from field to field.
  help_->setMinimumHeight(4 * fontMetrics().lineSpacing());
  layout->addWidget(help_);
  connect(&document_, &MachineDocument::changed, this, &FieldsPanel::take_changes);
  connect(&document_, &MachineDocument::selection_changed, this, &FieldsPanel::take_selection);
  take_changes();
}

FieldsPanel::~FieldsPanel() = default;

QWidget* FieldsPanel::editor_of(PartSlot slot, std::string_view member) const {
  const auto found = std::ranges::find_if(
      rows_, [&](const auto& row) { return row->slot() == slot && row->info().member == member; });
  return found != rows_.end() ? (*found)->editor() : nullptr;
}

void FieldsPanel::make_chooser() {
  chooser_ = new QComboBox(this);
  chooser_->setObjectName(QStringLiteral("part_chooser"));
  chooser_->setAccessibleName(tr("Part"));
  QFont font = chooser_->font();
  font.setBold(true);
  font.setPointSizeF(font.pointSizeF() * 1.15);
  chooser_->setFont(font);
  new WheelGuard(chooser_);
  connect(chooser_, &QComboBox::activated, this, [this](int index) {
    document_.select(
        {document_.selection().axis, static_cast<PartSlot>(chooser_->itemData(index).toInt()), {}});
  });
}

void FieldsPanel::fill_chooser() {
  chooser_->clear();
  chooser_->addItem(tr("Machine"), static_cast<int>(PartSlot::supply));
  if (document_.current_axis() != nullptr) {
    for (const PartSlot slot : axis_slots) {
      chooser_->addItem(words::part_name(slot), static_cast<int>(slot));
    }
  }
  const PartSlot slot = document_.selection().slot;
  chooser_->setCurrentIndex(
      chooser_->findData(static_cast<int>(of_machine(slot) ? PartSlot::supply : slot)));
}

std::vector<PartSlot> FieldsPanel::shown_slots() const {
  const PartSlot slot = document_.selection().slot;
  if (of_machine(slot)) {
    return {std::begin(machine_slots), std::end(machine_slots)};
  }
  return document_.current_axis() != nullptr ? std::vector{slot} : std::vector<PartSlot>();
}

/// What decides which rows there are; rows are made anew only when it changes.
QString FieldsPanel::shape() const {
  const Selection& at = document_.selection();
  QString made = QString::number(at.axis);
  for (const PartSlot slot : shown_slots()) {
    const auto type = part_type(document_.machine(), at.axis, slot);
    made += QStringLiteral("/%1:%2").arg(static_cast<int>(slot)).arg(text_of(type));
  }
  return made;
}

void FieldsPanel::take_changes() {
  shape() == built_shape_ ? refresh() : rebuild();
}

void FieldsPanel::take_selection() {
  take_changes();
  fill_chooser();
  focus_member();
}

void FieldsPanel::rebuild() {
  built_shape_ = shape();
  rows_.clear();
  delete form_;
  type_ = nullptr;
  source_ = nullptr;
  machine_form_ = nullptr;
  belts_ = nullptr;
  form_ = new QWidget(scroll_);
  grid_ = new QGridLayout(form_);
  grid_->setContentsMargins(0, 4, 6, 4);
  grid_->setHorizontalSpacing(8);
  grid_->setVerticalSpacing(3);
  grid_->setColumnStretch(0, 6);
  grid_->setColumnStretch(1, 7);
  grid_->setColumnMinimumWidth(2, widest_origin());
  const auto slots_shown = shown_slots();
  if (of_machine(document_.selection().slot)) {
    machine_form_ = new MachineForm(document_, form_);
    grid_->addWidget(machine_form_, grid_->rowCount(), 0, 1, 3);
  }
  for (const PartSlot slot : slots_shown) {
    if (slots_shown.size() > 1) {
      add_heading(words::part_name(slot));
    }
    add_part_rows(slot);
  }
  grid_->setRowStretch(grid_->rowCount(), 1);
  scroll_->setWidget(form_);
  fill_chooser();
  help_->clear();
  refresh();
}

/// So that the editors keep their width whatever the origins of their values.
int FieldsPanel::widest_origin() const {
  int width = 0;
  for (const Origin origin : {Origin::preset, Origin::entered, Origin::part_list}) {
    width = std::max(width, fontMetrics().horizontalAdvance(words::origin_name(origin)));
  }
  return width;
}

void FieldsPanel::add_heading(const QString& text) {
  QLabel* heading = plain_label(text, form_);
  QFont font = heading->font();
  font.setBold(true);
  heading->setFont(font);
  grid_->addWidget(heading, grid_->rowCount(), 0, 1, 3);
}

void FieldsPanel::add_type_row(PartSlot slot) {
  type_ = new QComboBox(form_);
  type_->setObjectName(QStringLiteral("part_type"));
  type_->setAccessibleName(tr("Type of %1").arg(words::part_name(slot)));
  type_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  new WheelGuard(type_);
  for (const std::string_view type : part_types(slot)) {
    type_->addItem(words::part_type_title(type), text_of(type));
  }
  connect(type_, &QComboBox::activated, this, [this, slot](int index) {
    const QString title = type_->itemText(index);
    const std::string type = type_->itemData(index).toString().toStdString();
    Machine changed = document_.machine();
    if (set_part_type(changed, document_.selection().axis, slot, type)) {
      // The rows, this box among them, are made anew: not while its own signal runs.
      QMetaObject::invokeMethod(
          this,
          [this, changed = std::move(changed), slot, title]() mutable {
            document_.edit(std::move(changed),
                           tr("%1: %2", "part: its type").arg(words::part_name(slot), title));
          },
          Qt::QueuedConnection);
    }
  });
  QLabel* label = plain_label(tr("Type"), form_);
  label->setBuddy(type_);
  grid_->addWidget(label, grid_->rowCount(), 0);
  grid_->addWidget(type_, grid_->rowCount() - 1, 1, 1, 2);
}

void FieldsPanel::add_part_rows(PartSlot slot) {
  const std::size_t axis = document_.selection().axis;
  if (!part_types(slot).empty()) {
    add_type_row(slot);
  }
  add_picker(slot);
  for (const FieldView& field : fields_of(document_.machine(), axis, slot)) {
    rows_.push_back(FieldRow::make(document_, axis, slot, field));
    FieldRow& row = *rows_.back();
    row.set_table_asker(ask_for_table_);
    row.add_to(*grid_, *form_);
    connect(&row, &FieldRow::entered, this, [this, &row] { show_help(row); });
    if (slot == PartSlot::transmission && field.info.member == "belt_teeth") {
      belts_ = new BeltChooser(document_, shelf_.stock_belts, form_);
      grid_->addWidget(belts_, grid_->rowCount(), 0, 1, 3);
    }
  }
  const bool bought = slot == PartSlot::guides || slot == PartSlot::motor ||
                      slot == PartSlot::transmission || slot == PartSlot::drive;
  if (bought) {
    add_source_row(slot);
  }
}

void FieldsPanel::set_table_asker(TableAsker asker) {
  ask_for_table_ = std::move(asker);
  for (const auto& row : rows_) {
    row->set_table_asker(ask_for_table_);
  }
}

/// What the parts lists have for the place, if they have anything.
void FieldsPanel::add_picker(PartSlot slot) {
  auto* picker = new PartPicker(shelf_, slot, form_);
  if (!picker->has_parts()) {
    delete picker;
    return;
  }
  // The rows are made anew when the type changes: not while the picker's own signal runs.
  connect(
      picker, &PartPicker::picked, this,
      [this, slot](const ListedPart& part) { take_listed(document_, slot, part, *form_); },
      Qt::QueuedConnection);
  grid_->addWidget(picker, grid_->rowCount(), 0, 1, 3);
}

void FieldsPanel::add_source_row(PartSlot slot) {
  source_ = new QLineEdit(form_);
  source_->setObjectName(QStringLiteral("part_source"));
  source_->setAccessibleName(tr("Source of the figures"));
  source_->setPlaceholderText(tr("data sheet, supplier, measured"));
  const std::size_t axis = document_.selection().axis;
  connect(source_, &QLineEdit::editingFinished, this, [this, axis, slot] {
    Machine changed = document_.machine();
    visit_part(changed, axis, slot,
               [&](auto& part) { part.notes.source = source_->text().toStdString(); });
    document_.edit(std::move(changed), tr("source of the figures"));
  });
  QLabel* label = plain_label(tr("Source of the figures"), form_);
  label->setBuddy(source_);
  grid_->addWidget(label, grid_->rowCount(), 0, 1, 3);
  grid_->addWidget(source_, grid_->rowCount(), 0, 1, 3);
}

void FieldsPanel::refresh() {
  const Machine& machine = document_.machine();
  const Selection& at = document_.selection();
  for (const auto& row : rows_) {
    row->refresh();
  }
  if (type_ != nullptr) {
    const auto type = part_type(machine, at.axis, at.slot);
    type_->setCurrentIndex(type_->findData(text_of(type)));
  }
  if (source_ != nullptr) {
    const std::string source =
        visit_part(machine, at.axis, at.slot, [](const auto& part) { return part.notes.source; });
    put_text(*source_, source);
  }
  if (machine_form_ != nullptr) {
    machine_form_->refresh();
  }
  if (belts_ != nullptr) {
    belts_->refresh();
  }
}

void FieldsPanel::show_help(const FieldRow& row) {
  help_->setText(words::field_help(row.slot(), row.info().member));
}

void FieldsPanel::focus_member() {
  const Selection& at = document_.selection();
  if (at.member.isEmpty()) {
    return;
  }
  for (const auto& row : rows_) {
    if (row->slot() == at.slot && text_of(row->info().member) == at.member) {
      row->take_focus();
      scroll_->ensureWidgetVisible(row->editor());
      show_help(*row);
      return;
    }
  }
}

} // namespace feedwright
