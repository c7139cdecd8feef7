// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/terms_table.h"

#include "studies/formula_boxes.h"

#include <QApplication>
#include <QHeaderView>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

constexpr int link_role = Qt::UserRole;

/// What leads on is underlined in the colour of links.
class LinkDelegate : public QStyledItemDelegate {
public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override {
    QStyledItemDelegate::initStyleOption(option, index);
    option->textElideMode = Qt::ElideMiddle;
    if (index.data(link_role).toBool()) {
      option->font.setUnderline(true);
      option->palette.setColor(QPalette::Text, option->palette.color(QPalette::Link));
    }
  }
};

} // namespace

TermsTable::TermsTable(QWidget* parent) : QTableWidget(0, column_count, parent) {
  setHorizontalHeaderLabels(
      {tr("symbol"), tr("value"), tr("what it is"), tr("origin"), tr("1 % gives")});
  horizontalHeaderItem(passed_on)->setToolTip(
      tr("By how much the result moves when this figure alone grows by one per cent."));
  verticalHeader()->hide();
  setEditTriggers(QAbstractItemView::NoEditTriggers);
  setSelectionBehavior(QAbstractItemView::SelectRows);
  setSelectionMode(QAbstractItemView::ExtendedSelection);
  setTabKeyNavigation(false);
  setMouseTracking(true);
  setShowGrid(false);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setItemDelegateForColumn(symbol, new SymbolDelegate(this));
  setItemDelegateForColumn(about, new LinkDelegate(this));
  horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  horizontalHeader()->setSectionResizeMode(about, QHeaderView::Stretch);
  horizontalHeader()->setHighlightSections(false);
  setToolTip(tr("Enter, or a click on what a row is about, goes to its field or its working. "
                "Ctrl+C copies rows."));
  set_row_height();
  connect(this, &QTableWidget::cellActivated, this, [this](int row, int) { emit followed(row); });
  connect(this, &QTableWidget::cellClicked, this, [this](int row, int column) {
    const bool chosen_more = QApplication::keyboardModifiers() != Qt::NoModifier;
    if (column == about && !chosen_more && rows_[std::size_t(row)].leads_on()) {
      emit followed(row);
    }
  });
}

void TermsTable::set_row_height() {
  verticalHeader()->setDefaultSectionSize(fontMetrics().height() + fontMetrics().height() / 3);
}

void TermsTable::show_rows(std::vector<TermRow> rows) {
  rows_ = std::move(rows);
  setRowCount(0);
  setRowCount(int(rows_.size()));
  for (int row = 0; row < int(rows_.size()); ++row) {
    const TermRow& shown = rows_[std::size_t(row)];
    const QString cells[] = {shown.symbol, shown.value, shown.about, shown.origin, shown.passed_on};
    for (int column = 0; column < column_count; ++column) {
      auto* item = new QTableWidgetItem(cells[column]);
      if (column == value || column == passed_on) {
        item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      }
      if (column == about) {
        item->setData(link_role, shown.leads_on());
        const QString tip = shown.origin.isEmpty()
                                ? shown.about
                                : QStringLiteral("%1 · %2").arg(shown.about, shown.origin);
        item->setToolTip(QStringLiteral("<p>%1</p>").arg(tip.toHtmlEscaped()));
      }
      setItem(row, column, item);
    }
  }
  updateGeometry();
  setFixedHeight(full_height());
}

int TermsTable::column_need(int column) const {
  return std::max(sizeHintForColumn(column) + 4, horizontalHeader()->sectionSizeHint(column));
}

void TermsTable::align(TermsTable& one, TermsTable& other) {
  int all = one.horizontalHeader()->minimumSectionSize(); // what it is about takes the rest
  for (const int column : {symbol, value, origin, passed_on}) {
    all += std::max(one.column_need(column), other.column_need(column));
  }
  // Where letters are too large for all of them, the tip alone says where a value is from.
  const bool room = all <= one.viewport()->width();
  one.setColumnHidden(origin, !room);
  other.setColumnHidden(origin, !room);
  for (const int column : {symbol, value, origin, passed_on}) {
    const int needed = std::max(one.column_need(column), other.column_need(column));
    one.horizontalHeader()->resizeSection(column, needed);
    other.horizontalHeader()->resizeSection(column, needed);
  }
}

