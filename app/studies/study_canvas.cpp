// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/study_canvas.h"

#include "limits/number_text.h"
#include "studies/label_keeper.h"
#include "studies/plots.h"
#include "studies/shown_sentence.h"
#include "studies/stack_keeper.h"
#include "text/whole_quantities.h"
#include "window/letters.h"

#include <QAction>
#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLabel>
#include <QMimeData>
#include <QTableWidget>
#include <QToolButton>
#include <QToolTip>
#include <QVBoxLayout>
#include <qcustomplot.h>

#include <algorithm>

namespace feedwright {

namespace {

constexpr char cursor_layer[] = "cursor";

QString empty_hint() {
  return QCoreApplication::translate(
      "Studies",
      "Point at the plot, or press the arrow keys, to read it off. The wheel zooms while "
      "the plot has the keyboard or Ctrl is held, dragging pans, a double click or 0 "
      "resets, Ctrl+C copies picture and numbers.");
}

/// The cells of the selection's rectangle, or of the whole table with its heading.
QString selected_cells(const QTableWidget& table, const StudyFigure& figure) {
  const auto ranges = table.selectedRanges();
  if (ranges.isEmpty()) {
    return as_tab_separated(as_table(figure));
  }
  QString text;
  for (const QTableWidgetSelectionRange& range : ranges) {
    for (int row = range.topRow(); row <= range.bottomRow(); ++row) {
      QStringList cells;
      for (int column = range.leftColumn(); column <= range.rightColumn(); ++column) {
        const QTableWidgetItem* item = table.item(row, column);
        cells << (item != nullptr ? item->text() : QString());
      }
      text += cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
    }
  }
  return text;
}

} // namespace

StudyCanvas::StudyCanvas(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("study_canvas"));
  make_plot();
  make_table();
  read_out_ = new QLabel(this);
  read_out_->setObjectName(QStringLiteral("study_read_out"));
  read_out_->setAccessibleName(tr("Read-out under the cursor"));
  read_out_->setTextFormat(Qt::PlainText);
  read_out_->setWordWrap(true);
  read_out_->setAlignment(Qt::AlignLeading | Qt::AlignTop);
  read_out_->setForegroundRole(QPalette::PlaceholderText);
  read_out_->installEventFilter(this);
  nothing_ = new QLabel(this);
  nothing_->setObjectName(QStringLiteral("study_nothing"));
  nothing_->setTextFormat(Qt::PlainText);
  nothing_->setWordWrap(true);
  nothing_->setAlignment(Qt::AlignCenter);
  make_actions();
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(2);
  layout->addWidget(plot_, 1);
  layout->addWidget(table_, 1);
  auto* below = new QHBoxLayout;
  below->addWidget(read_out_, 1);
  below->addWidget(whole_, 0, Qt::AlignTop);
  below->addWidget(as_table_, 0, Qt::AlignTop);
  layout->addLayout(below);
  layout->addWidget(nothing_, 1);
  show_nothing(QString());
}

void StudyCanvas::make_plot() {
  plot_ = new QCustomPlot(this);
  plot_->setObjectName(QStringLiteral("study_plot"));
  plot_->setFocusPolicy(Qt::StrongFocus);
  plot_->setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
  plot_->setNoAntialiasingOnDrag(true);
  // Painted with the rest of the window, once, not at once by itself.
  plot_->setPlottingHint(QCP::phImmediateRefresh, false);
  plot_->setPlottingHint(QCP::phFastPolylines, true);
  // One picture for all layers, not one each to be cleared and laid over the others.
  plot_->layer(QStringLiteral("overlay"))->setMode(QCPLayer::lmLogical);
  plot_->addLayer(QString::fromLatin1(cursor_layer), nullptr, QCustomPlot::limAbove);
  plot_->setContextMenuPolicy(Qt::ActionsContextMenu);
  plot_->installEventFilter(this);
  setFocusProxy(plot_);
}

void StudyCanvas::make_table() {
  table_ = new QTableWidget(this);
  table_->setObjectName(QStringLiteral("study_table"));
  table_->setAccessibleName(tr("The study as a table"));
  table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  table_->setSelectionMode(QAbstractItemView::ContiguousSelection);
  table_->verticalHeader()->hide();
  table_->setTabKeyNavigation(false);
  table_->setContextMenuPolicy(Qt::ActionsContextMenu);
  table_->installEventFilter(this);
  table_->hide();
}

QAction* StudyCanvas::add_action(const char* name, const QString& text) {
  auto* action = new QAction(text, this);
  action->setObjectName(QString::fromLatin1(name));
  plot_->addAction(action);
  table_->addAction(action);
  return action;
}

