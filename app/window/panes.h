// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSplitter>

class QStackedWidget;

namespace feedwright {

class RemediesView;

/// The panes of a window, in three columns: the axes; the drawing over the limits and the studies;
/// the fields over what would do. In a window that is low for its letters the middle has no height
/// for three: then the study goes under the fields, and what would do under the axes.
class Panes : public QSplitter {
  Q_OBJECT
public:
  struct Widgets {
    QWidget* axes;
    QWidget* train;
    QWidget* limits;
    QWidget* studies;
    QWidget* machine; ///< in the middle where the whole machine is chosen
    QWidget* fields;
    RemediesView* remedies;
  };
  explicit Panes(const Widgets& widgets);

  /// The whole machine in the middle, or the chosen axis.
  void show_machine(bool machine);
  bool is_low() const { return low_; }

protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void look_at_height();
  void arrange();
  void share_width();
  void share_height();
  void give_remedies(int wanted);

  Widgets widgets_;
  QSplitter* left_ = nullptr;
  QSplitter* middle_ = nullptr;
  QSplitter* right_ = nullptr;
  QStackedWidget* centre_ = nullptr;
  int wanted_by_remedies_ = -1; ///< nothing yet
  bool low_ = false;
  bool machine_ = false;
};

} // namespace feedwright
