// SPDX-License-Identifier: GPL-3.0-or-later
#include "limits/grave_cautions.h"
#include "overview/concern_group.h"
#include "overview/concern_row.h"
#include "overview/figure_measure.h"
#include "overview/figure_table.h"
#include "support/axes.h"
#include "support/machine_files.h"
#include "support/window.h"
#include "text/words.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabBar>

using namespace feedwright;
using feedwright::testing::sample;
using namespace feedwright::literals;
using feedwright::testing::ordinary_router;
using feedwright::testing::Shown;

namespace {

/// Three axes with a supply that is enough for each of them, and not for all.
Machine three_axes() {
  Machine machine = ordinary_router();
  auto& motor = std::get<StepperByPoints>(machine.axes.front().motor);
  motor.resistance = Positive<Resistance>::of(1.1_ohm);
  motor.rated_current = Positive<Current>::of(2.8_A);
  motor.frame = "23, 76 mm long";
  machine.axes.front().basics.name = "along the table";
  machine.supply.power = Positive<Power>::of(90_W);
  for (const char* letter : {"Y", "Z"}) {
    machine.axes.push_back(machine.axes.front());
    machine.axes.back().basics.letter = letter;
    machine.axes.back().basics.name = "";
  }
  machine.axes[1].targets.feed = Positive<Velocity>::of(18_m_per_min);
  machine.axes[2].sides.layout = DriveLayout::two_motors;
  return machine;
}

void settle() {
  for (int turn = 0; turn < 5; ++turn) {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents();
  }
}

void choose_machine(Shown& shown) {
  auto& list = shown.find<QListWidget>("axes_list");
  list.setFocus();
  list.setCurrentRow(1);
  list.setCurrentRow(0);
  settle();
}

/// The row of a table by its name's beginning.
int row_named(const FigureTable& table, const char* name) {
  for (int row = 0; row < int(table.content().names.size()); ++row) {
    if (table.content().names[row].startsWith(QString::fromUtf8(name))) {
      return row;
    }
  }
  FAIL("no row " << name);
  return -1;
}

const FigureCell& cell(const FigureTable& table, const char* row, std::size_t column) {
  return table.content().rows[std::size_t(row_named(table, row))][column];
}

/// Left of its slash each figure has the width it needs, beside its sign.
void check_figures_whole(const FigureTable& table) {
  using namespace figure_measure;
  const auto& model = dynamic_cast<const FigureModel&>(*table.model());
  REQUIRE(model.parting());
  for (const auto& row : table.content().rows) {
    for (std::size_t column = 0; column < row.size(); ++column) {
      const FigureCell& cell = row[column];
      const QFont font = font_of(cell, table.font());
      const double sign = cell.verdict ? sign_width(QFontMetrics(font)) : 0.0;
      constexpr int line_of_grid = 1;
      const int room = table.columnWidth(int(column)) - line_of_grid - 2 * side_padding;
      INFO(cell.text.toStdString() << " in column " << column << " of " << room);
      const QFontMetricsF metrics(font);
      if (cell.figure) {
        const int middle = int(room * *model.parting());
        CHECK(sign + metrics.horizontalAdvance(cell.text) <= middle);
        CHECK(metrics.horizontalAdvance(QStringLiteral(" / ") + cell.against) <= room - middle);
      }
    }
  }
}

void click(FigureTable& table, int row, int column) {
  const QModelIndex index = table.model()->index(row, column);
  table.scrollTo(index);
  QTest::mouseClick(table.viewport(), Qt::LeftButton, {}, table.visualRect(index).center());
  settle();
}

} // namespace

TEST_CASE("the machine's card shows the machine, an axis' card the axis again") {
  Shown shown(three_axes());
  CHECK_FALSE(shown.find("machine_view").isVisible());
  CHECK(shown.find("train_view").isVisible());
  choose_machine(shown);
  CHECK(shown.find("machine_view").isVisible());
  CHECK_FALSE(shown.find("train_view").isVisible());
  CHECK(shown.find("supply.voltage").isVisible());
  shown.find<QListWidget>("axes_list").setCurrentRow(2);
  settle();
  CHECK_FALSE(shown.find("machine_view").isVisible());
  CHECK(shown.document().selection().axis == 1);
}

TEST_CASE("supply and controller chosen from an axis' drawing leave the axis in sight") {
  Shown shown(three_axes());
  for (const PartSlot slot : machine_slots) {
    shown.document().select({1, slot, {}});
    CHECK(shown.find("train_view").isVisible());
    CHECK(shown.find<QListWidget>("axes_list").currentRow() == 2);
  }
  choose_machine(shown);
  shown.document().select({1, PartSlot::controller, QStringLiteral("step_rate_limit")});
  CHECK(shown.find("machine_view").isVisible());
  CHECK(shown.find<QListWidget>("axes_list").currentRow() == 0);
}

