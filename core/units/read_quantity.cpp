// SPDX-License-Identifier: GPL-3.0-or-later
#include "units/read_quantity.h"

#include <charconv>
#include <cmath>

namespace feedwright {

namespace {

constexpr std::size_t longest_text = 256;
constexpr int deepest_bracket = 32;
constexpr double largest_value = 1e300;

bool is_digit(char c) {
  return c >= '0' && c <= '9';
}
bool is_space(char c) {
  return c == ' ' || c == '\t';
}

/// A value on the way: a bare number, or SI with the unit it came in.
struct Part {
  double value = 0.0;
  const Unit* unit = nullptr;
  bool pure = false; ///< a number by nature ("50 %"), fit wherever a number is
};

class Reader {
public:
  Reader(std::string_view text, Kind wanted, const Unit* bare)
      : text_(text), wanted_(wanted), bare_(bare) {}

  tl::expected<ReadQuantity, ReadError> read() {
    skip_spaces();
    if (at_end()) {
      return fail(ReadFault::empty, 0, text_.size());
    }
    if (text_.size() > longest_text) {
      return fail(ReadFault::unexpected_text, longest_text, text_.size() - longest_text);
    }
    auto part = sum(0);
    if (!part) {
      return tl::unexpected(part.error());
    }
    skip_spaces();
    if (!at_end()) {
      const bool bracket = peek() == ')';
      return fail(bracket ? ReadFault::unbalanced_bracket : ReadFault::unexpected_text, at_,
                  bracket ? 1 : text_.size() - at_);
    }
    return finished(*part);
  }

private:
  using Result = tl::expected<Part, ReadError>;

  bool at_end() const { return at_ >= text_.size(); }
  char peek(std::size_t ahead = 0) const {
    return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0';
  }
  void skip_spaces() {
    while (is_space(peek()) || text_.substr(at_).starts_with("\u00a0")) {
      at_ += is_space(peek()) ? 1 : 2;
    }
  }
  bool take(std::string_view sign) {
    skip_spaces();
    if (!text_.substr(at_).starts_with(sign)) {
      return false;
    }
    at_ += sign.size();
    return true;
  }
  tl::unexpected<ReadError> fail(ReadFault fault, std::size_t position, std::size_t length,
                                 std::optional<Kind> kind = std::nullopt) const {
    return tl::unexpected(ReadError{
        fault, position, length,
        std::string(text_.substr(std::min(position, text_.size()), length)), kind, wanted_});
  }

  tl::expected<ReadQuantity, ReadError> finished(const Part& part) const {
    const bool needs_unit = wanted_ != Kind::number;
    double si = part.value;
    const Unit* unit = part.unit;
    if (unit == nullptr) {
      if (needs_unit && bare_ == nullptr) {
        return fail(ReadFault::unit_missing, 0, text_.size());
      }
      unit = bare_ != nullptr && !part.pure ? bare_ : &si_unit(wanted_);
      si = part.value * unit->factor + unit->offset;
    }
    if (!(std::abs(si) < largest_value)) {
      return fail(ReadFault::out_of_range, 0, text_.size());
    }
    return ReadQuantity{{wanted_, si}, unit, part.unit == nullptr};
  }

  Result sum(int depth) {
    const std::size_t start = at_;
    auto left = product(depth);
    while (left) {
      const bool plus = take("+");
      const bool minus = !plus && (take("-") || take("−"));
      if (!plus && !minus) {
        break;
      }
      auto right = product(depth);
      if (!right) {
        return right;
      }
      if ((left->unit == nullptr) != (right->unit == nullptr)) {
        return fail(ReadFault::bare_number_in_sum, start, at_ - start);
      }
      left->value += plus ? right->value : -right->value;
    }
    return left;
  }

  Result product(int depth) {
    const std::size_t start = at_;
    auto left = factor(depth);
    while (left) {
      const bool times = take("*") || take("×") || take("·");
      const bool over = !times && take("/");
      if (!times && !over) {
        break;
      }
      auto right = factor(depth);
      if (!right) {
        return right;
      }
      if (right->unit != nullptr && (over || left->unit != nullptr)) {
        return fail(ReadFault::product_of_units, start, at_ - start);
      }
      if (over && right->value == 0.0) {
        return fail(ReadFault::division_by_zero, start, at_ - start);
      }
      left->value = times ? left->value * right->value : left->value / right->value;
      left->unit = left->unit != nullptr ? left->unit : right->unit;
    }
    return left;
  }

  Result factor(int depth) {
    if (take("-") || take("−")) {
      auto part = depth < deepest_bracket ? factor(depth + 1)
                                          : Result(fail(ReadFault::unexpected_text, at_, 1));
      if (part) {
        // An offset unit was already turned into kelvin; the sign belongs to the number typed.
        const double offset = part->unit != nullptr ? part->unit->offset : 0.0;
        part->value = 2.0 * offset - part->value;
      }
      return part;
    }
    take("+");
    if (take("(")) {
      return bracket(depth);
    }
    return compound();
  }

