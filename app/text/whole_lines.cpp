// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/whole_lines.h"

#include "text/whole_quantities.h"

#include <QPainter>

#include <algorithm>

namespace feedwright {

namespace {

constexpr QChar word_joiner(0x2060);

/// The text held together where no line may end, and where each of its letters was before.
struct Held {
  QString text;
  std::vector<qsizetype> was; ///< of each letter and of the end

  explicit Held(const QString& before) : text(with_whole_quantities(before)) {
    qsizetype at = 0;
    for (const QChar letter : text) {
      was.push_back(at);
      at += letter == word_joiner ? 0 : 1;
    }
    was.push_back(at);
  }

  WholeLines::Formats moved(const WholeLines::Formats& formats) const {
    WholeLines::Formats made;
    for (QTextLayout::FormatRange range : formats) {
      const auto begin = std::ranges::lower_bound(was, range.start);
      const auto end = std::ranges::lower_bound(was, range.start + range.length);
      range.start = int(begin - was.begin());
      range.length = int(end - begin);
      made.append(range);
    }
    return made;
  }
};

/// Those of the formats that touch a stretch, counted from where it begins.
WholeLines::Formats within(const WholeLines::Formats& formats, qsizetype start, qsizetype length) {
  WholeLines::Formats made;
  for (QTextLayout::FormatRange range : formats) {
    const qsizetype first = std::max<qsizetype>(range.start, start);
    const qsizetype last = std::min<qsizetype>(range.start + range.length, start + length);
    if (first < last) {
      range.start = int(first - start);
      range.length = int(last - first);
      made.append(range);
    }
  }
  return made;
}

void break_up(QTextLayout& layout, qreal width) {
  QTextOption option;
  option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
  layout.setTextOption(option);
  layout.beginLayout();
  for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
    line.setLineWidth(width);
  }
  layout.endLayout();
}

/// One line, as wide as it is; gives its height.
qreal lay_out_line(QTextLayout& layout, const WholeLines::Formats& formats, Qt::Alignment alignment,
                   qreal width) {
  QTextOption option(alignment);
  option.setWrapMode(QTextOption::NoWrap);
  layout.setTextOption(option);
  layout.setFormats(formats);
  layout.beginLayout();
  QTextLine line = layout.createLine();
  line.setLineWidth(width);
  line.setPosition(QPointF());
  layout.endLayout();
  return line.height();
}

qsizetype length_to_paint(QStringView line) {
  while (!line.isEmpty() &&
         (line.back() == QLatin1Char(' ') || line.back() == QChar::LineSeparator)) {
    line.chop(1);
  }
  return line.size();
}

} // namespace

WholeLines::WholeLines(const QString& text, const QFont& font, qreal width, const Formats& formats)
    : font_(font) {
  QString written = text;
  written.replace(QLatin1Char('\n'), QChar::LineSeparator).remove(word_joiner);
  const Held held(written);
  QTextLayout whole(held.text, font);
  whole.setFormats(held.moved(formats));
  break_up(whole, width);
  for (int i = 0; i < whole.lineCount(); ++i) {
    const QTextLine line = whole.lineAt(i);
    const qsizetype start = held.was[std::size_t(line.textStart())];
    const qsizetype end = held.was[std::size_t(line.textStart()) + std::size_t(line.textLength())];
    const qsizetype length = length_to_paint(QStringView(written).mid(start, end - start));
    lines_.push_back({written.mid(start, length), within(formats, start, length), height_});
    QTextLayout one(lines_.back().text, font);
    height_ += lay_out_line(one, lines_.back().formats, Qt::AlignLeft, width);
  }
}

QStringList WholeLines::texts() const {
  QStringList texts;
  for (const Line& line : lines_) {
    texts << line.text;
  }
  return texts;
}

void WholeLines::paint(QPainter& painter, const QRectF& rect, Qt::Alignment alignment) const {
  for (const Line& line : lines_) {
    QTextLayout layout(line.text, font_, painter.device());
    lay_out_line(layout, line.formats, alignment, rect.width());
    layout.draw(&painter, rect.topLeft() + QPointF(0.0, line.top));
  }
}

} // namespace feedwright
