// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/panes.h"

#include "remedies/remedies_view.h"

#include <QEvent>
#include <QLineEdit>
#include <QResizeEvent>
#include <QShortcut>
#include <QStackedWidget>
#include <QTabBar>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace feedwright {

namespace {

/// Lines of text in a window's height below which it is low.
constexpr int low_lines = 36;

enum SharedTab { fields_tab, study_tab };

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
  addWidget(make_right());
  setStretchFactor(0, 0);
  setStretchFactor(1, 1);
  setStretchFactor(2, 0);
  connect(widgets_.remedies, &RemediesView::height_wanted, this, &Panes::give_remedies);
  arrange();
}

/// The right column, with the tabs of those that share it.
QWidget* Panes::make_right() {
  auto* all = new QWidget;
  auto* layout = new QVBoxLayout(all);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  tabs_ = new QTabBar(all);
  tabs_->setObjectName(QStringLiteral("side_tabs"));
  tabs_->setAccessibleName(tr("Fields or study"));
  tabs_->setDrawBase(false);
  tabs_->setExpanding(false);
  tabs_->addTab(tr("Fields"));
  tabs_->addTab(tr("Study"));
  connect(tabs_, &QTabBar::currentChanged, this, &Panes::share_place);
  find_ = new QShortcut(QKeySequence::Find, tabs_);
  connect(find_, &QShortcut::activated, this, &Panes::find_a_field);
  layout->addWidget(tabs_);
  layout->addWidget(right_, 1);
  return all;
}

void Panes::show_chosen(const Selection& selection) {
  const Selection before = std::exchange(chosen_, selection);
  centre_->setCurrentIndex(selection.machine ? 1 : 0);
  // From axis to axis the study stays: it is what is compared.
  const bool part = before.axis == selection.axis && before.slot != selection.slot;
  if (part || !selection.member.isEmpty()) {
    tabs_->setCurrentIndex(fields_tab);
  }
  share_place();
}

void Panes::show_fields() {
  tabs_->setCurrentIndex(fields_tab);
}

void Panes::show_study() {
  tabs_->setCurrentIndex(study_tab);
}

void Panes::bring_in_sight(const QString& pane) {
  if (low_ && pane == widgets_.fields->objectName()) {
    tabs_->setCurrentIndex(fields_tab);
  } else if (low_ && pane == widgets_.studies->objectName() && !chosen_.machine) {
    tabs_->setCurrentIndex(study_tab);
  }
}

/// The whole machine has no study.
void Panes::share_place() {
  const bool shared = low_ && !chosen_.machine;
  const bool study = tabs_->currentIndex() == study_tab;
  tabs_->setVisible(shared);
  find_->setEnabled(shared && study);
  // What comes in sight first: the keyboard must not be without a place in between.
  if (shared && study) {
    widgets_.studies->show();
    widgets_.fields->hide();
  } else {
    widgets_.fields->show();
    widgets_.studies->setVisible(!low_);
  }
}

void Panes::find_a_field() {
  tabs_->setCurrentIndex(fields_tab);
  if (auto* filter = widgets_.fields->findChild<QLineEdit*>(QStringLiteral("field_filter"))) {
    filter->setFocus(Qt::ShortcutFocusReason);
    filter->selectAll();
  }
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
  share_place();
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
    right_->setStretchFactor(i, i == 0 || low_ ? 1 : 0); // low: one of both is seen
  }
  for (int i = 0; i < left_->count(); ++i) {
    left_->setStretchFactor(i, i == 0 ? 1 : 0);
  }
  // The studies get what drawing and limits do not want: at 1280 by 800 the limits of feed and
  // force are in view.
  low_ ? middle_->setSizes({300, 425}) : middle_->setSizes({232, 228, 292});
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
  // In a narrow window the drawing gives way, so that the form is whole.
  constexpr int narrow = 840;
  constexpr int usual_centre = 420;
  centre_->setMinimumWidth(event->size().width() < narrow ? 0 : usual_centre);
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
