// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_words.h"
#include "sizing/limits.h"
#include "support/machine_files.h"
#include "text/machine_words.h"

#include <cmath>

using namespace feedwright;

TEST_CASE("no margin is rounded to what reads better than it does") {
  CHECK(sheet::margin_text(1.19537) == QStringLiteral("1.195"));
  CHECK(sheet::margin_text(1.2) == QStringLiteral("1.2"));
  CHECK(sheet::margin_text(1.1949) == QStringLiteral("1.19"));
  CHECK(sheet::margin_text(0.99996) == QStringLiteral("0.99996"));
  CHECK(sheet::margin_text(0.994) == QStringLiteral("0.994"));
  for (const double just_below : {1.2 - 1e-6, 1.2 - 4e-7, 1.0 - 1e-7, 1.0 - 3e-8}) {
    INFO(just_below);
    CHECK(verdict_of(sheet::margin_text(just_below).toDouble()) == verdict_of(just_below));
  }
  for (int i = 0; i < 3000; ++i) {
    const double margin = 0.9 + i * 1.3e-4;
    INFO(margin);
    CHECK(verdict_of(sheet::margin_text(margin).toDouble()) == verdict_of(margin));
  }
}

TEST_CASE("load cases that have too little are told what they get, not one against less") {
  Machine machine = feedwright::testing::machine_in("/tests/machines/", "upright");
  const FileUnits units(machine);
  Concern concern;
  concern.limit = LimitId::load_cases;
  concern.margin = 0.933;
  concern.actual = AnyQuantity{Kind::number, 1.0};
  concern.allowed = AnyQuantity{Kind::number, 0.933};
  CHECK(words::concern_text(concern, units) ==
        QStringLiteral("The hardest load case gets 93.3 % of the torque or feed it asks."));
}
