// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/formula_label.h"

#include "text/symbol_text.h"

#include <QApplication>
#include <QPainter>

#include <cmath>

namespace feedwright {

namespace {

constexpr qreal between_lines = 3.0;

} // namespace

FormulaLabel::FormulaLabel(QWidget* parent) : QWidget(parent) {
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void FormulaLabel::show_lines(const QStringList& lines) {
  lines_ = lines;
  setAccessibleName(plain_symbols(lines.join(QStringLiteral("; "))));
  updateGeometry();
  update();
}

int FormulaLabel::heightForWidth(int width) const {
  qreal height = 0.0;
  for (const QString& line : lines_) {
    height += symbols_height(line, font(), width) + between_lines;
  }
  return int(std::ceil(height));
}

QSize FormulaLabel::sizeHint() const {
  constexpr int usual_width = 400;
  return {usual_width, heightForWidth(usual_width)};
}

void FormulaLabel::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  qreal y = 0.0;
  for (const QString& line : lines_) {
    const qreal height = symbols_height(line, font(), width());
    paint_symbols(painter, QRectF(0.0, y, width(), height), line, font(),
                  palette().color(QPalette::WindowText));
    y += height + between_lines;
  }
}

void SymbolDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
  QStyleOptionViewItem bare = option;
  initStyleOption(&bare, index);
  const QString text = bare.text;
  bare.text.clear();
  const QWidget* widget = option.widget;
  QStyle* style = widget != nullptr ? widget->style() : QApplication::style();
  style->drawControl(QStyle::CE_ItemViewItem, &bare, painter, widget);
  const bool selected = (option.state & QStyle::State_Selected) != 0;
  const QColor colour = option.palette.color(selected ? QPalette::HighlightedText : QPalette::Text);
  const qreal height = symbols_height(text, option.font, option.rect.width());
  QRectF place = QRectF(option.rect).adjusted(4.0, 0.0, 0.0, 0.0);
  place.setTop(place.top() + (place.height() - height) / 2.0);
  paint_symbols(*painter, place, text, option.font, colour);
}

} // namespace feedwright
