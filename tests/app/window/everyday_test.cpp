// SPDX-License-Identifier: GPL-3.0-or-later

// What trips somebody up on the first day: where the caret is, what Undo undoes, what is shown as
// well while something is not, what cannot be found.

#include "document/new_machine.h"
#include "fields/fields_panel.h"
#include "fields/part_picker.h"
#include "limits/grave_cautions.h"
#include "limits/ladder_widget.h"
#include "remedies/remedies_view.h"
#include "remedies/remedy_row.h"
#include "sizing/size_axis.h"
#include "support/machine_files.h"
#include "support/whole_workbench.h"
#include "train/train_plan.h"
#include "window/axis_card.h"
#include "window/window_place.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QCompleter>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QSplitter>
#include <QToolButton>
#include <QTreeView>

using namespace feedwright;
using feedwright::testing::Folder;
using feedwright::testing::OwnFolders;
using feedwright::testing::Running;
using feedwright::testing::sample;
using feedwright::testing::screw_of;
using feedwright::testing::Shown;

namespace {

void settle() {
  for (int i = 0; i < 20; ++i) {
    QCoreApplication::processEvents();
  }
}

/// With the keys of somebody sitting there: the window in front.
struct InFront : Shown {
  explicit InFront(const Machine& machine = testing::ordinary_router()) : Shown(machine) {
    window->activateWindow();
    settle();
  }
  QLineEdit& line(const char* name) { return find<QLineEdit>(name); }
  QString under(const char* field) {
    const std::string name = std::string(field) + ".note";
    auto& note = find<QLabel>(name.c_str());
    return note.isVisible() ? note.text() : QString();
  }
  double span() { return si_value(*screw_of(document().machine().axes[0]).span); }
  double lead() { return number_of("lead"); }
  double number_of(const char* member) {
    const auto field = field_of(document().machine(), 0, PartSlot::drive, member);
    REQUIRE(field);
    return std::get<AnyQuantity>(field->value).si;
  }
  void type(QLineEdit& edit, const char* text) {
    edit.setFocus();
    edit.selectAll();
    QTest::keyClicks(&edit, QString::fromUtf8(text));
  }
  void enter(const char* field, const char* text) {
    type(line(field), text);
    QTest::keyClick(&line(field), Qt::Key_Return);
  }
};

void undo_keys(QWidget& widget) {
  QTest::keyClick(&widget, Qt::Key_Z, Qt::ControlModifier);
}

void redo_keys(QWidget& widget) {
  QTest::keyClick(&widget, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
}

AxisCard card(Shown& shown, int row) {
  return shown.find<QListWidget>("axes_list").item(row)->data(Qt::UserRole).value<AxisCard>();
}

Machine upright_without_brake() {
  return sample("clock-mill");
}

} // namespace

TEST_CASE("a field reached by a jump is chosen whole, so that what is typed takes its place") {
  InFront shown;
  auto& span = shown.line("drive.span");
  auto& ladder = shown.find<LadderWidget>("feed_ladder");
  const auto& rows = ladder.ladder().rows;
  std::size_t whip = 0;
  while (whip < rows.size() && rows[whip].id != LimitId::whip) {
    ++whip;
  }
  REQUIRE(whip < rows.size());
  const auto click = [&] {
    QTest::mouseClick(&ladder, Qt::LeftButton, Qt::NoModifier,
                      ladder.row_area(whip).center().toPoint());
  };
  click();
  CHECK(span.hasFocus());
  QTest::keyClicks(&span, QStringLiteral("1050"));
  QTest::keyClick(&span, Qt::Key_Return);
  CHECK(shown.span() == Approx(1.05));
  // The second time the caret is there already.
  span.setCursorPosition(0);
  click();
  QTest::keyClicks(&span, QStringLiteral("980"));
  QTest::keyClick(&span, Qt::Key_Return);
  CHECK(shown.span() == Approx(0.98));
}

TEST_CASE("a length or a lead beyond any machine is taken and remarked on") {
  InFront shown;
  CHECK_FALSE(shown.under("drive.span").contains(QStringLiteral("unit right")));
  shown.enter("drive.span", "1050800");
  CHECK(shown.span() == Approx(1050.8));
  CHECK(shown.under("drive.span").contains(QStringLiteral("unit right")));
  shown.enter("drive.span", "19 m");
  CHECK_FALSE(shown.under("drive.span").contains(QStringLiteral("unit right")));
  shown.enter("drive.lead", "1200 mm");
  CHECK(shown.under("drive.lead").contains(QStringLiteral("unit right")));
}

TEST_CASE("Undo in a field undoes what is typed there, and the machine's last step else") {
  InFront shown;
  auto& span = shown.line("drive.span");
  shown.enter("drive.span", "850 mm");
  CHECK(shown.span() == Approx(0.85));
  CHECK(span.hasFocus());
  shown.type(span, "7");
  CHECK(span.text() == QStringLiteral("7"));
  undo_keys(span);
  CHECK(shown.span() == Approx(0.85));
  CHECK(span.text() == QStringLiteral("850 mm"));
  undo_keys(span);
  CHECK(shown.span() == Approx(0.9));
  CHECK(span.text() == QStringLiteral("900 mm"));
  CHECK(span.selectedText() == span.text());
  // With nothing left to undo nothing happens.
  undo_keys(span);
  CHECK(span.text() == QStringLiteral("900 mm"));
  redo_keys(span);
  CHECK(shown.span() == Approx(0.85));
  // In an empty box of another kind.
  auto& picker = shown.find<QComboBox>("part_picker");
  picker.setFocus();
  undo_keys(picker);
  CHECK(shown.span() == Approx(0.9));
}

TEST_CASE("Undo in the notes goes back through the typing, later to the machine's last step") {
  InFront shown;
  shown.document().select({0, PartSlot::supply, {}, true});
  settle();
  auto& notes = shown.find<QPlainTextEdit>("machine.story");
  notes.setFocus();
  QTest::keyClicks(&notes, QStringLiteral("oak"));
  CHECK(shown.document().machine().story == "oak");
  undo_keys(notes);
  CHECK(shown.document().machine().story.empty());
  redo_keys(notes);
  CHECK(shown.document().machine().story == "oak");
  shown.line("supply.voltage").setFocus();
  shown.enter("supply.voltage", "36 V");
  notes.setFocus();
  undo_keys(notes);
  CHECK(shown.document().machine().story == "oak");
  CHECK(si_value(*shown.document().machine().supply.voltage) == Approx(48.0));
}

TEST_CASE("a card says the worst of its axis before it says what governs the feed") {
  Machine machine = testing::ordinary_router();
  machine.axes[0].targets.thrust = Positive<Force>::of(from_si<Force>(9000.0));
  InFront shown(machine);
  const AxisResults& results = *shown.document().current();
  REQUIRE(results.governing);
  REQUIRE(results.limit(LimitId::motor_thrust).verdict == Verdict::over);
  const AxisCard shown_card = card(shown, 1);
  CHECK(shown_card.trouble.startsWith(QStringLiteral("▲ ")));
  CHECK(shown_card.trouble_verdict == Verdict::over);
  CHECK(shown_card.spoken().contains(shown_card.trouble));
  CHECK(shown_card.governs.contains(QStringLiteral("governs")));
  auto& list = shown.find<QListWidget>("axes_list");
  const int with_trouble = list.visualItemRect(list.item(1)).height();
  shown.enter("drive.lead", "5 mm");
  shown.document().select({0, PartSlot::targets, {}});
  settle();
  shown.enter("targets.thrust", "50 N");
  CHECK(card(shown, 1).trouble.isEmpty());
  settle();
  CHECK(list.visualItemRect(list.item(1)).height() < with_trouble);
}

TEST_CASE("a card says that an axis can fall") {
  InFront shown(upright_without_brake());
  bool said = false;
  const auto& axes = shown.document().machine().axes;
  for (int axis = 0; axis < int(axes.size()); ++axis) {
    said = said || card(shown, axis + 1).trouble.startsWith(QStringLiteral("▲ can fall"));
  }
  CHECK(said);
}

TEST_CASE("in the drawing a tick does not wear the colour of what is over") {
  QImage device(8, 8, QImage::Format_ARGB32);
  TrainGeometry train;
  const AxisResults results =
      size_axis(testing::ordinary_router(), testing::ordinary_router().axes[0]);
  train = train_geometry(testing::ordinary_router(), 0, &results);
  train.governing = GoverningMark{PartSlot::motor, {}, Verdict::clear, QStringLiteral("✓ a")};
  train.also = {{PartSlot::motor, {}, Verdict::over, QStringLiteral("▲ b")}};
  TrainOptions options;
  options.units_per_mm = 96.0 / 25.4;
  const TrainPlan plan = plan_train(train, QRectF(0, 0, 900, 240), options, &device);
  bool ticked = false;
  bool warned = false;
  for (const PlannedLabel& label : plan.labels) {
    INFO(label.text.toStdString());
    const bool tick = label.text.contains(QStringLiteral("✓ a"));
    ticked = ticked || tick;
    warned = warned || label.text.contains(QStringLiteral("▲ b"));
    CHECK_FALSE((tick && label.tone == Tone::over));
  }
  CHECK(ticked);
  CHECK(warned);
}

TEST_CASE("what would do speaks of the machine while the machine is chosen") {
  InFront shown(sample("plank-router"));
  shown.document().select({1, PartSlot::supply, {}, true});
  const auto& view = shown.find<RemediesView>("remedies_view");
  REQUIRE(QTest::qWaitFor([&] { return !view.is_waiting(); }, 5000));
  const QString said = shown.find<QLabel>("remedies_sentence").text();
  CHECK(said.contains(QStringLiteral("X")));
  CHECK_FALSE(said.startsWith(QStringLiteral("Nothing")));
}

TEST_CASE("what would do is quiet about no danger") {
  InFront shown(upright_without_brake());
  const auto& view = shown.find<RemediesView>("remedies_view");
  for (std::size_t axis = 0; axis < shown.document().machine().axes.size(); ++axis) {
    shown.document().select({axis, PartSlot::drive, {}});
    REQUIRE(QTest::qWaitFor([&] { return !view.is_waiting(); }, 5000));
    settle();
    const auto& results = *shown.document().current();
    const bool falls = std::ranges::any_of(results.findings, [](const Finding& finding) {
      return finding.code == FindingCode::axis_can_fall;
    });
    if (falls) {
      CHECK(shown.find<QLabel>("remedies_sentence").text().contains(QStringLiteral("danger")));
    }
  }
}

TEST_CASE("screws are found by the shop's names for them") {
  for (const char* typed : {"16x10", "16 x 10", "16X10", "16*10", "16-10", "16×10", "16 × 10"}) {
    INFO(typed);
    CHECK(findable_words(QStringLiteral("16 × 10, rolled"))
              .contains(searched_words(QString::fromUtf8(typed))));
  }
  CHECK(findable_words(QStringLiteral("16 × 5, rolled")).contains(QStringLiteral("1605")));
  CHECK(findable_words(QStringLiteral("8 × 2")).contains(QStringLiteral("0802")));
  CHECK_FALSE(findable_words(QStringLiteral("16 × 10, rolled"))
                  .contains(searched_words(QStringLiteral("16x5"))));

  InFront shown;
  auto& picker = shown.find<QComboBox>("part_picker");
  picker.setFocus();
  for (const char* typed : {"1605", "16 x 5"}) {
    INFO(typed);
    picker.lineEdit()->clear();
    QTest::keyClicks(&picker, QString::fromUtf8(typed));
    CHECK(picker.completer()->completionCount() > 0);
    CHECK_FALSE(shown.find<QLabel>("part_picker_note").isVisible());
  }
}

TEST_CASE("where nothing is found the picker says so, and no key takes another part") {
  InFront shown;
  auto& picker = shown.find<QComboBox>("part_picker");
  const Machine before = shown.document().machine();
  picker.setFocus();
  QTest::keyClicks(&picker, QStringLiteral("99x77"));
  CHECK(shown.find<QLabel>("part_picker_note").text().contains(QStringLiteral("Nothing found")));
  CHECK(shown.find<QLabel>("part_picker_note").isVisible());
  QTest::keyClick(&picker, Qt::Key_Down);
  QTest::keyClick(&picker, Qt::Key_Return);
  settle();
  CHECK(shown.document().machine() == before);
}

TEST_CASE(
    "the parts found are all in the list, on the screen, and Undo after a pick takes it back") {
  InFront shown;
  auto& picker = shown.find<QComboBox>("part_picker");
  picker.setFocus();
  QTest::keyClicks(&picker, QStringLiteral("16x"));
  auto* found = qobject_cast<QTreeView*>(picker.completer()->popup());
  REQUIRE(found != nullptr);
  REQUIRE(found->isVisible());
  settle();
  const int rows = found->model()->rowCount();
  REQUIRE(rows > 1);
  const QRect last = found->visualRect(found->model()->index(rows - 1, 0));
  CHECK(found->viewport()->rect().contains(last.center()));
  CHECK(last.bottom() <= found->viewport()->rect().bottom());
  CHECK(found->screen()->availableGeometry().contains(found->geometry()));
  const double lead = shown.lead();
  QTest::keyClick(found, Qt::Key_Down);
  QTest::keyClick(found, Qt::Key_Down);
  QTest::keyClick(found, Qt::Key_Return);
  settle();
  REQUIRE(shown.document().undo_stack()->count() == 1);
  undo_keys(shown.find<QComboBox>("part_picker"));
  CHECK(shown.document().undo_stack()->index() == 0);
  CHECK(shown.lead() == Approx(lead));
}

TEST_CASE("a fault is said in words, leads to its field, and leaves the other axes computed") {
  Machine machine = testing::ordinary_router();
  machine.axes.push_back(machine.axes[0]);
  machine.axes[1].basics.letter = "Y";
  machine.axes[1].basics.travel = Positive<Length>::of(from_si<Length>(2.0));
  InFront shown(machine);
  CHECK(shown.document().results().empty());
  CHECK(shown.document().results_of(0) != nullptr);
  CHECK(shown.document().results_of(1) == nullptr);
  CHECK(shown.find<LadderWidget>("feed_ladder").isVisible());
  CHECK(card(shown, 1).governs.contains(QStringLiteral("governs")));
  CHECK(card(shown, 2).governs == QStringLiteral("not computed"));
  shown.window->show_axis(1);
  settle();
  const QString said = shown.find<QLabel>("fault_0").text();
  CHECK(said.contains(QStringLiteral("Axis Y")));
  CHECK_FALSE(said.contains(QStringLiteral("axes[")));
  shown.document().select({1, PartSlot::motor, {}});
  settle();
  QTest::mouseClick(&shown.find<QPushButton>("go_to_fault_0"), Qt::LeftButton);
  settle();
  // The travel is the wish; what can be mended is the screw.
  CHECK(shown.document().selection().member == QStringLiteral("span"));
  auto& span = shown.line("drive.span");
  CHECK(span.hasFocus());
  CHECK(span.selectedText() == span.text());
  // The sentence below the fields is whole.
  auto& sentence = shown.find<QLabel>("remedies_sentence");
  CHECK(sentence.height() >= sentence.heightForWidth(sentence.width()));
  shown.document().select({1, PartSlot::supply, {}, true});
  settle();
  CHECK_FALSE(shown.find<QLabel>("machine_fault_0").text().contains(QStringLiteral("axes[")));
}

TEST_CASE("no sentence about danger is cut") {
  GraveCautions cautions;
  const QString first = QStringLiteral(
      "▲ Screw: a long sentence that needs more than two lines in a narrow window, and ends with "
      "the very words that help: fit a brake or a counterbalance, and keep hands from below it.");
  cautions.show_texts({first});
  cautions.resize(300, cautions.heightForWidth(300));
  const int lines = cautions.height() / cautions.fontMetrics().lineSpacing();
  CHECK(lines * 300 > cautions.fontMetrics().horizontalAdvance(first));
  CHECK_FALSE(
      cautions.findChild<QToolButton*>(QStringLiteral("grave_more"))->isVisibleTo(&cautions));
}

TEST_CASE("the field with the keyboard stays in sight while the form has less room") {
  InFront shown;
  auto* right = shown.window->findChild<QSplitter*>(QStringLiteral("right"));
  REQUIRE(right != nullptr);
  right->setSizes({600, 60});
  settle();
  auto& length = shown.line("drive.span");
  length.setFocus(Qt::OtherFocusReason);
  settle();
  auto& scroll = shown.find<QScrollArea>("fields_scroll");
  const auto in_sight = [&] {
    const QRect at(length.mapTo(scroll.viewport(), QPoint()), length.size());
    return scroll.viewport()->rect().contains(at.center());
  };
  REQUIRE(in_sight());
  for (const int room : {450, 300, 220}) {
    right->setSizes({room, 660 - room});
    settle();
    CHECK(in_sight());
  }
}

TEST_CASE("a window goes where it is on the screen, frame and all") {
  const QRect screen(0, 0, 1280, 800);
  const QMargins frame(4, 24, 4, 4);
  const QRect room = screen.marginsRemoved(frame);
  CHECK(within_area({0, 0, 1280, 800}, screen, frame) == room);
  CHECK(room.contains(within_area({900, 500, 1000, 700}, screen, frame)));
  CHECK(room.contains(within_area({-700, -300, 1000, 700}, screen, frame)));
  CHECK(within_area({100, 100, 700, 500}, screen, frame) == QRect(100, 100, 700, 500));
}

TEST_CASE("the first window fits the screen, and maximised is remembered") {
  const OwnFolders own;
  {
    Running run;
    const QRect screen = run.window().screen()->availableGeometry();
    CHECK(run.window().width() <= std::max(screen.width(), run.window().minimumSizeHint().width()));
    CHECK_FALSE(run.window().isMaximized());
    run.window().showMaximized();
    Running::settle();
    run.window().close();
  }
  Running run;
  CHECK(run.window().isMaximized());
}

TEST_CASE("a field that is not found is said so, with where it is") {
  InFront shown;
  auto& filter = shown.line("field_filter");
  auto& note = shown.find<QLabel>("field_filter_note");
  filter.setFocus();
  QTest::keyClicks(&filter, QStringLiteral("acceler"));
  CHECK(note.isVisible());
  CHECK(note.text().contains(QStringLiteral("Targets"), Qt::CaseInsensitive));
  QTest::keyClick(&filter, Qt::Key_Return);
  settle();
  CHECK(shown.document().selection().slot == PartSlot::targets);
  CHECK(shown.document().selection().member.contains(QStringLiteral("acceler")));
  CHECK(filter.text().isEmpty());
  CHECK_FALSE(note.isVisible());
  shown.document().select({0, PartSlot::drive, {}, false});
  settle();
  QTest::keyClicks(&filter, QStringLiteral("qqq"));
  CHECK(note.text().contains(QStringLiteral("No field")));
  filter.clear();
  QTest::keyClicks(&filter, QStringLiteral("lead"));
  CHECK_FALSE(note.isVisible());
}

TEST_CASE("the first steps are offered on the start page and in the menu of help") {
  const OwnFolders own;
  Running run;
  CHECK(run.window().is_on_start_page());
  run.press("start_first_steps");
  CHECK(run.window().shown_help() == QStringLiteral("guide/first-steps"));
  InFront shown;
  shown.trigger("help_first_steps");
  CHECK(shown.window->shown_help() == QStringLiteral("guide/first-steps"));
}

TEST_CASE("a long name of what was tried does not widen the fields") {
  InFront shown(sample("plank-router"));
  const auto& view = shown.find<RemediesView>("remedies_view");
  REQUIRE(QTest::qWaitFor([&] { return !view.is_waiting(); }, 5000));
  const int width = view.width();
  QTest::mouseClick(&shown.find<RemedyRow>("remedy_0"), Qt::LeftButton);
  REQUIRE(QTest::qWaitFor([&] { return !view.is_waiting(); }, 5000));
  auto& back = shown.find<QPushButton>("remedies_take_back");
  REQUIRE(back.isVisible());
  CHECK(back.sizePolicy().horizontalPolicy() == QSizePolicy::Ignored);
  CHECK(view.width() == width);
  CHECK_FALSE(shown.document().undo_stack()->undoText().startsWith(QStringLiteral("Try")));
}

TEST_CASE("a written sheet is said so") {
  const Folder folder;
  InFront shown;
  shown.answers.path = folder.path("sheet.pdf");
  shown.trigger("sheet_pdf");
  CHECK(shown.window->banner().text().contains(QStringLiteral("sheet.pdf")));
}

TEST_CASE("what the program began with is not entered by saving it") {
  const Folder folder;
  InFront shown(new_machine());
  const auto origin = [&](PartSlot slot, const char* member) {
    const auto field = field_of(shown.document().machine(), 0, slot, member);
    REQUIRE(field);
    return field->note.origin;
  };
  REQUIRE(origin(PartSlot::supply, "voltage") == Origin::preset);
  REQUIRE(origin(PartSlot::drive, "span") == Origin::preset);
  shown.enter("drive.lead", "10 mm");
  shown.answers.path = folder.path("a.feedwright");
  shown.trigger("save_as");
  shown.trigger("new");
  shown.answers.path = folder.path("a.feedwright");
  REQUIRE(shown.window->files().open(folder.path("a.feedwright")));
  CHECK(origin(PartSlot::supply, "voltage") == Origin::preset);
  CHECK(origin(PartSlot::drive, "span") == Origin::preset);
  CHECK(origin(PartSlot::drive, "lead") == Origin::entered);
}

TEST_CASE("an echo says nothing where only a gap differs") {
  InFront shown;
  shown.document().select({0, PartSlot::motor, {}});
  settle();
  shown.enter("motor.step_angle", "1.8 °");
  CHECK_FALSE(shown.under("motor.step_angle").contains(QStringLiteral("=")));
}

TEST_CASE("the machine's card counts what the list of the machine counts") {
  InFront shown(sample("plank-router"));
  shown.document().select({0, PartSlot::supply, {}, true});
  settle();
  const QString card_says = card(shown, 0).governs.section(QStringLiteral(" · "), -1);
  CHECK(shown.find<QLabel>("machine_title").text().endsWith(card_says));
}
