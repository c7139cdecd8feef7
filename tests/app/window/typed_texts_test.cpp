// SPDX-License-Identifier: GPL-3.0-or-later

// What is typed and not taken yet: it is neither lost nor overwritten, and goes with what it was
// typed for.

#include "machine/machine_file.h"
#include "support/axes.h"
#include "support/window.h"
#include "train/train_view.h"
#include "json/read_json.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableWidget>

using namespace feedwright;
using namespace feedwright::literals;
using feedwright::testing::Folder;
using feedwright::testing::ordinary_router;
using feedwright::testing::screw_of;
using feedwright::testing::Shown;

namespace {

Machine axes_named(std::initializer_list<const char*> letters) {
  Machine machine = ordinary_router();
  const Axis axis = machine.axes.front();
  machine.axes.clear();
  double lead = 5e-3;
  for (const char* letter : letters) {
    machine.axes.push_back(axis);
    machine.axes.back().basics.letter = letter;
    const auto index = machine.axes.size() - 1;
    set_field(machine, index, PartSlot::drive, "lead", AnyQuantity{Kind::lead, lead / (2.0 * pi)},
              {});
    lead += 1e-3;
  }
  return machine;
}

void settle() {
  for (int turn = 0; turn < 5; ++turn) {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents();
  }
}

void choose(Shown& shown, std::size_t axis, PartSlot slot) {
  shown.document().select({axis, slot, {}});
  settle();
}

/// Types without the Enter that would take it.
void begin_typing(QLineEdit& edit, const char* text) {
  edit.window()->activateWindow();
  edit.setFocus();
  edit.selectAll();
  QTest::keyClicks(&edit, QString::fromUtf8(text));
}

void press(Shown& shown, const char* button) {
  QTest::mouseClick(&shown.find<QPushButton>(button), Qt::LeftButton);
  settle();
}

QString text_in(Shown& shown, const char* field) {
  return shown.find<QLineEdit>(field).text();
}

double lead_mm(Shown& shown, std::size_t axis) {
  const auto field = field_of(shown.document().machine(), axis, PartSlot::drive, "lead");
  return std::get<AnyQuantity>(field->value).si * 2.0 * pi * 1e3;
}

TypedAt lead_of(std::size_t axis) {
  return TypedAt::of(axis, PartSlot::drive, "lead");
}

} // namespace

TEST_CASE("a source that is being typed is left alone by other changes and taken on saving") {
  const Folder folder;
  Shown shown;
  shown.answers.path = folder.path("a.feedwright");
  choose(shown, 0, PartSlot::carriage);
  auto& mass = shown.find<QLineEdit>("carriage.mass");
  begin_typing(mass, "20 kg");
  QTest::keyClick(&mass, Qt::Key_Return);
  choose(shown, 0, PartSlot::drive);
  auto& source = shown.find<QLineEdit>("part_source");
  begin_typing(source, "measured in the barn");
  Machine changed = shown.document().machine();
  changed.supply.power = Positive<Power>::of(1000_W);
  shown.document().edit(changed, QStringLiteral("supply"));
  settle();
  CHECK(text_in(shown, "part_source") == QStringLiteral("measured in the barn"));
  shown.trigger("save");
  CHECK(folder.bytes("a.feedwright").find("measured in the barn") != std::string::npos);
  CHECK_FALSE(shown.window->banner().isVisible());
  // Escape leaves what is in the machine.
  begin_typing(shown.find<QLineEdit>("part_source"), "something else");
  QTest::keyClick(&shown.find<QLineEdit>("part_source"), Qt::Key_Escape);
  CHECK(text_in(shown, "part_source") == QStringLiteral("measured in the barn"));
}

