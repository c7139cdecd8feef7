// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace feedwright {

/// What a sheet made from the window has beside its usual pages, in the settings and stored at
/// once. The command line has options of its own and does not ask here.
class SheetChoices {
public:
  /// How each figure came about, appended.
  static bool with_working();
  static void set_with_working(bool on);
};

} // namespace feedwright
