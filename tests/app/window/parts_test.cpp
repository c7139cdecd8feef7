// SPDX-License-Identifier: GPL-3.0-or-later

// Parts from lists, tables imported, belts round about: as a builder would press them.

#include "fields/fields_panel.h"
#include "support/own_home.h"
#include "support/window.h"

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QPushButton>
#include <QRegularExpression>
#include <QScreen>
#include <QScrollBar>
#include <QTableWidget>
#include <QTreeView>

using namespace feedwright;
using feedwright::testing::Environment;
using feedwright::testing::Folder;
using feedwright::testing::InLanguage;
using feedwright::testing::Shown;

namespace {

void choose(Shown& shown, PartSlot slot) {
  shown.document().select({0, slot, {}});
  QCoreApplication::processEvents();
}

void pick(Shown& shown, const QString& piece) {
  auto& picker = shown.find<QComboBox>("part_picker");
  const int index = picker.findText(piece, Qt::MatchContains);
  INFO(piece.toStdString());
  REQUIRE(index >= 0);
  picker.setCurrentIndex(index);
  emit picker.activated(index);
  QCoreApplication::processEvents();
}

const Axis& axis(Shown& shown) {
  return shown.document().machine().axes[0];
}

} // namespace

TEST_CASE("a screw is taken from a list with its source, and Undo gives the old one back") {
  Shown shown;
  choose(shown, PartSlot::drive);
  pick(shown, QStringLiteral("25 × 10"));
  const Screw& screw = testing::screw_of(axis(shown));
  CHECK(si_value(*screw.nominal_diameter) == Approx(0.025));
  CHECK(screw.dynamic_rating);
  CHECK_FALSE(screw.notes.source.empty());
  shown.trigger("undo");
  CHECK(si_value(*testing::screw_of(axis(shown)).nominal_diameter) == Approx(0.016));
}

TEST_CASE("a motor from a list changes the motor's type if it must") {
  Shown shown;
  choose(shown, PartSlot::motor);
  pick(shown, QStringLiteral("400 W"));
  CHECK(std::holds_alternative<Servo>(axis(shown).motor));
}

TEST_CASE("a material starts a load case or goes to the one at hand") {
  Shown shown;
  choose(shown, PartSlot::duty);
  pick(shown, QStringLiteral("alumin"));
  REQUIRE(axis(shown).duty.load_cases.size() == 1);
  CHECK(axis(shown).duty.load_cases[0].specific_force);
}

TEST_CASE("a torque curve is imported from a file of comma separated values") {
  const Folder folder;
  Shown shown;
  choose(shown, PartSlot::motor);
  shown.answers.path = folder.put("curve.csv", "rpm,N·m\n0,2.2\n300,1.9\n900,1.1\n1500,0.6\n");
  QTest::mouseClick(&shown.find<QPushButton>("points_import"), Qt::LeftButton);
  const auto& points = std::get<StepperByPoints>(axis(shown).motor).points;
  REQUIRE(points.size() == 4);
  CHECK(si_value(*points[2].torque) == Approx(1.1));
  CHECK(si_value(*points[3].speed) == Approx(50.0 * pi));
}

TEST_CASE("a file that is no table leaves the curve and says why") {
  const Folder folder;
  Shown shown;
  choose(shown, PartSlot::motor);
  const auto before = std::get<StepperByPoints>(axis(shown).motor).points;
  shown.answers.path = folder.put("letter.txt", "Dear supplier,\nplease send the curve.\n");
  QTest::mouseClick(&shown.find<QPushButton>("points_import"), Qt::LeftButton);
  CHECK(std::get<StepperByPoints>(axis(shown).motor).points == before);
  shown.answers.path = folder.path("missing.csv");
  QTest::mouseClick(&shown.find<QPushButton>("points_import"), Qt::LeftButton);
  CHECK(std::get<StepperByPoints>(axis(shown).motor).points == before);
}

TEST_CASE("a belt that shops keep is chosen from those round about") {
  Shown shown;
  choose(shown, PartSlot::transmission);
  auto& belts = shown.find<QComboBox>("belt_chooser");
  REQUIRE(belts.count() > 5);
  const int present = belts.currentIndex();
  const int teeth = belts.itemData(present + 1).toInt();
  belts.setCurrentIndex(present + 1);
  emit belts.activated(present + 1);
  CHECK(std::get<BeltStage>(axis(shown).transmission).belt_teeth == teeth);
}

TEST_CASE("a loop is described in the window from a coupling on") {
  Shown shown;
  choose(shown, PartSlot::transmission);
  auto& type = shown.find<QComboBox>("part_type");
  type.setCurrentIndex(type.findData(QStringLiteral("belt_loop")));
  emit type.activated(type.currentIndex());
  QCoreApplication::processEvents();
  // One screw on the loop; asking for two puts both on it. Neither leaves anything to put right.
  CHECK(shown.document().current() != nullptr);
  choose(shown, PartSlot::sides);
  auto& layout = shown.find<QComboBox>("sides.layout");
  layout.setCurrentIndex(2);
  emit layout.activated(2);
  QCoreApplication::processEvents();
  CHECK(shown.document().current() != nullptr);
  choose(shown, PartSlot::transmission);
  auto& table = shown.find<QTableWidget>("pulleys");
  CHECK(table.rowCount() >= 3);
  CHECK(table.columnCount() == 6);
  table.item(0, 3)->setText(QStringLiteral("24"));
  CHECK(std::get<BeltLoopDrive>(axis(shown).transmission).pulleys[0].teeth == 24);
}

