// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/train_view.h"

#include "text/words.h"
#include "train/figure_editor.h"
#include "train/paint_read_out.h"
#include "train/paint_train.h"
#include "train/pulley_move.h"
#include "window/letters.h"

#include <QHelpEvent>
#include <QPainter>
#include <QToolButton>
#include <QUndoStack>

#include <algorithm>
#include <iterator>

namespace feedwright {

namespace {

/// In which the words of a drawing have room beside each other, in heights of a line.
constexpr double usual_width = 38.0;

} // namespace

TrainView::TrainView(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document), swaps_(document),
      editor_(new FigureEditor(document, this)), swap_button_(new QToolButton(this)) {
  setObjectName(QStringLiteral("train_view"));
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAttribute(Qt::WA_OpaquePaintEvent); // paintEvent begins with the paper
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  setAccessibleName(tr("Drive train"));
  swap_button_->setObjectName(QStringLiteral("swap_part"));
  swap_button_->setText(QStringLiteral("⇄"));
  swap_button_->setFocusPolicy(Qt::NoFocus); // the menu key does the same
  swap_button_->setAccessibleName(tr("Swap the part"));
  swap_button_->hide();
  connect(swap_button_, &QToolButton::clicked, this, [this] {
    show_menu(focused_, swap_button_->mapToGlobal(swap_button_->rect().bottomLeft()));
  });
  connect(editor_, &FigureEditor::left, this, [this] { setFocus(Qt::OtherFocusReason); });
  connect(editor_, &FigureEditor::step_wanted, this, &TrainView::step_figure);
  connect(&document_, &MachineDocument::changed, this, &TrainView::take_changes);
  connect(&document_, &MachineDocument::selection_changed, this, &TrainView::take_selection);
  // Another machine comes with an empty stack of steps.
  connect(document_.undo_stack(), &QUndoStack::indexChanged, this, &TrainView::forget_if_fresh);
  connect(&document_, &MachineDocument::state_changed, this, [this] {
    if (file_path_ != document_.file_path()) {
      file_path_ = document_.file_path();
      forget_if_fresh();
    }
  });
  take_changes();
  take_selection();
}

/// What was moved and swapped belongs to the machine before.
void TrainView::forget_if_fresh() {
  if (document_.undo_stack()->count() == 0) {
    swaps_.forget();
    carriages_.clear();
    take_changes();
  }
}

QSize TrainView::sizeHint() const {
  return {900, int(least_train_height(fontMetrics().height()) * 1.2)};
}

QSize TrainView::minimumSizeHint() const {
  return {350, int(least_train_height(fontMetrics().height()) * least_share(font()))};
}

/// Large letters are drawn smaller where the room is low for them, lest the drawing crowd out the
/// rest of the window; enlarged, it writes as large as everything else.
QFont TrainView::drawing_font() const {
  const double line = fontMetrics().height();
  const double room = std::min(height() / least_train_height(line), width() / (usual_width * line));
  return fitted(font(), room * zoom_);
}

QString TrainView::axis_key() const {
  const Axis* axis = document_.current_axis();
  return axis != nullptr ? QString::fromStdString(axis->basics.letter) : QString();
}

std::optional<Length> TrainView::carriage_along() const {
  const auto found = carriages_.constFind(axis_key());
  return found != carriages_.constEnd() ? std::optional(*found) : std::nullopt;
}

void TrainView::take_changes() {
  plan_.reset();
  at_.reset();
  has_axis_ = document_.current_axis() != nullptr;
  if (has_axis_) {
    const auto along = carriage_along();
    const std::size_t axis = document_.selection().axis;
    if (along && document_.current() != nullptr) {
      at_ = at_position(document_.machine(), document_.machine().axes.at(axis), *along);
    }
    train_ = train_geometry(document_.machine(), axis, document_.current(), at_ ? &*at_ : nullptr);
  }
  refresh_read_out();
  describe();
  place_swap_button();
  update();
}

void TrainView::take_selection() {
  focused_ = document_.selection().slot;
  pulley_chosen_ = false;
  editor_->leave_if_not_of(document_.selection().axis);
  take_changes();
}

void TrainView::refresh_read_out() {
  read_out_ = {};
  const BeltLoopDrive* loop = chosen_loop(document_);
  if (pulley_chosen_ && loop != nullptr && pulley_ < loop->pulleys.size()) {
    read_out_ = pulley_read_out(*loop, pulley_, document_.units());
  } else if (at_) {
    const Length along = *carriage_along();
    const Length travel = *document_.current_axis()->basics.travel;
    read_out_ = position_read_out(*at_, std::min(along, travel), document_.units());
  }
}

TrainOptions TrainView::options() const {
  TrainOptions made;
  made.font = drawing_font();
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
    // Larger is a larger sheet behind the same window: lines and words keep their size.
    const QRectF sheet(QPointF(), QSizeF(size()) * zoom_);
    plan_ = plan_train(train_, sheet.adjusted(margin, margin, -margin, -margin), options(), this);
    planned_size_ = size();
  }
  return *plan_;
}

