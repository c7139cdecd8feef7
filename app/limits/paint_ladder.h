// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "limits/ladder.h"
#include "window/style.h"

#include <QFont>
#include <QRectF>
#include <QStringList>

class QPaintDevice;
class QPainter;

namespace feedwright {

struct LadderOptions {
  QFont font;
  std::optional<std::size_t> focused; ///< row the keyboard stands on
  std::optional<std::size_t> hovered;
  std::optional<LimitId> chosen; ///< row whose part and working are shown
  bool mirrored = false;         ///< runs from right to left
};

/// Where each row stands. What is painted and what a click finds are both read from here.
struct LadderPlan {
  double line = 15.0; ///< height of a line of text
  double unit = 1.0;
  double row_height = 18.0;
  double name_left = 0.0;   ///< x where names begin; as if it ran from left to right
  double scale_left = 0.0;  ///< x of 0
  double scale_right = 0.0; ///< x of the scale's end
  bool names_above = false; ///< a name stands over its bar: beside it there is no room
  QRectF title;
  QRectF unit_label;        ///< below the title where they have no room on one line
  QRectF wanted_label;      ///< likewise; of the whole line it stands in
  double ticks_top = 0.0;   ///< top of the scale's numbers
  QRectF tie;               ///< of the sentence on limits that govern together; empty without one
  QRectF open_label;        ///< before the open limits; empty without any
  std::vector<QRectF> rows; ///< an open limit's is only as wide as its name
  std::vector<QStringList> names; ///< of the rows, in lines
  double bottom = 0.0;

  /// Of a row that has a bar: the line its bar and figure stand in.
  QRectF bar_line(std::size_t row) const;
  /// Likewise, where its name stands; as if it ran from left to right.
  QRectF name_area(std::size_t row) const;
  /// What is written over the wanted line, or explains the strokes; empty where nothing is.
  static QString wanted_text(const Ladder& ladder);
};

/// Every so many ticks get a number: all of them, or evenly fewer, but never the zero alone.
int labelled_every(const Ladder& ladder, double scale_width, double widest, double gap);

/// Whether the row is set in bold letters.
bool stands_out(const LadderRow& row);

/// The row's figure and, where it governs, that it does.
QString figure_text(const Ladder& ladder, const LadderRow& row);

LadderPlan plan_ladder(const Ladder& ladder, const QRectF& rect, const LadderOptions& options,
                       QPaintDevice* device);

/// The width at which its bars have a good length beside their names, each in one line.
double easy_ladder_width(const Ladder& ladder, const LadderOptions& options, QPaintDevice* device);

/// The height the ladder takes at that font and width.
double ladder_height(const Ladder& ladder, double width, const LadderOptions& options,
                     QPaintDevice* device);

/// Paints the ladder on a window or on paper. Sign and word say what colour says. The background is
/// left as it is.
void paint_ladder(QPainter& painter, const Ladder& ladder, const QRectF& rect, const Look& look,
                  const LadderOptions& options);

/// The same, where it was planned before for that room, font and device.
void paint_ladder(QPainter& painter, const Ladder& ladder, const QRectF& rect,
                  const LadderPlan& plan, const Look& look, const LadderOptions& options);

} // namespace feedwright
