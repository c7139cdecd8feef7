// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/plain_label.h"

#include <QLabel>

namespace feedwright {

QLabel* plain_label(const QString& text, QWidget* parent) {
  auto* label = new QLabel(text, parent);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  return label;
}

} // namespace feedwright
