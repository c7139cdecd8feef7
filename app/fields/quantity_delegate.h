// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/field.h"

#include <QString>
#include <QStyledItemDelegate>

namespace feedwright {

/// Edits a cell of a column of quantities in any unit, with the value in each unit at hand.
class QuantityDelegate : public QStyledItemDelegate {
  Q_OBJECT
public:
  /// `name` is what the editor is called to who cannot see the head of the column.
  QuantityDelegate(const FieldInfo& column, QString name, QObject* parent);

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model,
                    const QModelIndex& index) const override;

private:
  FieldInfo column_;
  QString name_;
};

} // namespace feedwright
