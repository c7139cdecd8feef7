// SPDX-License-Identifier: GPL-3.0-or-later
#include "working/elasticity.h"

#include "working/evaluate.h"

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

using Form = Expression::Form;

bool is_leaf(const Expression& e) {
  return e.form == Form::constant || e.form == Form::input || e.form == Form::result;
}

/// Walks from the whole down, carrying dy/d(node).
class Walk {
public:
  explicit Walk(double whole) : whole_(whole) {}

  void down(const Expression& e, double slope) {
    const auto operand = [&](std::size_t i) -> const Expression& { return *e.operands[i]; };
    const auto value = [&](std::size_t i) { return operand(i).value.si; };
    switch (e.form) {
    case Form::literal:
    case Form::solved: return;
    case Form::constant:
    case Form::input:
    case Form::result: add(e, slope * e.value.si / whole_); return;
    case Form::add:
    case Form::subtract:
      down(operand(0), slope);
      down(operand(1), e.form == Form::add ? slope : -slope);
      return;
    case Form::multiply:
      down(operand(0), slope * value(1));
      down(operand(1), slope * value(0));
      return;
    case Form::divide:
      down(operand(0), slope / value(1));
      down(operand(1), -slope * value(0) / (value(1) * value(1)));
      return;
    case Form::negate: down(operand(0), -slope); return;
    case Form::square: down(operand(0), slope * 2.0 * value(0)); return;
    case Form::function:
      if (const RecordedFunction* function = recorded_function(e.name)) {
        down(operand(0), slope * function->slope(value(0)));
      }
      return;
    }
  }

  std::vector<LeafShare> found;

private:
  void add(const Expression& leaf, double share) {
    for (LeafShare& known : found) {
      if (known.leaf == &leaf) {
        known.share += share;
        return;
      }
    }
    found.push_back({&leaf, share});
  }

  double whole_;
};

void collect_leaves(const Expression& e, bool hidden, std::vector<const Expression*>& leaves) {
  if (is_leaf(e) && hidden) {
    leaves.push_back(&e);
  }
  for (const ExpressionPtr& operand : e.operands) {
    collect_leaves(*operand, hidden || e.form == Form::solved, leaves);
  }
}

/// The sum inside factors and divisors that stand outside it; nothing if two factors are sums.
const Expression* sum_inside(const Expression& e) {
  switch (e.form) {
  case Form::add:
  case Form::subtract: return &e;
  case Form::negate:
  case Form::divide: return sum_inside(*e.operands[0]);
  case Form::multiply: {
    const Expression* left = sum_inside(*e.operands[0]);
    const Expression* right = sum_inside(*e.operands[1]);
    return left != nullptr && right != nullptr ? nullptr : left != nullptr ? left : right;
  }
  default: return nullptr;
  }
}

bool are_alike(const Expression& a, const Expression& b) {
  return a.form == b.form && a.name == b.name && a.subject == b.subject &&
         a.value.si == b.value.si &&
         std::ranges::equal(a.operands, b.operands, [](const auto& one, const auto& other) {
           return are_alike(*one, *other);
         });
}

/// The terms of a sum, those that are nothing and those taken away again left out.
class Terms {
public:
  void collect(const Expression& e, bool taken_away) {
    switch (e.form) {
    case Form::add:
    case Form::subtract:
      collect(*e.operands[0], taken_away);
      collect(*e.operands[1], taken_away != (e.form == Form::subtract));
      return;
    case Form::negate: collect(*e.operands[0], !taken_away); return;
    default: add(e, taken_away);
    }
  }

  std::vector<SumShare> magnitudes() const {
    std::vector<SumShare> parts;
    for (const Term& term : terms_) {
      parts.push_back({term.what, std::abs(term.what->value.si)});
    }
    return parts;
  }

private:
  struct Term {
    const Expression* what;
    bool taken_away;
  };

  void add(const Expression& e, bool taken_away) {
    if (e.value.si == 0.0) {
      return;
    }
    const auto opposite = std::ranges::find_if(terms_, [&](const Term& other) {
      return other.taken_away != taken_away && are_alike(*other.what, e);
    });
    if (opposite != terms_.end()) {
      terms_.erase(opposite);
    } else {
      terms_.push_back({&e, taken_away});
    }
  }

  std::vector<Term> terms_;
};

} // namespace

std::vector<LeafShare> leaf_shares(const Expression& whole) {
  if (whole.value.si == 0.0) {
    return {};
  }
  Walk walk(whole.value.si);
  walk.down(whole, 1.0);
  return std::move(walk.found);
}

std::vector<const Expression*> hidden_leaves(const Expression& whole) {
  std::vector<const Expression*> leaves;
  collect_leaves(whole, false, leaves);
  return leaves;
}

std::vector<SumShare> sum_shares(const Expression& whole) {
  const bool of_squares = whole.form == Form::solved && whole.name == "root_sum";
  const Expression* sum = of_squares ? sum_inside(*whole.operands[0]) : sum_inside(whole);
  if (sum == nullptr) {
    return {};
  }
  Terms terms;
  terms.collect(*sum, false);
  std::vector<SumShare> parts = terms.magnitudes();
  if (parts.size() < 2) {
    return {};
  }
  double all = 0.0;
  for (SumShare& part : parts) {
    part.share = of_squares ? part.share * part.share : part.share;
    all += part.share;
  }
  if (all == 0.0) {
    return {};
  }
  for (SumShare& part : parts) {
    part.share /= all;
  }
  return parts;
}

} // namespace feedwright
