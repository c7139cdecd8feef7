// SPDX-License-Identifier: GPL-3.0-or-later

// Diagrams of a screw: how it bends, what its sizes are called, how nuts are wound together.

#include "help/diagrams.h"

#include "limits/number_text.h"
#include "mechanics/buckling_shape.h"
#include "mechanics/whip_shape.h"
#include "text/words.h"

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

struct Ends {
  EndSupport motor, far;
};
/// From the softest to the stiffest.
constexpr Ends all_ends[] = {{EndSupport::fixed, EndSupport::free},
                             {EndSupport::supported, EndSupport::supported},
                             {EndSupport::fixed, EndSupport::supported},
                             {EndSupport::fixed, EndSupport::fixed}};

using Shape = double (*)(EndSupport, EndSupport, double);

QString end_name(EndSupport end) {
  return words::choice_name("motor_end",
                            fields::Names<EndSupport>::list[static_cast<std::size_t>(end)]);
}

double peak_of(Shape shape, const Ends& ends) {
  double peak = 0.0;
  for (int i = 0; i <= 64; ++i) {
    const double y = shape(ends.motor, ends.far, i / 64.0);
    peak = std::abs(y) > std::abs(peak) ? y : peak;
  }
  return peak;
}

/// A row: the two ends, the straight axis, the shape, and how it compares. All rows leave the same
/// room for that figure: a screw drawn shorter would seem stiffer for its length.
void bent_row(DiagramBoard& b, const QRectF& row, const Ends& ends, Shape shape,
              const QString& compared, double figure_room) {
  const double name_room = 0.36 * row.width();
  b.write({row.left(), row.top(), name_room, row.height()},
          b.tr("%1 – %2", "the two ends of a screw").arg(end_name(ends.motor), end_name(ends.far)),
          b.look.ink);
  b.write({row.right() - figure_room, row.top(), figure_room, row.height()}, compared, b.look.ink,
          Qt::AlignRight | Qt::AlignVCenter, true);
  const double left = row.left() + name_room + b.u(24);
  const double right = row.right() - figure_room - b.u(28);
  const QRectF area(left, row.top() + 0.1 * row.height(), right - left, 0.8 * row.height());
  b.stroke(b.look.faint_ink, 0.8, Qt::DashLine);
  b.p.drawLine(QPointF(left, area.center().y()), QPointF(right, area.center().y()));
  const double peak = peak_of(shape, ends);
  b.curve(
      area, [&](double x) { return 0.9 * shape(ends.motor, ends.far, x) / peak; }, b.look.accent,
      2.0);
  b.shapes.support({left, area.center().y()}, ends.motor, b.u(2), -1.0);
  b.shapes.support({right, area.center().y()}, ends.far, b.u(2), 1.0);
}

void bent_shapes(DiagramBoard& b, const QString& heading, Shape shape,
                 double (*compared)(const Ends&)) {
  b.write({b.room.left(), b.room.top(), b.room.width(), b.line}, heading, b.look.faint_ink,
          Qt::AlignRight | Qt::AlignVCenter);
  const double height = (b.room.height() - b.line) / double(std::size(all_ends));
  QStringList figures;
  double figure_room = 0.0;
  for (const Ends& ends : all_ends) {
    figures << QStringLiteral("× ") + number_text(compared(ends), 3);
    figure_room = std::max(figure_room, b.width_of(figures.back()) + b.u(8));
  }
  double top = b.room.top() + b.line;
  for (std::size_t i = 0; i < std::size(all_ends); ++i) {
    bent_row(b, {b.room.left(), top, b.room.width(), height}, all_ends[i], shape,
             figures[qsizetype(i)], figure_room);
    top += height;
  }
}

void whip_shapes(DiagramBoard& b) {
  bent_shapes(b, b.tr("speed at which it whips, against two supported ends"), &whip_shape,
              [](const Ends& ends) {
                const double of = *whip_eigenvalue(ends.motor, ends.far);
                const double plain = *whip_eigenvalue(EndSupport::supported, EndSupport::supported);
                return of * of / (plain * plain);
              });
}

void buckling_shapes(DiagramBoard& b) {
  bent_shapes(b, b.tr("load at which it buckles, against two supported ends"), &buckling_shape,
              [](const Ends& ends) { return *buckling_constant(ends.motor, ends.far); });
}

