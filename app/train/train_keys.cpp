// SPDX-License-Identifier: GPL-3.0-or-later

// What the keyboard does in the drawing, and the menu of a part.

#include "text/words.h"
#include "train/copy_train.h"
#include "train/figure_editor.h"
#include "train/pulley_move.h"
#include "train/swap_menu.h"
#include "train/train_view.h"

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMenu>

#include <algorithm>

namespace feedwright {

void TrainView::keyPressEvent(QKeyEvent* event) {
  if (!has_axis_) {
    QWidget::keyPressEvent(event);
    return;
  }
  const bool menu = event->key() == Qt::Key_Menu ||
                    (event->key() == Qt::Key_F10 && event->modifiers() == Qt::ShiftModifier);
  if (menu) {
    show_menu(focused_, mapToGlobal(area_of(focused_).center().toPoint()));
    return;
  }
  if (event->matches(QKeySequence::Copy)) {
    copy();
    return;
  }
  if (zoom_key(*event) || carriage_key(*event) || pulley_key(*event) || choosing_key(*event)) {
    return;
  }
  QWidget::keyPressEvent(event);
}

bool TrainView::zoom_key(const QKeyEvent& event) {
  if (!event.modifiers().testFlag(Qt::ControlModifier)) {
    return false;
  }
  constexpr double step = 1.25;
  const QPointF about =
      area_of(focused_).isEmpty() ? QRectF(rect()).center() : area_of(focused_).center();
  switch (event.key()) {
  case Qt::Key_Plus:
  case Qt::Key_Equal: zoom_by(step, about); return true;
  case Qt::Key_Minus: zoom_by(1.0 / step, about); return true;
  case Qt::Key_0: show_whole(); return true;
  default: return false;
  }
}

/// Shift and an arrow moves the carriage by a fiftieth of its travel, Home and End to its ends.
bool TrainView::carriage_key(const QKeyEvent& event) {
  if (focused_ != PartSlot::carriage || document_.current() == nullptr) {
    return false;
  }
  const Length travel = *document_.current_axis()->basics.travel;
  const Length along = carriage_along().value_or(Length(travel / 2.0));
  constexpr double share = 0.02;
  const bool shift = event.modifiers().testFlag(Qt::ShiftModifier);
  switch (event.key()) {
  case Qt::Key_Home: move_carriage(Length()); return true;
  case Qt::Key_End: move_carriage(travel); return true;
  case Qt::Key_Left:
    if (shift) {
      move_carriage(along - travel * share);
    }
    return shift;
  case Qt::Key_Right:
    if (shift) {
      move_carriage(along + travel * share);
    }
    return shift;
  default: return false;
  }
}

/// Page keys choose a pulley of a loop, Shift and an arrow moves it by a millimetre.
bool TrainView::pulley_key(const QKeyEvent& event) {
  const BeltLoopDrive* loop = chosen_loop(document_);
  if (focused_ != PartSlot::transmission || loop == nullptr || loop->pulleys.empty()) {
    return false;
  }
  const std::size_t count = loop->pulleys.size();
  const bool page = event.key() == Qt::Key_PageDown || event.key() == Qt::Key_PageUp;
  if (page) {
    const std::size_t step = event.key() == Qt::Key_PageDown ? 1 : count - 1;
    pulley_ = pulley_chosen_ ? (pulley_ + step) % count : 0;
    pulley_chosen_ = true;
    ++drag_number_;
    refresh_read_out();
    describe();
    update();
    return true;
  }
  // The one chosen may be gone since, by a swap or by Undo.
  if (!pulley_chosen_ || pulley_ >= count || !event.modifiers().testFlag(Qt::ShiftModifier)) {
    return false;
  }
  QPointF way;
  switch (event.key()) {
  case Qt::Key_Left: way = {-1.0, 0.0}; break;
  case Qt::Key_Right: way = {1.0, 0.0}; break;
  case Qt::Key_Up: way = {0.0, 1.0}; break;
  case Qt::Key_Down: way = {0.0, -1.0}; break;
  default: return false;
  }
  move_pulley(document_, pulley_, pulley_place(*loop, pulley_) + way, drag_number_);
  return true;
}

bool TrainView::choosing_key(const QKeyEvent& event) {
  switch (event.key()) {
  case Qt::Key_Right:
  case Qt::Key_Down:
    if (move_focus(1)) {
      choose(focused_, {});
    }
    return true;
  case Qt::Key_Left:
  case Qt::Key_Up:
    if (move_focus(-1)) {
      choose(focused_, {});
    }
    return true;
  case Qt::Key_Space:
    choose(focused_, {});
    emit part_pressed();
    return true;
  case Qt::Key_Return:
  case Qt::Key_Enter:
    choose(focused_, {});
    edit_first_figure(focused_);
    return true;
  case Qt::Key_F2: edit_first_figure(focused_); return true;
  case Qt::Key_Escape:
    if (read_out_.heading.isEmpty()) {
      return false;
    }
    carriage_to_middle();
    return true;
  default: return false;
  }
}

bool TrainView::edit_first_figure(PartSlot slot) {
  const auto& figures = plan().figures;
  const auto found = std::ranges::find(figures, slot, &PlannedFigure::slot);
  return found != figures.end() && edit_figure(slot, found->member);
}

/// The member is taken as a copy: it may stand in the plan, which the choice makes anew.
bool TrainView::edit_figure(PartSlot slot, QString member) {
  editor_->hand_in();
  bring_into_view(area_of_figure(slot, member));
  choose(slot, {});
  const QRectF area = area_of_figure(slot, member);
  return editor_->open(document_.selection().axis, slot, member, area);
}

/// To the next figure of the drawing, or the one before; round at either end.
void TrainView::step_figure(int step) {
  const std::vector<PlannedFigure> figures = plan().figures;
  const auto count = std::ssize(figures);
  std::ptrdiff_t at = 0;
  while (at < count &&
         !editor_->was_on(figures[std::size_t(at)].slot, figures[std::size_t(at)].member)) {
    ++at;
  }
  for (std::ptrdiff_t tried = 0; tried < count; ++tried) {
    at = (at + step + count) % count;
    if (edit_figure(figures[std::size_t(at)].slot, figures[std::size_t(at)].member)) {
      return;
    }
  }
  setFocus(Qt::OtherFocusReason);
}

void TrainView::contextMenuEvent(QContextMenuEvent* event) {
  if (!has_axis_) {
    return;
  }
  PartSlot slot = focused_;
  if (event->reason() == QContextMenuEvent::Mouse) {
    if (const PlannedPart* part = plan().part_at(in_plan(event->pos()))) {
      slot = part->slot;
      choose(slot, {});
    }
  }
  show_menu(slot, event->globalPos());
}

void TrainView::show_menu(PartSlot slot, const QPoint& global) {
  if (findChild<QMenu*>(QStringLiteral("train_menu")) != nullptr) {
    return; // the same key asked twice
  }
  editor_->hand_in();
  auto* menu = new QMenu(this);
  menu->setObjectName(QStringLiteral("train_menu"));
  menu->setAttribute(Qt::WA_DeleteOnClose);
  menu->addSection(words::part_name(slot));
  add_swaps(*menu, document_, swaps_, slot);
  menu->addSeparator();
  const auto add = [menu](const char* name, const QString& text, const QKeySequence& keys,
                          auto act) {
    QAction* action = menu->addAction(text);
    action->setObjectName(QString::fromLatin1(name));
    action->setShortcut(keys);
    // Shown for what they teach; the drawing itself hears its keys.
    action->setShortcutContext(Qt::WidgetShortcut);
    connect(action, &QAction::triggered, menu, act);
    return action;
  };
  const auto& figures = plan().figures;
  QAction* edit = add("edit_figure", tr("Type over a figure here"), Qt::Key_F2,
                      [this, slot] { edit_first_figure(slot); });
  edit->setEnabled(std::ranges::find(figures, slot, &PlannedFigure::slot) != figures.end());
  QAction* middle = add("carriage_to_middle", tr("Carriage back to the middle"), Qt::Key_Escape,
                        [this] { carriage_to_middle(); });
  middle->setEnabled(carriage_along().has_value());
  menu->addSeparator();
  add("zoom_in", tr("Larger"), Qt::CTRL | Qt::Key_Plus,
      [this] { zoom_by(1.25, QRectF(rect()).center()); });
  add("zoom_out", tr("Smaller"), Qt::CTRL | Qt::Key_Minus,
      [this] { zoom_by(0.8, QRectF(rect()).center()); });
  add("zoom_whole", tr("The whole drawing"), Qt::CTRL | Qt::Key_0, [this] { show_whole(); });
  menu->addSeparator();
  add("copy_drawing", tr("Copy the drawing"), QKeySequence::Copy, [this] { copy(); });
  menu->popup(global);
}

void TrainView::copy() {
  copy_train(train_, size(), font());
}

} // namespace feedwright
