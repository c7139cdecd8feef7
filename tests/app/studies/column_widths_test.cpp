// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/column_widths.h"

#include <catch2/catch.hpp>

#include <numeric>

using namespace feedwright;

namespace {

using Widths = std::vector<double>;

// What each wants: 300 and 100 in one line, 200 and 90 in lines, 100 and 50 for numbers alone.
const std::vector<ColumnWants> two{{300.0, 200.0, 100.0}, {100.0, 90.0, 50.0}};

} // namespace

TEST_CASE("columns are alike while each has room for its words in one line") {
  CHECK(column_widths(600.0, two) == Widths{300.0, 300.0});
  CHECK(column_widths(100.0, {}).empty());
}

TEST_CASE(
    "where one column wants more than its equal share, none loses a line while there is room") {
  CHECK(column_widths(500.0, two) == Widths{350.0, 150.0});
  CHECK(column_widths(400.0, two) == Widths{300.0, 100.0});
}

TEST_CASE("columns give up first lines, then whole names, and numbers last") {
  CHECK(column_widths(345.0, two) == Widths{250.0, 95.0});
  CHECK(column_widths(290.0, two) == Widths{200.0, 90.0});
  CHECK(column_widths(220.0, two) == Widths{150.0, 70.0});
  CHECK(column_widths(150.0, two) == Widths{100.0, 50.0});
  CHECK(column_widths(75.0, two) == Widths{50.0, 25.0});
}

TEST_CASE("columns fill the room, whatever they want, and none is narrower than its numbers need") {
  const std::vector<ColumnWants> three{
      {210.0, 130.0, 70.0}, {90.0, 90.0, 90.0}, {400.0, 150.0, 40.0}};
  for (double room = 100.0; room < 1500.0; room += 7.0) {
    INFO(room);
    const Widths shared = column_widths(room, three);
    CHECK(std::accumulate(shared.begin(), shared.end(), 0.0) == Approx(room));
    for (std::size_t i = 0; i < three.size() && room >= 200.0; ++i) {
      CHECK(shared[i] >= three[i].least - 1e-9);
    }
  }
}
