// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/field.h"

#include <QStyledItemDelegate>

namespace feedwright {

/// Edits a cell of a choice column with a list of its choices. The cell keeps the choice's own
/// name under Qt::UserRole and shows it in the language's words.
class ChoiceDelegate : public QStyledItemDelegate {
  Q_OBJECT
public:
  ChoiceDelegate(const FieldInfo& column, QObject* parent);

  QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const override;
  void setEditorData(QWidget* editor, const QModelIndex& index) const override;
  void setModelData(QWidget* editor, QAbstractItemModel* model,
                    const QModelIndex& index) const override;

private:
  FieldInfo column_;
};

} // namespace feedwright
