// SPDX-License-Identifier: GPL-3.0-or-later
#include "working/notation.h"

#include <fmt/format.h>

#include <algorithm>

namespace feedwright {

namespace {

using Form = Notation::Form;

void take(std::vector<Notation>& parts, Notation part, Form form) {
  if (part.form != form) {
    parts.push_back(std::move(part));
    return;
  }
  for (Notation& inner : part.parts) {
    parts.push_back(std::move(inner));
  }
}

Notation of_parts(Form form, std::vector<Notation> parts) {
  Notation made;
  made.form = form;
  made.parts = std::move(parts);
  return made;
}

bool starts_with_digit(std::string_view text) {
  return !text.empty() && text.front() >= '0' && text.front() <= '9';
}

Grip grip_of_number(const Notation& number) {
  if (number.text.starts_with('-')) {
    return Grip::sum;
  }
  // "5 mm" squared wants brackets, as a product would; so does 2π below a stroke.
  const bool multiple_of_pi =
      starts_with_digit(number.text) && number.text.find("π") != number.text.npos;
  const bool power_of_ten = !number_parts(number.text).exponent.empty();
  return !number.unit.empty() || multiple_of_pi || power_of_ten ? Grip::product : Grip::whole;
}

Grip grip_of(const Notation& part) {
  switch (part.form) {
  case Form::number: return grip_of_number(part);
  // "tan φ"
  case Form::symbol: return part.text.find(' ') == part.text.npos ? Grip::whole : Grip::product;
  case Form::sum:
  case Form::negative:
  case Form::relation: return Grip::sum;
  case Form::product:
  case Form::fraction: return Grip::product;
  case Form::square: return Grip::power;
  case Form::root:
  case Form::function:
  case Form::solved: break;
  }
  return Grip::whole;
}

} // namespace

namespace notation {

Notation sum(Notation a, Notation b) {
  std::vector<Notation> parts;
  take(parts, std::move(a), Form::sum);
  take(parts, std::move(b), Form::sum);
  return of_parts(Form::sum, std::move(parts));
}

Notation difference(Notation a, Notation b) {
  std::vector<Notation> parts;
  take(parts, std::move(a), Form::sum);
  parts.push_back(of_parts(Form::negative, {std::move(b)}));
  return of_parts(Form::sum, std::move(parts));
}

Notation product(Notation a, Notation b) {
  std::vector<Notation> parts;
  take(parts, std::move(a), Form::product);
  take(parts, std::move(b), Form::product);
  return of_parts(Form::product, std::move(parts));
}

Notation fraction(Notation over, Notation under) {
  if (over.form == Form::fraction) {
    Notation whole = product(std::move(over.parts[1]), std::move(under));
    return of_parts(Form::fraction, {std::move(over.parts[0]), std::move(whole)});
  }
  return of_parts(Form::fraction, {std::move(over), std::move(under)});
}

} // namespace notation

bool wants_brackets(const Notation& whole, std::size_t part, bool in_line) {
  const Notation& inner = whole.parts[part];
  switch (whole.form) {
  case Form::sum:
    // What is taken away says so by its own sign.
    return part > 0 && inner.form != Form::negative && grip_of(inner) < Grip::product;
  case Form::negative:
  case Form::product: return grip_of(inner) < Grip::product;
  case Form::fraction: return in_line && grip_of(inner) < (part == 0 ? Grip::product : Grip::power);
  case Form::square:
    return grip_of(inner) < Grip::whole || inner.form == Form::function ||
           inner.form == Form::solved;
  default: return false;
  }
}

SymbolParts symbol_parts(std::string_view symbol) {
  const std::size_t mark = symbol.find('_');
  return mark == symbol.npos ? SymbolParts{symbol, {}}
                             : SymbolParts{symbol.substr(0, mark), symbol.substr(mark + 1)};
}

NumberParts number_parts(std::string_view digits) {
  const std::size_t mark = digits.find('e');
  const bool power = starts_with_digit(digits) || digits.starts_with('-');
  return !power || mark == digits.npos
             ? NumberParts{digits, {}}
             : NumberParts{digits.substr(0, mark), digits.substr(mark + 1)};
}

namespace {

class LineWriter {
public:
  std::string written(const Notation& what) const {
    switch (what.form) {
    case Form::symbol: return what.text;
    case Form::number: return with_unit(what);
    case Form::sum: return sum(what);
    case Form::product: return joined(what, " · ");
    case Form::fraction: return joined(what, " / ");
    case Form::negative: return "−" + part(what, 0);
    case Form::square: return squared(what);
    case Form::root: return "√(" + part(what, 0) + ")";
    case Form::function: return what.text + "(" + part(what, 0) + ")";
    case Form::solved: return "f(" + joined(what, "; ") + ")";
    case Form::relation: break;
    }
    return joined(what, " " + what.text + " ");
  }

private:
  static std::string with_unit(const Notation& number) {
    const bool tight = number.unit == "°" || number.unit == "\"" || number.unit == "'";
    return number.unit.empty() ? number.text : number.text + (tight ? "" : " ") + number.unit;
  }

  std::string part(const Notation& whole, std::size_t i) const {
    const std::string inner = written(whole.parts[i]);
    return wants_brackets(whole, i, true) ? "(" + inner + ")" : inner;
  }

