// SPDX-License-Identifier: GPL-3.0-or-later

// The form as a builder uses it: typed text that waits, sections, finding, keyboard, origins.

#include "fields/field_section.h"
#include "fields/fields_panel.h"
#include "support/machine_files.h"
#include "support/own_home.h"
#include "support/window.h"
#include "text/field_guide.h"
#include "text/words.h"

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QRegularExpression>
#include <QScrollArea>
#include <QSignalSpy>
#include <QTableWidget>
#include <QToolButton>
#include <QWheelEvent>

using namespace feedwright;
using feedwright::testing::Environment;
using feedwright::testing::Folder;
using feedwright::testing::Shown;

namespace {

void type_into(QLineEdit& edit, const char* text) {
  edit.setFocus();
  edit.selectAll();
  QTest::keyClicks(&edit, QString::fromUtf8(text));
  QTest::keyClick(&edit, Qt::Key_Return);
}

void choose(Shown& shown, PartSlot slot, const char* member = "") {
  shown.document().select({0, slot, QString::fromUtf8(member)});
  QCoreApplication::processEvents();
}

QString text_in(Shown& shown, const char* field) {
  return shown.find<QLineEdit>(field).text();
}

QString note_under(Shown& shown, const char* field) {
  const std::string name = std::string(field) + ".note";
  return shown.find<QLabel>(name.c_str()).text();
}

/// Every part of the machine with every type that may stand in its place.
template <class F>
void for_each_form(F&& look) {
  for (const PartSlot slot : axis_slots) {
    auto types = part_types(slot);
    const std::size_t count = std::max<std::size_t>(types.size(), 1);
    for (std::size_t i = 0; i < count; ++i) {
      Machine machine = testing::ordinary_router();
      if (!types.empty()) {
        set_part_type(machine, 0, slot, types[i]);
      }
      Shown shown(machine);
      choose(shown, slot);
      look(shown, slot);
    }
  }
}

} // namespace

TEST_CASE("a refused text waits for its field while other parts and axes are looked at") {
  Machine machine = testing::ordinary_router();
  machine.axes.push_back(machine.axes[0]);
  Shown shown(machine);
  type_into(shown.find<QLineEdit>("drive.lead"), "five");
  choose(shown, PartSlot::motor);
  CHECK(shown.find<QComboBox>("part_chooser")
            .itemText(shown.find<QComboBox>("part_chooser").findData(int(PartSlot::drive)))
            .contains(QStringLiteral("waits")));
  shown.document().select({1, PartSlot::drive, {}});
  QCoreApplication::processEvents();
  CHECK(text_in(shown, "drive.lead") == QStringLiteral("5 mm"));
  type_into(shown.find<QLineEdit>("drive.span"), "800 mm");
  shown.trigger("undo");
  choose(shown, PartSlot::drive);
  CHECK(text_in(shown, "drive.lead") == QStringLiteral("five"));
  CHECK_FALSE(note_under(shown, "drive.lead").isEmpty());
  QTest::keyClick(&shown.find<QLineEdit>("drive.lead"), Qt::Key_Escape);
  CHECK(text_in(shown, "drive.lead") == QStringLiteral("5 mm"));
  CHECK(shown.document().pending().empty());
}

TEST_CASE("a refused text goes with its axis and is given up with it") {
  Machine machine = testing::ordinary_router();
  machine.axes.push_back(machine.axes[0]);
  machine.axes[1].basics.letter = "Y";
  MachineDocument document(machine);
  document.pending().keep(TypedAt::of(1, PartSlot::drive, "lead"), QStringLiteral("five"));
  Machine without_first = document.machine();
  without_first.axes.erase(without_first.axes.begin());
  document.edit(without_first, QStringLiteral("axis removed"));
  CHECK(document.pending().at(TypedAt::of(0, PartSlot::drive, "lead")) == QStringLiteral("five"));
  document.undo_stack()->undo();
  CHECK(document.pending().at(TypedAt::of(1, PartSlot::drive, "lead")) == QStringLiteral("five"));
  Machine without_second = document.machine();
  without_second.axes.pop_back();
  document.edit(without_second, QStringLiteral("axis removed"));
  CHECK(document.pending().empty());
}

TEST_CASE("a refused text outlives the window when the language changes") {
  Shown shown;
  type_into(shown.find<QLineEdit>("drive.lead"), "five");
  auto document = shown.window->release_document();
  shown.window = std::make_unique<MainWindow>(std::move(document));
  shown.window->show();
  CHECK(text_in(shown, "drive.lead") == QStringLiteral("five"));
}

