// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/swap_parts.h"
#include "sizing/at_position.h"
#include "support/axes.h"
#include "support/window.h"
#include "text/words.h"
#include "train/train_view.h"

#include <QWheelEvent>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::ordinary_router;
using feedwright::testing::screw_of;
using feedwright::testing::Shown;

namespace {

TrainView& train_of(Shown& shown) {
  return shown.find<TrainView>("train_view");
}

/// Presses at `from`, moves there in steps and lets go.
void drag(QWidget& widget, const QPointF& from, const QPointF& to) {
  QTest::mousePress(&widget, Qt::LeftButton, Qt::NoModifier, from.toPoint());
  constexpr int steps = 5;
  for (int i = 1; i <= steps; ++i) {
    const QPointF at = from + (to - from) * i / steps;
    QMouseEvent move(QEvent::MouseMove, at.toPoint(), widget.mapToGlobal(at.toPoint()),
                     Qt::NoButton, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&widget, &move);
  }
  QTest::mouseRelease(&widget, Qt::LeftButton, Qt::NoModifier, to.toPoint());
}

QString value_of(const ReadOut& read_out, const QString& name) {
  for (const auto& [row, value] : read_out.rows) {
    if (row.contains(name)) {
      return value;
    }
  }
  return {};
}

double along_mm(TrainView& train) {
  REQUIRE(train.carriage_along());
  return si_value(*train.carriage_along()) * 1e3;
}

Machine looped_router() {
  const auto made = swapped(ordinary_router(), 0, {SwapKind::one_motor}, {});
  REQUIRE(made);
  return *made;
}

} // namespace

TEST_CASE("the carriage is dragged along its travel, and what depends on its place is read out") {
  Machine machine = ordinary_router();
  screw_of(machine.axes[0]).whip_span = WhipSpan::nut_to_bearing;
  Shown shown(machine);
  TrainView& train = train_of(shown);
  CHECK_FALSE(train.carriage_along());
  CHECK(train.read_out().heading.isEmpty());
  const QPointF carriage = train.area_of(PartSlot::carriage).center() + QPointF(0.0, 8.0);
  const double travel = train.area_of(PartSlot::axis).width();
  drag(train, carriage, carriage - QPointF(travel / 4.0, 0.0));
  CHECK(along_mm(train) == Approx(750.0 / 4.0).margin(6.0));
  const AtPosition there = at_position(shown.document().machine(),
                                       shown.document().machine().axes[0], *train.carriage_along());
  CHECK(train.read_out().heading.contains(QStringLiteral("carriage at x ")));
  CHECK(value_of(train.read_out(), QStringLiteral("whip"))
            .startsWith(words::quantity(any(*there.whip_feed), "m/min", 3)));
  CHECK(value_of(train.read_out(), QStringLiteral("buckling")) ==
        words::quantity(any(*there.buckling_thrust), "N", 3));
  // The drawn carriage has come along.
  CHECK(train.area_of(PartSlot::carriage).center().x() ==
        Approx(carriage.x() - travel / 4.0).margin(2.0));
  CHECK_FALSE(shown.document().is_modified());
  drag(train, train.area_of(PartSlot::carriage).center() + QPointF(0.0, 8.0),
       QPointF(-900.0, carriage.y()));
  CHECK(along_mm(train) == 0.0);
}

TEST_CASE("a click on the carriage chooses it and moves nothing") {
  Shown shown;
  TrainView& train = train_of(shown);
  QTest::mouseClick(&train, Qt::LeftButton, Qt::NoModifier,
                    train.area_of(PartSlot::carriage).center().toPoint());
  CHECK(shown.document().selection().slot == PartSlot::carriage);
  CHECK_FALSE(train.carriage_along());
}

TEST_CASE("keys move the carriage by a fiftieth of its travel and to its ends, Escape back") {
  Shown shown;
  TrainView& train = train_of(shown);
  shown.document().select({0, PartSlot::carriage, {}});
  train.setFocus();
  QTest::keyClick(&train, Qt::Key_Right, Qt::ShiftModifier);
  CHECK(along_mm(train) == Approx(375.0 + 15.0));
  CHECK(train.accessibleDescription().contains(QStringLiteral("carriage at x 390 mm")));
  QTest::keyClick(&train, Qt::Key_Left, Qt::ShiftModifier);
  QTest::keyClick(&train, Qt::Key_Left, Qt::ShiftModifier);
  CHECK(along_mm(train) == Approx(360.0));
  QTest::keyClick(&train, Qt::Key_Home);
  CHECK(along_mm(train) == 0.0);
  QTest::keyClick(&train, Qt::Key_End);
  CHECK(along_mm(train) == Approx(750.0));
  QTest::keyClick(&train, Qt::Key_Right, Qt::ShiftModifier);
  CHECK(along_mm(train) == Approx(750.0));
  QTest::keyClick(&train, Qt::Key_Escape);
  CHECK_FALSE(train.carriage_along());
  CHECK(train.read_out().heading.isEmpty());
  CHECK_FALSE(shown.document().is_modified());
}

