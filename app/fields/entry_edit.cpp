// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/entry_edit.h"

#include "window/style.h"
#include "window/text_measure.h"

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QPainterPath>
#include <QPointer>
#include <QStyleOptionFrame>

#include <algorithm>

namespace feedwright {

EntryEdit::EntryEdit(QWidget* parent) : QLineEdit(parent) {
  connect(this, &QLineEdit::textChanged, this, [this] { mark_error(0, 0); });
}

void EntryEdit::put_text(const QString& text) {
  // Rewriting the same text would lose cursor and selection.
  if (this->text() != text) {
    setText(text);
    setCursorPosition(0);
  }
  setModified(false);
}

void EntryEdit::show_taken(const QString& text) {
  taken_ = text;
  const QString shown = hasFocus() ? text : at_rest(text);
  // What has come into the field under the caret, by Undo or from a list, is typed over whole.
  const bool new_under_caret = hasFocus() && this->text() != shown;
  put_text(shown);
  mark_error(0, 0);
  if (new_under_caret) {
    selectAll();
  }
}

void EntryEdit::show_typed(const QString& text) {
  setText(text);
  setModified(true);
}

void EntryEdit::give_up() {
  put_text(taken_);
  selectAll();
  emit given_up();
}

void EntryEdit::hand_in() {
  if (isModified()) {
    emit committed(text());
  }
}

void EntryEdit::mark_error(int at, int length) {
  if (mark_at_ != at || mark_length_ != length) {
    mark_at_ = at;
    mark_length_ = length;
    update();
  }
}

void EntryEdit::add_offers(QMenu& menu) const {
  if (offers_) {
    offers_(menu);
  }
}

void EntryEdit::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape && isModified()) {
    give_up();
    return;
  }
  QLineEdit::keyPressEvent(event);
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    const QPointer<EntryEdit> alive(this);
    hand_in();
    // What was taken may have made the form anew, and this field with it.
    if (alive == nullptr) {
      return;
    }
    // Ready to be typed over: all of it, or what is wrong with it.
    if (isModified() && mark_length_ > 0) {
      setSelection(mark_at_, mark_length_);
    } else {
      selectAll();
    }
  }
}

void EntryEdit::focusInEvent(QFocusEvent* event) {
  const bool was_chosen = hasSelectedText() && selectedText() == text();
  if (!isModified()) {
    put_text(taken_);
  }
  QLineEdit::focusInEvent(event);
  // A jump leads here to type another value: never into the old one.
  if (was_chosen || event->reason() == Qt::OtherFocusReason) {
    selectAll();
  }
}

void EntryEdit::focusOutEvent(QFocusEvent* event) {
  QLineEdit::focusOutEvent(event);
  if (event->reason() == Qt::PopupFocusReason || event->reason() == Qt::ActiveWindowFocusReason) {
    return;
  }
  const QPointer<EntryEdit> alive(this);
  hand_in();
  if (alive != nullptr && !isModified()) {
    put_text(at_rest(taken_));
  }
}

QRect EntryEdit::text_room() const {
  constexpr int side = 2; // as the line itself keeps free
  QStyleOptionFrame frame;
  initStyleOption(&frame);
  return style()
      ->subElementRect(QStyle::SE_LineEditContents, &frame, this)
      .marginsRemoved(textMargins())
      .adjusted(side, 0, -side, 0);
}

QString EntryEdit::shortened() const {
  // Figures stand at the end of their line, and are short.
  if (hasFocus() || (alignment() & Qt::AlignRight) != 0) {
    return {};
  }
  const TextMeasure measure(font(), this);
  const double room = text_room().width();
  return measure.width(text()) <= room ? QString()
                                       : measure.metrics().elidedText(text(), Qt::ElideRight, room);
}

void EntryEdit::paintEvent(QPaintEvent* event) {
  QLineEdit::paintEvent(event);
  paint_shortened();
  paint_mark();
}

/// Over the text that ends where the line does, as if that were all of it.
void EntryEdit::paint_shortened() {
  const QString shown = shortened();
  if (shown.isEmpty()) {
    return;
  }
  QPainter painter(this);
  const QRect room = text_room();
  painter.fillRect(room.adjusted(-2, 1, 2, -1), palette().base());
  painter.setPen(palette().color(QPalette::Text));
  painter.drawText(room,
                   int(QStyle::visualAlignment(layoutDirection(), Qt::AlignLeft) |
                       Qt::AlignVCenter | Qt::AlignAbsolute | Qt::TextSingleLine),
                   shown);
}

/// A wave under what is wrong: a shape, whatever its colour.
void EntryEdit::paint_mark() {
  if (mark_length_ <= 0 || mark_at_ >= text().size()) {
    return;
  }
  const QRect caret = cursorRect();
  const auto place_of = [&](int at) {
    const int from = std::min(at, cursorPosition());
    const int width =
        fontMetrics().horizontalAdvance(text().mid(from, std::abs(at - cursorPosition())));
    return caret.center().x() + (at < cursorPosition() ? -width : width);
  };
  const int end = std::min(mark_at_ + mark_length_, static_cast<int>(text().size()));
  const QRect inside = contentsRect().adjusted(2, 1, -2, -1);
  const int left = std::max(place_of(mark_at_), inside.left());
  const int right = std::min(place_of(end), inside.right());
  const int base = std::min(caret.bottom() + 1, inside.bottom()) - 1;
  const int step = std::max(2, fontMetrics().height() / 7);
  QPainterPath wave(QPointF(left, base));
  for (int x = left, up = 1; x < right; x += step, up = 1 - up) {
    wave.lineTo(std::min(x + step, right), base - up * step * 0.7);
  }
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(Look::of(palette()).over, 1.4));
  painter.drawPath(wave);
}

void EntryEdit::contextMenuEvent(QContextMenuEvent* event) {
  // Not waited for: what it offers may make the form anew, and this editor with it.
  QMenu* menu = createStandardContextMenu();
  menu->setAttribute(Qt::WA_DeleteOnClose);
  fill_menu(*menu);
  add_offers(*menu);
  menu->popup(event->globalPos());
}

} // namespace feedwright
