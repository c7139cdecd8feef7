// SPDX-License-Identifier: GPL-3.0-or-later

// Whether every word is translatable and every view stands longer words and the other direction.

#include "help/about_window.h"
#include "help/help_topics.h"
#include "studies/studies_view.h"
#include "support/clipping.h"
#include "support/machine_files.h"
#include "support/window.h"
#include "text/pseudo_language.h"
#include "text/text_of.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QTableWidget>
#include <QTextEdit>

#include <algorithm>
#include <set>

using namespace feedwright;
using feedwright::testing::check_not_clipped;
using feedwright::testing::InLanguage;
using feedwright::testing::sample;
using feedwright::testing::Shown;

namespace {

constexpr PartSlot every_slot[] = {
    PartSlot::supply, PartSlot::axis, PartSlot::targets, PartSlot::carriage,     PartSlot::guides,
    PartSlot::sides,  PartSlot::duty, PartSlot::motor,   PartSlot::transmission, PartSlot::drive};

/// What stands outside of all brackets.
QString outside_brackets(const QString& text) {
  QString outside;
  int depth = 0;
  for (const QChar c : text) {
    depth += c == QLatin1Char('[') ? 1 : 0;
    if (depth == 0) {
      outside += c;
    }
    depth -= c == QLatin1Char(']') ? 1 : 0;
  }
  return outside;
}

/// Everything a person typed into the machine; it is shown as it is in every language.
QString own_texts(const Machine& machine) {
  QStringList texts{QString::fromStdString(machine.name), QString::fromStdString(machine.story)};
  for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
    for (std::size_t i = 0; i < slot_count; ++i) {
      const auto slot = static_cast<PartSlot>(i);
      for (const FieldView& field : fields_of(machine, axis, slot)) {
        texts << QString::fromStdString(field.note.text);
        if (const auto* text = std::get_if<std::string>(&field.value)) {
          texts << QString::fromStdString(*text);
        }
      }
      visit_part(machine, axis, slot,
                 [&](const auto& part) { texts << QString::fromStdString(part.notes.source); });
    }
  }
  return texts.join(QLatin1Char(' '));
}

/// Names that are the same in every language: of the program, of samples, of languages, units.
constexpr const char* same_everywhere[] = {"Feedwright", "English", "Deutsch", "plank",
                                           "router",     "clock",   "mill",    "sign",
                                           "engraver",   "steps",   "NEMA",    "Untitled"};

void check_translatable(const QString& text, const QString& own) {
  static const QRegularExpression word(QStringLiteral("[A-Za-z]{4,}"));
  auto it = word.globalMatch(outside_brackets(text));
  while (it.hasNext()) {
    const QString found = it.next().captured();
    const bool same = std::ranges::any_of(
        same_everywhere, [&](const char* name) { return found == QLatin1String(name); });
    INFO(text.toStdString());
    CHECK((same || own.contains(found)));
  }
}

/// All that a window says.
QStringList said_by(const QWidget& window) {
  QStringList texts;
  for (const QWidget* widget : window.findChildren<QWidget*>()) {
    // The buttons that scroll a bar of tabs are the library's, as are its words for them.
    const bool in_tabs = qobject_cast<const QTabBar*>(widget->parentWidget()) != nullptr;
    if (!widget->isVisible() || widget->window() != &window || in_tabs) {
      continue;
    }
    texts << widget->accessibleName();
    if (const auto* label = qobject_cast<const QLabel*>(widget)) {
      texts << label->text();
    } else if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
      texts << button->text();
    } else if (const auto* tabs = qobject_cast<const QTabBar*>(widget)) {
      for (int i = 0; i < tabs->count(); ++i) {
        texts << tabs->tabText(i);
      }
    } else if (const auto* box = qobject_cast<const QGroupBox*>(widget)) {
      texts << box->title();
    } else if (const auto* edit = qobject_cast<const QLineEdit*>(widget)) {
      texts << edit->placeholderText();
    }
  }
  texts.removeAll(QString());
  return texts;
}

/// Counts what the library warns of.
int warnings = 0;
void count_warning(QtMsgType type, const QMessageLogContext&, const QString& text) {
  // Fonts and the platform without a screen are none of ours.
  const bool ours =
      !text.contains(QLatin1String("propagateSizeHints")) && !text.contains(QLatin1String("font"));
  warnings += ours && type >= QtWarningMsg && type != QtInfoMsg ? 1 : 0;
}

