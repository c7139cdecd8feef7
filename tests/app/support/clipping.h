// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Whether every visible word has the room it needs.

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QRegularExpression>
#include <QTabBar>
#include <QToolButton>
#include <catch2/catch.hpp>

namespace feedwright::testing {

inline void check_label_not_clipped(const QLabel& label) {
  INFO(label.objectName().toStdString() << " " << label.text().toStdString());
  const int needed =
      label.wordWrap() ? label.heightForWidth(label.width()) : label.sizeHint().height();
  CHECK(needed <= label.height());
  static const QRegularExpression gap(QStringLiteral("\\s+"));
  for (const QString& word : label.text().split(gap)) {
    CHECK(label.fontMetrics().horizontalAdvance(word) <= label.width());
  }
}

/// Labels, buttons, boxes and tabs within the widget.
inline void check_not_clipped(const QWidget& within) {
  for (const auto* box : within.findChildren<QComboBox*>()) {
    if (box->isVisible()) {
      constexpr int frame_and_arrow = 26;
      INFO(box->objectName().toStdString() << " " << box->currentText().toStdString());
      CHECK(box->fontMetrics().horizontalAdvance(box->currentText()) + frame_and_arrow <=
            box->width());
    }
  }
  for (const auto* label : within.findChildren<QLabel*>()) {
    if (label->isVisible() && !label->text().isEmpty()) {
      check_label_not_clipped(*label);
    }
  }
  for (const auto* button : within.findChildren<QAbstractButton*>()) {
    const auto* tool = qobject_cast<const QToolButton*>(button);
    const bool only_icon = tool != nullptr && !tool->icon().isNull() &&
                           tool->toolButtonStyle() == Qt::ToolButtonIconOnly;
    if (button->isVisible() && !button->text().isEmpty() && !only_icon) {
      INFO(button->text().toStdString());
      const QSize words = button->fontMetrics().size(Qt::TextShowMnemonic, button->text());
      CHECK(words.width() <= button->width());
    }
  }
  for (const auto* tabs : within.findChildren<QTabBar*>()) {
    for (int i = 0; tabs->isVisible() && i < tabs->count(); ++i) {
      INFO(tabs->tabText(i).toStdString());
      CHECK(tabs->fontMetrics().horizontalAdvance(tabs->tabText(i)) <= tabs->tabRect(i).width());
    }
  }
}

} // namespace feedwright::testing
