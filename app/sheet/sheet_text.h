// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Text on paper. Lengths are in units of 1/96 inch, whatever the printer; fonts have pixel sizes
// in the same unit and no hinting, so that a line breaks at the same place everywhere.

#include <QFont>
#include <QRectF>
#include <QString>

class QPainter;

namespace feedwright::sheet {

inline constexpr int title_size = 19;
inline constexpr int heading_size = 13;
inline constexpr int body_size = 10;
inline constexpr int small_size = 9;

QFont font(int size, bool bold = false);

struct TextStyle {
  int size = body_size;
  bool bold = false;
  Qt::Alignment alignment = Qt::AlignLeft;
  bool grey = false;
};

/// Height of the text broken into lines of the width, but within no quantity; words longer than a
/// line are broken too.
qreal text_height(const QString& text, const TextStyle& style, qreal width);

/// Paints the text as it is, never as rich text, from the top of the rectangle.
void paint_text(QPainter& painter, const QRectF& rect, const QString& text, const TextStyle& style);

/// One line, shortened in the middle if it is too long.
void paint_line(QPainter& painter, const QRectF& rect, const QString& text, const TextStyle& style);

} // namespace feedwright::sheet
