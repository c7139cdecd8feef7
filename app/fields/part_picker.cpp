// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/part_picker.h"

#include "fields/wheel_guard.h"
#include "text/words.h"

#include <QComboBox>
#include <QCompleter>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QStandardItemModel>
#include <QTreeView>

#include <algorithm>

namespace feedwright {

namespace {

/// What tells one part from another at a glance, before the rest.
constexpr std::string_view telling[] = {"nominal_diameter",
                                        "lead",
                                        "grade",
                                        "dynamic_rating",
                                        "pitch",
                                        "width",
                                        "allowable_pull",
                                        "rated_pull",
                                        "bearing_thrust_limit",
                                        "holding_torque",
                                        "rated_current",
                                        "rotor_inertia",
                                        "block_rating",
                                        "continuous_torque",
                                        "rated_speed",
                                        "torque_limit",
                                        "stiffness",
                                        "friction",
                                        "specific_force",
                                        "exponent"};

QString figures_of(const ListedPart& part) {
  QStringList figures;
  for (const std::string_view member : telling) {
    for (const ListedValue& value : part.values) {
      if (value.member == member && std::holds_alternative<AnyQuantity>(value.value)) {
        figures << QString::fromStdString(value.text);
      }
    }
  }
  return figures.join(QStringLiteral(" · "));
}

/// A list with columns in place of a combo box's own; wider than the box.
QTreeView* column_view(QWidget* parent) {
  auto* view = new QTreeView(parent);
  view->setRootIsDecorated(false);
  view->setUniformRowHeights(true);
  view->setAllColumnsShowFocus(true);
  view->setSelectionBehavior(QAbstractItemView::SelectRows);
  view->setTextElideMode(Qt::ElideRight);
  view->header()->setStretchLastSection(true);
  return view;
}

/// As wide as the parts' words are, within reason: what tells two parts apart may stand last.
void fit_columns(QTreeView& view, const QAbstractItemModel& parts) {
  constexpr int most_characters = 60;
  const QFontMetrics metrics = view.fontMetrics();
  const int most = most_characters * metrics.averageCharWidth();
  int all = 0;
  for (int column = 0; column < parts.columnCount(); ++column) {
    int needed = 0;
    for (int row = 0; row < parts.rowCount(); ++row) {
      const QString text = parts.index(row, column).data().toString();
      needed = std::max(needed, metrics.horizontalAdvance(text));
    }
    const int width = std::min(needed, most) + 2 * metrics.averageCharWidth() + 6;
    view.setColumnWidth(column, width);
    all += width;
  }
  view.setMinimumWidth(all + 4 * metrics.averageCharWidth());
}

} // namespace

PartPicker::PartPicker(const PartShelf& shelf, PartSlot slot, QWidget* parent)
    : QWidget(parent), shelf_(shelf), slot_(slot) {
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  box_ = new QComboBox(this);
  box_->setObjectName(QStringLiteral("part_picker"));
  box_->setAccessibleName(tr("Take a part from a list"));
  box_->setEditable(true);
  box_->setInsertPolicy(QComboBox::NoInsert);
  box_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box_->setMaxVisibleItems(20);
  new WheelGuard(box_);
  fill();
  auto* list = column_view(box_);
  box_->setView(list);
  fit_columns(*list, *box_->model());
  box_->completer()->setFilterMode(Qt::MatchContains);
  box_->completer()->setCompletionMode(QCompleter::PopupCompletion);
  auto* found = column_view(nullptr);
  found->setObjectName(QStringLiteral("parts_found"));
  box_->completer()->setPopup(found);
  fit_columns(*found, *box_->model());
  box_->setCurrentIndex(-1);
  box_->lineEdit()->setPlaceholderText(tr("Take from a list…"));
  box_->lineEdit()->setAccessibleName(box_->accessibleName());
  layout->addWidget(box_);
  setFocusProxy(box_);
  connect(box_, &QComboBox::activated, this, &PartPicker::choose);
}

bool PartPicker::has_parts() const {
  return box_->count() > 0;
}

void PartPicker::refill() {
  fill(); // the box does away with the list it had
  box_->completer()->setModel(box_->model());
  // A new model takes the columns' widths away.
  for (QAbstractItemView* each : {box_->view(), box_->completer()->popup()}) {
    if (auto* columns = qobject_cast<QTreeView*>(each)) {
      fit_columns(*columns, *box_->model());
    }
  }
  box_->setCurrentIndex(-1);
}

void PartPicker::fill() {
  auto* model = new QStandardItemModel(0, 3, box_);
  model->setHorizontalHeaderLabels({tr("Part"), tr("Figures"), tr("Source")});
  for (std::size_t i = 0; i < shelf_.parts.size(); ++i) {
    const ShelvedPart& shelved = shelf_.parts[i];
    if (!fits(shelved.part.kind, slot_)) {
      continue;
    }
    const QString name = QString::fromStdString(shelved.part.name);
    const QString source = QString::fromStdString(shelved.part.source);
    auto* named = new QStandardItem(shelved.own ? tr("%1 (own list)").arg(name) : name);
    named->setData(static_cast<int>(i), Qt::UserRole);
    named->setData(source, Qt::AccessibleDescriptionRole);
    auto* from = new QStandardItem(source);
    from->setToolTip(QStringLiteral("<p>%1</p>").arg(source.toHtmlEscaped()));
    model->appendRow({named, new QStandardItem(figures_of(shelved.part)), from});
  }
  for (const QString& trouble : shelf_.troubles) {
    auto* said = new QStandardItem(trouble);
    said->setData(-1, Qt::UserRole);
    said->setEnabled(false);
    model->appendRow(said);
  }
  box_->setModel(model);
  box_->setModelColumn(0);
}

void PartPicker::choose(int index) {
  const int chosen = box_->itemData(index).toInt();
  if (chosen >= 0) {
    emit picked(shelf_.parts[static_cast<std::size_t>(chosen)].part);
  }
}

} // namespace feedwright
