// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/card_button.h"

#include "window/style.h"

#include <QKeyEvent>
#include <QPainter>
#include <QStyle>

namespace feedwright {

namespace {

constexpr int padding = 9;
constexpr int wrapping = Qt::TextWordWrap;

} // namespace

CardButton::CardButton(const QString& title, const QString& line, QWidget* parent)
    : QAbstractButton(parent), title_(title) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setAccessibleName(title);
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  set_line(line);
}

void CardButton::set_line(const QString& line) {
  line_ = line;
  setAccessibleDescription(line);
  updateGeometry();
  update();
}

QFont CardButton::title_font() const {
  QFont bold = font();
  bold.setBold(true);
  return bold;
}

int CardButton::heightForWidth(int width) const {
  const QRect room(0, 0, width - 2 * padding, 10'000);
  const int title = QFontMetrics(title_font()).boundingRect(room, wrapping, title_).height();
  const int line =
      line_.isEmpty() ? 0 : fontMetrics().boundingRect(room, wrapping, line_).height() + 2;
  return title + line + 2 * padding;
}

QSize CardButton::sizeHint() const {
  const int width = 40 * fontMetrics().averageCharWidth();
  return {width, heightForWidth(width)};
}

QSize CardButton::minimumSizeHint() const {
  const int width = 20 * fontMetrics().averageCharWidth();
  return {width, fontMetrics().height() + 2 * padding};
}

void CardButton::paintEvent(QPaintEvent* /*event*/) {
  const Look look = Look::of(palette());
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const bool raised = underMouse() || isDown();
  painter.setPen(QPen(raised ? look.accent : look.rule, 1.0));
  painter.setBrush(look.paper);
  painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 3.0, 3.0);
  if (hasFocus()) {
    painter.setPen(QPen(look.accent, 1.0, Qt::DotLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(rect()).adjusted(3.5, 3.5, -3.5, -3.5), 2.0, 2.0);
  }
  QRect room = rect().adjusted(padding, padding, -padding, -padding);
  const int aligned =
      int(QStyle::visualAlignment(layoutDirection(), Qt::AlignLeft | Qt::AlignTop)) | wrapping;
  QRect used;
  painter.setFont(title_font());
  painter.setPen(look.ink);
  painter.drawText(room, aligned, title_, &used);
  room.setTop(used.bottom() + 3);
  painter.setFont(font());
  painter.setPen(look.faint_ink);
  painter.drawText(room, aligned, line_);
}

void CardButton::enterEvent(QEnterEvent* event) {
  update();
  QAbstractButton::enterEvent(event);
}

void CardButton::leaveEvent(QEvent* event) {
  update();
  QAbstractButton::leaveEvent(event);
}

void CardButton::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

} // namespace feedwright
