// SPDX-License-Identifier: GPL-3.0-or-later

// Whether the window can be worked in with large letters, and its panes have the room they want.

#include "fields/entry_edit.h"
#include "fields/form_widths.h"
#include "limits/ladder_widget.h"
#include "studies/plots.h"
#include "studies/studies_view.h"
#include "studies/study_canvas.h"
#include "support/axes.h"
#include "support/clipping.h"
#include "support/letters.h"
#include "support/machine_files.h"
#include "support/window.h"
#include "text/field_guide.h"
#include "train/train_view.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QScrollArea>
#include <QTabBar>
#include <qcustomplot.h>

#include <string_view>

using namespace feedwright;
using feedwright::testing::check_not_clipped;
using feedwright::testing::InLanguage;
using feedwright::testing::sample;
using feedwright::testing::Shown;
using feedwright::testing::WithLetters;

namespace {

constexpr QSize small_window(1280, 800);

void settle() {
  constexpr int rounds = 4;
  for (int round = 0; round < rounds; ++round) {
    QCoreApplication::processEvents();
  }
}

/// Editors of the form that are seen whole without scrolling, and all that are unfolded.
std::pair<int, int> fields_in_sight(Shown& shown) {
  static const QRegularExpression field(QStringLiteral("^[a-z]+\\.[a-z_]+$"));
  const auto& area = shown.find<QScrollArea>("fields_scroll");
  int seen = 0;
  int all = 0;
  for (const QWidget* editor : area.findChildren<QWidget*>(field)) {
    const QRect place(editor->mapTo(area.viewport(), QPoint()), editor->size());
    all += editor->isVisible() ? 1 : 0;
    seen += editor->isVisible() && area.viewport()->rect().contains(place) ? 1 : 0;
  }
  return {seen, all};
}

/// In lines of the window's letters.
double lines(const Shown& shown, int height) {
  return double(height) / shown.window->fontMetrics().height();
}

void check_inside(Shown& shown, const char* name) {
  INFO(name);
  const auto& widget = shown.find<>(name);
  CHECK(widget.isVisible());
  CHECK(shown.window->rect().contains(
      QRect(widget.mapTo(shown.window.get(), QPoint()), widget.size())));
}

} // namespace

TEST_CASE("with 18 point letters drawing, fields, limits and a study have room at 1280 by 800") {
  const WithLetters large(18);
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const char* name : {"plank-router", "clock-mill", "sign-engraver"}) {
      INFO(language.code << " " << name);
      Shown shown(sample(name), small_window);
      for (int study = 0; study < StudiesView::study_count(); ++study) {
        INFO("study " << study);
        shown.window->show_study(study);
        settle();
        const QSize least = shown.window->minimumSizeHint();
        CHECK(least.width() <= small_window.width());
        CHECK(least.height() <= small_window.height());
        CHECK(shown.window->size() == small_window);
      }
      shown.window->show_study(1);
      settle();
      for (const char* pane : {"axes_panel", "train_view", "limits_scroll", "studies_view"}) {
        check_inside(shown, pane);
      }
      CHECK(lines(shown, shown.find<>("train_view").height()) >= 9.0);
      CHECK(lines(shown, shown.find<QScrollArea>("limits_scroll").viewport()->height()) >= 11.0);
      CHECK(lines(shown, shown.window->studies().canvas().plot().height()) >= 5.0);
      shown.find<QTabBar>("side_tabs").setCurrentIndex(0);
      settle();
      check_inside(shown, "fields_panel");
      for (const PartSlot slot : {PartSlot::drive, PartSlot::carriage, PartSlot::targets}) {
        INFO(slot_name(slot));
        shown.document().select({0, slot, {}});
        settle();
        const auto [seen, all] = fields_in_sight(shown);
        CHECK(seen >= std::min(4, all));
        CHECK((slot == PartSlot::carriage || all >= 4));
      }
    }
  }
}

