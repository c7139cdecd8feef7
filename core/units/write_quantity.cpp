// SPDX-License-Identifier: GPL-3.0-or-later
#include "units/write_quantity.h"

#include "units/read_quantity.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

void drop_trailing_zeros(std::string& text) {
  if (text.find('.') == std::string::npos) {
    return;
  }
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') {
    text.pop_back();
  }
}

std::string with_mark(std::string text, DecimalMark mark) {
  std::replace(text.begin(), text.end(), '.', static_cast<char>(mark));
  return text;
}

std::string with_unit(std::string number, const Unit& unit) {
  if (unit.symbol.empty()) {
    return number;
  }
  const bool tight = unit.symbol == "°" || unit.symbol == "\"" || unit.symbol == "'";
  return number + (tight ? "" : " ") + std::string(unit.symbol);
}

bool reads_as(const std::string& text, const AnyQuantity& value) {
  const auto read = read_quantity(text, value.kind);
  return read && read->value.si == value.si;
}

/// The shortest text in the unit that comes to the same bits, with no more digits than a double
/// has; there need not be one.
std::optional<std::string> shortest_exact(const AnyQuantity& value, const Unit& unit,
                                          DecimalMark mark) {
  const double shown = (value.si - unit.offset) / unit.factor;
  constexpr int most_digits = 17;
  for (int digits = 1; digits <= most_digits; ++digits) {
    std::string text = with_unit(write_number(shown, digits, mark), unit);
    if (reads_as(text, value)) {
      return text;
    }
  }
  return std::nullopt;
}

} // namespace

std::string write_number(double value, int significant_digits, DecimalMark mark) {
  constexpr double smallest_plain = 1e-4;
  constexpr double largest_plain = 1e7;
  const double size = std::abs(value);
  if (size == 0.0) {
    return "0";
  }
  if (size < smallest_plain || size >= largest_plain) {
    std::string text = fmt::format("{:.{}e}", value, std::max(0, significant_digits - 1));
    const auto e = text.find('e');
    std::string digits = text.substr(0, e);
    drop_trailing_zeros(digits);
    // fmt writes at least two exponent digits; one is enough
    std::string exponent = text.substr(e + 1);
    const bool negative = exponent.front() == '-';
    exponent.erase(0, exponent.find_first_not_of("+-0"));
    return with_mark(digits + (negative ? "e-" : "e") + exponent, mark);
  }
  const int whole_digits = static_cast<int>(std::floor(std::log10(size))) + 1;
  std::string text = fmt::format("{:.{}f}", value, std::max(0, significant_digits - whole_digits));
  drop_trailing_zeros(text);
  return with_mark(text == "-0" ? "0" : text, mark);
}

std::string write_quantity(const AnyQuantity& value, const Unit& unit, int significant_digits,
                           DecimalMark mark) {
  return with_unit(write_number((value.si - unit.offset) / unit.factor, significant_digits, mark),
                   unit);
}

std::string write_exact(const AnyQuantity& value, const Unit& unit, DecimalMark mark) {
  if (const auto text = shortest_exact(value, unit, mark)) {
    return *text;
  }
  const Unit& coherent = si_unit(value.kind);
  return with_unit(with_mark(fmt::format("{}", value.si), mark), coherent);
}

std::optional<std::string> write_in(const AnyQuantity& value, const Unit& unit, DecimalMark mark) {
  if (auto text = shortest_exact(value, unit, mark)) {
    return text;
  }
  const long double shown =
      (static_cast<long double>(value.si) - static_cast<long double>(unit.offset)) /
      static_cast<long double>(unit.factor);
  constexpr int least_digits = 18;
  constexpr int most_digits = 24;
  for (int digits = least_digits; digits <= most_digits; ++digits) {
    std::string text = with_unit(with_mark(fmt::format("{:.{}g}", shown, digits), mark), unit);
    if (reads_as(text, value)) {
      return text;
    }
  }
  return std::nullopt;
}

} // namespace feedwright
