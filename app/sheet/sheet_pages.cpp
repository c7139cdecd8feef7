// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_pages.h"

#include <QPainter>
#include <QStringList>

namespace feedwright::sheet {

namespace {

constexpr qreal side_margin = 50.0;
constexpr qreal top_margin = 84.0;    // the head stands in it
constexpr qreal bottom_margin = 86.0; // the foot stands in it

} // namespace

Pages::Pages(const QSizeF& paper) : paper_(paper) {}

QRectF Pages::body() const {
  return {side_margin, top_margin, paper_.width() - 2.0 * side_margin,
          paper_.height() - top_margin - bottom_margin};
}

void Pages::begin_page(const QString& subject) {
  subject_ = subject;
  pages_.push_back({{subject}, {}});
  y_ = body().top();
}

void Pages::begin_subject(const QString& subject) {
  if (pages_.empty() || room() < 0.5 * body().height()) {
    begin_page(subject);
    return;
  }
  subject_ = subject;
  pages_.back().subjects << subject;
  const TextStyle style{heading_size + 1, true};
  constexpr qreal apart = 22.0;
  skip(apart);
  place({QRectF(body().left(), y_ - apart / 2.0, body().width(), 1.0),
         [](QPainter& painter, const QRectF& rect) {
           painter.setPen(QPen(Qt::black, 1.2));
           painter.drawLine(rect.topLeft(), rect.topRight());
         },
         {}});
  add(text_height(subject, style, body().width()) + 6.0,
      [subject, style](QPainter& painter, const QRectF& rect) {
        paint_text(painter, rect, subject, style);
      });
}

void Pages::ensure(qreal height) {
  if (room() < height && !is_fresh()) {
    begin_page(QString(subject_));
  }
}

void Pages::add(qreal height, std::function<void(QPainter&, const QRectF&)> paint) {
  ensure(height);
  place({QRectF(body().left(), y_, body().width(), height), std::move(paint), {}});
  y_ += height;
}

void Pages::heading(const QString& text, qreal kept) {
  const TextStyle style{heading_size, true};
  const qreal height = text_height(text, style, body().width()) + 4.0;
  const qreal gap = y_ > body().top() ? 12.0 : 0.0;
  ensure(gap + height + kept);
  if (y_ > body().top()) {
    y_ += gap;
  }
  add(height, [text, style](QPainter& painter, const QRectF& rect) {
    paint_text(painter, rect, text, style);
  });
}

void Pages::paragraph(const QString& text, const TextStyle& style) {
  for (const QString& part : text.split(QLatin1Char('\n'))) {
    add(text_height(part, style, body().width()) + 2.0,
        [part, style](QPainter& painter, const QRectF& rect) {
          paint_text(painter, rect, part, style);
        });
  }
}

} // namespace feedwright::sheet
