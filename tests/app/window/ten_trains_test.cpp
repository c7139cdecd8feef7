// SPDX-License-Identifier: GPL-3.0-or-later

// Each kind of train described from a new machine on, by the window's own controls.

#include "document/new_machine.h"
#include "support/window.h"
#include "text/text_of.h"
#include "text/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>

#include <algorithm>

using namespace feedwright;
using feedwright::testing::Shown;

namespace {

/// Somebody at the window: chooses a part, types, picks.
class Builder {
public:
  Builder() : shown_(new_machine()) {
    fill(PartSlot::targets, "feed", "3 m/min");
    fill(PartSlot::targets, "acceleration", "0.4 m/s2");
    fill(PartSlot::targets, "cutting_feed", "1 m/min");
    fill(PartSlot::targets, "thrust", "80 N");
  }

  void fill(PartSlot slot, const std::string& member, const char* text) {
    choose(slot);
    auto& edit = shown_.find<QLineEdit>(key(slot, member).c_str());
    edit.setFocus();
    edit.selectAll();
    QTest::keyClicks(&edit, QString::fromUtf8(text));
    QTest::keyClick(&edit, Qt::Key_Return);
    INFO(member << " " << text);
    CHECK_FALSE(edit.isModified());
  }

  void pick(PartSlot slot, const std::string& member, std::string_view choice) {
    choose(slot);
    auto& box = shown_.find<QComboBox>(key(slot, member).c_str());
    const int index = box.findText(words::choice_name(member, choice));
    INFO(member << " " << choice);
    REQUIRE(index >= 0);
    box.setCurrentIndex(index);
    emit box.activated(index);
    QCoreApplication::processEvents();
  }

  void type(PartSlot slot, const char* type) {
    choose(slot);
    auto& box = shown_.find<QComboBox>("part_type");
    box.setCurrentIndex(box.findData(QString::fromUtf8(type)));
    emit box.activated(box.currentIndex());
    QCoreApplication::processEvents();
  }

  void take(PartSlot slot, const char* piece) {
    choose(slot);
    auto& box = shown_.find<QComboBox>("part_picker");
    const int index = box.findText(QString::fromUtf8(piece), Qt::MatchContains);
    INFO(piece);
    REQUIRE(index >= 0);
    box.setCurrentIndex(index);
    emit box.activated(index);
    QCoreApplication::processEvents();
  }

  void press(PartSlot slot, const char* button) {
    choose(slot);
    QTest::mouseClick(&shown_.find<QPushButton>(button), Qt::LeftButton);
    QCoreApplication::processEvents();
  }

  void tick(PartSlot slot, const std::string& member) {
    choose(slot);
    shown_.find<QCheckBox>(key(slot, member).c_str()).click();
  }

  const AxisResults& results() {
    INFO("faults " << shown_.document().faults().size());
    REQUIRE(shown_.document().current() != nullptr);
    return *shown_.document().current();
  }

  bool warned(FindingCode code) {
    return std::ranges::any_of(results().findings,
                               [&](const Finding& finding) { return finding.code == code; });
  }

private:
  static std::string key(PartSlot slot, const std::string& member) {
    return std::string(slot_name(slot)) + "." + member;
  }
  void choose(PartSlot slot) {
    shown_.document().select({0, slot, {}});
    QCoreApplication::processEvents();
  }

  Shown shown_;
};

} // namespace

TEST_CASE("from nothing: a coupled ball screw with a fixed far end") {
  Builder builder;
  builder.take(PartSlot::drive, "16 × 5");
  builder.take(PartSlot::motor, "NEMA 23, 76 mm");
  builder.pick(PartSlot::drive, "far_end", "fixed");
  CHECK(builder.results().whip_feed);
  CHECK(builder.results().motor_torque_feed);
}

TEST_CASE("from nothing: a belt reduction") {
  Builder builder;
  builder.type(PartSlot::transmission, "belt");
  builder.fill(PartSlot::transmission, "screw_pulley_teeth", "40");
  builder.fill(PartSlot::transmission, "belt_teeth", "100");
  CHECK(number(*builder.results().reduction) == Approx(2.0));
  CHECK(builder.results().belt_centre_distance);
}

TEST_CASE("from nothing: one motor and belt loop on two screws") {
  Builder builder;
  builder.type(PartSlot::transmission, "belt_loop");
  builder.pick(PartSlot::sides, "layout", "one_motor");
  // Two screws, the motor, and two rollers that press the belt round its pulley.
  CHECK(builder.results().loop.size() == 5);
  CHECK(builder.results().slide_position);
}

TEST_CASE("from nothing: a gantry on two motors") {
  Builder builder;
  builder.pick(PartSlot::sides, "layout", "two_motors");
  builder.fill(PartSlot::sides, "spacing", "700 mm");
  builder.fill(PartSlot::sides, "crossing_mass", "4 kg");
  builder.fill(PartSlot::sides, "cross_travel", "500 mm");
  CHECK(number(*builder.results().worst_side_share) == Approx(0.5 + 250.0 / 700.0));
  CHECK(builder.warned(FindingCode::sides_can_skew));
}

TEST_CASE("from nothing: a central screw under a gantry") {
  Builder builder;
  builder.fill(PartSlot::guides, "block_spacing", "150 mm");
  builder.fill(PartSlot::sides, "cross_travel", "300 mm");
  CHECK(builder.results().couple_force);
}

TEST_CASE("from nothing: two nuts wound against each other") {
  Builder builder;
  builder.fill(PartSlot::drive, "preload", "500 N");
  builder.pick(PartSlot::drive, "nuts", "preloaded_pair");
  CHECK(*builder.results().lost_motion == Length());
  CHECK(builder.results().preload_drag_torque);
}

TEST_CASE("from nothing: a trapezoidal screw with a thrust washer") {
  Builder builder;
  builder.take(PartSlot::drive, "Tr 16 × 4");
  builder.fill(PartSlot::drive, "collar_friction", "0.1");
  builder.fill(PartSlot::drive, "collar_diameter", "20 mm");
  CHECK(*builder.results().back_driving_efficiency < 0.0);
}

TEST_CASE("from nothing: a belt that hauls the carriage") {
  Builder builder;
  builder.type(PartSlot::drive, "hauling_belt");
  builder.fill(PartSlot::drive, "belt_length", "1.6 m");
  builder.fill(PartSlot::targets, "feed", "15 m/min");
  CHECK_FALSE(builder.results().limit(LimitId::whip).applies);
  CHECK(builder.results().haul_rim_force);
}

TEST_CASE("from nothing: an upright axis with a brake") {
  Builder builder;
  builder.fill(PartSlot::axis, "incline", "90 °");
  builder.fill(PartSlot::drive, "lead", "10 mm");
  CHECK(builder.warned(FindingCode::axis_can_fall));
  builder.tick(PartSlot::carriage, "brake");
  CHECK_FALSE(builder.warned(FindingCode::axis_can_fall));
}

TEST_CASE("from nothing: every kind of motor, and a day's work for it") {
  Builder builder;
  for (const char* type : {"servo", "stepper_by_points", "stepper_by_ratings"}) {
    builder.type(PartSlot::motor, type);
    CHECK(builder.results().usable_torque);
  }
  builder.press(PartSlot::duty, "load_cases_add");
  builder.press(PartSlot::duty, "moves_add");
  CHECK(builder.results().rms_torque);
  CHECK(builder.results().load_case_reserve);
}