int TermsTable::full_height() const {
  const int head = horizontalHeader()->isHidden() ? 0 : horizontalHeader()->sizeHint().height();
  return head + rowCount() * verticalHeader()->defaultSectionSize() + 2 * frameWidth() + 1;
}

QSize TermsTable::sizeHint() const {
  return {fontMetrics().averageCharWidth() * 60, full_height()};
}

QSize TermsTable::minimumSizeHint() const {
  return {fontMetrics().averageCharWidth() * 24, full_height()};
}

QString TermsTable::as_text() const {
  QStringList lines;
  QStringList heads;
  for (int column = 0; column < column_count; ++column) {
    heads << horizontalHeaderItem(column)->text();
  }
  lines << heads.join(QLatin1Char('\t'));
  for (int row = 0; row < rowCount(); ++row) {
    if (has_chosen_rows() && !selectionModel()->isRowSelected(row)) {
      continue;
    }
    lines << row_text(row);
  }
  return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

QString TermsTable::all_as_text() const {
  QStringList lines;
  for (int row = 0; row < rowCount(); ++row) {
    lines << row_text(row);
  }
  return lines.join(QLatin1Char('\n'));
}

QString TermsTable::row_text(int row) const {
  QStringList cells;
  for (int column = 0; column < column_count; ++column) {
    cells << item(row, column)->text();
  }
  return cells.join(QLatin1Char('\t'));
}

void TermsTable::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange) {
    set_row_height();
    setFixedHeight(full_height());
  }
  QTableWidget::changeEvent(event);
}

void TermsTable::mouseMoveEvent(QMouseEvent* event) {
  const QModelIndex under = indexAt(event->pos());
  const bool link =
      under.isValid() && under.column() == about && rows_[std::size_t(under.row())].leads_on();
  viewport()->setCursor(link ? Qt::PointingHandCursor : Qt::ArrowCursor);
  emit row_pointed_at(under.isValid() ? under.row() : -1);
  QTableWidget::mouseMoveEvent(event);
}

void TermsTable::leaveEvent(QEvent* event) {
  emit row_pointed_at(-1);
  QTableWidget::leaveEvent(event);
}

void SymbolDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
  QStyleOptionViewItem bare = option;
  initStyleOption(&bare, index);
  const std::string symbol = bare.text.toStdString();
  bare.text.clear();
  const QWidget* widget = option.widget;
  QStyle* style = widget != nullptr ? widget->style() : QApplication::style();
  style->drawControl(QStyle::CE_ItemViewItem, &bare, painter, widget);
  const bool selected = (option.state & QStyle::State_Selected) != 0;
  const QColor colour = option.palette.color(selected ? QPalette::HighlightedText : QPalette::Text);
  const FormulaBox box = FormulaBoxes(option.font, nullptr).symbol(symbol, 1.0);
  // All symbols of a column on the baseline of the words beside them.
  const QFontMetricsF metrics(option.font);
  const qreal baseline =
      option.rect.top() + (option.rect.height() - metrics.height()) / 2.0 + metrics.ascent();
  const qreal indent = 6.0;
  const bool mirrored = option.direction == Qt::RightToLeft;
  const qreal x = mirrored ? option.rect.right() - indent - box.width : option.rect.left() + indent;
  paint_formula(*painter, box, QPointF(x, baseline - box.ascent), colour);
}

QSize SymbolDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const std::string symbol = index.data().toString().toStdString();
  const FormulaBox box = FormulaBoxes(option.font, nullptr).symbol(symbol, 1.0);
  return {int(std::ceil(box.width)) + 14, option.fontMetrics.height()};
}

} // namespace feedwright