TEST_CASE("a source that is being typed waits while the form goes on to what Undo changes") {
  Shown shown;
  choose(shown, 0, PartSlot::carriage);
  auto& mass = shown.find<QLineEdit>("carriage.mass");
  begin_typing(mass, "20 kg");
  QTest::keyClick(&mass, Qt::Key_Return);
  choose(shown, 0, PartSlot::drive);
  begin_typing(shown.find<QLineEdit>("part_source"), "measured in the barn");
  shown.trigger("undo");
  settle();
  CHECK(shown.document().selection().slot == PartSlot::carriage);
  CHECK_FALSE(shown.window->close());
  CHECK(shown.window->banner().text().contains(QStringLiteral("source")));
  press(shown, "show_typed");
  CHECK(text_in(shown, "part_source") == QStringLiteral("measured in the barn"));
  CHECK(shown.find("part_source").hasFocus());
  QTest::keyClick(&shown.find<QLineEdit>("part_source"), Qt::Key_Return);
  CHECK(screw_of(shown.document().machine().axes[0]).notes.source == "measured in the barn");
  CHECK(shown.document().pending().empty());
}

TEST_CASE("a name that is being typed is left alone by other changes and taken on saving") {
  const Folder folder;
  Shown shown;
  shown.answers.path = folder.path("a.feedwright");
  choose(shown, 0, PartSlot::supply);
  begin_typing(shown.find<QLineEdit>("machine.name"), "Barn router");
  Machine changed = shown.document().machine();
  changed.supply.power = Positive<Power>::of(1000_W);
  shown.document().edit(changed, QStringLiteral("supply"));
  settle();
  CHECK(text_in(shown, "machine.name") == QStringLiteral("Barn router"));
  shown.trigger("save");
  CHECK(shown.document().machine().name == "Barn router");
  CHECK(folder.bytes("a.feedwright").find("Barn router") != std::string::npos);
}

TEST_CASE("notes too long for the file are not taken, say so, and are asked about on closing") {
  const Folder folder;
  Shown shown;
  shown.answers.path = folder.path("a.feedwright");
  choose(shown, 0, PartSlot::supply);
  auto& notes = shown.find<QPlainTextEdit>("machine.story");
  auto& help = shown.find<QLabel>("machine.story.note");
  notes.setPlainText(QStringLiteral("short"));
  CHECK_FALSE(help.isVisible());
  constexpr int most = static_cast<int>(JsonLimits{}.text);
  notes.setPlainText(QString(most, QLatin1Char('a')));
  CHECK(shown.document().machine().story.size() == std::size_t{most});
  QTest::keyClicks(&notes, QStringLiteral("b"));
  CHECK(shown.document().machine().story.size() == std::size_t{most});
  REQUIRE(help.isVisible());
  CHECK(help.text().contains(QString::number(most)));
  CHECK(notes.toPlainText().size() == most + 1);
  shown.trigger("save");
  CHECK(shown.answers.told.isEmpty());
  CHECK_FALSE(shown.window->close());
  CHECK(shown.window->banner().isVisible());
  choose(shown, 0, PartSlot::drive);
  press(shown, "show_typed");
  auto& again = shown.find<QPlainTextEdit>("machine.story");
  CHECK(again.toPlainText().size() == most + 1);
  CHECK(again.hasFocus());
  again.setPlainText(QStringLiteral("shorter"));
  CHECK(shown.document().machine().story == "shorter");
  CHECK_FALSE(shown.find<QLabel>("machine.story.note").isVisible());
  CHECK(shown.document().pending().empty());
}

TEST_CASE("a table takes no more rows than its file may hold, and says so") {
  const Folder folder;
  Shown shown;
  choose(shown, 0, PartSlot::motor);
  const auto count = [&] {
    return std::get<StepperByPoints>(shown.document().machine().axes[0].motor).points.size();
  };
  const auto note = [&] { return shown.find<QLabel>("motor.points.note").text(); };
  const auto import = [&](std::size_t rows) {
    std::string text;
    for (std::size_t i = 0; i < rows; ++i) {
      text += std::to_string(i + 1) + " rpm;1 N·m\n";
    }
    shown.answers.path = folder.put("curve.csv", text);
    press(shown, "points_import");
  };
  const std::size_t before = count();
  import(most_table_rows + 1);
  CHECK(count() == before);
  CHECK(note().contains(QStringLiteral("1000")));
  import(most_table_rows);
  REQUIRE(count() == most_table_rows);
  press(shown, "points_add");
  CHECK(count() == most_table_rows);
  CHECK(note().contains(QStringLiteral("1000")));
  CHECK(read_machine_as_typed(write_machine(shown.document().machine())));
}

