// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Sets an equation as a textbook does: fractions with bars, roots, subscripts, brackets that grow;
// variables slanted, numbers, units and names of functions upright. Boxes in boxes, each with its
// place on its parent's baseline; painted with a QPainter on a window or on paper.

#include "working/notation.h"

#include <QFont>
#include <QPainterPath>
#include <QRectF>
#include <QString>

#include <optional>
#include <vector>

class QColor;
class QPaintDevice;
class QPainter;

namespace feedwright {

struct FormulaBox {
  /// What a test or a reader of the code wants to tell apart.
  enum class Kind : std::uint8_t { row, text, fraction, root, script, brackets };
  Kind kind = Kind::row;
  QPointF at; ///< left end of its baseline, in its parent
  qreal width = 0.0;
  qreal ascent = 0.0;  ///< above the baseline
  qreal descent = 0.0; ///< below it
  QString text;        ///< a run of text, if that is what it is
  QFont font;
  QPainterPath strokes;            ///< bar, root sign or brackets, filled; on its own baseline
  std::optional<std::size_t> term; ///< of the working that stands here
  std::vector<FormulaBox> inside;

  QRectF rect() const { return {at.x(), at.y() - ascent, width, ascent + descent}; }
  qreal height() const { return ascent + descent; }
};

/// One formula on one line, however long.
FormulaBox set_formula(const Notation& notation, const QFont& font, QPaintDevice* device = nullptr);

/// `left` = each of `rights`, one below the other at the first sign of equality, broken at
/// operators where a line is longer than `width`. The box's own baseline is its top.
FormulaBox set_equations(const Notation& left, const std::vector<Notation>& rights,
                         const QFont& font, qreal width, QPaintDevice* device = nullptr);

/// With the box's top left corner at `top_left`.
void paint_formula(QPainter& painter, const FormulaBox& box, const QPointF& top_left,
                   const QColor& colour);

/// Where a term stands, in coordinates that start at the box's top left corner; one place for each
/// time it is named.
std::vector<QRectF> places_of_term(const FormulaBox& box, std::size_t term);
std::optional<std::size_t> term_at(const FormulaBox& box, const QPointF& point);

} // namespace feedwright
