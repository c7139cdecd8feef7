// SPDX-License-Identifier: GPL-3.0-or-later

// Whether everything can be reached without a mouse, and told without eyes.

#include "studies/studies_view.h"
#include "support/clipping.h"
#include "support/machine_files.h"
#include "support/window.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QMenu>
#include <QMenuBar>
#include <QMessageBox>
#include <QScrollArea>
#include <QTimer>
#include <QToolButton>

#include <map>
#include <set>

using namespace feedwright;
using feedwright::testing::check_not_clipped;
using feedwright::testing::InLanguage;
using feedwright::testing::sample;
using feedwright::testing::Shown;

namespace {

bool takes_focus(const QWidget& widget) {
  const bool inside = widget.inherits("QComboBoxPrivateContainer") ||
                      widget.inherits("QScrollBar") || widget.inherits("QMenu") ||
                      // a box one can type in has one stop, its own
                      qobject_cast<const QComboBox*>(widget.parentWidget()) != nullptr;
  return widget.isVisible() && widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus) != 0 &&
         !inside && widget.objectName() != QLatin1String("qt_scrollarea_viewport");
}

QString spoken_name(const QWidget& widget) {
  if (!widget.accessibleName().isEmpty()) {
    return widget.accessibleName();
  }
  const auto* button = qobject_cast<const QAbstractButton*>(&widget);
  return button != nullptr ? button->text() : QString();
}

QList<QWidget*> stops_in(const QWidget& window) {
  QList<QWidget*> stops;
  for (QWidget* widget : window.findChildren<QWidget*>()) {
    if (widget->window() == &window && takes_focus(*widget)) {
      stops << widget;
    }
  }
  return stops;
}

/// Every stop has a name, and no two beside each other the same.
void check_spoken(const QWidget& window) {
  std::map<const QWidget*, QStringList> names;
  for (const QWidget* widget : stops_in(window)) {
    const QString name = spoken_name(*widget);
    INFO(widget->metaObject()->className()
         << " " << widget->objectName().toStdString() << " " << name.toStdString());
    CHECK_FALSE(name.isEmpty());
    CHECK_FALSE(names[widget->parentWidget()].contains(name));
    names[widget->parentWidget()] << name;
  }
}

/// No letter opens two buttons of one window.
void check_mnemonics(const QWidget& window) {
  QStringList letters;
  for (const auto* button : window.findChildren<QAbstractButton*>()) {
    const qsizetype at = button->text().indexOf(QLatin1Char('&'));
    if (button->window() == &window && button->isVisible() && at >= 0) {
      INFO(button->text().toStdString());
      const QString letter = button->text().mid(at + 1, 1).toLower();
      CHECK_FALSE(letters.contains(letter));
      letters << letter;
    }
  }
}

QList<QAction*> actions_of(const QMenu& menu) {
  QList<QAction*> actions;
  for (QAction* action : menu.actions()) {
    if (action->menu() != nullptr) {
      actions += actions_of(*action->menu());
    } else if (!action->isSeparator()) {
      actions << action;
    }
  }
  return actions;
}

QList<QAction*> all_actions(const MainWindow& window) {
  QList<QAction*> actions;
  for (const QAction* menu : window.menuBar()->actions()) {
    actions += actions_of(*menu->menu());
  }
  return actions;
}

QString pane_of(const QWidget* widget) {
  static const QStringList panes{QStringLiteral("axes_panel"), QStringLiteral("train_view"),
                                 QStringLiteral("limits_view"), QStringLiteral("studies_view"),
                                 QStringLiteral("fields_panel")};
  for (; widget != nullptr; widget = widget->parentWidget()) {
    if (panes.contains(widget->objectName())) {
      return widget->objectName();
    }
  }
  return {};
}

/// The widgets Tab comes by, from the first on, until it comes round again.
QList<QWidget*> tab_round(QWidget& window, QWidget& first) {
  first.setFocus();
  QList<QWidget*> round{&first};
  for (int presses = 0; presses < 400; ++presses) {
    QTest::keyClick(window.focusWidget(), Qt::Key_Tab);
    QWidget* now = window.focusWidget();
    if (now == &first && round.size() > 1) {
      return round;
    }
    if (now != round.constLast()) {
      round << now;
    }
  }
  FAIL("Tab does not come round");
  return round;
}

