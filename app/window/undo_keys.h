// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QKeyEvent;
class QWidget;

namespace feedwright {

/// Decides what the keys of Undo and Redo mean where a text is edited: as long as something typed
/// there is not taken they go through the typing, else they are the window's and go through the
/// machine's steps.
class UndoKeys : public QObject {
  Q_OBJECT
public:
  explicit UndoKeys(QWidget& window);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  QWidget& window_;
};

} // namespace feedwright
