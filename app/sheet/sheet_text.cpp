// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_text.h"

#include "text/whole_lines.h"

#include <QFontMetricsF>
#include <QPainter>

namespace feedwright::sheet {

namespace {

QColor ink(const TextStyle& style) {
  return style.grey ? QColor(0x55, 0x55, 0x55) : Qt::black;
}

} // namespace

QFont font(int size, bool bold) {
  QFont made(QStringList{QStringLiteral("DejaVu Sans"), QStringLiteral("Sans Serif")});
  made.setPixelSize(size);
  made.setHintingPreference(QFont::PreferNoHinting);
  made.setBold(bold);
  return made;
}

qreal text_height(const QString& text, const TextStyle& style, qreal width) {
  return WholeLines(text, font(style.size, style.bold), width).height();
}

void paint_text(QPainter& painter, const QRectF& rect, const QString& text,
                const TextStyle& style) {
  painter.setPen(ink(style));
  WholeLines(text, font(style.size, style.bold), rect.width())
      .paint(painter, rect, style.alignment);
}

void paint_line(QPainter& painter, const QRectF& rect, const QString& text,
                const TextStyle& style) {
  const QFontMetricsF metrics(font(style.size, style.bold));
  QString line = text;
  line.replace(QLatin1Char('\n'), QLatin1Char(' '));
  paint_text(painter, rect, metrics.elidedText(line, Qt::ElideMiddle, rect.width()), style);
}

} // namespace feedwright::sheet
