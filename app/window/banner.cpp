// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/banner.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QToolButton>

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
  connect(close, &QToolButton::clicked, this, &Banner::be_quiet);
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(10, 3, 6, 3);
  layout->addWidget(label_, 1);
  buttons_ = new QHBoxLayout;
  layout->addLayout(buttons_);
  layout->addWidget(close);
  hide();
}

void Banner::say(const QString& text, const std::vector<Choice>& choices) {
  be_quiet();
  label_->setText(text);
  setAccessibleName(text);
  for (const Choice& choice : choices) {
    auto* button = new QPushButton(choice.text, this);
    button->setObjectName(choice.name);
    buttons_->addWidget(button);
    connect(button, &QPushButton::clicked, this, [this, act = choice.act] {
      // The button goes with the message; what it does comes after.
      QMetaObject::invokeMethod(this, act, Qt::QueuedConnection);
      be_quiet();
    });
  }
  show();
}

void Banner::be_quiet() {
  while (QLayoutItem* item = buttons_->takeAt(0)) {
    item->widget()->deleteLater();
    item->widget()->hide();
    delete item;
  }
  hide();
}

QString Banner::text() const {
  return label_->text();
}

} // namespace feedwright
