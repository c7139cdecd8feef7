// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/working_trail.h"

#include "text/words.h"
#include "window/plain_label.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace feedwright {

namespace {

constexpr std::size_t most_visits = 100;
constexpr std::size_t most_steps = 3;

QToolButton* arrow_button(Qt::ArrowType arrow, const QString& name, const QString& says,
                          QWidget* parent) {
  auto* button = new QToolButton(parent);
  button->setArrowType(arrow);
  button->setAutoRaise(true);
  button->setFocusPolicy(Qt::StrongFocus);
  button->setObjectName(name);
  button->setAccessibleName(says);
  button->setToolTip(says);
  return button;
}

} // namespace

WorkingTrail::WorkingTrail(QWidget* parent)
    : QWidget(parent), visits_{{ResultId::whip_feed}},
      back_(arrow_button(Qt::LeftArrow, QStringLiteral("working_back"),
                         tr("Back to the working before (Alt+Left)"), this)),
      forward_(arrow_button(Qt::RightArrow, QStringLiteral("working_forward"),
                            tr("Forward to the working after (Alt+Right)"), this)),
      steps_(new QHBoxLayout(this)) {
  steps_->setContentsMargins(0, 0, 0, 0);
  steps_->setSpacing(2);
  connect(back_, &QToolButton::clicked, this, &WorkingTrail::back);
  connect(forward_, &QToolButton::clicked, this, &WorkingTrail::forward);
  show_trail();
}

void WorkingTrail::start_at(ResultId id) {
  if (id != chosen()) {
    visit({id});
  }
}

void WorkingTrail::begin(ResultId id) {
  visits_ = {{id}};
  at_ = 0;
  show_trail();
}

void WorkingTrail::go_on_to(ResultId id) {
  Trail trail = visits_[at_];
  trail.push_back(id);
  visit(std::move(trail));
}

void WorkingTrail::visit(Trail trail) {
  visits_.resize(at_ + 1);
  visits_.push_back(std::move(trail));
  if (visits_.size() > most_visits) {
    visits_.erase(visits_.begin());
  }
  at_ = visits_.size() - 1;
  show_trail();
  emit moved();
}

void WorkingTrail::back() {
  if (at_ > 0) {
    --at_;
    show_trail();
    emit moved();
  }
}

void WorkingTrail::forward() {
  if (at_ + 1 < visits_.size()) {
    ++at_;
    show_trail();
    emit moved();
  }
}

void WorkingTrail::show_trail() {
  back_->setEnabled(at_ > 0);
  forward_->setEnabled(at_ + 1 < visits_.size());
  while (QLayoutItem* item = steps_->takeAt(0)) {
    if (item->widget() != nullptr) {
      item->widget()->setObjectName(
          QString()); // it may be the one just pressed: it goes a little later
      item->widget()->hide();
      item->widget()->deleteLater();
    }
    delete item;
  }
  const Trail& trail = visits_[at_];
  const std::size_t behind = trail.size() - 1;
  const QString arrow = isRightToLeft() ? QStringLiteral("‹") : QStringLiteral("›");
  for (std::size_t i = behind > most_steps ? behind - most_steps : 0; i < behind; ++i) {
    const QString name = words::result_name(trail[i]);
    auto* step = new QToolButton(this);
    step->setAutoRaise(true);
    step->setFocusPolicy(Qt::StrongFocus);
    step->setObjectName(QStringLiteral("working_step_%1").arg(i));
    const int room = fontMetrics().averageCharWidth() * 24;
    step->setText(fontMetrics().elidedText(name, Qt::ElideMiddle, room));
    step->setAccessibleName(tr("Back to: %1", "result").arg(name));
    step->setToolTip(step->accessibleName().toHtmlEscaped());
    connect(step, &QToolButton::clicked, this, [this, i] {
      const Trail& all = visits_[at_];
      visit(Trail(all.begin(), all.begin() + std::ptrdiff_t(i) + 1));
    });
    steps_->addWidget(step);
    steps_->addWidget(plain_label(arrow, this));
  }
  steps_->addStretch();
  setVisible(behind > 0);
}

void WorkingTrail::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange || event->type() == QEvent::LayoutDirectionChange) {
    show_trail();
  }
  QWidget::changeEvent(event);
}

} // namespace feedwright
