// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/formula_layout.h"

#include "studies/formula_boxes.h"

#include <QPainter>

#include <algorithm>

namespace feedwright {

namespace {

using Form = Notation::Form;
using Kind = FormulaBox::Kind;

/// What is never broken, with how it stands to what is before it on the line.
struct Atom {
  FormulaBox box;
  qreal gap = 0.0;
  bool may_break = false; ///< before it
  /// A factor that starts a line shows the sign that a thin space stood for.
  bool factor = false;
};
using Atoms = std::vector<Atom>;

bool begins_with_number(const Notation& part) {
  switch (part.form) {
  case Form::number: return true;
  case Form::fraction:
  case Form::product:
  case Form::sum:
  case Form::square: return begins_with_number(part.parts.front());
  default: return false;
  }
}

bool ends_with_number(const Notation& part) {
  switch (part.form) {
  case Form::number: return true;
  case Form::fraction: return begins_with_number(part);
  case Form::product: return ends_with_number(part.parts.back());
  default: return false;
  }
}

class Setter {
public:
  /// `whole`: the widest that brackets, bar or root stay closed round.
  Setter(const QFont& font, QPaintDevice* device, qreal room, qreal whole)
      : boxes_(font, device), room_(room), whole_(whole) {}

  Atoms atoms_of(const Notation& n, qreal scale) const {
    switch (n.form) {
    case Form::symbol: return single(with_term(boxes_.symbol(n.text, scale), n));
    case Form::number: return single(with_term(boxes_.number(n.text, n.unit, scale), n));
    case Form::sum: return sum(n, scale);
    case Form::product: return product(n, scale);
    case Form::fraction: return fraction(n, scale);
    case Form::negative: return negative(n, scale);
    case Form::square: return square(n, scale);
    case Form::root: return root(n, scale);
    case Form::function: return function(n, scale);
    case Form::solved: return solved(n, scale);
    case Form::relation: break;
    }
    return relation(n, scale);
  }

  /// All on one line.
  FormulaBox row(const Atoms& atoms) const {
    FormulaBox made;
    for (const Atom& atom : atoms) {
      boxes_.append(made, atom.box, made.inside.empty() ? 0.0 : atom.gap);
    }
    return made;
  }

  /// In lines no wider than the room, where there are places to break.
  std::vector<FormulaBox> lines(const Atoms& atoms) const {
    std::vector<FormulaBox> made(1);
    for (std::size_t from = 0; from < atoms.size();) {
      std::size_t to = from + 1;
      while (to < atoms.size() && !atoms[to].may_break) {
        ++to;
      }
      qreal width = 0.0;
      for (std::size_t i = from; i < to; ++i) {
        width += atoms[i].gap + atoms[i].box.width;
      }
      if (!made.back().inside.empty() && made.back().width + width > room_) {
        made.emplace_back();
        if (atoms[from].factor) {
          boxes_.append(made.back(), boxes_.upright(QStringLiteral("·"), 1.0), 0.0);
        }
      }
      for (; from < to; ++from) {
        boxes_.append(made.back(), atoms[from].box,
                      made.back().inside.empty() ? 0.0 : atoms[from].gap);
      }
    }
    return made;
  }

  const FormulaBoxes& boxes() const { return boxes_; }

private:
  static Atoms single(FormulaBox box) {
    Atoms made(1);
    made[0].box = std::move(box);
    return made;
  }
  static FormulaBox with_term(FormulaBox box, const Notation& n) {
    box.term = n.term;
    return box;
  }
  static void add(Atoms& to, Atoms more, qreal gap = 0.0, bool may_break = false) {
    more.front().gap = gap;
    more.front().may_break = may_break;
    std::move(more.begin(), more.end(), std::back_inserter(to));
  }
  void add_text(Atoms& to, const QString& text, qreal scale, qreal gap = 0.0,
                bool may_break = false) const {
    add(to, single(boxes_.upright(text, scale)), gap, may_break);
  }

  /// Brackets round it: grown to its height, or broken open where it is too wide.
  Atoms bracketed(const Notation& inner, qreal scale) const {
    FormulaBox closed = boxes_.bracketed(row(atoms_of(inner, scale)), scale);
    if (closed.width <= whole_) {
      return single(std::move(closed));
    }
    Atoms made;
    add_text(made, QStringLiteral("("), scale);
    add(made, atoms_of(inner, scale));
    add_text(made, QStringLiteral(")"), scale);
    return made;
  }

  Atoms part(const Notation& whole, std::size_t i, qreal scale) const {
    return wants_brackets(whole, i, false) ? bracketed(whole.parts[i], scale)
                                           : atoms_of(whole.parts[i], scale);
  }

