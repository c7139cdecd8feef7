// SPDX-License-Identifier: GPL-3.0-or-later

// What would do, pressed as a builder would press it.

#include "remedies/remedies_view.h"

#include "limits/ladder_widget.h"
#include "remedies/remedy_row.h"
#include "support/machine_files.h"
#include "support/window.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>
#include <cstdlib>

using namespace feedwright;
using feedwright::testing::Shown;

namespace {

Machine plank_router() {
  return testing::sample("plank-router");
}

/// The rows are made anew after the edit has been painted.
void settle(Shown& shown) {
  const auto& view = shown.find<RemediesView>("remedies_view");
  constexpr int most = 5000; // ms
  REQUIRE(QTest::qWaitFor([&] { return !view.is_waiting(); }, most));
  QCoreApplication::processEvents();
}

RemediesView& view(Shown& shown) {
  return shown.find<RemediesView>("remedies_view");
}

QList<RemedyRow*> visible_rows(Shown& shown) {
  QList<RemedyRow*> rows;
  for (auto* row : shown.window->findChildren<RemedyRow*>()) {
    if (row->isVisible()) {
      rows << row;
    }
  }
  return rows;
}

RemedyRow& row_saying(Shown& shown, const char* piece) {
  for (RemedyRow* row : visible_rows(shown)) {
    if (row->accessibleName().contains(QString::fromUtf8(piece))) {
      return *row;
    }
  }
  INFO(piece);
  FAIL("no such row");
  std::abort();
}

void press(Shown& shown, RemedyRow& row) {
  QTest::mouseClick(&row, Qt::LeftButton);
  settle(shown);
}

double margin_of_whip(Shown& shown) {
  return *shown.document().current()->limit(LimitId::whip).margin;
}

/// Presses the row, checks that the whip is well, and that Undo gives the same bytes back.
void try_and_take_back(Shown& shown, const char* piece) {
  const std::string before = write_machine(shown.document().machine());
  press(shown, row_saying(shown, piece));
  INFO(piece);
  CHECK(margin_of_whip(shown) >= 1.0 - 1e-9);
  CHECK(write_machine(shown.document().machine()) != before);
  CHECK(shown.document().undo_stack()->count() == 1);
  CHECK_FALSE(shown.document().undo_stack()->undoText().isEmpty());
  shown.trigger("undo");
  settle(shown);
  CHECK(write_machine(shown.document().machine()) == before);
  CHECK(margin_of_whip(shown) < 1.0);
  shown.document().undo_stack()->clear();
}

} // namespace

TEST_CASE("a whipping screw is mended by span, lead or support with a press, and taken back") {
  Shown shown(plank_router());
  settle(shown);
  CHECK(view(shown).shown_limit() == LimitId::whip);
  const QString heading = shown.find<QLabel>("remedies_sentence").text();
  CHECK(heading.contains(QStringLiteral("whip allows 4.55 m/min, wanted is 6 m/min")));
  try_and_take_back(shown, "length between bearings");
  try_and_take_back(shown, "lead");
  try_and_take_back(shown, "far end");
}

TEST_CASE("every row does what it says, and Undo takes each back to the byte") {
  Shown shown(plank_router());
  settle(shown);
  const std::string before = write_machine(shown.document().machine());
  const auto promised = view(shown).shown();
  REQUIRE(promised.size() >= 5);
  for (std::size_t i = 0; i < promised.size(); ++i) {
    const std::string name = "remedy_" + std::to_string(i);
    auto& row = shown.find<RemedyRow>(name.c_str());
    INFO(row.accessibleName().toStdString());
    press(shown, row);
    const AxisResults& after = *shown.document().current();
    for (const LimitDescriptor& about : limit_descriptors()) {
      CHECK(after.limit(about.id).margin == promised[i].limit(about.id).margin);
    }
    shown.trigger("undo");
    settle(shown);
    CHECK(write_machine(shown.document().machine()) == before);
  }
}

TEST_CASE("what was tried is taken back by the button that names it") {
  Shown shown(plank_router());
  settle(shown);
  auto& take_back = shown.find<QPushButton>("remedies_take_back");
  CHECK_FALSE(take_back.isVisible());
  press(shown, row_saying(shown, "far end"));
  REQUIRE(take_back.isVisible());
  CHECK(take_back.text().contains(QStringLiteral("far end")));
  QTest::mouseClick(&take_back, Qt::LeftButton);
  settle(shown);
  CHECK(margin_of_whip(shown) < 1.0);
  CHECK_FALSE(take_back.isVisible());
}

TEST_CASE("an edit after a try is not taken for the try") {
  Shown shown(plank_router());
  settle(shown);
  press(shown, row_saying(shown, "far end"));
  shown.document().edit_field(0, PartSlot::carriage, "mass", AnyQuantity{Kind::mass, 20.0},
                              {"20 kg", Origin::entered});
  settle(shown);
  CHECK_FALSE(shown.find<QPushButton>("remedies_take_back").isVisible());
}