constexpr PartSlot every_slot[] = {
    PartSlot::supply, PartSlot::axis, PartSlot::targets, PartSlot::carriage,     PartSlot::guides,
    PartSlot::sides,  PartSlot::duty, PartSlot::motor,   PartSlot::transmission, PartSlot::drive};

/// Looks at the next modal dialog and answers it with Escape.
template <class Look>
void at_next_dialog(Look look, bool& seen) {
  QTimer::singleShot(0, qApp, [look, &seen] {
    if (QWidget* dialog = QApplication::activeModalWidget()) {
      seen = true;
      look(*dialog);
      QTest::keyClick(dialog, Qt::Key_Escape);
      dialog->close();
    }
  });
}

} // namespace

TEST_CASE("every stop of every window has a spoken name, no two of neighbours the same") {
  Shown shown(sample("plank-router"));
  shown.window->banner().say(QStringLiteral("A message."),
                             {{QStringLiteral("Do it"), QStringLiteral("do_it"), [] {}}});
  for (const PartSlot slot : every_slot) {
    INFO(slot_name(slot));
    shown.document().select({0, slot, {}});
    QCoreApplication::processEvents();
    check_spoken(*shown.window);
    check_mnemonics(*shown.window);
  }
  for (int study = 0; study < StudiesView::study_count(); ++study) {
    INFO("study " << study);
    shown.window->show_study(study);
    QCoreApplication::processEvents();
    check_spoken(*shown.window);
  }
  shown.trigger("help_contents");
  shown.trigger("about");
  QCoreApplication::processEvents();
  for (const char* name : {"help_window", "about_window"}) {
    INFO(name);
    check_spoken(shown.find<>(name));
    check_mnemonics(shown.find<>(name));
    check_not_clipped(shown.find<>(name));
  }
}

TEST_CASE("every dialog has spoken names, letters of its own and a way out by Escape") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    INFO(language.code);
    Shown shown;
    DialogPrompts dialogs;
    const auto look = [](QWidget& dialog) {
      check_spoken(dialog);
      check_mnemonics(dialog);
      check_not_clipped(dialog);
    };
    bool unsaved = false;
    at_next_dialog(look, unsaved);
    CHECK(dialogs.unsaved_changes(shown.window.get(), QStringLiteral("x")) ==
          UnsavedAnswer::cancel);
    CHECK(unsaved);
    for (const auto reason : {OverwriteReason::changed_outside, OverwriteReason::newer_format}) {
      bool asked = false;
      at_next_dialog(look, asked);
      CHECK(dialogs.overwrite(shown.window.get(), QStringLiteral("x"), reason) ==
            OverwriteAnswer::cancel);
      CHECK(asked);
    }
    bool told = false;
    at_next_dialog(look, told);
    dialogs.tell(shown.window.get(), QStringLiteral("Something."), {QStringLiteral("More.")});
    CHECK(told);
  }
}

TEST_CASE("Tab goes once round every stop of the window, pane by pane, and back") {
  Shown shown(sample("plank-router"));
  for (const PartSlot slot : {PartSlot::drive, PartSlot::targets, PartSlot::duty}) {
    INFO(slot_name(slot));
    shown.document().select({0, slot, {}});
    QCoreApplication::processEvents();
    const auto round = tab_round(*shown.window, shown.find<>("axes_list"));
    const std::set<QWidget*> visited(round.begin(), round.end());
    CHECK(visited.size() == std::size_t(round.size()));
    for (QWidget* stop : stops_in(*shown.window)) {
      const bool bar = qobject_cast<QToolButton*>(stop) != nullptr;
      INFO(stop->metaObject()->className() << " " << stop->objectName().toStdString());
      CHECK((bar || visited.contains(stop)));
    }
    QStringList panes;
    for (const QWidget* stop : round) {
      const QString pane = pane_of(stop);
      if (!pane.isEmpty() && (panes.isEmpty() || panes.constLast() != pane)) {
        panes << pane;
      }
    }
    CHECK(panes.join(QLatin1Char(' ')).toStdString() ==
          "axes_panel train_view limits_view studies_view fields_panel");
  }
}