QRectF TrainView::area_of(PartSlot slot) {
  const auto& parts = plan().parts;
  const auto found = std::find_if(parts.begin(), parts.end(),
                                  [slot](const PlannedPart& part) { return part.slot == slot; });
  return found != parts.end() ? found->area.translated(-pan_) : QRectF();
}

QRectF TrainView::area_of_figure(PartSlot slot, const QString& member) {
  for (const PlannedFigure& figure : plan().figures) {
    if (figure.slot == slot && figure.member == member && !figure.area.isNull()) {
      return figure.area.translated(-pan_);
    }
  }
  return area_of(slot);
}

QPointF TrainView::place_of_pulley(std::size_t pulley) {
  return plan().loop && pulley < plan().loop->centres.size() ? plan().loop->centres[pulley] - pan_
                                                             : QPointF();
}

void TrainView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const Look look = Look::of(palette());
  painter.fillRect(rect(), look.paper);
  if (!has_axis_) {
    return;
  }
  painter.translate(-pan_);
  paint_train(painter, train_, plan(), look, options());
  if (pulley_chosen_ && plan().loop && pulley_ < plan().loop->centres.size()) {
    const double reach = 8.0 * plan().unit;
    painter.setPen(QPen(look.accent, 1.6 * plan().unit));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(plan().loop->centres[pulley_] - QPointF(reach, reach),
                            QSizeF(2.0 * reach, 2.0 * reach)));
  }
  painter.resetTransform();
  if (!read_out_.heading.isEmpty()) {
    const QRectF area =
        read_out_area(read_out_, plan(), -pan_, QRectF(rect()), QFontMetricsF(font(), this));
    paint_read_out(painter, read_out_, area, look, font());
  }
}

void TrainView::resizeEvent(QResizeEvent*) {
  plan_.reset();
  keep_pan_within();
  place_swap_button();
}

void TrainView::choose(PartSlot slot, const QString& member) {
  focused_ = slot;
  document_.select({document_.selection().axis, slot, member});
  describe();
  place_swap_button();
  update();
}

bool TrainView::move_focus(int step) {
  const auto* at = std::find(std::begin(visited_parts), std::end(visited_parts), focused_);
  const std::ptrdiff_t next = at - std::begin(visited_parts) + step;
  if (next < 0 || next >= std::ssize(visited_parts)) {
    return false;
  }
  focused_ = visited_parts[next];
  bring_into_view(area_of(focused_));
  describe();
  place_swap_button();
  update();
  return true;
}

bool TrainView::focusNextPrevChild(bool next) {
  return move_focus(next ? 1 : -1) || QWidget::focusNextPrevChild(next);
}

void TrainView::focusInEvent(QFocusEvent* event) {
  if (event->reason() == Qt::TabFocusReason) {
    focused_ = *std::begin(visited_parts);
  } else if (event->reason() == Qt::BacktabFocusReason) {
    focused_ = *std::rbegin(visited_parts);
  }
  describe();
  place_swap_button();
  update();
}

void TrainView::focusOutEvent(QFocusEvent*) {
  place_swap_button();
  update();
}

/// Beside the part the keyboard stands on, where it covers no word if there is such a place.
void TrainView::place_swap_button() {
  const bool wanted = has_axis_ && hasFocus() && drag_ == Drag::none &&
                      !swaps_of(*document_.current_axis(), focused_).empty();
  if (!wanted || size().isEmpty()) {
    swap_button_->hide();
    return;
  }
  const int side = fontMetrics().height() + 6;
  const QRectF area = area_of(focused_);
  const QPointF corners[] = {
      area.topRight() + QPointF(4, -side / 2.0),  area.topRight() + QPointF(-side, -side - 6.0),
      area.topLeft() + QPointF(0.0, -side - 6.0), area.bottomRight() + QPointF(4, -side / 2.0),
      area.bottomLeft() + QPointF(0.0, 6.0),      area.topRight() + QPointF(-side, 0.0)};
  QRect best;
  for (const QPointF& corner : corners) {
    const QRect tried(corner.toPoint(), QSize(side, side));
    const QRectF in_plan_area = QRectF(tried).translated(pan_);
    const auto& labels = plan().labels;
    const bool covers = std::any_of(labels.begin(), labels.end(), [&](const PlannedLabel& label) {
      return label.area.intersects(in_plan_area);
    });
    if (rect().contains(tried) && (best.isNull() || !covers)) {
      best = tried;
      if (!covers) {
        break;
      }
    }
  }
  swap_button_->setVisible(!best.isNull());
  swap_button_->setGeometry(best);
  const QString name = tr("Swap: %1", "part").arg(words::part_name(focused_));
  swap_button_->setAccessibleName(name);
  swap_button_->setToolTip(QStringLiteral("<p>%1</p>").arg(name.toHtmlEscaped()));
}

bool TrainView::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip && has_axis_) {
    const auto* help = static_cast<QHelpEvent*>(event);
    return show_tip(help->pos(), help->globalPos());
  }
  if (event->type() == QEvent::FontChange || event->type() == QEvent::LanguageChange) {
    take_changes();
  }
  return QWidget::event(event);
}

} // namespace feedwright