  Atoms sum(const Notation& n, qreal scale) const {
    Atoms made = part(n, 0, scale);
    const qreal gap = boxes_.medium_space(scale);
    for (std::size_t i = 1; i < n.parts.size(); ++i) {
      const bool minus = n.parts[i].form == Form::negative;
      add_text(made, minus ? QStringLiteral("−") : QStringLiteral("+"), scale, gap, true);
      add(made, minus ? part(n.parts[i], 0, scale) : part(n, i, scale), gap);
    }
    return made;
  }

  Atoms product(const Notation& n, qreal scale) const {
    Atoms made = part(n, 0, scale);
    for (std::size_t i = 1; i < n.parts.size(); ++i) {
      const Notation& before = n.parts[i - 1];
      const bool unit_before = before.form == Form::number && !before.unit.empty();
      const bool dot = begins_with_number(n.parts[i]) || unit_before ||
                       (ends_with_number(before) && n.parts[i].form == Form::fraction);
      if (dot) {
        add_text(made, QStringLiteral("·"), scale, boxes_.medium_space(scale), true);
        add(made, part(n, i, scale), boxes_.medium_space(scale));
      } else {
        Atoms factor = part(n, i, scale);
        factor.front().factor = true;
        add(made, std::move(factor), boxes_.thin_space(scale), true);
      }
    }
    return made;
  }

  Atoms fraction(const Notation& n, qreal scale) const {
    const qreal inner = FormulaBoxes::smaller(scale);
    FormulaBox closed =
        boxes_.fraction(row(atoms_of(n.parts[0], inner)), row(atoms_of(n.parts[1], inner)), scale);
    if (closed.width <= whole_) {
      return single(std::move(closed));
    }
    const auto side = [&](std::size_t i) {
      return wants_brackets(n, i, true) ? bracketed(n.parts[i], scale)
                                        : atoms_of(n.parts[i], scale);
    };
    Atoms made = side(0);
    add_text(made, QStringLiteral("/"), scale, boxes_.thin_space(scale), true);
    add(made, side(1), boxes_.thin_space(scale));
    return made;
  }

  Atoms negative(const Notation& n, qreal scale) const {
    Atoms made;
    add_text(made, QStringLiteral("−"), scale);
    add(made, part(n, 0, scale), boxes_.hair_space(scale));
    return made;
  }

  Atoms square(const Notation& n, qreal scale) const {
    Atoms base = part(n, 0, scale);
    const QString two = QStringLiteral("2");
    if (base.size() == 1) {
      return single(boxes_.raised(std::move(base[0].box), two, scale));
    }
    FormulaBox last = boxes_.raised(std::move(base.back().box), two, scale);
    base.back().box = std::move(last);
    return base;
  }

  Atoms root(const Notation& n, qreal scale) const {
    FormulaBox closed = boxes_.root(row(atoms_of(n.parts[0], scale)), scale);
    if (closed.width <= whole_) {
      return single(std::move(closed));
    }
    Atoms made;
    add_text(made, QStringLiteral("√"), scale);
    add(made, bracketed(n.parts[0], scale));
    return made;
  }

  Atoms function(const Notation& n, qreal scale) const {
    Atoms made;
    add_text(made, QString::fromStdString(n.text), scale);
    // A number in a sum, or a symbol of two words, would leave open how far the function reaches.
    const Notation& inner = n.parts[0];
    const bool bare = inner.form == Form::symbol && inner.text.find(' ') == std::string::npos;
    add(made, bare ? atoms_of(n.parts[0], scale) : bracketed(n.parts[0], scale),
        boxes_.thin_space(scale));
    return made;
  }

  Atoms solved(const Notation& n, qreal scale) const {
    Atoms made = single(boxes_.slanted(QString::fromStdString(n.text), scale));
    if (n.parts.empty()) {
      return made;
    }
    add_text(made, QStringLiteral("("), scale);
    for (std::size_t i = 0; i < n.parts.size(); ++i) {
      if (i > 0) {
        add_text(made, QStringLiteral(";"), scale);
      }
      add(made, atoms_of(n.parts[i], scale), i > 0 ? boxes_.medium_space(scale) : 0.0, i > 0);
    }
    add_text(made, QStringLiteral(")"), scale);
    return made;
  }

  Atoms relation(const Notation& n, qreal scale) const {
    Atoms made = atoms_of(n.parts[0], scale);
    const qreal gap = boxes_.wide_space(scale);
    for (std::size_t i = 1; i < n.parts.size(); ++i) {
      add_text(made, QString::fromStdString(n.text), scale, gap, true);
      add(made, atoms_of(n.parts[i], scale), gap);
    }
    return made;
  }

