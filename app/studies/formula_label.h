// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QStyledItemDelegate>
#include <QWidget>

namespace feedwright {

/// Lines of an equation, with subscripts, wrapped to the width.
class FormulaLabel : public QWidget {
  Q_OBJECT
public:
  explicit FormulaLabel(QWidget* parent = nullptr);

  void show_lines(const QStringList& lines);
  const QStringList& lines() const { return lines_; }

  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;

private:
  QStringList lines_;
};

/// Paints the symbols of a table's column with their subscripts.
class SymbolDelegate : public QStyledItemDelegate {
  Q_OBJECT
public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override;
};

} // namespace feedwright
