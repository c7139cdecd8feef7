// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/plot_items.h"

#include "studies/word_widths.h"
#include "window/text_measure.h"

namespace feedwright {

namespace {

void dress(QCPItemText& item, const QString& text, const QColor& colour, const QFont& font) {
  item.setText(text);
  item.setColor(colour);
  item.setFont(font);
  item.setPadding(QMargins());
  item.setPositionAlignment(Qt::AlignLeft | Qt::AlignTop);
  item.position->setType(QCPItemPosition::ptAbsolute);
  item.setClipToAxisRect(false);
  // Over every curve and filled region, in whatever order they came.
  item.setLayer(QStringLiteral("axes"));
}

void put_on(QCPAbstractItem& item, QCPAxisRect& rect) {
  for (QCPItemPosition* position : item.positions()) {
    position->setAxes(rect.axis(QCPAxis::atBottom), rect.axis(QCPAxis::atLeft));
    position->setAxisRect(&rect);
  }
  item.setClipAxisRect(&rect);
}

} // namespace

template <class Item>
Item* item_on(QCustomPlot& plot, QCPAxisRect& rect) {
  auto* item = new Item(&plot);
  put_on(*item, rect);
  return item;
}
template QCPItemText* item_on<QCPItemText>(QCustomPlot&, QCPAxisRect&);
template QCPItemLine* item_on<QCPItemLine>(QCustomPlot&, QCPAxisRect&);
template QCPItemRect* item_on<QCPItemRect>(QCustomPlot&, QCPAxisRect&);
template QCPItemStraightLine* item_on<QCPItemStraightLine>(QCustomPlot&, QCPAxisRect&);

QCPItemText* plain_text(QCustomPlot& plot, QCPAxisRect& rect, const QString& text,
                        const QColor& colour, const QFont& font) {
  auto* item = item_on<QCPItemText>(plot, rect);
  dress(*item, text, colour, font);
  return item;
}

HaloText::HaloText(QCustomPlot* plot, const QColor& paper, Ground ground)
    : QCPItemText(plot), paper_(paper), ground_(ground) {}

/// The word itself in the paper's colour, a hair beside its place all round: an outline of the
/// glyphs stroked anew took longer than all the rest of the plot.
void HaloText::draw(QCPPainter* painter) {
  constexpr int through = 150;
  if (of_text_ != text() || of_font_ != font()) {
    of_font_ = font();
    of_text_ = text();
    glyphs_.clear();
    for (const QString& line : of_text_.split(QLatin1Char('\n'))) {
      glyphs_.emplace_back(line).setTextFormat(Qt::PlainText);
      glyphs_.back().prepare({}, of_font_);
    }
  }
  QColor halo = paper_;
  halo.setAlpha(ground_ == Ground::lines ? through : 255);
  painter->save();
  painter->setFont(of_font_);
  painter->setPen(halo);
  const double farthest = ground_ == Ground::covered ? 3.0 : ground_ == Ground::crossed ? 2.0 : 1.0;
  QPointF at = topLeft->pixelPosition();
  for (const QStaticText& line : glyphs_) {
    for (double reach = 1.0; reach <= farthest; reach += 1.0) {
      for (const QPointF& beside : {QPointF(-1, -1), QPointF(0, -1), QPointF(1, -1), QPointF(-1, 0),
                                    QPointF(1, 0), QPointF(-1, 1), QPointF(0, 1), QPointF(1, 1)}) {
        painter->drawStaticText(at + reach * beside, line);
      }
    }
    at.ry() += QFontMetricsF(of_font_).lineSpacing();
  }
  painter->restore();
  QCPItemText::draw(painter);
}

HaloText* halo_text(QCustomPlot& plot, QCPAxisRect& rect, const QString& text, const QColor& colour,
                    const QFont& font, const QColor& paper, Ground ground) {
  auto* item = new HaloText(&plot, paper, ground);
  put_on(*item, rect);
  dress(*item, text, colour, font);
  item->setTextAlignment(Qt::AlignLeft | Qt::AlignTop);
  return item;
}

QCPItemLine* leader_on(QCustomPlot& plot, QCPAxisRect& rect, const QColor& colour) {
  auto* line = item_on<QCPItemLine>(plot, rect);
  line->setPen(QPen(colour, 0.8));
  line->setClipToAxisRect(false);
  line->start->setType(QCPItemPosition::ptAbsolute);
  line->end->setType(QCPItemPosition::ptAbsolute);
  line->setVisible(false);
  return line;
}

QSizeF size_of(const QCPItemText& item) {
  const QStringList lines = item.text().split(QLatin1Char('\n'));
  return {widest_line(lines, item.font()) + 3.0,
          TextMeasure(item.font()).height() * double(lines.size())};
}

double width_of(const QCPItemText& item, const QString& text) {
  return TextMeasure(item.font()).width(text);
}

} // namespace feedwright
