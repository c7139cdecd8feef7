// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/ladder_widget.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace feedwright {

LadderWidget::LadderWidget(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void LadderWidget::show_ladder(Ladder ladder) {
  const bool other_rows = ladder.rows.size() != ladder_.rows.size();
  const auto was =
      current_ < ladder_.rows.size() ? std::optional(ladder_.rows[current_].id) : std::nullopt;
  ladder_ = std::move(ladder);
  // The keyboard stays on its limit, wherever it has moved to.
  const auto found = std::find_if(ladder_.rows.begin(), ladder_.rows.end(),
                                  [&](const LadderRow& row) { return row.id == was; });
  current_ = found != ladder_.rows.end() ? std::size_t(found - ladder_.rows.begin()) : 0;
  if (other_rows) {
    hovered_.reset();
    updateGeometry();
  }
  describe();
  update();
}

LadderOptions LadderWidget::options() const {
  LadderOptions made;
  made.font = font();
  if (hasFocus()) {
    made.focused = current_;
  }
  made.hovered = hovered_;
  return made;
}

LadderPlan LadderWidget::plan() const {
  return plan_ladder(ladder_, QRectF(rect()), options(), const_cast<LadderWidget*>(this));
}

QRectF LadderWidget::row_area(std::size_t row) const {
  const LadderPlan made = plan();
  return row < made.rows.size() ? made.rows[row] : QRectF();
}

QSize LadderWidget::sizeHint() const {
  const double height = ladder_height(ladder_, options(), const_cast<LadderWidget*>(this));
  return {600, int(std::ceil(height))};
}

QSize LadderWidget::minimumSizeHint() const {
  return {360, sizeHint().height()};
}

void LadderWidget::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paint_ladder(painter, ladder_, QRectF(rect()), Look::of(palette()), options());
}

std::optional<std::size_t> LadderWidget::row_at(const QPointF& point) const {
  const LadderPlan made = plan();
  for (std::size_t i = 0; i < made.rows.size(); ++i) {
    if (made.rows[i].contains(point)) {
      return i;
    }
  }
  return std::nullopt;
}

void LadderWidget::mousePressEvent(QMouseEvent* event) {
  const auto row = row_at(event->position());
  if (event->button() != Qt::LeftButton || !row) {
    QWidget::mousePressEvent(event);
    return;
  }
  current_ = *row;
  describe();
  update();
  emit row_chosen(ladder_.rows[*row].id);
}

void LadderWidget::mouseMoveEvent(QMouseEvent* event) {
  const auto row = row_at(event->position());
  setCursor(row ? Qt::PointingHandCursor : Qt::ArrowCursor);
  if (row != hovered_) {
    hovered_ = row;
    update();
  }
}

void LadderWidget::leaveEvent(QEvent*) {
  hovered_.reset();
  update();
}

void LadderWidget::keyPressEvent(QKeyEvent* event) {
  const std::size_t count = ladder_.rows.size();
  const int key = event->key();
  if (count > 0 && key == Qt::Key_Down && current_ + 1 < count) {
    ++current_;
  } else if (key == Qt::Key_Up && current_ > 0) {
    --current_;
  } else if (key == Qt::Key_Home) {
    current_ = 0;
  } else if (count > 0 && key == Qt::Key_End) {
    current_ = count - 1;
  } else if (count > 0 && (key == Qt::Key_Return || key == Qt::Key_Enter || key == Qt::Key_Space)) {
    emit row_chosen(ladder_.rows[current_].id);
  } else {
    QWidget::keyPressEvent(event);
  }
  describe();
  update();
}

void LadderWidget::describe() {
  setAccessibleDescription(current_ < ladder_.rows.size() ? ladder_.rows[current_].tooltip
                                                          : QString());
  setAccessibleName(ladder_.title);
  if (hasFocus()) {
    QAccessibleEvent event(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&event);
  }
}

void LadderWidget::focusInEvent(QFocusEvent*) {
  describe();
  update();
}

void LadderWidget::focusOutEvent(QFocusEvent*) {
  update();
}

bool LadderWidget::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto row = row_at(QPointF(help->pos()));
    const QString text = row ? ladder_.rows[*row].tooltip : QString();
    QToolTip::showText(help->globalPos(), text.toHtmlEscaped(), this);
    return true;
  }
  if (event->type() == QEvent::FontChange) {
    updateGeometry();
  }
  return QWidget::event(event);
}

} // namespace feedwright
