// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A mouse and a keyboard that nobody guides: anywhere in a window, on whatever is there.

#include "support/dice.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QMainWindow>
#include <QMenuBar>
#include <QMouseEvent>
#include <QPointer>
#include <QTest>
#include <QTimer>
#include <QToolBar>
#include <QWheelEvent>

namespace feedwright::testing {

class RandomPointer {
public:
  RandomPointer(Dice& dice, QStringList left_alone)
      : dice_(dice), left_alone_(std::move(left_alone)) {}

  /// Does one thing, and says what. Menus, lists and dialogs that open are left after a few keys.
  std::string act(QWidget& window) {
    QPointer<QWidget> at = somewhere(window);
    if (at == nullptr) {
      return "nothing";
    }
    const std::string name =
        (at->objectName().isEmpty() ? QString::fromLatin1(at->metaObject()->className())
                                    : at->objectName())
            .toStdString();
    QTimer leaving; // also from within their own loops
    QObject::connect(&leaving, &QTimer::timeout, &leaving, [this] { leave_what_opened(); });
    leaving.start(1);
    const char* what = act_on(at);
    QCoreApplication::processEvents();
    constexpr int usual = 4;
    for (int tries = 0; tries < usual && is_something_open(); ++tries) {
      leave_what_opened();
      QCoreApplication::processEvents();
    }
    return std::string(what) + " " + name;
  }

private:
  QWidget* somewhere(QWidget& window) {
    QWidgetList shown;
    for (QWidget* each : window.findChildren<QWidget*>()) {
      if (each->isVisible() && each->isEnabled() && each->window() == &window &&
          !each->rect().isEmpty() && !is_left_alone(each)) {
        shown << each;
      }
    }
    return shown.isEmpty() ? nullptr : shown[dice_.whole(0, int(shown.size()) - 1)];
  }

  bool is_left_alone(const QWidget* widget) const {
    for (; widget != nullptr; widget = widget->parentWidget()) {
      if (left_alone_.contains(widget->objectName()) ||
          qobject_cast<const QMenuBar*>(widget) != nullptr) {
        return true;
      }
    }
    return false;
  }

  const char* act_on(const QPointer<QWidget>& at) {
    const int deed = dice_.whole(0, 9);
    switch (deed) {
    case 0:
    case 1:
    case 2: click(at); return "click";
    case 3:
      click(at);
      button(at, QEvent::MouseButtonDblClick, at ? inside(*at) : QPoint(), Qt::LeftButton);
      button(at, QEvent::MouseButtonRelease, at ? inside(*at) : QPoint(), Qt::NoButton);
      return "double click";
    case 4:
    case 5: drag(at); return "drag";
    case 6: wheel(*at); return "wheel";
    case 7: {
      const QPoint point = inside(*at);
      QContextMenuEvent event(QContextMenuEvent::Mouse, point, at->mapToGlobal(point));
      QCoreApplication::sendEvent(at, &event);
      return "menu of";
    }
    default: keys(at); return "keys in";
    }
  }

  QPoint inside(const QWidget& widget) {
    return {dice_.whole(0, widget.width() - 1), dice_.whole(0, widget.height() - 1)};
  }

  static void button(const QPointer<QWidget>& at, QEvent::Type type, QPoint point,
                     Qt::MouseButtons held, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    if (at == nullptr || !at->isVisible()) {
      return;
    }
    const bool move = type == QEvent::MouseMove;
    QMouseEvent event(type, point, at->mapToGlobal(point), move ? Qt::NoButton : Qt::LeftButton,
                      held, modifiers);
    QCoreApplication::sendEvent(at, &event);
  }

  void click(const QPointer<QWidget>& at) {
    const QPoint point = inside(*at);
    if ((at->focusPolicy() & Qt::ClickFocus) != 0) {
      at->setFocus(Qt::MouseFocusReason);
    }
    button(at, QEvent::MouseButtonPress, point, Qt::LeftButton);
    button(at, QEvent::MouseButtonRelease, point, Qt::NoButton);
  }

