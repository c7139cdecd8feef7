// SPDX-License-Identifier: GPL-3.0-or-later

// What columns are made of, before anything has its place.

#include "studies/plot_items.h"
#include "studies/plots.h"
#include "studies/stack_keeper.h"
#include "studies/word_widths.h"
#include "window/letters.h"

#include <qcustomplot.h>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

/// Each reads without colour, on screen and on paper.
QBrush hatching(int number, const Look& look) {
  constexpr Qt::BrushStyle styles[] = {
      Qt::SolidPattern, Qt::BDiagPattern,  Qt::Dense6Pattern, Qt::FDiagPattern,     Qt::HorPattern,
      Qt::CrossPattern, Qt::Dense4Pattern, Qt::VerPattern,    Qt::DiagCrossPattern,
  };
  const Qt::BrushStyle style = styles[static_cast<std::size_t>(number) % std::size(styles)];
  return {style == Qt::SolidPattern ? look.bar : look.faint_ink, style};
}

/// A name under a bar, in lines that are not much longer than its longest word.
QStringList lines_of_name(const QString& name, const QFont& font) {
  constexpr double short_name = 10.0; // letters, need not be broken
  constexpr double half = 0.56;       // of one that breaks near its middle
  const QFontMetricsF metrics(font);
  const double whole = metrics.horizontalAdvance(name);
  if (whole <= short_name * metrics.averageCharWidth()) {
    return {name};
  }
  double widest = half * whole;
  for (const QString& each : name.split(QLatin1Char(' '))) {
    widest = std::max(widest, metrics.horizontalAdvance(each));
  }
  return broken(name, font, int(std::ceil(widest)) + 1);
}

} // namespace

StackKeeper::StackKeeper(QCustomPlot& plot, QCPAxisRect& rect, const StudyFigure& figure,
                         const Look& look, const QFont& font)
    : QObject(&plot), plot_(plot), rect_(rect), look_(look), font_(font),
      top_(figure.panels.front().y_end) {
  setObjectName(QStringLiteral("label_keeper"));
  for (const StudyStack& stack : figure.stacks) {
    add(stack, figure.panels.front().y_unit);
  }
  connect(&plot, &QCustomPlot::afterLayout, this, qOverload<>(&StackKeeper::arrange));
}

int StackKeeper::name_lines(const StudyFigure& figure, const QFont& font) {
  qsizetype most = 1;
  for (const StudyStack& stack : figure.stacks) {
    most = std::max(most, lines_of_name(stack.name, font).size());
  }
  return int(most);
}

int StackKeeper::wanted_lines(const StudyFigure& figure) {
  std::size_t most = 1;
  for (const StudyStack& stack : figure.stacks) {
    most = std::max(most, stack.parts.size() + stack.ticks.size() + stack.notes.size());
  }
  return int(most);
}

double StackKeeper::wanted_width(const StudyFigure& figure, const QFont& font) {
  constexpr double beside = 5.0; // bar, leader and gaps, in ems
  constexpr double name = 10.0;  // of a word's name, in ems
  QFont bold = font;
  bold.setBold(true);
  const QFontMetricsF metrics(bold);
  double wanted = 0.0;
  for (const StudyStack& stack : figure.stacks) {
    double number = 0.0;
    for (const StackPart& part : stack.parts) {
      number = std::max(number, metrics.horizontalAdvance(part_number(part, QString())));
    }
    for (const StackTick& tick : stack.ticks) {
      number = std::max(number, metrics.horizontalAdvance(tick_number(tick, QString())));
    }
    wanted += widest_line(lines_of_name(stack.name, font), font) / 2.0 + number +
              (beside + name) * metrics.averageCharWidth();
  }
  return wanted;
}

StackKeeper::Word StackKeeper::word(const QString& with_unit, const QString& without_unit,
                                    const QString& full, const QColor& colour, bool strong) {
  QFont font = font_;
  font.setBold(strong);
  auto* leader = item_on<QCPItemLine>(plot_, rect_);
  leader->setPen(QPen(look_.faint_ink, 0.7));
  leader->setClipToAxisRect(false);
  leader->start->setType(QCPItemPosition::ptAbsolute);
  leader->end->setType(QCPItemPosition::ptAbsolute);
  Word made{plain_text(plot_, rect_, with_unit, colour, font),
            plain_text(plot_, rect_, full, colour, font),
            leader,
            with_unit,
            without_unit,
            full,
            0.0,
            0.0,
            false};
  made.name->setProperty(full_text_property, full);
  // Where there is no room for a name, pointing at the number tells it.
  made.number->setProperty(hint_property,
                           tr("%1 %2", "number with its unit, what it is").arg(with_unit, full));
  made.name->setTextAlignment(Qt::AlignLeft);
  return made;
}

