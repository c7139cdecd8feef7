// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_words.h"
#include "sizing/limits.h"
#include "text/machine_words.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace feedwright;

TEST_CASE("no margin is rounded to what reads better than it does") {
  CHECK(sheet::margin_text(1.19537) == QStringLiteral("1.19537"));
  CHECK(sheet::margin_text(1.2) == QStringLiteral("1.2"));
  CHECK(sheet::margin_text(1.1949) == QStringLiteral("1.19"));
  CHECK(sheet::margin_text(0.99996) == QStringLiteral("0.99996"));
  CHECK(sheet::margin_text(0.994) == QStringLiteral("0.994"));
  for (int i = 0; i < 3000; ++i) {
    const double margin = 0.9 + i * 1.3e-4;
    INFO(margin);
    CHECK(verdict_of(sheet::margin_text(margin).toDouble()) == verdict_of(margin));
  }
}
