// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/figure_table.h"

#include "text/words.h"
#include "window/style.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace feedwright {

namespace {

constexpr int side_padding = 6;
constexpr int upright_padding = 2;
/// Of the narrowest column.
constexpr int least_characters = 8;

bool has_doors(const FigureContent& content, int column) {
  const auto at = static_cast<std::size_t>(column);
  return at < content.head_doors.size() && content.head_doors[at].has_value();
}

/// Of a verdict's sign with the gap after it.
int sign_width(const QFontMetrics& metrics) {
  return metrics.horizontalAdvance(QStringLiteral("▲ ")) + 2;
}

QFont font_of(const FigureCell& cell, QFont font) {
  font.setBold(cell.bold || cell.verdict == Verdict::over);
  return font;
}

/// Tabulators and line ends part cells and rows.
QString plain_cell(const QString& text) {
  return text.simplified();
}

} // namespace

void FigureModel::put(FigureContent content) {
  if (content == content_) {
    return;
  }
  const bool same_shape = content.names.size() == content_.names.size() &&
                          content.heads.size() == content_.heads.size();
  if (!same_shape) {
    beginResetModel();
    content_ = std::move(content);
    endResetModel();
    return;
  }
  content_ = std::move(content);
  if (!content_.names.isEmpty() && !content_.heads.isEmpty()) {
    emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    emit headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
    emit headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
  }
}

const FigureCell& FigureModel::cell(const QModelIndex& index) const {
  return content_.rows.at(static_cast<std::size_t>(index.row()))
      .at(static_cast<std::size_t>(index.column()));
}

int FigureModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : int(content_.names.size());
}

int FigureModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : int(content_.heads.size());
}

QString FigureModel::spoken(const QModelIndex& index) const {
  const FigureCell& at = cell(index);
  QStringList parts{content_.heads[index.column()], content_.names[index.row()], at.text};
  if (!at.against.isEmpty()) {
    parts << tr("wanted %1").arg(at.against);
  }
  if (at.verdict) {
    parts << words::verdict_word(*at.verdict);
  }
  parts.removeAll(QString());
  return parts.join(QStringLiteral(", "));
}

QVariant FigureModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) {
    return {};
  }
  switch (role) {
  case Qt::DisplayRole: return cell(index).text;
  case Qt::AccessibleTextRole: return spoken(index);
  case Qt::ToolTipRole: return QStringLiteral("<p>%1</p>").arg(spoken(index).toHtmlEscaped());
  default: return {};
  }
}

QVariant FigureModel::headerData(int section, Qt::Orientation orientation, int role) const {
  const QStringList& texts = orientation == Qt::Horizontal ? content_.heads : content_.names;
  if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole) {
    return texts.value(section);
  }
  if (role == Qt::ToolTipRole) {
    return QStringLiteral("<p>%1</p>").arg(texts.value(section).toHtmlEscaped());
  }
  return {};
}

namespace {

/// Paints one cell from its sign on.
class CellPainter {
public:
  CellPainter(QPainter& painter, const QStyleOptionViewItem& option, const FigureCell& cell,
              std::optional<double> parting, const QString& name)
      : painter_(painter), option_(option), cell_(cell), parting_(parting), name_(name),
        look_(Look::of(option.palette)),
        area_(
            option.rect.adjusted(side_padding, upright_padding, -side_padding, -upright_padding)) {}

  void paint() {
    const bool chosen = (option_.state & QStyle::State_Selected) != 0;
    painter_.fillRect(option_.rect, chosen ? look_.panel : look_.paper);
    if ((option_.state & QStyle::State_HasFocus) != 0) {
      painter_.setPen(QPen(look_.accent, 1.0));
      painter_.drawRect(option_.rect.adjusted(0, 0, -1, -1));
    }
    paint_name();
    painter_.setFont(font_of(cell_, option_.font));
    int start = 0;
    if (cell_.verdict) {
      start = sign_width(option_.fontMetrics);
      write(placed(0, start), words::verdict_sign(*cell_.verdict),
            QStyle::visualAlignment(option_.direction, Qt::AlignLeft), colour());
    }
    cell_.figure ? figures(start) : words(start);
  }

private:
  QColor colour() const {
    return cell_.verdict == Verdict::over    ? look_.over
           : cell_.verdict == Verdict::close ? look_.close
                                             : look_.ink;
  }

  /// Above what the cell says, which has the rest.
  void paint_name() {
    if (name_.isEmpty()) {
      return;
    }
    painter_.setFont(option_.font);
    painter_.setPen(look_.faint_ink);
    QRect needed;
    painter_.drawText(
        area_,
        int(QStyle::visualAlignment(option_.direction, Qt::AlignLeft) | Qt::AlignTop) |
            Qt::TextWordWrap,
        name_, &needed);
    area_.setTop(needed.bottom() + 1);
  }

  void words(int start) {
    const QRect room = placed(start, area_.width() - start);
    painter_.setPen(colour());
    painter_.drawText(room,
                      int(QStyle::visualAlignment(option_.direction, Qt::AlignLeft) | upright()) |
                          Qt::TextWordWrap,
                      cell_.text);
  }