TEST_CASE("three axes stand side by side with what they reach and want, without scrolling") {
  Shown shown(three_axes());
  choose_machine(shown);
  const auto& table = shown.find<FigureTable>("axes_compared");
  CHECK(table.content().heads == QStringList{QStringLiteral("X · along the table"),
                                             QStringLiteral("Y"), QStringLiteral("Z")});
  CHECK(cell(table, "Feed [m/min]", 0).against == QStringLiteral("3.00"));
  CHECK(cell(table, "Feed [m/min]", 1).against == QStringLiteral("18.00"));
  CHECK(cell(table, "Feed [m/min]", 1).verdict == Verdict::over);
  CHECK(cell(table, "Moved mass [kg]", 0).text == QStringLiteral("20.0"));
  const std::string motor = words::part_name(PartSlot::motor).toStdString();
  const int part = int(table.content().names.indexOf(QString::fromStdString(motor)));
  REQUIRE(part >= 0);
  const auto& motors = table.content().rows[std::size_t(part)];
  CHECK(motors[0].text == QStringLiteral("23, 76 mm long"));
  CHECK(motors[2].text.startsWith(QStringLiteral("2 × ")));
  CHECK_FALSE(table.horizontalScrollBar()->isVisible());
  CHECK_FALSE(table.verticalScrollBar()->isVisible());
  CHECK_FALSE(shown.find<QScrollArea>("machine_scroll").verticalScrollBar()->isVisible());
  CHECK(table.rowViewportPosition(table.model()->rowCount() - 1) < table.viewport()->height());
}

TEST_CASE("three axes and the supply stand in sight in German too, names wrapped where they must") {
  const feedwright::testing::InLanguage german("de");
  Shown shown(feedwright::testing::machine_in("/tests/machines/", "upright"));
  shown.window->resize(1280, 800);
  choose_machine(shown);
  for (const char* name : {"axes_compared", "machine_limits"}) {
    const auto& table = shown.find<FigureTable>(name);
    CAPTURE(name);
    CHECK(table.content().names.size() >= 2);
    CHECK(table.horizontalScrollBar()->maximum() == 0);
    const QHeaderView& names = *table.verticalHeader();
    const QFontMetrics metrics(names.font());
    for (int row = 0; row < names.count(); ++row) {
      const QRect room(0, 0, names.width() - 2, 1000);
      const int needed =
          metrics.boundingRect(room, Qt::TextWordWrap, table.content().names[row]).height();
      CHECK(names.sectionSize(row) >= needed);
    }
  }
}

TEST_CASE("a click on a figure goes to its limit, on a head to its axis, and Enter does the same") {
  Shown shown(three_axes());
  choose_machine(shown);
  auto& table = shown.find<FigureTable>("axes_compared");
  click(table, row_named(table, "Lost motion"), 1);
  CHECK(shown.document().selection().axis == 1);
  CHECK(shown.find("train_view").isVisible());
  choose_machine(shown);
  const auto* heads = table.horizontalHeader();
  QTest::mouseClick(heads->viewport(), Qt::LeftButton, {},
                    QPoint(heads->sectionViewportPosition(2) + 20, heads->height() / 2));
  settle();
  CHECK(shown.document().selection().axis == 2);
  CHECK(shown.document().selection().slot == PartSlot::drive);
  choose_machine(shown);
  table.setFocus();
  table.setCurrentIndex(table.model()->index(row_named(table, "Moved mass"), 0));
  QTest::keyClick(&table, Qt::Key_Return);
  settle();
  CHECK(shown.document().selection().axis == 0);
  CHECK(shown.document().selection().slot == PartSlot::carriage);
}

TEST_CASE("the supply is judged by all axes at once, and its field is a click away") {
  Shown shown(three_axes());
  for (const AxisResults& axis : shown.document().results()) {
    REQUIRE(axis.limit(LimitId::supply_power).verdict != Verdict::over);
  }
  // The machine's card tells it while an axis is in sight.
  const QListWidgetItem* card = shown.find<QListWidget>("axes_list").item(0);
  CHECK(card->data(Qt::AccessibleTextRole).toString().contains(QStringLiteral("supply over")));
  choose_machine(shown);
  auto& limits = shown.find<FigureTable>("machine_limits");
  CHECK(limits.content().rows[0][0].verdict == Verdict::over);
  CHECK(limits.content().rows[1][0].verdict == Verdict::open);
  CHECK(limits.content().rows[1][3].text.contains(QStringLiteral("capacitance")));
  click(limits, 1, 3);
  CHECK(shown.find("machine_view").isVisible());
  CHECK(shown.document().selection().member == QStringLiteral("capacitance"));
  // What is typed there moves the sum at once.
  Machine machine = shown.document().machine();
  machine.supply.power = Positive<Power>::of(1000_W);
  shown.document().edit(machine, QStringLiteral("supply"));
  CHECK(limits.content().rows[0][0].verdict == Verdict::clear);
}

