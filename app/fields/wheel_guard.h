// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QWidget;

namespace feedwright {

/// Hands every turn of the wheel over a control on to what it stands in, so that scrolling past
/// never edits.
class WheelGuard : public QObject {
  Q_OBJECT
public:
  explicit WheelGuard(QWidget* guarded);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace feedwright
