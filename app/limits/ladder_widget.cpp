// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/ladder_widget.h"

#include <QAccessible>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollArea>
#include <QToolTip>

#include <algorithm>
#include <cmath>

namespace feedwright {

LadderWidget::LadderWidget(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void LadderWidget::show_ladder(Ladder ladder) {
  const auto was =
      current_ < ladder_.rows.size() ? std::optional(ladder_.rows[current_].id) : std::nullopt;
  const int height = heightForWidth(width());
  ladder_ = std::move(ladder);
  plans_.clear();
  // The keyboard stays on its limit, wherever it has moved to.
  const auto found = std::find_if(ladder_.rows.begin(), ladder_.rows.end(),
                                  [&](const LadderRow& row) { return row.id == was; });
  current_ = found != ladder_.rows.end() ? std::size_t(found - ladder_.rows.begin()) : 0;
  if (hovered_ && *hovered_ >= ladder_.rows.size()) {
    hovered_.reset();
  }
  if (heightForWidth(width()) != height) {
    updateGeometry();
  }
  describe();
  update();
}

void LadderWidget::mark_chosen(std::optional<LimitId> id) {
  chosen_ = id;
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
  made.chosen = chosen_;
  made.mirrored = layoutDirection() == Qt::RightToLeft;
  return made;
}

const LadderPlan& LadderWidget::plan_in(const QRectF& room) const {
  const LadderOptions asked = options();
  const int dots = logicalDpiY();
  const auto found = std::find_if(plans_.begin(), plans_.end(), [&](const KeptPlan& kept) {
    return kept.room == room && kept.font == asked.font && kept.dots_per_inch == dots &&
           kept.mirrored == asked.mirrored;
  });
  if (found != plans_.end()) {
    return found->plan;
  }
  constexpr std::size_t most_kept = 6;
  if (plans_.size() == most_kept) {
    plans_.erase(plans_.begin());
  }
  plans_.push_back({room, asked.font, dots, asked.mirrored,
                    plan_ladder(ladder_, room, asked, const_cast<LadderWidget*>(this))});
  return plans_.back().plan;
}

const LadderPlan& LadderWidget::plan() const {
  return plan_in(QRectF(rect()));
}

QRectF LadderWidget::row_area(std::size_t row) const {
  const LadderPlan& made = plan();
  return row < made.rows.size() ? made.rows[row] : QRectF();
}

int LadderWidget::easy_width() const {
  return int(std::ceil(easy_ladder_width(ladder_, options(), const_cast<LadderWidget*>(this))));
}

int LadderWidget::heightForWidth(int width) const {
  // As high as the widget is if that is its width: the plan to paint by is then made already.
  const QRectF room = width == this->width() ? QRectF(rect()) : QRectF(0, 0, width, 0);
  return int(std::ceil(plan_in(room).bottom));
}

QSize LadderWidget::sizeHint() const {
  const int usual = fontMetrics().height() * 40;
  return {usual, heightForWidth(usual)};
}

QSize LadderWidget::minimumSizeHint() const {
  const int least = fontMetrics().height() * 14;
  return {least, fontMetrics().height()};
}

void LadderWidget::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  paint_ladder(painter, ladder_, QRectF(rect()), plan(), Look::of(palette()), options());
}

std::optional<std::size_t> LadderWidget::row_at(const QPointF& point) const {
  const LadderPlan& made = plan();
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
  point_out();
  update();
  emit row_chosen(ladder_.rows[*row].id);
}

void LadderWidget::mouseMoveEvent(QMouseEvent* event) {
  const auto row = row_at(event->position());
  setCursor(row ? Qt::PointingHandCursor : Qt::ArrowCursor);
  if (row != hovered_) {
    hovered_ = row;
    point_out();
    update();
  }
}

void LadderWidget::leaveEvent(QEvent*) {
  hovered_.reset();
  point_out();
  update();
}

void LadderWidget::point_out() {
  const auto row = hovered_ ? hovered_ : hasFocus() ? std::optional(current_) : std::nullopt;
  emit row_pointed_at(row && *row < ladder_.rows.size() ? ladder_.rows[*row].tooltip : QString());
}

void LadderWidget::keep_in_view() {
  for (QWidget* outer = parentWidget(); outer != nullptr; outer = outer->parentWidget()) {
    if (auto* area = qobject_cast<QScrollArea*>(outer)) {
      const QRect row = row_area(current_).toRect();
      const QPoint middle = mapTo(area->widget(), row.center());
      area->ensureVisible(middle.x(), middle.y(), 0, row.height());
      return;
    }
  }
}

void LadderWidget::keyPressEvent(QKeyEvent* event) {
  const std::size_t count = ladder_.rows.size();
  // Open limits stand side by side, so that both pairs of arrows walk.
  const bool mirrored = layoutDirection() == Qt::RightToLeft;
  const int key = event->key() == (mirrored ? Qt::Key_Left : Qt::Key_Right)   ? int(Qt::Key_Down)
                  : event->key() == (mirrored ? Qt::Key_Right : Qt::Key_Left) ? int(Qt::Key_Up)
                                                                              : event->key();
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
    return;
  }
  describe();
  keep_in_view();
  point_out();
  update();
}

void LadderWidget::describe() {
  QString text;
  if (current_ < ladder_.rows.size()) {
    const LadderRow& row = ladder_.rows[current_];
    text =
        row.id == chosen_ ? tr("%1 Chosen.", "sentence on a limit").arg(row.tooltip) : row.tooltip;
  }
  if (row_ties()) {
    text += QLatin1Char(' ') + ladder_.tie;
  }
  setAccessibleDescription(text);
  setAccessibleName(ladder_.title);
  if (hasFocus()) {
    QAccessibleEvent event(this, QAccessible::DescriptionChanged);
    QAccessible::updateAccessibility(&event);
  }
}

bool LadderWidget::row_ties() const {
  return current_ < ladder_.rows.size() && ladder_.rows[current_].ties;
}

void LadderWidget::focusInEvent(QFocusEvent*) {
  describe();
  keep_in_view();
  point_out();
  update();
}

void LadderWidget::focusOutEvent(QFocusEvent*) {
  point_out();
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
  if (event->type() == QEvent::FontChange || event->type() == QEvent::LayoutDirectionChange) {
    updateGeometry();
    update();
  }
  return QWidget::event(event);
}

} // namespace feedwright
