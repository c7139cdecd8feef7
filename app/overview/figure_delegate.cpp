// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/figure_measure.h"
#include "overview/figure_table.h"
#include "text/words.h"
#include "window/style.h"

#include <QPainter>

#include <algorithm>

namespace feedwright {

using namespace figure_measure;

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
                      words_of(cell_));
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

  /// Whole, whatever the room: a figure that is cut is another figure.
  void write(const QRect& room, const QString& text, Qt::Alignment alignment,
             const QColor& colour) {
    painter_.setPen(colour);
    painter_.setLayoutDirection(Qt::LeftToRight);
    painter_.drawText(room, int(alignment | upright()) | Qt::TextDontClip, text);
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
  return model.names_inside() ? with_whole_quantities(model.content().names[index.row()])
                              : QString();
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
  int height =
      cell.figure ? metrics.height() : wrapped_height(metrics, room - sign, words_of(cell));
  if (const QString name = name_inside(model, index); !name.isEmpty()) {
    height += wrapped_height(QFontMetrics(option.font), room, name);
  }
  const int width = metrics.horizontalAdvance(cell.text) + 2 * side_padding + sign;
  return {width, height + 2 * upright_padding};
}

} // namespace feedwright
