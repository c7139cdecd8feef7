// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/part_picker.h"

#include "fields/wheel_guard.h"
#include "text/listed_names.h"
#include "text/text_of.h"
#include "text/words.h"
#include "window/plain_label.h"

#include <QComboBox>
#include <QCompleter>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QScreen>
#include <QScrollBar>
#include <QStandardItemModel>
#include <QTreeView>
#include <QVBoxLayout>

#include <algorithm>

namespace feedwright {

namespace {

/// What tells one part from another at a glance, before the rest.
constexpr std::string_view telling[] = {"nominal_diameter",
                                        "lead",
                                        "grade",
                                        "dynamic_rating",
                                        "pitch",
                                        "width",
                                        "allowable_pull",
                                        "rated_pull",
                                        "bearing_thrust_limit",
                                        "holding_torque",
                                        "rated_current",
                                        "rotor_inertia",
                                        "block_rating",
                                        "continuous_torque",
                                        "rated_speed",
                                        "torque_limit",
                                        "stiffness",
                                        "friction",
                                        "specific_force",
                                        "exponent"};

QString figures_of(const ListedPart& part) {
  QStringList figures;
  for (const std::string_view member : telling) {
    for (const ListedValue& value : part.values) {
      if (value.member == member && std::holds_alternative<AnyQuantity>(value.value)) {
        figures << words::typed_text(value.text);
      }
    }
  }
  return figures.join(QStringLiteral(" · "));
}

/// What a part is found by.
constexpr int search_role = Qt::UserRole + 1;

/// Narrows the offer by words as in `searched_words`.
class PartFinder : public QCompleter {
public:
  using QCompleter::QCompleter;
  QString pathFromIndex(const QModelIndex& index) const override {
    return index.data(Qt::DisplayRole).toString();
  }
  QStringList splitPath(const QString& path) const override { return {searched_words(path)}; }
};

/// A list with columns in place of a combo box's own; wider than the box.
QTreeView* column_view(QWidget* parent) {
  auto* view = new QTreeView(parent);
  view->setRootIsDecorated(false);
  view->setUniformRowHeights(true);
  view->setAllColumnsShowFocus(true);
  view->setSelectionBehavior(QAbstractItemView::SelectRows);
  view->setTextElideMode(Qt::ElideRight);
  view->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
  view->header()->setStretchLastSection(true);
  return view;
}

QRect screen_of(const QWidget& widget) {
  return widget.screen()->availableGeometry();
}

/// Columns as wide as the parts' words are; the list as wide as they, as far as the screen goes.
void fit_columns(QTreeView& view, const QAbstractItemModel& parts) {
  const QFontMetrics metrics = view.fontMetrics();
  const int frame = 2 * view.frameWidth() + 4; // the list's, and that of the box around it
  const int bar = view.style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr, &view);
  int all = 0;
  for (int column = 0; column < parts.columnCount(); ++column) {
    int needed = 0;
    for (int row = 0; row < parts.rowCount(); ++row) {
      const QString text = parts.index(row, column).data().toString();
      needed = std::max(needed, metrics.horizontalAdvance(text));
    }
    const int width = needed + 2 * metrics.averageCharWidth() + 6;
    view.setColumnWidth(column, width);
    all += width;
  }
  view.setMinimumWidth(std::min(all + bar + frame, screen_of(view).width() - frame));
}

/// The list just below the box, or above it where there is more room; header and all, within the
/// screen.
QRect place_of_list(const QTreeView& list, const QWidget& box, int most_rows) {
  const QRect screen = screen_of(box);
  const QRect at(box.mapToGlobal(QPoint()), box.size());
  const int rows = std::min(list.model()->rowCount(), most_rows);
  const int row = std::max(list.sizeHintForRow(0), list.fontMetrics().lineSpacing());
  const bool scrolls = list.header()->length() > list.minimumWidth();
  const int across = scrolls ? list.horizontalScrollBar()->sizeHint().height() : 0;
  const int wanted =
      rows * row + list.header()->sizeHint().height() + 2 * list.frameWidth() + row / 2 + across;
  const int below = screen.bottom() - at.bottom();
  const int above = at.top() - screen.top();
  const bool upwards = wanted > below && above > below;
  const int height = std::min(wanted, upwards ? above : below);
  const int width = std::min(std::max(list.minimumWidth(), at.width()), screen.width());
  const int from = box.isRightToLeft() ? at.right() + 1 - width : at.left();
  const int left = std::clamp(from, screen.left(), screen.right() + 1 - width);
  return {left, upwards ? at.top() - height : at.bottom() + 1, width, height};
}

} // namespace

