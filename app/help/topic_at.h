// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"

#include <QString>

class QWidget;

namespace feedwright {

/// The page of help on what a widget of the window is about: the limit the keyboard stands on, the
/// study shown, the part whose field it edits. The chosen part's page for anything else.
QString topic_at(const QWidget* widget, const MachineDocument& document);

} // namespace feedwright
