// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/quantity_delegate.h"

#include "fields/quantity_edit.h"
#include "units/read_quantity.h"

namespace feedwright {

QuantityDelegate::QuantityDelegate(const FieldInfo& column, QString name, QObject* parent)
    : QStyledItemDelegate(parent), column_(column), name_(std::move(name)) {}

QWidget* QuantityDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                        const QModelIndex&) const {
  auto* edit = new QuantityEdit(column_.kind, column_.unit, parent);
  edit->setAccessibleName(name_);
  edit->setFrame(false);
  auto* delegate = const_cast<QuantityDelegate*>(this); // signals are not const
  connect(edit, &EntryEdit::committed, edit, [delegate, edit](const QString& text, bool same) {
    if (same) {
      edit->show_typed(text);
      emit delegate->commitData(edit);
      emit delegate->closeEditor(edit);
    }
  });
  return edit;
}

void QuantityDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
  auto* edit = static_cast<QuantityEdit*>(editor);
  if (edit->holds_typed()) {
    return;
  }
  const QString text = index.data(Qt::EditRole).toString();
  const auto read =
      read_quantity(text.toStdString(), column_.kind, find_unit(column_.kind, column_.unit));
  edit->show_quantity(text, read ? std::optional(read->value) : std::nullopt);
}

void QuantityDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                    const QModelIndex& index) const {
  const auto* edit = static_cast<QuantityEdit*>(editor);
  if (edit->holds_typed()) {
    model->setData(index, edit->text(), Qt::EditRole);
  }
}

} // namespace feedwright
