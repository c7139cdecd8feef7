// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>

namespace feedwright {

/// An area that scrolls up and down only and is no stop of Tab. Content that is lower in the width
/// beside a bar than in the whole would have the bar come and go for ever, each change within the
/// one before: then the bar stays until the area has another size.
class SteadyArea : public QScrollArea {
  Q_OBJECT
public:
  explicit SteadyArea(QWidget* parent = nullptr);

protected:
  bool event(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  int depth_ = 0; ///< of changes within changes
  bool restless_ = false;
};

} // namespace feedwright
