// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/window.h"
#include "text/printed_words.h"
#include "text/whole_lines.h"
#include "text/words.h"
#include "units/read_quantity.h"

#include <QFontMetricsF>
#include <catch2/catch.hpp>

using namespace feedwright;
using feedwright::testing::InLanguage;

namespace {

/// The travel of an axis as typed, read as the field's editor reads it.
FieldView typed_travel(const char* text) {
  Machine machine;
  machine.axes.resize(1);
  auto field = field_of(machine, 0, PartSlot::axis, "travel");
  REQUIRE(field);
  const auto read = read_quantity(text, Kind::length, find_unit(Kind::length, "mm"));
  REQUIRE(read);
  field->value = read->value;
  field->note = {text, Origin::entered};
  return *field;
}

QString printed(double si, Kind kind, const char* unit) {
  return words::printed_quantity({kind, si}, unit);
}

} // namespace

TEST_CASE("of a sum that was typed what it comes to is told, in the unit it was typed in") {
  const struct {
    const char* typed;
    const char* value;
  } sums[] = {{"(1200+400) mm", "1600 mm"},
              {"3*5 mm", "15 mm"},
              {"1200 + 400", "1600 mm"},
              {"20 in/4", "5 in"},
              {"1 m - 20 cm", "0.8 m"}};
  for (const auto& sum : sums) {
    INFO(sum.typed);
    const FieldView field = typed_travel(sum.typed);
    CHECK(words::field_value(field) == QString::fromUtf8(sum.value));
    CHECK(words::worked_out_from(field) == QString::fromUtf8(sum.typed));
  }
}

TEST_CASE("a size as people say it is told as it was typed") {
  for (const char* typed :
       {"1600 mm", "1/2 in", "1 1/4 in", "1-1/4 in", "5' 3 1/2\"", "12.5 cm", "1600"}) {
    INFO(typed);
    const FieldView field = typed_travel(typed);
    CHECK(words::worked_out_from(field).isEmpty());
    CHECK(words::field_value(field) == QString::fromUtf8(typed));
  }
}

TEST_CASE("large figures are set in groups and powers of ten as such, in each language's mark") {
  CHECK(printed(16855.0, Kind::force, "N") == QStringLiteral("16\u202f855 N"));
  CHECK(printed(1234567.0, Kind::force, "N") == QStringLiteral("1\u202f234\u202f567 N"));
  CHECK(printed(1234.0, Kind::force, "N") == QStringLiteral("1234 N"));
  CHECK(printed(6.966e10, Kind::number, "") == QStringLiteral("6.966·10¹⁰"));
  CHECK(printed(-2.5e-6, Kind::number, "") == QStringLiteral("−2.5·10⁻⁶"));
  const InLanguage german("de");
  CHECK(printed(6.966e10, Kind::number, "") == QStringLiteral("6,966·10¹⁰"));
  CHECK(printed(16855.25, Kind::force, "N") == QStringLiteral("16\u202f855 N"));
}

TEST_CASE("a negative value has a true minus, which the reader of quantities takes") {
  const AnyQuantity value{Kind::torque, -0.25};
  const QString shown = words::quantity(value, "N·m");
  CHECK(shown == QStringLiteral("−0.25 N·m"));
  const auto read = read_quantity(shown.toStdString(), Kind::torque);
  REQUIRE(read);
  CHECK(read->value.si == value.si);
}

TEST_CASE("the sign of an angle stands at its figure, that of a temperature does not") {
  Machine machine;
  machine.axes.resize(1);
  auto field = field_of(machine, 0, PartSlot::axis, "incline");
  REQUIRE(field);
  field->value = AnyQuantity{Kind::angle, -pi / 4.0};
  field->note = {"-45 °", Origin::entered};
  CHECK(words::field_text(*field) == QStringLiteral("-45°"));
  CHECK(words::field_value(*field) == QStringLiteral("−45°"));
  CHECK(words::quantity({Kind::temperature, 293.15}, "°C") == QStringLiteral("20 °C"));
}

TEST_CASE("no line ends within a quantity, and what is painted is what was written") {
  const QString text = QStringLiteral("finishing, 10 min, 2 m/min, 40 N; ≤ 20 mm; 70 000 N; "
                                      "from (1200+400) mm; at 1.5·10⁻⁵ kg·m²");
  const QFont font;
  const QFontMetricsF metrics(font);
  const double least = metrics.horizontalAdvance(QStringLiteral("(1200+400) mm; ")) + 2.0;
  for (double width = least; width < 400.0; width += 7.0) {
    INFO(width);
    const QStringList lines = WholeLines(text, font, width).texts();
    CHECK(lines.join(QLatin1Char(' ')) == text);
    for (const QString& line : lines) {
      CHECK_FALSE(line.endsWith(QLatin1Char('/')));
      CHECK_FALSE(line.endsWith(QStringLiteral("≤")));
      CHECK_FALSE(line.back().isDigit());
      CHECK_FALSE(line.endsWith(QStringLiteral("⁻⁵")));
      CHECK_FALSE(line.endsWith(QLatin1Char(')')));
    }
  }
}
