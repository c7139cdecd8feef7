// SPDX-License-Identifier: GPL-3.0-or-later
#include "remedies/remedies_view.h"

#include "fields/wheel_guard.h"
#include "remedies/remedies_sentence.h"
#include "remedies/remedy_list.h"
#include "window/plain_label.h"
#include "window/style.h"

#include <QApplication>
#include <QComboBox>
#include <QElapsedTimer>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace feedwright {

namespace {

std::vector<ListedPart> listed(const PartShelf& shelf) {
  std::vector<ListedPart> parts;
  parts.reserve(shelf.parts.size());
  for (const ShelvedPart& shelved : shelf.parts) {
    parts.push_back(shelved.part);
  }
  return parts;
}

} // namespace

RemediesView::RemediesView(MachineDocument& document, const PartShelf& shelf, QWidget* parent)
    : QWidget(parent), document_(document), parts_(listed(shelf)) {
  setObjectName(QStringLiteral("remedies_view"));
  setAccessibleName(tr("What would do"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(10, 4, 4, 6);
  layout->setSpacing(3);
  make_heading(*layout);
  sentence_ = plain_label({}, this);
  sentence_->setObjectName(QStringLiteral("remedies_sentence"));
  take_back_ = new QPushButton(this);
  take_back_->setObjectName(QStringLiteral("remedies_take_back"));
  take_back_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
  connect(take_back_, &QPushButton::clicked, this, &RemediesView::take_back);
  layout->addWidget(take_back_);
  list_ = new RemedyList(this);
  connect(list_, &RemedyList::pressed, this, &RemediesView::try_remedy);
  layout->addWidget(list_, 1);
  after_painting_.setSingleShot(true);
  connect(&after_painting_, &QTimer::timeout, this, &RemediesView::refresh);
  connect(&document_, &MachineDocument::changed, this, &RemediesView::schedule);
  connect(&document_, &MachineDocument::selection_changed, this, &RemediesView::take_selection);
}

void RemediesView::make_heading(QVBoxLayout& layout) {
  heading_ = new QWidget(this);
  // Above each other where the letters are too large for one line.
  constexpr int characters = 44;
  constexpr int usual_room = 372;
  const bool abreast = characters * fontMetrics().averageCharWidth() <= usual_room;
  auto* row = new QBoxLayout(abreast ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom, heading_);
  row->setContentsMargins(0, 0, 6, 0);
  QLabel* title = plain_label(tr("What would do"), heading_);
  title->setWordWrap(false);
  QFont font = title->font();
  font.setBold(true);
  title->setFont(font);
  limits_ = new QComboBox(heading_);
  limits_->setObjectName(QStringLiteral("remedies_limit"));
  limits_->setAccessibleName(tr("Limit that is over or close"));
  limits_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  new WheelGuard(limits_);
  connect(limits_, &QComboBox::activated, this,
          [this](int index) { choose(static_cast<LimitId>(limits_->itemData(index).toInt())); });
  title->setBuddy(limits_);
  row->addWidget(title);
  row->addWidget(limits_, 1);
  layout.addWidget(heading_);
}

void RemediesView::choose(LimitId limit) {
  chosen_ = limit;
  refresh();
}

void RemediesView::take_selection() {
  const Selection& at = document_.selection();
  if (std::exchange(of_machine_, at.machine) != at.machine) {
    schedule();
  }
  if (at.axis != axis_) {
    axis_ = at.axis;
    chosen_.reset();
    schedule();
  }
}

/// The next edit, should it come first, starts the wait anew: who types or drags sees what has
/// changed at once, and what would do when the hand rests. Where the search is slow (a belt loop
/// laid out again and again) it waits for a longer rest.
void RemediesView::schedule() {
  constexpr int short_rest = 40; // ms
  constexpr int long_rest = 200;
  after_painting_.start(slow_ ? long_rest : short_rest);
}

void RemediesView::showEvent(QShowEvent* event) {
  refresh();
  QWidget::showEvent(event);
}

/// A rule between the fields and what would do.
void RemediesView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setPen(QPen(Look::of(palette()).rule, 1.0));
  painter.drawLine(0, 0, width(), 0);
}

void RemediesView::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange && quiet_ == false) {
    emit height_wanted(usual_height());
  }
  QWidget::changeEvent(event);
}

void RemediesView::refresh() {
  after_painting_.stop();
  if (isVisible()) { // else showing it computes it
    show_now();
    fit_to_width();
  }
}

void RemediesView::show_now() {
  const bool had_focus = isAncestorOf(QApplication::focusWidget());
  shown_.reset();
  remedies_.clear();
  axis_ = document_.selection().axis;
  show_take_back();
  if (document_.selection().machine && !document_.results().empty()) {
    show_quiet(sentence_on_machine(document_.machine(), document_.results()));
    return;
  }
  const AxisResults* results = document_.current();
  if (results == nullptr) {
    show_quiet(tr("What would do is not computed while the machine has faults."));
    return;
  }
  const auto troubled = limits_in_trouble(*results);
  if (troubled.empty()) {
    show_quiet(sentence_on_calm(*results));
  } else {
    show_limit(troubled, *results);
  }
  if (had_focus && !isAncestorOf(QApplication::focusWidget())) {
    // The row that was pressed is gone; who works by keys stays here.
    take_back_->setFocus(Qt::OtherFocusReason);
  }
}

