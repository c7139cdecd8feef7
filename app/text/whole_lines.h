// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QStringList>
#include <QTextLayout>

#include <vector>

class QPainter;

namespace feedwright {

/// A text broken into lines of a width, but within no quantity (see with_whole_quantities), and
/// painted with the very letters it was written in: what is searched for or copied on a printed
/// page is found. A word longer than a line is broken; line feeds and line separators end lines.
class WholeLines {
public:
  using Formats = QList<QTextLayout::FormatRange>;

  /// `width` in the font's pixels. Formats are ranges of the text.
  WholeLines(const QString& text, const QFont& font, qreal width, const Formats& formats = {});

  qreal height() const { return height_; }
  /// Lines as they are painted.
  QStringList texts() const;
  /// From the top of the rectangle down, in the painter's pen.
  void paint(QPainter& painter, const QRectF& rect, Qt::Alignment alignment) const;

private:
  struct Line {
    QString text;
    Formats formats;
    qreal top = 0.0;
  };

  QFont font_;
  std::vector<Line> lines_;
  qreal height_ = 0.0;
};

} // namespace feedwright