void StudyCanvas::make_actions() {
  connect(add_action("study_copy", tr("Copy")), &QAction::triggered, this, &StudyCanvas::copy);
  connect(add_action("study_save_picture", tr("Save picture…")), &QAction::triggered, this,
          &StudyCanvas::picture_to_save);
  connect(add_action("study_save_numbers", tr("Save numbers…")), &QAction::triggered, this,
          &StudyCanvas::numbers_to_save);
  auto* whole = add_action("study_whole", tr("Whole plot"));
  whole->setToolTip(tr("Back to the scales that show everything (0)"));
  connect(whole, &QAction::triggered, this, &StudyCanvas::reset_zoom);
  other_ = add_action("study_as_table", QString());
  connect(other_, &QAction::triggered, this, [this] {
    table_wanted_ = !table_wanted_;
    show_plot_or_table();
  });
  const auto button = [this](QAction* action, const char* name) {
    auto* made = new QToolButton(this);
    made->setObjectName(QString::fromLatin1(name));
    made->setDefaultAction(action);
    made->setFocusPolicy(Qt::TabFocus);
    made->setAccessibleName(action->text());
    return made;
  };
  whole_ = button(whole, "study_whole_button");
  as_table_ = button(other_, "study_table_button");
  name_other();
}

bool StudyCanvas::is_table() const {
  return table_wanted_ || !room_for_plot_;
}

/// The button says what it brings.
void StudyCanvas::name_other() {
  const bool table = is_table();
  other_->setText(table ? tr("Plot") : tr("Table"));
  other_->setToolTip(!table           ? tr("The same as a table of numbers")
                     : room_for_plot_ ? tr("Back to the plot")
                                      : tr("The names of the plot have no room here; it comes back "
                                           "where there is more"));
  other_->setEnabled(room_for_plot_);
  as_table_->setAccessibleName(other_->text());
}

void StudyCanvas::show_figure(Study study, StudyFigure figure) {
  if (study_ != study) {
    set_zoomed(false);
    cursor_.reset();
    pointed_ = false;
  }
  study_ = study;
  figure_ = std::move(figure);
  if (figure_.is_empty()) {
    const QString why = figure_.summary;
    show_nothing(why);
    study_ = study;
    return;
  }
  plot_->setAccessibleName(tr("Plot: %1").arg(figure_.title));
  plot_->setAccessibleDescription(figure_.summary);
  nothing_->hide();
  read_out_->show();
  as_table_->show();
  fill();
  show_plot_or_table();
}

void StudyCanvas::show_nothing(const QString& why) {
  study_.reset();
  figure_ = {};
  for (QWidget* each : {static_cast<QWidget*>(plot_), static_cast<QWidget*>(table_),
                        static_cast<QWidget*>(read_out_), static_cast<QWidget*>(as_table_),
                        static_cast<QWidget*>(whole_)}) {
    each->hide();
  }
  nothing_->setText(with_whole_quantities(why));
  nothing_->setAccessibleName(why);
  nothing_->show();
}

void StudyCanvas::show_plot_or_table() {
  if (figure_.is_empty()) {
    return;
  }
  const bool table = is_table();
  name_other();
  const bool focused = plot_->hasFocus() || table_->hasFocus();
  plot_->setVisible(!table);
  table_->setVisible(table);
  whole_->setVisible(zoomed_ && !table);
  layout()->activate(); // what comes into view has its room at once
  setFocusProxy(table ? static_cast<QWidget*>(table_) : plot_);
  if (table) {
    fill_table();
  }
  if (focused) {
    setFocus();
  }
}

void StudyCanvas::fill() {
  if (figure_.is_empty()) {
    return;
  }
  std::vector<std::pair<QCPRange, QCPRange>> scales;
  if (zoomed_) {
    for (QCPAxisRect* rect : panel_rects(*plot_)) {
      scales.emplace_back(rect->axis(QCPAxis::atBottom)->range(),
                          rect->axis(QCPAxis::atLeft)->range());
    }
  }
  const QSize size = room();
  shape_ = plot_shape(figure_, size, font());
  fill_plot(*plot_, figure_, Look::of(palette()), shape_);
  const auto names_fit = [&] {
    auto* keeper = plot_->findChild<StackKeeper*>();
    return keeper == nullptr || keeper->names_fit(size);
  };
  // Before it is laid out its size says nothing.
  room_for_plot_ = !isVisible() || names_fit();
  if (const QFont small = fitted(font(), 0.0); !room_for_plot_ && shape_.font != small) {
    shape_.font = small;
    fill_plot(*plot_, figure_, Look::of(palette()), shape_);
    room_for_plot_ = names_fit();
  }
  const auto rects = panel_rects(*plot_);
  for (qsizetype i = 0; i < rects.size() && i < qsizetype(scales.size()); ++i) {
    rects[i]->axis(QCPAxis::atBottom)->setRange(scales[std::size_t(i)].first);
    rects[i]->axis(QCPAxis::atLeft)->setRange(scales[std::size_t(i)].second);
  }
  if (cursor_) {
    read_off(*cursor_);
  } else {
    say(figure_.summary);
  }
  plot_->replot(QCustomPlot::rpQueuedReplot);
}

