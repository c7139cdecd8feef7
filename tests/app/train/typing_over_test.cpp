// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/axes.h"
#include "support/window.h"
#include "train/train_view.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <set>

using namespace feedwright;
using feedwright::testing::screw_of;
using feedwright::testing::Shown;

namespace {

struct Drawn {
  Shown shown;
  TrainView& train = shown.find<TrainView>("train_view");
  QLineEdit& edit = shown.find<QLineEdit>("figure_edit");
  QLabel& note = shown.find<QLabel>("figure_note");

  void double_click(PartSlot slot, const char* member) {
    const QPoint at = train.area_of_figure(slot, QString::fromLatin1(member)).center().toPoint();
    QTest::mouseClick(&train, Qt::LeftButton, Qt::NoModifier, at);
    QTest::mouseDClick(&train, Qt::LeftButton, Qt::NoModifier, at);
  }
  void type(const char* text) {
    edit.selectAll();
    QTest::keyClicks(&edit, QString::fromUtf8(text));
  }
  double span_mm() { return si_value(*screw_of(shown.document().machine().axes[0]).span) * 1e3; }
};

} // namespace

TEST_CASE("a figure is typed over where it is drawn, in one step named as the form names it") {
  Drawn drawn;
  CHECK_FALSE(drawn.edit.isVisible());
  drawn.double_click(PartSlot::drive, "span");
  REQUIRE(drawn.edit.isVisible());
  CHECK(drawn.edit.text() == QStringLiteral("900 mm"));
  CHECK(drawn.edit.accessibleName() == QStringLiteral("length between bearings"));
  drawn.type("1,1 m");
  CHECK(drawn.note.text() == QStringLiteral("= 1100 mm"));
  QTest::keyClick(&drawn.edit, Qt::Key_Return);
  CHECK_FALSE(drawn.edit.isVisible());
  CHECK(drawn.span_mm() == Approx(1100.0));
  CHECK(drawn.train.hasFocus());
  INFO(drawn.shown.find<QAction>("undo").text().toStdString());
  CHECK(drawn.shown.find<QAction>("undo").text().contains(
      QStringLiteral("length between bearings 900 mm → 1.1 m")));
  drawn.shown.trigger("undo");
  CHECK(drawn.span_mm() == Approx(900.0));
}

TEST_CASE("words beside a part stand for it, and their nearest figure opens") {
  Drawn drawn;
  drawn.shown.document().select({0, PartSlot::carriage, {}});
  QCoreApplication::processEvents();
  // "Ø 16 mm × 5 mm": the sign before the diameter is no figure.
  const QRectF diameter =
      drawn.train.area_of_figure(PartSlot::drive, QStringLiteral("nominal_diameter"));
  const QPoint sign(int(diameter.left()) - 6, int(diameter.center().y()));
  QTest::mouseClick(&drawn.train, Qt::LeftButton, Qt::NoModifier, sign);
  CHECK(drawn.shown.document().selection().slot == PartSlot::drive);
  CHECK_FALSE(drawn.edit.isVisible());
  QTest::mouseDClick(&drawn.train, Qt::LeftButton, Qt::NoModifier, sign);
  REQUIRE(drawn.edit.isVisible());
  CHECK(drawn.edit.accessibleName() == QStringLiteral("nominal diameter"));
}

TEST_CASE("the editor stands over the figure, within the drawing") {
  Drawn drawn;
  for (const char* member : {"span", "nominal_diameter", "lead", "core_diameter"}) {
    INFO(member);
    const QRectF figure = drawn.train.area_of_figure(PartSlot::drive, QString::fromLatin1(member));
    drawn.double_click(PartSlot::drive, member);
    REQUIRE(drawn.edit.isVisible());
    const QRectF over(drawn.edit.mapTo(&drawn.train, QPoint()), QSizeF(drawn.edit.size()));
    CHECK(over.intersects(figure));
    CHECK(drawn.train.rect().contains(drawn.edit.parentWidget()->geometry()));
    QTest::keyClick(&drawn.edit, Qt::Key_Escape);
  }
}

TEST_CASE("rubbish typed over a figure stays, says why and changes nothing, and Escape leaves") {
  Drawn drawn;
  drawn.double_click(PartSlot::carriage, "mass");
  drawn.type("5 mm");
  QTest::keyClick(&drawn.edit, Qt::Key_Return);
  REQUIRE(drawn.edit.isVisible());
  CHECK(drawn.edit.text() == QStringLiteral("5 mm"));
  CHECK(drawn.note.isVisible());
  CHECK(drawn.note.text().startsWith(QStringLiteral("▲ ")));
  CHECK_FALSE(drawn.shown.document().is_modified());
  CHECK(drawn.train.rect().contains(drawn.edit.parentWidget()->geometry()));
  QTest::keyClick(&drawn.edit, Qt::Key_Escape);
  CHECK_FALSE(drawn.edit.isVisible());
  CHECK(drawn.train.hasFocus());
  CHECK_FALSE(drawn.shown.document().is_modified());
}

