// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/fields_panel.h"

#include "fields/field_filter.h"
#include "fields/form_scroll.h"
#include "fields/found_elsewhere.h"
#include "fields/listed_parts.h"
#include "fields/part_chooser.h"
#include "text/field_guide.h"
#include "text/words.h"
#include "window/plain_label.h"

#include <QEvent>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>
#include <limits>
#include <utility>

namespace feedwright {

namespace {

constexpr std::size_t no_axis = std::numeric_limits<std::size_t>::max();

} // namespace

FieldsPanel::FieldsPanel(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("fields_panel"));
  setAccessibleName(tr("Fields"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 4, 8);
  chooser_ = new PartChooser(document_, this);
  filter_ = new FieldFilter(this);
  connect(filter_, &QLineEdit::textChanged, this, [this](const QString& text) {
    form_->filter(text);
    say_where_found();
  });
  connect(filter_, &QLineEdit::returnPressed, this, &FieldsPanel::leave_filter);
  head_ = new QBoxLayout(QBoxLayout::TopToBottom);
  head_->addWidget(chooser_, 3);
  head_->addWidget(filter_, 2);
  layout->addLayout(head_);
  not_found_ = plain_label({}, this);
  not_found_->setObjectName(QStringLiteral("field_filter_note"));
  not_found_->hide();
  layout->addWidget(not_found_);
  scroll_ = new FormScroll(this);
  layout->addWidget(scroll_, 1);
  help_ = plain_label({}, this);
  help_->setObjectName(QStringLiteral("field_help"));
  help_->setForegroundRole(QPalette::PlaceholderText);
  help_->setAlignment(Qt::AlignTop | Qt::AlignLeading);
  fit_height();
  layout->addWidget(help_);
  connect(&document_, &MachineDocument::changed, this, &FieldsPanel::take_changes);
  connect(&document_, &MachineDocument::selection_changed, this, &FieldsPanel::take_selection);
  connect(&document_, &MachineDocument::typed_wanted, this, &FieldsPanel::take_typed);
  connect(&document_, &MachineDocument::typed_moving, this, &FieldsPanel::keep_typed);
  // Told from within a row that keeps what it refused: the row must outlive it.
  connect(&document_.pending(), &PendingTexts::changed, this, [this] {
    if (!handing_in_ && is_there() && shape() == built_shape_) {
      form_->refresh();
    }
  });
  take_changes();
}

FieldsPanel::~FieldsPanel() {
  handing_in_ = true;
  delete form_;
}

/// Where the part has no such field, the parts that have are named.
void FieldsPanel::say_where_found() {
  const QString text = filter_->wanted();
  const bool here = text.isEmpty() || form_->finds(text);
  not_found_->setVisible(!here);
  if (!here) {
    not_found_->setText(sentence_on(found_elsewhere(document_, shown_slots(), text)));
  }
}

/// To the first field found.
void FieldsPanel::leave_filter() {
  if (const QString text = filter_->wanted(); !text.isEmpty() && !form_->finds(text)) {
    const auto found = found_elsewhere(document_, shown_slots(), text);
    if (!found.empty()) {
      filter_->clear();
      document_.select(found.front());
    }
    return;
  }
  if (FieldRow* row = form_->first_shown()) {
    row->take_focus();
    scroll_->ensureWidgetVisible(row->editor());
  }
}

/// Room for the longest sentences, so that the form does not jump from field to field. A panel that
/// is low for its letters leaves it all to the form: what is said here is in the tool tips too.
void FieldsPanel::fit_height() {
  constexpr int most_lines = 5;
  constexpr int low_lines = 27;
  const int line = std::max(1, fontMetrics().lineSpacing());
  const bool low = height() < low_lines * line;
  help_->setVisible(!low);
  help_->setMinimumHeight(std::min(most_lines, height() / (6 * line)) * line);
  head_->setDirection(low ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

QWidget* FieldsPanel::editor_of(PartSlot slot, std::string_view member) const {
  const FieldRow* row = form_->row_of(slot, member);
  return row != nullptr ? row->editor() : nullptr;
}

void FieldsPanel::set_table_asker(TableAsker asker) {
  ask_for_table_ = std::move(asker);
}

std::vector<PartSlot> FieldsPanel::shown_slots() const {
  const PartSlot slot = document_.selection().slot;
  if (of_machine(slot)) {
    return {std::begin(machine_slots), std::end(machine_slots)};
  }
  return document_.current_axis() != nullptr ? std::vector{slot} : std::vector<PartSlot>();
}

/// What decides which rows there are and how they stand; they are made anew only when it changes.
FormShape FieldsPanel::shape() const {
  return shaper_.shape(document_, shown_slots(), *this);
}

void FieldsPanel::take_changes() {
  if (handing_in_) {
    return;
  }
  const FormShape now = shape();
  if (!built_shape_ || now.parts != built_shape_->parts) {
    rebuild();
    return;
  }
  form_->refresh();
  if (now != *built_shape_) {
    // Not while a key is being taken: the editor that takes it would be gone.
    look_again();
  }
}

/// What is typed is taken, or kept as pending, before the form goes on to something else.
void FieldsPanel::take_typed() {
  if (!is_there()) {
    return;
  }
  handing_in_ = true;
  form_->hand_in();
  handing_in_ = false;
  take_changes();
}

/// The form's axis is about to be another one: nothing typed in it may be taken for that.
void FieldsPanel::keep_typed(bool of_axes) {
  if (!is_there()) {
    return;
  }
  const bool was_handing_in = std::exchange(handing_in_, true);
  form_->keep_typed();
  handing_in_ = was_handing_in;
  if (of_axes) {
    built_axis_ = no_axis;
    built_shape_.reset();
  }
}

/// Whether the axis that the form was made for is still in the machine.
bool FieldsPanel::is_there() const {
  return form_ != nullptr && built_axis_ < document_.machine().axes.size();
}

void FieldsPanel::take_selection() {
  // While a step is undone what is typed is not taken: it waits where the form goes on to another.
  if (!document_.is_stepping()) {
    take_typed();
  }
  take_changes();
  chooser_->refresh();
  focus_member();
}

void FieldsPanel::rebuild() {
  if (is_there()) {
    handing_in_ = true;
    form_->keep_typed();
    handing_in_ = false;
  }
  built_shape_ = shape();
  built_axis_ = document_.selection().axis;
  // While one is made there is none: a row that gives up a text of a cell that is gone says so.
  delete std::exchange(form_, nullptr);
  form_ = new FieldsForm({document_, shelf_, ask_for_table_}, document_.selection().axis,
                         shown_slots(), folded_, built_shape_->narrow, scroll_);
  connect(form_, &FieldsForm::row_entered, this, [this](const FieldRow* row) { show_help(*row); });
  connect(form_, &FieldsForm::help_wanted, this, &FieldsPanel::help_wanted);
  connect(form_, &FieldsForm::picked, this, &FieldsPanel::take_listed_part);
  connect(form_, &FieldsForm::own_list_changed, this, [this] {
    shelf_ = read_part_shelf();
    form_->take_shelf();
  });
  scroll_->setWidget(form_);
  form_->show();
  not_found_->hide();
  const QSignalBlocker quiet(filter_);
  filter_->clear();
  chooser_->refresh();
  help_->setText(words::part_guide(document_.selection().slot));
  emit rebuilt(last_stop());
}

QWidget* FieldsPanel::last_stop() const {
  QWidget* last = filter_;
  for (QWidget* at = filter_->nextInFocusChain(); at != filter_; at = at->nextInFocusChain()) {
    if (form_->isAncestorOf(at) && (at->focusPolicy() & Qt::TabFocus) != 0) {
      last = at;
    }
  }
  return last;
}

void FieldsPanel::take_listed_part(PartSlot slot, const ListedPart& part) {
  const FieldRow* cases = form_->row_of(slot, "load_cases");
  const int row = cases != nullptr ? cases->row_at_hand() : -1;
  take_listed(document_, slot, part, static_cast<std::size_t>(std::max(row, 0)));
}

void FieldsPanel::show_help(const FieldRow& row) {
  help_->setText(words::field_guide(row.slot(), row.info()));
  scroll_->ensureWidgetVisible(row.editor());
}

void FieldsPanel::focus_member() {
  const Selection& at = document_.selection();
  FieldRow* row = at.member.isEmpty() ? nullptr : form_->row_of(at.slot, at.member.toStdString());
  if (row == nullptr) {
    if (QWidget* aside = form_->aside_of(at.slot, at.member.toStdString())) {
      filter_->clear();
      form_->layout()->activate();
      aside->setFocus(Qt::OtherFocusReason);
      scroll_->ensureWidgetVisible(aside);
    }
    return;
  }
  filter_->clear();
  form_->reveal(*row);
  // The section that has opened is laid out before it is scrolled to.
  form_->layout()->activate();
  row->take_focus();
  show_help(*row);
}

void FieldsPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit_height();
  look_again();
}

void FieldsPanel::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange && help_ != nullptr) {
    fit_height();
  }
  if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) {
    look_again();
  }
}

/// Later: whoever goes round telling all widgets of a change must find them all.
void FieldsPanel::look_again() {
  QMetaObject::invokeMethod(
      this,
      [this] {
        if (form_ == nullptr || handing_in_) {
          return;
        }
        if (shape() == built_shape_) {
          form_->refresh();
        } else {
          rebuild();
        }
      },
      Qt::QueuedConnection);
}

} // namespace feedwright
