// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/fields_panel.h"
#include "limits/ladder_widget.h"
#include "studies/studies_view.h"
#include "studies/working_view.h"
#include "support/axes.h"
#include "support/window.h"
#include "train/train_view.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollBar>
#include <QTableWidget>
#include <QWheelEvent>

#include <set>

using namespace feedwright;
using feedwright::testing::ordinary_router;
using feedwright::testing::Shown;

namespace {

void type_into(QLineEdit& edit, const char* text) {
  edit.setFocus();
  edit.selectAll();
  QTest::keyClicks(&edit, QString::fromUtf8(text));
  QTest::keyClick(&edit, Qt::Key_Return);
}

void choose(Shown& shown, PartSlot slot) {
  shown.document().select({0, slot, {}});
}

QString note_under(Shown& shown, const char* field) {
  const std::string name = std::string(field) + ".note";
  auto& note = shown.find<QLabel>(name.c_str());
  return note.isVisible() ? note.text() : QString();
}

} // namespace

TEST_CASE("typing a lead in inches moves the limits at once, says what it became, and is undone") {
  Shown shown;
  const double before = si_value(*shown.document().current()->whip_feed);
  type_into(shown.find<QLineEdit>("drive.lead"), "1/2 in");
  CHECK(si_value(*shown.document().current()->whip_feed) == Approx(before * 12.7 / 5.0));
  CHECK(note_under(shown, "drive.lead") == QStringLiteral("= 12.7 mm"));
  CHECK(shown.find<QAction>("undo").text().contains(QStringLiteral("lead 5 mm → 1/2 in")));
  shown.trigger("undo");
  CHECK(si_value(*shown.document().current()->whip_feed) == Approx(before));
  CHECK(shown.find<QLineEdit>("drive.lead").text() == QStringLiteral("5 mm"));
}

TEST_CASE("rubbish stays as typed, says why and computes nothing anew, and Escape brings back") {
  Shown shown;
  const Machine before = shown.document().machine();
  auto& lead = shown.find<QLineEdit>("drive.lead");
  type_into(lead, "5 kg");
  CHECK(lead.text() == QStringLiteral("5 kg"));
  CHECK(note_under(shown, "drive.lead").contains(QStringLiteral("is a mass")));
  CHECK(shown.document().machine() == before);
  QTest::keyClick(&lead, Qt::Key_Escape);
  CHECK(lead.text() == QStringLiteral("5 mm"));
  CHECK(note_under(shown, "drive.lead").isEmpty());
}

TEST_CASE("rubbish is kept while other fields are edited") {
  Shown shown;
  auto& lead = shown.find<QLineEdit>("drive.lead");
  type_into(lead, "five");
  type_into(shown.find<QLineEdit>("drive.backlash"), "20 µm");
  CHECK(lead.text() == QStringLiteral("five"));
  CHECK_FALSE(note_under(shown, "drive.lead").isEmpty());
  CHECK(shown.document().undo_stack()->count() == 1);
}

TEST_CASE("an unsound value shows its sentence at the field and in place of the limits") {
  Shown shown;
  type_into(shown.find<QLineEdit>("drive.span"), "100 mm");
  CHECK(shown.document().current() == nullptr);
  CHECK(shown.find<QLabel>("limits_not_computed").isVisible());
  shown.trigger("undo");
  CHECK(shown.document().current() != nullptr);
  CHECK_FALSE(shown.find<QLabel>("limits_not_computed").isVisible());
}

TEST_CASE("leaving a field by Tab takes its value") {
  Shown shown;
  auto& lead = shown.find<QLineEdit>("drive.lead");
  lead.setFocus();
  lead.selectAll();
  QTest::keyClicks(&lead, QStringLiteral("10"));
  QTest::keyClick(&lead, Qt::Key_Tab);
  CHECK(si_value(*testing::screw_of(shown.document().machine().axes[0]).lead) ==
        Approx(0.01 / (2.0 * pi)));
}

