// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/figure_table.h"

#include "overview/figure_measure.h"

#include <QAction>
#include <QHeaderView>
#include <QKeyEvent>
#include <QScrollBar>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace feedwright {

using namespace figure_measure;

namespace {

/// Of the narrowest column.
constexpr int least_characters = 8;

bool has_doors(const FigureContent& content, int column) {
  const auto at = static_cast<std::size_t>(column);
  return at < content.head_doors.size() && content.head_doors[at].has_value();
}

} // namespace

FigureTable::FigureTable(const QString& object_name, const QString& spoken_name, bool whole,
                         QWidget* parent)
    : QTableView(parent), whole_(whole) {
  setObjectName(object_name);
  setAccessibleName(spoken_name);
  setModel(&model_);
  setItemDelegate(new FigureDelegate(this));
  setFrameShape(QFrame::NoFrame);
  setTabKeyNavigation(false);
  setEditTriggers(NoEditTriggers);
  setSelectionMode(SingleSelection);
  setWordWrap(true);
  setShowGrid(true);
  setHorizontalScrollMode(ScrollPerPixel);
  setVerticalScrollMode(ScrollPerPixel);
  if (whole_) {
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  }
  horizontalHeader()->setTextElideMode(Qt::ElideRight);
  horizontalHeader()->setHighlightSections(false);
  verticalHeader()->setHighlightSections(false);
  horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
  verticalHeader()->setDefaultAlignment(Qt::Alignment(Qt::AlignLeading | Qt::AlignVCenter) |
                                        Qt::Alignment(Qt::TextWordWrap));
  verticalHeader()->setMinimumSectionSize(1);
  auto* copy_action = new QAction(tr("Copy the table"), this);
  copy_action->setObjectName(object_name + QStringLiteral("_copy"));
  copy_action->setShortcut(QKeySequence::Copy);
  copy_action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
  connect(copy_action, &QAction::triggered, this, &FigureTable::copy);
  addAction(copy_action);
  setContextMenuPolicy(Qt::ActionsContextMenu);
  connect(this, &QTableView::clicked, this, &FigureTable::choose);
  horizontalHeader()->setSectionsClickable(true);
  connect(horizontalHeader(), &QHeaderView::sectionClicked, this, [this](int column) {
    if (has_doors(content(), column)) {
      emit door_chosen(*content().head_doors[static_cast<std::size_t>(column)]);
    }
  });
}

void FigureTable::show_content(FigureContent content) {
  model_.put(std::move(content));
  lay_out();
}

void FigureTable::choose(const QModelIndex& index) {
  if (index.isValid() && model_.cell(index).door) {
    // The door may change what this shows: it is taken out first.
    const FigureDoor door = *model_.cell(index).door;
    emit door_chosen(door);
  }
}

void FigureTable::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter ||
      event->key() == Qt::Key_Space) {
    choose(currentIndex());
    return;
  }
  QTableView::keyPressEvent(event);
}

/// The width of a figure with its sign, and of what it is held against.
std::pair<int, int> FigureTable::pair_widths(const FigureCell& cell) const {
  const QFont own = font_of(cell, font());
  const QFontMetricsF metrics(own);
  // Whole pixels that hold it, and one for where the parting falls between two.
  const auto pixels = [&](const QString& text) {
    return text.isEmpty() ? 0 : int(std::ceil(metrics.horizontalAdvance(text))) + 1;
  };
  const int sign = cell.verdict ? sign_width(QFontMetrics(own)) : 0;
  const int against = cell.against.isEmpty() ? 0 : pixels(QStringLiteral(" / ") + cell.against);
  return {sign + pixels(cell.text), against + (isRightToLeft() ? sign : 0)};
}

/// Where the pairs of all columns are parted, as a share of the width: their slashes stand in line.
double FigureTable::parting_of_pairs() const {
  int figure = 1;
  int against = 1;
  for (const auto& row : content().rows) {
    for (const FigureCell& cell : row) {
      if (cell.figure) {
        const auto [own, other] = pair_widths(cell);
        figure = std::max(figure, own);
        against = std::max(against, other);
      }
    }
  }
  return double(figure) / (figure + against);
}

int FigureTable::figures_width(int column) const {
  const std::optional<double> parting = model_.parting();
  int width = 0;
  for (const auto& row : content().rows) {
    const FigureCell& cell = row[static_cast<std::size_t>(column)];
    if (!cell.figure) {
      // Words wrap, but none is cut.
      const QFontMetrics metrics(font_of(cell, font()));
      for (const QString& word : words_of(cell).split(QLatin1Char(' '))) {
        const int mark = cell.verdict ? sign_width(metrics) : 0;
        width = std::max(width, mark + metrics.horizontalAdvance(word));
      }
      continue;
    }
    const auto [figure, against] = pair_widths(cell);
    width = std::max(width, parting ? std::max(int(std::ceil(figure / *parting)),
                                               int(std::ceil(against / (1.0 - *parting))))
                                    : figure + against);
  }
  return width + 2 * side_padding + 3;
}

int FigureTable::words_width(int column) const {
  int width = 0;
  for (const auto& row : content().rows) {
    const FigureCell& cell = row[static_cast<std::size_t>(column)];
    if (!cell.figure) {
      width = std::max(width, fontMetrics().horizontalAdvance(cell.text));
    }
  }
  return width;
}