TEST_CASE("a text typed while Undo puts an axis back stays with its own axis") {
  Shown shown(axes_named({"X", "Y", "Z"}));
  choose(shown, 0, PartSlot::drive);
  shown.trigger("remove_axis");
  settle();
  REQUIRE(text_in(shown, "drive.lead") == QStringLiteral("6 mm"));
  begin_typing(shown.find<QLineEdit>("drive.lead"), "7.5 mm");
  shown.trigger("undo");
  settle();
  CHECK(shown.document().selection().axis == 0);
  CHECK(shown.document().pending().places() == std::vector{lead_of(1)});
  choose(shown, 0, PartSlot::drive); // Undo leads to the axis that has come back
  CHECK(text_in(shown, "drive.lead") == QStringLiteral("5 mm"));
  QTest::keyClick(&shown.find<QLineEdit>("drive.lead"), Qt::Key_Return);
  shown.find<QListWidget>("axes_list").setCurrentRow(2);
  settle();
  CHECK(text_in(shown, "drive.lead") == QStringLiteral("7.5 mm"));
  QTest::keyClick(&shown.find<QLineEdit>("drive.lead"), Qt::Key_Return);
  CHECK(lead_mm(shown, 0) == Approx(5.0));
  CHECK(lead_mm(shown, 1) == Approx(7.5));
  CHECK(lead_mm(shown, 2) == Approx(7.0));
  CHECK(shown.document().pending().empty());
}

TEST_CASE("a text typed while Undo and Redo move an axis stays with its own axis") {
  Shown shown(axes_named({"X", "Y"}));
  choose(shown, 0, PartSlot::drive);
  shown.trigger("move_axis_down");
  settle();
  REQUIRE(shown.document().selection().axis == 1);
  choose(shown, 1, PartSlot::drive);
  begin_typing(shown.find<QLineEdit>("drive.span"), "five");
  const auto waits_on = [&](std::size_t axis) {
    const auto places = shown.document().pending().places();
    return !places.empty() &&
           std::ranges::all_of(places, [&](const TypedAt& at) { return at.axis == axis; });
  };
  shown.trigger("undo");
  settle();
  CHECK(waits_on(0));
  shown.trigger("redo");
  settle();
  CHECK(waits_on(1));
  CHECK(shown.document().machine().axes[1].basics.letter == "X");
  choose(shown, 0, PartSlot::drive);
  CHECK(text_in(shown, "drive.span") == QStringLiteral("900 mm"));
  choose(shown, 1, PartSlot::drive);
  CHECK(text_in(shown, "drive.span") == QStringLiteral("five"));
}

TEST_CASE("of two axes that are alike a text stays with the one it was typed for") {
  Machine machine = axes_named({"X", "Y"});
  machine.axes[1] = machine.axes[0];
  Shown shown(machine);
  choose(shown, 1, PartSlot::drive);
  begin_typing(shown.find<QLineEdit>("drive.lead"), "five");
  choose(shown, 0, PartSlot::drive);
  begin_typing(shown.find<QLineEdit>("drive.lead"), "four");
  shown.trigger("remove_axis");
  settle();
  PendingTexts& pending = shown.document().pending();
  CHECK(pending.places() == std::vector{lead_of(0)});
  CHECK(pending.at(lead_of(0)) == QStringLiteral("five"));
  shown.trigger("undo");
  settle();
  CHECK(pending.at(lead_of(0)) == QStringLiteral("four"));
  CHECK(pending.at(lead_of(1)) == QStringLiteral("five"));
  // An edit of one of them leaves the other's text where it is.
  choose(shown, 1, PartSlot::carriage);
  auto& mass = shown.find<QLineEdit>("carriage.mass");
  begin_typing(mass, "20 kg");
  QTest::keyClick(&mass, Qt::Key_Return);
  CHECK(pending.at(lead_of(0)) == QStringLiteral("four"));
  CHECK(pending.at(lead_of(1)) == QStringLiteral("five"));
}

