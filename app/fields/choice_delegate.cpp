// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/choice_delegate.h"

#include "fields/wheel_guard.h"
#include "text/text_of.h"
#include "text/words.h"

#include <QComboBox>

namespace feedwright {

ChoiceDelegate::ChoiceDelegate(const FieldInfo& column, QObject* parent)
    : QStyledItemDelegate(parent), column_(column) {}

QWidget* ChoiceDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                      const QModelIndex&) const {
  auto* box = new QComboBox(parent);
  box->setAccessibleName(text_of(column_.member));
  new WheelGuard(box);
  for (const std::string_view choice : column_.choices) {
    box->addItem(words::choice_name(column_.member, choice), text_of(choice));
  }
  auto* delegate = const_cast<ChoiceDelegate*>(this); // signals are not const
  connect(box, &QComboBox::activated, box, [delegate, box] {
    emit delegate->commitData(box);
    emit delegate->closeEditor(box);
  });
  return box;
}

void ChoiceDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  auto* box = static_cast<QComboBox*>(editor);
  box->setCurrentIndex(box->findData(index.data(Qt::UserRole)));
}

void ChoiceDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                  const QModelIndex& index) const {
  const auto* box = static_cast<QComboBox*>(editor);
  // One change: the choice first would show the old word for a moment.
  model->setItemData(index,
                     {{Qt::UserRole, box->currentData()}, {Qt::DisplayRole, box->currentText()}});
}

} // namespace feedwright
