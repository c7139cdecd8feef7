// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/points_row.h"

#include "text/words.h"
#include "units/read_quantity.h"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QRegularExpression>
#include <QShortcut>
#include <QTableWidget>

#include <cmath>

namespace feedwright {

namespace {

struct ColumnAbout {
  Kind kind;
  const char* unit;
};
constexpr ColumnAbout columns[] = {{Kind::angular_velocity, "rpm"}, {Kind::torque, "N·m"}};

QString cell_text(const AnyQuantity& value, int column) {
  const Unit* unit = find_unit(value.kind, columns[column].unit);
  return QString::fromStdString(write_exact(value, *unit, words::decimal_mark()));
}

} // namespace

PointsRow::PointsRow(MachineDocument& document, std::size_t axis, PartSlot slot,
                     const FieldView& field)
    : FieldRow(document, axis, slot, field) {}

QWidget* PointsRow::make_editor(QWidget& parent) {
  frame_ = new QWidget(&parent);
  auto* layout = new QVBoxLayout(frame_);
  layout->setContentsMargins(0, 0, 0, 0);
  table_ = new QTableWidget(0, 2, frame_);
  table_->setObjectName(QStringLiteral("torque_points"));
  table_->setAccessibleName(words::field_name(slot_, field_.info.member));
  table_->setHorizontalHeaderLabels({tr("speed"), tr("torque")});
  table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  table_->verticalHeader()->hide();
  table_->verticalHeader()->setDefaultSectionSize(table_->fontMetrics().height() + 9);
  table_->setTabKeyNavigation(false);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  connect(table_, &QTableWidget::cellChanged, this, &PointsRow::take_table);
  auto* pasting = new QShortcut(QKeySequence::Paste, table_);
  pasting->setContext(Qt::WidgetShortcut);
  connect(pasting, &QShortcut::activated, this, &PointsRow::paste);
  auto* add = new QPushButton(tr("Add point"), frame_);
  add->setObjectName(QStringLiteral("add_point"));
  connect(add, &QPushButton::clicked, this, &PointsRow::add_point);
  auto* remove = new QPushButton(tr("Remove point"), frame_);
  remove->setObjectName(QStringLiteral("remove_point"));
  connect(remove, &QPushButton::clicked, this, &PointsRow::remove_point);
  auto* buttons = new QHBoxLayout;
  buttons->addWidget(add);
  buttons->addWidget(remove);
  buttons->addStretch();
  layout->addWidget(table_);
  layout->addLayout(buttons);
  frame_->setFocusProxy(table_);
  return frame_;
}

std::vector<TorquePoint> PointsRow::points() const {
  const auto* held = std::get_if<std::vector<TorquePoint>>(&field_.value);
  return held != nullptr ? *held : std::vector<TorquePoint>();
}

void PointsRow::show_value() {
  filling_ = true;
  const auto shown = points();
  table_->setRowCount(static_cast<int>(shown.size()));
  for (int row = 0; row < table_->rowCount(); ++row) {
    const TorquePoint& point = shown[static_cast<std::size_t>(row)];
    const AnyQuantity values[] = {any(point.speed), any(point.torque)};
    for (int column = 0; column < 2; ++column) {
      auto* item = new QTableWidgetItem(cell_text(values[column], column));
      item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      table_->setItem(row, column, item);
    }
  }
  constexpr int least_rows = 3;
  constexpr int most_rows = 9;
  const int rows = std::clamp(table_->rowCount(), least_rows, most_rows);
  table_->setFixedHeight(table_->horizontalHeader()->sizeHint().height() +
                         rows * table_->verticalHeader()->defaultSectionSize() + 4);
  filling_ = false;
}

void PointsRow::take_table() {
  if (filling_) {
    return;
  }
  std::vector<TorquePoint> taken;
  for (int row = 0; row < table_->rowCount(); ++row) {
    double si[2] = {0.0, 0.0};
    for (int column = 0; column < 2; ++column) {
      const QString text = table_->item(row, column) != nullptr
                               ? table_->item(row, column)->text().trimmed()
                               : QString();
      const auto& about = columns[column];
      const auto read =
          read_quantity(text.toStdString(), about.kind, find_unit(about.kind, about.unit));
      if (!read) {
        show_error(words::read_error_text(read.error(), about.unit, slot_, field_.info.member));
        return;
      }
      si[column] = read->value.si;
    }
    taken.push_back({from_si<AngularVelocity>(si[0]), from_si<Torque>(si[1])});
  }
  commit(taken, {{}, Origin::entered});
}

void PointsRow::add_point() {
  auto changed = points();
  TorquePoint next{AngularVelocity(), from_si<Torque>(1.0)};
  if (!changed.empty()) {
    // A step of 300 rpm on, at what the last point gave: a start to type over.
    next = changed.back();
    next.speed += from_si<AngularVelocity>(10.0 * pi);
  }
  changed.push_back(next);
  commit(changed, {{}, Origin::entered});
  table_->setCurrentCell(table_->rowCount() - 1, 0);
  table_->setFocus();
}

void PointsRow::remove_point() {
  auto changed = points();
  const int row = table_->currentRow() >= 0 ? table_->currentRow() : table_->rowCount() - 1;
  if (row < 0 || row >= static_cast<int>(changed.size())) {
    return;
  }
  changed.erase(changed.begin() + row);
  commit(changed, {{}, Origin::entered});
}

void PointsRow::paste() {
  static const QRegularExpression between(QStringLiteral("[\\t;]|  +"));
  const QStringList lines =
      QApplication::clipboard()->text().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
  filling_ = true;
  int row = std::max(0, table_->currentRow());
  for (const QString& line : lines) {
    const QStringList cells = line.trimmed().split(between, Qt::SkipEmptyParts);
    if (cells.size() < 2) {
      continue;
    }
    if (row >= table_->rowCount()) {
      table_->setRowCount(row + 1);
    }
    for (int column = 0; column < 2; ++column) {
      table_->setItem(row, column, new QTableWidgetItem(cells[column].trimmed()));
    }
    ++row;
  }
  filling_ = false;
  take_table();
}

} // namespace feedwright
