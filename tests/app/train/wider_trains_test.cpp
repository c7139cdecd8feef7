// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/loop_layout.h"
#include "sizing/size_axis.h"
#include "support/window.h"
#include "train/paint_train.h"
#include "train/train_plan.h"
#include "train/train_view.h"

#include <QElapsedTimer>
#include <QImage>
#include <QPainter>

#include <algorithm>
#include <functional>
#include <set>

using namespace feedwright;
using namespace feedwright::testing;
using namespace feedwright::literals;

namespace {

struct NamedMachine {
  const char* name;
  Machine machine;
};

LoopMember member(PulleyRole role, Length x, Length y, int teeth) {
  LoopMember made;
  made.role = role;
  made.x = Finite<Length>::of(x);
  made.y = Finite<Length>::of(y);
  made.teeth = teeth;
  return made;
}

LoopMember roller(Length x, Length y, Length diameter) {
  LoopMember made = member(PulleyRole::idler, x, y, 0);
  made.diameter = Positive<Length>::of(diameter);
  made.face = BeltFace::back;
  return made;
}

/// The belt that fits nearest to the slide's drawn place.
BeltLoopDrive fitted(BeltLoopDrive loop) {
  const auto belts = fitting_belts(loop, 1);
  REQUIRE_FALSE(belts.empty());
  loop.belt_teeth = belts.front().belt_teeth;
  return loop;
}

BeltLoopDrive loop_with_back_idlers() {
  BeltLoopDrive loop;
  loop.pulleys = {member(PulleyRole::motor, 400_mm, -90_mm, 24), roller(440_mm, -40_mm, 30_mm),
                  member(PulleyRole::screw, 800_mm, 0_mm, 20),
                  member(PulleyRole::screw, 0_mm, 0_mm, 20), roller(360_mm, -40_mm, 30_mm)};
  return fitted(loop);
}

HaulingBelt hauling_belt() {
  HaulingBelt belt;
  belt.pulley_teeth = 24;
  belt.belt_length = Positive<Length>::of(2000_mm);
  return belt;
}

Machine changed(const std::function<void(Axis&)>& change) {
  Machine machine = ordinary_router();
  machine.axes[0].basics.name = "along";
  change(machine.axes[0]);
  return machine;
}

std::vector<NamedMachine> loops() {
  const auto two_screws = [](Axis& axis, const BeltLoopDrive& loop) {
    axis.transmission = loop;
    axis.sides.layout = DriveLayout::one_motor;
    axis.sides.spacing = Positive<Length>::of(300_mm);
  };
  return {{"loop over two screws", changed([&](Axis& a) { two_screws(a, fitted({})); })},
          {"loop with back-face idlers",
           changed([&](Axis& a) { two_screws(a, loop_with_back_idlers()); })},
          {"loop whose belt does not fit", changed([&](Axis& a) {
             BeltLoopDrive loop;
             loop.belt_teeth = 400;
             two_screws(a, loop);
           })},
          {"loop to two hauling belts", changed([&](Axis& a) {
             two_screws(a, fitted({}));
             a.drive = hauling_belt();
           })}};
}

std::vector<NamedMachine> sides_and_nuts() {
  return {{"two motors", changed([](Axis& a) {
             a.transmission = Coupling();
             a.sides.layout = DriveLayout::two_motors;
             a.sides.spacing = Positive<Length>::of(800_mm);
             a.duty.load_cases.emplace_back();
             a.duty.moves.emplace_back();
           })},
          {"opposed screws", changed([](Axis& a) {
             a.sides.layout = DriveLayout::two_motors;
             a.sides.pairing = Pairing::opposed;
             screw_of(a).preload = Positive<Force>::of(500_N);
           })},
          {"preloaded nuts", changed([](Axis& a) {
             screw_of(a).nuts = NutArrangement::preloaded_pair;
             screw_of(a).preload = Positive<Force>::of(500_N);
           })},
          {"turning nut", changed([](Axis& a) {
             screw_of(a).driven = DrivenMember::nut;
             screw_of(a).far_end = EndSupport::fixed;
             screw_of(a).nut_inertia = NonNegative<Inertia>::of(from_si<Inertia>(2e-4));
           })},
          {"brake and counterbalance, inclined", changed([](Axis& a) {
             a.basics.incline = Finite<Angle>::of(from_si<Angle>(pi / 2.0));
             a.carriage.brake = true;
             a.carriage.counterbalance = NonNegative<Force>::of(60_N);
           })}};
}

std::vector<NamedMachine> hauling_belts() {
  return {{"hauling belt", changed([](Axis& a) {
             a.drive = hauling_belt();
             a.transmission = Coupling();
           })},
          {"hauling belt behind a belt", changed([](Axis& a) { a.drive = hauling_belt(); })},
          {"two hauling belts", changed([](Axis& a) {
             a.drive = hauling_belt();
             a.transmission = Coupling();
             a.sides.layout = DriveLayout::two_motors;
           })}};
}

std::vector<NamedMachine> wider_trains() {
  std::vector<NamedMachine> all = loops();
  std::ranges::move(sides_and_nuts(), std::back_inserter(all));
  std::ranges::move(hauling_belts(), std::back_inserter(all));
  return all;
}

TrainPlan planned(const Machine& machine, const QSizeF& size) {
  static QImage device(8, 8, QImage::Format_ARGB32);
  std::optional<AxisResults> results;
  if (faults_of(machine).empty()) {
    results = size_axis(machine, machine.axes[0]);
  }
  return plan_train(train_geometry(machine, 0, results ? &*results : nullptr),
                    QRectF(QPointF(), size), TrainOptions(), &device);
}

void check_apart(const TrainPlan& plan, const QSizeF& size) {
  CHECK_FALSE(plan.motor.intersects(plan.supply));
  CHECK_FALSE(plan.motor.intersects(plan.controller));
  CHECK_FALSE(plan.supply.intersects(plan.controller));
  if (plan.loop) {
    CHECK_FALSE(plan.loop->area.intersects(plan.screw));
    CHECK_FALSE(plan.loop->area.intersects(plan.coupling));
    CHECK_FALSE(plan.loop->area.intersects(plan.supply));
  }
  const QRectF room(QPointF(-0.5, -0.5), size + QSizeF(1.0, 1.0));
  for (std::size_t a = 0; a < plan.labels.size(); ++a) {
    INFO(plan.labels[a].text.toStdString());
    CHECK(room.contains(plan.labels[a].area));
    for (std::size_t b = a + 1; b < plan.labels.size(); ++b) {
      INFO(plan.labels[b].text.toStdString());
      CHECK_FALSE(plan.labels[a].area.intersects(plan.labels[b].area));
    }
  }
}

bool says(const TrainPlan& plan, const QString& words) {
  return std::ranges::any_of(plan.labels,
                             [&](const PlannedLabel& label) { return label.text.contains(words); });
}

TrainPlan planned(const char* name) {
  for (const NamedMachine& train : wider_trains()) {
    if (std::string_view(train.name) == name) {
      return planned(train.machine, QSizeF(1100, 320));
    }
  }
  FAIL("no such train: " << name);
  return {};
}

} // namespace

