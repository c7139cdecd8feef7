// SPDX-License-Identifier: GPL-3.0-or-later

// What the mouse does in the drawing: choose, drag carriage, pulley and paper, zoom.

#include "train/figure_editor.h"
#include "train/pulley_move.h"
#include "train/train_view.h"

#include <QApplication>
#include <QMouseEvent>
#include <QToolButton>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>
#include <utility>

namespace feedwright {

void TrainView::mousePressEvent(QMouseEvent* event) {
  pressed_ = event->position();
  moved_ = false;
  if (event->button() == Qt::MiddleButton && has_axis_) {
    drag_ = Drag::paper;
    grip_ = pan_;
    return;
  }
  if (event->button() != Qt::LeftButton || !has_axis_) {
    QWidget::mousePressEvent(event);
    return;
  }
  start_drag(event->position());
  if (const PlannedPart* part = plan().part_at(in_plan(event->position()))) {
    const bool figure = plan().figure_at(in_plan(event->position())) != nullptr;
    const PlannedPart chosen = *part;
    // The form takes the keyboard for a field; a figure here is about to be typed over here.
    choose(chosen.slot, figure || drag_ != Drag::none ? QString() : chosen.member);
    pressed_part_ = true;
  }
}

void TrainView::start_drag(const QPointF& position) {
  const QPointF at = in_plan(position);
  drag_ = Drag::none;
  const BeltLoopDrive* loop = chosen_loop(document_);
  if (train_.loop && loop != nullptr) {
    if (const auto pulley = plan().pulley_at(at, *train_.loop)) {
      drag_ = Drag::pulley;
      pulley_ = *pulley;
      grip_ = pulley_place(*loop, *pulley);
      ++drag_number_;
      return;
    }
  }
  const bool on_carriage = plan().carriage.contains(at) || plan().nut.contains(at);
  if (on_carriage && document_.current() != nullptr) {
    drag_ = Drag::carriage;
    grip_ = QPointF(train_.nut_along, 0.0);
  } else if (plan().part_at(at) == nullptr && zoom_ > 1.0) {
    drag_ = Drag::paper;
    grip_ = pan_;
  }
}

void TrainView::mouseMoveEvent(QMouseEvent* event) {
  if (drag_ == Drag::none || event->buttons() == Qt::NoButton) {
    drag_ = Drag::none;
    show_cursor(event->position());
    return;
  }
  const QPointF way = event->position() - pressed_;
  if (!moved_ && way.manhattanLength() < QApplication::startDragDistance()) {
    return;
  }
  moved_ = true;
  drag_to(event->position());
}

void TrainView::drag_to(const QPointF& position) {
  const QPointF way = position - pressed_;
  if (drag_ == Drag::carriage) {
    setCursor(Qt::SizeHorCursor);
    move_carriage(from_si<Length>((grip_.x() + way.x() / plan().scale) * 1e-3));
  } else if (drag_ == Drag::pulley && plan().loop) {
    pulley_chosen_ = true;
    const double scale = plan().loop->scale;
    move_pulley(document_, pulley_, grip_ + QPointF(way.x(), -way.y()) / scale, drag_number_);
    // A place that changes nothing is no step, but is read out all the same.
    refresh_read_out();
    update();
  } else if (drag_ == Drag::paper) {
    setCursor(Qt::ClosedHandCursor);
    pan_ = grip_ - way;
    keep_pan_within();
    update();
  }
}

void TrainView::mouseReleaseEvent(QMouseEvent* event) {
  if (drag_ == Drag::pulley && !moved_) {
    pulley_chosen_ = true;
    refresh_read_out();
    describe();
  }
  if (std::exchange(pressed_part_, false) && !moved_) {
    emit part_pressed();
  }
  drag_ = Drag::none;
  show_cursor(event->position());
  place_swap_button();
  update();
}

void TrainView::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !has_axis_) {
    return;
  }
  drag_ = Drag::none;
  if (const PlannedFigure* figure = plan().figure_near(in_plan(event->position()))) {
    edit_figure(figure->slot, figure->member);
  }
}

void TrainView::show_cursor(const QPointF& position) {
  if (!has_axis_) {
    return;
  }
  const QPointF at = in_plan(position);
  if (plan().figure_at(at) != nullptr) {
    setCursor(Qt::IBeamCursor);
  } else if (train_.loop && plan().pulley_at(at, *train_.loop)) {
    setCursor(Qt::SizeAllCursor);
  } else if (plan().carriage.contains(at) || plan().nut.contains(at)) {
    setCursor(Qt::SizeHorCursor);
  } else if (plan().part_at(at) != nullptr) {
    setCursor(Qt::PointingHandCursor);
  } else {
    setCursor(zoom_ > 1.0 ? Qt::OpenHandCursor : Qt::ArrowCursor);
  }
}

void TrainView::move_carriage(Length along) {
  if (document_.current() == nullptr) {
    return;
  }
  pulley_chosen_ = false;
  const Length travel = *document_.current_axis()->basics.travel;
  carriages_.insert(axis_key(), std::clamp(along, Length(), travel));
  take_changes();
}

void TrainView::carriage_to_middle() {
  pulley_chosen_ = false;
  carriages_.remove(axis_key());
  take_changes();
}

void TrainView::wheelEvent(QWheelEvent* event) {
  constexpr double notch = 120.0;
  if (event->modifiers().testFlag(Qt::ControlModifier) && has_axis_) {
    zoom_by(std::pow(1.25, event->angleDelta().y() / notch), event->position());
    event->accept();
    return;
  }
  if (zoom_ <= 1.0) {
    event->ignore();
    return;
  }
  constexpr double share = 0.4;
  pan_ -= QPointF(event->angleDelta()) * share;
  keep_pan_within();
  place_swap_button();
  update();
  event->accept();
}

void TrainView::keep_pan_within() {
  const QSizeF over = QSizeF(size()) * (zoom_ - 1.0);
  pan_.setX(std::clamp(pan_.x(), 0.0, std::max(0.0, over.width())));
  pan_.setY(std::clamp(pan_.y(), 0.0, std::max(0.0, over.height())));
}

void TrainView::zoom_by(double factor, const QPointF& about) {
  constexpr double most = 12.0;
  const double wanted = std::clamp(zoom_ * factor, 1.0, most);
  if (wanted == zoom_) {
    return;
  }
  // What lies under the point stays under it: a part by its own size, else by the scale.
  const PlannedPart* part = plan().part_at(in_plan(about));
  const PartSlot slot = part != nullptr ? part->slot : PartSlot::drive;
  const QRectF before = area_of(slot);
  const QPointF share((about.x() - before.left()) / std::max(1.0, before.width()),
                      (about.y() - before.top()) / std::max(1.0, before.height()));
  zoom_ = wanted;
  plan_.reset();
  pan_ = {};
  const QRectF after = area_of(slot);
  pan_ = after.topLeft() + QPointF(share.x() * after.width(), share.y() * after.height()) - about;
  keep_pan_within();
  editor_->hand_in();
  place_swap_button();
  update();
}

void TrainView::show_whole() {
  zoom_ = 1.0;
  pan_ = {};
  plan_.reset();
  editor_->hand_in();
  place_swap_button();
  update();
}

void TrainView::bring_into_view(const QRectF& area) {
  if (zoom_ <= 1.0 || area.isEmpty() || QRectF(rect()).contains(area)) {
    return;
  }
  pan_ += area.center() - QRectF(rect()).center();
  keep_pan_within();
}

} // namespace feedwright
