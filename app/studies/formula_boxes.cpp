// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/formula_boxes.h"

#include "text/text_of.h"

#include <QPainterPathStroker>

#include <algorithm>

namespace feedwright {

namespace {

using Kind = FormulaBox::Kind;

constexpr qreal script_scale = 0.72;
constexpr qreal least_scale = 0.78;

void put(FormulaBox& parent, FormulaBox box, const QPointF& at) {
  box.at = at;
  parent.inside.push_back(std::move(box));
}

/// "ρ'" with a prime, not an apostrophe.
QString with_prime(QString text) {
  return text.replace(QLatin1Char('\''), QChar(0x2032));
}

} // namespace

QFont FormulaBoxes::scaled(qreal scale, bool slanted) const {
  QFont made = font_;
  made.setItalic(slanted);
  if (font_.pixelSize() > 0) {
    // Whole pixels would make steps of what should shrink evenly; only paper is set in pixels.
    made.setPixelSize(std::max(1, qRound(font_.pixelSize() * scale)));
  } else {
    made.setPointSizeF(font_.pointSizeF() * scale);
  }
  return made;
}

QFontMetricsF FormulaBoxes::metrics(const QFont& font) const {
  return device_ != nullptr ? QFontMetricsF(font, device_) : QFontMetricsF(font);
}

FormulaBox FormulaBoxes::run(const QString& text, const QFont& font) const {
  const QFontMetricsF measured = metrics(font);
  const QRectF ink = measured.tightBoundingRect(text);
  FormulaBox made;
  made.kind = Kind::text;
  made.text = text;
  made.font = font;
  // A slanted letter leans out of its advance.
  made.width = std::max(measured.horizontalAdvance(text), ink.right());
  made.ascent = std::max(-ink.top(), measured.xHeight());
  made.descent = std::max(ink.bottom(), 0.0);
  return made;
}

FormulaBox FormulaBoxes::upright(const QString& text, qreal scale) const {
  return run(text, scaled(scale, false));
}

FormulaBox FormulaBoxes::slanted(const QString& text, qreal scale) const {
  return run(text, scaled(scale, true));
}

qreal FormulaBoxes::em(qreal scale) const {
  const QFont font = scaled(scale, false);
  return metrics(font).height() * 0.86;
}

qreal FormulaBoxes::axis(qreal scale) const {
  return metrics(scaled(scale, false)).xHeight() * 0.5;
}

qreal FormulaBoxes::stroke(qreal scale) const {
  return std::max(1.0, em(scale) * 0.065);
}

qreal FormulaBoxes::least_ascent() const {
  return metrics(font_).capHeight();
}

qreal FormulaBoxes::least_descent() const {
  return metrics(font_).descent() * 0.5;
}

qreal FormulaBoxes::smaller(qreal scale) {
  return std::max(scale * 0.92, least_scale);
}

void FormulaBoxes::append(FormulaBox& row, FormulaBox box, qreal gap) const {
  row.ascent = std::max(row.ascent, box.ascent);
  row.descent = std::max(row.descent, box.descent);
  const qreal x = row.width + gap;
  row.width = x + box.width;
  put(row, std::move(box), QPointF(x, 0.0));
}

FormulaBox FormulaBoxes::symbol(std::string_view symbol, qreal scale) const {
  const auto [base, subscript] = symbol_parts(symbol);
  QString letters = with_prime(text_of(base));
  FormulaBox made;
  made.kind = Kind::script;
  if (const qsizetype space = letters.indexOf(QLatin1Char(' ')); space > 0) {
    append(made, upright(letters.left(space), scale), 0.0);
    letters = letters.mid(space + 1);
    append(made, slanted(letters, scale), thin_space(scale));
  } else {
    const bool is_letter = !letters.isEmpty() && letters.front().isLetter();
    append(made, is_letter ? slanted(letters, scale) : upright(letters, scale), 0.0);
  }
  if (subscript.empty()) {
    return made;
  }
  FormulaBox lower = upright(with_prime(text_of(subscript)), scale * script_scale);
  const qreal drop =
      std::max(0.2 * em(scale), lower.ascent - 0.75 * metrics(scaled(scale, false)).xHeight());
  const qreal x = made.width + 0.3 * hair_space(scale);
  made.descent = std::max(made.descent, drop + lower.descent);
  made.ascent = std::max(made.ascent, lower.ascent - drop);
  made.width = x + lower.width;
  put(made, std::move(lower), QPointF(x, drop));
  return made;
}

FormulaBox FormulaBoxes::number(std::string_view digits, std::string_view unit, qreal scale) const {
  const auto [plain, exponent] = number_parts(digits);
  const auto with_minus = [](std::string_view text) {
    return text_of(text).replace(QLatin1Char('-'), QChar(0x2212));
  };
  FormulaBox made;
  append(made, upright(with_minus(plain), scale), 0.0);
  if (!exponent.empty()) {
    append(made, upright(QStringLiteral("·"), scale), thin_space(scale));
    append(made, raised(upright(QStringLiteral("10"), scale), with_minus(exponent), scale),
           thin_space(scale));
  }
  if (!unit.empty()) {
    append(made, upright(text_of(unit), scale), thin_space(scale));
  }
  return made;
}

FormulaBox FormulaBoxes::fraction(FormulaBox over, FormulaBox under, qreal scale) const {
  const qreal line = stroke(scale);
  const qreal gap = 0.14 * em(scale);
  const qreal overhang = 0.1 * em(scale);
  const qreal above = axis(scale) + line / 2.0;
  const qreal below = axis(scale) - line / 2.0;
  FormulaBox made;
  made.kind = Kind::fraction;
  const qreal bar = std::max(over.width, under.width) + 2.0 * overhang;
  // A hair on either side, so that two fractions in a row have two bars.
  const qreal side = hair_space(scale);
  made.width = bar + 2.0 * side;
  made.ascent = above + gap + over.descent + over.ascent;
  made.descent = std::max(gap + under.ascent + under.descent - below, 0.0);
  made.strokes.addRect(side, -above, bar, line);
  const QPointF over_at((made.width - over.width) / 2.0, -(above + gap + over.descent));
  const QPointF under_at((made.width - under.width) / 2.0, gap + under.ascent - below);
  put(made, std::move(over), over_at);
  put(made, std::move(under), under_at);
  return made;
}

FormulaBox FormulaBoxes::root(FormulaBox inner, qreal scale) const {
  const qreal line = stroke(scale);
  const qreal gap = 0.12 * em(scale);
  const qreal sign = 0.62 * em(scale);
  const qreal end = 0.08 * em(scale);
  FormulaBox made;
  made.kind = Kind::root;
  made.ascent = inner.ascent + gap + line;
  made.descent = inner.descent + line;
  made.width = sign + inner.width + end;
  const qreal top = -(inner.ascent + gap + line / 2.0);
  const qreal bottom = inner.descent;
  const qreal height = bottom - top;
  QPainterPath path;
  path.moveTo(line, bottom - std::min(0.5 * height, 0.55 * em(scale)) + 0.06 * em(scale));
  path.lineTo(sign * 0.3, bottom - std::min(0.5 * height, 0.55 * em(scale)));
  path.lineTo(sign * 0.58, bottom);
  path.lineTo(sign * 0.92, top);
  path.lineTo(made.width - line / 2.0, top);
  QPainterPathStroker pen;
  pen.setWidth(line);
  pen.setJoinStyle(Qt::MiterJoin);
  pen.setMiterLimit(1.5);
  made.strokes = pen.createStroke(path);
  made.strokes.setFillRule(Qt::WindingFill);
  put(made, std::move(inner), QPointF(sign, 0.0));
  return made;
}

FormulaBox FormulaBoxes::bracketed(FormulaBox inner, qreal scale) const {
  FormulaBox made;
  made.kind = Kind::brackets;
  const FormulaBox open = upright(QStringLiteral("("), scale);
  constexpr qreal tall = 1.25;
  if (inner.height() <= open.height() * tall) {
    append(made, open, 0.0);
    append(made, std::move(inner), 0.0);
    append(made, upright(QStringLiteral(")"), scale), 0.0);
    return made;
  }
  const qreal margin = 0.06 * em(scale);
  const qreal thick = 1.5 * stroke(scale);
  const qreal bow = std::min(0.34 * em(scale), 0.16 * inner.height()) + thick;
  made.ascent = inner.ascent + margin;
  made.descent = inner.descent + margin;
  const qreal middle = (made.descent - made.ascent) / 2.0;
  made.width = 2.0 * (bow + margin) + inner.width;
  const auto bracket = [&](qreal tip, qreal back, qreal thickness) {
    QPainterPath path;
    path.moveTo(tip, -made.ascent);
    path.quadTo(2.0 * back - tip, middle, tip, made.descent);
    path.quadTo(2.0 * (back + thickness) - tip, middle, tip, -made.ascent);
    path.closeSubpath();
    return path;
  };
  made.strokes = bracket(bow, 0.0, thick);
  made.strokes.addPath(bracket(made.width - bow, made.width, -thick));
  put(made, std::move(inner), QPointF(bow + margin, 0.0));
  return made;
}

FormulaBox FormulaBoxes::raised(FormulaBox base, const QString& exponent, qreal scale) const {
  FormulaBox upper = upright(exponent, scale * script_scale);
  FormulaBox made;
  made.kind = Kind::script;
  const qreal rise = std::max(base.ascent - 0.55 * upper.ascent, 0.36 * em(scale));
  const qreal x = base.width + hair_space(scale);
  made.ascent = std::max(base.ascent, rise + upper.ascent);
  made.descent = std::max(base.descent, upper.descent - rise);
  made.width = x + upper.width;
  put(made, std::move(base), {});
  put(made, std::move(upper), QPointF(x, -rise));
  return made;
}

} // namespace feedwright
