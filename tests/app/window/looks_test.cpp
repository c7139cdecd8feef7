// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/studies_view.h"
#include "support/axes.h"
#include "support/clipping.h"
#include "support/machine_files.h"
#include "support/window.h"

#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QScrollBar>
#include <QTabBar>

using namespace feedwright;
using feedwright::testing::check_not_clipped;
using feedwright::testing::InLanguage;
using feedwright::testing::sample;
using feedwright::testing::Shown;

namespace {

constexpr PartSlot every_slot[] = {
    PartSlot::supply, PartSlot::axis, PartSlot::targets, PartSlot::carriage,     PartSlot::guides,
    PartSlot::sides,  PartSlot::duty, PartSlot::motor,   PartSlot::transmission, PartSlot::drive};

/// Whether somebody can put the keyboard on it.
bool takes_focus(const QWidget& widget) {
  const bool inside = widget.inherits("QComboBoxPrivateContainer") ||
                      widget.inherits("QScrollBar") || widget.inherits("QMenu");
  return widget.isVisible() && (widget.focusPolicy() & Qt::TabFocus) != 0 && !inside &&
         widget.objectName() != QLatin1String("qt_scrollarea_viewport");
}

QString spoken_name(const QWidget& widget) {
  if (!widget.accessibleName().isEmpty()) {
    return widget.accessibleName();
  }
  if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) {
    return button->text();
  }
  return {};
}

void check_names(Shown& shown) {
  for (const QWidget* widget : shown.window->findChildren<QWidget*>()) {
    if (takes_focus(*widget)) {
      INFO(widget->metaObject()->className() << " " << widget->objectName().toStdString());
      CHECK_FALSE(spoken_name(*widget).isEmpty());
    }
  }
}

/// A machine of each kind of train, from the tests' own.
Machine machine_of_kind(const char* name) {
  return testing::machine_in("/tests/machines/", name);
}

} // namespace

TEST_CASE("whatever takes the keyboard has a name to be spoken, on every part") {
  Shown shown(sample("plank-router"));
  for (const char* name : {"looped-screws", "belt-hauled"}) {
    Shown wide(machine_of_kind(name));
    for (const PartSlot slot : every_slot) {
      INFO(name << " " << slot_name(slot));
      wide.document().select({0, slot, {}});
      QCoreApplication::processEvents();
      check_names(wide);
    }
  }
  for (const PartSlot slot : every_slot) {
    INFO(slot_name(slot));
    shown.document().select({0, slot, {}});
    QCoreApplication::processEvents();
    check_names(shown);
  }
  for (int study = 0; study < StudiesView::study_count(); ++study) {
    shown.window->show_study(study);
    QCoreApplication::processEvents();
    check_names(shown);
  }
}

TEST_CASE("no word is cut off in fields, labels or buttons, in any language, at 1280 by 800") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const char* name : {"plank-router", "clock-mill", "sign-engraver"}) {
      Shown shown(sample(name));
      for (const PartSlot slot : every_slot) {
        INFO(language.code << " " << name << " " << slot_name(slot));
        shown.document().select({0, slot, {}});
        QCoreApplication::processEvents();
        check_not_clipped(*shown.window);
      }
    }
  }
}

TEST_CASE("no word of the wider trains is cut off either, in any language") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const char* name : {"looped-screws", "belt-hauled", "preloaded-pairs", "motors"}) {
      Shown shown(machine_of_kind(name));
      for (const PartSlot slot : every_slot) {
        INFO(language.code << " " << name << " " << slot_name(slot));
        shown.document().select({0, slot, {}});
        QCoreApplication::processEvents();
        check_not_clipped(*shown.window);
      }
    }
  }
}

TEST_CASE("no two entries of a menu share a letter, in any language") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    Shown shown;
    QList<QMenu*> menus = shown.window->findChildren<QMenu*>();
    QList<QList<QAction*>> groups{shown.window->menuBar()->actions()};
    for (const QMenu* menu : menus) {
      groups << menu->actions();
    }
    for (const auto& actions : groups) {
      QStringList letters;
      for (const QAction* action : actions) {
        const qsizetype at = action->text().indexOf(QLatin1Char('&'));
        if (at >= 0) {
          INFO(language.code << " " << action->text().toStdString());
          const QString letter = action->text().mid(at + 1, 1).toLower();
          CHECK_FALSE(letters.contains(letter));
          letters << letter;
        }
      }
    }
  }
}

TEST_CASE("the window survives any size") {
  Shown shown(sample("plank-router"), {1, 1});
  for (const QSize size : {QSize(1, 1), QSize(300, 200), QSize(4000, 300), QSize(300, 3000)}) {
    shown.window->resize(size);
    QCoreApplication::processEvents();
    CHECK_FALSE(shown.window->grab().isNull());
  }
}

TEST_CASE("markup in a machine's texts is shown as it is written") {
  Machine machine = sample("plank-router");
  const std::string markup = "<h1>big</h1><img src='file:///etc/passwd'>";
  machine.name = markup;
  machine.axes[0].basics.name = markup;
  machine.axes[0].basics.letter = "<b>X</b>";
  testing::screw_of(machine.axes[0]).notes.source = markup;
  Shown shown(machine);
  CHECK_FALSE(shown.window->grab().isNull());
  for (const QLabel* label : shown.window->findChildren<QLabel*>()) {
    INFO(label->objectName().toStdString() << label->text().toStdString());
    CHECK(label->textFormat() == Qt::PlainText);
  }
}

TEST_CASE("text and its ground differ enough to be read, light and dark") {
  // Relative luminance and contrast ratio: W3C, Web Content Accessibility Guidelines 2.1, 1.4.3
  const auto luminance = [](const QColor& colour) {
    const auto linear = [](double c) {
      return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
  };
  const auto contrast = [&](const QColor& a, const QColor& b) {
    const double light = std::max(luminance(a), luminance(b));
    const double dark = std::min(luminance(a), luminance(b));
    return (light + 0.05) / (dark + 0.05);
  };
  for (const Look& look : {Look::light_look(), Look::dark_look()}) {
    for (const QColor& ground : {look.paper, look.panel}) {
      for (const QColor& text :
           {look.ink, look.faint_ink, look.accent, look.over, look.close, look.clear}) {
        CHECK(contrast(text, ground) >= 4.5);
      }
    }
  }
}
