// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/grave_cautions.h"

#include "text/whole_quantities.h"
#include "window/letters.h"
#include "window/style.h"

#include <QEvent>
#include <QPainter>
#include <QToolButton>

namespace feedwright {

namespace {

constexpr qsizetype most_lines = 2;
constexpr int gap = 8;

} // namespace

GraveCautions::GraveCautions(QWidget* parent) : QWidget(parent), more_(new QToolButton(this)) {
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  more_->setObjectName(QStringLiteral("grave_more"));
  more_->setAutoRaise(true);
  more_->setFocusPolicy(Qt::StrongFocus);
  connect(more_, &QToolButton::clicked, this, [this] { turn(!open_); });
}

void GraveCautions::show_texts(const QStringList& texts) {
  if (texts == texts_) {
    return;
  }
  const int was = heightForWidth(width());
  texts_ = texts;
  const QString all = texts_.join(QLatin1Char('\n'));
  setAccessibleName(all);
  setToolTip(QStringLiteral("<p>%1</p>")
                 .arg(all.toHtmlEscaped().replace(QLatin1Char('\n'), QStringLiteral("<br>"))));
  place_button();
  if (heightForWidth(width()) != was) {
    updateGeometry();
  }
  update();
}

void GraveCautions::turn(bool open) {
  open_ = open;
  place_button();
  updateGeometry();
  update();
}

int GraveCautions::text_width(int width, bool with_button) const {
  return std::max(with_button ? width - more_->sizeHint().width() - gap : width, 1);
}

GraveCautions::Lines GraveCautions::lines_for(int width) const {
  Lines made;
  qsizetype all = 0;
  for (const QString& text : texts_) {
    all += broken(with_whole_quantities(text), font(), text_width(width, false)).size();
  }
  made.cut = texts_.size() > 1 && all > most_lines;
  const int room = text_width(width, made.cut);
  for (const QString& text : texts_) {
    const QStringList lines = broken(with_whole_quantities(text), font(), room);
    // The gravest whole, another whole or not at all: half a warning is none.
    const bool fits = made.shown.isEmpty() || made.shown.size() + lines.size() <= most_lines;
    if (!open_ && (made.hidden > 0 || !fits)) {
      ++made.hidden;
      continue;
    }
    made.shown << lines;
  }
  return made;
}

int GraveCautions::heightForWidth(int width) const {
  const auto lines = int(lines_for(width).shown.size());
  return std::max(lines * fontMetrics().lineSpacing(), lines > 0 ? more_->sizeHint().height() : 0);
}

QSize GraveCautions::sizeHint() const {
  const int usual = fontMetrics().height() * 40;
  return {usual, heightForWidth(usual)};
}

QSize GraveCautions::minimumSizeHint() const {
  return {fontMetrics().height() * 10, fontMetrics().height()};
}

void GraveCautions::place_button() {
  // The text of the button sets how wide the lines are, and they how much it says is hidden.
  more_->setText(open_ ? tr("less") : tr("%n more", "cautions", int(texts_.size())));
  const Lines lines = lines_for(width());
  if (!open_) {
    more_->setText(lines.hidden > 0 ? tr("%n more", "cautions", lines.hidden) : tr("more"));
  }
  more_->setAccessibleName(open_ ? tr("Show fewer cautions") : tr("Show all cautions in full"));
  more_->setToolTip(more_->accessibleName());
  more_->setVisible(lines.cut);
  more_->resize(more_->sizeHint());
  const int x = isRightToLeft() ? 0 : width() - more_->width();
  more_->move(x, std::max(height() - more_->height(), 0));
}

void GraveCautions::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setPen(Look::of(palette()).over);
  const Lines lines = lines_for(width());
  const int room = text_width(width(), lines.cut);
  const int x = isRightToLeft() ? width() - room : 0;
  int y = 0;
  for (const QString& line : lines.shown) {
    const QRect area(x, y, room, fontMetrics().lineSpacing());
    painter.drawText(area, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, line);
    y += fontMetrics().lineSpacing();
  }
}

void GraveCautions::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  place_button();
}

void GraveCautions::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange || event->type() == QEvent::LayoutDirectionChange) {
    place_button();
    updateGeometry();
  }
  QWidget::changeEvent(event);
}

} // namespace feedwright
