// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/field_filter.h"

#include <QEvent>
#include <QShortcut>

#include <algorithm>

namespace feedwright {

FieldFilter::FieldFilter(QWidget* parent) : QLineEdit(parent) {
  setObjectName(QStringLiteral("field_filter"));
  setAccessibleName(tr("Find a field of this part"));
  setToolTip(tr("Find a field (Ctrl+F)"));
  setClearButtonEnabled(true);
  auto* find = new QShortcut(QKeySequence::Find, parent);
  connect(find, &QShortcut::activated, this, [this] {
    setFocus(Qt::ShortcutFocusReason);
    selectAll();
  });
  auto* clear = new QShortcut(QKeySequence(Qt::Key_Escape), this);
  clear->setContext(Qt::WidgetShortcut);
  connect(clear, &QShortcut::activated, this, &QLineEdit::clear);
}

void FieldFilter::resizeEvent(QResizeEvent* event) {
  fit_placeholder();
  QLineEdit::resizeEvent(event);
}

void FieldFilter::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange) {
    fit_placeholder();
  }
  QLineEdit::changeEvent(event);
}

/// With its key where there is room for that.
void FieldFilter::fit_placeholder() {
  const QString texts[] = {tr("Find a field (Ctrl+F)"), tr("Find a field"), tr("Find")};
  constexpr int around = 12; // frame and margins
  const auto* fitting = std::ranges::find_if(texts, [this](const QString& text) {
    return fontMetrics().horizontalAdvance(text) + around <= width();
  });
  setPlaceholderText(fitting != std::end(texts) ? *fitting : QString());
}

} // namespace feedwright