TEST_CASE("each axis keeps its carriage's place, and a shorter travel keeps it within") {
  Machine machine = ordinary_router();
  machine.axes.push_back(machine.axes[0]);
  machine.axes[1].basics.letter = "Y";
  Shown shown(machine);
  TrainView& train = train_of(shown);
  shown.document().select({0, PartSlot::carriage, {}});
  train.setFocus();
  QTest::keyClick(&train, Qt::Key_End);
  shown.document().select({1, PartSlot::carriage, {}});
  CHECK_FALSE(train.carriage_along());
  shown.document().select({0, PartSlot::carriage, {}});
  CHECK(along_mm(train) == Approx(750.0));
  Machine shorter = shown.document().machine();
  shorter.axes[0].basics.travel = Positive<Length>::of(300_mm);
  shown.document().edit(shorter, QStringLiteral("shorter"));
  CHECK(train.read_out().heading.contains(QStringLiteral("300 mm")));
}

TEST_CASE("the read-out speaks inches where the machine is typed in inches") {
  Shown shown;
  REQUIRE(shown.document().edit_field(0, PartSlot::axis, "travel", any(Length(508_mm)),
                                      {"20 in", Origin::entered}));
  TrainView& train = train_of(shown);
  shown.document().select({0, PartSlot::carriage, {}});
  train.setFocus();
  QTest::keyClick(&train, Qt::Key_End);
  CHECK(train.read_out().heading.contains(QStringLiteral("20 in")));
}

TEST_CASE("a pulley of a loop is dragged to the millimetre in one step of Undo, and read out") {
  Shown shown(looped_router());
  TrainView& train = train_of(shown);
  const auto pulleys = [&]() -> const std::vector<LoopMember>& {
    return std::get<BeltLoopDrive>(shown.document().machine().axes[0].transmission).pulleys;
  };
  const Length before = *pulleys()[0].y;
  const int steps = shown.document().undo_stack()->count();
  drag(train, train.place_of_pulley(0), train.place_of_pulley(0) + QPointF(0.0, 22.0));
  const double y = si_value(*pulleys()[0].y) * 1e3;
  CHECK(*pulleys()[0].y < before);
  CHECK(y == Approx(std::round(y)));
  CHECK(shown.document().undo_stack()->count() == steps + 1);
  CHECK(train.read_out().heading.contains(QStringLiteral("pulley 1")));
  CHECK(value_of(train.read_out(), QStringLiteral("y")) ==
        words::quantity(any(*pulleys()[0].y), "mm"));
  shown.trigger("undo");
  CHECK(*pulleys()[0].y == before);
}

TEST_CASE("page keys choose a pulley of a loop and arrows with Shift move it") {
  Shown shown(looped_router());
  TrainView& train = train_of(shown);
  shown.document().select({0, PartSlot::transmission, {}});
  train.setFocus();
  const auto y = [&] {
    const auto& loop = std::get<BeltLoopDrive>(shown.document().machine().axes[0].transmission);
    return si_value(*loop.pulleys[1].y) * 1e3;
  };
  const double before = y();
  QTest::keyClick(&train, Qt::Key_PageDown);
  CHECK(train.read_out().heading.contains(QStringLiteral("pulley 1")));
  QTest::keyClick(&train, Qt::Key_PageDown);
  QTest::keyClick(&train, Qt::Key_Up, Qt::ShiftModifier);
  QTest::keyClick(&train, Qt::Key_Up, Qt::ShiftModifier);
  CHECK(y() == Approx(before + 2.0));
  CHECK(shown.document().undo_stack()->count() == 1);
  shown.trigger("undo");
  CHECK(y() == Approx(before));
}

TEST_CASE("Ctrl and the wheel make the drawing larger about the pointer, and nothing is edited") {
  Shown shown;
  TrainView& train = train_of(shown);
  const QPointF at = train.area_of(PartSlot::motor).center();
  const double before = train.area_of(PartSlot::motor).width();
  for (int i = 0; i < 6; ++i) {
    QWheelEvent wheel(at, train.mapToGlobal(at), {}, {0, 120}, Qt::NoButton, Qt::ControlModifier,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&train, &wheel);
  }
  CHECK(train.zoom() > 3.0);
  CHECK(train.area_of(PartSlot::motor).width() > 2.0 * before);
  CHECK(QRectF(train.rect()).intersects(train.area_of(PartSlot::motor)));
  train.setFocus(Qt::TabFocusReason);
  for (int i = 0; i < 10; ++i) {
    QTest::keyClick(&train, Qt::Key_Right);
    INFO(slot_name(train.focused_part()));
    CHECK(QRectF(train.rect()).intersects(train.area_of(train.focused_part())));
  }
  QTest::keyClick(&train, Qt::Key_0, Qt::ControlModifier);
  CHECK(train.zoom() == 1.0);
  QTest::keyClick(&train, Qt::Key_Plus, Qt::ControlModifier);
  CHECK(train.zoom() > 1.0);
  QTest::keyClick(&train, Qt::Key_Minus, Qt::ControlModifier);
  CHECK(train.zoom() == Approx(1.0));
  QWheelEvent plain(at, train.mapToGlobal(at), {}, {0, 120}, Qt::NoButton, Qt::NoModifier,
                    Qt::NoScrollPhase, false);
  QCoreApplication::sendEvent(&train, &plain);
  CHECK(train.zoom() == Approx(1.0));
  CHECK_FALSE(shown.document().is_modified());
}
