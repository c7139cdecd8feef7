// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/terms_table.h"

#include "studies/formula_boxes.h"
#include "studies/word_widths.h"
#include "window/letters.h"
#include "window/text_measure.h"

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
constexpr int beside_about = 12; // of its text: what the style keeps free

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
  setHorizontalHeaderLabels(heads());
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

QStringList TermsTable::heads() {
  return {tr("symbol"), tr("value"), tr("what it is"), tr("origin"), tr("1 % gives")};
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
        item->setToolTip(QStringLiteral("<p>%1</p>").arg(tip(shown).toHtmlEscaped()));
      }
      setItem(row, column, item);
    }
  }
  updateGeometry();
  setFixedHeight(full_height());
}

QString TermsTable::tip(const TermRow& row) {
  QStringList said{row.about, row.origin};
  if (!row.passed_on.isEmpty()) {
    said << QStringLiteral("%1 %2").arg(heads()[passed_on], row.passed_on);
  }
  said.removeAll(QString());
  return said.join(QStringLiteral(" · "));
}

/// For its cells, and its head broken between its words.
int TermsTable::column_need(int column) const {
  constexpr int beside_head = 14; // of its text
  const double head = widest_word(heads()[column], horizontalHeader()->font()) + beside_head;
  return std::max(sizeHintForColumn(column) + 4, int(std::ceil(head)));
}

/// For what it is about, broken between its words; a very long one may break too.
int TermsTable::about_need() const {
  constexpr double most = 18.0; // letters
  double widest = widest_word(heads()[about], horizontalHeader()->font());
  for (const TermRow& row : rows_) {
    widest = std::max(widest, widest_word(row.about, font()));
  }
  return int(std::ceil(std::min(widest, most * fontMetrics().averageCharWidth()))) + beside_about;
}

int TermsTable::broken_value_need() const {
  double widest = widest_word(heads()[value], horizontalHeader()->font());
  for (const TermRow& row : rows_) {
    widest = std::max(widest, widest_word(row.value, font()));
  }
  return int(std::ceil(widest)) + beside_about;
}

void TermsTable::align(TermsTable& one, TermsTable& other) {
  const int room = one.viewport()->width();
  std::vector<int> widths(column_count, 0);
  int all = widths[about] = std::max(one.about_need(), other.about_need());
  for (const int column : {symbol, value, origin, passed_on}) {
    widths[std::size_t(column)] = std::max(one.column_need(column), other.column_need(column));
    all += widths[std::size_t(column)];
  }
  for (const int column : {origin, passed_on}) {
    const bool hidden = all > room;
    all -= hidden ? widths[std::size_t(column)] : 0;
    one.setColumnHidden(column, hidden);
    other.setColumnHidden(column, hidden);
  }
  if (all > room) { // the unit under its number
    all -= widths[value];
    widths[value] = std::max(one.broken_value_need(), other.broken_value_need());
    all += widths[value];
  }
  widths[about] =
      std::max(one.horizontalHeader()->minimumSectionSize(), widths[about] + room - all);
  one.fit_to(widths);
  other.fit_to(widths);
}

/// Heads and what a row is about break where they are wider than their columns.
void TermsTable::fit_to(const std::vector<int>& widths) {
  QStringList shown;
  for (int column = 0; column < column_count; ++column) {
    const int wide = widths[std::size_t(column)];
    if (column != about) { // which takes the rest
      horizontalHeader()->resizeSection(column, wide);
    }
    shown << broken(heads()[column], horizontalHeader()->font(), wide - 8).join(QLatin1Char('\n'));
  }
  setHorizontalHeaderLabels(shown);
  const auto lines = [&](const QString& text, int wide) {
    const int room = wide - beside_about + 2;
    return TextMeasure(font()).width(text) > room ? int(broken(text, font(), room).size()) : 1;
  };
  const int line = fontMetrics().height();
  for (int row = 0; row < rowCount(); ++row) {
    const TermRow& each = rows_[std::size_t(row)];
    const int most = std::max(lines(each.about, widths[about]), lines(each.value, widths[value]));
    setRowHeight(row, most * line + line / 3);
  }
  updateGeometries(); // the heads have another height
  updateGeometry();
  setFixedHeight(full_height());
}

int TermsTable::full_height() const {
  const int head = horizontalHeader()->isHidden() ? 0 : horizontalHeader()->sizeHint().height();
  return head + verticalHeader()->length() + 2 * frameWidth() + 1;
}

QSize TermsTable::sizeHint() const {
  return {fontMetrics().averageCharWidth() * 60, full_height()};
}

QSize TermsTable::minimumSizeHint() const {
  return {fontMetrics().averageCharWidth() * 24, full_height()};
}

QString TermsTable::as_text() const {
  QStringList lines;
  lines << heads().join(QLatin1Char('\t'));
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

void TermsTable::resizeEvent(QResizeEvent* event) {
  QTableWidget::resizeEvent(event);
  if (event->size().width() != event->oldSize().width()) {
    emit width_changed();
  }
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