TEST_CASE("in the drawing of every kind of train no word covers another or leaves the drawing") {
  for (const auto& [name, machine] : wider_trains()) {
    for (const QSizeF& size :
         {QSizeF(660, 225), QSizeF(884, 262), QSizeF(1280, 300), QSizeF(2200, 500)}) {
      INFO(name << " " << size.width());
      check_apart(planned(machine, size), size);
    }
  }
}

TEST_CASE("no length of any kind of train, however far off, makes its drawing endless") {
  for (const NamedMachine& named : wider_trains()) {
    for (const PartSlot slot : axis_slots) {
      for (const FieldView& field : fields_of(named.machine, 0, slot)) {
        if (field.info.kind != Kind::length) {
          continue;
        }
        for (const double metres : {1e-9, 1e7}) {
          INFO(named.name << " " << field.info.member << " " << metres << " m");
          Machine machine = named.machine;
          set_field(machine, 0, slot, field.info.member, AnyQuantity{Kind::length, metres}, {});
          QImage picture(900, 260, QImage::Format_RGB32);
          QElapsedTimer clock;
          clock.start();
          const TrainGeometry train = train_geometry(machine, 0, nullptr);
          const TrainPlan plan =
              plan_train(train, QRectF(picture.rect()), TrainOptions(), &picture);
          QPainter painter(&picture);
          paint_train(painter, train, plan, Look::of(QPalette()), TrainOptions());
          painter.end();
          constexpr qint64 most = 1000; // a usual one takes a few
          CHECK(clock.elapsed() < most);
        }
      }
    }
  }
}