TEST_CASE("the controller's table has outputs, steps and step rates of every axis") {
  Shown shown(three_axes());
  choose_machine(shown);
  shown.find<QTabBar>("machine_tabs").setCurrentIndex(2);
  settle();
  const auto& table = shown.find<FigureTable>("controller_figures");
  CHECK(table.isVisible());
  CHECK(table.content().names ==
        QStringList{QStringLiteral("X"), QStringLiteral("Y"), QStringLiteral("Z")});
  CHECK(table.content().rows[2][0].text == QStringLiteral("2"));
  // 200 full steps of 8 microsteps on a lead of 5 mm: 320 to the millimetre
  CHECK(table.content().rows[0][1].text == QStringLiteral("320"));
}

TEST_CASE("Ctrl+C gives the table as text with tabulators, units in its heads") {
  Shown shown(three_axes());
  choose_machine(shown);
  auto& table = shown.find<FigureTable>("axes_compared");
  table.setFocus();
  shown.trigger("axes_compared_copy");
  const QStringList lines = QApplication::clipboard()->text().split(QLatin1Char('\n'));
  CHECK(lines.front() == QStringLiteral("\tX · along the table\tY\tZ"));
  for (const QString& line : lines) {
    CHECK((line.isEmpty() || line.count(QLatin1Char('\t')) == 3));
  }
  CHECK(lines.filter(QStringLiteral("Feed [m/min], wanted\t3.00\t18.00\t3.00")).size() == 1);
  CHECK(lines.filter(QStringLiteral("Feed [m/min], reads\tclear\tover")).size() == 1);
}

TEST_CASE("figures stand in the units the machine is typed in") {
  Machine machine = three_axes();
  const AnyQuantity feed{Kind::velocity, 120.0 * 0.0254 / 60.0};
  REQUIRE(set_field(machine, 0, PartSlot::targets, "feed", feed, {"120 in/min", Origin::entered}));
  Shown shown(machine);
  choose_machine(shown);
  const auto& table = shown.find<FigureTable>("axes_compared");
  CHECK(cell(table, "Feed [in/min]", 0).against == QStringLiteral("120"));
}

TEST_CASE("a caution is answered in its place, kept with the machine, undone and taken away") {
  Shown shown(three_axes());
  choose_machine(shown);
  const char* key = "X_long_open_screw_drive";
  const auto named = [key](const char* what) { return std::string(what) + "_" + key; };
  auto& begin = shown.find<QPushButton>(named("answer").c_str());
  CHECK_FALSE(shown.find<QPushButton>(named("remove_answer").c_str()).isVisible());
  begin.click();
  auto& note = shown.find<QPlainTextEdit>(named("answer_note").c_str());
  auto& keep = shown.find<QPushButton>(named("keep_answer").c_str());
  CHECK(note.isVisible());
  CHECK_FALSE(keep.isEnabled());
  note.setPlainText(QString(int(longest_answer) + 1, QLatin1Char('a')));
  CHECK_FALSE(keep.isEnabled());
  note.setPlainText(QStringLiteral("Covered by <b>bellows</b>,\nboth sides."));
  keep.click();
  settle();
  REQUIRE(shown.document().machine().axes.front().answers.size() == 1);
  CHECK(shown.document().undo_stack()->count() == 1);
  CHECK(shown.document().undo_stack()->undoText().contains(QStringLiteral("answer")));
  auto& text = shown.find<QLabel>(named("answer_text").c_str());
  CHECK(text.isVisible());
  CHECK(text.text().contains(QStringLiteral("answered: Covered by <b>bellows</b>")));
  CHECK(text.textFormat() == Qt::PlainText);
  CHECK(shown.find<QLabel>("concerns_answered").isVisible());
  // The caution itself stays, here and with the limits.
  CHECK(
      shown.find<QLabel>(named("concern_text").c_str()).text().contains(QStringLiteral("900 mm")));
  shown.find<QListWidget>("axes_list").setCurrentRow(1);
  settle();
  bool told = false;
  for (const auto* label : shown.find("limits_view").findChildren<QLabel*>()) {
    told = told || (label->isVisible() && label->text().contains(QStringLiteral("bellows")) &&
                    label->text().contains(QStringLiteral("900 mm")));
  }
  CHECK(told);
  shown.trigger("undo");
  CHECK(shown.document().machine().axes.front().answers.empty());
  shown.trigger("redo");
  choose_machine(shown);
  shown.find<QPushButton>(named("remove_answer").c_str()).click();
  settle();
  CHECK(shown.document().machine().axes.front().answers.empty());
  CHECK_FALSE(shown.find<QLabel>("concerns_answered").isVisible());
}