TEST_CASE("a cell that cannot be is refused with what it wants") {
  Shown shown;
  choose(shown, PartSlot::duty);
  QTest::mouseClick(&shown.find<QPushButton>("load_cases_add"), Qt::LeftButton);
  QCoreApplication::processEvents();
  REQUIRE(axis(shown).duty.load_cases.size() == 1);
  auto& table = shown.find<QTableWidget>("load_cases");
  // Load cases stand side by side, their fields down.
  table.item(1, 0)->setText(QStringLiteral("-5 min"));
  CHECK(si_value(*axis(shown).duty.load_cases[0].time) == Approx(60.0));
  table.item(1, 0)->setText(QStringLiteral("5 min"));
  CHECK(si_value(*axis(shown).duty.load_cases[0].time) == Approx(300.0));
}

TEST_CASE(
    "tests have a home of their own: no list is read from, or kept in, that of who runs them") {
  CHECK(own_parts_folder().startsWith(QDir::tempPath()));
  for (const ShelvedPart& shelved : read_part_shelf().parts) {
    INFO(shelved.part.name);
    CHECK_FALSE(shelved.own);
  }
}

TEST_CASE("a list of the user's own stands beside the program's, a broken one is said") {
  const Folder folder;
  const Environment data("XDG_DATA_HOME", folder.dir.path().toUtf8());
  QDir(folder.dir.path()).mkpath(QStringLiteral("feedwright/parts"));
  folder.put("feedwright/parts/mine.json",
             R"({"format": {"name": "feedwright-parts", "major": 1, "minor": 0}, "part": "servo",
                 "rows": [{"name": "from the drawer", "source": "measured",
                           "continuous_torque": "0.9 N·m"}]})");
  folder.put("feedwright/parts/torn.json", "{");
  const PartShelf shelf = read_part_shelf();
  REQUIRE(shelf.parts.size() > 200);
  CHECK(shelf.parts.back().own);
  CHECK(shelf.parts.back().part.name == "from the drawer");
  REQUIRE(shelf.troubles.size() == 1);
  CHECK(shelf.troubles[0].contains(QStringLiteral("torn.json")));
  CHECK_FALSE(shelf.stock_belts.empty());
}

TEST_CASE("figures in the list of parts have the language's decimal mark") {
  const InLanguage german("de");
  Shown shown;
  choose(shown, PartSlot::drive);
  const QAbstractItemModel& parts = *shown.find<QComboBox>("part_picker").model();
  static const QRegularExpression point(QStringLiteral("\\d\\.\\d"));
  QStringList figures;
  for (int row = 0; row < parts.rowCount(); ++row) {
    figures << parts.index(row, 1).data().toString();
  }
  CHECK(figures.filter(QStringLiteral(",")).size() > 10);
  CHECK(figures.filter(point).isEmpty());
}

TEST_CASE("the list of parts is as wide as what it says, as far as the screen goes") {
  const QFont kept = QApplication::font();
  for (const int points : {9, 18}) {
    QFont font = kept;
    font.setPointSize(points);
    QApplication::setFont(font);
    Shown shown;
    for (const PartSlot slot : {PartSlot::drive, PartSlot::motor}) {
      choose(shown, slot);
      auto& picker = shown.find<QComboBox>("part_picker");
      picker.showPopup();
      QCoreApplication::processEvents();
      const auto* list = qobject_cast<QTreeView*>(picker.view());
      REQUIRE(list != nullptr);
      const QRect screen = picker.screen()->availableGeometry();
      const QRect popup = list->window()->geometry();
      int needed = 0;
      for (int column = 0; column < picker.model()->columnCount(); ++column) {
        int widest = 0;
        for (int row = 0; row < picker.model()->rowCount(); ++row) {
          const QString text = picker.model()->index(row, column).data().toString();
          widest = std::max(widest, list->fontMetrics().horizontalAdvance(text));
        }
        needed += widest;
        INFO(points << " column " << column << " of " << list->columnWidth(column) << " needs "
                    << widest << ", screen " << screen.width() << " popup " << popup.x() << "+"
                    << popup.width() << " viewport " << list->viewport()->width());
        // Whole, or to be reached by scrolling where the screen ends.
        CHECK(list->columnWidth(column) >= widest);
      }
      CHECK(screen.contains(popup));
      constexpr int frames = 16;
      CHECK(popup.width() >= std::min(needed, screen.width() - frames));
      CHECK((needed < list->viewport()->width() || list->horizontalScrollBar()->maximum() > 0));
      picker.hidePopup();
    }
  }
  QApplication::setFont(kept);
}