QString searched_words(const QString& text) {
  static const QRegularExpression times(
      QStringLiteral("(?<=\\d)\\s*[x×*]\\s*(?=\\d|$)|(?<=\\d)\\s*-\\s*(?=\\d)"));
  return text.simplified().toLower().replace(times, QStringLiteral("×"));
}

QString findable_words(const QString& name) {
  // Trade shorthand, common practice, no source: 1605 is a diameter of 16 and a lead of 5.
  static const QRegularExpression size(
      QStringLiteral("(?<!\\d)(?<!\\d[.,])(\\d{1,2})×(\\d{1,2})(?![.,]?\\d)"));
  QString words = searched_words(name);
  if (const auto match = size.match(words); match.hasMatch()) {
    const QChar zero(QLatin1Char('0'));
    words += QStringLiteral(" %1%2")
                 .arg(match.captured(1).toInt(), 2, 10, zero)
                 .arg(match.captured(2).toInt(), 2, 10, zero);
  }
  return words;
}

PartPicker::PartPicker(const PartShelf& shelf, PartSlot slot, QWidget* parent)
    : QWidget(parent), shelf_(shelf), slot_(slot) {
  auto* layout = new QVBoxLayout(this);
  layout->setSpacing(2);
  layout->setContentsMargins(0, 0, 0, 0);
  box_ = new QComboBox(this);
  box_->setObjectName(QStringLiteral("part_picker"));
  box_->setAccessibleName(tr("Take a part from a list"));
  box_->setEditable(true);
  box_->setInsertPolicy(QComboBox::NoInsert);
  box_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  box_->setMaxVisibleItems(20);
  new WheelGuard(box_);
  fill();
  auto* list = column_view(box_);
  box_->setView(list);
  fit_columns(*list, *box_->model());
  make_completer();
  box_->setCurrentIndex(-1);
  box_->lineEdit()->setPlaceholderText(tr("Take from a list…"));
  box_->lineEdit()->setAccessibleName(box_->accessibleName());
  layout->addWidget(box_);
  note_ = plain_label({}, this);
  note_->setObjectName(QStringLiteral("part_picker_note"));
  note_->setForegroundRole(QPalette::PlaceholderText);
  note_->hide();
  layout->addWidget(note_);
  box_->installEventFilter(this);
  connect(box_->lineEdit(), &QLineEdit::textChanged, this, &PartPicker::say_what_is_found);
  setFocusProxy(box_);
  connect(box_, &QComboBox::activated, this, &PartPicker::choose);
}

void PartPicker::make_completer() {
  auto* finder = new PartFinder(box_->model(), box_);
  finder->setCaseSensitivity(Qt::CaseInsensitive);
  finder->setFilterMode(Qt::MatchContains);
  finder->setCompletionMode(QCompleter::PopupCompletion);
  finder->setCompletionRole(search_role);
  finder->setMaxVisibleItems(box_->maxVisibleItems());
  box_->setCompleter(finder);
  found_ = column_view(nullptr);
  found_->setObjectName(QStringLiteral("parts_found"));
  finder->setPopup(found_);
  fit_columns(*found_, *box_->model());
  found_->installEventFilter(this);
}

bool PartPicker::finds_something() const {
  const QString words = searched_words(box_->currentText());
  const QAbstractItemModel& parts = *box_->model();
  for (int row = 0; row < parts.rowCount(); ++row) {
    if (parts.index(row, 0).data(search_role).toString().contains(words)) {
      return true;
    }
  }
  return false;
}