TEST_CASE("the same caution at many places stands once, and each place is answered for itself") {
  Shown shown(feedwright::testing::machine_in("/tests/machines/", "motors"));
  choose_machine(shown);
  const auto rows_in_sight = [&] {
    int rows = 0;
    for (const auto* row : shown.find("concern_list").findChildren<ConcernRow*>()) {
      rows += row->isVisible() ? 1 : 0;
    }
    return rows;
  };
  const auto all = concerns_of(shown.document().machine(), shown.document().results(),
                               size_machine(shown.document().machine(), shown.document().results()))
                       .list.size();
  REQUIRE(all == 22);
  CHECK(rows_in_sight() == 7);
  auto& heading = shown.find<ConcernGroup>("concerns_typical_figures");
  const auto& text = shown.find<QLabel>("concerns_text_typical_figures");
  CHECK(heading.isVisible());
  CHECK(heading.rows().size() == 10);
  CHECK(text.text().contains(QStringLiteral("X, Y, Z, A, B · Motor, Final drive")));
  auto& unfold = shown.find<QPushButton>("unfold_typical_figures");
  CHECK(unfold.text().contains(QStringLiteral("10")));
  CHECK(unfold.accessibleName().contains(QStringLiteral("closed")));
  // What stands alone of a kind is above, what weighs more too.
  CHECK(shown.find("concern_text_A_curve_reckoned_anew_motor")
            .mapTo(shown.window.get(), QPoint())
            .y() < text.mapTo(shown.window.get(), QPoint()).y());
  unfold.click();
  settle();
  CHECK(unfold.accessibleName().contains(QStringLiteral("open")));
  CHECK(rows_in_sight() == 17);
  shown.find<QPushButton>("answer_Y_typical_figures_motor").click();
  shown.find<QPlainTextEdit>("answer_note_Y_typical_figures_motor")
      .setPlainText(QStringLiteral("Measured."));
  shown.find<QPushButton>("keep_answer_Y_typical_figures_motor").click();
  settle();
  const Machine& machine = shown.document().machine();
  for (const Axis& axis : machine.axes) {
    CHECK(axis.answers.size() == (axis.basics.letter == "Y" ? 1U : 0U));
  }
  CHECK(machine.axes[1].answers.front().part == "motor");
  CHECK(heading.rows().size() == 9);
  CHECK(text.text().contains(QStringLiteral("Y · Final drive")));
  CHECK_FALSE(text.text().contains(QStringLiteral("Y · Motor")));
  CHECK(shown.find<QLabel>("answer_text_Y_typical_figures_motor").isVisible());
  // Folded again, each place is reached by its door still: the first by the heading's own.
  unfold.click();
  settle();
  CHECK_FALSE(shown.find("show_B_typical_figures_drive").isVisible());
  shown.find<QPushButton>("show_all_typical_figures").click();
  settle();
  CHECK(shown.document().selection().axis == 0);
  CHECK(shown.document().selection().slot == PartSlot::motor);
}

TEST_CASE("an answer that is being written keeps the heading above it unfolded") {
  Shown shown(feedwright::testing::machine_in("/tests/machines/", "motors"));
  choose_machine(shown);
  shown.find<QPushButton>("answer_Z_typical_figures_drive").click();
  shown.find<QPlainTextEdit>("answer_note_Z_typical_figures_drive")
      .setPlainText(QStringLiteral("not yet"));
  settle();
  CHECK(shown.find("answer_note_Z_typical_figures_drive").isVisible());
  shown.find<QPushButton>("unfold_typical_figures").click();
  settle();
  CHECK(shown.find("answer_note_Z_typical_figures_drive").isVisible());
}