TEST_CASE(
    "in a window low for its letters study and fields share a place, in a high one they do not") {
  const auto above = [](Shown& shown, const char* upper, const char* lower) {
    const auto top = [&](const char* name) {
      return shown.find<>(name).mapTo(shown.window.get(), QPoint());
    };
    return std::abs(top(upper).x() - top(lower).x()) < 4 && top(upper).y() < top(lower).y();
  };
  Shown shown(sample("plank-router"), small_window);
  settle();
  CHECK(above(shown, "limits_scroll", "studies_view"));
  CHECK(above(shown, "fields_panel", "remedies_view"));
  shown.window->resize(1280, 500);
  settle();
  CHECK(above(shown, "axes_panel", "remedies_view"));
  auto& tabs = shown.find<QTabBar>("side_tabs");
  const auto sees = [&](const char* name) { return shown.find<>(name).isVisible(); };
  CHECK(tabs.isVisible());
  CHECK(sees("fields_panel"));
  CHECK_FALSE(sees("studies_view"));
  const int fields_left = shown.find<>("fields_panel").mapTo(shown.window.get(), QPoint()).x();
  tabs.setCurrentIndex(1);
  settle();
  CHECK(sees("studies_view"));
  CHECK_FALSE(sees("fields_panel"));
  CHECK(std::abs(shown.find<>("studies_view").mapTo(shown.window.get(), QPoint()).x() -
                 fields_left) < 12);
  // The whole machine has no study.
  shown.document().select({0, PartSlot::supply, {}, true});
  settle();
  CHECK_FALSE(sees("studies_view"));
  CHECK(sees("fields_panel"));
  CHECK_FALSE(tabs.isVisible());
  shown.document().select({0, PartSlot::drive, {}});
  settle();
  CHECK(sees("fields_panel"));
  shown.window->resize(small_window);
  settle();
  CHECK_FALSE(tabs.isVisible());
  CHECK(above(shown, "limits_scroll", "studies_view"));
  CHECK(above(shown, "fields_panel", "remedies_view"));
}

TEST_CASE("what is asked for comes in sight where study and fields share a place") {
  Shown shown(sample("plank-router"), {1280, 500});
  QApplication::setActiveWindow(shown.window.get());
  settle();
  const auto sees = [&](const char* name) { return shown.find<>(name).isVisible(); };
  shown.trigger("study_2");
  CHECK(sees("studies_view"));
  // The same of another axis: the study stays.
  shown.trigger("next_axis");
  settle();
  CHECK(shown.document().selection().axis == 1);
  CHECK(sees("studies_view"));
  // A field chosen elsewhere comes in sight with the keyboard in it.
  shown.document().select({1, PartSlot::drive, QStringLiteral("lead")});
  settle();
  REQUIRE(sees("fields_panel"));
  REQUIRE(QApplication::focusWidget() != nullptr);
  CHECK(QApplication::focusWidget()->objectName() == QStringLiteral("drive.lead"));
  // F6 backwards from the fields: to the study, and on to them again.
  shown.trigger("previous_pane");
  CHECK(sees("studies_view"));
  shown.trigger("next_pane");
  CHECK(sees("fields_panel"));
  // The part that is chosen already, clicked in the drawing.
  shown.trigger("study_0");
  REQUIRE(sees("studies_view"));
  auto& train = shown.find<TrainView>("train_view");
  const QPointF screw = train.area_of(PartSlot::drive).center() + QPointF(60.0, 0.0);
  QTest::mouseClick(&train, Qt::LeftButton, {}, screw.toPoint());
  settle();
  CHECK(shown.document().selection().slot == PartSlot::drive);
  CHECK(sees("fields_panel"));
  // And one that could be dragged, but was not.
  for (int press = 0; press < 2; ++press) {
    shown.trigger("study_0");
    QTest::mouseClick(&train, Qt::LeftButton, {},
                      train.area_of(PartSlot::carriage).center().toPoint());
    settle();
    CHECK(shown.document().selection().slot == PartSlot::carriage);
    CHECK(sees("fields_panel"));
  }
  // To find a field from the study.
  shown.trigger("study_0");
  CHECK(sees("studies_view"));
  QTest::keyClick(shown.window.get(), Qt::Key_F, Qt::ControlModifier);
  settle();
  CHECK(sees("fields_panel"));
  CHECK(shown.find<>("field_filter").hasFocus());
}

