// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/formula_label.h"

#include "text/text_of.h"
#include "text/working_words.h"
#include "window/style.h"

#include <QHelpEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>

#include <cmath>

namespace feedwright {

namespace {

constexpr int margin = 3;
constexpr qreal larger_than_text = 1.12;

Notation equation(std::vector<Notation> sides) {
  Notation made;
  made.form = Notation::Form::relation;
  made.text.push_back('=');
  made.parts = std::move(sides);
  return made;
}

} // namespace

FormulaLabel::FormulaLabel(QWidget* parent) : QWidget(parent) {
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
}

void FormulaLabel::show_step(const WrittenStep& step, const QStringList& about) {
  left_ = step.symbol_notation;
  rights_ = right_sides(step);
  about_ = about;
  std::vector<Notation> sides{left_};
  sides.insert(sides.end(), rights_.begin(), rights_.end());
  const Notation whole = equation(sides);
  plain_text_ = text_of(write_line(whole));
  mathml_ = text_of(write_mathml(whole));
  setAccessibleName(words::spoken(equation({left_, step.formula_notation, step.value_notation})));
  setAccessibleDescription(plain_text_);
  marked_.reset();
  pointed_at_.reset();
  box_width_ = -1;
  updateGeometry();
  update();
}

void FormulaLabel::clear() {
  rights_.clear();
  about_.clear();
  plain_text_.clear();
  mathml_.clear();
  box_width_ = -1;
  updateGeometry();
}

QFont FormulaLabel::formula_font() const {
  QFont made = font();
  if (made.pointSizeF() > 0.0) {
    made.setPointSizeF(made.pointSizeF() * larger_than_text);
  } else {
    made.setPixelSize(qRound(made.pixelSize() * larger_than_text));
  }
  return made;
}

const FormulaBox& FormulaLabel::set_for(int width) const {
  if (width != box_width_) {
    box_ = set_equations(left_, rights_, formula_font(), width - 2 * margin);
    box_width_ = width;
  }
  return box_;
}

int FormulaLabel::heightForWidth(int width) const {
  return rights_.empty() ? 0 : int(std::ceil(set_for(width).height())) + 2 * margin;
}

QSize FormulaLabel::sizeHint() const {
  const int usual = fontMetrics().averageCharWidth() * 60;
  return {usual, heightForWidth(usual)};
}

QSize FormulaLabel::minimumSizeHint() const {
  return {fontMetrics().averageCharWidth() * 20, fontMetrics().height()};
}

QPointF FormulaLabel::origin() const {
  const FormulaBox& box = set_for(width());
  const bool mirrored = layoutDirection() == Qt::RightToLeft;
  return {mirrored ? width() - margin - box.width : qreal(margin), qreal(margin)};
}

QRectF FormulaLabel::term_area(std::size_t term) const {
  const auto places = places_of_term(set_for(width()), term);
  return places.empty() ? QRectF() : places.front().translated(origin());
}

void FormulaLabel::paintEvent(QPaintEvent*) {
  if (rights_.empty()) {
    return;
  }
  QPainter painter(this);
  const Look look = Look::of(palette());
  const FormulaBox& box = set_for(width());
  const QPointF from = origin();
  const auto shown = pointed_at_ ? pointed_at_ : marked_;
  if (shown) {
    for (const QRectF& place : places_of_term(box, *shown)) {
      const QRectF area = place.translated(from).adjusted(-1.0, -1.0, 1.0, 2.0);
      painter.fillRect(area, look.panel);
      painter.fillRect(QRectF(area.left(), area.bottom() - 1.0, area.width(), 2.0), look.accent);
    }
  }
  paint_formula(painter, box, from, palette().color(QPalette::WindowText));
  if (hasFocus()) {
    painter.setPen(QPen(look.ink, 1.0, Qt::DotLine));
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
  }
}

void FormulaLabel::point_at(std::optional<std::size_t> term) {
  if (term != pointed_at_) {
    pointed_at_ = term;
    setCursor(term ? Qt::PointingHandCursor : Qt::ArrowCursor);
    update();
    emit term_pointed_at(term);
  }
}

void FormulaLabel::mark_term(std::optional<std::size_t> term) {
  marked_ = term;
  update();
}

void FormulaLabel::mouseMoveEvent(QMouseEvent* event) {
  point_at(rights_.empty() ? std::nullopt
                           : term_at(set_for(width()), event->position() - origin()));
}

void FormulaLabel::mousePressEvent(QMouseEvent* event) {
  const auto term =
      rights_.empty() ? std::nullopt : term_at(set_for(width()), event->position() - origin());
  if (event->button() == Qt::LeftButton && term) {
    emit term_chosen(*term);
  } else {
    QWidget::mousePressEvent(event);
  }
}

void FormulaLabel::leaveEvent(QEvent*) {
  point_at(std::nullopt);
}

void FormulaLabel::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange) {
    box_width_ = -1;
    updateGeometry();
  }
  QWidget::changeEvent(event);
}

void FormulaLabel::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void FormulaLabel::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

bool FormulaLabel::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto term =
        rights_.empty() ? std::nullopt : term_at(set_for(width()), QPointF(help->pos()) - origin());
    const QString text = term ? about_.value(qsizetype(*term)) : QString();
    QToolTip::showText(
        help->globalPos(),
        text.isEmpty() ? text : QStringLiteral("<p>%1</p>").arg(text.toHtmlEscaped()), this);
    return true;
  }
  return QWidget::event(event);
}

} // namespace feedwright
