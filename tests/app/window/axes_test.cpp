// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/axis_clip.h"
#include "machine/machine_file.h"
#include "support/machine_files.h"
#include "support/window.h"

#include <QClipboard>
#include <QDropEvent>
#include <QGuiApplication>
#include <QListWidget>
#include <QMimeData>
#include <QUndoView>

using namespace feedwright;
using feedwright::testing::ordinary_router;
using feedwright::testing::Shown;

namespace {

Machine three_axes() {
  Machine machine = ordinary_router();
  for (const char* letter : {"Y", "Z"}) {
    machine.axes.push_back(machine.axes.front());
    machine.axes.back().basics.letter = letter;
  }
  return machine;
}

std::string letters(Shown& shown) {
  std::string all;
  for (const Axis& axis : shown.document().machine().axes) {
    all += axis.basics.letter;
  }
  return all;
}

void press_in_list(Shown& shown, Qt::Key key, Qt::KeyboardModifiers with) {
  auto& list = shown.find<QListWidget>("axes_list");
  shown.window->activateWindow();
  list.setFocus();
  QCoreApplication::processEvents();
  QTest::keyClick(&list, key, with);
}

void put_on_clipboard(const char* text) {
  QGuiApplication::clipboard()->setText(QString::fromUtf8(text));
}

} // namespace

TEST_CASE("an axis goes from one window to another by copy and paste, as one step") {
  Shown from(three_axes());
  Shown to;
  from.document().select({2, PartSlot::motor, {}});
  from.trigger("copy_axis");
  to.trigger("paste_axis");
  CHECK(letters(to) == "XZ");
  const auto written = [](const Axis& axis) {
    Machine machine;
    machine.axes = {axis};
    return write_machine(machine);
  };
  CHECK(written(to.document().machine().axes[1]) == written(from.document().machine().axes[2]));
  CHECK(to.document().selection().axis == 1);
  to.trigger("paste_axis");
  CHECK(letters(to) == "XZY");
  CHECK(to.document().faults().empty());
  to.trigger("undo");
  to.trigger("undo");
  CHECK(write_machine(to.document().machine()) == write_machine(ordinary_router()));
}

TEST_CASE("copy and paste have their keys in the list of axes") {
  Shown shown(three_axes());
  shown.document().select({1, PartSlot::motor, {}});
  press_in_list(shown, Qt::Key_C, Qt::ControlModifier);
  press_in_list(shown, Qt::Key_V, Qt::ControlModifier);
  CHECK(letters(shown) == "XYZU");
}

TEST_CASE("a copied axis is a machine file of its own to a text editor") {
  Shown shown(three_axes());
  shown.document().select({1, PartSlot::motor, {}});
  shown.trigger("copy_axis");
  const QMimeData* clip = QGuiApplication::clipboard()->mimeData();
  REQUIRE(clip != nullptr);
  CHECK(clip->hasFormat(QLatin1String(axis_mime_type)));
  const auto machine = read_machine(clip->text().toStdString());
  REQUIRE(machine);
  REQUIRE(machine->axes.size() == 1);
  CHECK(machine->axes[0].basics.letter == "Y");
}

TEST_CASE("a whole machine pasted from a text editor brings all its axes") {
  Shown shown;
  put_on_clipboard(write_machine(three_axes()).c_str());
  shown.trigger("paste_axis");
  CHECK(letters(shown) == "XYZU");
  shown.trigger("undo");
  CHECK(letters(shown) == "X");
}

TEST_CASE("rubbish on the clipboard changes nothing and says why") {
  Shown shown;
  for (const char* rubbish : {"", "12 mm", "{", "{\"format\": 3}", "[[[[[[", "\xc3\x28"}) {
    INFO(rubbish);
    shown.window->banner().close_message();
    put_on_clipboard(rubbish);
    shown.trigger("paste_axis");
    CHECK_FALSE(shown.window->banner().text().isEmpty());
    CHECK(shown.document().undo_stack()->count() == 0);
  }
}

TEST_CASE("a machine is never given more axes than its file may hold") {
  Machine many = ordinary_router();
  while (many.axes.size() < most_axes) {
    many.axes.push_back(many.axes.front());
    many.axes.back().basics.letter = "L" + QString::number(many.axes.size()).toStdString();
  }
  Shown shown(many);
  CHECK_FALSE(shown.find<QAction>("add_axis").isEnabled());
  CHECK_FALSE(shown.find<QAction>("duplicate_axis").isEnabled());
  shown.trigger("copy_axis");
  shown.trigger("paste_axis");
  CHECK(shown.document().machine().axes.size() == most_axes);
  CHECK_FALSE(shown.window->banner().text().isEmpty());
}