/// With an arrow where the level lies above the scale.
QString StackKeeper::beyond(double at, const QString& text) const {
  return at > top_ ? tr("↑ %1", "a level above the scale").arg(text) : text;
}

void StackKeeper::add_parts(Column& column, const StudyStack& stack, const QString& unit) {
  constexpr double little = 0.02;
  double whole = 0.0;
  for (const StackPart& part : stack.parts) {
    whole += std::max(0.0, part.size);
  }
  double low = 0.0;
  for (const StackPart& part : stack.parts) {
    if (part.size <= 0.0) {
      continue; // nothing to see, and a word without it would be read as another's
    }
    auto* item = item_on<QCPItemRect>(plot_, rect_);
    item->setPen(QPen(look_.ink, 1.0));
    item->setBrush(hatching(part.hatching, look_));
    column.parts.push_back({item, low, low + part.size});
    Word made = word(part_number(part, unit), part_number(part, QString()), part.label,
                     part.verdict == Verdict::over ? look_.over : look_.ink, false);
    made.at = low + part.size / 2.0;
    made.weight = part.size;
    made.little = part.size < little * whole;
    column.words.push_back(std::move(made));
    low += part.size;
  }
}

void StackKeeper::add_levels(Column& column, const StudyStack& stack, const QString& unit) {
  constexpr double always = 1e300;
  const auto line = [&](const QPen& pen) {
    auto* item = item_on<QCPItemLine>(plot_, rect_);
    item->setPen(pen);
    item->setClipToAxisRect(false);
    item->start->setType(QCPItemPosition::ptAbsolute);
    item->end->setType(QCPItemPosition::ptAbsolute);
    return item;
  };
  for (const StackTick& tick : stack.ticks) {
    const QColor colour = tick.verdict == Verdict::over ? look_.over
                          : tick.target                 ? look_.accent
                                                        : look_.ink;
    QPen pen(colour, tick.target ? 2.0 : 1.4);
    if (!tick.target) {
      pen.setDashPattern({3.0, 2.0});
    }
    Level level{line(pen), tick.at};
    if (tick.part) {
      for (std::size_t i = 0; i < *tick.part; ++i) {
        level.foot += stack.parts[i].size;
      }
      level.at += level.foot;
      level.reach = line(QPen(colour, 1.4));
    }
    Word made =
        word(beyond(level.at, tick_number(tick, unit)),
             beyond(level.at, tick_number(tick, QString())), tick.label, colour, !tick.target);
    made.at = level.at;
    made.weight = always;
    column.levels.push_back(level);
    column.words.push_back(std::move(made));
  }
}

void StackKeeper::add(const StudyStack& stack, const QString& unit) {
  const QStringList lines = lines_of_name(stack.name, font_);
  Column column{plain_text(plot_, rect_, lines.join(QLatin1Char('\n')), look_.ink, font_),
                lines,
                {},
                {},
                {},
                {}};
  column.name->setTextAlignment(Qt::AlignHCenter);
  add_parts(column, stack, unit);
  add_levels(column, stack, unit);
  for (const StackNote& note : stack.notes) {
    // Neither a target nor part of a bar: plain words, and no line of the grid goes through them.
    Note made{plain_text(plot_, rect_, note.label, look_.ink, font_), note.label};
    if (made.full.indexOf(QLatin1Char(' ')) == 1) {
      made.full[1] = QChar(QChar::Nbsp); // a sign stays with its first word
    }
    made.item->setProperty(full_text_property, note.label);
    made.item->setProperty(hint_property, note.full);
    made.item->setTextAlignment(Qt::AlignLeft);
    made.item->setBrush(look_.paper);
    column.notes.push_back(std::move(made));
  }
  columns_.push_back(std::move(column));
}

} // namespace feedwright