  std::string squared(const Notation& what) const {
    // Its own brackets are enough on a line.
    const bool closed = what.parts[0].form == Form::function || what.parts[0].form == Form::solved;
    return (closed ? written(what.parts[0]) : part(what, 0)) + "²";
  }

  std::string joined(const Notation& whole, const std::string& between) const {
    std::string line;
    for (std::size_t i = 0; i < whole.parts.size(); ++i) {
      line += (i > 0 ? between : "") + part(whole, i);
    }
    return line;
  }

  std::string sum(const Notation& whole) const {
    std::string line;
    for (std::size_t i = 0; i < whole.parts.size(); ++i) {
      const Notation& inner = whole.parts[i];
      if (i > 0 && inner.form == Form::negative) {
        line += " − " + part(inner, 0);
      } else {
        line += (i > 0 ? " + " : "") + part(whole, i);
      }
    }
    return line;
  }
};

class MathmlWriter {
public:
  std::string written(const Notation& what) const {
    switch (what.form) {
    case Form::symbol: return symbol(what.text);
    case Form::number: return number(what);
    case Form::sum: return sum(what);
    case Form::product: return row(joined(what, is_of_numbers(what) ? "<mo>·</mo>" : thin_space));
    case Form::fraction: return element("mfrac", part(what, 0) + part(what, 1));
    case Form::negative: return row("<mo>−</mo>" + part(what, 0));
    case Form::square: return element("msup", part(what, 0) + "<mn>2</mn>");
    case Form::root: return element("msqrt", part(what, 0));
    case Form::function: return row(upright(what.text) + bracketed(part(what, 0)));
    case Form::solved: return row("<mi>f</mi>" + bracketed(row(joined(what, "<mo>;</mo>"))));
    case Form::relation: break;
    }
    return row(joined(what, "<mo>" + escaped(what.text) + "</mo>"));
  }

private:
  static constexpr const char* thin_space = "<mspace width=\"0.17em\"/>";

  static std::string escaped(std::string_view text) {
    std::string made;
    for (const char c : text) {
      switch (c) {
      case '&': made += "&amp;"; break;
      case '<': made += "&lt;"; break;
      case '>': made += "&gt;"; break;
      default: made += c;
      }
    }
    return made;
  }
  static std::string element(std::string_view name, const std::string& inside) {
    return fmt::format("<{0}>{1}</{0}>", name, inside);
  }
  static std::string row(const std::string& inside) { return element("mrow", inside); }
  static std::string bracketed(const std::string& inside) {
    return fmt::format("<mrow><mo>(</mo>{}<mo>)</mo></mrow>", inside);
  }
  static std::string upright(std::string_view text) {
    return fmt::format("<mi mathvariant=\"normal\">{}</mi>", escaped(text));
  }
  static bool is_of_numbers(const Notation& product) {
    return std::ranges::any_of(product.parts, [](const Notation& part) {
      return part.form == Form::number && !part.unit.empty();
    });
  }

  static std::string symbol(std::string_view text) {
    const auto [base, subscript] = symbol_parts(text);
    std::string letters;
    if (const std::size_t space = base.find(' '); space != base.npos) {
      letters = row(upright(base.substr(0, space)) + thin_space +
                    element("mi", escaped(base.substr(space + 1))));
    } else {
      letters =
          starts_with_digit(base) ? element("mn", escaped(base)) : element("mi", escaped(base));
    }
    return subscript.empty() ? letters : element("msub", letters + upright(subscript));
  }

  static std::string number(const Notation& what) {
    const auto [digits, exponent] = number_parts(what.text);
    std::string made = element("mn", escaped(digits));
    if (!exponent.empty()) {
      made += "<mo>·</mo>" + element("msup", "<mn>10</mn><mn>" + std::string(exponent) + "</mn>");
    }
    if (!what.unit.empty()) {
      made += thin_space + upright(what.unit);
    }
    return exponent.empty() && what.unit.empty() ? made : row(made);
  }

  std::string part(const Notation& whole, std::size_t i) const {
    const std::string inner = written(whole.parts[i]);
    return wants_brackets(whole, i, false) ? bracketed(inner) : inner;
  }

  std::string joined(const Notation& whole, const std::string& between) const {
    std::string made;
    for (std::size_t i = 0; i < whole.parts.size(); ++i) {
      made += (i > 0 ? between : "") + part(whole, i);
    }
    return made;
  }

  std::string sum(const Notation& whole) const {
    std::string made;
    for (std::size_t i = 0; i < whole.parts.size(); ++i) {
      const Notation& inner = whole.parts[i];
      if (i > 0 && inner.form == Form::negative) {
        made += "<mo>−</mo>" + part(inner, 0);
      } else {
        made += (i > 0 ? "<mo>+</mo>" : "") + part(whole, i);
      }
    }
    return row(made);
  }
};

} // namespace

std::string write_line(const Notation& notation) {
  return LineWriter().written(notation);
}

std::string write_mathml(const Notation& notation) {
  return "<math xmlns=\"http://www.w3.org/1998/Math/MathML\" display=\"block\">" +
         MathmlWriter().written(notation) + "</math>";
}

} // namespace feedwright