/// Of the plot, or of the table in its place.
QSize StudyCanvas::room() const {
  return table_->isVisible() ? table_->size() : plot_->size();
}

void StudyCanvas::fill_table() {
  const StudyTable made = as_table(figure_);
  table_->setUpdatesEnabled(false);
  table_->clear();
  table_->setColumnCount(int(made.head.size()));
  table_->setRowCount(int(made.rows.size()));
  table_->setHorizontalHeaderLabels(made.head);
  for (std::size_t row = 0; row < made.rows.size(); ++row) {
    for (qsizetype column = 0; column < made.rows[row].size(); ++column) {
      const QString& text = made.rows[row][column];
      auto* item = new QTableWidgetItem(text);
      const bool number = !text.isEmpty() && (text.back().isDigit() || text.front().isDigit());
      item->setTextAlignment(
          (number && column + 1 < made.head.size() ? Qt::AlignTrailing : Qt::AlignLeading) |
          Qt::AlignVCenter);
      table_->setItem(int(row), int(column), item);
    }
  }
  table_->setAccessibleDescription(figure_.summary);
  table_->resizeColumnsToContents();
  const int letters = table_->fontMetrics().height();
  table_->verticalHeader()->setDefaultSectionSize(letters + letters / 3);
  table_->setUpdatesEnabled(true);
}

QString StudyCanvas::reading() const {
  return said_;
}

void StudyCanvas::say(const QString& text) {
  said_ = text;
  read_out_->setAccessibleDescription(text);
  show_said();
}

/// As many as the sentence takes, for half a number is a wrong one; and two for what is read off,
/// so that the plot stands still while one points at it, but one where the pane is low. Never so
/// many that the window must grow for them.
int StudyCanvas::lines_to_read() const {
  constexpr int lines_to_one = 5;
  constexpr int to_read_off = 2;
  constexpr double most_of_height = 0.6;
  const int line = std::max(1, read_out_->fontMetrics().lineSpacing());
  const int usual = std::clamp(height() / (lines_to_one * line), 1, to_read_off);
  if (!isVisible()) {
    return usual; // before it is laid out its width says nothing
  }
  const int sentence =
      lines_of_sentence(figure_.summary, read_out_->font(), std::max(1, read_out_->width()));
  return std::max(usual, std::min(sentence, int(most_of_height * height() / line)));
}

/// What has no room below the plot is in the tool tip.
void StudyCanvas::show_said() {
  const int lines = lines_to_read();
  read_out_->setFixedHeight(lines * read_out_->fontMetrics().lineSpacing() + 2);
  const QString shown =
      shown_sentence(said_, read_out_->font(), std::max(1, read_out_->width()), lines);
  if (read_out_->text() != shown) {
    read_out_->setText(shown);
  }
  QStringList tip;
  if (shown != with_whole_quantities(said_)) {
    tip << said_.toHtmlEscaped();
  }
  if (!cursor_) {
    tip << empty_hint().toHtmlEscaped();
  }
  read_out_->setToolTip(tip.isEmpty()
                            ? QString()
                            : QStringLiteral("<p>%1</p>").arg(tip.join(QStringLiteral("</p><p>"))));
}

void StudyCanvas::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  if (!figure_.is_empty()) {
    show_said();
  }
}

void StudyCanvas::forget_cursor() {
  cursor_.reset();
  pointed_ = false;
  for (auto* line : plot_->findChildren<QCPItemStraightLine*>(QStringLiteral("cursor_line"))) {
    plot_->removeItem(line);
  }
  say(figure_.summary);
  plot_->replot(QCustomPlot::rpQueuedReplot);
}

void StudyCanvas::read_off(double x) {
  const QCPRange shown = panel_rects(*plot_).front()->axis(QCPAxis::atBottom)->range();
  const bool stacks = !figure_.stacks.empty();
  cursor_ = std::clamp(x, shown.lower, shown.upper);
  say(read_out(figure_, *cursor_));
  if (!stacks) {
    draw_cursor();
  }
}

