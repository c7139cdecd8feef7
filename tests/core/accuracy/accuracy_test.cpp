// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/accuracy/agreement.h"

#include <catch2/catch.hpp>

#include <iomanip>
#include <iostream>
#include <sstream>

using namespace feedwright::testing;

namespace {

Agreements all_formulas() {
  Agreements all;
  for (const auto part :
       {agreement_of_shafts, agreement_of_threads, agreement_of_stiffness, agreement_of_belts,
        agreement_of_loops, agreement_of_motors, agreement_of_moves, agreement_of_cuts}) {
    std::ranges::move(part(), std::back_inserter(all));
  }
  std::ranges::stable_sort(all, {}, &Agreement::worst);
  return all;
}

std::string table_of(const Agreements& all) {
  std::ostringstream out;
  out << std::left << std::setw(64) << "formula against 50 digits"
      << "| worst digits | wanted | inputs tried\n";
  for (const Agreement& line : all) {
    out << std::fixed << std::setprecision(1) << std::left << std::setw(64) << line.formula << "| "
        << std::right << std::setw(12) << line.worst << " | " << std::setw(6) << line.least << " | "
        << std::setw(12) << line.tried << '\n';
  }
  return out.str();
}

} // namespace

TEST_CASE("closed forms agree with 50-digit arithmetic to 12 digits and solved ones to 9") {
  const Agreements all = all_formulas();
  std::cout << table_of(all); // once, for the record
  for (const Agreement& line : all) {
    INFO(line.formula);
    CHECK(line.worst >= line.least);
    CHECK(line.tried >= 300);
  }
}