TEST_CASE("a step that comes in the place of the try is not offered to be taken back") {
  Shown shown(plank_router());
  settle(shown);
  press(shown, row_saying(shown, "far end"));
  REQUIRE(shown.find<QPushButton>("remedies_take_back").isVisible());
  shown.trigger("undo");
  // At once, before anything is painted: as many steps as after the try, but another one.
  shown.document().select({0, PartSlot::carriage, {}});
  auto& mass = shown.find<QLineEdit>("carriage.mass");
  mass.selectAll();
  QTest::keyClicks(&mass, QStringLiteral("20 kg"));
  QTest::keyClick(&mass, Qt::Key_Return);
  settle(shown);
  CHECK(shown.document().undo_stack()->count() == 1);
  CHECK_FALSE(shown.find<QPushButton>("remedies_take_back").isVisible());
}

TEST_CASE("the try is told from later steps also where the oldest are forgotten") {
  Shown shown(plank_router());
  shown.document().undo_stack()->setUndoLimit(1);
  settle(shown);
  press(shown, row_saying(shown, "far end"));
  REQUIRE(shown.find<QPushButton>("remedies_take_back").isVisible());
  shown.document().select({0, PartSlot::carriage, {}});
  auto& mass = shown.find<QLineEdit>("carriage.mass");
  mass.selectAll();
  QTest::keyClicks(&mass, QStringLiteral("20 kg"));
  QTest::keyClick(&mass, Qt::Key_Return);
  settle(shown);
  CHECK_FALSE(shown.find<QPushButton>("remedies_take_back").isVisible());
  shown.trigger("undo");
  settle(shown);
  CHECK_FALSE(shown.document().undo_stack()->canUndo());
  CHECK_FALSE(shown.find<QPushButton>("remedies_take_back").isVisible());
}

TEST_CASE("the button takes back the try alone, not what pressing it takes from a field") {
  Shown shown(plank_router());
  settle(shown);
  press(shown, row_saying(shown, "far end"));
  shown.document().select({0, PartSlot::carriage, {}});
  settle(shown);
  auto& mass = shown.find<QLineEdit>("carriage.mass");
  shown.window->activateWindow();
  mass.setFocus();
  mass.selectAll();
  QTest::keyClicks(&mass, QStringLiteral("20 kg"));
  auto& take_back = shown.find<QPushButton>("remedies_take_back");
  take_back.setFocus(Qt::MouseFocusReason);
  QTest::mouseClick(&take_back, Qt::LeftButton);
  settle(shown);
  CHECK(si_value(*shown.document().machine().axes[0].carriage.mass) == Approx(20.0));
  CHECK_FALSE(take_back.isVisible());
  // With that step undone the try is the last again.
  shown.trigger("undo");
  settle(shown);
  REQUIRE(take_back.isVisible());
  QTest::mouseClick(&take_back, Qt::LeftButton);
  settle(shown);
  CHECK(margin_of_whip(shown) < 1.0);
}

TEST_CASE("arrows go from row to row and Enter tries") {
  Shown shown(plank_router());
  settle(shown);
  auto& first = shown.find<RemedyRow>("remedy_0");
  auto& second = shown.find<RemedyRow>("remedy_1");
  shown.window->activateWindow();
  first.setFocus();
  QTest::keyClick(&first, Qt::Key_Down);
  CHECK(second.hasFocus());
  QTest::keyClick(&second, Qt::Key_Up);
  CHECK(first.hasFocus());
  QTest::keyClick(&first, Qt::Key_Up);
  CHECK(first.hasFocus());
  QTest::keyClick(&first, Qt::Key_Return);
  settle(shown);
  CHECK(margin_of_whip(shown) >= 1.0 - 1e-9);
  CHECK(shown.document().undo_stack()->count() == 1);
}

TEST_CASE("values are entered by the user's hand, listed parts come with their source") {
  Shown shown(plank_router());
  settle(shown);
  press(shown, row_saying(shown, "length between bearings"));
  const auto& drive = [&]() -> const Screw& {
    return testing::screw_of(shown.document().machine().axes[0]);
  };
  CHECK(drive().notes.entries.at("span") == EntryNote{"1288 mm", Origin::entered});
  CHECK(drive().notes.entries.at("overall_length") == EntryNote{"1368 mm", Origin::entered});
  shown.trigger("undo");
  settle(shown);
  press(shown, row_saying(shown, "lead"));
  CHECK(drive().notes.entries.at("lead").origin == Origin::part_list);
  CHECK(drive().notes.source.find("16 × 10") != std::string::npos);
}