TEST_CASE("with 18 point letters each axis can be read, and every button and tab is whole") {
  const QFont kept = QApplication::font();
  QFont large = kept;
  large.setPointSize(18);
  QApplication::setFont(large);
  for (const Language& language : languages()) {
    const feedwright::testing::InLanguage spoken(language.code);
    for (const char* name : {"plank-router", "clock-mill", "sign-engraver"}) {
      INFO(language.code << " " << name);
      Shown shown(sample(name), {1280, 800});
      choose_machine(shown);
      const auto& table = shown.find<FigureTable>("axes_compared");
      for (int column = 0; column < table.model()->columnCount(); ++column) {
        CHECK(table.columnWidth(column) <= table.viewport()->width());
      }
      const auto& page = shown.find<QScrollArea>("machine_page_0");
      CHECK(page.widget()->width() <= page.viewport()->width());
      for (const auto* button : shown.find("machine_view").findChildren<QPushButton*>()) {
        if (button->isVisible()) {
          INFO(button->text().toStdString());
          const QPoint at = button->mapTo(&shown.find("machine_view"), QPoint());
          CHECK(at.x() >= 0);
          CHECK(at.x() + button->width() <= shown.find("machine_view").width());
          CHECK(button->fontMetrics().horizontalAdvance(button->text()) <= button->width());
        }
      }
      const auto& tabs = shown.find<QTabBar>("machine_tabs");
      const auto& box = shown.find<QComboBox>("machine_box");
      CHECK(tabs.isVisible() != box.isVisible());
      CHECK((!tabs.isVisible() || tabs.tabRect(tabs.count() - 1).right() <= tabs.width()));
      CHECK(box.fontMetrics().horizontalAdvance(box.currentText()) < box.sizeHint().width());
      CHECK((!box.isVisible() || box.width() >= box.sizeHint().width()));
    }
  }
  QApplication::setFont(kept);
}

TEST_CASE("the keyboard goes through what deserves care from the top down, also after an answer") {
  Shown shown(three_axes());
  choose_machine(shown);
  const auto check_order = [&] {
    QList<int> places;
    const QWidget* list = &shown.find("concern_list");
    for (QWidget* at = shown.window->nextInFocusChain(); at != shown.window.get();
         at = at->nextInFocusChain()) {
      if (at->isVisible() && at->objectName().startsWith(QStringLiteral("show_")) &&
          list->isAncestorOf(at)) {
        places << at->mapTo(list, QPoint()).y();
      }
    }
    CHECK(places.size() > 3);
    // The chain is a ring that may begin anywhere in the list.
    int falls = 0;
    for (qsizetype i = 0; i < places.size(); ++i) {
      falls += places[(i + 1) % places.size()] < places[i];
    }
    CHECK(falls == 1);
  };
  check_order();
  Machine machine = shown.document().machine();
  machine.axes.front().answers = {
      {AnswerTo::finding, "long_open_screw", "drive", "covered", "900 mm", "", {}}};
  shown.document().edit(machine, QStringLiteral("answer"));
  settle();
  check_order();
}

TEST_CASE("an answer says so when its figures have moved") {
  Shown shown(three_axes());
  choose_machine(shown);
  shown.find<QPushButton>("answer_X_long_open_screw_drive").click();
  shown.find<QPlainTextEdit>("answer_note_X_long_open_screw_drive")
      .setPlainText(QStringLiteral("Covered."));
  QTest::keyClick(&shown.find("answer_note_X_long_open_screw_drive"), Qt::Key_Return,
                  Qt::ControlModifier);
  settle();
  Machine machine = shown.document().machine();
  testing::screw_of(machine.axes.front()).span = Positive<Length>::of(1000_mm);
  shown.document().edit(machine, QStringLiteral("span"));
  settle();
  const QString text = shown.find<QLabel>("answer_text_X_long_open_screw_drive").text();
  CHECK(text.contains(QStringLiteral("900 mm")));
  CHECK(text.contains(QStringLiteral("1000 mm")));
  testing::screw_of(machine.axes.front()).span = Positive<Length>::of(800_mm);
  // What is no longer found keeps its answer until somebody takes it away.
  testing::screw_of(machine.axes.front()).span = Positive<Length>::of(480_mm);
  machine.axes.front().basics.travel = Positive<Length>::of(300_mm);
  shown.document().edit(machine, QStringLiteral("short"));
  settle();
  shown.find<QPushButton>("remove_answer_idle_X_long_open_screw_drive").click();
  settle();
  CHECK(shown.document().machine().axes.front().answers.empty());
}

TEST_CASE("what is being written stays while the machine changes elsewhere, and Escape leaves it") {
  Shown shown(three_axes());
  choose_machine(shown);
  shown.find<QPushButton>("answer_X_long_open_screw_drive").click();
  auto& note = shown.find<QPlainTextEdit>("answer_note_X_long_open_screw_drive");
  note.setPlainText(QStringLiteral("half a sent"));
  Machine machine = shown.document().machine();
  machine.supply.power = Positive<Power>::of(1000_W);
  shown.document().edit(machine, QStringLiteral("supply"));
  settle();
  CHECK(note.toPlainText() == QStringLiteral("half a sent"));
  CHECK(note.isVisible());
  QTest::keyClick(&note, Qt::Key_Escape);
  CHECK_FALSE(note.isVisible());
  CHECK(shown.document().machine().axes.front().answers.empty());
}