  /// Just below a name, else in the middle.
  Qt::Alignment upright() const { return name_.isEmpty() ? Qt::AlignVCenter : Qt::AlignTop; }

  /// Numbers stand as they do in every language, reached before wanted.
  void figures(int start) {
    const QRect room = placed(start, area_.width() - start);
    const int middle = parting_ ? area_.left() + int(area_.width() * *parting_) : room.right() + 1;
    write(QRect(room.left(), room.top(), middle - room.left(), room.height()), cell_.text,
          Qt::AlignRight, colour());
    if (!cell_.against.isEmpty()) {
      write(QRect(middle, room.top(), room.right() + 1 - middle, room.height()),
            QStringLiteral(" / ") + cell_.against, Qt::AlignLeft, look_.accent);
    }
  }

  /// A stretch of the cell, counted from where a line of its language begins.
  QRect placed(int from, int width) const {
    return QStyle::visualRect(option_.direction, area_,
                              QRect(area_.left() + from, area_.top(), width, area_.height()));
  }

  void write(const QRect& room, const QString& text, Qt::Alignment alignment,
             const QColor& colour) {
    painter_.setPen(colour);
    painter_.setLayoutDirection(Qt::LeftToRight);
    const QFontMetrics metrics(painter_.font());
    painter_.drawText(room, int(alignment | upright()),
                      metrics.elidedText(text, Qt::ElideRight, room.width()));
  }

  QPainter& painter_;
  const QStyleOptionViewItem& option_;
  const FigureCell& cell_;
  std::optional<double> parting_;
  const QString& name_;
  Look look_;
  QRect area_;
};

const FigureModel& model_of(const QModelIndex& index) {
  return *static_cast<const FigureModel*>(index.model());
}

/// What the cell says besides its own: the name of its row, if those stand inside.
QString name_inside(const FigureModel& model, const QModelIndex& index) {
  return model.names_inside() ? model.content().names[index.row()] : QString();
}

int wrapped_height(const QFontMetrics& metrics, int room, const QString& text) {
  constexpr int any_height = 1 << 14;
  return std::max(
      metrics.height(),
      metrics.boundingRect(0, 0, std::max(room, 1), any_height, Qt::TextWordWrap, text).height());
}

} // namespace

void FigureDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
  painter->save();
  const FigureModel& model = model_of(index);
  const QString name = name_inside(model, index);
  CellPainter(*painter, option, model.cell(index), model.parting(), name).paint();
  painter->restore();
}

QSize FigureDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  const FigureModel& model = model_of(index);
  const FigureCell& cell = model.cell(index);
  const QFontMetrics metrics(font_of(cell, option.font));
  const int sign = cell.verdict ? sign_width(metrics) : 0;
  const int room = option.rect.width() - 2 * side_padding;
  int height = cell.figure ? metrics.height() : wrapped_height(metrics, room - sign, cell.text);
  if (const QString name = name_inside(model, index); !name.isEmpty()) {
    height += wrapped_height(QFontMetrics(option.font), room, name);
  }
  const int width = metrics.horizontalAdvance(cell.text) + 2 * side_padding + sign;
  return {width, height + 2 * upright_padding};
}

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
  const QFontMetrics metrics(font_of(cell, font()));
  const int sign = cell.verdict ? sign_width(metrics) : 0;
  const int against =
      cell.against.isEmpty() ? 0 : metrics.horizontalAdvance(QStringLiteral(" / ") + cell.against);
  return {sign + metrics.horizontalAdvance(cell.text), against + (isRightToLeft() ? sign : 0)};
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
      for (const QString& word : cell.text.split(QLatin1Char(' '))) {
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
    const QString& name = content().names[row];
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

QString FigureTable::tab_separated() const {
  const FigureContent& all = content();
  QStringList lines;
  const auto line = [&](const QString& name, const auto& text_of_cell, std::size_t row) {
    QStringList cells{plain_cell(name)};
    for (const FigureCell& cell : all.rows[row]) {
      cells << plain_cell(text_of_cell(cell));
    }
    lines << cells.join(QLatin1Char('\t'));
  };
  QStringList heads{QString()};
  for (const QString& head : all.heads) {
    heads << plain_cell(head);
  }
  lines << heads.join(QLatin1Char('\t'));
  for (std::size_t row = 0; row < all.rows.size(); ++row) {
    const QString& name = all.names[qsizetype(row)];
    line(
        name, [](const FigureCell& cell) { return cell.text; }, row);
    const auto& cells = all.rows[row];
    if (std::ranges::any_of(cells, [](const FigureCell& c) { return !c.against.isEmpty(); })) {
      line(
          tr("%1, wanted").arg(name), [](const FigureCell& cell) { return cell.against; }, row);
    }
    const auto judged = [](const FigureCell& cell) { return cell.verdict.has_value(); };
    if (std::ranges::any_of(cells, judged)) {
      line(
          tr("%1, reads").arg(name),
          [](const FigureCell& cell) {
            return cell.verdict ? words::verdict_word(*cell.verdict) : QString();
          },
          row);
    }
  }
  return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

void FigureTable::copy() const {
  QApplication::clipboard()->setText(tab_separated());
}

} // namespace feedwright
