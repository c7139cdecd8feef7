// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A quantity that remembers how it came about. Equations in core/mechanics are templates over
// "a quantity or a traced quantity": run on plain quantities they are ordinary arithmetic, run
// on traced ones the same lines leave an expression behind. There is no second copy of an
// equation to go stale.

#include "units/kind.h"

#include <concepts>
#include <cstdint>
#include <memory>
#include <string_view>
#include <utility>
#include <vector>

namespace feedwright {

enum class ResultId : std::uint8_t;
struct InputRef;

/// One node of a recorded expression.
struct Expression {
  enum class Form {
    literal,  ///< a number written in the equation
    constant, ///< a named constant
    input,    ///< a field of a part
    result,   ///< a result recorded before
    add,
    subtract,
    multiply,
    divide,
    negate,
    square,
    function, ///< sqrt, tan, …; `name` says which
    solved,   ///< found by root solving over its operands
  };
  Form form = Form::literal;
  AnyQuantity value;
  std::string_view name = {}; ///< symbol of a constant, name of a function, member of an input
  std::uint8_t subject = 0;   ///< slot of an input, id of a result
  std::vector<std::shared_ptr<const Expression>> operands = {};
};
using ExpressionPtr = std::shared_ptr<const Expression>;

template <class Q>
struct Traced {
  Q value;
  ExpressionPtr how;
};

template <class T>
struct is_traced : std::false_type {};
template <class Q>
struct is_traced<Traced<Q>> : std::true_type {};

/// `Length` or `Traced<Length>`, and nothing else.
template <class T, class Q>
concept NumberOf = std::same_as<T, Q> || std::same_as<T, Traced<Q>>;

template <class T>
concept PureNumber = NumberOf<T, double> || NumberOf<T, Ratio>;

template <class Q>
constexpr const Q& value_of(const Q& q) {
  return q;
}
template <class Q>
const Q& value_of(const Traced<Q>& t) {
  return t.value;
}

namespace tracing {

inline ExpressionPtr literal(double v) {
  return std::make_shared<const Expression>(
      Expression{Expression::Form::literal, AnyQuantity{Kind::number, v}});
}

template <class Q>
Traced<Q> node(Expression::Form form, const Q& value, std::vector<ExpressionPtr> operands,
               std::string_view name = {}) {
  return {value, std::make_shared<const Expression>(
                     Expression{form, any(value), name, 0, std::move(operands)})};
}

} // namespace tracing

template <class A, class B>
auto operator*(const Traced<A>& a, const Traced<B>& b) {
  return tracing::node(Expression::Form::multiply, a.value * b.value, {a.how, b.how});
}
template <class A>
auto operator*(const Traced<A>& a, double b) {
  return tracing::node(Expression::Form::multiply, a.value * b, {a.how, tracing::literal(b)});
}
template <class B>
auto operator*(double a, const Traced<B>& b) {
  return tracing::node(Expression::Form::multiply, a * b.value, {tracing::literal(a), b.how});
}
template <class A, class B>
auto operator/(const Traced<A>& a, const Traced<B>& b) {
  return tracing::node(Expression::Form::divide, a.value / b.value, {a.how, b.how});
}
template <class A>
auto operator/(const Traced<A>& a, double b) {
  return tracing::node(Expression::Form::divide, a.value / b, {a.how, tracing::literal(b)});
}
template <class B>
auto operator/(double a, const Traced<B>& b) {
  return tracing::node(Expression::Form::divide, a / b.value, {tracing::literal(a), b.how});
}
template <class A>
Traced<A> operator+(const Traced<A>& a, const Traced<A>& b) {
  return tracing::node(Expression::Form::add, A(a.value + b.value), {a.how, b.how});
}
template <class A>
Traced<A> operator-(const Traced<A>& a, const Traced<A>& b) {
  return tracing::node(Expression::Form::subtract, A(a.value - b.value), {a.how, b.how});
}
inline Traced<double> operator+(double a, const Traced<double>& b) {
  return tracing::node(Expression::Form::add, a + b.value, {tracing::literal(a), b.how});
}
inline Traced<double> operator-(double a, const Traced<double>& b) {
  return tracing::node(Expression::Form::subtract, a - b.value, {tracing::literal(a), b.how});
}
template <class A>
Traced<A> operator-(const Traced<A>& a) {
  return tracing::node(Expression::Form::negate, A(-a.value), {a.how});
}

template <class A>
auto square(const Traced<A>& a) {
  return tracing::node(Expression::Form::square, a.value * a.value, {a.how});
}

// The plain ones beside them, so that an equation finds either.
using std::atan;
using std::cos;
using std::sin;
using std::tan;

#define FEEDWRIGHT_TRACED_FUNCTION(name)                                                           \
  template <class A>                                                                               \
  auto name(const Traced<A>& a) {                                                                  \
    using std::name;                                                                               \
    return tracing::node(Expression::Form::function, name(a.value), {a.how}, #name);               \
  }
FEEDWRIGHT_TRACED_FUNCTION(sqrt)
FEEDWRIGHT_TRACED_FUNCTION(tan)
FEEDWRIGHT_TRACED_FUNCTION(atan)
FEEDWRIGHT_TRACED_FUNCTION(sin)
FEEDWRIGHT_TRACED_FUNCTION(cos)
#undef FEEDWRIGHT_TRACED_FUNCTION

// Changes of type that a reader of the working need not see.

/// A pure number as `double`, for functions of numbers.
inline double number(const Ratio& r) {
  return static_cast<double>(r);
}
inline Traced<double> number(const Traced<Ratio>& r) {
  return {static_cast<double>(r.value), r.how};
}
#ifndef FEEDWRIGHT_PLAIN_DOUBLES
inline double number(double r) {
  return r;
}
inline Traced<double> number(const Traced<double>& r) {
  return r;
}
#endif

/// The other way round, for results declared as pure numbers.
inline Ratio as_ratio(const Ratio& r) {
  return r;
}
inline Traced<Ratio> as_ratio(const Traced<Ratio>& r) {
  return r;
}
#ifndef FEEDWRIGHT_PLAIN_DOUBLES
inline Ratio as_ratio(double r) {
  return from_si<Ratio>(r);
}
inline Traced<Ratio> as_ratio(const Traced<double>& r) {
  return {from_si<Ratio>(r.value), r.how};
}
#endif

/// x/(1 rad): a rim radius or cylinder becomes what it is per angle.
template <class Q>
auto per_radian(const Q& x) {
  return x / radian;
}
template <class Q>
auto per_radian(const Traced<Q>& x) {
  using Result = Traced<decltype(x.value / radian)>;
  return Result{x.value / radian, x.how};
}
/// x·(1 rad).
template <class Q>
auto times_radian(const Q& x) {
  return x * radian;
}
template <class Q>
auto times_radian(const Traced<Q>& x) {
  using Result = Traced<decltype(x.value * radian)>;
  return Result{x.value * radian, x.how};
}
/// x/(2π rad): a lead per turn becomes travel per angle.
template <class Q>
auto per_turn(const Q& x) {
  return per_radian(x / (2.0 * pi));
}

} // namespace feedwright
