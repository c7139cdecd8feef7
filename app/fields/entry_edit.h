// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>

#include <functional>

class QMenu;

namespace feedwright {

/// A line that hands in what is typed with Enter or when the keyboard leaves it, and brings back
/// what was taken with Escape. It judges nothing: whoever listens to `committed` either takes the
/// text and calls `show_taken`, or leaves it standing and calls `mark_error`.
class EntryEdit : public QLineEdit {
  Q_OBJECT
public:
  explicit EntryEdit(QWidget* parent = nullptr);

  /// Shows a text that counts; nothing is typed any more.
  void show_taken(const QString& text);
  /// Shows a text that was typed before and does not count yet.
  void show_typed(const QString& text);
  bool holds_typed() const { return isModified(); }
  const QString& taken() const { return taken_; }
  /// Shows what was taken again: what is typed is thrown away, as by Escape.
  void give_up();
  /// Emits `committed` if something is typed.
  void hand_in();
  /// The text as far as there is room for it, with an ellipsis where that is not all; empty where
  /// it is all there, or the keyboard is in it.
  QString shortened() const;
  /// Underlines a stretch of the text, in characters; a length of zero takes it away.
  void mark_error(int at, int length);
  /// What the field's menu offers besides.
  void set_offers(std::function<void(QMenu&)> offers) { offers_ = std::move(offers); }

signals:
  /// `same_value`: the text says the same value in another unit.
  void committed(const QString& text, bool same_value = false);
  /// What was typed has been thrown away.
  void given_up();

protected:
  /// What is shown of a taken text while the keyboard is elsewhere.
  virtual QString at_rest(const QString& text) const { return text; }
  /// Further lines of the field's menu, before the offers.
  virtual void fill_menu(QMenu& /*menu*/) {}
  void add_offers(QMenu& menu) const;

  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;

private:
  void put_text(const QString& text);
  QRect text_room() const;
  void paint_shortened();
  void paint_mark();

  QString taken_;
  std::function<void(QMenu&)> offers_;
  int mark_at_ = 0;
  int mark_length_ = 0;
};

} // namespace feedwright