TEST_CASE("a text typed for an axis that Undo takes away comes back with it by Redo") {
  Shown shown(axes_named({"X"}));
  shown.trigger("duplicate_axis");
  choose(shown, 1, PartSlot::drive);
  begin_typing(shown.find<QLineEdit>("drive.lead"), "five");
  shown.trigger("undo");
  settle();
  CHECK(shown.document().machine().axes.size() == 1);
  CHECK(shown.document().pending().empty());
  choose(shown, 0, PartSlot::drive);
  CHECK(text_in(shown, "drive.lead") == QStringLiteral("5 mm"));
  shown.trigger("redo");
  settle();
  choose(shown, 1, PartSlot::drive);
  CHECK(text_in(shown, "drive.lead") == QStringLiteral("five"));
}

TEST_CASE("a figure being typed in the drawing stays with its axis when Undo moves that") {
  Shown shown(axes_named({"X", "Y"}));
  choose(shown, 0, PartSlot::drive);
  shown.trigger("move_axis_down");
  settle();
  auto& train = shown.find<TrainView>("train_view");
  REQUIRE(train.edit_figure(PartSlot::drive, QStringLiteral("lead")));
  begin_typing(shown.find<QLineEdit>("figure_edit"), "7.5 mm");
  shown.trigger("undo");
  settle();
  CHECK_FALSE(shown.find("figure_edit").isVisible());
  CHECK(lead_mm(shown, 0) == Approx(5.0));
  CHECK(lead_mm(shown, 1) == Approx(6.0));
  CHECK(shown.document().pending().places() == std::vector{lead_of(0)});
  choose(shown, 0, PartSlot::drive);
  CHECK(text_in(shown, "drive.lead") == QStringLiteral("7.5 mm"));
}

TEST_CASE("a refused cell goes with its row when a row is taken out, and back by Undo") {
  Shown shown;
  choose(shown, 0, PartSlot::motor);
  shown.find<QTableWidget>("points").item(2, 1)->setText(QStringLiteral("a lot"));
  shown.find<QTableWidget>("points").item(0, 1)->setText(QStringLiteral("little"));
  shown.find<QTableWidget>("points").setCurrentCell(0, 0);
  press(shown, "points_remove");
  CHECK(shown.find<QTableWidget>("points").item(1, 1)->text() == QStringLiteral("a lot"));
  CHECK(shown.document().pending().places().size() == 1);
  shown.trigger("undo");
  settle();
  CHECK(shown.find<QTableWidget>("points").item(2, 1)->text() == QStringLiteral("a lot"));
  CHECK(shown.find<QTableWidget>("points").item(0, 1)->text() == QStringLiteral("little"));
  CHECK(shown.find<QTableWidget>("points").item(1, 1)->text() != QStringLiteral("a lot"));
}

