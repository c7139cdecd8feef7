// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "studies/formula_layout.h"

#include <QFontMetricsF>

#include <string_view>

namespace feedwright {

/// The single boxes an equation is built of. `scale` is of the font's size: 1 for the line itself,
/// less over and under a stroke.
class FormulaBoxes {
public:
  FormulaBoxes(const QFont& font, QPaintDevice* device) : font_(font), device_(device) {}

  FormulaBox upright(const QString& text, qreal scale) const;
  FormulaBox slanted(const QString& text, qreal scale) const;
  /// Slanted letters, an upright subscript after a `_`; "tan φ" has its function upright.
  FormulaBox symbol(std::string_view symbol, qreal scale) const;
  /// Digits with a minus sign and a power of ten as such, a thin space, the unit upright.
  FormulaBox number(std::string_view digits, std::string_view unit, qreal scale) const;
  FormulaBox fraction(FormulaBox over, FormulaBox under, qreal scale) const;
  FormulaBox root(FormulaBox inner, qreal scale) const;
  FormulaBox bracketed(FormulaBox inner, qreal scale) const;
  FormulaBox raised(FormulaBox base, const QString& exponent, qreal scale) const;

  /// Puts a box at the end of a row.
  void append(FormulaBox& row, FormulaBox box, qreal gap) const;

  qreal em(qreal scale) const;
  qreal hair_space(qreal scale) const { return 0.06 * em(scale); }
  qreal thin_space(qreal scale) const { return 0.17 * em(scale); }
  qreal medium_space(qreal scale) const { return 0.24 * em(scale); }
  qreal wide_space(qreal scale) const { return 0.3 * em(scale); }
  qreal between_lines() const { return 0.45 * em(1.0); }
  qreal least_ascent() const;
  qreal least_descent() const;

  /// Of what stands over or under a stroke; never too small to read.
  static qreal smaller(qreal scale);

private:
  QFont scaled(qreal scale, bool slanted) const;
  QFontMetricsF metrics(const QFont& font) const;
  FormulaBox run(const QString& text, const QFont& font) const;
  qreal axis(qreal scale) const; ///< height of minus signs and strokes over the baseline
  qreal stroke(qreal scale) const;

  QFont font_;
  QPaintDevice* device_;
};

} // namespace feedwright
