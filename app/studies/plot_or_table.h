// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QSize>

class QAction;
class QToolButton;
class QWidget;

namespace feedwright {

/// Which of the two a study is shown as: the plot, or the table, because somebody wants it or
/// because the plot's names have no room. Its button says what it brings.
class PlotOrTable : public QObject {
  Q_OBJECT
public:
  /// All three live in one holder, which has the keyboard where what is shown has it. `other` is
  /// the action that brings the one not shown.
  PlotOrTable(QWidget& plot, QWidget& table, QAction& other, QToolButton& button, QWidget& holder);

  bool is_table() const { return table_wanted_ || !room_for_plot_; }
  /// The table not only stands in: somebody wants it.
  bool wants_table() const { return table_wanted_; }
  /// For the plot's names; a bare number says nothing.
  bool has_room_for_plot() const { return room_for_plot_; }
  void set_room_for_plot(bool room) { room_for_plot_ = room; }
  /// Of the plot, or of the table in its place.
  QSize room() const;
  void show();

signals:
  void wanted(); ///< the other one

private:
  void name_other();

  QWidget& plot_;
  QWidget& table_;
  QAction& other_;
  QToolButton& button_;
  QWidget& holder_;
  bool table_wanted_ = false;
  bool room_for_plot_ = true;
};

} // namespace feedwright
