// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/table_row.h"

#include "fields/choice_delegate.h"
#include "fields/table_text.h"
#include "text/text_of.h"
#include "text/words.h"
#include "units/read_quantity.h"

#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QShortcut>
#include <QTableWidget>

#include <algorithm>

namespace feedwright {

namespace {

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

QTableWidgetItem* made_item(const FieldInfo& column, const CellValue& cell) {
  auto* item = new QTableWidgetItem(cell_text(column, cell));
  if (const auto* text = std::get_if<std::string>(&cell);
      text != nullptr && column.type == FieldType::choice) {
    item->setData(Qt::UserRole, QString::fromStdString(*text));
  }
  const bool number = column.type == FieldType::quantity || column.type == FieldType::count;
  item->setTextAlignment((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
  return item;
}

} // namespace

TableFieldRow::TableFieldRow(MachineDocument& document, std::size_t axis, PartSlot slot,
                             const FieldView& field)
    : FieldRow(document, axis, slot, field) {}

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
  table_ = new QTableWidget(0, static_cast<int>(columns().size()), frame_);
  table_->setObjectName(text_of(field_.info.member));
  table_->setAccessibleName(words::field_name(slot_, field_.info.member));
  QStringList headings;
  for (std::size_t c = 0; c < columns().size(); ++c) {
    const FieldInfo& column = columns()[c];
    headings << words::column_name(slot_, field_.info.member, column.member);
    if (column.type == FieldType::choice) {
      table_->setItemDelegateForColumn(static_cast<int>(c), new ChoiceDelegate(column, table_));
    }
  }
  table_->setHorizontalHeaderLabels(headings);
  constexpr std::size_t fit_side_by_side = 3;
  table_->horizontalHeader()->setSectionResizeMode(
      columns().size() <= fit_side_by_side ? QHeaderView::Stretch : QHeaderView::ResizeToContents);
  table_->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  table_->verticalHeader()->setVisible(!field_.info.table->plain_rows);
  table_->verticalHeader()->setDefaultSectionSize(table_->fontMetrics().height() + 9);
  table_->setTabKeyNavigation(false);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  connect(table_, &QTableWidget::cellChanged, this, &TableFieldRow::take_table);
  auto* pasting = new QShortcut(QKeySequence::Paste, table_);
  pasting->setContext(Qt::WidgetShortcut);
  connect(pasting, &QShortcut::activated, this, &TableFieldRow::paste);
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
  };
  add(tr("Add row"), "_add", &TableFieldRow::add_row);
  add(tr("Remove row"), "_remove", &TableFieldRow::remove_row);
  add(tr("Import…"), "_import", &TableFieldRow::import_text);
  buttons->addStretch();
  return buttons;
}

TableRows TableFieldRow::rows() const {
  const auto* held = std::get_if<TableRows>(&field_.value);
  return held != nullptr ? *held : TableRows();
}

void TableFieldRow::show_value() {
  filling_ = true;
  const TableRows shown = rows();
  table_->setRowCount(static_cast<int>(shown.rows.size()));
  for (std::size_t row = 0; row < shown.rows.size(); ++row) {
    for (std::size_t column = 0; column < columns().size(); ++column) {
      table_->setItem(static_cast<int>(row), static_cast<int>(column),
                      made_item(columns()[column], shown.rows[row][column]));
    }
  }
  constexpr int least_rows = 2;
  constexpr int most_rows = 9;
  const int lines = std::clamp(table_->rowCount(), least_rows, most_rows);
  const bool scrolls = columns().size() > 3;
  table_->setFixedHeight(
      table_->horizontalHeader()->sizeHint().height() +
      (lines + (scrolls ? 1 : 0)) * table_->verticalHeader()->defaultSectionSize() + 4);
  filling_ = false;
}

std::optional<CellValue> TableFieldRow::read_cell(int row, std::size_t column) {
  const FieldInfo& about = columns()[column];
  const QTableWidgetItem* item = table_->item(row, static_cast<int>(column));
  const QString text = item != nullptr ? item->text().trimmed() : QString();
  const QString name = words::column_name(slot_, field_.info.member, about.member);
  switch (about.type) {
  case FieldType::choice: {
    const QString held = item != nullptr ? item->data(Qt::UserRole).toString() : QString();
    for (const std::string_view choice : about.choices) {
      if (held == text_of(choice) ||
          (held.isEmpty() &&
           (text == text_of(choice) || text == words::choice_name(about.member, choice)))) {
        return CellValue(std::string(choice));
      }
    }
    show_error(tr("\"%1\" is not a choice for %2.").arg(text, name));
    return std::nullopt;
  }
  case FieldType::count: {
    bool whole = false;
    const qlonglong number = text.toLongLong(&whole);
    if (whole && number >= about.least && number <= about.most) {
      return CellValue(static_cast<std::int64_t>(number));
    }
    show_error(tr("%1 is a whole number from %2 to %3.")
                   .arg(name, QString::number(about.least), QString::number(about.most)));
    return std::nullopt;
  }
  case FieldType::quantity: break;
  default: return CellValue(text.toStdString());
  }
  if (text.isEmpty() && about.presence == Presence::open) {
    return CellValue();
  }
  const auto read =
      read_quantity(text.toStdString(), about.kind, find_unit(about.kind, about.unit));
  if (!read) {
    show_error(words::read_error_text(read.error(), about.unit, slot_, field_.info.member));
    return std::nullopt;
  }
  if (!within(about.bound, read->value.si)) {
    show_error(tr("%1 must be %2, such as %3.", "column, bound, example")
                   .arg(name, words::bound_text(about.bound),
                        words::value_example(about.kind, about.unit)));
    return std::nullopt;
  }
  return CellValue(read->value);
}

void TableFieldRow::take_table() {
  if (filling_) {
    return;
  }
  TableRows taken;
  for (int row = 0; row < table_->rowCount(); ++row) {
    std::vector<CellValue> cells;
    for (std::size_t column = 0; column < columns().size(); ++column) {
      auto cell = read_cell(row, column);
      if (!cell) {
        return;
      }
      cells.push_back(*std::move(cell));
    }
    taken.rows.push_back(std::move(cells));
  }
  commit(taken.rows.empty() ? FieldValue() : FieldValue(std::move(taken)), {{}, Origin::entered});
}

void TableFieldRow::add_row() {
  TableRows changed = rows();
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
  commit(changed, {{}, Origin::entered});
  table_->setCurrentCell(table_->rowCount() - 1, 0);
  table_->setFocus();
}

void TableFieldRow::remove_row() {
  TableRows changed = rows();
  const int row = table_->currentRow() >= 0 ? table_->currentRow() : table_->rowCount() - 1;
  if (row < 0 || row >= static_cast<int>(changed.rows.size())) {
    return;
  }
  changed.rows.erase(changed.rows.begin() + row);
  commit(changed.rows.empty() ? FieldValue() : FieldValue(std::move(changed)),
         {{}, Origin::entered});
}

void TableFieldRow::put_cells(const std::vector<QStringList>& lines, int first_row) {
  filling_ = true;
  int row = first_row;
  for (const QStringList& cells : lines) {
    if (row >= table_->rowCount()) {
      table_->setRowCount(row + 1);
      const auto fresh = field_.info.table->fresh_row();
      for (std::size_t column = 0; column < columns().size(); ++column) {
        table_->setItem(row, static_cast<int>(column), made_item(columns()[column], fresh[column]));
      }
    }
    const int count = std::min(static_cast<int>(cells.size()), table_->columnCount());
    for (int column = 0; column < count; ++column) {
      auto* item = new QTableWidgetItem(cells[column]);
      table_->setItem(row, column, item);
    }
    ++row;
  }
  filling_ = false;
  take_table();
}

void TableFieldRow::paste() {
  put_cells(table_cells(QApplication::clipboard()->text()), std::max(0, table_->currentRow()));
}

void TableFieldRow::import_text() {
  const QString path = ask_for_table_ ? ask_for_table_(*frame_) : QString();
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
  filling_ = true;
  table_->setRowCount(0);
  filling_ = false;
  put_cells(lines, 0);
}

} // namespace feedwright
