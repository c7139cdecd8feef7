// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"

#include <QSplitter>

class QShortcut;
class QStackedWidget;
class QTabBar;

namespace feedwright {

class RemediesView;

/// The panes of a window, in three columns: the axes; the drawing over the limits and the studies;
/// the fields over what would do. In a window that is low for its letters the middle has no height
/// for three: then fields and study share the right column behind two tabs, and what would do goes
/// under the axes.
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

  /// The whole machine in the middle, or the chosen axis; and the fields, where one or another part
  /// is chosen and they share their place.
  void show_chosen(const Selection& selection);
  /// The fields, where they share their place with the study.
  void show_fields();
  /// The study, where it shares its place with the fields.
  void show_study();
  /// Brings that pane in sight if it shares its place with another; nothing for others.
  void bring_in_sight(const QString& pane);
  bool is_low() const { return low_; }

protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  QWidget* make_right();
  void share_place();
  void find_a_field();
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
  QTabBar* tabs_ = nullptr;   ///< fields or study, where they share a place
  QShortcut* find_ = nullptr; ///< while the fields, who have one of their own, are not in sight
  Selection chosen_;
  int wanted_by_remedies_ = -1; ///< nothing yet
  bool low_ = false;
};

} // namespace feedwright
