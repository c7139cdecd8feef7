// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_text.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>

namespace feedwright::sheet {

namespace {

/// Breaks the text into lines; gives the height they take.
qreal break_lines(QTextLayout& layout, const TextStyle& style, qreal width) {
  QTextOption option(style.alignment);
  option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
  layout.setTextOption(option);
  qreal height = 0.0;
  layout.beginLayout();
  for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
    line.setLineWidth(width);
    line.setPosition(QPointF(0.0, height));
    height += line.height();
  }
  layout.endLayout();
  return height;
}

QString with_line_separators(QString text) {
  return text.replace(QLatin1Char('\n'), QChar::LineSeparator);
}

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
  QTextLayout layout(with_line_separators(text), font(style.size, style.bold));
  return break_lines(layout, style, width);
}

void paint_text(QPainter& painter, const QRectF& rect, const QString& text,
                const TextStyle& style) {
  QTextLayout layout(with_line_separators(text), font(style.size, style.bold), painter.device());
  break_lines(layout, style, rect.width());
  painter.setPen(ink(style));
  layout.draw(&painter, rect.topLeft());
}

void paint_line(QPainter& painter, const QRectF& rect, const QString& text,
                const TextStyle& style) {
  const QFontMetricsF metrics(font(style.size, style.bold));
  QString line = text;
  line.replace(QLatin1Char('\n'), QLatin1Char(' '));
  paint_text(painter, rect, metrics.elidedText(line, Qt::ElideMiddle, rect.width()), style);
}

} // namespace feedwright::sheet