  Result bracket(int depth) {
    const std::size_t open = at_ - 1;
    if (depth >= deepest_bracket) {
      return fail(ReadFault::unexpected_text, open, 1);
    }
    auto inside = sum(depth + 1);
    if (inside && !take(")")) {
      return fail(ReadFault::unbalanced_bracket, open, 1);
    }
    if (inside && inside->unit == nullptr && !inside->pure) {
      rest_ = 0.0;
      return with_unit(inside->value);
    }
    return inside;
  }

  /// A number with its unit, or feet and inches together.
  Result compound() {
    auto first = leaf();
    if (!first || first->unit == nullptr || first->unit->symbol != "ft") {
      return first;
    }
    skip_spaces();
    if (is_digit(peek())) {
      auto rest = leaf();
      if (!rest) {
        return rest;
      }
      if (rest->unit == nullptr) {
        return fail(ReadFault::bare_number_in_sum, 0, at_);
      }
      first->value += rest->value;
    }
    return first;
  }

  Result leaf() {
    skip_spaces();
    const std::size_t start = at_;
    rest_ = 0.0;
    auto value = mixed_number();
    if (!value) {
      return tl::unexpected(value.error());
    }
    auto part = with_unit(*value);
    if (!part && part.error().fault == ReadFault::wrong_kind) {
      // The number belongs to what was found: "5 kg" is a mass.
      const ReadError& error = part.error();
      return fail(error.fault, start, error.position + error.length - start, error.found_kind);
    }
    return part;
  }

  /// 12,5 or 3/8 or 1 1/4 or 1-1/4.
  tl::expected<double, ReadError> mixed_number() {
    skip_spaces();
    const std::size_t start = at_;
    auto whole = decimal();
    if (!whole) {
      return whole;
    }
    if (const auto denominator = fraction_after()) {
      return divided(*whole, *denominator, start);
    }
    const std::size_t after = at_;
    const bool spaced = is_space(peek());
    if (spaced || peek() == '-') {
      ++at_;
      if (spaced) {
        skip_spaces();
      }
      if (is_digit(peek())) {
        const std::size_t second = at_;
        const auto numerator = decimal();
        const auto denominator = numerator ? fraction_after() : std::nullopt;
        if (denominator) {
          const auto part = divided(*numerator, *denominator, second);
          return part ? tl::expected<double, ReadError>(*whole + *part) : part;
        }
        const bool unit_of_one_over = peek() == '/' && !is_digit(peek(1)) && !is_space(peek(1));
        if (spaced && !unit_of_one_over) {
          return fail(ReadFault::grouped_digits, start, at_ - start);
        }
      }
    }
    at_ = after;
    return whole;
  }

  tl::expected<double, ReadError> divided(double over, double under, std::size_t start) {
    rest_ = 0.0;
    if (under == 0.0) {
      return fail(ReadFault::division_by_zero, start, at_ - start);
    }
    return over / under;
  }

  /// "/8" straight after a whole number, unless a unit follows the slash.
  std::optional<double> fraction_after() {
    if (peek() != '/' || !is_digit(peek(1))) {
      return std::nullopt;
    }
    std::size_t end = at_ + 1;
    while (end < text_.size() && is_digit(text_[end])) {
      ++end;
    }
    if (end < text_.size() && (text_[end] == '.' || text_[end] == ',')) {
      return std::nullopt;
    }
    double under = 0.0;
    const auto parsed = std::from_chars(text_.data() + at_ + 1, text_.data() + end, under);
    if (parsed.ec != std::errc()) {
      return std::nullopt;
    }
    at_ = end;
    return under;
  }

  tl::expected<double, ReadError> decimal() {
    const std::size_t start = at_;
    std::string digits;
    int marks = 0;
    while (is_digit(peek()) || ((peek() == '.' || peek() == ',') && is_digit(peek(1)))) {
      if (!is_digit(peek())) {
        ++marks;
      }
      digits += peek() == ',' ? '.' : peek();
      ++at_;
    }
    if (digits.empty()) {
      return fail(ReadFault::not_a_number, start, at_end() ? 0 : text_.size() - start);
    }
    if (marks > 1) {
      return fail(ReadFault::two_decimal_marks, start, at_ - start);
    }
    if ((peek() == '.' || peek() == ',') && marks == 0 && !is_digit(peek(1))) {
      ++at_; // "5." is five
    }
    take_exponent(digits);
    double value = 0.0;
    const auto parsed = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (parsed.ec != std::errc() || !(std::abs(value) < largest_value)) {
      return fail(ReadFault::out_of_range, start, at_ - start);
    }
    take_rest(digits, value);
    return value;
  }