  void drag(const QPointer<QWidget>& at) {
    const auto modifiers = dice_.chance(0.2) ? Qt::ShiftModifier : Qt::NoModifier;
    QPoint point = inside(*at);
    button(at, QEvent::MouseButtonPress, point, Qt::LeftButton, modifiers);
    const bool given_up = dice_.chance(0.15);
    for (int moves = dice_.whole(1, 6); moves > 0; --moves) {
      point += QPoint(dice_.whole(-80, 80), dice_.whole(-50, 50));
      button(at, QEvent::MouseMove, point, Qt::LeftButton, modifiers);
      if (dice_.chance(0.3)) {
        QCoreApplication::processEvents();
      }
    }
    if (given_up && at != nullptr) {
      QTest::sendKeyEvent(QTest::Click, at, Qt::Key_Escape, QString(), Qt::NoModifier);
    }
    button(at, QEvent::MouseButtonRelease, point, Qt::NoButton, modifiers);
  }

  void wheel(QWidget& at) {
    const QPoint point = inside(at);
    const QPoint turn(dice_.chance(0.2) ? 120 : 0, 120 * dice_.whole(-3, 3));
    QWheelEvent event(point, at.mapToGlobal(point), {}, turn, Qt::NoButton,
                      dice_.chance(0.3) ? Qt::ControlModifier : Qt::NoModifier, Qt::NoScrollPhase,
                      false);
    QCoreApplication::sendEvent(&at, &event);
  }

  struct Press {
    Qt::Key key;
    Qt::KeyboardModifiers modifiers = Qt::NoModifier;
    const char* text = "";
  };

  void keys(const QPointer<QWidget>& at) {
    static constexpr Press presses[] = {{Qt::Key_Tab, {}, "\t"},
                                        {Qt::Key_Backtab, Qt::ShiftModifier},
                                        {Qt::Key_Left},
                                        {Qt::Key_Right},
                                        {Qt::Key_Up},
                                        {Qt::Key_Down},
                                        {Qt::Key_PageUp},
                                        {Qt::Key_PageDown},
                                        {Qt::Key_Home},
                                        {Qt::Key_End},
                                        {Qt::Key_Escape},
                                        {Qt::Key_Return, {}, "\r"},
                                        {Qt::Key_Space, {}, " "},
                                        {Qt::Key_Delete},
                                        {Qt::Key_Backspace},
                                        {Qt::Key_F2},
                                        {Qt::Key_F1},
                                        {Qt::Key_Plus, {}, "+"},
                                        {Qt::Key_Minus, {}, "-"},
                                        {Qt::Key_0, {}, "0"},
                                        {Qt::Key_2, {}, "2"},
                                        {Qt::Key_A, Qt::ControlModifier},
                                        {Qt::Key_C, Qt::ControlModifier},
                                        {Qt::Key_V, Qt::ControlModifier},
                                        {Qt::Key_X, Qt::ControlModifier},
                                        {Qt::Key_Z, Qt::ControlModifier},
                                        {Qt::Key_F, Qt::ControlModifier},
                                        {Qt::Key_Left, Qt::ShiftModifier},
                                        {Qt::Key_Right, Qt::ControlModifier},
                                        {Qt::Key_PageDown, Qt::ControlModifier},
                                        {Qt::Key_Menu}};
    if (at->focusPolicy() != Qt::NoFocus) {
      at->setFocus(Qt::OtherFocusReason);
    }
    for (int count = dice_.whole(1, 5); count > 0; --count) {
      QWidget* into =
          QApplication::focusWidget() != nullptr ? QApplication::focusWidget() : at.data();
      if (into == nullptr) {
        return;
      }
      const Press& press = presses[dice_.whole(0, int(std::size(presses)) - 1)];
      QTest::sendKeyEvent(QTest::Click, into, press.key, QString::fromLatin1(press.text),
                          press.modifiers);
    }
  }

  static bool is_something_open() {
    return QApplication::activePopupWidget() != nullptr ||
           QApplication::activeModalWidget() != nullptr;
  }

  void leave_what_opened() {
    if (QWidget* popup = QApplication::activePopupWidget()) {
      if (dice_.chance(0.6)) {
        static constexpr Qt::Key keys[] = {Qt::Key_Down, Qt::Key_Down, Qt::Key_Up, Qt::Key_Return};
        QTest::sendKeyEvent(QTest::Click, popup, keys[dice_.whole(0, 3)], QString(),
                            Qt::NoModifier);
      } else {
        popup->close();
      }
    } else if (QWidget* modal = QApplication::activeModalWidget()) {
      modal->close();
    }
  }

  Dice& dice_;
  QStringList left_alone_; ///< with all in them
};

} // namespace feedwright::testing
