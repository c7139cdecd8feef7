// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/panes.h"

#include "remedies/remedies_view.h"

#include <QEvent>
#include <QLayout>
#include <QStackedWidget>

#include <algorithm>

namespace feedwright {

namespace {

/// Lines of text in a window's height below which it is low.
constexpr int low_lines = 36;

QSplitter* column(const char* name) {
  auto* made = new QSplitter(Qt::Vertical);
  made->setObjectName(QString::fromLatin1(name));
  made->setChildrenCollapsible(false);
  return made;
}

} // namespace

Panes::Panes(const Widgets& widgets)
    : QSplitter(Qt::Horizontal), widgets_(widgets), left_(column("left")),
      middle_(column("middle")), right_(column("right")), centre_(new QStackedWidget) {
  setObjectName(QStringLiteral("across"));
  setChildrenCollapsible(false);
  centre_->setObjectName(QStringLiteral("centre"));
  left_->addWidget(widgets_.axes);
  middle_->addWidget(widgets_.train);
  // In the order Tab goes through them.
  middle_->addWidget(widgets_.limits);
  middle_->addWidget(widgets_.studies);
  right_->addWidget(widgets_.fields);
  right_->addWidget(widgets_.remedies);
  centre_->addWidget(middle_);
  centre_->addWidget(widgets_.machine);
  addWidget(left_);
  addWidget(centre_);
  addWidget(right_);
  setStretchFactor(0, 0);
  setStretchFactor(1, 1);
  setStretchFactor(2, 0);
  connect(widgets_.remedies, &RemediesView::height_wanted, this, &Panes::give_remedies);
  arrange();
}

void Panes::show_machine(bool machine) {
  machine_ = machine;
  centre_->setCurrentIndex(machine ? 1 : 0);
  widgets_.studies->setVisible(!(low_ && machine));
}

void Panes::look_at_height() {
  const bool low = height() < low_lines * fontMetrics().height();
  if (low != low_) {
    low_ = low;
    arrange();
  }
}

void Panes::arrange() {
  if (low_) {
    right_->addWidget(widgets_.studies);
    left_->addWidget(widgets_.remedies);
  } else {
    middle_->addWidget(widgets_.studies);
    right_->addWidget(widgets_.remedies);
  }
  show_machine(machine_);
  share_width();
  share_height();
}

/// Wider where the letters are larger than usual, as far as the drawing keeps its room.
void Panes::share_width() {
  // Of a window of 1280, so that its middle is the widest still.
  constexpr int edge = 232;
  constexpr int most_edge = 264;
  constexpr int most_low_edge = 300;
  constexpr int fields = 372;
  constexpr int most_fields = 470;
  const int letter = fontMetrics().averageCharWidth();
  const int edge_room = std::clamp(33 * letter, edge, low_ ? most_low_edge : most_edge);
  const int fields_room = std::clamp(53 * letter, fields, most_fields);
  setSizes({edge_room, std::max(2 * fields_room, width() - edge_room - fields_room), fields_room});
}

void Panes::share_height() {
  for (int i = 0; i < middle_->count(); ++i) {
    middle_->setStretchFactor(i, i == 0 ? 2 : 3);
  }
  for (int i = 0; i < right_->count(); ++i) {
    right_->setStretchFactor(i, i == 0 || low_ ? 1 : 0);
  }
  for (int i = 0; i < left_->count(); ++i) {
    left_->setStretchFactor(i, i == 0 ? 1 : 0);
  }
  // The studies get what drawing and limits do not want: at 1280 by 800 the limits of feed and
  // force are in view.
  low_ ? middle_->setSizes({300, 425}) : middle_->setSizes({232, 228, 292});
  if (low_) {
    right_->setSizes({57, 43});
  }
  if (wanted_by_remedies_ >= 0) {
    give_remedies(wanted_by_remedies_);
  }
}

/// The remedies take the height they want, and give it back when there is nothing to say.
void Panes::give_remedies(int wanted) {
  wanted_by_remedies_ = wanted;
  QSplitter& column = low_ ? *left_ : *right_;
  const QList<int> now = column.sizes();
  const int both = now.value(0) + now.value(1);
  int given = wanted;
  if (low_) {
    const int least = widgets_.remedies->layout()->minimumHeightForWidth(column.width());
    given = std::min(wanted, std::max(least, both * 11 / 25));
  }
  if (both > given) {
    column.setSizes({both - given, given});
  }
}

void Panes::resizeEvent(QResizeEvent* event) {
  QSplitter::resizeEvent(event);
  look_at_height();
}

void Panes::changeEvent(QEvent* event) {
  QSplitter::changeEvent(event);
  if (event->type() == QEvent::FontChange && middle_ != nullptr) {
    look_at_height();
  }
}

} // namespace feedwright
