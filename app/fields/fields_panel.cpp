// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/fields_panel.h"

#include "fields/form_widths.h"
#include "fields/listed_parts.h"
#include "fields/part_chooser.h"
#include "text/field_guide.h"
#include "text/text_of.h"
#include "text/words.h"
#include "window/plain_label.h"

#include <QApplication>
#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>
#include <limits>

namespace feedwright {

namespace {

constexpr std::size_t no_axis = std::numeric_limits<std::size_t>::max();

/// Fields of other parts whose names have the text in them.
template <class Slots>
std::vector<Selection> found_elsewhere(const MachineDocument& document, const Slots& shown,
                                       const QString& text) {
  std::vector<Selection> found;
  const Selection& at = document.selection();
  for (std::size_t i = 0; i < slot_count; ++i) {
    const auto slot = static_cast<PartSlot>(i);
    if (std::ranges::find(shown, slot) != shown.end() ||
        (!of_machine(slot) && document.current_axis() == nullptr)) {
      continue;
    }
    for (const FieldView& field : fields_of(document.machine(), at.axis, slot)) {
      if (words::field_name(slot, field.info.member).contains(text, Qt::CaseInsensitive)) {
        found.push_back(
            {at.axis, slot, text_of(field.info.member), at.machine && of_machine(slot)});
      }
    }
  }
  return found;
}

} // namespace

FieldsPanel::FieldsPanel(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("fields_panel"));
  setAccessibleName(tr("Fields"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 8, 4, 8);
  chooser_ = new PartChooser(document_, this);
  make_filter();
  head_ = new QBoxLayout(QBoxLayout::TopToBottom);
  head_->addWidget(chooser_, 3);
  head_->addWidget(filter_, 2);
  layout->addLayout(head_);
  not_found_ = plain_label({}, this);
  not_found_->setObjectName(QStringLiteral("field_filter_note"));
  not_found_->hide();
  layout->addWidget(not_found_);
  scroll_ = new QScrollArea(this);
  scroll_->setObjectName(QStringLiteral("fields_scroll"));
  scroll_->setFrameShape(QFrame::NoFrame);
  scroll_->setFocusPolicy(Qt::NoFocus);
  scroll_->setWidgetResizable(true);
  scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll_->viewport()->installEventFilter(this);
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
  // What is typed outlives the window: another one, in another language, shows it again.
  handing_in_ = true;
  if (is_there()) {
    form_->keep_typed();
  }
  delete form_;
}

void FieldsPanel::make_filter() {
  filter_ = new QLineEdit(this);
  filter_->setObjectName(QStringLiteral("field_filter"));
  filter_->setAccessibleName(tr("Find a field of this part"));
  filter_->setToolTip(tr("Find a field (Ctrl+F)"));
  filter_->installEventFilter(this);
  filter_->setClearButtonEnabled(true);
  connect(filter_, &QLineEdit::textChanged, this, [this](const QString& text) {
    form_->filter(text);
    say_where_found();
  });
  connect(filter_, &QLineEdit::returnPressed, this, &FieldsPanel::leave_filter);
  auto* find = new QShortcut(QKeySequence::Find, this);
  connect(find, &QShortcut::activated, this, [this] {
    filter_->setFocus(Qt::ShortcutFocusReason);
    filter_->selectAll();
  });
  auto* clear = new QShortcut(QKeySequence(Qt::Key_Escape), filter_);
  clear->setContext(Qt::WidgetShortcut);
  connect(clear, &QShortcut::activated, filter_, &QLineEdit::clear);
}

/// Where the part has no such field, the parts that have are named.
void FieldsPanel::say_where_found() {
  const QString text = filter_->text().trimmed();
  const bool here = text.isEmpty() || form_->finds(text);
  not_found_->setVisible(!here);
  if (here) {
    return;
  }
  constexpr qsizetype most = 4;
  QStringList names;
  for (const Selection& place : found_elsewhere(document_, shown_slots(), text)) {
    names << tr("%1 (%2)", "field, its part")
                 .arg(words::field_name(place.slot, place.member.toStdString()),
                      words::part_name(place.slot));
  }
  not_found_->setText(names.isEmpty()
                          ? tr("No field of this axis or of the machine is called so.")
                          : tr("None in this part. Elsewhere: %1. Enter goes to the first.",
                               "fields with their parts")
                                .arg(names.mid(0, most).join(QStringLiteral(", "))));
}

/// The field with the keyboard stays where it can be seen, whatever grows beside the form or in it.
void FieldsPanel::keep_in_sight() {
  QWidget* at = QApplication::focusWidget();
  if (form_ != nullptr && at != nullptr && form_->isAncestorOf(at)) {
    scroll_->ensureWidgetVisible(at, 0, fontMetrics().height());
  }
}

/// With its key where there is room for that.
void FieldsPanel::fit_placeholder() {
  const QString texts[] = {tr("Find a field (Ctrl+F)"), tr("Find a field"), tr("Find")};
  constexpr int around = 12; // frame and margins
  const auto* fitting = std::ranges::find_if(texts, [this](const QString& text) {
    return filter_->fontMetrics().horizontalAdvance(text) + around <= filter_->width();
  });
  filter_->setPlaceholderText(fitting != std::end(texts) ? *fitting : QString());
}

bool FieldsPanel::eventFilter(QObject* watched, QEvent* event) {
  if (watched == filter_) {
    if (event->type() == QEvent::Resize || event->type() == QEvent::FontChange) {
      fit_placeholder();
    }
    return QWidget::eventFilter(watched, event);
  }
  if (event->type() == QEvent::Resize) {
    // When all has its new place.
    QMetaObject::invokeMethod(this, &FieldsPanel::keep_in_sight, Qt::QueuedConnection);
  }
  return QWidget::eventFilter(watched, event);
}

/// To the first field found.
void FieldsPanel::leave_filter() {
  if (const QString text = filter_->text().trimmed(); !text.isEmpty() && !form_->finds(text)) {
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

/// Whether names and editors of those parts have no room beside each other.
bool FieldsPanel::is_narrow(const QString& parts) const {
  constexpr int characters = 46;
  if (width() < characters * fontMetrics().averageCharWidth()) {
    return true;
  }
  if (!measured_ || measured_->parts != parts || measured_->font != font()) {
    measured_ = {
        parts, font(),
        form_widths(document_.machine(), document_.selection().axis, shown_slots(), fontMetrics())};
  }
  return !have_room(measured_->widths, width());
}

/// What decides which rows there are and how they stand; they are made anew only when it changes.
FieldsPanel::Shape FieldsPanel::shape() const {
  const Selection& at = document_.selection();
  QString parts = QString::number(at.axis);
  for (const PartSlot slot : shown_slots()) {
    const auto type = part_type(document_.machine(), at.axis, slot);
    parts += QStringLiteral("/%1:%2").arg(static_cast<int>(slot)).arg(text_of(type));
  }
  const bool narrow = is_narrow(parts);
  return {std::move(parts), narrow};
}

void FieldsPanel::take_changes() {
  if (handing_in_) {
    return;
  }
  const Shape now = shape();
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
  delete form_;
  form_ = new FieldsForm({document_, shelf_, ask_for_table_}, document_.selection().axis,
                         shown_slots(), folded_, built_shape_->narrow, scroll_);
  connect(form_, &FieldsForm::row_entered, this, [this](const FieldRow* row) { show_help(*row); });
  connect(form_, &FieldsForm::help_wanted, this, &FieldsPanel::help_wanted);
  connect(form_, &FieldsForm::picked, this, &FieldsPanel::take_listed_part);
  connect(form_, &FieldsForm::own_list_changed, this, [this] {
    shelf_ = read_part_shelf();
    form_->take_shelf();
  });
  form_->installEventFilter(this);
  scroll_->setWidget(form_);
  form_->show();
  not_found_->hide();
  const QSignalBlocker quiet(filter_);
  filter_->clear();
  chooser_->refresh();
  help_->setText(words::part_guide(document_.selection().slot));
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