  FormulaBoxes boxes_;
  qreal room_;
  qreal whole_;
};

void paint_box(QPainter& painter, const FormulaBox& box, const QPointF& baseline) {
  if (!box.text.isEmpty()) {
    painter.setFont(box.font);
    painter.drawText(baseline, box.text);
  }
  if (!box.strokes.isEmpty()) {
    painter.fillPath(box.strokes.translated(baseline), painter.pen().color());
  }
  for (const FormulaBox& inner : box.inside) {
    paint_box(painter, inner, baseline + inner.at);
  }
}

void find_term(const FormulaBox& box, std::size_t term, const QPointF& baseline,
               std::vector<QRectF>& places) {
  if (box.term == term) {
    places.emplace_back(baseline.x(), baseline.y() - box.ascent, box.width, box.height());
  }
  for (const FormulaBox& inner : box.inside) {
    find_term(inner, term, baseline + inner.at, places);
  }
}

std::optional<std::size_t> term_under(const FormulaBox& box, const QPointF& point,
                                      const QPointF& baseline) {
  for (const FormulaBox& inner : box.inside) {
    if (const auto found = term_under(inner, point, baseline + inner.at)) {
      return found;
    }
  }
  const QRectF area(baseline.x(), baseline.y() - box.ascent, box.width, box.height());
  return box.term && area.contains(point) ? box.term : std::nullopt;
}

QPointF baseline_of(const FormulaBox& box, const QPointF& top_left) {
  return top_left + QPointF(0.0, box.ascent);
}

/// What is closed may just fill a line, and then leaves no room for the signs that belong to it:
/// smaller and smaller parts are broken open until the lines keep to the room.
std::vector<FormulaBox> lines_within(const Notation& notation, const QFont& font,
                                     QPaintDevice* device, qreal room, qreal least) {
  constexpr qreal less = 0.8;
  for (qreal whole = room;; whole *= less) {
    const Setter setter(font, device, room, whole);
    std::vector<FormulaBox> lines = setter.lines(setter.atoms_of(notation, 1.0));
    const bool fits =
        std::ranges::all_of(lines, [room](const FormulaBox& line) { return line.width <= room; });
    if (fits || whole < least) {
      return lines;
    }
  }
}

} // namespace

FormulaBox set_formula(const Notation& notation, const QFont& font, QPaintDevice* device) {
  constexpr qreal endless = 1e9;
  const Setter setter(font, device, endless, endless);
  return setter.row(setter.atoms_of(notation, 1.0));
}

FormulaBox set_equations(const Notation& left, const std::vector<Notation>& rights,
                         const QFont& font, qreal width, QPaintDevice* device) {
  const FormulaBoxes boxes(font, device);
  const FormulaBox sign = boxes.upright(QStringLiteral("="), 1.0);
  const FormulaBox named = set_formula(left, font, device);
  const qreal gap = boxes.wide_space(1.0);
  const qreal start = named.width + gap + sign.width + gap;
  const qreal least = boxes.em(1.0);
  const qreal room = std::max(width - start, least);
  FormulaBox made;
  qreal y = 0.0;
  const auto place = [&](FormulaBox box, qreal x) {
    box.at = QPointF(x, y);
    made.width = std::max(made.width, x + box.width);
    made.inside.push_back(std::move(box));
  };
  for (std::size_t i = 0; i < rights.size(); ++i) {
    const auto lines = lines_within(rights[i], font, device, room, least);
    for (std::size_t k = 0; k < lines.size(); ++k) {
      const bool first = i == 0 && k == 0;
      const qreal ascent =
          std::max({lines[k].ascent, boxes.least_ascent(), first ? named.ascent : 0.0});
      const qreal descent =
          std::max({lines[k].descent, boxes.least_descent(), first ? named.descent : 0.0});
      y += ascent + (first ? 0.0 : boxes.between_lines());
      if (first) {
        place(named, 0.0);
      }
      if (k == 0) {
        place(sign, named.width + gap);
      }
      place(lines[k], start);
      y += descent;
    }
  }
  made.descent = y;
  return made;
}

void paint_formula(QPainter& painter, const FormulaBox& box, const QPointF& top_left,
                   const QColor& colour) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  // Mathematics runs from left to right in every language.
  painter.setLayoutDirection(Qt::LeftToRight);
  painter.setPen(colour);
  paint_box(painter, box, baseline_of(box, top_left));
  painter.restore();
}

std::vector<QRectF> places_of_term(const FormulaBox& box, std::size_t term) {
  std::vector<QRectF> places;
  find_term(box, term, baseline_of(box, {}), places);
  return places;
}

std::optional<std::size_t> term_at(const FormulaBox& box, const QPointF& point) {
  return term_under(box, point, baseline_of(box, {}));
}

} // namespace feedwright