struct CountWarnings {
  CountWarnings() : before(qInstallMessageHandler(count_warning)) { warnings = 0; }
  ~CountWarnings() { qInstallMessageHandler(before); }
  QtMessageHandler before;
};

} // namespace

TEST_CASE("the pseudo language keeps marks and makes every text longer") {
  CHECK(pseudo_text(QStringLiteral("%1 of &open")).contains(QLatin1String("%1")));
  CHECK(pseudo_text(QStringLiteral("%1 of &open")).contains(QLatin1Char('&')));
  CHECK(pseudo_text(QStringLiteral("%n page(s)")).contains(QLatin1String("%n")));
  const QString long_text = QStringLiteral("Everything that travels with this axis.");
  CHECK(double(pseudo_text(long_text).size()) >= 1.4 * double(long_text.size()));
  CHECK_FALSE(language_codes().contains(QString(pseudo_code)));
}

TEST_CASE("every text of the window is translatable") {
  const InLanguage pseudo("x-pseudo");
  for (const char* name : {"plank-router", "clock-mill"}) {
    const Machine machine = sample(name);
    const QString own = own_texts(machine);
    Shown shown(machine);
    for (const PartSlot slot : every_slot) {
      INFO(name << " " << slot_name(slot));
      shown.document().select({0, slot, {}});
      QCoreApplication::processEvents();
      for (const QString& text : said_by(*shown.window)) {
        check_translatable(text, own);
      }
    }
    for (const QAction* action : shown.window->findChildren<QAction*>()) {
      check_translatable(action->text(), own);
    }
    check_translatable(shown.window->windowTitle(), own);
  }
}

TEST_CASE("the window stands longer words laid out from right to left") {
  const CountWarnings counted;
  {
    const InLanguage pseudo("x-pseudo");
    CHECK(QApplication::layoutDirection() == Qt::RightToLeft);
    Shown shown(sample("plank-router"), {1920, 1080});
    for (const PartSlot slot : every_slot) {
      shown.document().select({0, slot, {}});
      QCoreApplication::processEvents();
      CHECK_FALSE(shown.window->grab().isNull());
    }
    for (int study = 0; study < StudiesView::study_count(); ++study) {
      shown.window->show_study(study);
      QCoreApplication::processEvents();
    }
    // The list of axes has changed sides with the fields.
    CHECK(shown.find<>("axes_panel").mapTo(shown.window.get(), QPoint()).x() >
          shown.find<>("fields_panel").mapTo(shown.window.get(), QPoint()).x());
    check_not_clipped(*shown.window);
  }
  CHECK(QApplication::layoutDirection() == Qt::LeftToRight);
  CHECK(warnings == 0);
}

TEST_CASE("no word is cut off at either usual size nor with large letters, in any language") {
  const QFont before = QApplication::font();
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const double points : {before.pointSizeF(), 18.0}) {
      QFont font = before;
      font.setPointSizeF(points);
      QApplication::setFont(font);
      Shown shown(sample("plank-router"), {1920, 1080});
      for (const PartSlot slot : {PartSlot::drive, PartSlot::targets, PartSlot::motor}) {
        INFO(language.code << " " << points << " pt " << slot_name(slot));
        shown.document().select({0, slot, {}});
        QCoreApplication::processEvents();
        check_not_clipped(*shown.window);
      }
      shown.trigger("help_contents");
      shown.trigger("about");
      QCoreApplication::processEvents();
      check_not_clipped(shown.find<>("help_window"));
      check_not_clipped(shown.find<>("about_window"));
    }
    QApplication::setFont(before);
  }
}

TEST_CASE("after the language changes help and about keep no word of the old one") {
  Shown shown;
  shown.trigger("help_keys");
  shown.trigger("about");
  const InLanguage german("de");
  QCoreApplication::processEvents();
  Shown fresh;
  fresh.trigger("help_keys");
  fresh.trigger("about");
  QCoreApplication::processEvents();
  for (const char* name : {"help_window", "about_window"}) {
    CHECK(said_by(shown.find<>(name)).join(QLatin1Char('|')).toStdString() ==
          said_by(fresh.find<>(name)).join(QLatin1Char('|')).toStdString());
    CHECK(shown.find<>(name).windowTitle() == fresh.find<>(name).windowTitle());
  }
}