TEST_CASE("an answer that is being written is told of on saving and asked about on closing") {
  const testing::Folder folder;
  Shown shown(three_axes());
  shown.answers.path = folder.path("a.feedwright");
  choose_machine(shown);
  shown.find<QPushButton>("answer_X_long_open_screw_drive").click();
  auto& note = shown.find<QPlainTextEdit>("answer_note_X_long_open_screw_drive");
  QTest::keyClicks(&note, QStringLiteral("Covered."));
  // Asking for it again begins nothing anew.
  shown.find<QPushButton>("answer_X_long_open_screw_drive").click();
  CHECK(note.toPlainText() == QStringLiteral("Covered."));
  shown.trigger("save");
  CHECK(folder.bytes("a.feedwright").find("Covered.") == std::string::npos);
  CHECK(shown.window->banner().text().contains(QStringLiteral("answer")));
  CHECK_FALSE(shown.window->close());
  shown.find<QListWidget>("axes_list").setCurrentRow(2);
  settle();
  shown.find<QTabBar>("machine_tabs").setCurrentIndex(1);
  shown.find<QPushButton>("show_typed").click();
  settle();
  CHECK(note.isVisible());
  CHECK(note.hasFocus());
  CHECK(note.toPlainText() == QStringLiteral("Covered."));
  CHECK_FALSE(shown.window->close());
  shown.find<QPushButton>("keep_answer_X_long_open_screw_drive").click();
  settle();
  REQUIRE(shown.document().machine().axes[0].answers.size() == 1);
  CHECK(shown.document().machine().axes[0].answers[0].note == "Covered.");
  CHECK(shown.document().pending().empty());
  shown.trigger("save");
  CHECK(folder.bytes("a.feedwright").find("Covered.") != std::string::npos);
  CHECK(shown.window->close());
}

TEST_CASE("an answer that is being written can be left unwritten on closing") {
  Shown shown(three_axes());
  choose_machine(shown);
  shown.find<QPushButton>("answer_X_long_open_screw_drive").click();
  QTest::keyClicks(&shown.find("answer_note_X_long_open_screw_drive"), QStringLiteral("Cov"));
  CHECK_FALSE(shown.window->close());
  shown.find<QPushButton>("close_without_typed").click();
  settle();
  CHECK_FALSE(shown.window->isVisible());
}

TEST_CASE("an answer that is being written waits while its finding is gone, and comes back") {
  Shown shown(three_axes());
  choose_machine(shown);
  shown.find<QPushButton>("answer_X_long_open_screw_drive").click();
  QTest::keyClicks(&shown.find("answer_note_X_long_open_screw_drive"),
                   QStringLiteral("half a sent"));
  Machine machine = shown.document().machine();
  testing::screw_of(machine.axes.front()).span = Positive<Length>::of(480_mm);
  machine.axes.front().basics.travel = Positive<Length>::of(300_mm);
  shown.document().edit(machine, QStringLiteral("short"));
  settle();
  CHECK(shown.window->findChild<QWidget*>(QStringLiteral("answer_note_X_long_open_screw_drive")) ==
        nullptr);
  auto& lost = shown.find<QPlainTextEdit>("answer_note_lost_X_long_open_screw_drive");
  CHECK(lost.isVisible());
  CHECK(lost.toPlainText() == QStringLiteral("half a sent"));
  CHECK_FALSE(shown.find("keep_answer_lost_X_long_open_screw_drive").isEnabled());
  CHECK_FALSE(shown.find("show_lost_X_long_open_screw_drive").isVisible());
  CHECK_FALSE(shown.window->close());
  shown.find<QPushButton>("show_typed").click();
  settle();
  CHECK(lost.hasFocus());
  QTest::keyClicks(&lost, QStringLiteral("ence"));
  shown.trigger("undo");
  choose_machine(shown);
  auto& note = shown.find<QPlainTextEdit>("answer_note_X_long_open_screw_drive");
  CHECK(note.isVisible());
  CHECK(note.toPlainText() == QStringLiteral("half a sentence"));
  shown.find<QPushButton>("keep_answer_X_long_open_screw_drive").click();
  settle();
  CHECK(shown.document().machine().axes[0].answers.at(0).note == "half a sentence");
}

