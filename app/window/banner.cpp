// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/banner.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>

#include <algorithm>

namespace feedwright {

Banner::Banner(QWidget* parent) : QFrame(parent) {
  setObjectName(QStringLiteral("banner"));
  setFrameShape(QFrame::StyledPanel);
  setBackgroundRole(QPalette::Base);
  setAutoFillBackground(true);
  label_ = new QLabel(this);
  label_->setTextFormat(Qt::PlainText);
  label_->setWordWrap(true);
  auto* close = new QToolButton(this);
  close->setObjectName(QStringLiteral("banner_close"));
  close->setText(QStringLiteral("×"));
  close->setAccessibleName(tr("Close this message"));
  close->setToolTip(close->accessibleName());
  close->setAutoRaise(true);
  connect(close, &QToolButton::clicked, this, &Banner::close_message);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(10, 3, 6, 3);
  row_ = new QBoxLayout(QBoxLayout::LeftToRight);
  row_->addWidget(label_, 1);
  buttons_ = new QBoxLayout(QBoxLayout::LeftToRight);
  row_->addLayout(buttons_);
  layout->addLayout(row_, 1);
  layout->addWidget(close, 0, Qt::AlignTop);
  hide();
}

void Banner::say(const QString& text, const std::vector<Choice>& choices, const QString& topic) {
  std::erase_if(messages_, [&](const Message& message) { return message.topic == topic; });
  messages_.push_back({topic, text, choices});
  show_latest();
  QAccessibleEvent told(this, QAccessible::Alert);
  QAccessible::updateAccessibility(&told);
}

void Banner::be_quiet(const QString& topic) {
  const auto gone =
      std::erase_if(messages_, [&](const Message& message) { return message.topic == topic; });
  if (gone > 0) {
    show_latest();
  }
}

void Banner::close_message() {
  if (!messages_.empty()) {
    messages_.pop_back();
  }
  show_latest();
}

void Banner::show_latest() {
  take_buttons();
  if (messages_.empty()) {
    hide();
    return;
  }
  const Message& message = messages_.back();
  label_->setText(message.text);
  setAccessibleName(message.text);
  for (const Choice& choice : message.choices) {
    auto* button = new QPushButton(choice.text, this);
    button->setObjectName(choice.name);
    buttons_->addWidget(button);
    connect(button, &QPushButton::clicked, this, [this, choice, topic = message.topic] {
      // The button goes with the message; what it does comes after.
      QMetaObject::invokeMethod(this, choice.act, Qt::QueuedConnection);
      if (!choice.stays) {
        be_quiet(topic);
      }
    });
  }
  arrange();
  show();
}

void Banner::take_buttons() {
  while (QLayoutItem* item = buttons_->takeAt(0)) {
    if (QWidget* button = item->widget()) {
      button->deleteLater();
      button->hide();
      button->setObjectName({});
    }
    delete item;
  }
}

/// The buttons stand beside a short message and under one that would be squeezed by them.
void Banner::arrange() {
  const int buttons = buttons_->sizeHint().width();
  const int text = label_->fontMetrics().horizontalAdvance(label_->text());
  const bool beside = buttons + std::min(text, width() / 2) + 60 <= width();
  row_->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  buttons_->setAlignment(Qt::AlignVCenter | (beside ? Qt::AlignTrailing : Qt::AlignLeading));
}

void Banner::resizeEvent(QResizeEvent* event) {
  QFrame::resizeEvent(event);
  arrange();
}

bool Banner::speaks_of(const QString& topic) const {
  return std::ranges::any_of(messages_,
                             [&](const Message& message) { return message.topic == topic; });
}

QString Banner::text() const {
  return messages_.empty() ? QString() : messages_.back().text;
}

} // namespace feedwright
