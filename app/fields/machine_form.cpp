// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/machine_form.h"

#include "window/plain_label.h"

#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace feedwright {

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
  name_ = new QLineEdit(this);
  name_->setObjectName(QStringLiteral("machine.name"));
  name_->setAccessibleName(tr("Name of the machine"));
  connect(name_, &QLineEdit::editingFinished, this, &MachineForm::take_name);
  add(tr("Name"), name_);
  notes_ = new QPlainTextEdit(this);
  notes_->setObjectName(QStringLiteral("machine.story"));
  notes_->setAccessibleName(tr("Notes on the machine"));
  notes_->setTabChangesFocus(true);
  constexpr int lines = 9;
  notes_->setFixedHeight(lines * fontMetrics().lineSpacing());
  connect(notes_, &QPlainTextEdit::textChanged, this, &MachineForm::take_notes);
  add(tr("Notes, printed on the sheet"), notes_);
}

void MachineForm::take_name() {
  Machine changed = document_.machine();
  changed.name = name_->text().toStdString();
  document_.edit(std::move(changed), tr("name of the machine"));
}

void MachineForm::hand_in() {
  if (name_->isModified()) {
    name_->setModified(false);
    take_name();
  }
}

void MachineForm::take_notes() {
  Machine changed = document_.machine();
  changed.story = notes_->toPlainText().toStdString();
  // One step of Undo for as long as nothing else is edited.
  document_.edit(std::move(changed), tr("notes on the machine"), QStringLiteral("notes"));
}

void MachineForm::refresh() {
  const Machine& machine = document_.machine();
  if (const QString name = QString::fromStdString(machine.name); name_->text() != name) {
    name_->setText(name);
    name_->setCursorPosition(0);
  }
  if (notes_->toPlainText().toStdString() != machine.story) {
    const QSignalBlocker quiet(notes_);
    notes_->setPlainText(QString::fromStdString(machine.story));
  }
}

} // namespace feedwright
