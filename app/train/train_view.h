// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "train/train_plan.h"

#include <QWidget>

#include <optional>

namespace feedwright {

/// The drive train of the selected axis, drawn to scale. A click, or Tab and Enter, or an arrow
/// key chooses a part.
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

protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  bool focusNextPrevChild(bool next) override;
  bool event(QEvent* event) override;

private:
  void take_changes();
  void take_selection();
  void choose(PartSlot slot, const QString& member);
  /// By `step` along the visited parts; false at either end.
  bool move_focus(int step);
  void describe();
  QString about(PartSlot slot) const;
  QString words_about(PartSlot slot) const;
  QString words_about_transmission() const;
  const TrainPlan& plan();
  TrainOptions options() const;

  MachineDocument& document_;
  TrainGeometry train_;
  std::optional<TrainPlan> plan_;
  QSize planned_size_;
  PartSlot focused_ = PartSlot::drive;
  bool has_axis_ = false;
};

} // namespace feedwright