TEST_CASE("the wheel over a field edits nothing") {
  Shown shown;
  auto& box = shown.find<QComboBox>("drive.far_end");
  box.setFocus();
  const Machine before = shown.document().machine();
  QWheelEvent wheel(QPointF(5, 5), box.mapToGlobal(QPointF(5, 5)), QPoint(), QPoint(0, -120),
                    Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
  QCoreApplication::sendEvent(&box, &wheel);
  CHECK(shown.document().machine() == before);
  CHECK(box.currentIndex() == 1);
}

TEST_CASE("choices and flags are edits like any other") {
  Shown shown;
  auto& far_end = shown.find<QComboBox>("drive.far_end");
  far_end.setCurrentIndex(0);
  emit far_end.activated(0);
  CHECK(testing::screw_of(shown.document().machine().axes[0]).far_end == EndSupport::fixed);
  CHECK(shown.document().undo_stack()->undoText() == QStringLiteral("far end supported → fixed"));
  choose(shown, PartSlot::carriage);
  QTest::mouseClick(&shown.find<QCheckBox>("carriage.brake"), Qt::LeftButton, Qt::NoModifier,
                    QPoint(8, shown.find<QCheckBox>("carriage.brake").height() / 2));
  CHECK(shown.document().machine().axes[0].carriage.brake);
}

TEST_CASE("another type of part brings its own fields and can be undone") {
  Shown shown;
  choose(shown, PartSlot::transmission);
  CHECK(shown.window->fields().editor_of(PartSlot::transmission, "belt_teeth") != nullptr);
  auto& type = shown.find<QComboBox>("part_type");
  type.setCurrentIndex(0);
  emit type.activated(0);
  QCoreApplication::processEvents();
  CHECK(std::holds_alternative<Coupling>(shown.document().machine().axes[0].transmission));
  CHECK(shown.window->fields().editor_of(PartSlot::transmission, "inertia") != nullptr);
  shown.trigger("undo");
  CHECK(std::holds_alternative<BeltStage>(shown.document().machine().axes[0].transmission));
  CHECK(shown.window->fields().editor_of(PartSlot::transmission, "belt_teeth") != nullptr);
}

TEST_CASE("points of a torque curve are typed, added, removed, and refused when not rising") {
  Shown shown;
  choose(shown, PartSlot::motor);
  auto& table = shown.find<QTableWidget>("points");
  const int rows = table.rowCount();
  REQUIRE(rows == 7);
  table.item(1, 1)->setText(QStringLiteral("210 oz in"));
  const auto& points = std::get<StepperByPoints>(shown.document().machine().axes[0].motor).points;
  // 1 ozf·in is 1/16 lbf·in: 0.45359237 kg × 9.80665 m/s² × 0.0254 m / 16
  CHECK(si_value(*points[1].torque) == Approx(210.0 * 0.00706155).epsilon(1e-5));
  QTest::mouseClick(&shown.find<QPushButton>("points_add"), Qt::LeftButton);
  CHECK(shown.find<QTableWidget>("points").rowCount() == rows + 1);
  QTest::mouseClick(&shown.find<QPushButton>("points_remove"), Qt::LeftButton);
  CHECK(shown.find<QTableWidget>("points").rowCount() == rows);
  table.item(2, 0)->setText(QStringLiteral("0 rpm"));
  CHECK(shown.document().current() == nullptr);
  CHECK(note_under(shown, "motor.points").contains(QStringLiteral("rise")));
}

TEST_CASE("a click on a bar of the ladder opens the field it comes from") {
  Shown shown;
  auto& ladder = shown.find<LadderWidget>("feed_ladder");
  const auto& rows = ladder.ladder().rows;
  std::size_t whip = 0;
  while (whip < rows.size() && rows[whip].id != LimitId::whip) {
    ++whip;
  }
  REQUIRE(whip < rows.size());
  choose(shown, PartSlot::motor);
  QTest::mouseClick(&ladder, Qt::LeftButton, Qt::NoModifier,
                    ladder.row_area(whip).center().toPoint());
  CHECK(shown.document().selection().slot == PartSlot::drive);
  CHECK(shown.document().selection().member == QStringLiteral("span"));
  CHECK(shown.window->studies().working().chosen() == ResultId::whip_feed);
}

TEST_CASE("a click on a part of the drawing opens its fields, and arrow keys walk the parts") {
  Shown shown;
  auto& train = shown.find<TrainView>("train_view");
  QTest::mouseClick(&train, Qt::LeftButton, Qt::NoModifier,
                    train.area_of(PartSlot::motor).center().toPoint());
  CHECK(shown.document().selection().slot == PartSlot::motor);
  CHECK(shown.window->fields().editor_of(PartSlot::motor, "rotor_inertia") != nullptr);
  train.setFocus();
  QTest::keyClick(&train, Qt::Key_Right);
  CHECK(shown.document().selection().slot != PartSlot::motor);
}

TEST_CASE("every part of the axis can be reached from the drawing by keyboard alone") {
  Shown shown;
  auto& train = shown.find<TrainView>("train_view");
  train.setFocus(Qt::TabFocusReason);
  std::set<PartSlot> reached{train.focused_part()};
  for (int i = 0; i < 12; ++i) {
    QTest::keyClick(&train, Qt::Key_Right);
    reached.insert(train.focused_part());
  }
  for (const PartSlot slot : axis_slots) {
    INFO(slot_name(slot));
    CHECK(reached.contains(slot));
  }
}

TEST_CASE("axes are added, duplicated, removed and undone, and the list follows") {
  Shown shown;
  auto& list = shown.find<QListWidget>("axes_list");
  CHECK(list.count() == 2);
  QTest::mouseClick(&shown.find<QPushButton>("add_axis_button"), Qt::LeftButton);
  CHECK(list.count() == 3);
  CHECK(shown.document().selection().axis == 1);
  CHECK(shown.document().faults().empty());
  shown.trigger("duplicate_axis");
  CHECK(list.count() == 4);
  shown.trigger("remove_axis");
  shown.trigger("undo");
  shown.trigger("undo");
  shown.trigger("undo");
  CHECK(list.count() == 2);
  CHECK_FALSE(shown.find<QAction>("remove_axis").isEnabled());
}

TEST_CASE("the machine's own name, notes and supply are edited from its card") {
  Shown shown;
  shown.find<QListWidget>("axes_list").setCurrentRow(0);
  type_into(shown.find<QLineEdit>("machine.name"), "Barn router");
  CHECK(shown.document().machine().name == "Barn router");
  type_into(shown.find<QLineEdit>("supply.voltage"), "36 V");
  CHECK(si_value(*shown.document().machine().supply.voltage) == 36.0);
}

TEST_CASE("each study and the working show without a fault, also while nothing is computed") {
  Shown shown;
  for (const bool sound : {true, false}) {
    if (!sound) {
      shown.document().edit_field(0, PartSlot::drive, "span", AnyQuantity{Kind::length, 0.1}, {});
    }
    for (int study = 0; study < StudiesView::study_count(); ++study) {
      shown.window->show_study(study);
      QCoreApplication::processEvents();
      CHECK(shown.window->studies().study() == study);
      CHECK_FALSE(shown.window->grab().isNull());
    }
  }
}

TEST_CASE("a row of the working leads to the field it names") {
  Shown shown;
  shown.window->studies().show_working(ResultId::whip_speed);
  QCoreApplication::processEvents();
  auto& terms = shown.find<QTableWidget>("working_terms");
  REQUIRE(terms.rowCount() == 5);
  for (int row = 0; row < terms.rowCount(); ++row) {
    if (terms.item(row, 0)->text() == QStringLiteral("d_r")) {
      emit terms.cellActivated(row, 0);
    }
  }
  CHECK(shown.document().selection().member == QStringLiteral("core_diameter"));
}