TEST_CASE("saving takes what is typed and says what could not be taken") {
  const Folder folder;
  Shown shown;
  shown.answers.path = folder.path("a.feedwright");
  auto& span = shown.find<QLineEdit>("drive.span");
  span.setFocus();
  span.selectAll();
  QTest::keyClicks(&span, QStringLiteral("850 mm"));
  shown.trigger("save");
  CHECK(folder.bytes("a.feedwright").find("850 mm") != std::string::npos);
  CHECK_FALSE(shown.window->banner().isVisible());
  type_into(shown.find<QLineEdit>("drive.lead"), "five");
  shown.trigger("save");
  CHECK(folder.bytes("a.feedwright").find("five") == std::string::npos);
  CHECK(shown.window->banner().isVisible());
  CHECK(shown.window->banner().text().contains(QStringLiteral("lead")));
}

TEST_CASE("closing over a refused text asks first, without a dialog") {
  Shown shown;
  type_into(shown.find<QLineEdit>("drive.lead"), "five");
  CHECK_FALSE(shown.window->close());
  CHECK(shown.window->banner().isVisible());
  choose(shown, PartSlot::motor);
  QTest::mouseClick(&shown.find<QPushButton>("show_typed"), Qt::LeftButton);
  QCoreApplication::processEvents();
  CHECK(text_in(shown, "drive.lead") == QStringLiteral("five"));
  CHECK_FALSE(shown.window->close());
  QTest::mouseClick(&shown.find<QPushButton>("close_without_typed"), Qt::LeftButton);
  QCoreApplication::processEvents();
  CHECK_FALSE(shown.window->isVisible());
}

TEST_CASE("a refused cell stays as typed while the other cells of its table count") {
  Shown shown;
  choose(shown, PartSlot::motor);
  auto& table = shown.find<QTableWidget>("points");
  table.item(1, 1)->setText(QStringLiteral("a lot"));
  table.item(2, 1)->setText(QStringLiteral("1.4 N·m"));
  const auto& points = std::get<StepperByPoints>(shown.document().machine().axes[0].motor).points;
  CHECK(si_value(*points[1].torque) == Approx(1.6));
  CHECK(si_value(*points[2].torque) == Approx(1.4));
  CHECK(table.item(1, 1)->text() == QStringLiteral("a lot"));
  CHECK_FALSE(note_under(shown, "motor.points").isEmpty());
  CHECK(shown.document().undo_stack()->undoText().contains(QStringLiteral("1.45 N·m → 1.4 N·m")));
  choose(shown, PartSlot::drive);
  choose(shown, PartSlot::motor);
  CHECK(shown.find<QTableWidget>("points").item(1, 1)->text() == QStringLiteral("a lot"));
  shown.find<QTableWidget>("points").item(1, 1)->setText(QStringLiteral("1.5 N·m"));
  CHECK(shown.document().pending().empty());
}

TEST_CASE("a refused cell whose row is gone meanwhile is given up when its table comes in sight") {
  Shown shown;
  choose(shown, PartSlot::motor);
  auto& points = std::get<StepperByPoints>(shown.document().machine().axes[0].motor).points;
  const auto last = std::ssize(points) - 1;
  const std::size_t rows = points.size();
  choose(shown, PartSlot::drive);
  shown.document().pending().keep(
      TypedAt::cell(TypedAt::of(0, PartSlot::motor, "points"), int(last) + 3, 1),
      QStringLiteral("a lot"));
  QCoreApplication::processEvents();
  choose(shown, PartSlot::motor);
  CHECK(shown.document().pending().empty());
  CHECK(std::size_t(shown.find<QTableWidget>("points").rowCount()) >= rows);
}

TEST_CASE("load cases stand side by side with their fields down, within the panel's width") {
  Shown shown;
  choose(shown, PartSlot::duty);
  for (int i = 0; i < 2; ++i) {
    QTest::mouseClick(&shown.find<QPushButton>("load_cases_add"), Qt::LeftButton);
  }
  QCoreApplication::processEvents();
  auto& table = shown.find<QTableWidget>("load_cases");
  CHECK(table.rowCount() == 11);
  REQUIRE(table.columnCount() == 2);
  CHECK(table.columnViewportPosition(1) + table.columnWidth(1) <= table.viewport()->width());
  table.item(3, 1)->setText(QStringLiteral("90 N"));
  CHECK(si_value(**shown.document().machine().axes[0].duty.load_cases[1].thrust) == Approx(90.0));
  table.setCurrentCell(2, 0);
  QTest::mouseClick(&shown.find<QPushButton>("load_cases_remove"), Qt::LeftButton);
  REQUIRE(shown.document().machine().axes[0].duty.load_cases.size() == 1);
  CHECK(shown.document().machine().axes[0].duty.load_cases[0].thrust);
}

