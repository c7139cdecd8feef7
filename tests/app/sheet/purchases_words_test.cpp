// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_words.h"

#include <catch2/catch.hpp>

using namespace feedwright;

namespace {

PurchasePiece piece_of(const char* member, Origin origin) {
  const Machine machine = [] {
    Machine made;
    made.axes.resize(1);
    return made;
  }();
  auto field = field_of(machine, 0, PartSlot::drive, member);
  REQUIRE(field);
  field->note.origin = origin;
  return {PartSlot::drive, *field};
}

QString text_of(Origin diameter, Origin lead) {
  Purchase purchase;
  purchase.kind = PurchaseKind::screw;
  purchase.source = "16 × 10";
  purchase.pieces = {piece_of("nominal_diameter", diameter), piece_of("lead", lead),
                     piece_of("span", Origin::entered)};
  return sheet::purchase_text(purchase);
}

} // namespace

TEST_CASE("a screw that is not as its list has it is not bought by the list's name") {
  CHECK(text_of(Origin::part_list, Origin::part_list).endsWith(QStringLiteral("(16 × 10)")));
  CHECK(text_of(Origin::part_list, Origin::entered)
            .endsWith(QStringLiteral("(changed from 16 × 10)")));
  CHECK(text_of(Origin::entered, Origin::entered).endsWith(QStringLiteral("(16 × 10)")));
}
