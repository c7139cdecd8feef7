// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/field_section.h"

#include "window/plain_label.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QToolButton>

namespace feedwright {

FieldSection::FieldSection(const QString& title, const QString& key, QWidget* parent)
    : QWidget(parent), title_(title) {
  setObjectName(key);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  if (!title.isEmpty()) {
    head_ = new QToolButton(this);
    head_->setObjectName(key + QStringLiteral(".head"));
    head_->setText(title);
    head_->setAutoRaise(true);
    head_->setFocusPolicy(Qt::StrongFocus);
    head_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    // A long title gives way before the form does.
    head_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    head_->setMinimumWidth(1);
    QFont bold = head_->font();
    bold.setBold(true);
    head_->setFont(bold);
    const int wedge = fontMetrics().height() * 3 / 4;
    head_->setIconSize({wedge, wedge});
    summary_ = plain_label({}, this);
    summary_->setObjectName(key + QStringLiteral(".summary"));
    summary_->setAlignment(Qt::AlignTrailing | Qt::AlignVCenter);
    summary_->setForegroundRole(QPalette::PlaceholderText);
    auto* line = new QHBoxLayout;
    line->addWidget(head_);
    line->addWidget(summary_, 1);
    layout->addLayout(line);
    head_->installEventFilter(this);
    connect(head_, &QToolButton::clicked, this, [this] {
      set_open(!is_open());
      emit toggled(is_open());
    });
  }
  body_ = new QWidget(this);
  grid_ = new QGridLayout(body_);
  grid_->setContentsMargins(0, 0, 0, 6);
  grid_->setHorizontalSpacing(8);
  grid_->setVerticalSpacing(3);
  layout->addWidget(body_);
  set_open(true);
}

namespace {

/// Whether it would write something, but for Space, which folds.
bool writes(const QKeyEvent& key) {
  const auto commands =
      key.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier);
  // AltGr comes as both.
  const bool command = commands != 0 && commands != (Qt::ControlModifier | Qt::AltModifier);
  return !command && key.key() != Qt::Key_Space && !key.text().isEmpty() &&
         key.text().front().isPrint();
}

} // namespace

bool FieldSection::eventFilter(QObject* watched, QEvent* event) {
  if (watched == head_ && event->type() == QEvent::KeyPress) {
    auto* key = static_cast<QKeyEvent*>(event);
    if (writes(*key)) {
      emit typed(key);
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

QWidget* FieldSection::head() const {
  return head_;
}

bool FieldSection::is_open() const {
  return !body_->isHidden();
}

void FieldSection::set_open(bool open) {
  body_->setVisible(open || head_ == nullptr);
  show_state();
}

void FieldSection::say(const QString& summary) {
  if (summary_ != nullptr && summary_->text() != summary) {
    summary_->setText(summary);
    show_state();
    fit_summary();
  }
}

/// What it holds is told aloud anyway; the title needs the room more.
void FieldSection::fit_summary() {
  if (head_ != nullptr) {
    constexpr int gap = 6;
    summary_->setVisible(head_->sizeHint().width() + gap +
                             summary_->fontMetrics().horizontalAdvance(summary_->text()) <=
                         width());
  }
}

void FieldSection::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit_summary();
}

void FieldSection::show_state() {
  if (head_ == nullptr) {
    return;
  }
  const bool open = is_open();
  head_->setArrowType(open                                   ? Qt::DownArrow
                      : layoutDirection() == Qt::RightToLeft ? Qt::LeftArrow
                                                             : Qt::RightArrow);
  head_->setAccessibleName(open ? tr("%1, open", "section of a form").arg(title_)
                                : tr("%1, closed", "section of a form").arg(title_));
  head_->setAccessibleDescription(summary_->text());
}

} // namespace feedwright
