// SPDX-License-Identifier: GPL-3.0-or-later

// Where the parts of a set equation stand, and that no equation of any machine has a sign the font
// lacks or a line that leaves its column.

#include "studies/formula_label.h"

#include "sizing/size_axis.h"
#include "studies/formula_boxes.h"
#include "support/window.h"

#include <QFontMetrics>
#include <QImage>
#include <QPainter>

#include <filesystem>
#include <functional>

using namespace feedwright;
using Form = Notation::Form;
using BoxKind = FormulaBox::Kind;

namespace {

Notation symbol(const char* text) {
  Notation made;
  made.form = Form::symbol;
  made.text = text;
  return made;
}

Notation around(Form form, Notation inner) {
  Notation made;
  made.form = form;
  made.parts.push_back(std::move(inner));
  return made;
}

QFont of_size(double points) {
  QFont font;
  font.setPointSizeF(points);
  return font;
}

const FormulaBox& only(const FormulaBox& row) {
  REQUIRE(row.inside.size() == 1);
  return row.inside.front();
}

/// Half a unit of rounding either way.
constexpr qreal rounding = 0.6;

void check_inside(const FormulaBox& box) {
  const QRectF room(-rounding, -box.ascent - rounding, box.width + 2.0 * rounding,
                    box.height() + 2.0 * rounding);
  for (const FormulaBox& inner : box.inside) {
    INFO(box.text.toStdString() << " > " << inner.text.toStdString());
    CHECK(room.contains(inner.rect()));
    check_inside(inner);
  }
  if (!box.strokes.isEmpty()) {
    CHECK(room.adjusted(-1, -1, 1, 1).contains(box.strokes.boundingRect()));
  }
}

void check_has_signs(const FormulaBox& box) {
  const QFontMetrics metrics(box.font);
  for (const uint sign : box.text.toUcs4()) {
    INFO("U+" << QString::number(sign, 16).toStdString() << " of " << box.text.toStdString());
    CHECK(metrics.inFontUcs4(sign));
  }
  for (const FormulaBox& inner : box.inside) {
    check_has_signs(inner);
  }
}

void for_every_step(const std::function<void(const WrittenStep&)>& act) {
  for (const char* folder : {"/sample-machines", "/tests/machines"}) {
    for (const auto& entry :
         std::filesystem::directory_iterator(std::string(FEEDWRIGHT_SOURCE_DIR) + folder)) {
      if (entry.path().extension() != ".feedwright") {
        continue;
      }
      const auto text = read_file(entry.path().string(), 1U << 20U);
      REQUIRE(text);
      const auto machine = read_machine(*text);
      REQUIRE(machine);
      for (std::size_t axis = 0; axis < machine->axes.size(); ++axis) {
        Working working;
        size_axis(*machine, machine->axes[axis], working);
        for (const WorkingStep& step : working.steps()) {
          INFO(entry.path().string() << " " << descriptor(step.result).name);
          act(write_step(step, *machine, axis, DecimalMark::point));
        }
      }
    }
  }
}

} // namespace

TEST_CASE("the bar of a fraction spans both its sides, one above and one below it") {
  const FormulaBox row =
      set_formula(notation::fraction(symbol("a"), notation::product(symbol("b"), symbol("c_long"))),
                  of_size(11));
  const FormulaBox& fraction = only(row);
  REQUIRE(fraction.kind == BoxKind::fraction);
  const QRectF bar = fraction.strokes.boundingRect();
  const FormulaBox& over = fraction.inside[0];
  const FormulaBox& under = fraction.inside[1];
  for (const FormulaBox& side : {over, under}) {
    CHECK(bar.left() < side.rect().left());
    CHECK(bar.right() > side.rect().right());
    CHECK(std::abs(bar.center().x() - side.rect().center().x()) < 0.51);
  }
  CHECK(over.rect().bottom() < bar.top());
  CHECK(under.rect().top() > bar.bottom());
  // The bar is at the height of a minus sign, above the baseline.
  CHECK(bar.bottom() < 0.0);
}

TEST_CASE("letters stand on one baseline whatever stands beside them") {
  const FormulaBox row = set_formula(
      notation::sum(symbol("a_1"), notation::fraction(symbol("b"), symbol("c"))), of_size(11));
  for (const FormulaBox& part : row.inside) {
    CHECK(part.at.y() == 0.0);
  }
}

TEST_CASE("a subscript hangs, an exponent rises, both are smaller") {
  const FormulaBox sub = only(set_formula(symbol("v_w"), of_size(11)));
  REQUIRE(sub.inside.size() == 2);
  CHECK(sub.inside[1].at.y() > 0.0);
  CHECK(sub.inside[1].font.pointSizeF() < 11.0);
  CHECK(sub.inside[0].font.italic());
  CHECK_FALSE(sub.inside[1].font.italic());
  const FormulaBox power = only(set_formula(around(Form::square, symbol("v")), of_size(11)));
  CHECK(power.inside[1].at.y() < 0.0);
  CHECK(power.inside[1].text == QStringLiteral("2"));
}

TEST_CASE("units and functions stand upright, variables lean") {
  Notation value;
  value.text = "-1.5e-5";
  value.unit = "mm";
  const FormulaBox number = only(set_formula(value, of_size(11)));
  QString all;
  const std::function<void(const FormulaBox&)> read = [&](const FormulaBox& box) {
    CHECK_FALSE(box.font.italic());
    all += box.text;
    for (const FormulaBox& inner : box.inside) {
      read(inner);
    }
  };
  read(number);
  CHECK(all == QStringLiteral("−1.5·10−5mm"));
  const FormulaBox tangent = only(set_formula(symbol("tan φ"), of_size(11)));
  CHECK_FALSE(tangent.inside[0].font.italic());
  CHECK(tangent.inside[1].font.italic());
}