/// Columns are as wide as their words; each is read off at its middle.
double StudyCanvas::x_at(const QCPAxisRect& rect, double pixel) const {
  const auto* keeper = plot_->findChild<StackKeeper*>();
  return keeper != nullptr ? double(keeper->column_at(pixel)) + 0.5
                           : rect.axis(QCPAxis::atBottom)->pixelToCoord(pixel);
}

void StudyCanvas::draw_cursor() {
  auto lines = plot_->findChildren<QCPItemStraightLine*>(QStringLiteral("cursor_line"));
  if (lines.isEmpty()) {
    for (QCPAxisRect* rect : panel_rects(*plot_)) {
      auto* line = item_on<QCPItemStraightLine>(*plot_, *rect);
      line->setObjectName(QStringLiteral("cursor_line"));
      line->setLayer(QString::fromLatin1(cursor_layer));
      line->setPen(QPen(Look::of(palette()).faint_ink, 1.0));
      lines << line;
    }
  }
  for (QCPItemStraightLine* line : lines) {
    line->point1->setCoords(*cursor_, 0.0);
    line->point2->setCoords(*cursor_, 1.0);
  }
  plot_->replot(QCustomPlot::rpQueuedReplot);
}

void StudyCanvas::set_zoomed(bool zoomed) {
  zoomed_ = zoomed;
  whole_->setVisible(zoomed && !figure_.is_empty() && !is_table());
}

void StudyCanvas::reset_zoom() {
  set_zoomed(false);
  reset_scales(*plot_, figure_);
  plot_->replot(QCustomPlot::rpQueuedReplot);
}

void StudyCanvas::zoom(double factor) {
  set_zoomed(true);
  const auto rects = panel_rects(*plot_);
  for (QCPAxisRect* rect : rects) {
    const auto scale = [&](QCPAxis::AxisType type, Qt::Orientation way) {
      if ((rect->rangeZoom() & way) != 0) {
        rect->axis(type)->scaleRange(factor, rect->axis(type)->range().center());
      }
    };
    scale(QCPAxis::atLeft, Qt::Vertical);
    // Across, the others follow the first.
    if (rect == rects.front()) {
      scale(QCPAxis::atBottom, Qt::Horizontal);
    }
  }
  plot_->replot(QCustomPlot::rpQueuedReplot);
}

void StudyCanvas::pan(double across, double up) {
  set_zoomed(true);
  QCPAxisRect* rect = panel_rects(*plot_).front();
  const auto move = [&](QCPAxis::AxisType type, Qt::Orientation way, double share) {
    if ((rect->rangeDrag() & way) != 0) {
      rect->axis(type)->moveRange(share * rect->axis(type)->range().size());
    }
  };
  move(QCPAxis::atBottom, Qt::Horizontal, across);
  move(QCPAxis::atLeft, Qt::Vertical, up);
  plot_->replot(QCustomPlot::rpQueuedReplot);
}

/// From the middle, or on from where it is; in columns, from one to the next.
void StudyCanvas::start_cursor(int steps) {
  pointed_ = false;
  const QCPRange range = panel_rects(*plot_).front()->axis(QCPAxis::atBottom)->range();
  if (!figure_.stacks.empty()) {
    const double last = double(figure_.stacks.size()) - 0.5;
    read_off(cursor_ ? std::clamp(std::floor(*cursor_) + 0.5 + steps, 0.5, last) : 0.5);
    return;
  }
  read_off(cursor_.value_or(range.center()) + steps * range.size() / 50.0);
}

bool StudyCanvas::take_key(int key, bool shift) {
  constexpr double pan_step = 0.1;
  const QCPRange range = panel_rects(*plot_).front()->axis(QCPAxis::atBottom)->range();
  switch (key) {
  case Qt::Key_Left: shift ? pan(-pan_step, 0.0) : start_cursor(-1); return true;
  case Qt::Key_Right: shift ? pan(pan_step, 0.0) : start_cursor(1); return true;
  case Qt::Key_Up:
  case Qt::Key_Down:
    if (shift) {
      pan(0.0, key == Qt::Key_Up ? pan_step : -pan_step);
    }
    return shift;
  case Qt::Key_Home:
  case Qt::Key_End:
    pointed_ = false;
    read_off(key == Qt::Key_Home ? range.lower : range.upper);
    return true;
  case Qt::Key_Plus: zoom(0.8); return true;
  case Qt::Key_Minus: zoom(1.25); return true;
  case Qt::Key_0: reset_zoom(); return true;
  default: return false;
  }
}

