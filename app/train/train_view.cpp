// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/train_view.h"

#include "text/words.h"
#include "train/paint_train.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <iterator>

namespace feedwright {

TrainView::TrainView(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("train_view"));
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAttribute(Qt::WA_OpaquePaintEvent); // paintEvent begins with the paper
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  setAccessibleName(tr("Drive train"));
  connect(&document_, &MachineDocument::changed, this, &TrainView::take_changes);
  connect(&document_, &MachineDocument::selection_changed, this, &TrainView::take_selection);
  take_changes();
  take_selection();
}

QSize TrainView::sizeHint() const {
  return {900, int(least_train_height(fontMetrics().height()) * 1.2)};
}

QSize TrainView::minimumSizeHint() const {
  return {420, int(least_train_height(fontMetrics().height()))};
}

void TrainView::take_changes() {
  plan_.reset();
  has_axis_ = document_.current_axis() != nullptr;
  if (has_axis_) {
    train_ = train_geometry(document_.machine(), document_.selection().axis, document_.current());
  }
  describe();
  update();
}

void TrainView::take_selection() {
  if (focused_ != document_.selection().slot) {
    focused_ = document_.selection().slot;
  }
  take_changes();
}

TrainOptions TrainView::options() const {
  TrainOptions made;
  made.font = font();
  made.units_per_mm = logicalDpiX() / 25.4;
  made.selected = document_.selection().slot;
  if (hasFocus()) {
    made.focused = focused_;
  }
  return made;
}

const TrainPlan& TrainView::plan() {
  if (!plan_ || planned_size_ != size()) {
    constexpr double margin = 8.0;
    const QRectF room = QRectF(rect()).adjusted(margin, margin, -margin, -margin);
    plan_ = plan_train(train_, room, options(), this);
    planned_size_ = size();
  }
  return *plan_;
}

QRectF TrainView::area_of(PartSlot slot) {
  const auto& parts = plan().parts;
  const auto found = std::find_if(parts.begin(), parts.end(),
                                  [slot](const PlannedPart& part) { return part.slot == slot; });
  return found != parts.end() ? found->area : QRectF();
}

void TrainView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const Look look = Look::of(palette());
  painter.fillRect(rect(), look.paper);
  if (has_axis_) {
    paint_train(painter, train_, plan(), look, options());
  }
}

void TrainView::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !has_axis_) {
    QWidget::mousePressEvent(event);
    return;
  }
  if (const PlannedPart* part = plan().part_at(event->position())) {
    choose(part->slot, part->member);
  }
}

void TrainView::mouseMoveEvent(QMouseEvent* event) {
  const bool over_part = has_axis_ && plan().part_at(event->position()) != nullptr;
  setCursor(over_part ? Qt::PointingHandCursor : Qt::ArrowCursor);
}

void TrainView::choose(PartSlot slot, const QString& member) {
  focused_ = slot;
  document_.select({document_.selection().axis, slot, member});
  describe();
  update();
}

bool TrainView::move_focus(int step) {
  const auto* at = std::find(std::begin(visited_parts), std::end(visited_parts), focused_);
  const std::ptrdiff_t next = at - std::begin(visited_parts) + step;
  if (next < 0 || next >= std::ssize(visited_parts)) {
    return false;
  }
  focused_ = visited_parts[next];
  describe();
  update();
  return true;
}

bool TrainView::focusNextPrevChild(bool next) {
  return move_focus(next ? 1 : -1) || QWidget::focusNextPrevChild(next);
}

void TrainView::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
  case Qt::Key_Right:
  case Qt::Key_Down:
    if (move_focus(1)) {
      choose(focused_, {});
    }
    return;
  case Qt::Key_Left:
  case Qt::Key_Up:
    if (move_focus(-1)) {
      choose(focused_, {});
    }
    return;
  case Qt::Key_Return:
  case Qt::Key_Enter:
  case Qt::Key_Space: choose(focused_, {}); return;
  default: QWidget::keyPressEvent(event);
  }
}

void TrainView::focusInEvent(QFocusEvent* event) {
  if (event->reason() == Qt::TabFocusReason) {
    focused_ = *std::begin(visited_parts);
  } else if (event->reason() == Qt::BacktabFocusReason) {
    focused_ = *std::rbegin(visited_parts);
  }
  describe();
  update();
}

void TrainView::focusOutEvent(QFocusEvent*) {
  update();
}

QString TrainView::words_about(PartSlot slot) const {
  switch (slot) {
  case PartSlot::supply: return train_.supply_text;
  case PartSlot::controller: return train_.controller_text;
  case PartSlot::axis: return train_.travel_text;
  case PartSlot::targets: return train_.cut_text;
  case PartSlot::duty: return train_.duty_text;
  case PartSlot::carriage: return train_.carriage_text;
  case PartSlot::guides: return train_.guides_text;
  case PartSlot::sides:
    return train_.opposed_text.isEmpty()
               ? train_.sides_text
               : train_.sides_text + QLatin1Char('\n') + train_.opposed_text;
  case PartSlot::motor: return train_.motor_text;
  case PartSlot::transmission: return words_about_transmission();
  case PartSlot::spindle: return words::part_name(slot);
  case PartSlot::drive: break;
  }
  QStringList said{train_.screw_text};
  if (!train_.nut_text.isEmpty()) {
    said << train_.nut_text;
  }
  said << train_.span_text;
  if (train_.whip) {
    said << train_.whip->text;
  }
  return said.join(QLatin1Char('\n'));
}

QString TrainView::words_about_transmission() const {
  QStringList said{train_.transmission_text};
  if (train_.loop) {
    for (std::size_t i = 0; i < train_.loop->pulleys.size(); ++i) {
      const LoopPulleyDrawing& pulley = train_.loop->pulleys[i];
      said << tr("pulley %1: %2", "number, what it is").arg(i + 1).arg(pulley.text);
    }
    if (train_.loop->belt.isEmpty()) {
      said << tr("The belt does not fit round the pulleys.");
    }
  }
  return said.join(QLatin1Char('\n'));
}

QString TrainView::about(PartSlot slot) const {
  QString text = words_about(slot);
  if (train_.governing && train_.governing->slot == slot) {
    text += QLatin1Char('\n') +
            tr("%1: %2", "what governs: verdict")
                .arg(train_.governing->text, words::verdict_word(train_.governing->verdict));
  }
  return text;
}

void TrainView::describe() {
  if (!has_axis_) {
    setAccessibleDescription(tr("There is no axis."));
    return;
  }
  setAccessibleName(tr("Drive train of %1: %2").arg(train_.title, words::part_name(focused_)));
  setAccessibleDescription(about(focused_).replace(QLatin1Char('\n'), QStringLiteral(", ")));
  QAccessibleEvent event(this, QAccessible::NameChanged);
  QAccessible::updateAccessibility(&event);
}

bool TrainView::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip && has_axis_) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const PlannedPart* part = plan().part_at(QPointF(help->pos()));
    if (part == nullptr) {
      QToolTip::hideText();
      return true;
    }
    const QString text = words::part_name(part->slot) + QLatin1Char('\n') + about(part->slot);
    // Escaped, so that nothing from a file is taken for markup.
    QToolTip::showText(
        help->globalPos(),
        QStringLiteral("<p>%1</p>")
            .arg(text.toHtmlEscaped().replace(QLatin1Char('\n'), QStringLiteral("<br>"))),
        this);
    return true;
  }
  if (event->type() == QEvent::FontChange || event->type() == QEvent::LanguageChange) {
    take_changes();
  }
  return QWidget::event(event);
}

} // namespace feedwright