TEST_CASE("what is no longer found and was being answered goes when it is cancelled") {
  Shown shown(three_axes());
  choose_machine(shown);
  shown.find<QPushButton>("answer_X_long_open_screw_drive").click();
  QTest::keyClicks(&shown.find("answer_note_X_long_open_screw_drive"), QStringLiteral("half"));
  Machine machine = shown.document().machine();
  testing::screw_of(machine.axes.front()).span = Positive<Length>::of(480_mm);
  machine.axes.front().basics.travel = Positive<Length>::of(300_mm);
  shown.document().edit(machine, QStringLiteral("short"));
  settle();
  shown.find<QPushButton>("cancel_answer_lost_X_long_open_screw_drive").click();
  settle();
  CHECK(shown.window->findChild<QWidget*>(
            QStringLiteral("answer_note_lost_X_long_open_screw_drive")) == nullptr);
  CHECK(shown.document().pending().empty());
}

TEST_CASE("an answer that is being written goes with its axis and its letter") {
  Shown shown(three_axes());
  choose_machine(shown);
  shown.find<QPushButton>("answer_X_long_open_screw_drive").click();
  QTest::keyClicks(&shown.find("answer_note_X_long_open_screw_drive"), QStringLiteral("half"));
  shown.document().select({0, PartSlot::axis, {}});
  shown.trigger("move_axis_down");
  auto& letter = shown.find<QLineEdit>("axis.letter");
  letter.setFocus();
  letter.selectAll();
  QTest::keyClicks(&letter, QStringLiteral("U"));
  QTest::keyClick(&letter, Qt::Key_Return);
  choose_machine(shown);
  CHECK(shown.document().machine().axes[1].basics.letter == "U");
  auto& note = shown.find<QPlainTextEdit>("answer_note_U_long_open_screw_drive");
  CHECK(note.isVisible());
  CHECK(note.toPlainText() == QStringLiteral("half"));
  CHECK_FALSE(shown.find("answer_note_Y_long_open_screw_drive").isVisible());
  // Undo takes letter and place back, and the text goes along.
  shown.trigger("undo");
  shown.trigger("undo");
  choose_machine(shown);
  CHECK(shown.find<QPlainTextEdit>("answer_note_X_long_open_screw_drive").toPlainText() ==
        QStringLiteral("half"));
  CHECK_FALSE(shown.find("answer_note_Y_long_open_screw_drive").isVisible());
}

TEST_CASE("an answer that is being written outlives the window when the language changes") {
  Shown shown(three_axes());
  choose_machine(shown);
  shown.find<QPushButton>("answer_X_long_open_screw_drive").click();
  QTest::keyClicks(&shown.find("answer_note_X_long_open_screw_drive"), QStringLiteral("half"));
  auto document = shown.window->release_document();
  shown.window = std::make_unique<MainWindow>(std::move(document));
  shown.window->show();
  choose_machine(shown);
  auto& note = shown.find<QPlainTextEdit>("answer_note_X_long_open_screw_drive");
  CHECK(note.isVisible());
  CHECK(note.toPlainText() == QStringLiteral("half"));
}

TEST_CASE("a grave caution that is answered keeps its sign and its warning") {
  Machine machine = three_axes();
  machine.axes.front().targets.feed = Positive<Velocity>::of(30_m_per_min);
  Shown shown(machine);
  choose_machine(shown);
  const char* key = "X_whip_beyond_critical_drive";
  shown.find<QPushButton>((std::string("answer_") + key).c_str()).click();
  CHECK(shown.find<QLabel>((std::string("answer_help_") + key).c_str())
            .text()
            .contains(QStringLiteral("local rules")));
  shown.find<QPlainTextEdit>((std::string("answer_note_") + key).c_str())
      .setPlainText(QStringLiteral("never run so fast"));
  shown.find<QPushButton>((std::string("keep_answer_") + key).c_str()).click();
  settle();
  CHECK(shown.find<QLabel>((std::string("concern_text_") + key).c_str())
            .text()
            .startsWith(QStringLiteral("▲ grave")));
  shown.find<QListWidget>("axes_list").setCurrentRow(1);
  settle();
  const auto& cautions = shown.find<GraveCautions>("grave_cautions");
  CHECK(cautions.isVisible());
  // Each caution is a line that starts with its sign; its answer follows.
  const QStringList lines = cautions.accessibleName().split(QLatin1Char('\n'));
  bool told = false;
  for (qsizetype i = 1; i < lines.size(); ++i) {
    told = told || (lines[i].contains(QStringLiteral("never run so fast")) &&
                    lines[i - 1].startsWith(QStringLiteral("▲ ")) &&
                    lines[i - 1].contains(QStringLiteral(": ")));
  }
  INFO(cautions.accessibleName().toStdString());
  CHECK(told);
}

