// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/label_writer.h"

#include <QMarginsF>

#include <algorithm>
#include <cmath>
#include <optional>

namespace feedwright {

namespace {

/// So much of a line as is within an area.
std::optional<QLineF> within(const QLineF& line, const QRectF& area) {
  double from = 0.0;
  double to = 1.0;
  const auto cut = [&](double start, double way, double low, double high) {
    if (way == 0.0) {
      return low <= start && start <= high;
    }
    const auto [first, last] = std::minmax({(low - start) / way, (high - start) / way});
    from = std::max(from, first);
    to = std::min(to, last);
    return from <= to;
  };
  const bool any = cut(line.x1(), line.dx(), area.left(), area.right()) &&
                   cut(line.y1(), line.dy(), area.top(), area.bottom());
  return any ? std::optional(QLineF(line.pointAt(from), line.pointAt(to))) : std::nullopt;
}

} // namespace

QSizeF LabelWriter::size_of(const QString& text, bool bold) const {
  QFont font = options_.font;
  font.setBold(bold);
  const QFontMetricsF metrics = bold ? QFontMetricsF(font) : metrics_;
  // Bold is measured on the screen's device; widened to be safe on any other.
  const QSizeF size = metrics_.size(0, text);
  return {bold ? std::max(size.width() * 1.15, metrics.size(0, text).width()) + u(2)
               : size.width() + u(2),
          size.height()};
}

void LabelWriter::take(const QLineF& whole, double beside) {
  // What is out of the drawing, and may be without end, no word could cover.
  const auto inside = within(whole, rect_.adjusted(-beside, -beside, beside, beside));
  if (!inside) {
    return;
  }
  const QLineF& line = *inside;
  const int pieces = std::max(1, int(line.length() / u(8)));
  for (int i = 0; i < pieces; ++i) {
    const QRectF piece(line.pointAt(double(i) / pieces), line.pointAt(double(i + 1) / pieces));
    take(piece.normalized().adjusted(-beside, -beside, beside, beside));
  }
}

void LabelWriter::take_along(const QPainterPath& path) {
  for (const QPolygonF& polygon : path.toSubpathPolygons()) {
    for (qsizetype i = 1; i < polygon.size(); ++i) {
      take(QLineF(polygon[i - 1], polygon[i]), u(2));
    }
  }
}

void LabelWriter::add(const QString& text, const QRectF& area, Tone tone, bool bold,
                      Qt::Alignment alignment) {
  plan_.labels.push_back({text, area, tone, bold, alignment});
}

std::optional<QRectF> LabelWriter::beside(const QString& text, const QRectF& area,
                                          const std::vector<Beside>& sides, Tone tone, bool bold,
                                          double gap) {
  if (text.isEmpty()) {
    return std::nullopt;
  }
  auto rect = placer_.place(area, size_of(text, bold), sides, u(gap));
  if (rect) {
    const bool left_of = rect->right() <= area.left();
    const bool stacked = rect->bottom() <= area.top() || rect->top() >= area.bottom();
    add(text, *rect, tone, bold,
        (stacked   ? Qt::AlignHCenter
         : left_of ? Qt::AlignRight
                   : Qt::AlignLeft) |
            Qt::AlignVCenter);
  }
  return rect;
}

std::optional<QRectF> LabelWriter::anywhere(const QString& text, Tone tone) {
  const QMarginsF apart(u(5), u(1), u(5), u(1));
  const QSizeF size = QRectF(QPointF(), size_of(text)).marginsAdded(apart).size();
  const auto rect = placer_.place_anywhere(size, u(5));
  if (!rect) {
    return std::nullopt;
  }
  add(text, rect->marginsRemoved(apart), tone);
  return rect->marginsRemoved(apart);
}

void LabelWriter::part_word(PartSlot slot, const char* member, const QString& text,
                            const QRectF& area, const std::vector<Beside>& sides) {
  QString broken = text;
  const qsizetype comma = text.indexOf(QLatin1Char(','), text.size() / 3);
  if (comma >= 0) {
    broken.replace(comma, 2, QStringLiteral(",\n"));
  }
  auto rect = beside(text, area, sides, Tone::faint);
  rect = rect ? rect : beside(broken, area, sides, Tone::faint);
  for (const QString& way : {text, broken}) {
    rect = rect ? rect : anywhere(way, Tone::faint);
  }
  if (rect) {
    plan_.parts.push_back({slot, QString::fromLatin1(member), *rect});
  }
}

void LabelWriter::dimension(const DimensionText& text, double from, double to, double height) {
  const auto in_line = [&](const QString& words) {
    QRectF area(QPointF(), size_of(words) + QSizeF(u(8), 0.0));
    area.moveCenter(QPointF((from + to) / 2.0, height));
    return area;
  };
  const auto fits = [&](const QRectF& area) { return area.width() <= to - from - u(20); };
  QRectF area = in_line(text.words);
  if (!fits(area)) {
    area.moveLeft(to + u(6));
  }
  if (area.right() > rect_.right()) {
    area.moveRight(from - u(6));
  }
  QString shown = text.words;
  const double free_from = std::max(plan_.supply.right(), plan_.controller.right()) + u(4);
  if (area.right() <= from && area.left() < free_from) {
    // Room on neither side: its figure alone, or over what it measures, beside the boxes.
    if (fits(in_line(text.figure))) {
      area = in_line(text.figure);
      shown = text.figure;
    } else {
      area.moveRight(rect_.right());
      area.setLeft(std::max(area.left(), free_from));
      shown = metrics_.elidedText(text.words, Qt::ElideRight, std::max(0.0, area.width() - u(8)));
    }
  }
  take(QRectF(from, area.top(), to - from, area.height()).united(area));
  add(shown, area, Tone::faint, false, Qt::AlignCenter);
}

} // namespace feedwright
