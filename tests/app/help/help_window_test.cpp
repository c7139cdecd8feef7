// SPDX-License-Identifier: GPL-3.0-or-later
#include "help/about_window.h"
#include "help/help_page_view.h"
#include "help/help_window.h"
#include "help/keys_page.h"
#include "limits/ladder_widget.h"
#include "studies/studies_view.h"
#include "support/window.h"

#include <QAction>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QTableWidget>
#include <QToolButton>
#include <QTreeWidget>

using namespace feedwright;
using feedwright::testing::InLanguage;
using feedwright::testing::Shown;

namespace {

HelpWindow& help_of(Shown& shown) {
  return shown.find<HelpWindow>("help_window");
}

QString page_text(Shown& shown) {
  return shown.find<HelpPageView>("help_page").toPlainText();
}

/// What F1 opens with the keyboard on that widget.
QString help_on(Shown& shown, QWidget& widget) {
  widget.setFocus();
  shown.trigger("help_here");
  QCoreApplication::processEvents();
  return help_of(shown).topic();
}

double lightness(const QImage& image) {
  double sum = 0.0;
  int count = 0;
  for (int y = 0; y < image.height(); y += 7) {
    for (int x = 0; x < image.width(); x += 7) {
      sum += image.pixelColor(x, y).lightnessF();
      ++count;
    }
  }
  return sum / count;
}

QStringList menu_texts(const QMenu& menu) {
  QStringList texts;
  for (const QAction* action : menu.actions()) {
    if (action->menu() != nullptr) {
      texts += menu_texts(*action->menu());
    } else if (!action->isSeparator() && !action->shortcuts().isEmpty()) {
      texts << plain_action_text(*action);
    }
  }
  return texts;
}

} // namespace

TEST_CASE("F1 opens the page of what has the keyboard") {
  Shown shown;
  auto& ladder = shown.find<LadderWidget>("feed_ladder");
  const QString first = topic_of(ladder.ladder().rows.front().id);
  CHECK(help_on(shown, ladder) == first);
  QTest::keyClick(&ladder, Qt::Key_Down);
  CHECK(help_on(shown, ladder) == topic_of(ladder.ladder().rows[1].id));
  shown.document().select({0, PartSlot::motor, {}});
  CHECK(help_on(shown, shown.find<>("train_view")) ==
        topic_of(PartSlot::motor, part_type(shown.document().machine(), 0, PartSlot::motor)));
  shown.document().select({0, PartSlot::drive, {}});
  QCoreApplication::processEvents();
  CHECK(help_on(shown, shown.find<>("drive.lead")) == QLatin1String("type/screw"));
  shown.document().select({0, PartSlot::supply, {}});
  QCoreApplication::processEvents();
  CHECK(help_on(shown, shown.find<>("controller.step_rate_limit")) ==
        QLatin1String("part/controller"));
  shown.window->show_study(StudiesView::study_count() - 1);
  CHECK(help_on(shown, shown.find<>("study_tabs")) == QLatin1String("guide/working"));
  shown.window->show_study(0);
  CHECK(help_on(shown, shown.find<>("study_tabs")) == QLatin1String("guide/studies"));
  CHECK(help_on(shown, shown.find<>("axes_list")) == QLatin1String("guide/first-steps"));
  shown.document().select({0, PartSlot::axis, {}});
  CHECK(help_on(shown, shown.find<>("axes_list")) == QLatin1String("part/axis"));
  CHECK_FALSE(help_of(shown).isModal());
}

TEST_CASE("a link of help turns the page, and back and forward find the way") {
  Shown shown;
  shown.window->show_help(QStringLiteral("limit/whip"));
  auto& page = shown.find<HelpPageView>("help_page");
  emit page.anchorClicked(QUrl(QStringLiteral("help:limit/buckling")));
  CHECK(help_of(shown).topic() == QLatin1String("limit/buckling"));
  CHECK(help_of(shown).windowTitle().contains(QLatin1String("Buckling")));
  shown.find<QToolButton>("help_back").click();
  CHECK(help_of(shown).topic() == QLatin1String("limit/whip"));
  CHECK_FALSE(shown.find<QToolButton>("help_back").isEnabled());
  shown.find<QToolButton>("help_forward").click();
  CHECK(help_of(shown).topic() == QLatin1String("limit/buckling"));
}

TEST_CASE("a link to a part chooses its field in the window") {
  Shown shown;
  shown.window->show_help(QStringLiteral("limit/whip"));
  auto& page = shown.find<HelpPageView>("help_page");
  emit page.anchorClicked(QUrl(QStringLiteral("part:drive/lead")));
  CHECK(shown.document().selection().slot == PartSlot::drive);
  CHECK(shown.document().selection().member == QLatin1String("lead"));
  emit page.anchorClicked(QUrl(QStringLiteral("https://example.org/")));
  CHECK(help_of(shown).topic() == QLatin1String("limit/whip"));
}

