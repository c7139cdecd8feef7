// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QLabel;
class QString;
class QWidget;

namespace feedwright {

/// A wrapping label that shows its text as it is, never as markup.
QLabel* plain_label(const QString& text, QWidget* parent);

} // namespace feedwright
