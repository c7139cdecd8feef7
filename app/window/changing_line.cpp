// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/changing_line.h"

#include <QEvent>
#include <QLabel>

namespace feedwright {

ChangingLine::ChangingLine(const QString& object_name, QWidget* parent)
    : QWidget(parent), label_(new QLabel(this)) {
  label_->setObjectName(object_name);
  label_->setTextFormat(Qt::PlainText);
  label_->setForegroundRole(QPalette::PlaceholderText);
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

void ChangingLine::show_text(const QString& text) {
  if (text == text_) {
    return;
  }
  text_ = text;
  label_->setAccessibleName(text_);
  label_->setToolTip(text_.isEmpty() ? QString()
                                     : QStringLiteral("<p>%1</p>").arg(text_.toHtmlEscaped()));
  fit();
}

void ChangingLine::fit() {
  label_->setGeometry(rect());
  label_->setText(label_->fontMetrics().elidedText(text_, Qt::ElideRight, width()));
}

QSize ChangingLine::sizeHint() const {
  return {0, label_->fontMetrics().height()};
}

QSize ChangingLine::minimumSizeHint() const {
  return sizeHint();
}

void ChangingLine::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit();
}

void ChangingLine::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange) {
    updateGeometry();
    fit();
  }
}

} // namespace feedwright