TEST_CASE("a folded section says what it holds and opens for the field that is asked for") {
  Shown shown;
  auto& safety = shown.find<FieldSection>("section.drive.safety");
  CHECK(shown.find<FieldSection>("section.drive.thread").is_open());
  CHECK_FALSE(safety.is_open());
  CHECK_FALSE(shown.find<QLabel>("section.drive.safety.summary").text().isEmpty());
  choose(shown, PartSlot::drive, "whip_share");
  CHECK(safety.is_open());
  CHECK(shown.find<QLineEdit>("drive.whip_share").isVisible());
  auto& head = shown.find<QToolButton>("section.drive.thread.head");
  head.setFocus();
  QTest::keyClick(&head, Qt::Key_Space);
  CHECK_FALSE(shown.find<FieldSection>("section.drive.thread").is_open());
  choose(shown, PartSlot::motor);
  choose(shown, PartSlot::drive);
  CHECK_FALSE(shown.find<FieldSection>("section.drive.thread").is_open());
}

TEST_CASE("a field that an open limit wants says so, in a section that is open") {
  Shown shown;
  CHECK_FALSE(testing::screw_of(shown.document().machine().axes[0]).speed_limit);
  const QString note = note_under(shown, "drive.speed_limit");
  CHECK(note.contains(words::limit_name(LimitId::screw_speed)));
  CHECK(shown.find<FieldSection>("section.drive.ratings").is_open());
  type_into(shown.find<QLineEdit>("drive.speed_limit"), "3000 rpm");
  CHECK_FALSE(note_under(shown, "drive.speed_limit").contains(QStringLiteral("wanted")));
}

TEST_CASE("every section of every part has a title, every field a name, a help and a description") {
  for_each_form([](Shown& shown, PartSlot slot) {
    for (const FieldView& field : fields_of(shown.document().machine(), 0, slot)) {
      INFO(slot_name(slot) << '.' << field.info.member);
      if (!field.info.section.empty()) {
        CHECK_FALSE(words::section_name(slot, field.info.section).isEmpty());
      }
      QWidget* editor = shown.window->fields().editor_of(slot, field.info.member);
      REQUIRE(editor != nullptr);
      CHECK_FALSE(editor->accessibleName().isEmpty());
      CHECK_FALSE(editor->accessibleDescription().isEmpty());
    }
  });
}

