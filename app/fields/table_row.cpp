// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/table_row.h"

#include "fields/cell_text.h"
#include "fields/choice_delegate.h"
#include "fields/quantity_delegate.h"
#include "text/text_of.h"
#include "text/words.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QStyle>
#include <QTableWidget>

#include <algorithm>
#include <utility>

namespace feedwright {

namespace {

constexpr std::size_t most_side_by_side = 7; ///< columns, before rows stand upright

void put(QTableWidgetItem& item, const FieldInfo& column, const CellValue& cell) {
  item.setText(cell_text(column, cell));
  const auto* text = std::get_if<std::string>(&cell);
  if (text != nullptr && column.type == FieldType::choice) {
    item.setData(Qt::UserRole, QString::fromStdString(*text));
  }
  const bool number = column.type == FieldType::quantity || column.type == FieldType::count;
  item.setTextAlignment((number ? Qt::AlignRight : Qt::AlignLeading) | Qt::AlignVCenter);
  item.setIcon({});
  item.setToolTip({});
  item.setData(Qt::AccessibleDescriptionRole, {});
}

} // namespace

TableFieldRow::TableFieldRow(const FormContext& context, std::size_t axis, PartSlot slot,
                             const FieldView& field)
    : FieldRow(context, axis, slot, field),
      upright_(field.info.table->columns().size() > most_side_by_side) {}

QWidget* TableFieldRow::make_editor(QWidget& parent) {
  frame_ = new QWidget(&parent);
  auto* layout = new QVBoxLayout(frame_);
  layout->setContentsMargins(0, 0, 0, 0);
  make_table();
  layout->addWidget(table_);
  layout->addLayout(make_buttons());
  frame_->setFocusProxy(table_);
  return frame_;
}

void TableFieldRow::make_table() {
  const int fields = static_cast<int>(columns().size());
  table_ = new QTableWidget(upright_ ? fields : 0, upright_ ? 0 : fields, frame_);
  table_->setObjectName(text_of(field_.info.member));
  table_->setAccessibleName(words::field_name(slot_, field_.info.member));
  name_cells();
  table_->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  table_->verticalHeader()->setVisible(upright_ || !field_.info.table->plain_rows);
  table_->verticalHeader()->setDefaultSectionSize(table_->fontMetrics().height() + 9);
  table_->setTabKeyNavigation(false);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  connect(table_, &QTableWidget::cellChanged, this, &TableFieldRow::take_cell);
  auto* pasting = new QShortcut(QKeySequence::Paste, table_);
  pasting->setContext(Qt::WidgetShortcut);
  connect(pasting, &QShortcut::activated, this, &TableFieldRow::paste);
}

/// Heads with the names of the row's fields, and an editor for each by its type.
void TableFieldRow::name_cells() {
  for (std::size_t c = 0; c < columns().size(); ++c) {
    const FieldInfo& column = columns()[c];
    QAbstractItemDelegate* delegate = nullptr;
    if (column.type == FieldType::choice) {
      delegate = new ChoiceDelegate(column, table_);
    } else if (column.type == FieldType::quantity) {
      delegate = new QuantityDelegate(
          column, words::column_name(slot_, field_.info.member, column.member), table_);
    } else {
      continue;
    }
    const int at = static_cast<int>(c);
    upright_ ? table_->setItemDelegateForRow(at, delegate)
             : table_->setItemDelegateForColumn(at, delegate);
  }
  QHeaderView* across = table_->horizontalHeader();
  if (upright_) {
    across->setDefaultSectionSize(table_->fontMetrics().averageCharWidth() * 15);
    return;
  }
  table_->setHorizontalHeaderLabels(headings());
  constexpr std::size_t fit_side_by_side = 3;
  across->setSectionResizeMode(
      columns().size() <= fit_side_by_side ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
}

QStringList TableFieldRow::headings() const {
  QStringList names;
  for (const FieldInfo& column : columns()) {
    names << words::column_name(slot_, field_.info.member, column.member);
  }
  return names;
}

QLayout* TableFieldRow::make_buttons() {
  auto* buttons = new QHBoxLayout;
  const auto add = [&](const QString& title, const char* name, void (TableFieldRow::*action)()) {
    auto* button = new QPushButton(title, frame_);
    button->setObjectName(text_of(field_.info.member) + QLatin1String(name));
    button->setAccessibleName(
        tr("%1: %2", "button, table").arg(title, words::field_name(slot_, field_.info.member)));
    connect(button, &QPushButton::clicked, this, action);
    buttons->addWidget(button);
    buttons_.push_back(button);
  };
  add(tr("Add"), "_add", &TableFieldRow::add_row);
  add(tr("Remove"), "_remove", &TableFieldRow::remove_row);
  add(tr("Import…"), "_import", &TableFieldRow::import_text);
  buttons->addStretch();
  return buttons;
}

std::vector<QWidget*> TableFieldRow::tab_stops() const {
  std::vector<QWidget*> stops{table_};
  stops.insert(stops.end(), buttons_.begin(), buttons_.end());
  return stops;
}

/// A cell that is being typed into hands its text in when the keyboard leaves it.
void TableFieldRow::hand_in() {
  const QWidget* at = QApplication::focusWidget();
  if (QLineEdit* line = typing()) {
    // Also where another window has the keyboard.
    QAbstractItemDelegate* delegate = table_->itemDelegateForIndex(table_->currentIndex());
    emit delegate->commitData(line);
    emit delegate->closeEditor(line, QAbstractItemDelegate::NoHint);
  } else if (at != nullptr && table_->viewport()->isAncestorOf(at)) {
    table_->setFocus();
  }
  // Kept when the form had to go on, not because it could not be.
  for (const auto& [cell, text] : refused()) {
    if (read(cell, text).error.isEmpty()) {
      take(cell, text);
    }
  }
}

/// The line that stands open over a cell with something typed into it; nothing if there is none.
QLineEdit* TableFieldRow::typing() const {
  if (!table_->isPersistentEditorOpen(table_->currentIndex())) {
    return nullptr;
  }
  const auto lines = table_->viewport()->findChildren<QLineEdit*>();
  return !lines.isEmpty() && lines.constLast()->isModified() ? lines.constLast() : nullptr;
}

/// The item that is being typed over: to change it is to change what is typed.
const QTableWidgetItem* TableFieldRow::typed_into() const {
  return taking_ || typing() == nullptr ? nullptr : table_->currentItem();
}

void TableFieldRow::keep_typed() {
  QLineEdit* line = typing();
  if (line == nullptr) {
    return;
  }
  const QModelIndex at = table_->currentIndex();
  const QString text = line->text();
  emit table_->itemDelegateForIndex(at)->closeEditor(line, QAbstractItemDelegate::NoHint);
  document().pending().keep(place_of(cell_at(at.row(), at.column())), text);
}

int TableFieldRow::shown_rows() const {
  return upright_ ? table_->columnCount() : table_->rowCount();
}

QTableWidgetItem* TableFieldRow::item_at(Cell cell) const {
  const int column = static_cast<int>(cell.column);
  return upright_ ? table_->item(column, cell.row) : table_->item(cell.row, column);
}

int TableFieldRow::row_at_hand() const {
  const int current = upright_ ? table_->currentColumn() : table_->currentRow();
  return current >= 0 && current < shown_rows() ? current : shown_rows() - 1;
}

TypedAt TableFieldRow::place_of(Cell cell) const {
  return TypedAt::cell(place(), cell.row, cell.column);
}

TableFieldRow::Cell TableFieldRow::cell_at(int table_row, int table_column) const {
  return upright_ ? Cell{table_column, static_cast<std::size_t>(table_row)}
                  : Cell{table_row, static_cast<std::size_t>(table_column)};
}

/// The texts typed into cells of this table and not taken.
std::vector<std::pair<TableFieldRow::Cell, QString>> TableFieldRow::refused() const {
  std::vector<std::pair<Cell, QString>> found;
  const TypedAt here = place();
  for (const TypedAt& at : document().pending().places()) {
    const bool is_here = at.axis == here.axis && at.slot == here.slot && at.field() == here.member;
    const auto cell = is_here ? at.row_and_column() : std::nullopt;
    if (cell && cell->second < columns().size()) {
      found.push_back({{cell->first, cell->second}, *document().pending().at(at)});
    }
  }
  return found;
}

TableRows TableFieldRow::rows() const {
  const auto* held = std::get_if<TableRows>(&field_.value);
  return held != nullptr ? *held : TableRows();
}

void TableFieldRow::show_value() {
  const bool was_filling = std::exchange(filling_, true);
  const TableRows shown = rows();
  const int count = static_cast<int>(shown.rows.size());
  if (upright_) {
    // Without a row there is nothing to name.
    table_->setRowCount(count > 0 ? static_cast<int>(columns().size()) : 0);
    table_->setVerticalHeaderLabels(headings());
    table_->setColumnCount(count);
  } else {
    table_->setRowCount(count);
  }
  const QTableWidgetItem* typed = typed_into();
  for (int row = 0; row < count; ++row) {
    for (std::size_t column = 0; column < columns().size(); ++column) {
      QTableWidgetItem& item = made_item({row, column});
      if (&item != typed) {
        put(item, columns()[column], shown.rows[static_cast<std::size_t>(row)][column]);
      }
    }
  }
  show_refused();
  filling_ = was_filling;
  fit_height();
}

/// The cell's item, made if there is none yet.
QTableWidgetItem& TableFieldRow::made_item(Cell cell) {
  QTableWidgetItem* item = item_at(cell);
  if (item == nullptr) {
    item = new QTableWidgetItem;
    const int column = static_cast<int>(cell.column);
    upright_ ? table_->setItem(column, cell.row, item) : table_->setItem(cell.row, column, item);
  }
  return *item;
}

void TableFieldRow::fit_height() {
  constexpr int least_rows = 2;
  constexpr int most_rows = 12;
  const int lines = std::clamp(table_->rowCount(), least_rows, most_rows);
  const bool scrolls = upright_ || columns().size() > 3;
  table_->setFixedHeight(
      table_->horizontalHeader()->sizeHint().height() +
      (lines + (scrolls ? 1 : 0)) * table_->verticalHeader()->defaultSectionSize() + 4);
}

void TableFieldRow::mark_refused(QTableWidgetItem& item, const QString& sentence) {
  item.setIcon(table_->style()->standardIcon(QStyle::SP_MessageBoxWarning));
  item.setToolTip(QStringLiteral("<p>%1</p>").arg(sentence.toHtmlEscaped()));
  item.setData(Qt::AccessibleDescriptionRole, sentence);
}

/// Puts pending texts back into their cells.
void TableFieldRow::show_refused() {
  const QTableWidgetItem* typed = typed_into();
  for (const auto& [cell, text] : refused()) {
    if (QTableWidgetItem* item = item_at(cell); item != nullptr) {
      if (item != typed) {
        item->setText(text);
        const QString error = read(cell, text).error;
        mark_refused(*item, error.isEmpty() ? tr("This was typed and is not taken yet.") : error);
      }
    } else {
      document().pending().give_up(place_of(cell));
    }
  }
}

QString TableFieldRow::refused_text() const {
  const auto waiting = refused();
  return waiting.empty() ? QString() : read(waiting.front().first, waiting.front().second).error;
}

CellReading TableFieldRow::read(Cell cell, const QString& text) const {
  return read_cell(slot_, field_.info.member, columns()[cell.column], text);
}

} // namespace feedwright
