// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/table_row.h"

#include "fields/choice_delegate.h"
#include "fields/field_reading.h"
#include "fields/quantity_delegate.h"
#include "fields/table_text.h"
#include "machine/machine_file.h"
#include "text/text_of.h"
#include "text/words.h"

#include <QApplication>
#include <QClipboard>
#include <QFile>
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

QString cell_text(const FieldInfo& column, const CellValue& cell) {
  if (const auto* quantity = std::get_if<AnyQuantity>(&cell)) {
    const Unit* unit = find_unit(quantity->kind, column.unit);
    return QString::fromStdString(write_exact(
        *quantity, unit != nullptr ? *unit : si_unit(quantity->kind), words::decimal_mark()));
  }
  if (const auto* count = std::get_if<std::int64_t>(&cell)) {
    return QString::number(*count);
  }
  const auto* text = std::get_if<std::string>(&cell);
  if (text == nullptr) {
    return {};
  }
  return column.type == FieldType::choice ? words::choice_name(column.member, *text)
                                          : QString::fromStdString(*text);
}

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

/// How many cells each line has.
std::vector<std::size_t> sizes_of(const std::vector<QStringList>& lines) {
  std::vector<std::size_t> sizes;
  sizes.reserve(lines.size());
  for (const QStringList& line : lines) {
    sizes.push_back(static_cast<std::size_t>(line.size()));
  }
  return sizes;
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

/// True if that was a step.
bool TableFieldRow::commit_rows(TableRows rows, const QString& what, TypedMoves moves) {
  Machine changed = document().machine();
  const FieldValue value = rows.rows.empty() ? FieldValue() : FieldValue(std::move(rows));
  if (!set_field(changed, axis_, slot_, field_.info.member, value, {{}, Origin::entered}) ||
      changed == document().machine()) {
    return false;
  }
  document().edit_moving(std::move(changed), what, std::move(moves));
  return true;
}

void TableFieldRow::take_cell(int table_row, int table_column) {
  if (filling_) {
    return;
  }
  const QTableWidgetItem& item = *table_->item(table_row, table_column);
  const Cell cell = cell_at(table_row, table_column);
  const QString held = item.data(Qt::UserRole).toString();
  take(cell,
       columns()[cell.column].type == FieldType::choice && !held.isEmpty() ? held : item.text());
}

void TableFieldRow::take(Cell cell, const QString& text) {
  TableRows changed = rows();
  const auto row = static_cast<std::size_t>(cell.row);
  if (row >= changed.rows.size()) {
    return;
  }
  const bool was_taking = std::exchange(taking_, true);
  const FieldInfo& column = columns()[cell.column];
  CellReading reading = read(cell, text);
  if (reading.error.isEmpty()) {
    document().pending().give_up(place_of(cell));
    CellValue& value = changed.rows[row][cell.column];
    const QString before = cell_text(column, value);
    value = std::move(reading.value);
    const QString what = said_change(column, before, cell_text(column, value));
    commit_rows(std::move(changed), what);
  } else {
    document().pending().keep(place_of(cell), text);
  }
  // Changed or not, the cell shows what it came to.
  refresh();
  taking_ = was_taking;
}

QString TableFieldRow::said_change(const FieldInfo& column, const QString& before,
                                   const QString& after) const {
  const auto shown = [](const QString& text) { return text.isEmpty() ? tr("open") : text; };
  return tr("%1: %2 %3 → %4", "table, column, value before, value after")
      .arg(words::field_name(slot_, field_.info.member),
           words::column_name(slot_, field_.info.member, column.member), shown(before),
           shown(after));
}

void TableFieldRow::add_row() {
  TableRows changed = rows();
  if (changed.rows.size() >= most_table_rows) {
    show_error(tr("A table has at most %1 rows.").arg(most_table_rows));
    return;
  }
  // A row like the last is nearer to what is wanted than a fresh one.
  std::vector<CellValue> next =
      changed.rows.empty() ? field_.info.table->fresh_row() : changed.rows.back();
  if (!changed.rows.empty() && slot_ == PartSlot::motor) {
    // Speeds of a torque curve must rise: a step of 300 rpm on, to type over.
    if (auto* speed = std::get_if<AnyQuantity>(&next.front())) {
      speed->si += 10.0 * pi;
    }
  }
  changed.rows.push_back(std::move(next));
  const int added = static_cast<int>(changed.rows.size()) - 1;
  commit_rows(std::move(changed),
              tr("%1: one more", "table").arg(words::field_name(slot_, field_.info.member)));
  upright_ ? table_->setCurrentCell(0, added) : table_->setCurrentCell(added, 0);
  table_->setFocus();
}

void TableFieldRow::remove_row() {
  TableRows changed = rows();
  const int row = row_at_hand();
  if (row < 0 || row >= static_cast<int>(changed.rows.size())) {
    return;
  }
  changed.rows.erase(changed.rows.begin() + row);
  commit_rows(std::move(changed),
              tr("%1: one less", "table").arg(words::field_name(slot_, field_.info.member)),
              TypedMoves::without_row(place(), row));
}

/// All of them or none: a row with a cell made up would be computed with.
void TableFieldRow::put_cells(TableRows rows, const std::vector<QStringList>& lines,
                              int first_row) {
  auto row = static_cast<std::size_t>(first_row);
  if (row + lines.size() > most_table_rows) {
    show_error(tr("Nothing is taken, for a table has at most %1 rows.").arg(most_table_rows));
    return;
  }
  const TypedAt table = place();
  const TypedMoves over = rows.rows.empty()
                              ? TypedMoves::over_table(table)
                              : TypedMoves::over_cells(table, first_row, sizes_of(lines));
  for (const QStringList& cells : lines) {
    if (row >= rows.rows.size()) {
      rows.rows.push_back(field_.info.table->fresh_row());
    }
    const std::size_t count = std::min(static_cast<std::size_t>(cells.size()), columns().size());
    for (std::size_t column = 0; column < count; ++column) {
      CellReading reading =
          read({static_cast<int>(row), column}, cells[static_cast<qsizetype>(column)]);
      if (!reading.error.isEmpty()) {
        show_error(tr("Nothing is taken, for in row %1: %2").arg(row + 1).arg(reading.error));
        return;
      }
      rows.rows[row][column] = std::move(reading.value);
    }
    ++row;
  }
  if (!commit_rows(
          std::move(rows),
          tr("%1: a table put in", "table").arg(words::field_name(slot_, field_.info.member)),
          over)) {
    // The same values again, but what waited over them is replaced all the same.
    for (const auto& [cell, text] : refused()) {
      if (!over.forth(place_of(cell))) {
        document().pending().give_up(place_of(cell));
      }
    }
  }
  refresh();
}

void TableFieldRow::paste() {
  const int current = upright_ ? table_->currentColumn() : table_->currentRow();
  put_cells(rows(), table_cells(QApplication::clipboard()->text()), std::max(0, current));
}

void TableFieldRow::import_text() {
  const QString path = context_.ask_for_table ? context_.ask_for_table(*frame_) : QString();
  if (path.isEmpty()) {
    return;
  }
  QFile file(path);
  constexpr qint64 largest = 1 << 20;
  if (!file.open(QIODevice::ReadOnly) || file.size() > largest) {
    show_error(tr("%1 cannot be read.").arg(path));
    return;
  }
  const auto lines = table_cells(QString::fromUtf8(file.readAll()));
  if (lines.empty()) {
    show_error(tr("%1 holds no table: wanted are lines of %2 values parted by tabs, semicolons or "
                  "commas.")
                   .arg(path)
                   .arg(columns().size()));
    return;
  }
  put_cells({}, lines, 0);
}

} // namespace feedwright
