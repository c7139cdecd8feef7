// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_words.h"
#include "support/axes.h"

#include <catch2/catch.hpp>

#include <algorithm>

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

QString text_of(Origin diameter, Origin lead, const char* source = "16 × 10") {
  Purchase purchase;
  purchase.kind = PurchaseKind::screw;
  purchase.source = source;
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

TEST_CASE("a screw of which nobody has given a figure is not to be bought as it stands") {
  const QString own = QStringLiteral("(not chosen yet: the program's own figures)");
  CHECK(text_of(Origin::preset, Origin::preset).endsWith(own));
  CHECK(text_of(Origin::preset, Origin::preset, "").endsWith(own));
  CHECK_FALSE(text_of(Origin::entered, Origin::preset).endsWith(own));
}

TEST_CASE("a screw is bought to its overall length, or told to want more than between bearings") {
  Machine machine = feedwright::testing::ordinary_router();
  auto& screw = feedwright::testing::screw_of(machine.axes.front());
  const auto bought = [&] {
    const auto all = purchases_of(machine);
    return sheet::purchase_text(*std::ranges::find(all, PurchaseKind::screw, &Purchase::kind));
  };
  screw.overall_length.reset();
  CHECK(bought().contains(QStringLiteral(", plus its ends")));
  screw.overall_length = Positive<Length>::of(from_si<Length>(1.2));
  CHECK(bought().contains(QStringLiteral("1200 mm")));
  CHECK_FALSE(bought().contains(QStringLiteral("ends")));
}