TEST_CASE("Tab goes down the fields as they are read") {
  Shown shown(sample("plank-router"));
  for (const PartSlot slot : every_slot) {
    shown.document().select({0, slot, {}});
    QCoreApplication::processEvents();
    const auto round = tab_round(*shown.window, shown.find<>("axes_list"));
    auto* form = shown.find<QScrollArea>("fields_scroll").widget();
    int last = -1;
    for (const QWidget* stop : round) {
      if (form->isAncestorOf(stop)) {
        const int y = stop->mapTo(form, QPoint(0, stop->height())).y();
        INFO(slot_name(slot) << " " << stop->objectName().toStdString());
        CHECK(y + stop->height() / 2 >= last);
        last = y;
      }
    }
  }
}

TEST_CASE("every entry of the menus has a text and a name of its own") {
  Shown shown;
  std::set<QString> names;
  for (const QAction* action : all_actions(*shown.window)) {
    INFO(action->objectName().toStdString() << " " << action->text().toStdString());
    CHECK_FALSE(action->text().isEmpty());
    CHECK_FALSE(action->objectName().isEmpty());
    CHECK(names.insert(action->objectName()).second);
  }
}

TEST_CASE("no two entries of the window answer to the same keys") {
  Shown shown;
  std::map<QString, QString> taken;
  for (const QAction* action : shown.window->findChildren<QAction*>()) {
    for (const QKeySequence& keys : action->shortcuts()) {
      const bool local = action->shortcutContext() == Qt::WidgetShortcut ||
                         action->shortcutContext() == Qt::WidgetWithChildrenShortcut;
      if (!keys.isEmpty() && !local) {
        INFO(keys.toString().toStdString() << " " << action->objectName().toStdString() << " "
                                           << taken[keys.toString()].toStdString());
        CHECK(taken[keys.toString()].isEmpty());
        taken[keys.toString()] = action->objectName();
      }
    }
  }
}

TEST_CASE("F6 goes from pane to pane and Shift+F6 back") {
  Shown shown(sample("plank-router"));
  shown.find<>("axes_list").setFocus();
  const char* order[] = {"train_view", "limits_view", "studies_view", "fields_panel", "axes_panel"};
  for (const char* pane : order) {
    shown.trigger("next_pane");
    CHECK(pane_of(shown.window->focusWidget()).toStdString() == pane);
  }
  const char* back[] = {"fields_panel", "studies_view", "limits_view", "train_view", "axes_panel"};
  for (const char* pane : back) {
    shown.trigger("previous_pane");
    CHECK(pane_of(shown.window->focusWidget()).toStdString() == pane);
  }
  CHECK(shown.find<QAction>("next_pane").shortcut() == QKeySequence(Qt::Key_F6));
}

TEST_CASE("Ctrl+PgDn and Ctrl+PgUp go from axis to axis and stop at the ends") {
  Shown shown(sample("plank-router"));
  REQUIRE(shown.document().machine().axes.size() == 2);
  shown.trigger("next_axis");
  CHECK(shown.document().selection().axis == 1);
  shown.trigger("next_axis");
  CHECK(shown.document().selection().axis == 1);
  shown.trigger("previous_axis");
  shown.trigger("previous_axis");
  CHECK(shown.document().selection().axis == 0);
  // The machine stands above its axes.
  shown.document().select({1, PartSlot::supply, {}, true});
  shown.trigger("next_axis");
  CHECK(shown.document().selection() == Selection{0, PartSlot::drive, {}, false});
}

TEST_CASE("at 1280 by 800 drawing, feed limits, study and first fields show without scrolling") {
  for (const char* name : {"plank-router", "clock-mill", "sign-engraver"}) {
    INFO(name);
    Shown shown(sample(name));
    const auto in_view = [&](const QWidget& widget) {
      return widget.isVisible() && widget.visibleRegion().boundingRect().size() == widget.size();
    };
    CHECK(in_view(shown.find<>("train_view")));
    CHECK(in_view(shown.find<>("feed_ladder")));
    CHECK(shown.find<>("study_plot").height() >= 120);
    CHECK(in_view(shown.find<>("study_plot")));
    int fields = 0;
    for (const QWidget* stop : shown.find<>("fields_panel").findChildren<QWidget*>()) {
      fields += takes_focus(*stop) && in_view(*stop) ? 1 : 0;
    }
    CHECK(fields >= 6);
  }
}