TEST_CASE("by keys alone every figure of the drawing is reached and typed over") {
  Drawn drawn;
  drawn.train.setFocus(Qt::TabFocusReason);
  while (drawn.train.focused_part() != PartSlot::motor) {
    QTest::keyClick(&drawn.train, Qt::Key_Right);
  }
  QTest::keyClick(&drawn.train, Qt::Key_F2);
  REQUIRE(drawn.edit.isVisible());
  std::set<QString> reached;
  for (int i = 0; i < 40; ++i) {
    reached.insert(drawn.edit.accessibleName());
    QTest::keyClick(&drawn.edit, Qt::Key_Tab);
    REQUIRE(drawn.edit.isVisible());
  }
  for (const char* name : {"travel", "cutting thrust", "supply voltage", "moving mass", "lead",
                           "nominal diameter", "length between bearings", "motor pulley teeth"}) {
    INFO(name);
    CHECK(std::any_of(reached.begin(), reached.end(), [&](const QString& label) {
      return label.contains(QString::fromLatin1(name));
    }));
  }
  QTest::keyClick(&drawn.edit, Qt::Key_Backtab);
  CHECK(drawn.edit.isVisible());
  drawn.type("");
  QTest::keyClick(&drawn.edit, Qt::Key_Escape);
  CHECK_FALSE(drawn.shown.document().is_modified());
}

TEST_CASE("Tab takes what was typed and goes on, Enter on a part opens its first figure") {
  Drawn drawn;
  drawn.shown.document().select({0, PartSlot::carriage, {}});
  drawn.train.setFocus();
  QTest::keyClick(&drawn.train, Qt::Key_Return);
  REQUIRE(drawn.edit.isVisible());
  drawn.type("25 kg");
  QTest::keyClick(&drawn.edit, Qt::Key_Tab);
  CHECK(si_value(*drawn.shown.document().machine().axes[0].carriage.mass) == Approx(25.0));
  CHECK(drawn.edit.isVisible());
  CHECK(drawn.edit.text() != QStringLiteral("25 kg"));
  CHECK(drawn.shown.document().undo_stack()->count() == 1);
}

TEST_CASE("what was typed is taken when the keyboard goes elsewhere") {
  Drawn drawn;
  drawn.double_click(PartSlot::carriage, "mass");
  drawn.type("30 kg");
  drawn.train.setFocus(Qt::MouseFocusReason);
  CHECK_FALSE(drawn.edit.isVisible());
  CHECK(si_value(*drawn.shown.document().machine().axes[0].carriage.mass) == Approx(30.0));
}

TEST_CASE("what cannot be read in the drawing is asked about on closing, and waits at its field") {
  Drawn drawn;
  drawn.double_click(PartSlot::carriage, "mass");
  drawn.type("5 mm");
  CHECK_FALSE(drawn.shown.window->close());
  REQUIRE(drawn.shown.window->banner().isVisible());
  CHECK(drawn.shown.window->banner().text().contains(QStringLiteral("mass")));
  QTest::mouseClick(&drawn.shown.find<QPushButton>("show_typed"), Qt::LeftButton);
  QCoreApplication::processEvents();
  auto& field = drawn.shown.find<QLineEdit>("carriage.mass");
  CHECK(field.text() == QStringLiteral("5 mm"));
  CHECK(field.hasFocus());
  // The drawing shows it again too, and what is typed there is what waits at the field.
  drawn.double_click(PartSlot::carriage, "mass");
  REQUIRE(drawn.edit.isVisible());
  CHECK(drawn.edit.text() == QStringLiteral("5 mm"));
  CHECK(drawn.note.text().startsWith(QStringLiteral("▲ ")));
  drawn.type("6 mm");
  CHECK_FALSE(drawn.shown.window->close());
  CHECK(field.text() == QStringLiteral("6 mm"));
  drawn.double_click(PartSlot::carriage, "mass");
  drawn.type("20 kg");
  QTest::keyClick(&drawn.edit, Qt::Key_Return);
  CHECK(drawn.shown.document().pending().empty());
  CHECK(field.text() == QStringLiteral("20 kg"));
}

TEST_CASE("what cannot be read waits when another figure is opened, and Escape gives it up") {
  Drawn drawn;
  drawn.double_click(PartSlot::carriage, "mass");
  drawn.type("5 mm");
  drawn.double_click(PartSlot::drive, "span");
  REQUIRE(drawn.edit.isVisible());
  CHECK(drawn.edit.text() == QStringLiteral("900 mm"));
  drawn.double_click(PartSlot::carriage, "mass");
  CHECK(drawn.edit.text() == QStringLiteral("5 mm"));
  drawn.train.zoom_by(1.5, QPointF(20, 20));
  CHECK_FALSE(drawn.shown.document().pending().empty());
  drawn.double_click(PartSlot::carriage, "mass");
  QTest::keyClick(&drawn.edit, Qt::Key_Escape);
  CHECK(drawn.shown.document().pending().empty());
  CHECK_FALSE(drawn.shown.document().is_modified());
}

TEST_CASE("what is typed in the drawing outlives the window when the language changes") {
  Drawn drawn;
  drawn.double_click(PartSlot::drive, "span");
  drawn.type("five");
  auto document = drawn.shown.window->release_document();
  drawn.shown.window = std::make_unique<MainWindow>(std::move(document));
  drawn.shown.window->show();
  CHECK(drawn.shown.find<QLineEdit>("drive.span").text() == QStringLiteral("five"));
}
