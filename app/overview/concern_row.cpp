// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/concern_row.h"

#include "text/machine_words.h"
#include "text/text_of.h"
#include "text/words.h"
#include "window/plain_label.h"
#include "window/style.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>

#include <utility>

namespace feedwright {

TypedAt place_of(const Concern& concern) {
  return TypedAt::answer_to(concern.axis, {concern.kind(), std::string(concern.code()),
                                           std::string(concern.part_name())});
}

ConcernRow::ConcernRow(MachineDocument& document, const QString& key, QWidget* parent)
    : QFrame(parent), document_(document), key_(key) {
  setObjectName(QStringLiteral("concern_") + key);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 2, 0, 2);
  layout->setSpacing(2);
  line_ = new QBoxLayout(QBoxLayout::LeftToRight);
  line_->setSpacing(6);
  text_ = plain_label({}, this);
  text_->setObjectName(QStringLiteral("concern_text_") + key);
  text_->setAlignment(Qt::AlignTop | Qt::AlignLeading);
  line_->addWidget(text_, 1);
  show_ = add_button(QStringLiteral("show"), &ConcernRow::show_place);
  begin_ = add_button(QStringLiteral("answer"), &ConcernRow::begin_answer);
  remove_ = add_button(QStringLiteral("remove_answer"), &ConcernRow::remove);
  auto* buttons = new QHBoxLayout;
  buttons->setSpacing(6);
  for (QPushButton* button : {show_, begin_, remove_}) {
    buttons->addWidget(button, 0, Qt::AlignTop);
  }
  buttons->addStretch();
  line_->addLayout(buttons);
  layout->addLayout(line_);
  answer_ = plain_label({}, this);
  answer_->setObjectName(QStringLiteral("answer_text_") + key);
  answer_->setIndent(fontMetrics().averageCharWidth() * 2);
  layout->addWidget(answer_);
  make_editor();
  layout->addWidget(editor_);
}

bool ConcernRow::is_writing() const {
  return !editor_->isHidden();
}

void ConcernRow::set_inset(bool inset) {
  constexpr int letters = 3;
  const int in = inset ? fontMetrics().averageCharWidth() * letters : 0;
  const QMargins wanted(isRightToLeft() ? 0 : in, 2, isRightToLeft() ? in : 0, 2);
  if (layout()->contentsMargins() != wanted) {
    layout()->setContentsMargins(wanted);
  }
}