void RemediesView::show_quiet(const QString& sentence) {
  sentence_->setText(sentence);
  sentence_->setForegroundRole(QPalette::PlaceholderText);
  list_->show_rows({});
  set_quiet(true);
}

void RemediesView::show_limit(const std::vector<LimitId>& troubled, const AxisResults& results) {
  const bool keeps = chosen_ && std::ranges::find(troubled, *chosen_) != troubled.end();
  shown_ = keeps ? *chosen_ : troubled.front();
  fill_limits(troubled, results);
  constexpr qint64 felt = 30; // ms
  QElapsedTimer watch;
  watch.start();
  remedies_ = remedies(document_.machine(), axis_, *shown_, parts_, document_.units());
  slow_ = watch.elapsed() > felt;
  sentence_->setForegroundRole(QPalette::WindowText);
  sentence_->setText(sentence_on_limit(context(results), !remedies_.empty()));
  std::vector<RemedyText> texts;
  texts.reserve(remedies_.size());
  for (const Remedy& remedy : remedies_) {
    texts.push_back(text_of(remedy, context(results)));
  }
  list_->show_rows(std::move(texts));
  set_quiet(false);
}

void RemediesView::fill_limits(const std::vector<LimitId>& troubled, const AxisResults& results) {
  limits_->clear();
  for (const LimitId id : troubled) {
    limits_->addItem(limit_entry(results.limit(id)), static_cast<int>(id));
  }
  limits_->setCurrentIndex(limits_->findData(static_cast<int>(*shown_)));
}

RemedyContext RemediesView::context(const AxisResults& results) const {
  return {document_.machine(), axis_, results, *shown_, parts_, document_.units()};
}

void RemediesView::try_remedy(std::size_t index) {
  if (after_painting_.isActive()) {
    // The machine has changed since these rows were made; what is pressed is not what is seen.
    refresh();
    return;
  }
  const AxisResults* results = document_.current();
  if (index >= remedies_.size() || results == nullptr || !shown_) {
    return;
  }
  const QString step = text_of(remedies_[index], context(*results)).step;
  auto changed = with_remedy(document_.machine(), axis_, remedies_[index], parts_);
  if (changed) {
    chosen_ = shown_;
    const std::uint64_t before = document_.last_step();
    document_.edit(*std::move(changed), step);
    tried_ = document_.last_step() != before ? document_.last_step() : 0;
  }
}

bool RemediesView::just_tried() const {
  return tried_ != 0 && document_.last_step() == tried_;
}

/// Pressing the button may itself have made a step, of what was typed in a field until then.
void RemediesView::take_back() {
  if (just_tried()) {
    document_.undo_stack()->undo();
  } else {
    refresh();
  }
}

void RemediesView::show_take_back() {
  if (just_tried()) {
    const QString text =
        tr("Take back: %1", "name of the step tried last").arg(document_.undo_stack()->undoText());
    take_back_->setText(text);
    take_back_->setAccessibleName(text);
    take_back_->setToolTip(QStringLiteral("<p>%1</p>").arg(text.toHtmlEscaped()));
  }
  take_back_->setVisible(just_tried());
}

/// A long name on the button widens nothing, and what is said in quiet is said whole.
void RemediesView::fit_to_width() {
  const QMargins around = layout()->contentsMargins();
  const int room = width() - around.left() - around.right() - 2 * fontMetrics().height();
  take_back_->setText(
      fontMetrics().elidedText(take_back_->accessibleName(), Qt::ElideRight, std::max(room, 0)));
  const bool is_quiet = quiet_.value_or(false);
  setMinimumHeight(is_quiet ? layout()->totalHeightForWidth(width()) : 0);
}

void RemediesView::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit_to_width();
}

/// Heading, sentence and some five rows of two lines; in a tall window a third of it.
int RemediesView::usual_height() const {
  constexpr int lines = 16;
  return std::max(lines * fontMetrics().lineSpacing(), window()->height() / 3);
}

/// Above the rows it scrolls with them, so that large letters leave them room; quiet it stands
/// alone.
void RemediesView::place_sentence(bool quiet) {
  auto& own = *static_cast<QVBoxLayout*>(layout());
  if (!quiet) {
    list_->put_above(*sentence_);
  } else if (own.indexOf(sentence_) < 0) {
    own.insertWidget(0, sentence_);
    sentence_->show();
  }
}

void RemediesView::set_quiet(bool quiet) {
  place_sentence(quiet);
  heading_->setVisible(!quiet);
  list_->setVisible(!quiet);
  // Quiet, one line and what was tried; else as much as the window gives, but never too little.
  constexpr int least_lines = 3;
  list_->setMinimumHeight(quiet ? 0 : least_lines * fontMetrics().lineSpacing());
  setSizePolicy(QSizePolicy::Preferred, quiet ? QSizePolicy::Maximum : QSizePolicy::Preferred);
  if (quiet_ == quiet) {
    return;
  }
  quiet_ = quiet;
  emit height_wanted(quiet ? 0 : usual_height());
}

void RemediesView::follow(QWidget* before) {
  for (QWidget* stop : QWidgetList{limits_, take_back_} + list_->stops()) {
    setTabOrder(before, stop);
    before = stop;
  }
}

} // namespace feedwright
