// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/part_header.h"

#include "fields/entry_edit.h"
#include "fields/part_picker.h"
#include "fields/wheel_guard.h"
#include "machine/swap_parts.h"
#include "parts/own_parts.h"
#include "text/text_of.h"
#include "text/words.h"
#include "window/plain_label.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>

namespace feedwright {

namespace {

bool is_bought(PartSlot slot) {
  return slot == PartSlot::guides || slot == PartSlot::motor || slot == PartSlot::transmission ||
         slot == PartSlot::drive;
}

} // namespace

PartHeader::PartHeader(const FormContext& context, std::size_t axis, PartSlot slot, QWidget* parent)
    : QWidget(parent), context_(context), axis_(axis), slot_(slot) {
  grid_ = new QGridLayout(this);
  grid_->setContentsMargins(0, 0, 0, 4);
  grid_->setHorizontalSpacing(8);
  grid_->setVerticalSpacing(3);
  grid_->setColumnStretch(1, 1);
  if (!part_types(slot).empty()) {
    add_type();
  }
  auto* picker = new PartPicker(context_.shelf, slot, this);
  if (picker->has_parts()) {
    picker_ = picker;
    grid_->addWidget(picker, grid_->rowCount(), 0, 1, 2);
    // The form is made anew when the type changes: not while the picker's own signal runs.
    connect(picker, &PartPicker::picked, this, &PartHeader::picked, Qt::QueuedConnection);
  } else {
    delete picker;
  }
  if (is_bought(slot)) {
    add_source();
    add_keeping();
  }
}

bool PartHeader::is_needed() const {
  return grid_->count() > 0;
}

void PartHeader::add_type() {
  type_ = new QComboBox(this);
  type_->setObjectName(QStringLiteral("part_type"));
  type_->setAccessibleName(tr("Type of %1").arg(words::part_name(slot_)));
  type_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  new WheelGuard(type_);
  for (const std::string_view type : part_types(slot_)) {
    type_->addItem(words::part_type_title(type), text_of(type));
  }
  connect(type_, &QComboBox::activated, this, &PartHeader::choose_type);
  QLabel* label = plain_label(tr("Type"), this);
  label->setBuddy(type_);
  grid_->addWidget(label, 0, 0);
  grid_->addWidget(type_, 0, 1);
}

void PartHeader::choose_type(int index) {
  const QString title = type_->itemText(index);
  const std::string type = type_->itemData(index).toString().toStdString();
  const Machine& present = context_.document.machine();
  Machine changed = present;
  if (!set_part_type(changed, axis_, slot_, type)) {
    return;
  }
  changed = with_what_follows(present, std::move(changed), axis_, swap_to(type),
                              {context_.shelf.stock_belts, {}});
  // The form, this box in it, is made anew: not while its own signal runs.
  QMetaObject::invokeMethod(
      &context_.document,
      [&document = context_.document, changed = std::move(changed),
       name = tr("%1: %2", "part: its type").arg(words::part_name(slot_), title)]() mutable {
        document.edit(std::move(changed), name);
      },
      Qt::QueuedConnection);
}

void PartHeader::add_source() {
  constexpr int longest_source = 4096;
  source_ = new EntryEdit(this);
  source_->setObjectName(QStringLiteral("part_source"));
  source_->setMaxLength(longest_source);
  source_->setAccessibleName(tr("Source of the figures"));
  source_->setPlaceholderText(tr("data sheet, supplier, measured"));
  typed_source_.emplace(*source_, context_.document.pending(),
                        TypedAt::of(axis_, slot_, TypedAt::source));
  connect(source_, &EntryEdit::committed, this, &PartHeader::take_source);
  connect(source_, &EntryEdit::given_up, this, &PartHeader::give_up_source);
  QLabel* label = plain_label(tr("Source"), this);
  label->setBuddy(source_);
  label->setToolTip(source_->accessibleName());
  const int row = grid_->rowCount();
  grid_->addWidget(label, row, 0);
  grid_->addWidget(source_, row, 1);
}

void PartHeader::hand_in() {
  if (source_ != nullptr) {
    source_->hand_in();
  }
}

void PartHeader::keep_typed() {
  if (source_ != nullptr) {
    typed_source_->keep();
  }
}

QWidget* PartHeader::source_editor() const {
  return source_;
}

void PartHeader::take_shelf() {
  if (picker_ != nullptr) {
    picker_->refill();
  }
}

void PartHeader::take_source(const QString& source) {
  source_->setModified(false);
  Machine changed = context_.document.machine();
  visit_part(changed, axis_, slot_, [&](auto& part) { part.notes.source = source.toStdString(); });
  give_up_source();
  context_.document.edit(std::move(changed), tr("source of the figures"));
}

void PartHeader::give_up_source() {
  typed_source_->give_up();
  refresh();
}

QString PartHeader::source_of_figures() const {
  return QString::fromStdString(visit_part(context_.document.machine(), axis_, slot_,
                                           [](const auto& part) { return part.notes.source; }));
}

/// A part filled in by hand is wanted again for the next axis.
void PartHeader::add_keeping() {
  keep_ = new QPushButton(tr("Keep in my list…"), this);
  keep_->setObjectName(QStringLiteral("keep_part"));
  keep_->setToolTip(tr("Puts these figures into your own parts list, for other axes and machines"));
  name_ = new QLineEdit(this);
  name_->setObjectName(QStringLiteral("kept_name"));
  name_->setAccessibleName(tr("Name of the part in your list"));
  name_->setPlaceholderText(tr("a name, then Enter"));
  name_->hide();
  kept_ = plain_label({}, this);
  kept_->setObjectName(QStringLiteral("kept_note"));
  kept_->setForegroundRole(QPalette::PlaceholderText);
  kept_->hide();
  connect(keep_, &QPushButton::clicked, this, &PartHeader::ask_for_name);
  connect(name_, &QLineEdit::returnPressed, this, &PartHeader::keep);
  auto* give_up = new QShortcut(QKeySequence(Qt::Key_Escape), name_);
  give_up->setContext(Qt::WidgetShortcut);
  connect(give_up, &QShortcut::activated, this, &PartHeader::ask_no_more);
  const int row = grid_->rowCount();
  auto* line = new QHBoxLayout;
  line->addWidget(name_, 1);
  line->addStretch();
  line->addWidget(keep_);
  grid_->addLayout(line, row, 0, 1, 2);
  grid_->addWidget(kept_, row + 1, 0, 1, 2);
}

void PartHeader::ask_no_more() {
  name_->hide();
  keep_->setText(tr("Keep in my list…"));
  keep_->setFocus();
}

void PartHeader::ask_for_name() {
  if (!name_->isHidden()) {
    keep();
    return;
  }
  name_->setText(suggested_name());
  name_->show();
  name_->setFocus();
  name_->selectAll();
  keep_->setText(tr("Keep"));
}

QString PartHeader::suggested_name() const {
  // A listed part's source begins with its name; any other is none.
  const QString source = source_of_figures();
  return source.contains(QLatin1Char(':')) ? source.section(QLatin1Char(':'), 0, 0).trimmed()
                                           : QString();
}

void PartHeader::keep() {
  const Machine& machine = context_.document.machine();
  const auto kind = list_for(machine, axis_, slot_);
  const QString name = name_->text().trimmed();
  if (!kind || name.isEmpty()) {
    return;
  }
  const std::string source =
      visit_part(machine, axis_, slot_, [](const auto& part) { return part.notes.source; });
  const auto kept =
      keep_own_part(as_listed(machine, axis_, slot_, *kind, name.toStdString(),
                              source.empty() ? tr("own figures").toStdString() : source));
  kept_->setText(kept ? tr("Kept as \"%1\" in %2.").arg(name, *kept)
                      : words::verdict_sign(Verdict::over) + QLatin1Char(' ') + kept.error());
  kept_->show();
  if (kept) {
    ask_no_more();
    emit own_list_changed();
  }
}

void PartHeader::refresh() {
  const Machine& machine = context_.document.machine();
  if (type_ != nullptr) {
    type_->setCurrentIndex(type_->findData(text_of(part_type(machine, axis_, slot_))));
  }
  if (source_ == nullptr) {
    return;
  }
  if (!typed_source_->holds()) {
    typed_source_->forget();
    const QString source = source_of_figures();
    source_->show_taken(source);
    source_->setToolTip(source.isEmpty() ? QString()
                                         : QStringLiteral("<p>%1</p>").arg(source.toHtmlEscaped()));
  }
  typed_source_->restore();
}

} // namespace feedwright
