// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Equations as text: what follows a "_" is set as a subscript. Never rich text.

#include <QColor>
#include <QFont>
#include <QRectF>
#include <QString>

class QPainter;

namespace feedwright {

/// The text without the marks of subscripts, for speaking and copying.
QString plain_symbols(const QString& text);

/// With lowered letters where plain text has them ("xₜ"), else without the marks.
QString lowered_symbols(const QString& text);

/// Height of the text broken into lines of that width.
qreal symbols_height(const QString& text, const QFont& font, qreal width);

void paint_symbols(QPainter& painter, const QRectF& rect, const QString& text, const QFont& font,
                   const QColor& colour);

} // namespace feedwright
