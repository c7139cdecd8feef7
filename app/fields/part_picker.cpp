// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/part_picker.h"

#include "fields/wheel_guard.h"

#include <QComboBox>
#include <QCompleter>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QStandardItemModel>

namespace feedwright {

PartPicker::PartPicker(const PartShelf& shelf, PartSlot slot, QWidget* parent)
    : QWidget(parent), shelf_(shelf) {
  auto* layout = new QHBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  box_ = new QComboBox(this);
  box_->setObjectName(QStringLiteral("part_picker"));
  box_->setAccessibleName(tr("Take a part from a list"));
  box_->setEditable(true);
  box_->setInsertPolicy(QComboBox::NoInsert);
  box_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box_->setMaxVisibleItems(20);
  box_->completer()->setFilterMode(Qt::MatchContains);
  box_->completer()->setCompletionMode(QCompleter::PopupCompletion);
  new WheelGuard(box_);
  fill(slot);
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

void PartPicker::fill(PartSlot slot) {
  for (std::size_t i = 0; i < shelf_.parts.size(); ++i) {
    const ShelvedPart& shelved = shelf_.parts[i];
    if (!fits(shelved.part.kind, slot)) {
      continue;
    }
    const QString name = QString::fromStdString(shelved.part.name);
    box_->addItem(shelved.own ? tr("%1 (own list)").arg(name) : name, static_cast<int>(i));
    box_->setItemData(box_->count() - 1, QString::fromStdString(shelved.part.source),
                      Qt::AccessibleDescriptionRole);
  }
  auto* model = qobject_cast<QStandardItemModel*>(box_->model());
  for (const QString& trouble : shelf_.troubles) {
    box_->addItem(trouble, -1);
    if (model != nullptr) {
      model->item(box_->count() - 1)->setEnabled(false);
    }
  }
}

void PartPicker::choose(int index) {
  const int chosen = box_->itemData(index).toInt();
  if (chosen >= 0) {
    emit picked(shelf_.parts[static_cast<std::size_t>(chosen)].part);
  }
}

} // namespace feedwright