TEST_CASE("the wheel over any choice or table of any form edits nothing") {
  for_each_form([](Shown& shown, PartSlot) {
    const Machine before = shown.document().machine();
    auto& form = shown.find<QScrollArea>("fields_scroll");
    for (QComboBox* box : form.findChildren<QComboBox*>()) {
      box->setFocus();
      QWheelEvent wheel(QPointF(5, 5), box->mapToGlobal(QPointF(5, 5)), QPoint(), QPoint(0, -120),
                        Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
      QCoreApplication::sendEvent(box, &wheel);
    }
    QCoreApplication::processEvents();
    CHECK(shown.document().machine() == before);
  });
}

TEST_CASE("a field is found by a piece of its name, and Escape shows all again") {
  Shown shown;
  auto& filter = shown.find<QLineEdit>("field_filter");
  QTest::keyClick(shown.window.get(), Qt::Key_F, Qt::ControlModifier);
  filter.setFocus();
  QTest::keyClicks(&filter, QStringLiteral("elastic"));
  CHECK(shown.find<QLineEdit>("drive.elastic_modulus").isVisible());
  CHECK_FALSE(shown.find<QLineEdit>("drive.lead").isVisible());
  QTest::keyClick(&filter, Qt::Key_Return);
  CHECK(shown.window->focusWidget() == &shown.find<QLineEdit>("drive.elastic_modulus"));
  filter.clear();
  CHECK(shown.find<QLineEdit>("drive.lead").isVisible());
  CHECK_FALSE(shown.find<QLineEdit>("drive.elastic_modulus").isVisible());
}

TEST_CASE("Tab walks through the whole form from top to bottom") {
  Shown shown;
  auto& form = shown.find<QScrollArea>("fields_scroll");
  for (auto* section : form.findChildren<FieldSection*>()) {
    section->set_open(true);
  }
  QCoreApplication::processEvents();
  QWidget* at = &shown.find<QWidget>("drive.thread");
  at->setFocus();
  int last = -1;
  std::size_t editors = 0;
  const auto fields = fields_of(shown.document().machine(), 0, PartSlot::drive);
  constexpr int most_stops = 200;
  for (int i = 0; i < most_stops && form.isAncestorOf(at); ++i) {
    const int top = at->mapTo(form.widget(), QPoint(0, 0)).y();
    INFO(at->objectName().toStdString());
    CHECK(top >= last);
    last = top;
    editors += at->objectName().startsWith(QStringLiteral("drive.")) ? 1 : 0;
    QTest::keyClick(at, Qt::Key_Tab);
    at = shown.window->focusWidget();
  }
  CHECK(editors == fields.size());
}

TEST_CASE("Tab goes from finding a field to the fields, and then to what would do") {
  Shown shown(feedwright::testing::machine_in("/sample-machines/", "plank-router"));
  for (const PartSlot slot : {PartSlot::drive, PartSlot::motor, PartSlot::drive}) {
    shown.document().select({0, slot, {}});
    QCoreApplication::processEvents();
    const QWidget& fields = shown.find("fields_panel");
    const QWidget& remedies = shown.find("remedies_view");
    QWidget* at = &shown.find("field_filter");
    int of_fields = 0;
    do {
      at = at->nextInFocusChain();
      of_fields += fields.isAncestorOf(at) && at->isVisible() ? 1 : 0;
    } while (!remedies.isAncestorOf(at) || !at->isVisible() ||
             (at->focusPolicy() & Qt::TabFocus) == 0);
    CHECK(of_fields > 15);
  }
}

TEST_CASE("a part taken from a list leaves the list's box as it was") {
  Shown shown(feedwright::testing::machine_in("/sample-machines/", "plank-router"));
  auto& box = shown.find<QComboBox>("part_picker");
  REQUIRE(box.count() > 3);
  const Machine before = shown.document().machine();
  box.setCurrentIndex(2);
  emit box.activated(2);
  QCoreApplication::processEvents();
  REQUIRE(shown.document().machine() != before);
  CHECK(shown.find<QComboBox>("part_picker").currentText().isEmpty());
}

TEST_CASE("what is typed on a section's head goes into the section's first field") {
  Shown shown;
  QApplication::setActiveWindow(shown.window.get());
  choose(shown, PartSlot::targets, "thrust");
  const auto type = [](const char* text) {
    for (const char letter : std::string_view(text)) {
      QTest::keyClick(QApplication::focusWidget(), letter);
    }
  };
  for (const bool open : {true, false}) {
    INFO(open);
    choose(shown, PartSlot::targets, "thrust");
    REQUIRE(QApplication::focusWidget() == &shown.find<QLineEdit>("targets.thrust"));
    QWidget* head = nullptr;
    for (int stops = 0; head == nullptr && stops < 10; ++stops) {
      QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
      head = qobject_cast<QToolButton*>(QApplication::focusWidget());
    }
    REQUIRE(head != nullptr);
    auto* section = qobject_cast<FieldSection*>(head->parentWidget());
    REQUIRE(section != nullptr);
    section->set_open(open);
    QWidget* before = QApplication::focusWidget();
    type(open ? "0.05" : "0.07");
    auto* edit = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    REQUIRE(edit != nullptr);
    CHECK(QApplication::focusWidget() != before);
    CHECK(section->is_open());
    CHECK(section->isAncestorOf(edit));
    CHECK(edit->text() == (open ? QStringLiteral("0.05") : QStringLiteral("0.07")));
    CHECK(edit == section->findChild<QLineEdit*>());
    // The next value lands in the field after it.
    QTest::keyClick(edit, Qt::Key_Tab);
    CHECK(edit->text().startsWith(open ? QStringLiteral("0.05") : QStringLiteral("0.07")));
  }
  // Space folds, and what is a command is no text.
  auto& head = shown.find<QToolButton>("section.targets.accuracy.head");
  auto& section = shown.find<FieldSection>("section.targets.accuracy");
  head.setFocus();
  QTest::keyClick(&head, Qt::Key_Space);
  CHECK_FALSE(section.is_open());
  QTest::keyClick(&head, Qt::Key_A, Qt::ControlModifier);
  CHECK_FALSE(section.is_open());
  CHECK(head.hasFocus());
}

TEST_CASE("a preset is given back from the field's own menu") {
  Shown shown;
  choose(shown, PartSlot::drive, "whip_share");
  auto& share = shown.find<QLineEdit>("drive.whip_share");
  type_into(share, "60 %");
  CHECK(shown.find<QToolButton>("drive.whip_share.origin").text() ==
        words::origin_name(Origin::entered));
  share.selectAll();
  QTest::keyClick(&share, Qt::Key_Delete);
  QTest::keyClick(&share, Qt::Key_Return);
  CHECK(shown.find<QToolButton>("drive.whip_share.origin").text() ==
        words::origin_name(Origin::preset));
  CHECK(si_value(*testing::screw_of(shown.document().machine().axes[0]).whip_share) == 0.8);
}

TEST_CASE("a figure changed from the list says what the list has") {
  Shown shown;
  auto& picker = shown.find<QComboBox>("part_picker");
  const int index = picker.findText(QStringLiteral("25 × 10"), Qt::MatchContains);
  REQUIRE(index >= 0);
  picker.setCurrentIndex(index);
  emit picker.activated(index);
  QCoreApplication::processEvents();
  const QString listed = text_in(shown, "drive.core_diameter");
  type_into(shown.find<QLineEdit>("drive.core_diameter"), "20 mm");
  CHECK(note_under(shown, "drive.core_diameter").contains(listed));
  type_into(shown.find<QLineEdit>("drive.core_diameter"), listed.toUtf8().constData());
  CHECK_FALSE(note_under(shown, "drive.core_diameter").contains(QStringLiteral("list")));
}

TEST_CASE("F1 in a field asks for help on it") {
  Shown shown;
  QSignalSpy asked(&shown.window->fields(), &FieldsPanel::help_wanted);
  QTest::keyClick(&shown.find<QLineEdit>("drive.lead"), Qt::Key_F1);
  choose(shown, PartSlot::motor);
  QTest::keyClick(&shown.find<QTableWidget>("points"), Qt::Key_F1);
  REQUIRE(asked.count() == 2);
  CHECK(asked[0][1].toString() == QStringLiteral("lead"));
  CHECK(asked[1][1].toString() == QStringLiteral("points"));
}

TEST_CASE("a part filled in by hand is kept in one's own list and offered from then on") {
  const Folder folder;
  const Environment data("XDG_DATA_HOME", folder.dir.path().toUtf8());
  Shown shown;
  QTest::mouseClick(&shown.find<QPushButton>("keep_part"), Qt::LeftButton);
  auto& name = shown.find<QLineEdit>("kept_name");
  REQUIRE(name.isVisible());
  // A source is no name.
  CHECK(name.text().isEmpty());
  shown.window->activateWindow();
  QTest::keyClick(&name, Qt::Key_Escape);
  CHECK_FALSE(name.isVisible());
  QTest::mouseClick(&shown.find<QPushButton>("keep_part"), Qt::LeftButton);
  REQUIRE(name.isVisible());
  type_into(name, "from the drawer");
  QCoreApplication::processEvents();
  CHECK(shown.find<QLabel>("kept_note").text().contains(QStringLiteral("from the drawer")));
  CHECK(shown.find<QComboBox>("part_picker")
            .findText(QStringLiteral("from the drawer"), Qt::MatchContains) >= 0);
  CHECK(folder.bytes("feedwright/parts/own-screw.json").find("from the drawer") !=
        std::string::npos);
}

TEST_CASE("with large letters names stand above their editors and nothing is cut off") {
  const QFont before = QApplication::font();
  QFont large = before;
  large.setPointSize(18);
  QApplication::setFont(large);
  {
    Shown shown;
    QCoreApplication::processEvents();
    auto& scroll = shown.find<QScrollArea>("fields_scroll");
    CHECK(scroll.widget()->width() <= scroll.viewport()->width());
    auto& lead = shown.find<QLineEdit>("drive.lead");
    CHECK(lead.fontMetrics().horizontalAdvance(QStringLiteral("1000.25 mm")) < lead.width());
  }
  QApplication::setFont(before);
}

TEST_CASE("a form that wants nothing still shows fields, not only the heads of its sections") {
  Shown shown;
  choose(shown, PartSlot::targets);
  const auto sections = shown.window->findChildren<FieldSection*>(
      QRegularExpression(QStringLiteral("^section\\.targets\\.")));
  REQUIRE(sections.size() > 1);
  CHECK(std::ranges::any_of(sections, [](const FieldSection* one) { return one->is_open(); }));
}
