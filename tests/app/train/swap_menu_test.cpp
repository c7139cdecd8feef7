// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/axes.h"
#include "support/window.h"
#include "train/train_view.h"

#include <QClipboard>
#include <QContextMenuEvent>
#include <QGuiApplication>
#include <QImage>
#include <QMenu>
#include <QMimeData>
#include <QToolButton>

using namespace feedwright;
using feedwright::testing::screw_of;
using feedwright::testing::Shown;

namespace {

struct Menued {
  Shown shown;
  TrainView& train = shown.find<TrainView>("train_view");

  QMenu& right_click(PartSlot slot) {
    const QPoint at = train.area_of(slot).center().toPoint();
    QContextMenuEvent event(QContextMenuEvent::Mouse, at, train.mapToGlobal(at));
    QCoreApplication::sendEvent(&train, &event);
    return menu();
  }
  QMenu& menu() { return shown.find<QMenu>("train_menu"); }
  QAction& action(const char* name) { return shown.find<QAction>(name); }
  void close() {
    menu().close();
    for (int i = 0; i < 20 && shown.window->findChild<QMenu*>(QStringLiteral("train_menu")); ++i) {
      QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
      QCoreApplication::processEvents();
    }
  }
  void swap(PartSlot slot, const char* name) {
    shown.document().select({0, slot, {}});
    train.show_menu(slot, train.mapToGlobal(QPoint(5, 5)));
    action(name).trigger();
    close();
  }
  const Axis& axis() { return shown.document().machine().axes[0]; }
};

} // namespace

TEST_CASE("a part's menu puts another in its place, in one step with a name, and it is computed") {
  Menued m;
  QMenu& menu = m.right_click(PartSlot::transmission);
  CHECK(m.shown.document().selection().slot == PartSlot::transmission);
  CHECK(menu.isVisible());
  CHECK(m.action("swap_belt_stage").isChecked());
  CHECK_FALSE(m.action("swap_coupling").isChecked());
  m.action("swap_coupling").trigger();
  m.close();
  CHECK(std::holds_alternative<Coupling>(m.axis().transmission));
  CHECK(m.shown.document().faults().empty());
  CHECK(m.shown.document().undo_stack()->count() == 1);
  CHECK(m.shown.find<QAction>("undo").text().contains(QStringLiteral("X ")));
  m.shown.trigger("undo");
  CHECK(std::holds_alternative<BeltStage>(m.axis().transmission));
}

TEST_CASE("one motor for two screws is one choice in the drawing, belt and all") {
  Menued m;
  m.swap(PartSlot::sides, "swap_one_motor");
  CHECK(m.axis().sides.layout == DriveLayout::one_motor);
  CHECK(std::holds_alternative<BeltLoopDrive>(m.axis().transmission));
  CHECK(m.shown.document().faults().empty());
  CHECK(m.shown.document().undo_stack()->count() == 1);
  const Axis before = m.axis();
  m.swap(PartSlot::transmission, "swap_add_idler");
  CHECK(m.shown.document().faults().empty());
  m.swap(PartSlot::sides, "swap_one_side");
  CHECK(m.axis().sides.layout == DriveLayout::one);
  CHECK(m.shown.document().faults().empty());
  m.swap(PartSlot::sides, "swap_one_motor");
  CHECK(m.shown.document().faults().empty());
  CHECK(std::get<BeltLoopDrive>(m.axis().transmission).pulleys.size() ==
        std::get<BeltLoopDrive>(before.transmission).pulleys.size() + 1);
}

TEST_CASE("what was typed into a part is there again when it is swapped back") {
  Menued m;
  const Axis before = m.axis();
  m.swap(PartSlot::drive, "swap_hauling_belt");
  CHECK(std::holds_alternative<HaulingBelt>(m.axis().drive));
  CHECK(m.shown.document().faults().empty());
  m.swap(PartSlot::drive, "swap_screw");
  CHECK(m.axis() == before);
}

TEST_CASE(
    "the menu key opens the part's menu, what cannot be says why, and ends are chosen there") {
  Menued m;
  m.shown.document().select({0, PartSlot::drive, {}});
  m.train.setFocus();
  QTest::keyClick(&m.train, Qt::Key_F10, Qt::ShiftModifier);
  CHECK(m.menu().isVisible());
  QAction& loose = m.action("swap_motor_end_free");
  CHECK_FALSE(loose.isEnabled());
  CHECK(loose.text().contains(QStringLiteral(" – ")));
  CHECK(m.action("swap_far_end_supported").isChecked());
  m.action("swap_far_end_fixed").trigger();
  m.close();
  CHECK(screw_of(m.axis()).far_end == EndSupport::fixed);
  CHECK(m.shown.find<QAction>("undo").text().contains(QStringLiteral("far end")));
}

TEST_CASE("a small button at the part the keyboard stands on opens the same menu") {
  Menued m;
  m.shown.document().select({0, PartSlot::motor, {}});
  m.train.setFocus();
  auto& button = m.shown.find<QToolButton>("swap_part");
  REQUIRE(button.isVisible());
  CHECK_FALSE(button.accessibleName().isEmpty());
  CHECK(m.train.rect().contains(button.geometry()));
  QTest::mouseClick(&button, Qt::LeftButton);
  CHECK(m.menu().isVisible());
  m.action("swap_servo").trigger();
  m.close();
  CHECK(std::holds_alternative<Servo>(m.axis().motor));
  CHECK(m.shown.document().faults().empty());
}

TEST_CASE("the drawing is copied as a picture of twice the size and as a vector drawing") {
  Menued m;
  m.train.setFocus();
  QTest::keyClick(&m.train, Qt::Key_C, Qt::ControlModifier);
  const QMimeData* copied = QGuiApplication::clipboard()->mimeData();
  REQUIRE(copied != nullptr);
  REQUIRE(copied->hasImage());
  CHECK(qvariant_cast<QImage>(copied->imageData()).size() == m.train.size() * 2);
  const QByteArray svg = copied->data(QStringLiteral("image/svg+xml"));
  CHECK(svg.startsWith("<?xml"));
  CHECK(svg.contains("900 mm between bearings"));
  CHECK(svg.trimmed().endsWith("</svg>"));
}

TEST_CASE("what a machine's own words say is no markup in the copied drawing") {
  Menued m;
  Machine machine = m.shown.document().machine();
  machine.axes[0].basics.name = "<b>&";
  m.shown.document().edit(machine, QStringLiteral("name"));
  m.train.copy();
  const QByteArray svg =
      QGuiApplication::clipboard()->mimeData()->data(QStringLiteral("image/svg+xml"));
  CHECK(svg.contains("&lt;b&gt;&amp;"));
  CHECK_FALSE(svg.contains("<b>"));
}