void PartPicker::say_what_is_found() {
  const bool none = !box_->currentText().trimmed().isEmpty() && !finds_something();
  note_->setText(none ? tr("Nothing found. A screw is found as 16x10 or 1610, other parts by a "
                           "piece of their names.")
                      : QString());
  note_->setVisible(none);
}

/// Up and Down open what there is to choose from: they never take a part that nobody has seen.
bool PartPicker::take_key(int key) {
  if (key != Qt::Key_Up && key != Qt::Key_Down && key != Qt::Key_PageUp &&
      key != Qt::Key_PageDown) {
    return false;
  }
  const QString text = box_->currentText();
  if (text.isEmpty() || text == box_->itemText(box_->currentIndex())) {
    box_->showPopup();
  } else if (finds_something()) {
    box_->completer()->setCompletionPrefix(searched_words(text));
    box_->completer()->complete();
  }
  return true;
}

bool PartPicker::eventFilter(QObject* watched, QEvent* event) {
  if (watched == box_ && event->type() == QEvent::KeyPress) {
    return take_key(static_cast<QKeyEvent*>(event)->key());
  }
  const bool placed = event->type() == QEvent::Show || event->type() == QEvent::Move ||
                      event->type() == QEvent::Resize;
  if (watched == found_ && placed && found_->model() != nullptr) {
    const QRect place = place_of_list(*found_, *box_, box_->maxVisibleItems());
    if (found_->geometry() != place) {
      found_->setGeometry(place);
    }
  }
  return QWidget::eventFilter(watched, event);
}

bool PartPicker::has_parts() const {
  return box_->count() > 0;
}

void PartPicker::refill() {
  fill(); // the box does away with the list it had
  box_->completer()->setModel(box_->model());
  // A new model takes the columns' widths away.
  for (QAbstractItemView* each : {box_->view(), box_->completer()->popup()}) {
    if (auto* columns = qobject_cast<QTreeView*>(each)) {
      fit_columns(*columns, *box_->model());
    }
  }
  box_->setCurrentIndex(-1);
}

void PartPicker::fill() {
  auto* model = new QStandardItemModel(0, 3, box_);
  model->setHorizontalHeaderLabels({tr("Part"), tr("Figures"), tr("Source")});
  for (std::size_t i = 0; i < shelf_.parts.size(); ++i) {
    const ShelvedPart& shelved = shelf_.parts[i];
    if (!fits(shelved.part.kind, slot_)) {
      continue;
    }
    const QString in_list = QString::fromStdString(shelved.part.name);
    const QString name = shelved.own ? in_list : words::listed_name(in_list);
    const QString source = words::listed_source(text_of(shelved.part.source));
    auto* named = new QStandardItem(shelved.own ? tr("%1 (own list)").arg(name) : name);
    named->setData(static_cast<int>(i), Qt::UserRole);
    named->setData(source, Qt::AccessibleDescriptionRole);
    named->setData(findable_words(name == in_list ? named->text()
                                                  : named->text() + QLatin1Char(' ') + in_list),
                   search_role);
    auto* from = new QStandardItem(source);
    from->setToolTip(QStringLiteral("<p>%1</p>").arg(source.toHtmlEscaped()));
    model->appendRow({named, new QStandardItem(figures_of(shelved.part)), from});
  }
  for (const QString& trouble : shelf_.troubles) {
    auto* said = new QStandardItem(trouble);
    said->setData(-1, Qt::UserRole);
    said->setEnabled(false);
    model->appendRow(said);
  }
  box_->setModel(model);
  box_->setModelColumn(0);
}

void PartPicker::choose(int index) {
  const int chosen = box_->itemData(index).toInt();
  if (chosen >= 0) {
    // Typing is over: Undo now takes the part back, not the letters it was found by.
    box_->lineEdit()->setModified(false);
    // The part says what it is; the box would still say so when it is another again.
    box_->setCurrentIndex(-1);
    emit picked(shelf_.parts[static_cast<std::size_t>(chosen)].part);
  }
}

} // namespace feedwright
