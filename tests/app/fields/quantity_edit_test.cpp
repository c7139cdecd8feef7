// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/quantity_edit.h"
#include "support/window.h"
#include "text/words.h"
#include "units/read_quantity.h"
#include "units/write_quantity.h"

#include <QApplication>
#include <QMenu>
#include <QSignalSpy>
#include <QWheelEvent>

#include <cmath>
#include <random>

using namespace feedwright;
using feedwright::testing::InLanguage;
using feedwright::testing::Shown;

namespace {

void come_and_go(QWidget& edit) {
  QFocusEvent in(QEvent::FocusIn, Qt::TabFocusReason);
  QFocusEvent out(QEvent::FocusOut, Qt::TabFocusReason);
  QCoreApplication::sendEvent(&edit, &in);
  QCoreApplication::sendEvent(&edit, &out);
}

double lead_of(Shown& shown) {
  return si_value(*testing::screw_of(shown.document().machine().axes[0]).lead);
}

QAction* line_of(QMenu& menu, const char* name) {
  for (QAction* action : menu.actions()) {
    if (action->objectName() == QString::fromUtf8(name)) {
      return action;
    }
  }
  return nullptr;
}

void show_in(QuantityEdit& edit, const char* line) {
  const std::unique_ptr<QMenu> menu(edit.made_menu());
  QAction* action = line_of(*menu, line);
  INFO(line);
  REQUIRE(action != nullptr);
  action->trigger();
  QCoreApplication::processEvents();
}

} // namespace

TEST_CASE("looking into a field and leaving it hands in nothing, for any value in any unit") {
  std::mt19937_64 random(7);
  std::uniform_real_distribution<double> mantissa(1.0, 10.0);
  std::uniform_int_distribution<int> exponent(-6, 6);
  std::uniform_int_distribution<std::size_t> pick(0, 1000);
  constexpr Kind kinds[] = {Kind::length, Kind::lead, Kind::torque, Kind::inertia, Kind::velocity};
  int handed_in = 0;
  std::vector<std::unique_ptr<QuantityEdit>> edits;
  for (const Kind kind : kinds) {
    edits.push_back(std::make_unique<QuantityEdit>(kind, units_of(kind)[0].symbol));
    QObject::connect(edits.back().get(), &EntryEdit::committed, [&] { ++handed_in; });
  }
  for (const char* code : {"en", "de"}) {
    const InLanguage language(code);
    constexpr int tries = 5000;
    for (int i = 0; i < tries; ++i) {
      const std::size_t which = pick(random) % edits.size();
      QuantityEdit& edit = *edits[which];
      const Kind kind = kinds[which];
      const AnyQuantity value{kind, mantissa(random) * std::pow(10.0, exponent(random))};
      const Unit& unit = units_of(kind)[pick(random) % units_of(kind).size()];
      const auto text = write_in(value, unit, words::decimal_mark());
      REQUIRE(text);
      edit.show_quantity(QString::fromStdString(*text), value);
      come_and_go(edit);
      come_and_go(edit);
      REQUIRE(edit.taken().toStdString() == *text);
      REQUIRE(read_quantity(edit.taken().toStdString(), kind)->value.si == value.si);
    }
  }
  CHECK(handed_in == 0);
}

TEST_CASE("a number with more digits than anybody reads is shown short until it is edited") {
  QuantityEdit edit(Kind::length, "mm");
  edit.show_quantity(QStringLiteral("0.19685039370078738 in"), AnyQuantity{Kind::length, 0.005});
  CHECK(edit.text() == QStringLiteral("0.19685… in"));
  QFocusEvent in(QEvent::FocusIn, Qt::TabFocusReason);
  QCoreApplication::sendEvent(&edit, &in);
  CHECK(edit.text() == QStringLiteral("0.19685039370078738 in"));
  edit.show_quantity(QStringLiteral("123456.12345678 mm"), AnyQuantity{Kind::length, 123.4});
  QFocusEvent out(QEvent::FocusOut, Qt::TabFocusReason);
  QCoreApplication::sendEvent(&edit, &out);
  CHECK(edit.text() == QStringLiteral("123456.1… mm"));
}

