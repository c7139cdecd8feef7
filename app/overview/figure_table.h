// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A table of figures for reading: each a door to where it comes from, the whole to be copied.

#include "document/machine_document.h"

#include <QAbstractTableModel>
#include <QStringList>
#include <QStyledItemDelegate>
#include <QTableView>

#include <optional>
#include <vector>

namespace feedwright {

/// Where a click or Enter leads.
struct FigureDoor {
  Selection selection;
  std::optional<LimitId> limit; ///< whose working is meant
  friend bool operator==(const FigureDoor&, const FigureDoor&) = default;
};

struct FigureCell {
  std::optional<Verdict> verdict; ///< shown as its sign
  QString text;                   ///< a number in its head's unit, or words
  QString against;                ///< what it is held against
  bool figure = false;            ///< set by its end, so that decimals stand in line
  bool bold = false;
  std::optional<FigureDoor> door;
  friend bool operator==(const FigureCell&, const FigureCell&) = default;
};

struct FigureContent {
  QStringList heads; ///< of the columns, with units where a column has one
  QStringList names; ///< of the rows
  std::vector<std::vector<FigureCell>> rows;
  std::vector<std::optional<FigureDoor>> head_doors;
  /// Figures stand in pairs, reached / wanted, about the middle of their column.
  bool paired = false;
  friend bool operator==(const FigureContent&, const FigureContent&) = default;
};

class FigureModel : public QAbstractTableModel {
  Q_OBJECT
public:
  using QAbstractTableModel::QAbstractTableModel;
  void put(FigureContent content);
  const FigureContent& content() const { return content_; }
  const FigureCell& cell(const QModelIndex& index) const;
  /// Where pairs are parted, as a share of the width; nothing where figures do not stand in pairs.
  std::optional<double> parting() const { return parting_; }
  void set_parting(std::optional<double> share) { parting_ = share; }
  /// Whether each cell says the name of its row, for there is no room for names beside them.
  bool names_inside() const { return names_inside_; }
  void set_names_inside(bool inside) { names_inside_ = inside; }

  int rowCount(const QModelIndex& parent = {}) const override;
  int columnCount(const QModelIndex& parent = {}) const override;
  QVariant data(const QModelIndex& index, int role) const override;
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
  QString spoken(const QModelIndex& index) const;
  FigureContent content_;
  std::optional<double> parting_;
  bool names_inside_ = false;
};

class FigureDelegate : public QStyledItemDelegate {
  Q_OBJECT
public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

/// Names stand before their rows; in a table too narrow for that and its columns, in every cell.
class FigureTable : public QTableView {
  Q_OBJECT
public:
  /// `whole`: as high as its rows, so that it never scrolls by itself.
  FigureTable(const QString& object_name, const QString& spoken_name, bool whole, QWidget* parent);

  void show_content(FigureContent content);
  const FigureContent& content() const { return model_.content(); }
  /// Heads and rows with tabulators between; what is wanted is a line of its own.
  QString tab_separated() const;
  void copy() const;

signals:
  void door_chosen(const feedwright::FigureDoor& door);

protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

private:
  void lay_out();
  /// What a column's figures need, and what its longest words would on one line.
  std::pair<int, int> pair_widths(const FigureCell& cell) const;
  double parting_of_pairs() const;
  int names_width() const;
  int longest_name_word() const;
  bool names_belong_inside(const std::vector<int>& widths) const;
  int room_for_columns() const;
  int fit_names(int needed);
  void make_room_for_names();
  void align_heads();
  int figures_width(int column) const;
  int words_width(int column) const;
  void choose(const QModelIndex& index);

  FigureModel model_;
  bool whole_;
};

} // namespace feedwright