TEST_CASE("every part of every kind of train can be reached by click and by keys in the window") {
  for (const QSize& size : {QSize(1280, 800), QSize(1920, 1080)}) {
    for (const auto& [name, machine] : wider_trains()) {
      INFO(name << " " << size.width());
      Shown shown(machine, size);
      auto& train = shown.find<TrainView>("train_view");
      for (const PartSlot slot : visited_parts) {
        INFO(slot_name(slot));
        CHECK(QRectF(train.rect()).contains(train.area_of(slot)));
        CHECK_FALSE(train.area_of(slot).isEmpty());
      }
      train.setFocus(Qt::TabFocusReason);
      std::set<PartSlot> reached{train.focused_part()};
      for (std::size_t i = 1; i < std::size(visited_parts); ++i) {
        QTest::keyClick(&train, Qt::Key_Right);
        reached.insert(train.focused_part());
        CHECK_FALSE(train.accessibleDescription().isEmpty());
      }
      CHECK(reached.size() == std::size(visited_parts));
    }
  }
}

TEST_CASE("a loop is drawn with its belt where it fits, and without it where it does not") {
  const TrainPlan whole = planned("loop with back-face idlers");
  REQUIRE(whole.loop);
  CHECK(whole.loop->centres.size() == 5);
  CHECK_FALSE(whole.loop->belt.isEmpty());
  CHECK(says(whole, QStringLiteral("in mesh")));
  CHECK(says(whole, QStringLiteral("on the back")));
  CHECK(says(whole, QStringLiteral("end view")));
  const TrainPlan faulty = planned("loop whose belt does not fit");
  REQUIRE(faulty.loop);
  CHECK(faulty.loop->belt.isEmpty());
  CHECK(faulty.loop->band.isNull());
  CHECK_FALSE(whole.loop->band.isNull());
  CHECK(faulty.loop->centres.size() == 3);
}

TEST_CASE("the drawn belt is as long as the belt") {
  const Machine machine = changed([](Axis& a) {
    a.transmission = loop_with_back_idlers();
    a.sides.layout = DriveLayout::one_motor;
  });
  const auto& loop = std::get<BeltLoopDrive>(machine.axes[0].transmission);
  const LoopDrawing drawing = loop_drawing(loop, nullptr);
  const double length = si_value(*loop.pitch) * 1e3 * loop.belt_teeth;
  CHECK(drawing.belt.length() == Approx(length).epsilon(1e-3));
}

TEST_CASE("what is special about a train is said beside it") {
  CHECK(says(planned("two motors"), QStringLiteral("2 screws, 800 mm apart, 2 motors")));
  CHECK(says(planned("two motors"), QStringLiteral("duty: load cases 1, moves 1")));
  CHECK(says(planned("opposed screws"), QStringLiteral("wound against each other")));
  CHECK(says(planned("preloaded nuts"), QStringLiteral("two nuts, preloaded")));
  CHECK(says(planned("turning nut"), QStringLiteral("nut turns")));
  CHECK(says(planned("two hauling belts"), QStringLiteral("2 hauling belts")));
  const TrainPlan lifted = planned("brake and counterbalance, inclined");
  CHECK(says(lifted, QStringLiteral("brake")));
  CHECK(says(lifted, QStringLiteral("counterbalance 60 N")));
}

TEST_CASE("beside an axis that can rise the arrow points along it, upwards") {
  const auto upright = [](double incline, double counterbalance) {
    return planned(changed([&](Axis& a) {
                     a.basics.incline = Finite<Angle>::of(from_si<Angle>(incline));
                     a.carriage.counterbalance =
                         NonNegative<Force>::of(from_si<Force>(counterbalance));
                   }),
                   QSizeF(900, 240));
  };
  // Drawn lying with its motor on the left: what is above is on the right, or turned over the left.
  for (const double sense : {1.0, -1.0}) {
    for (const double incline : {0.5 * pi, 0.25 * pi}) {
      INFO(sense * incline);
      const QLineF weight = upright(sense * incline, 0.0).gravity_arrow;
      const QLineF pull = upright(sense * incline, 5000.0).gravity_arrow;
      CHECK(sense * weight.dx() < 0.0);
      CHECK(sense * pull.dx() > 0.0);
      CHECK(pull.dy() == Approx(0.0).margin(1e-9));
    }
  }
}

TEST_CASE("a hauling belt is drawn round its two pulleys, without whip") {
  const TrainPlan plan = planned("hauling belt");
  CHECK(plan.thickness == 1.0);
  CHECK(plan.whip.isEmpty());
  // 24 teeth of 5 mm
  CHECK(plan.screw.height() == Approx(24 * 5.0 / pi * plan.scale));
  CHECK(plan.screw.width() == Approx((2000.0 - 120.0) / 2.0 * plan.scale));
}
