// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "train/position_text.h"
#include "train/swap_bench.h"
#include "train/train_plan.h"

#include <QHash>
#include <QWidget>

#include <optional>

class QMenu;
class QToolButton;

namespace feedwright {

class FigureEditor;

/// The drive train of the selected axis, drawn to scale. A click, or Tab and Enter, or an arrow
/// key chooses a part; its figures are typed over where they stand, its part is swapped by its
/// menu, the carriage and a loop's pulleys are dragged. Where the carriage stands and how large the
/// drawing is are no part of the machine: they are in no file and no step of Undo.
class TrainView : public QWidget {
  Q_OBJECT
public:
  explicit TrainView(MachineDocument& document, QWidget* parent = nullptr);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

  /// The part the keyboard stands on.
  PartSlot focused_part() const { return focused_; }
  /// Where a part is drawn, in the widget's coordinates; empty if it is not.
  QRectF area_of(PartSlot slot);
  /// Where a figure of a part can be typed over; the part itself where its words found no room.
  QRectF area_of_figure(PartSlot slot, const QString& member);
  /// Where a loop's pulley stands in the end view; by its place in the table.
  QPointF place_of_pulley(std::size_t pulley);
  double zoom() const { return zoom_; }
  /// The drawn carriage's place along the travel, if it was moved.
  std::optional<Length> carriage_along() const;
  /// What is read out beside the drawing; empty heading if nothing is.
  const ReadOut& read_out() const { return read_out_; }

  void move_carriage(Length along);
  void carriage_to_middle();
  /// False if the part has no such figure.
  bool edit_figure(PartSlot slot, QString member);
  /// About a point of the widget.
  void zoom_by(double factor, const QPointF& about);
  void show_whole();
  /// As a picture of twice the size and as a vector drawing, both on light paper.
  void copy();
  void show_menu(PartSlot slot, const QPoint& global);

signals:
  /// Clicked, or chosen with the space bar; also the part that is chosen already.
  void part_pressed();

protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  bool focusNextPrevChild(bool next) override;
  bool event(QEvent* event) override;

private:
  enum class Drag { none, carriage, pulley, paper };

  void take_changes();
  void take_selection();
  void forget_if_fresh();
  void choose(PartSlot slot, const QString& member);
  /// By `step` along the visited parts; false at either end.
  bool move_focus(int step);
  void describe();
  void refresh_read_out();
  const TrainPlan& plan();
  TrainOptions options() const;
  QFont drawing_font() const;
  QString axis_key() const;
  QPointF in_plan(const QPointF& point) const { return point + pan_; }
  void keep_pan_within();
  void bring_into_view(const QRectF& area);
  void place_swap_button();
  bool show_tip(QPoint position, QPoint global);

  void start_drag(const QPointF& position);
  void drag_to(const QPointF& position);
  void show_cursor(const QPointF& position);
  bool zoom_key(const QKeyEvent& event);
  bool carriage_key(const QKeyEvent& event);
  bool pulley_key(const QKeyEvent& event);
  bool choosing_key(const QKeyEvent& event);
  bool edit_first_figure(PartSlot slot);
  void step_figure(int step);

  MachineDocument& document_;
  SwapBench swaps_;
  FigureEditor* editor_;
  QToolButton* swap_button_;
  TrainGeometry train_;
  std::optional<TrainPlan> plan_;
  QSize planned_size_;
  PartSlot focused_ = PartSlot::drive;
  bool has_axis_ = false;

  QHash<QString, Length> carriages_; ///< along the travel, by the axis' letter
  std::optional<AtPosition> at_;
  ReadOut read_out_;
  double zoom_ = 1.0;
  QPointF pan_;

  Drag drag_ = Drag::none;
  bool moved_ = false;        ///< since the button went down
  bool pressed_part_ = false; ///< when the button went down
  QPointF pressed_;           ///< in the widget's coordinates
  QPointF grip_;              ///< what was dragged, where it was then, in its own coordinates
  int drag_number_ = 0;       ///< moves of one drag are one step of Undo
  std::size_t pulley_ = 0;
  bool pulley_chosen_ = false;
  QString file_path_;
};

} // namespace feedwright