TEST_CASE("an axis card dropped from another window copies the axis, one of its own does not") {
  Shown from(three_axes());
  Shown to;
  const auto clip = axis_clip(from.document().machine(), 1);
  QDragEnterEvent enter(QPoint(20, 20), Qt::CopyAction, clip.get(), Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(to.window.get(), &enter);
  CHECK(enter.isAccepted());
  QDropEvent drop(QPointF(20, 20), Qt::CopyAction, clip.get(), Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(to.window.get(), &drop);
  CHECK(letters(to) == "XY");
  CHECK(letters(from) == "XYZ");
}

TEST_CASE("axes change places by menu and by key, one step each, and selection goes along") {
  Shown shown(three_axes());
  shown.document().select({0, PartSlot::motor, {}});
  CHECK_FALSE(shown.find<QAction>("move_axis_up").isEnabled());
  shown.trigger("move_axis_down");
  CHECK(letters(shown) == "YXZ");
  CHECK(shown.document().selection() == Selection{1, PartSlot::motor, {}});
  press_in_list(shown, Qt::Key_Down, Qt::AltModifier);
  CHECK(letters(shown) == "YZX");
  CHECK_FALSE(shown.find<QAction>("move_axis_down").isEnabled());
  press_in_list(shown, Qt::Key_Up, Qt::AltModifier);
  CHECK(letters(shown) == "YXZ");
  shown.trigger("undo");
  shown.trigger("undo");
  shown.trigger("undo");
  CHECK(letters(shown) == "XYZ");
}

TEST_CASE("undo and redo lead to the axis and the part they change") {
  Shown shown(three_axes());
  shown.document().edit_field(1, PartSlot::drive, "lead",
                              AnyQuantity{Kind::lead, 0.01 / (2.0 * pi)}, {});
  shown.document().edit_field(2, PartSlot::carriage, "mass", AnyQuantity{Kind::mass, 9.0}, {});
  shown.document().select({0, PartSlot::motor, {}});
  shown.trigger("undo");
  CHECK(shown.document().selection() == Selection{2, PartSlot::carriage, {}});
  shown.trigger("undo");
  CHECK(shown.document().selection() == Selection{1, PartSlot::drive, {}});
  shown.document().select({0, PartSlot::supply, {}});
  shown.trigger("redo");
  CHECK(shown.document().selection() == Selection{1, PartSlot::drive, {}});
}

TEST_CASE("undo of an axis that is added, removed or moved leads to where it is") {
  Shown shown(three_axes());
  shown.document().select({1, PartSlot::motor, {}});
  shown.trigger("remove_axis");
  shown.document().select({0, PartSlot::motor, {}});
  shown.trigger("undo");
  CHECK(letters(shown) == "XYZ");
  CHECK(shown.document().selection().axis == 1);
  shown.trigger("redo");
  CHECK(letters(shown) == "XZ");
  CHECK(shown.document().selection().axis < 2);
}

TEST_CASE("typing notes is one step until the keyboard goes elsewhere") {
  MachineDocument document(ordinary_router());
  const auto type = [&](const char* text) {
    Machine changed = document.machine();
    changed.story += text;
    document.edit(std::move(changed), QStringLiteral("notes"), QStringLiteral("notes"));
  };
  type("a");
  type("b");
  CHECK(document.undo_stack()->count() == 1);
  document.end_merging();
  type("c");
  type("d");
  CHECK(document.undo_stack()->count() == 2);
}

TEST_CASE("the history lists every edit, and a click goes back to it") {
  Shown shown;
  for (const double lead : {8.0, 10.0, 12.0}) {
    shown.document().edit_field(0, PartSlot::drive, "lead",
                                AnyQuantity{Kind::lead, lead * 1e-3 / (2.0 * pi)}, {});
  }
  shown.trigger("history");
  auto& list = shown.find<QUndoView>("history_list");
  CHECK(list.isVisible());
  CHECK(list.model()->rowCount() == 4);
  list.setCurrentIndex(list.model()->index(1, 0));
  CHECK(shown.document().undo_stack()->index() == 1);
  CHECK_FALSE(list.accessibleName().isEmpty());
}

TEST_CASE("a click beside the cards leaves the axis marked that is shown") {
  Shown shown;
  auto& list = shown.find<QListWidget>("axes_list");
  REQUIRE(list.selectedItems().size() == 1);
  const QPoint below(list.viewport()->width() / 2, list.viewport()->height() - 4);
  REQUIRE(list.itemAt(below) == nullptr);
  QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, below);
  CHECK(list.selectedItems().size() == 1);
}

TEST_CASE("in a narrow window a card is as high as its words and its feed") {
  Shown shown(feedwright::testing::machine_in("/sample-machines/", "plank-router"));
  auto& list = shown.find<QListWidget>("axes_list");
  const int usual = list.visualItemRect(list.item(1)).height();
  list.setFixedWidth(110);
  for (int turn = 0; turn < 4; ++turn) {
    QCoreApplication::processEvents();
  }
  CHECK(list.viewport()->width() <= 110);
  CHECK(list.visualItemRect(list.item(1)).height() > usual);
  CHECK(list.visualItemRect(list.item(2)).top() >= list.visualItemRect(list.item(1)).bottom());
}
