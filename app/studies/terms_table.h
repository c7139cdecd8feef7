// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/results.h"

#include <QStyledItemDelegate>
#include <QTableWidget>

#include <optional>
#include <vector>

namespace feedwright {

/// A figure of a working, and where it leads.
struct TermRow {
  QString symbol; ///< `_` before a subscript
  QString value;
  QString about;
  QString origin;
  QString passed_on; ///< what one per cent on it does; empty if that cannot be said
  std::optional<InputRef> input;
  std::optional<ResultId> result;

  bool leads_on() const { return input || result; }
};

/// Figures with their values and origins, as high as they need. Enter, or a click on what a row is
/// about, follows it; Ctrl+C copies the chosen rows.
class TermsTable : public QTableWidget {
  Q_OBJECT
public:
  explicit TermsTable(QWidget* parent = nullptr);

  void show_rows(std::vector<TermRow> rows);
  const std::vector<TermRow>& rows() const { return rows_; }
  /// The chosen rows, or all where none is, with the columns' heads, tabs between.
  QString as_text() const;
  /// All rows without heads; empty if there is none.
  QString all_as_text() const;
  /// Gives both tables the same columns. Where letters are too large for all of them, those needed
  /// least are left out, and the tip of a row has them.
  static void align(TermsTable& one, TermsTable& other);
  bool has_chosen_rows() const { return selectionModel()->hasSelection(); }

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

signals:
  void followed(int row);
  void row_pointed_at(int row); ///< -1: none
  void width_changed();

protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;

private:
  enum Column { symbol, value, about, origin, passed_on, column_count };
  static QStringList heads();
  void set_row_height();
  int column_need(int column) const;
  int about_need() const;
  int broken_value_need() const;
  void fit_to(const std::vector<int>& widths);
  static QString tip(const TermRow& row);
  int full_height() const;
  QString row_text(int row) const;

  std::vector<TermRow> rows_;
};

/// Paints the symbols of a column with their subscripts.
class SymbolDelegate : public QStyledItemDelegate {
  Q_OBJECT
public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace feedwright