int FigureTable::longest_name_word() const {
  const QFontMetrics metrics(verticalHeader()->font());
  int word = 0;
  for (const QString& name : content().names) {
    for (const QString& part : name.split(QLatin1Char(' '))) {
      word = std::max(word, metrics.horizontalAdvance(part));
    }
  }
  return word;
}

/// The least that names take beside their rows: they wrap between words.
int FigureTable::names_width() const {
  const QFontMetrics metrics(verticalHeader()->font());
  int longest = 0;
  for (const QString& name : content().names) {
    longest = std::max(longest, metrics.horizontalAdvance(name));
  }
  const int natural = verticalHeader()->sizeHint().width();
  return std::min(longest_name_word() + std::max(natural - longest, 0), natural);
}

int FigureTable::room_for_columns() const {
  const int bar = verticalScrollBar()->isVisible() ? verticalScrollBar()->width() : 0;
  return contentsRect().width() - bar;
}

/// Where names and the widest column have no room side by side, or where all columns have it if
/// the names stand in them.
bool FigureTable::names_belong_inside(const std::vector<int>& widths) const {
  const int room = room_for_columns();
  const int names = names_width();
  const int inside = longest_name_word() + 2 * side_padding;
  int beside = names;
  int widest = 0;
  int all_inside = 0;
  for (const int width : widths) {
    beside += width;
    widest = std::max(widest, width);
    all_inside += std::max(width, inside);
  }
  return beside > room && (names + widest > room || all_inside <= room);
}

/// Names wrap where the columns need their room, between words. Returns what the columns have.
int FigureTable::fit_names(int needed) {
  const int natural = verticalHeader()->sizeHint().width();
  verticalHeader()->setMaximumWidth(
      std::clamp(room_for_columns() - needed, names_width(), natural));
  updateGeometries();
  return viewport()->width();
}

void FigureTable::make_room_for_names() {
  const QFontMetrics metrics(verticalHeader()->font());
  const int natural = verticalHeader()->sizeHint().width();
  if (verticalHeader()->maximumWidth() >= natural) {
    return;
  }
  constexpr int any_height = 10'000;
  const int edge = 2 * style()->pixelMetric(QStyle::PM_HeaderMargin, nullptr, verticalHeader());
  const QRect room(0, 0, verticalHeader()->maximumWidth() - edge, any_height);
  for (int row = 0; row < model_.rowCount(); ++row) {
    const QString name = with_whole_quantities(content().names[row]);
    const int height = metrics.boundingRect(room, Qt::TextWordWrap, name).height() + edge;
    setRowHeight(row, std::max(rowHeight(row), height));
  }
}

/// An axis is told by how its title begins: that is seen, whatever has no room.
void FigureTable::align_heads() {
  bool room = true;
  for (int column = 0; column < model_.columnCount(); ++column) {
    room = room && horizontalHeader()->sectionSizeHint(column) <= columnWidth(column);
  }
  horizontalHeader()->setDefaultAlignment(room ? Qt::Alignment(Qt::AlignCenter)
                                               : Qt::AlignLeading | Qt::AlignVCenter);
}

void FigureTable::lay_out() {
  const int columns = model_.columnCount();
  if (columns == 0) {
    return;
  }
  model_.set_parting(content().paired ? std::optional(parting_of_pairs()) : std::nullopt);
  // Columns of figures take what they need; words wrap in what is left.
  const int least = fontMetrics().averageCharWidth() * least_characters;
  std::int64_t worded = 0;
  std::vector<int> widths;
  for (int column = 0; column < columns; ++column) {
    const int head = content().paired ? 0 : horizontalHeader()->sectionSizeHint(column);
    widths.push_back(std::max({least, head, figures_width(column)}));
    worded += words_width(column);
  }
  const bool inside = names_belong_inside(widths);
  model_.set_names_inside(inside);
  verticalHeader()->setVisible(!inside);
  for (int& width : widths) {
    width = std::max(width, inside ? longest_name_word() + 2 * side_padding : 0);
  }
  const int needed = std::accumulate(widths.begin(), widths.end(), 0);
  const int room = fit_names(needed);
  const int spare = std::max(room - needed, 0);
  for (int column = 0; column < columns; ++column) {
    // In pairs every axis has the same room; else words share by their length.
    const bool alike = content().paired || worded == 0;
    const std::int64_t share =
        alike ? spare / columns : std::int64_t{spare} * words_width(column) / worded;
    setColumnWidth(column, widths[static_cast<std::size_t>(column)] + int(share));
  }
  align_heads();
  resizeRowsToContents();
  if (!inside) {
    make_room_for_names();
  }
  if (whole_) {
    const bool scrolls = needed > room;
    const int bar = scrolls ? horizontalScrollBar()->sizeHint().height() : 0;
    setFixedHeight(horizontalHeader()->sizeHint().height() + verticalHeader()->length() + bar + 1);
  }
}

void FigureTable::resizeEvent(QResizeEvent* event) {
  QTableView::resizeEvent(event);
  lay_out();
}

void FigureTable::changeEvent(QEvent* event) {
  QTableView::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) {
    lay_out();
  }
}

} // namespace feedwright