TEST_CASE("a cell that is being typed into is left alone by other changes, and is not lost") {
  Shown shown;
  choose(shown, 0, PartSlot::carriage);
  auto& mass = shown.find<QLineEdit>("carriage.mass");
  begin_typing(mass, "20 kg");
  QTest::keyClick(&mass, Qt::Key_Return);
  choose(shown, 0, PartSlot::motor);
  auto& table = shown.find<QTableWidget>("points");
  const auto open_cell = [&](QTableWidget& in, const char* text) {
    in.setCurrentCell(2, 1);
    in.editItem(in.item(2, 1));
    auto* line = in.viewport()->findChild<QLineEdit*>();
    REQUIRE(line != nullptr);
    begin_typing(*line, text);
    return line;
  };
  QLineEdit* line = open_cell(table, "1.3 N·m");
  Machine changed = shown.document().machine();
  changed.supply.power = Positive<Power>::of(1000_W);
  shown.document().edit(changed, QStringLiteral("supply"));
  settle();
  CHECK(line->text() == QStringLiteral("1.3 N·m"));
  shown.trigger("undo");
  // Undo went to the supply; what was typed waits for its cell.
  settle();
  choose(shown, 0, PartSlot::motor);
  CHECK(shown.find<QTableWidget>("points").item(2, 1)->text() == QStringLiteral("1.3 N·m"));
  // On leaving it is taken, for it can be.
  choose(shown, 0, PartSlot::drive);
  const auto& points = std::get<StepperByPoints>(shown.document().machine().axes[0].motor).points;
  CHECK(si_value(*points[2].torque) == Approx(1.3));
  CHECK(shown.document().pending().empty());
}

TEST_CASE("a window in which something is being typed is not taken for an untouched one") {
  Shown shown;
  CHECK(shown.window->is_pristine());
  auto& lead = shown.find<QLineEdit>("drive.lead");
  begin_typing(lead, "five");
  QTest::keyClick(&lead, Qt::Key_Return);
  CHECK_FALSE(shown.window->is_pristine());
}

TEST_CASE("what is being typed outlives its window, beside a text that is refused already") {
  for (const bool anew : {true, false}) {
    INFO(anew);
    Shown shown;
    choose(shown, 0, PartSlot::drive);
    auto& lead = shown.find<QLineEdit>("drive.lead");
    begin_typing(lead, "5 furlong");
    QTest::keyClick(&lead, Qt::Key_Return);
    settle();
    // As a text dropped into it: the keyboard is elsewhere, and does not leave it.
    auto& span = shown.find<QLineEdit>("drive.span");
    span.selectAll();
    QTest::keyClicks(&span, QStringLiteral("five"));
    if (!anew) {
      shown.window.reset();
      return;
    }
    auto document = shown.window->release_document();
    const PendingTexts& waiting = document.document->pending();
    CHECK(waiting.at(lead_of(0)) == QStringLiteral("5 furlong"));
    CHECK(waiting.at(TypedAt::of(0, PartSlot::drive, "span")) == QStringLiteral("five"));
    shown.window = std::make_unique<MainWindow>(std::move(document));
    shown.window->show();
    choose(shown, 0, PartSlot::drive);
    CHECK(text_in(shown, "drive.lead") == QStringLiteral("5 furlong"));
    CHECK(text_in(shown, "drive.span") == QStringLiteral("five"));
  }
}

TEST_CASE("results say that a text which is not taken is not in them, and the way to it") {
  Shown shown;
  choose(shown, 0, PartSlot::drive);
  auto& lead = shown.find<QLineEdit>("drive.lead");
  begin_typing(lead, "5 furlong");
  QTest::keyClick(&lead, Qt::Key_Return);
  settle();
  const QString said = shown.find<QLabel>("waiting_0").text();
  INFO(said.toStdString());
  CHECK(said.contains(QStringLiteral("5 furlong")));
  CHECK(said.contains(QStringLiteral("lead 5 mm")));
  choose(shown, 0, PartSlot::motor);
  CHECK(shown.window->findChild<QLabel*>(QStringLiteral("waiting_0")) != nullptr);
  press(shown, "go_to_waiting_0");
  CHECK(shown.document().selection().slot == PartSlot::drive);
  auto& again = shown.find<QLineEdit>("drive.lead");
  CHECK(again.text() == QStringLiteral("5 furlong"));
  begin_typing(again, "10 mm");
  QTest::keyClick(&again, Qt::Key_Return);
  settle();
  CHECK(shown.window->findChild<QLabel*>(QStringLiteral("waiting_0")) == nullptr);
}
