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
  pages_.push_back({subject, {}});
  y_ = body().top();
}

void Pages::ensure(qreal height) {
  const bool fresh = y_ <= body().top();
  if (room() < height && !fresh) {
    begin_page(QString(pages_.back().subject));
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
