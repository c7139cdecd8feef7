// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The recorder is a type parameter of the sizing. `NoWorking` hands every value on untouched and
// vanishes; `Working` turns values into traced ones and keeps each result's expression.

#include "working/traced.h"

#include <vector>

namespace feedwright {

/// Which field of which part of an axis a number came from.
struct InputRef {
  std::uint8_t slot = 0;        ///< a PartSlot
  std::string_view member = {}; ///< the field's name in the machine file
  friend bool operator==(const InputRef&, const InputRef&) = default;
};

struct NoWorking {
  template <class Q>
  using Number = Q;

  template <class Q>
  const Q& input(InputRef, const Q& value) const {
    return value;
  }
  template <class Q>
  const Q& constant(std::string_view, const Q& value) const {
    return value;
  }
  template <class Q>
  const Q& result(ResultId, const Q& value) const {
    return value;
  }
  template <class Q>
  const Q& earlier(ResultId, const Q& value) const {
    return value;
  }
  template <class Q, class... Operands>
  const Q& solved(std::string_view, const Q& value, const Operands&...) const {
    return value;
  }
};

/// How one result came about.
struct WorkingStep {
  ResultId result;
  AnyQuantity value;
  ExpressionPtr how;
};

class Working {
public:
  template <class Q>
  using Number = Traced<Q>;

  template <class Q>
  Traced<Q> input(InputRef ref, const Q& value) const {
    return {value, std::make_shared<const Expression>(
                       Expression{Expression::Form::input, any(value), ref.member, ref.slot, {}})};
  }
  template <class Q>
  Traced<Q> constant(std::string_view symbol, const Q& value) const {
    return {value, std::make_shared<const Expression>(
                       Expression{Expression::Form::constant, any(value), symbol, 0, {}})};
  }
  /// Keeps how the value came about; later equations see it as one symbol.
  template <class Q>
  Traced<Q> result(ResultId id, const Traced<Q>& value) {
    steps_.push_back({id, any(value.value), value.how});
    return earlier(id, value.value);
  }
  /// A result kept before, taken up again by a later equation.
  template <class Q>
  Traced<Q> earlier(ResultId id, const Q& value) const {
    return {value,
            std::make_shared<const Expression>(Expression{
                Expression::Form::result, any(value), {}, static_cast<std::uint8_t>(id), {}})};
  }
  /// A value found by solving an equation over the operands; `name` says which equation.
  template <class Q, class... Operands>
  Traced<Q> solved(std::string_view name, const Q& value, const Operands&... operands) const {
    return tracing::node(Expression::Form::solved, value, {operands.how...}, name);
  }

  const std::vector<WorkingStep>& steps() const { return steps_; }
  const WorkingStep* find(ResultId id) const {
    for (const WorkingStep& step : steps_) {
      if (step.result == id) {
        return &step;
      }
    }
    return nullptr;
  }

private:
  std::vector<WorkingStep> steps_;
};

} // namespace feedwright
