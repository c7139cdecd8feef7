// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/field_reading.h"
#include "support/axes.h"

#include <catch2/catch.hpp>

using namespace feedwright;
using feedwright::testing::ordinary_router;

namespace {

FieldReading read(PartSlot slot, const char* member, const char* text) {
  const Machine machine = ordinary_router();
  const auto field = field_of(machine, 0, slot, member);
  REQUIRE(field);
  return read_field(machine, 0, slot, field->info, QString::fromUtf8(text));
}

double si_of(const FieldReading& reading) {
  INFO(reading.error.toStdString());
  REQUIRE(reading.error.isEmpty());
  return std::get<AnyQuantity>(reading.value).si;
}

} // namespace

TEST_CASE("any unit does, and what it became is said where it differs") {
  const FieldReading inches = read(PartSlot::drive, "span", "35 1/2 in");
  CHECK(si_of(inches) == Approx(0.9017));
  CHECK(inches.became == QStringLiteral("= 901.7 mm"));
  const FieldReading millimetres = read(PartSlot::drive, "span", "900 mm");
  CHECK(si_of(millimetres) == Approx(0.9));
  CHECK(millimetres.became.isEmpty());
}

TEST_CASE("a number without a unit is read in the field's own, and kept with it") {
  const FieldReading bare = read(PartSlot::drive, "span", "900");
  CHECK(si_of(bare) == Approx(0.9));
  CHECK(bare.note.text == "900 mm");
  const FieldReading sum = read(PartSlot::drive, "span", "800 + 100");
  CHECK(si_of(sum) == Approx(0.9));
  CHECK(sum.note.text == "(800 + 100) mm");
}

TEST_CASE("a wrong unit gets a sentence that names what would do") {
  const FieldReading mass = read(PartSlot::drive, "lead", "5 kg");
  CHECK(mass.error == QStringLiteral("\"5 kg\" is a mass; lead is a length, such as 5 mm."));
}

TEST_CASE("out of range says why") {
  CHECK(read(PartSlot::drive, "span", "0 mm").error.contains(QStringLiteral("more than zero")));
  CHECK(read(PartSlot::drive, "span", "-3 mm").error.contains(QStringLiteral("more than zero")));
  CHECK(read(PartSlot::transmission, "efficiency", "120 %")
            .error.contains(QStringLiteral("at most one")));
  CHECK(read(PartSlot::transmission, "belt_teeth", "3").error.contains(QStringLiteral("12")));
  CHECK(read(PartSlot::transmission, "belt_teeth", "80.5").error.contains(QStringLiteral("whole")));
}

TEST_CASE("nothing typed empties an open field, presets a preset one, and a required one asks") {
  CHECK(std::holds_alternative<std::monostate>(read(PartSlot::targets, "feed", "").value));
  CHECK(read(PartSlot::targets, "feed", "").error.isEmpty());
  const FieldReading preset = read(PartSlot::drive, "whip_share", "");
  CHECK(std::get<AnyQuantity>(preset.value).si == 0.8);
  CHECK(preset.note.origin == Origin::preset);
  CHECK_FALSE(read(PartSlot::drive, "lead", " ").error.isEmpty());
}

TEST_CASE("what is wrong is placed in the text as typed, in characters") {
  const FieldReading unit = read(PartSlot::drive, "lead", "  5 µmm");
  CHECK(unit.error_at == 4);
  CHECK(unit.error_length == 3);
  const FieldReading bound = read(PartSlot::drive, "span", "-3 mm");
  CHECK(bound.error_at == 0);
  CHECK(bound.error_length == 5);
  const FieldReading unfinished = read(PartSlot::drive, "span", "3 *");
  CHECK_FALSE(unfinished.error.isEmpty());
  CHECK(unfinished.error_at + unfinished.error_length <= 3);
  CHECK(unfinished.error_length > 0);
}

TEST_CASE("what could be meant as a thousand is echoed as the decimal it is read as") {
  CHECK(read(PartSlot::drive, "span", "1.234 mm").echo == QStringLiteral("= 1.234 mm"));
  CHECK(read(PartSlot::drive, "span", "1,234").echo == QStringLiteral("= 1.234 mm"));
  CHECK(read(PartSlot::drive, "span", "12.5 mm").echo.isEmpty());
  CHECK(read(PartSlot::drive, "span", "12").echo == QStringLiteral("= 12 mm"));
  CHECK_FALSE(read(PartSlot::drive, "span", "1,000.5").error.isEmpty());
}
