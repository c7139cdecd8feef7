// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The few colours everything is drawn with, in light and dark.

#include <QColor>
#include <QPalette>

namespace feedwright {

/// Colours by what they mean. Text in ink, faint_ink, accent, over, close and clear reads on paper
/// and on panel with a contrast of at least 4.5 to 1. None of them means anything without a word
/// or a shape beside it.
struct Look {
  QColor paper;     ///< what drawings and plots stand on
  QColor panel;     ///< what lists and fields stand on
  QColor ink;       ///< lines and text
  QColor faint_ink; ///< captions, dimensions, what is there but not now
  QColor rule;      ///< hairlines, frames, grids: never text
  QColor accent;    ///< the target, the selected, the clickable
  QColor over;
  QColor close;
  QColor clear;
  QColor bar; ///< a bar that is not in trouble
  bool dark = false;

  /// The set that goes with a palette: dark if its text is lighter than its window.
  static Look of(const QPalette& palette);
  static Look light_look();
  static Look dark_look();
};

/// What the View menu offers.
enum class Theme : std::uint8_t { system, light, dark };

/// A whole palette in the colours of `look`.
QPalette palette_of(const Look& look);

/// Fusion style with our palette. `system` asks what palette the desktop gave at start.
void apply_theme(Theme theme);

} // namespace feedwright
