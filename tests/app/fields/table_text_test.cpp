// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/table_text.h"

#include <catch2/catch.hpp>

using namespace feedwright;

namespace {

std::vector<QStringList> cells(const char* text) {
  return table_cells(QString::fromUtf8(text));
}

} // namespace

TEST_CASE("cells are parted by tabs, semicolons, commas or wide gaps") {
  const std::vector<QStringList> wanted{{QStringLiteral("0"), QStringLiteral("1.9")},
                                        {QStringLiteral("300"), QStringLiteral("1.5")}};
  CHECK(cells("0\t1.9\n300\t1.5\n") == wanted);
  CHECK(cells("0;1.9\r\n300;1.5") == wanted);
  CHECK(cells("0,1.9\n300,1.5\n\n") == wanted);
  CHECK(cells("  0   1.9\n  300   1.5\n") == wanted);
  CHECK(cells("\"0\",\"1.9\"\n\"300\",\"1.5\"") == wanted);
}

TEST_CASE("a comma is a decimal mark where semicolons part the cells") {
  const std::vector<QStringList> wanted{{QStringLiteral("0"), QStringLiteral("1,9")},
                                        {QStringLiteral("300"), QStringLiteral("1,5")}};
  CHECK(cells("0;1,9\n300;1,5") == wanted);
}

TEST_CASE("a heading and lines of one cell are left out") {
  CHECK(cells("speed (rpm),torque (N·m)\n0,1.9\n300,1.5").size() == 2);
  CHECK(cells("a note\n0;1\n").size() == 1);
  CHECK(cells("").empty());
  CHECK(cells("no table here").empty());
}

TEST_CASE("an empty cell stays empty") {
  REQUIRE(cells("screw;1;;2").size() == 1);
  CHECK(cells("screw;1;;2")[0].size() == 4);
}