TEST_CASE("help shows no page twice in its contents and finds words in all of them") {
  Shown shown;
  shown.trigger("help_contents");
  CHECK(help_of(shown).topic() == QString(first_topic));
  auto& contents = shown.find<QTreeWidget>("help_contents_list");
  QStringList listed;
  for (QTreeWidgetItemIterator it(&contents); *it != nullptr; ++it) {
    if (const QString topic = (*it)->data(0, Qt::UserRole).toString(); !topic.isEmpty()) {
      listed << topic;
      CHECK_FALSE((*it)->text(0).contains(QLatin1Char('/')));
    }
  }
  CHECK(listed == all_help_topics());
  shown.find<QLineEdit>("help_search").setText(QStringLiteral("ISO 5295"));
  CHECK(contents.topLevelItemCount() >= 2);
  CHECK(contents.topLevelItemCount() < 8);
  QTest::keyClick(&shown.find<QLineEdit>("help_search"), Qt::Key_Return);
  CHECK(page_text(shown).contains(QLatin1String("ISO 5295")));
  CHECK_FALSE(shown.find<HelpPageView>("help_page").extraSelections().isEmpty());
  shown.find<QLineEdit>("help_search").setText(QStringLiteral("zyx no such word"));
  CHECK(contents.topLevelItemCount() == 0);
  shown.find<QLineEdit>("help_search").clear();
  CHECK(contents.topLevelItemCount() == int(help_groups().size()));
}

TEST_CASE("help follows language and colours while it is open") {
  Shown shown;
  shown.window->show_help(QStringLiteral("limit/whip"));
  CHECK(page_text(shown).contains(QLatin1String("critical speed")));
  {
    const InLanguage german("de");
    QCoreApplication::processEvents();
    CHECK(page_text(shown).contains(QLatin1String("kritischen Drehzahl")));
  }
  QCoreApplication::processEvents();
  CHECK(page_text(shown).contains(QLatin1String("critical speed")));
  const double light = lightness(help_of(shown).grab().toImage());
  apply_theme(Theme::dark);
  QCoreApplication::processEvents();
  const double dark = lightness(help_of(shown).grab().toImage());
  apply_theme(Theme::light);
  CHECK(light > 0.75);
  CHECK(dark < 0.3);
}

TEST_CASE("the text of help grows and shrinks") {
  Shown shown;
  shown.window->show_help(QStringLiteral("limit/whip"));
  auto& page = shown.find<HelpPageView>("help_page");
  const double before = page.document()->defaultFont().pointSizeF();
  shown.find<QToolButton>("help_larger").click();
  CHECK(page.document()->defaultFont().pointSizeF() == Approx(before + 1.0));
  shown.find<QToolButton>("help_smaller").click();
  shown.find<QToolButton>("help_smaller").click();
  CHECK(page.document()->defaultFont().pointSizeF() == Approx(before - 1.0));
}

TEST_CASE("the page of keys lists every menu entry that has one") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    Shown shown;
    shown.trigger("help_keys");
    CHECK(help_of(shown).topic() == QString(keys_topic));
    const QString text = page_text(shown);
    for (const QAction* menu : shown.window->menuBar()->actions()) {
      for (const QString& entry : menu_texts(*menu->menu())) {
        INFO(language.code << " " << entry.toStdString());
        CHECK(text.contains(entry));
      }
    }
    for (const ViewKeys& view : view_keys()) {
      CHECK(text.contains(view.title));
      CHECK(shown.window->findChild<QWidget*>(view.view) != nullptr);
    }
  }
}

TEST_CASE("a view takes every key that help says it takes") {
  const auto text = read_file(FEEDWRIGHT_SOURCE_DIR "/tests/machines/looped-screws.feedwright",
                              std::size_t{1} << 20U);
  REQUIRE(text);
  Shown shown(*read_machine(*text));
  for (const ViewKeys& view : view_keys()) {
    auto* widget = shown.window->findChild<QWidget*>(view.view);
    REQUIRE(widget != nullptr);
    widget->setFocus();
    for (const ViewKey& key : view.keys) {
      shown.document().select({0, key.at.value_or(PartSlot::drive), {}});
      for (const QKeySequence& sequence : key.keys) {
        INFO(view.view.toStdString() << " " << sequence.toString().toStdString());
        QKeyEvent press(QEvent::KeyPress, sequence[0].key(), sequence[0].keyboardModifiers());
        QCoreApplication::sendEvent(widget, &press);
        CHECK(press.isAccepted());
      }
    }
  }
}

TEST_CASE("about tells version, licence and libraries without standing in the way") {
  Shown shown;
  shown.trigger("about");
  auto& about = shown.find<AboutWindow>("about_window");
  CHECK(about.isVisible());
  CHECK_FALSE(about.isModal());
  CHECK(shown.find<QLabel>("about_statement").text().contains(QLatin1String("GNU General Public")));
  auto& table = shown.find<QTableWidget>("about_libraries");
  CHECK(table.rowCount() == int(used_libraries().size()));
  shown.find<QAbstractButton>("about_view_licence").click();
  const QString licence = shown.find<QPlainTextEdit>("about_licence").toPlainText();
  CHECK(licence.contains(QLatin1String("GNU GENERAL PUBLIC LICENSE")));
  CHECK(licence.size() > 30'000);
  shown.find<QAbstractButton>("about_close").click();
  CHECK_FALSE(about.isVisible());
}
