// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QScrollArea;
class QString;
class QWidget;

namespace feedwright {

/// An area that scrolls up and down only and is no stop of Tab. Its bar comes to rest whatever the
/// content does in another width.
QScrollArea* scrolling(QWidget* inside, const QString& name);

} // namespace feedwright