TEST_CASE("a bar of the ladder and the box above choose the limit") {
  Machine machine = plank_router();
  machine.axes[0].targets.acceleration = Positive<Acceleration>::of(from_si<Acceleration>(1.6));
  Shown shown(machine);
  settle(shown);
  auto& limits = shown.find<QComboBox>("remedies_limit");
  const int acceleration = limits.findData(static_cast<int>(LimitId::acceleration));
  REQUIRE(acceleration >= 0);
  limits.setCurrentIndex(acceleration);
  emit limits.activated(acceleration);
  settle(shown);
  CHECK(view(shown).shown_limit() == LimitId::acceleration);
  auto& ladder = shown.find<LadderWidget>("feed_ladder");
  const auto& rows = ladder.ladder().rows;
  const auto whip = std::ranges::find(rows, LimitId::whip, &LadderRow::id);
  REQUIRE(whip != rows.end());
  emit ladder.row_chosen(LimitId::whip);
  settle(shown);
  CHECK(view(shown).shown_limit() == LimitId::whip);
  CHECK(limits.currentData().toInt() == static_cast<int>(LimitId::whip));
}

TEST_CASE("a bar that is clear leaves what would do on the worst limit") {
  Shown shown(plank_router());
  settle(shown);
  emit shown.find<LadderWidget>("feed_ladder").row_chosen(LimitId::step_rate);
  settle(shown);
  CHECK(view(shown).shown_limit() == LimitId::whip);
}

TEST_CASE(
    "where nothing is over or close one quiet line says so, and the room goes to the fields") {
  Shown shown(plank_router());
  settle(shown);
  const int busy = view(shown).height();
  CHECK(busy > 8 * shown.window->fontMetrics().lineSpacing());
  shown.window->show_axis(1);
  settle(shown);
  // What is not known is not called well.
  const auto& limits = shown.document().current()->limits;
  const auto open = std::ranges::count_if(
      limits, [](const Limit& limit) { return limit.applies && limit.verdict == Verdict::open; });
  REQUIRE(open > 1);
  CHECK(shown.find<QLabel>("remedies_sentence").text() ==
        QStringLiteral("Nothing known is over or close; %1 limits are open.").arg(open));
  CHECK(visible_rows(shown).isEmpty());
  CHECK(view(shown).height() < 3 * shown.window->fontMetrics().lineSpacing());
  shown.window->show_axis(0);
  settle(shown);
  CHECK(view(shown).height() > 8 * shown.window->fontMetrics().lineSpacing());
  CHECK(visible_rows(shown).size() >= 5);
}

TEST_CASE("a machine with faults has nothing that would do") {
  Machine machine = plank_router();
  machine.axes[0].basics.travel = Positive<Length>::of(from_si<Length>(2.0));
  Shown shown(machine);
  settle(shown);
  CHECK(visible_rows(shown).isEmpty());
  CHECK(shown.find<QLabel>("remedies_sentence").text().contains(QStringLiteral("faults")));
}

TEST_CASE("a row speaks its whole sentence and tells before and after of what it moves") {
  Shown shown(plank_router());
  settle(shown);
  const RemedyRow& row = row_saying(shown, "far end");
  CHECK(row.accessibleName().contains(QStringLiteral("then whip governs")));
  CHECK(row.accessibleDescription().contains(QStringLiteral("far end: supported → fixed")));
  CHECK(row.accessibleDescription().contains(QStringLiteral("whip: 4.55 m/min → 6.6 m/min")));
  const RemedyRow& nut = row_saying(shown, "what turns");
  CHECK(nut.accessibleName().contains(QStringLiteral("It may shake")));
  for (const RemedyRow* each : visible_rows(shown)) {
    CHECK(each->height() >= each->heightForWidth(each->width()));
  }
}

TEST_CASE("figures are told in the units the machine is typed in") {
  Machine machine = plank_router();
  REQUIRE(set_field(machine, 0, PartSlot::targets, "feed", AnyQuantity{Kind::velocity, 0.1},
                    {"236 in/min", Origin::entered}));
  Shown shown(machine);
  settle(shown);
  CHECK(shown.find<QLabel>("remedies_sentence").text().contains(QStringLiteral("in/min")));
}

TEST_CASE("a change that moves what is wanted says against what it then stands") {
  Shown shown(testing::sample("clock-mill"));
  shown.window->show_axis(1);
  settle(shown);
  view(shown).choose(LimitId::motor_thrust);
  const RemedyRow& row = row_saying(shown, "mass");
  INFO(row.accessibleName().toStdString());
  // Less mass lifts with less force: it is not what is allowed that has moved.
  CHECK(row.accessibleName().contains(QStringLiteral(" where ")));
  CHECK(row.accessibleName().contains(QStringLiteral(" is wanted")));
}

TEST_CASE(
    "a row of What would do is as high as its text, however narrow the pane or large the letters") {
  const QFont kept = QApplication::font();
  for (const double points : {9.0, 18.0}) {
    QFont font = kept;
    font.setPointSizeF(points);
    QApplication::setFont(font);
    for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
      Shown shown(plank_router());
      shown.window->resize(size);
      settle(shown);
      const auto rows = visible_rows(shown);
      REQUIRE_FALSE(rows.isEmpty());
      for (const RemedyRow* row : rows) {
        INFO(points << " pt, " << size.width() << ": " << row->accessibleName().toStdString());
        CHECK(row->height() >= row->heightForWidth(row->width()));
      }
    }
  }
  QApplication::setFont(kept);
}
