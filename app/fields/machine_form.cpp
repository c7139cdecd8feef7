// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/machine_form.h"

#include "fields/entry_edit.h"
#include "text/words.h"
#include "window/plain_label.h"
#include "window/style.h"
#include "json/read_json.h"

#include <QLabel>
#include <QPlainTextEdit>
#include <QVBoxLayout>

#include <utility>

namespace feedwright {

namespace {

constexpr int longest_name = 4096;
/// In bytes: a longer text could not be read again.
constexpr std::size_t longest_notes = JsonLimits{}.text;

TypedAt notes_place() {
  return TypedAt::of(0, PartSlot::supply, TypedAt::machine_notes);
}

} // namespace

MachineForm::MachineForm(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 6);
  layout->setSpacing(3);
  const auto add = [&](const QString& text, QWidget* editor) {
    QLabel* label = plain_label(text, this);
    label->setBuddy(editor);
    layout->addWidget(label);
    layout->addWidget(editor);
  };
  make_name();
  add(tr("Name"), name_);
  make_notes();
  add(tr("Notes, printed on the sheet"), notes_);
  notes_help_ = plain_label({}, this);
  notes_help_->setObjectName(QStringLiteral("machine.story.note"));
  notes_help_->hide();
  layout->addWidget(notes_help_);
}

void MachineForm::make_name() {
  name_ = new EntryEdit(this);
  name_->setObjectName(QStringLiteral("machine.name"));
  name_->setAccessibleName(tr("Name of the machine"));
  name_->setMaxLength(longest_name);
  typed_name_.emplace(*name_, document_.pending(),
                      TypedAt::of(0, PartSlot::supply, TypedAt::machine_name));
  connect(name_, &EntryEdit::committed, this, &MachineForm::take_name);
  connect(name_, &EntryEdit::given_up, this, &MachineForm::give_up_name);
}

void MachineForm::make_notes() {
  notes_ = new QPlainTextEdit(this);
  notes_->setObjectName(QStringLiteral("machine.story"));
  notes_->setAccessibleName(tr("Notes on the machine"));
  notes_->setTabChangesFocus(true);
  constexpr int lines = 9;
  notes_->setFixedHeight(lines * fontMetrics().lineSpacing());
  connect(notes_, &QPlainTextEdit::textChanged, this, &MachineForm::take_notes);
}

void MachineForm::take_name(const QString& name) {
  name_->setModified(false);
  Machine changed = document_.machine();
  changed.name = name.toStdString();
  give_up_name();
  document_.edit(std::move(changed), tr("name of the machine"));
}

void MachineForm::give_up_name() {
  typed_name_->give_up();
  refresh();
}

void MachineForm::hand_in() {
  name_->hand_in();
}

void MachineForm::keep_typed() {
  typed_name_->keep();
}

QWidget* MachineForm::editor_of(std::string_view member) const {
  if (member == TypedAt::machine_name) {
    return name_;
  }
  return member == TypedAt::machine_notes ? notes_ : nullptr;
}

void MachineForm::take_notes() {
  // What is typed stands here already: nobody who hears of the change needs to put it there.
  const bool was_taking = std::exchange(taking_notes_, true);
  shown_notes_ = notes_->toPlainText();
  std::string typed = shown_notes_.toStdString();
  if (typed.size() > longest_notes) {
    document_.pending().keep(notes_place(), shown_notes_);
  } else {
    document_.pending().give_up(notes_place());
    Machine changed = document_.machine();
    changed.story = std::move(typed);
    // One step of Undo for as long as nothing else is edited.
    document_.edit(std::move(changed), tr("notes on the machine"), QStringLiteral("notes"));
  }
  taking_notes_ = was_taking;
  show_notes();
}

void MachineForm::show_notes() {
  const auto refused = document_.pending().at(notes_place());
  if (!taking_notes_) {
    const QString wanted = refused.value_or(QString::fromStdString(document_.machine().story));
    if (wanted != shown_notes_) {
      const QSignalBlocker quiet(notes_);
      notes_->setPlainText(wanted);
      shown_notes_ = wanted;
    }
  }
  QString said;
  if (refused) {
    said = words::verdict_sign(Verdict::over) + QLatin1Char(' ') +
           tr("These notes are too long and are not taken: at most %1 bytes are kept, and they "
              "have %2.")
               .arg(longest_notes)
               .arg(refused->toUtf8().size());
    QPalette colours = palette();
    colours.setColor(QPalette::WindowText, Look::of(palette()).over);
    notes_help_->setPalette(colours);
  }
  notes_help_->setText(said);
  notes_help_->setVisible(refused.has_value());
  notes_->setAccessibleDescription(said);
}

void MachineForm::refresh() {
  if (!typed_name_->holds()) {
    typed_name_->forget();
    name_->show_taken(QString::fromStdString(document_.machine().name));
  }
  typed_name_->restore();
  show_notes();
}

} // namespace feedwright
