// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// How many digits of a formula agree with the same formula worked out anew in 50 digits. Inputs are
// binary numbers and thus the same in both.

#include "support/dice.h"

#include <boost/multiprecision/cpp_dec_float.hpp>

#include <algorithm>
#include <string>
#include <vector>

namespace feedwright::testing {

using Ref = boost::multiprecision::number<boost::multiprecision::cpp_dec_float<50>,
                                          boost::multiprecision::et_off>;

inline const Ref& ref_pi() {
  static const Ref value = acos(Ref(-1));
  return value;
}

template <class Q>
Ref ref(const Q& quantity) {
  return Ref(si_value(quantity));
}

constexpr double closed_form = 12.0; ///< digits wanted
constexpr double root_solved = 9.0;

/// One line of the table.
class Agreement {
public:
  explicit Agreement(std::string of, double wanted_digits = closed_form)
      : formula(std::move(of)), least(wanted_digits) {}

  /// Against the wanted value itself.
  template <class Q>
  void add(const Q& actual, const Ref& wanted) {
    add_over(actual, wanted, wanted);
  }
  /// Against another size, where the value is a small difference of larger ones.
  template <class Q>
  void add_over(const Q& actual, const Ref& wanted, const Ref& size) {
    const double off = static_cast<double>(abs((Ref(si_value(actual)) - wanted) / size));
    constexpr double all = 17.0;
    // A NaN leaves no digit.
    const double digits = off == 0.0 ? all : off > 0.0 ? std::min(all, -std::log10(off)) : -99.0;
    worst = std::min(worst, digits);
    ++tried;
  }

  std::string formula;
  double least;
  double worst = 17.0;
  int tried = 0;
};

using Agreements = std::vector<Agreement>;

Agreements agreement_of_shafts();
Agreements agreement_of_threads();
Agreements agreement_of_stiffness();
Agreements agreement_of_belts();
Agreements agreement_of_loops();
Agreements agreement_of_motors();
Agreements agreement_of_moves();
Agreements agreement_of_cuts();

} // namespace feedwright::testing