TEST_CASE("the field's menu says the value in each unit, and the present one is marked") {
  Shown shown;
  auto& lead = shown.find<QuantityEdit>("drive.lead");
  const std::unique_ptr<QMenu> menu(lead.made_menu());
  QAction* inches = line_of(*menu, "in in");
  REQUIRE(inches != nullptr);
  CHECK(inches->text() == QStringLiteral("0.19685 in"));
  CHECK_FALSE(inches->isChecked());
  REQUIRE(line_of(*menu, "in mm") != nullptr);
  CHECK(line_of(*menu, "in mm")->text() == QStringLiteral("5 mm"));
  CHECK(line_of(*menu, "in mm")->isChecked());
}

TEST_CASE("a lead shown in inches is the same lead to the last bit, and Undo shows it as before") {
  Shown shown(testing::ordinary_router_read());
  auto& lead = shown.find<QuantityEdit>("drive.lead");
  const double before = lead_of(shown);
  show_in(lead, "in in");
  CHECK(lead_of(shown) == before);
  CHECK(lead.taken().endsWith(QStringLiteral(" in")));
  CHECK(shown.document().undo_stack()->undoText() == QStringLiteral("show lead in in"));
  const auto reopened = read_machine(write_machine(shown.document().machine()));
  REQUIRE(reopened);
  CHECK(si_value(*testing::screw_of(reopened->axes[0]).lead) == before);
  show_in(lead, "in cm");
  CHECK(lead_of(shown) == before);
  shown.trigger("undo");
  shown.trigger("undo");
  CHECK(lead.taken() == QStringLiteral("5 mm"));
  CHECK(lead_of(shown) == before);
}

TEST_CASE("a sum typed without a unit is in the file as it was meant") {
  Shown shown(testing::ordinary_router_read());
  for (const char* const typed : {"1200+400", "2*(500+300)", "(3000+200)/2"}) {
    INFO(typed);
    auto& span = shown.find<QuantityEdit>("drive.span");
    span.setFocus();
    span.selectAll();
    QTest::keyClicks(&span, QString::fromLatin1(typed));
    QTest::keyClick(&span, Qt::Key_Return);
    const auto reopened = read_machine(write_machine(shown.document().machine()));
    REQUIRE(reopened);
    CHECK(si_value(*testing::screw_of(reopened->axes[0]).span) == Approx(1.6));
  }
}

TEST_CASE("Alt and Down, or F4, open the menu of units, wheel and arrows change nothing") {
  Shown shown;
  auto& lead = shown.find<QuantityEdit>("drive.lead");
  const double before = lead_of(shown);
  lead.setFocus();
  QTest::keyClick(&lead, Qt::Key_Up);
  QTest::keyClick(&lead, Qt::Key_Down);
  QWheelEvent wheel(QPointF(5, 5), lead.mapToGlobal(QPointF(5, 5)), QPoint(), QPoint(0, 120),
                    Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
  QCoreApplication::sendEvent(&lead, &wheel);
  CHECK(lead.text() == QStringLiteral("5 mm"));
  CHECK(lead_of(shown) == before);
  QTest::keyClick(&lead, Qt::Key_Down, Qt::AltModifier);
  REQUIRE(QApplication::activePopupWidget() != nullptr);
  QApplication::activePopupWidget()->close();
  QTest::keyClick(&lead, Qt::Key_F4);
  REQUIRE(QApplication::activePopupWidget() != nullptr);
  QApplication::activePopupWidget()->close();
}

TEST_CASE("Enter takes and selects all for the next try, on rubbish it selects what is wrong") {
  Shown shown;
  auto& lead = shown.find<QuantityEdit>("drive.lead");
  lead.setFocus();
  lead.selectAll();
  QTest::keyClicks(&lead, QStringLiteral("10"));
  QTest::keyClick(&lead, Qt::Key_Return);
  CHECK(lead.text() == QStringLiteral("10 mm"));
  CHECK(lead.selectedText() == QStringLiteral("10 mm"));
  QTest::keyClicks(&lead, QStringLiteral("4 mm + 3 kg"));
  QTest::keyClick(&lead, Qt::Key_Return);
  CHECK(lead.selectedText() == QStringLiteral("3 kg"));
  QTest::keyClick(&lead, Qt::Key_Escape);
  CHECK(lead.text() == QStringLiteral("10 mm"));
}