  /// What digits beyond a double's say: without it not every value could be written in every unit
  /// (0.005 m as inches, for one).
  void take_rest(const std::string& digits, double value) {
    constexpr std::size_t most_in_double = 17;
    long double fine = 0.0L;
    if (digits.size() > most_in_double &&
        std::from_chars(digits.data(), digits.data() + digits.size(), fine).ec == std::errc()) {
      rest_ = static_cast<double>(fine - static_cast<long double>(value));
    }
  }

  /// The number at hand in SI, with its rest.
  double in_si(double value, const Unit& unit) const {
    if (rest_ == 0.0) {
      return value * unit.factor + unit.offset;
    }
    const long double fine = static_cast<long double>(value) + static_cast<long double>(rest_);
    return static_cast<double>(fine * static_cast<long double>(unit.factor) +
                               static_cast<long double>(unit.offset));
  }

  void take_exponent(std::string& digits) {
    const char e = peek();
    const bool is_signed = peek(1) == '-' || peek(1) == '+';
    if ((e != 'e' && e != 'E') || !is_digit(peek(is_signed ? 2 : 1))) {
      return;
    }
    digits += 'e';
    if (peek(1) == '-') {
      digits += '-';
    }
    at_ += is_signed ? 2 : 1;
    while (is_digit(peek())) {
      digits += peek();
      ++at_;
    }
  }

  /// Where a unit may end: the text up to an operator that no unit contains.
  std::size_t unit_limit() const {
    std::size_t end = at_;
    while (end < text_.size() && text_[end] != '+' && text_[end] != '(' && text_[end] != ')' &&
           text_[end] != '*' && !text_.substr(end).starts_with("×")) {
      ++end;
    }
    return end;
  }

  /// "g cm2" may end in a digit, "20 mm/2" and "in -" may not end there.
  static bool may_end_unit(std::string_view name) {
    constexpr std::string_view never = " \t-.^/";
    const bool cut = is_digit(name.back()) && name.find('/') != std::string_view::npos &&
                     !is_digit(name.front()) && name[name.size() - 2] == '/';
    return never.find(name.back()) == std::string_view::npos && !cut;
  }

  /// Whether more of a unit's name follows, perhaps after a space: "N" in "N m".
  bool letter_follows(std::size_t end) const {
    while (end < text_.size() && is_space(text_[end])) {
      ++end;
    }
    const std::string_view rest = text_.substr(end);
    if (rest.empty() || rest.starts_with("×") || rest.starts_with("−") ||
        rest.starts_with("\u00a0")) {
      return false;
    }
    const auto c = static_cast<unsigned char>(rest.front());
    const bool ascii_letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    return ascii_letter || c >= 0x80;
  }

  Result with_unit(double value) {
    const std::size_t before = at_;
    skip_spaces();
    const std::size_t start = at_;
    // The longest stretch that is a unit of the wanted kind.
    for (std::size_t end = unit_limit(); end > start; --end) {
      const std::string_view name = text_.substr(start, end - start);
      if (!may_end_unit(name) || letter_follows(end)) {
        continue;
      }
      if (const Unit* unit = find_unit(wanted_, name); unit != nullptr && !unit->symbol.empty()) {
        at_ = end;
        return Part{in_si(value, *unit), unit, wanted_ == Kind::number};
      }
    }
    return without_known_unit(value, before, start);
  }

  /// No unit of the wanted kind follows: a bare number, or a unit that will not do.
  Result without_known_unit(double value, std::size_t before, std::size_t start) {
    std::size_t end = start;
    const auto is_operator = [&](std::size_t i) {
      const char c = text_[i];
      return c == '+' || c == '-' || c == '*' || c == '(' || c == ')' ||
             (c == '/' && i + 1 < text_.size() &&
              (is_digit(text_[i + 1]) || is_space(text_[i + 1]))) ||
             text_.substr(i).starts_with("×") || text_.substr(i).starts_with("−");
    };
    while (end < text_.size() && !is_operator(end)) {
      ++end;
    }
    while (end > start && is_space(text_[end - 1])) {
      --end;
    }
    if (end == start || text_[start] == '/') {
      at_ = before;
      return Part{value, nullptr, false};
    }
    const std::string_view name = text_.substr(start, end - start);
    if (name.front() == '.' || name.front() == ',') {
      return fail(ReadFault::not_a_number, start, end - start);
    }
    const auto kind = kind_with_unit(name);
    return fail(kind ? ReadFault::wrong_kind : ReadFault::unknown_unit, start, end - start, kind);
  }

  std::string_view text_;
  Kind wanted_;
  const Unit* bare_;
  std::size_t at_ = 0;
  double rest_ = 0.0; ///< of the number last read, beyond what a double holds
};

} // namespace

tl::expected<ReadQuantity, ReadError> read_quantity(std::string_view text, Kind wanted,
                                                    const Unit* bare_unit) {
  return Reader(text, wanted, bare_unit).read();
}

} // namespace feedwright
