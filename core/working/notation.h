// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// An equation as a textbook has it: what stands in it and what stands over or under what, without
// places or fonts. One tree is set on the screen and on paper, and written as a line or as MathML.

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace feedwright {

struct Notation {
  enum class Form : std::uint8_t {
    symbol,   ///< a quantity's sign, `_` before a subscript
    number,   ///< digits, perhaps with a unit
    sum,      ///< two or more parts; those taken away are `negative`
    product,  ///< two or more factors
    fraction, ///< what is over the stroke, what is under it
    negative, ///< one part
    square,   ///< one part
    root,     ///< square root of one part
    function, ///< `text` of one part
    solved,   ///< found by solving an equation over its parts
    relation, ///< parts with `text` ("=") between them
  };
  Form form = Form::number;
  std::string text = {}; ///< of a symbol, a number's digits, a function's name, a relation's sign
  std::string unit = {}; ///< of a number
  std::optional<std::size_t> term = {}; ///< which term of its step a symbol or number stands for
  std::vector<Notation> parts = {};
};

/// How tightly a part holds together; brackets go where a looser part stands in a tighter place.
enum class Grip : std::uint8_t { sum, product, power, whole };

namespace notation {

/// Sums in sums and products in products are taken apart; a fraction over something is a fraction
/// over the product.
Notation sum(Notation a, Notation b);
Notation difference(Notation a, Notation b);
Notation product(Notation a, Notation b);
Notation fraction(Notation over, Notation under);

} // namespace notation

/// Whether a part wants brackets where it stands. `in_line`: fractions are written with a slash;
/// else with a bar, which holds its parts together by itself.
bool wants_brackets(const Notation& whole, std::size_t part, bool in_line);

/// "v_w,L": the letters before the subscript, and the subscript.
struct SymbolParts {
  std::string_view base, subscript;
};
SymbolParts symbol_parts(std::string_view symbol);

/// "1.15e-5": the digits, and the power of ten as text; empty if there is none.
struct NumberParts {
  std::string_view digits, exponent;
};
NumberParts number_parts(std::string_view digits);

/// On one line: "(λ / L_w)² · d_r / 4 · √(E / ρ)".
std::string write_line(const Notation& notation);

/// Presentation MathML: one `math` element. Source: W3C, MathML Core.
std::string write_mathml(const Notation& notation);

} // namespace feedwright