TEST_CASE("how far a function reaches is not left open") {
  const auto reach = [](Notation inner) {
    Notation made = around(Form::function, std::move(inner));
    made.text = "atan";
    const FormulaBox row = set_formula(made, of_size(11));
    REQUIRE(row.inside.size() == 2);
    return row.inside[1].kind;
  };
  Notation number;
  number.text = "0.0707";
  CHECK(reach(number) == BoxKind::brackets);
  CHECK(reach(symbol("tan φ")) == BoxKind::brackets);
  CHECK(reach(symbol("φ")) != BoxKind::brackets);
}

TEST_CASE("a root covers what is under it, brackets grow with it") {
  const Notation tall = notation::fraction(symbol("a"), symbol("b"));
  const FormulaBox root = only(set_formula(around(Form::root, tall), of_size(11)));
  REQUIRE(root.kind == BoxKind::root);
  const QRectF sign = root.strokes.boundingRect();
  const QRectF inner = root.inside[0].rect();
  CHECK(sign.top() < inner.top());
  CHECK(sign.right() >= inner.right());
  CHECK(sign.left() < inner.left());
  const FormulaBox square = only(set_formula(around(Form::square, tall), of_size(11)));
  const FormulaBox& brackets = square.inside[0];
  REQUIRE(brackets.kind == BoxKind::brackets);
  CHECK(brackets.strokes.boundingRect().height() > 0.95 * brackets.inside[0].height());
}

TEST_CASE("lines of an equation stand below each other at the sign of equality") {
  Notation value;
  value.text = "5";
  value.unit = "mm";
  const FormulaBox all = set_equations(
      symbol("a"), {notation::sum(symbol("b"), symbol("c")), value}, of_size(11), 400);
  REQUIRE(all.inside.size() == 5);
  const FormulaBox& first_sign = all.inside[1];
  const FormulaBox& second_sign = all.inside[3];
  CHECK(first_sign.text == QStringLiteral("="));
  CHECK(first_sign.at.x() == second_sign.at.x());
  CHECK(first_sign.at.y() < second_sign.at.y());
  CHECK(all.inside[0].at.y() == first_sign.at.y());
}

TEST_CASE("a long sum is broken before its signs, and a broken product shows its sign") {
  Notation sum = symbol("a_first");
  Notation product = symbol("a_first");
  for (int i = 0; i < 12; ++i) {
    sum = notation::sum(sum, symbol("b_next"));
    product = notation::product(product, symbol("b_next"));
  }
  const FormulaBox lines = set_equations(symbol("y"), {sum}, of_size(11), 200);
  CHECK(lines.width <= 200.0);
  CHECK(lines.inside.size() > 3);
  CHECK(lines.inside[3].inside.front().text == QStringLiteral("+"));
  const FormulaBox factors = set_equations(symbol("y"), {product}, of_size(11), 150);
  CHECK(factors.width <= 150.0);
  CHECK(factors.inside[3].inside.front().text == QStringLiteral("·"));
}

TEST_CASE("a term is found where it stands, and stands where it is found") {
  Notation a = symbol("a");
  a.term = 0;
  Notation b = symbol("b_x");
  b.term = 1;
  const FormulaBox all = set_equations(symbol("y"), {notation::fraction(a, b)}, of_size(11), 300);
  for (const std::size_t term : {std::size_t{0}, std::size_t{1}}) {
    const auto places = places_of_term(all, term);
    REQUIRE(places.size() == 1);
    CHECK(term_at(all, places[0].center()) == term);
  }
  CHECK_FALSE(term_at(all, QPointF(-5, -5)));
}

TEST_CASE("every equation of every machine sets without a missing sign, each box in its parent") {
  std::size_t count = 0;
  for_every_step([&](const WrittenStep& step) {
    for (const Notation* one : {&step.formula_notation, &step.numbers_notation,
                                &step.value_notation, &step.symbol_notation}) {
      const FormulaBox box = set_formula(*one, of_size(10));
      check_inside(box);
      check_has_signs(box);
      ++count;
    }
  });
  CHECK(count > 2000);
}

TEST_CASE("every equation of every machine keeps to its column, also at 18 points") {
  for_every_step([&](const WrittenStep& step) {
    for (const double points : {9.0, 18.0}) {
      const qreal width = points * 40.0;
      const FormulaBox box = set_equations(
          step.symbol_notation, {step.formula_notation, step.numbers_notation, step.value_notation},
          of_size(points), width);
      INFO(step.formula << " at " << points);
      CHECK(box.width <= width + 0.01);
    }
  });
}

TEST_CASE("an equation is painted in the colour given, and only where its box is") {
  const FormulaBox box =
      set_formula(around(Form::root, notation::fraction(symbol("E"), symbol("ρ_x"))), of_size(20));
  QImage picture(int(box.width) + 40, int(box.height()) + 40, QImage::Format_RGB32);
  picture.fill(Qt::white);
  {
    QPainter painter(&picture);
    paint_formula(painter, box, {20.0, 20.0}, Qt::black);
  }
  const QRect room = QRectF(20, 20, box.width, box.height()).toAlignedRect().adjusted(-2, -2, 2, 2);
  int inked = 0;
  for (int y = 0; y < picture.height(); ++y) {
    for (int x = 0; x < picture.width(); ++x) {
      const bool ink = picture.pixelColor(x, y).lightness() < 128;
      inked += ink ? 1 : 0;
      if (ink && !room.contains(x, y)) {
        INFO(x << ", " << y);
        CHECK(room.contains(x, y));
      }
    }
  }
  CHECK(inked > 100);
}
