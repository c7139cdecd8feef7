// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"

#include <QFrame>

class QLabel;
class QLineEdit;

namespace feedwright {

/// One figure typed over where the drawing shows it. Reads and names its step as the form does;
/// what cannot be used stays as typed, with a sentence that says why. Where the editor has to close
/// over it, it waits for the figure's field, and is shown there and here again.
class FigureEditor : public QFrame {
  Q_OBJECT
public:
  FigureEditor(MachineDocument& document, QWidget* parent);

  /// Over `area` of the parent; false if the part has no such field that can be typed.
  bool open(std::size_t axis, PartSlot slot, const QString& member, const QRectF& area);
  /// Takes what is typed, then closes; false, and open still, where it cannot be used.
  bool commit();
  /// Takes what is typed, or leaves it waiting for the figure's field, and closes.
  void hand_in();
  /// Another axis is shown by now.
  void leave_if_not_of(std::size_t axis);

  /// The figure it is over, or was last.
  bool was_on(PartSlot slot, const QString& member) const {
    return slot == slot_ && member == member_;
  }

signals:
  /// Closed by Enter or Escape: the keyboard goes back to the drawing.
  void left();
  /// Tab: what was typed is taken; the next figure is wanted, or the one before.
  void step_wanted(int step);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  TypedAt waiting_place() const { return TypedAt::of(axis_, slot_, member_.toStdString()); }
  bool holds_typed() const;
  void keep_typed();
  void leave();
  void preview();
  void say(const QString& text, bool error);
  void place();
  void put_away();
  bool take_key(int key);

  MachineDocument& document_;
  QLabel* name_;
  QLineEdit* edit_;
  QLabel* note_;
  std::size_t axis_ = 0;
  PartSlot slot_ = PartSlot::drive;
  QString member_;
  QRectF area_;
  bool error_ = false;
};

} // namespace feedwright
