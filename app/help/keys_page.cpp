// SPDX-License-Identifier: GPL-3.0-or-later
#include "help/keys_page.h"

#include <QAction>
#include <QCoreApplication>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>

namespace feedwright {

namespace {

class Words {
  Q_DECLARE_TR_FUNCTIONS(KeysPage)

public:
  static std::vector<ViewKeys> views() {
    return {{QStringLiteral("train_view"),
             tr("Drawing of the drive train"),
             {{{Qt::Key_Right, Qt::Key_Down}, tr("the next part, and its fields")},
              {{Qt::Key_Left, Qt::Key_Up}, tr("the part before it")},
              {{Qt::Key_Space}, tr("the fields of the part the mark stands on")},
              {{Qt::Key_Return, Qt::Key_F2},
               tr("type over a figure of that part; Tab goes to the next figure")},
              {{Qt::Key_Menu, Qt::SHIFT | Qt::Key_F10}, tr("what can stand in the part's place")},
              {{Qt::SHIFT | Qt::Key_Left, Qt::SHIFT | Qt::Key_Right},
               tr("with the mark on the carriage: move it along the travel"),
               PartSlot::carriage},
              {{Qt::Key_Home, Qt::Key_End},
               tr("with the mark on the carriage: to an end of the travel"),
               PartSlot::carriage},
              {{Qt::Key_PageDown, Qt::Key_PageUp},
               tr("with the mark on a belt loop: choose a pulley; Shift and an arrow moves it"),
               PartSlot::transmission},
              {{Qt::CTRL | Qt::Key_Plus, Qt::CTRL | Qt::Key_Minus}, tr("larger, smaller")},
              {{Qt::CTRL | Qt::Key_0}, tr("the whole drawing again")},
              {{QKeySequence::Copy}, tr("copy the drawing as a picture")}}},
            {QStringLiteral("feed_ladder"),
             tr("Ladders of limits"),
             {{{Qt::Key_Down, Qt::Key_Up}, tr("the next limit, the one before it")},
              {{Qt::Key_Home, Qt::Key_End}, tr("the lowest limit, the last one")},
              {{Qt::Key_Return, Qt::Key_Space},
               tr("the field the limit comes from, and its working")}}},
            {QStringLiteral("study_plot"),
             tr("Plots"),
             {{{Qt::Key_Left, Qt::Key_Right}, tr("read the curves off, a step at a time")},
              {{Qt::Key_Plus, Qt::Key_Minus}, tr("zoom in and out")},
              {{Qt::Key_0}, tr("show the whole plot again")},
              {{QKeySequence::Copy}, tr("copy the picture and its numbers")}}}};
  }

  static QString title() { return tr("Keys"); }
  static QString intro() {
    return tr("Everything can be reached from the keyboard. Tab goes from one thing to the next, "
              "Shift+Tab back. This page is made from the menus as they are now.");
  }
  static QString key_head() { return tr("Key"); }
  static QString does_head() { return tr("What it does"); }
  static QString more() {
    return tr("In a field, Enter takes what was typed and Escape puts back what stood there. The "
              "mouse wheel never changes a field.");
  }
};

QString shown(const QList<QKeySequence>& keys) {
  QStringList texts;
  for (const QKeySequence& key : keys) {
    texts << key.toString(QKeySequence::NativeText);
  }
  return texts.join(QStringLiteral(", "));
}

/// Of Markdown in a table's cell.
QString cell(QString text) {
  for (const QChar mark : {QLatin1Char('\\'), QLatin1Char('|'), QLatin1Char('*'), QLatin1Char('_'),
                           QLatin1Char('`'), QLatin1Char('['), QLatin1Char('<')}) {
    text.replace(mark, QLatin1Char('\\') + QString(mark));
  }
  return text;
}

QString table_head() {
  return QStringLiteral("| %1 | %2 |\n|---|---|\n").arg(Words::key_head(), Words::does_head());
}

QString row(const QString& keys, const QString& does) {
  return QStringLiteral("| %1 | %2 |\n").arg(cell(keys), cell(does));
}

/// A menu's actions that have keys, those of menus within it too.
QString rows_of(const QMenu& menu) {
  QString rows;
  for (const QAction* action : menu.actions()) {
    if (action->menu() != nullptr) {
      rows += rows_of(*action->menu());
    } else if (!action->shortcuts().isEmpty()) {
      rows += row(shown(action->shortcuts()), plain_action_text(*action));
    }
  }
  return rows;
}

} // namespace

std::vector<ViewKeys> view_keys() {
  return Words::views();
}

QString plain_action_text(const QAction& action) {
  QString text = action.text();
  text.replace(QLatin1String("&&"), QString(QChar(0)));
  text.remove(QLatin1Char('&'));
  text.replace(QChar(0), QLatin1Char('&'));
  return text.endsWith(QChar(0x2026)) ? text.chopped(1) : text;
}

QString keys_page(const QWidget& window) {
  QString page = QStringLiteral("# %1\n\n%2\n\n").arg(Words::title(), Words::intro());
  const auto* main = qobject_cast<const QMainWindow*>(&window);
  const auto* menus = main != nullptr ? main->findChild<QMenuBar*>() : nullptr;
  if (menus != nullptr) {
    for (const QAction* action : menus->actions()) {
      const QString rows = action->menu() != nullptr ? rows_of(*action->menu()) : QString();
      if (!rows.isEmpty()) {
        page += QStringLiteral("## %1\n\n").arg(plain_action_text(*action)) + table_head() + rows +
                QLatin1Char('\n');
      }
    }
  }
  for (const ViewKeys& view : view_keys()) {
    page += QStringLiteral("## %1\n\n").arg(view.title) + table_head();
    for (const ViewKey& key : view.keys) {
      page += row(shown(key.keys), key.does);
    }
    page += QLatin1Char('\n');
  }
  return page + Words::more() + QLatin1Char('\n');
}

} // namespace feedwright
