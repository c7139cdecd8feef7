// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/undo_keys.h"

#include "fields/entry_edit.h"

#include <QApplication>
#include <QComboBox>
#include <QFocusEvent>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTextDocument>

namespace feedwright {

namespace {

/// Whether there is typing to go back or forth through that nobody has taken yet.
bool has_typing(const QLineEdit& line, bool back) {
  return back ? line.isModified() && line.isUndoAvailable() : line.isRedoAvailable();
}

/// What was typed and undone to what had been taken is typed no more.
void give_up_what_is_as_taken(QObject& edited) {
  auto* entry = qobject_cast<EntryEdit*>(&edited);
  if (entry != nullptr && entry->isModified() && entry->text() == entry->taken()) {
    entry->give_up();
  }
}

/// Notes are taken letter by letter into one step, which is gone back through in the same way.
bool has_typing(const QPlainTextEdit& notes, bool back) {
  return back ? notes.document()->isUndoAvailable() : notes.document()->isRedoAvailable();
}

bool has_typing(const QObject& edited, bool back) {
  if (const auto* notes = qobject_cast<const QPlainTextEdit*>(&edited)) {
    return has_typing(*notes, back);
  }
  if (const auto* line = qobject_cast<const QLineEdit*>(&edited)) {
    return has_typing(*line, back);
  }
  const auto* box = qobject_cast<const QComboBox*>(&edited);
  return box != nullptr && box->isEditable() && has_typing(*box->lineEdit(), back);
}

bool edits_text(const QObject& object) {
  const auto* box = qobject_cast<const QComboBox*>(&object);
  return qobject_cast<const QLineEdit*>(&object) != nullptr ||
         qobject_cast<const QPlainTextEdit*>(&object) != nullptr ||
         (box != nullptr && box->isEditable());
}

/// What was typed into notes before the keyboard went elsewhere is a step among the others.
void forget_typing(QObject& left, const QFocusEvent& event) {
  auto* notes = qobject_cast<QPlainTextEdit*>(&left);
  if (notes != nullptr && event.reason() != Qt::PopupFocusReason &&
      event.reason() != Qt::ActiveWindowFocusReason) {
    notes->document()->clearUndoRedoStacks();
  }
}

} // namespace

UndoKeys::UndoKeys(QWidget& window) : QObject(&window), window_(window) {
  qApp->installEventFilter(this);
}

bool UndoKeys::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::FocusOut) {
    forget_typing(*watched, static_cast<QFocusEvent&>(*event));
    return false;
  }
  const bool asks = event->type() == QEvent::ShortcutOverride;
  if ((!asks && event->type() != QEvent::KeyPress) || !watched->isWidgetType() ||
      !edits_text(*watched) || static_cast<QWidget*>(watched)->window() != &window_) {
    return false;
  }
  auto& key = static_cast<QKeyEvent&>(*event);
  const bool back = key.matches(QKeySequence::Undo);
  if (back) {
    give_up_what_is_as_taken(*watched);
  }
  if ((!back && !key.matches(QKeySequence::Redo)) || has_typing(*watched, back)) {
    return false;
  }
  // Not the text's own key: as a shortcut it is free, and pressed in vain it does nothing.
  key.setAccepted(!asks);
  return true;
}

} // namespace feedwright