TEST_CASE("while nothing can be computed each fault is listed with a door to its field") {
  Machine machine = three_axes();
  testing::screw_of(machine.axes[1]).core_diameter = Positive<Length>::of(40_mm);
  Shown shown(machine);
  choose_machine(shown);
  CHECK(shown.find<QLabel>("machine_not_computed").isVisible());
  CHECK(shown.find<QLabel>("machine_fault_0").isVisible());
  shown.find<QPushButton>("show_fault_0").click();
  settle();
  CHECK(shown.document().selection().axis == 1);
  CHECK(shown.document().selection().member == QStringLiteral("core_diameter"));
}

TEST_CASE("whatever takes the keyboard in the machine view has a name, and no word is cut off") {
  for (const char* name : {"plank-router", "clock-mill", "sign-engraver"}) {
    INFO(name);
    Shown shown(sample(name));
    choose_machine(shown);
    for (int page = 0; page < 4; ++page) {
      shown.find<QTabBar>("machine_tabs").setCurrentIndex(page);
      settle();
      for (const QWidget* widget : shown.find("machine_view").findChildren<QWidget*>()) {
        const bool reached = widget->isVisible() && (widget->focusPolicy() & Qt::TabFocus) != 0 &&
                             widget->objectName() != QLatin1String("qt_scrollarea_viewport") &&
                             !widget->inherits("QHeaderView");
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        INFO(widget->metaObject()->className() << widget->objectName().toStdString());
        CHECK((!reached || !widget->accessibleName().isEmpty() ||
               (button != nullptr && !button->text().isEmpty())));
        if (button != nullptr && button->isVisible()) {
          CHECK(button->fontMetrics().horizontalAdvance(button->text()) <= button->width());
        }
        if (const auto* label = qobject_cast<const QLabel*>(widget);
            label != nullptr && label->isVisible() && !label->text().isEmpty()) {
          INFO(label->text().toStdString());
          CHECK(label->heightForWidth(label->width()) <= label->height());
        }
      }
    }
  }
}

TEST_CASE("the machine view survives any size, many axes, large letters and mirrored layout") {
  Machine machine = three_axes();
  for (const char* letter : {"A", "B", "C", "U", "V", "W"}) {
    machine.axes.push_back(machine.axes.front());
    machine.axes.back().basics.letter = letter;
  }
  Shown shown(machine);
  choose_machine(shown);
  CHECK(shown.find<FigureTable>("axes_compared").horizontalScrollBar()->isVisible());
  const QFont kept = QApplication::font();
  QFont large = kept;
  large.setPointSize(18);
  QApplication::setFont(large);
  QApplication::setLayoutDirection(Qt::RightToLeft);
  for (const QSize size : {QSize(1, 1), QSize(600, 300), QSize(1920, 1080), QSize(1280, 800)}) {
    shown.window->resize(size);
    settle();
    CHECK_FALSE(shown.window->grab().isNull());
  }
  QApplication::setLayoutDirection(Qt::LeftToRight);
  QApplication::setFont(kept);
}

TEST_CASE("the machine view settles at every width, bar or no bar") {
  for (const char* name : {"direct-screws", "slaved-gantry", "motors"}) {
    Shown shown(feedwright::testing::machine_in("/tests/machines/", name));
    shown.document().select({0, PartSlot::supply, {}, true});
    settle();
    for (int width = 900; width < 1700; width += 11) {
      shown.window->resize(width, 800);
      settle();
      check_figures_whole(shown.find<FigureTable>("axes_compared"));
    }
    CHECK(shown.find<FigureTable>("axes_compared").isVisible());
  }
}

TEST_CASE("what the machine's table says of parts is parted between words, not within a quantity") {
  Shown shown(feedwright::testing::machine_in("/tests/machines/", "upright"));
  choose_machine(shown);
  const auto& table = shown.find<FigureTable>("axes_compared");
  int units = 0;
  for (const auto& row : table.content().rows) {
    for (const FigureCell& each : row) {
      // Where a line may end.
      for (const QString& piece : figure_measure::words_of(each).split(QLatin1Char(' '))) {
        INFO(each.text.toStdString());
        CHECK(piece != QStringLiteral("N·m"));
        CHECK_FALSE(piece.startsWith(QStringLiteral("mm")));
        units += piece.endsWith(QStringLiteral("N·m")) ? 1 : 0;
      }
    }
  }
  CHECK(units == 3);
}