/// A stretch of thread cut along its middle: three diameters and the lead.
void screw_sizes(DiagramBoard& b) {
  const double pitch = b.room.width() / 9.0;
  const double left = b.room.left() + 0.34 * b.room.width();
  const double middle = b.room.center().y() - b.line * 0.8;
  const double core = 1.5 * b.line;
  const double outer = 2.6 * b.line;
  QPolygonF top;
  QPolygonF bottom;
  for (double x = left; x + pitch <= b.room.right() - b.u(4); x += pitch) {
    const double steps[] = {0.0, 0.14, 0.36, 0.50, 1.0};
    const double heights[] = {core, outer, outer, core, core};
    for (int i = 0; i < 5; ++i) {
      top << QPointF(x + steps[i] * pitch, middle - heights[i]);
      bottom << QPointF(x + (steps[i] + 0.5) * pitch, middle + heights[i]);
    }
  }
  QPolygonF outline = top;
  outline << QPointF(bottom.constLast().x(), middle - core);
  for (auto point = bottom.crbegin(); point != bottom.crend(); ++point) {
    outline << *point;
  }
  outline << QPointF(left, middle + core);
  b.stroke(b.look.ink, 1.4);
  b.p.setBrush(b.look.panel);
  b.p.drawPolygon(outline);
  b.stroke(b.look.faint_ink, 0.8, Qt::DashDotLine);
  b.p.drawLine(QPointF(left - b.u(8), middle), QPointF(b.room.right(), middle));
  const struct {
    const char* member;
    double half;
  } sizes[] = {{"nominal_diameter", outer},
               {"pitch_diameter", (core + outer) / 2.0},
               {"core_diameter", core}};
  double at = b.room.left() + b.width_of(QStringLiteral("0"));
  for (const auto& size : sizes) {
    b.shapes.double_arrow({QPointF(at, middle - size.half), QPointF(at, middle + size.half)},
                          b.look.ink);
    b.stroke(b.look.rule, 0.8);
    b.p.drawLine(QPointF(at, middle - size.half), QPointF(left + pitch * 0.4, middle - size.half));
    b.p.drawLine(QPointF(at, middle + size.half), QPointF(left + pitch * 0.6, middle + size.half));
    at += 0.1 * b.room.width();
  }
  // The names below each other, each led to its arrow by its place.
  double words_top = b.room.bottom() - 3.0 * b.line;
  at = b.room.left() + b.width_of(QStringLiteral("0"));
  for (const auto& size : sizes) {
    b.stroke(b.look.faint_ink, 0.8);
    const double level = words_top + b.line / 2.0;
    b.p.drawLine(QPointF(at, middle + size.half + b.u(2)), QPointF(at, level));
    b.p.drawLine(QPointF(at, level), QPointF(left - b.u(4), level));
    b.write({left, words_top, b.room.right() - left, b.line},
            words::field_name(PartSlot::drive, size.member), b.look.ink);
    words_top += b.line;
    at += 0.1 * b.room.width();
  }
}

/// The same lead by one thread and by two side by side.
void lead_and_starts(DiagramBoard& b) {
  const double half = b.room.height() / 2.0;
  const double lead = 0.22 * b.room.width();
  for (int starts = 1; starts <= 2; ++starts) {
    const double top = b.room.top() + (starts - 1) * half;
    const QRectF screw(b.room.left() + b.u(2), top + 1.3 * b.line, b.room.width() - b.u(4),
                       1.6 * b.line);
    b.shapes.screw(screw, screw.height() * 0.7, lead / starts);
    b.write({screw.left(), top, screw.width(), b.line},
            b.tr("starts: %1 · pitch = lead ÷ %1").arg(starts), b.look.ink);
    const double from = screw.left() + lead * 0.5 / starts;
    const double level = screw.bottom() + 0.7 * b.line;
    b.shapes.extension(from, screw.bottom(), level + b.u(4));
    b.shapes.extension(from + lead, screw.bottom(), level + b.u(4));
    b.dimension(from, from + lead, level, words::field_name(PartSlot::drive, "lead"));
  }
}

/// Two nuts wound against each other: which flanks touch.
void preloaded_pair(DiagramBoard& b) {
  const double middle = b.room.center().y();
  const QRectF screw(b.room.left() + b.u(2), middle - 0.8 * b.line, b.room.width() - b.u(4),
                     1.6 * b.line);
  b.shapes.screw(screw, screw.height() * 0.7, b.u(14));
  const double wide = 0.36 * b.room.width();
  const QRectF nut(b.room.center().x() - wide / 2.0, middle - 1.6 * b.line, wide, 3.2 * b.line);
  b.shapes.paired_nut(nut);
  const double reach = 0.16 * b.room.width();
  const double level = middle - 1.3 * b.line;
  b.shapes.arrow({QPointF(nut.left() - reach, level), QPointF(nut.left() - b.u(4), level)},
                 b.look.accent, true);
  b.shapes.arrow({QPointF(nut.right() + reach, level), QPointF(nut.right() + b.u(4), level)},
                 b.look.accent, true);
  b.write({b.room.left(), b.room.top(), b.room.width(), b.line},
          words::field_name(PartSlot::drive, "preload"), b.look.accent, Qt::AlignCenter, true);
  b.write({b.room.left(), b.room.bottom() - b.line, b.room.width(), b.line},
          b.tr("each half presses on one flank of the thread only: no play is left"), b.look.ink,
          Qt::AlignCenter);
}

constexpr Diagram diagrams[] = {{"whip-shapes", 15.0, &whip_shapes},
                                {"buckling-shapes", 15.0, &buckling_shapes},
                                {"screw-sizes", 10.0, &screw_sizes},
                                {"lead-and-starts", 9.0, &lead_and_starts},
                                {"preloaded-pair", 6.5, &preloaded_pair}};

} // namespace

std::span<const Diagram> screw_diagrams() {
  return diagrams;
}

} // namespace feedwright