TEST_CASE("texts of the form that have no room end in an ellipsis, and are whole under the caret") {
  const WithLetters large(18);
  Shown shown(sample("plank-router"), small_window);
  QApplication::setActiveWindow(shown.window.get());
  settle();
  auto& source = shown.find<EntryEdit>("part_source");
  CHECK(source.shortened().endsWith(QChar(0x2026)));
  CHECK(source.toolTip().contains(source.text()));
  source.setFocus();
  CHECK(source.shortened().isEmpty());
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    Shown again(sample("plank-router"), small_window);
    settle();
    const auto& filter = again.find<QLineEdit>("field_filter");
    INFO(filter.placeholderText().toStdString());
    CHECK_FALSE(filter.placeholderText().isEmpty());
    CHECK(filter.fontMetrics().horizontalAdvance(filter.placeholderText()) < filter.width() - 8);
  }
}

TEST_CASE("in a narrow window the form is whole, and the drawing wide again when that is") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    const bool long_words = std::string_view(language.code) == "de";
    for (const int width : {long_words ? 760 : 683, 800, 839, 840, 900, 1024, 1280}) {
      INFO(language.code << " " << width);
      Shown shown(sample("plank-router"), {width, 560});
      settle();
      CHECK(shown.window->width() == width);
      const auto& scroll = shown.find<QScrollArea>("fields_scroll");
      CHECK(scroll.widget()->minimumSizeHint().width() <= scroll.viewport()->width());
      constexpr int narrow = 840;
      if (width >= narrow) {
        CHECK(shown.find<TrainView>("train_view").width() >= 420);
      }
    }
  }
}

TEST_CASE(
    "studies are chosen by tabs that need no scrolling, or by a box where those have no room") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    INFO(language.code);
    Shown shown(sample("plank-router"), small_window);
    settle();
    const auto& tabs = shown.find<QTabBar>("study_tabs");
    CHECK(tabs.isVisible());
    CHECK_FALSE(shown.find<>("study_box").isVisible());
    CHECK(tabs.tabRect(tabs.count() - 1).right() <= tabs.width());
  }
  const WithLetters large(18);
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    INFO(language.code);
    Shown shown(sample("plank-router"), small_window);
    settle();
    shown.window->show_study(0);
    settle();
    auto& box = shown.find<QComboBox>("study_box");
    CHECK(box.isVisible());
    CHECK_FALSE(box.accessibleName().isEmpty());
    CHECK_FALSE(shown.find<>("study_tabs").isVisible());
    box.setFocus();
    QTest::keyClick(&box, Qt::Key_Down);
    CHECK(shown.window->studies().study() == 1);
    shown.window->show_study(3);
    CHECK(box.currentIndex() == 3);
  }
}

TEST_CASE("under the fields stands what the part does, until a field has the keyboard") {
  Shown shown(sample("plank-router"), small_window);
  QApplication::setActiveWindow(shown.window.get());
  const auto& help = shown.find<QLabel>("field_help");
  for (const PartSlot slot : axis_slots) {
    INFO(slot_name(slot));
    shown.document().select({0, slot, {}});
    settle();
    CHECK(help.text() == words::part_guide(slot));
    CHECK(help.text().endsWith(QLatin1Char('.')));
  }
  shown.document().select({0, PartSlot::drive, QStringLiteral("lead")});
  settle();
  CHECK(help.text() != words::part_guide(PartSlot::drive));
}

// What tells whether the motor stalls needs the height; of the motion the shape is enough.
TEST_CASE("at 1280 by 800 the torque of a move has six lines of height, its motion two") {
  Shown shown(sample("plank-router"), small_window);
  shown.window->show_study(static_cast<int>(Study::move));
  settle();
  const auto rects = panel_rects(shown.window->studies().canvas().plot());
  REQUIRE(rects.size() == 4);
  for (const QCPAxisRect* rect : rects) {
    CHECK(lines(shown, rect->height()) >= (rect == rects.back() ? 6.0 : 2.0));
  }
}