void StudyCanvas::show_full_text(const QPoint& at, const QPoint& on_screen) const {
  for (int i = 0; i < plot_->itemCount(); ++i) {
    const auto* text = qobject_cast<const QCPItemText*>(plot_->item(i));
    if (text == nullptr || !text->visible()) {
      continue;
    }
    const QString hint = text->property(hint_property).toString();
    const QString full = hint.isEmpty() ? text->property(full_text_property).toString() : hint;
    if (full.isEmpty() || full == text->text()) {
      continue;
    }
    const QRectF place(text->topLeft->pixelPosition(), text->bottomRight->pixelPosition());
    if (place.contains(at)) {
      QToolTip::showText(on_screen, QStringLiteral("<p>%1</p>").arg(full.toHtmlEscaped()), plot_);
      return;
    }
  }
  QToolTip::hideText();
}

bool StudyCanvas::eventFilter(QObject* watched, QEvent* event) {
  if (watched == read_out_ && event->type() == QEvent::Resize) {
    show_said();
  }
  if (watched == table_ && event->type() == QEvent::Resize && !room_for_plot_) {
    QMetaObject::invokeMethod(this, &StudyCanvas::refit, Qt::QueuedConnection);
  }
  const bool ours = watched == plot_ || watched == table_;
  if (!ours || figure_.is_empty()) {
    return QWidget::eventFilter(watched, event);
  }
  if (event->type() == QEvent::ShortcutOverride || event->type() == QEvent::KeyPress) {
    auto* key = static_cast<QKeyEvent*>(event);
    if (key->matches(QKeySequence::Copy)) {
      event->accept();
      if (event->type() == QEvent::KeyPress) {
        copy();
        return true;
      }
    }
  }
  return (watched == plot_ && take_plot_event(*event)) || QWidget::eventFilter(watched, event);
}

bool StudyCanvas::take_plot_event(QEvent& event) {
  switch (event.type()) {
  case QEvent::Wheel: {
    const auto& wheel = static_cast<QWheelEvent&>(event);
    // Without the focus the wheel scrolls what the plot stands in.
    if (!plot_->hasFocus() && !wheel.modifiers().testFlag(Qt::ControlModifier)) {
      event.ignore();
      return true;
    }
    set_zoomed(true);
    return false;
  }
  case QEvent::MouseButtonDblClick: reset_zoom(); return true;
  case QEvent::MouseMove: {
    const auto& mouse = static_cast<QMouseEvent&>(event);
    if ((mouse.buttons() & Qt::LeftButton) != 0) {
      set_zoomed(true);
    }
    QCPAxisRect* rect = plot_->axisRectAt(mouse.position());
    if (rect != nullptr) {
      read_off(x_at(*rect, mouse.position().x()));
      pointed_ = true;
    }
    return false;
  }
  case QEvent::Leave:
    if (pointed_) {
      forget_cursor();
    }
    return false;
  case QEvent::KeyPress: {
    const auto& key = static_cast<QKeyEvent&>(event);
    return take_key(key.key(), key.modifiers().testFlag(Qt::ShiftModifier));
  }
  case QEvent::ToolTip: {
    const auto& help = static_cast<QHelpEvent&>(event);
    show_full_text(help.pos(), help.globalPos());
    return true;
  }
  case QEvent::Resize: {
    const auto& to = static_cast<QResizeEvent&>(event).size();
    auto* keeper = plot_->findChild<StackKeeper*>();
    if (plot_shape(figure_, to, font()) != shape_ ||
        (keeper != nullptr && !keeper->names_fit(to))) {
      QMetaObject::invokeMethod(this, &StudyCanvas::refit, Qt::QueuedConnection);
    }
    return false;
  }
  default: return false;
  }
}

QImage StudyCanvas::picture() const {
  constexpr double fineness = 2.0;
  return plot_->toPixmap(plot_->width(), plot_->height(), fineness).toImage();
}

void StudyCanvas::copy() {
  if (figure_.is_empty()) {
    return;
  }
  auto* copied = new QMimeData;
  if (is_table()) {
    copied->setText(selected_cells(*table_, figure_));
  } else {
    copied->setImageData(picture());
    copied->setText(as_tab_separated(as_table(figure_)));
  }
  QGuiApplication::clipboard()->setMimeData(copied);
}

void StudyCanvas::refit() {
  if (figure_.is_empty()) {
    return;
  }
  const bool was = is_table();
  fill();
  if (is_table() != was) {
    show_plot_or_table();
  }
}

void StudyCanvas::changeEvent(QEvent* event) {
  const bool looks = event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange;
  if (looks) {
    refit();
  }
  QWidget::changeEvent(event);
}

} // namespace feedwright