/// Below the text where they would leave it no room.
void ConcernRow::fit_buttons() {
  constexpr int least_letters = 30;
  int buttons = 0;
  for (const QPushButton* button : {show_, begin_, remove_}) {
    buttons += button->isHidden() ? 0 : button->sizeHint().width() + line_->spacing();
  }
  const bool below = width() - buttons < least_letters * fontMetrics().averageCharWidth();
  line_->setDirection(below ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void ConcernRow::resizeEvent(QResizeEvent* event) {
  QFrame::resizeEvent(event);
  fit_buttons();
}

QPushButton* ConcernRow::add_button(const QString& name, void (ConcernRow::*act)()) {
  auto* button = new QPushButton(this);
  button->setObjectName(name + QLatin1Char('_') + key_);
  button->setAutoDefault(false);
  connect(button, &QPushButton::clicked, this, act);
  return button;
}

void ConcernRow::make_editor() {
  editor_ = new QFrame(this);
  auto* layout = new QVBoxLayout(editor_);
  layout->setContentsMargins(0, 0, 0, 2);
  layout->setSpacing(2);
  note_ = new QPlainTextEdit(editor_);
  note_->setObjectName(QStringLiteral("answer_note_") + key_);
  note_->setTabChangesFocus(true);
  constexpr int lines = 3;
  note_->setFixedHeight(note_->fontMetrics().lineSpacing() * lines + 12);
  note_->installEventFilter(this);
  layout->addWidget(note_);
  help_ = plain_label({}, editor_);
  help_->setObjectName(QStringLiteral("answer_help_") + key_);
  layout->addWidget(help_);
  auto* buttons = new QHBoxLayout;
  keep_ = add_button(QStringLiteral("keep_answer"), &ConcernRow::keep_answer);
  cancel_ = add_button(QStringLiteral("cancel_answer"), &ConcernRow::end_answer);
  keep_->setText(tr("Keep the answer"));
  cancel_->setText(tr("Cancel"));
  buttons->addWidget(keep_);
  buttons->addWidget(cancel_);
  buttons->addStretch();
  layout->addLayout(buttons);
  editor_->hide();
  connect(note_, &QPlainTextEdit::textChanged, this, &ConcernRow::take_typed);
}

void ConcernRow::show_concern(const Concern& concern) {
  concern_ = concern;
  idle_.reset();
  place_ = place_of(concern);
  update_texts();
  take_pending();
}

void ConcernRow::show_idle(const IdleAnswer& idle) {
  concern_.reset();
  idle_ = idle;
  place_.reset();
  update_texts();
}

void ConcernRow::show_lost(const TypedAt& place) {
  concern_.reset();
  idle_.reset();
  place_ = place;
  update_texts();
  take_pending();
}

void ConcernRow::write_on() {
  note_->setFocus(Qt::OtherFocusReason);
  note_->moveCursor(QTextCursor::End);
}

QString ConcernRow::present_note() const {
  return concern_ && concern_->answer ? QString::fromStdString(concern_->answer->note) : QString();
}

void ConcernRow::take_typed() {
  check_length();
  if (!place_) {
    return;
  }
  const QString typed = note_->toPlainText();
  waits_ = !typed.isEmpty() && typed != present_note();
  waits_ ? document_.pending().keep(*place_, typed) : document_.pending().give_up(*place_);
}

/// What waits is shown, and what was given up elsewhere goes from here too.
void ConcernRow::take_pending() {
  const auto waiting = place_ ? document_.pending().at(*place_) : std::nullopt;
  if (!waiting) {
    if (std::exchange(waits_, false)) {
      editor_->hide();
    }
    return;
  }
  waits_ = true;
  if (note_->toPlainText() != *waiting) {
    const QSignalBlocker quiet(note_);
    note_->setPlainText(*waiting);
  }
  check_length();
  editor_->show();
}

void ConcernRow::give_up() {
  waits_ = false;
  if (place_) {
    document_.pending().give_up(*place_);
  }
}

QWidget* ConcernRow::follow(QWidget* before) {
  for (QWidget* stop :
       std::initializer_list<QWidget*>{show_, begin_, remove_, note_, keep_, cancel_}) {
    if (before != nullptr) {
      setTabOrder(before, stop);
    }
    before = stop;
  }
  return before;
}

void ConcernRow::update_texts() {
  const Machine& machine = document_.machine();
  if (concern_) {
    const QString subject = words::concern_subject(*concern_, machine);
    show_texts(subject,
               tr("%1, %2: %3", "weight, subject, sentence")
                   .arg(words::concern_weight(*concern_), subject,
                        words::concern_text(*concern_, document_.units())),
               concern_->answer ? words::answer_text(*concern_->answer, concern_->actual,
                                                     concern_->allowed, document_.units())
                                : QString());
  } else if (idle_) {
    const QString text = words::idle_answer_text(*idle_, machine);
    show_texts(text, text, {});
  } else if (place_ && place_->answer) {
    const AnsweredThing& thing = *place_->answer;
    const QString subject =
        words::answer_subject(machine, place_->axis_or_machine(), thing.to, thing.code, thing.part);
    show_texts(subject,
               tr("%1 is not found any more, but an answer to it was being written.").arg(subject),
               {});
  }
}

void ConcernRow::show_texts(const QString& subject, const QString& text, const QString& answer) {
  const auto put = [](QLabel& label, const QString& wanted) {
    if (label.text() != wanted) {
      label.setText(wanted);
      label.setAccessibleName(wanted);
    }
  };
  put(*text_, text);
  put(*answer_, answer);
  answer_->setVisible(!answer.isEmpty());
  show_->setText(tr("Show"));
  show_->setVisible(concern_.has_value());
  show_->setAccessibleName(tr("Show %1").arg(subject));
  begin_->setText(answer.isEmpty() ? tr("Answer…") : tr("Change…"));
  begin_->setAccessibleName(tr("Answer %1").arg(subject));
  begin_->setVisible(concern_.has_value());
  remove_->setText(tr("Remove"));
  remove_->setAccessibleName(tr("Remove the answer to %1").arg(subject));
  remove_->setVisible(!answer.isEmpty() || idle_.has_value());
  note_->setAccessibleName(tr("Why it is all right: %1").arg(subject));
  note_->setPlaceholderText(tr("Why it is all right"));
  update_colours();
  fit_buttons();
}

void ConcernRow::update_colours() {
  const Look look = Look::of(palette());
  const bool strong = concern_ && (concern_->grave || concern_->verdict == Verdict::over);
  const QColor wanted = strong ? look.over : look.ink;
  if (text_->palette().color(QPalette::WindowText) != wanted) {
    QPalette colours = text_->palette();
    colours.setColor(QPalette::WindowText, wanted);
    colours.setColor(QPalette::Text, wanted);
    text_->setPalette(colours);
  }
}

void ConcernRow::changeEvent(QEvent* event) {
  QFrame::changeEvent(event);
  if (event->type() == QEvent::PaletteChange && text_ != nullptr) {
    update_colours();
  }
}

void ConcernRow::show_place() {
  if (!concern_) {
    return;
  }
  // The door takes away what this row stands on.
  const Concern there = *concern_;
  emit door_chosen({there.axis.value_or(document_.selection().axis), there.part,
                    text_of(there.member), !there.axis},
                   there.limit);
}

void ConcernRow::begin_answer() {
  emit answer_begun();
  if (editor_->isHidden()) {
    note_->setPlainText(present_note());
    check_length();
    editor_->show();
  }
  note_->setFocus();
}

void ConcernRow::end_answer() {
  editor_->hide();
  begin_->setFocus();
  give_up();
}

void ConcernRow::check_length() {
  const std::size_t length = note_->toPlainText().toStdString().size();
  const bool too_long = length > longest_answer;
  keep_->setEnabled(concern_ && !note_->toPlainText().trimmed().isEmpty() && !too_long);
  if (too_long) {
    help_->setText(tr("This is too long: at most %1 bytes are kept, and it has %2.")
                       .arg(longest_answer)
                       .arg(length));
  } else if (!concern_) {
    help_->setText(tr("There is nothing to answer now. What you wrote stays here until it is found "
                      "again, or until you cancel it."));
  } else if (concern_->grave) {
    help_->setText(tr("An answer makes nothing safer: the caution stays in sight and on the sheet. "
                      "Keep to your local rules, and ask somebody qualified."));
  } else {
    help_->setText(tr("It is kept in the machine's file with the figures as they are now, and "
                      "printed on the sheet."));
  }
}

void ConcernRow::keep_answer() {
  if (!concern_ || !keep_->isEnabled()) {
    return;
  }
  const Concern to = *concern_;
  const QString subject = words::concern_subject(to, document_.machine());
  Machine changed = document_.machine();
  set_answer(answers_of(changed, to.axis),
             answer_to(to, note_->toPlainText().trimmed().toStdString()));
  end_answer();
  document_.edit(std::move(changed), tr("answer to %1").arg(subject));
}

void ConcernRow::remove() {
  const auto axis = concern_ ? concern_->axis : idle_->axis;
  const std::optional<Answer> answer = concern_ ? concern_->answer : idle_->answer;
  if (!answer) {
    return;
  }
  const QString subject = concern_ ? words::concern_subject(*concern_, document_.machine())
                                   : QString::fromStdString(answer->code);
  if (!waits_) {
    editor_->hide();
  }
  Machine changed = document_.machine();
  remove_answer(answers_of(changed, axis), answer->to, answer->code, answer->part);
  document_.edit(std::move(changed), tr("remove the answer to %1").arg(subject));
}

bool ConcernRow::eventFilter(QObject* watched, QEvent* event) {
  if (watched == note_ && event->type() == QEvent::KeyPress) {
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (enter && (key->modifiers() & Qt::ControlModifier) != 0) {
      keep_answer();
      return true;
    }
    if (key->key() == Qt::Key_Escape) {
      end_answer();
      return true;
    }
  }
  return QFrame::eventFilter(watched, event);
}

} // namespace feedwright
