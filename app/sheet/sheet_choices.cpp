// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_choices.h"

#include <QSettings>

namespace feedwright {

namespace {

constexpr QLatin1String working_key("sheet_with_working");

} // namespace

bool SheetChoices::with_working() {
  return QSettings().value(working_key, false).toBool();
}

void SheetChoices::set_with_working(bool on) {
  QSettings settings;
  settings.setValue(working_key, on);
  settings.sync();
}

} // namespace feedwright
