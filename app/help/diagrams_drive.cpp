// SPDX-License-Identifier: GPL-3.0-or-later

// Diagrams of what turns and moves: belts, a reduction, two sides, a move, a cut.

#include "help/diagrams.h"

#include "limits/number_text.h"
#include "mechanics/belt_geometry.h"
#include "mechanics/belt_loop.h"
#include "mechanics/move_profile.h"
#include "text/words.h"
#include "train/belt_path.h"
#include "units/literals.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace feedwright {

namespace {

using namespace literals;

/// Two pulleys; the teeth that share the pull stand out.
void belt_mesh(DiagramBoard& b) {
  constexpr int small_teeth = 14;
  constexpr int large_teeth = 42;
  const Length small = pulley_pitch_diameter(double(small_teeth), 5_mm);
  const Length large = pulley_pitch_diameter(double(large_teeth), 5_mm);
  const Length apart = 75_mm;
  const double scale =
      std::min(0.86 * b.room.height() / si_value(large),
               0.62 * b.room.width() / si_value(Length(apart + (small + large) / 2.0)));
  const auto px = [&](Length length) { return si_value(length) * scale; };
  const double middle = b.room.center().y();
  const QPointF at_small(b.room.left() + px(small) / 2.0 + b.u(12), middle);
  const QPointF at_large(at_small.x() + px(apart), middle);
  b.shapes.pulley(at_small, px(small) / 2.0, small_teeth);
  b.shapes.pulley(at_large, px(large) / 2.0, large_teeth);
  b.shapes.belt(belt_path(at_small, px(small) / 2.0, at_large, px(large) / 2.0), true);
  const double wrap = si_value(smaller_pulley_wrap(small, large, apart));
  const double degrees = wrap * 180.0 / std::numbers::pi;
  const double radius = px(small) / 2.0 + b.u(3.5);
  constexpr double sixteenths = 16.0;
  b.stroke(b.look.accent, 4.0);
  b.p.drawArc(QRectF(at_small - QPointF(radius, radius), QSizeF(2.0 * radius, 2.0 * radius)),
              int((180.0 - degrees / 2.0) * sixteenths), int(degrees * sixteenths));
  const int teeth = int(std::floor(small_teeth * wrap / (2.0 * std::numbers::pi)));
  const double words_left = at_large.x() + px(large) / 2.0 + b.u(14);
  const double words_room = b.room.right() - words_left;
  const QString said[] = {b.tr("%1 teeth").arg(small_teeth), b.tr("wrap %1°").arg(qRound(degrees)),
                          b.tr("in mesh: %1").arg(teeth)};
  double top = middle - 1.5 * b.line;
  for (const QString& words : said) {
    b.write({words_left, top, words_room, b.line}, words, b.look.accent);
    top += b.line;
  }
}

/// A belt over a motor below and two screws above, with an idler on its back.
void loop_with_idler(DiagramBoard& b) {
  const Length screw = pulley_pitch_diameter(24.0, 5_mm);
  const Length motor = pulley_pitch_diameter(20.0, 5_mm);
  const Length idler = 20_mm;
  const std::array<LoopPulley, 4> pulleys{
      LoopPulley{0_mm, 0_mm, motor, false}, LoopPulley{120_mm, 90_mm, screw, false},
      LoopPulley{0_mm, 52_mm, idler, true}, LoopPulley{-120_mm, 90_mm, screw, false}};
  const auto loop = belt_loop(pulleys);
  constexpr double tall = 0.126; // from the motor's pulley to the screws', in metres
  const double scale =
      std::min((b.room.height() - 2.8 * b.line) / tall, 0.80 * b.room.width() / 0.28);
  const auto place = [&](Length x, Length y) {
    return QPointF(b.room.center().x() + si_value(x) * scale,
                   b.room.bottom() - 1.4 * b.line - si_value(Length(y + motor / 2.0)) * scale);
  };
  const int teeth[] = {20, 24, 0, 24};
  const QString names[] = {words::choice_name("role", "motor"), words::choice_name("role", "screw"),
                           words::choice_name("role", "idler"),
                           words::choice_name("role", "screw")};
  for (std::size_t i = 0; i < pulleys.size(); ++i) {
    const QPointF at = place(pulleys[i].x, pulleys[i].y);
    const double radius = si_value(pulleys[i].pitch_diameter) * scale / 2.0;
    teeth[i] > 0 ? b.shapes.pulley(at, radius, teeth[i]) : b.shapes.roller(at, radius);
  }
  if (!loop) {
    return;
  }
  b.stroke(b.look.ink, 2.2);
  for (const LoopSpan& span : loop->spans) {
    b.p.drawLine(place(span.from.x, span.from.y), place(span.to.x, span.to.y));
  }
  for (std::size_t i = 0; i < pulleys.size(); ++i) {
    const LoopContact& contact = loop->contacts[i];
    const double radius = si_value(pulleys[i].pitch_diameter) * scale / 2.0;
    const QPointF at = place(pulleys[i].x, pulleys[i].y);
    const double degree = 180.0 / std::numbers::pi;
    const double turn = si_value(Angle(contact.to - contact.from)) * degree;
    constexpr double sixteenths = 16.0;
    b.p.drawArc(QRectF(at - QPointF(radius, radius), QSizeF(2.0 * radius, 2.0 * radius)),
                int(si_value(contact.from) * degree * sixteenths), int(turn * sixteenths));
    const double below = i > 0 ? -radius - b.line - b.u(4) : radius + b.u(3);
    b.write({at.x() - 6.0 * b.line, at.y() + below, 12.0 * b.line, b.line}, names[i],
            b.look.faint_ink, Qt::AlignCenter);
  }
}

/// What one and the same load weighs on the motor behind three reductions.
void reduction(DiagramBoard& b) {
  const double column = b.room.width() / 3.0;
  const double base = b.room.bottom() - 2.2 * b.line;
  const double full = base - b.room.top() - 1.2 * b.line;
  for (int i = 1; i <= 3; ++i) {
    const double share = 1.0 / double(i * i);
    const QRectF bar(b.room.left() + (i - 0.7) * column, base - share * full, 0.4 * column,
                     share * full);
    b.stroke(b.look.ink, 1.2);
    b.p.setBrush(b.look.panel);
    b.p.drawRect(bar);
    const QRectF below(b.room.left() + (i - 1) * column, base + b.u(3), column, b.line);
    b.write(below, b.tr("reduction %1 : 1").arg(i), b.look.ink, Qt::AlignCenter);
    b.write(below.translated(0.0, b.line), b.tr("motor turns %1 ×").arg(i), b.look.faint_ink,
            Qt::AlignCenter);
    b.write({below.left(), bar.top() - b.line - b.u(2), column, b.line},
            i == 1 ? QStringLiteral("J") : QStringLiteral("J ÷ %1").arg(i * i), b.look.ink,
            Qt::AlignCenter, true);
  }
  b.rule({QPointF(b.room.left(), base), QPointF(b.room.right(), base)});
}

/// A gantry from above: the load nearer to one side.
void two_sides(DiagramBoard& b) {
  const double left = b.room.left() + 0.16 * b.room.width();
  const double right = b.room.right() - 0.16 * b.room.width();
  const double top = b.room.top() + 1.6 * b.line;
  const double bottom = b.room.bottom() - 2.4 * b.line;
  for (const double x : {left, right}) {
    b.stroke(b.look.ink, 3.0);
    b.p.drawLine(QPointF(x, top), QPointF(x, bottom));
  }
  const double beam = top + 0.25 * (bottom - top);
  b.stroke(b.look.ink, 1.2);
  b.p.setBrush(b.look.panel);
  b.p.drawRect(QRectF(left - b.u(10), beam - b.u(9), right - left + b.u(20), b.u(18)));
  const double head = left + 0.24 * (right - left);
  b.p.setBrush(b.look.paper);
  b.p.drawRect(QRectF(head - b.u(16), beam - b.u(15), b.u(32), b.u(30)));
  // A beam on two supports: the nearer one carries more.
  const double near = (right - head) / (right - left);
  const double force = bottom - beam - b.u(20);
  b.shapes.arrow({QPointF(left, beam + b.u(14)), QPointF(left, beam + b.u(14) + near * force)},
                 b.look.accent, true);
  b.shapes.arrow(
      {QPointF(right, beam + b.u(14)), QPointF(right, beam + b.u(14) + (1.0 - near) * force)},
      b.look.accent, true);
  b.write({b.room.left(), b.room.top(), b.room.width(), b.line},
          b.tr("the side nearer to the load carries more"), b.look.accent, Qt::AlignCenter);
  b.dimension(left, right, b.room.bottom() - 1.4 * b.line,
              words::field_name(PartSlot::sides, "spacing"));
}

/// Speed over time, with and without a limit of jerk.
void move_profiles(DiagramBoard& b) {
  const auto fastest = from_si<Velocity>(0.1);
  const MoveLimits sudden{fastest, from_si<Acceleration>(0.5), std::nullopt};
  const MoveLimits gentle{fastest, from_si<Acceleration>(0.5), from_si<Jerk>(4.0)};
  const auto first = least_time_move(80_mm, sudden);
  const auto second = least_time_move(80_mm, gentle);
  const QRectF area(b.room.left() + b.u(6), b.room.top() + 1.4 * b.line, b.room.width() - b.u(12),
                    b.room.height() - 3.0 * b.line);
  b.rule({area.bottomLeft(), area.bottomRight()});
  b.rule({area.bottomLeft(), area.topLeft()});
  const Time longest = second->total * 1.06;
  const auto draw = [&](const MoveProfile& move, const QColor& colour, double weight) {
    b.curve(
        QRectF(area.left(), area.top(), area.width(), 2.0 * area.height()),
        [&](double x) { return state_at(move, longest * x).velocity / fastest; }, colour, weight);
  };
  draw(*first, b.look.faint_ink, 1.4);
  draw(*second, b.look.accent, 2.2);
  b.write({area.left(), b.room.top(), area.width(), b.line},
          b.tr("speed", "of a carriage, over time"), b.look.faint_ink);
  b.write({area.left(), b.room.top(), area.width(), b.line},
          b.tr("thin: no jerk limit · bold: with one"), b.look.ink,
          Qt::AlignRight | Qt::AlignVCenter);
  b.write({area.left(), area.bottom() + b.u(3), area.width(), b.line}, b.tr("time"),
          b.look.faint_ink, Qt::AlignRight | Qt::AlignVCenter);
}

/// A tool from above, cutting along a flank.
void cut(DiagramBoard& b) {
  const double radius = 0.36 * b.room.height();
  const QPointF tool(b.room.left() + 0.30 * b.room.width(), b.room.center().y());
  const double engaged = 0.7 * radius;
  const double face = tool.y() + radius - engaged;
  const QRectF material(b.room.left() + b.u(4), face, 0.56 * b.room.width(),
                        b.room.bottom() - face - b.u(4));
  b.stroke(b.look.rule, 0.8);
  b.p.setBrush(b.look.panel);
  b.p.drawRect(material);
  b.stroke(b.look.ink, 1.6);
  b.p.setBrush(b.look.paper);
  b.p.drawEllipse(tool, radius, radius);
  b.shapes.arrow({QPointF(tool.x() + radius + b.u(6), tool.y()),
                  QPointF(tool.x() + radius + b.u(64), tool.y())},
                 b.look.accent, true);
  const double at = material.right() + b.u(14);
  b.shapes.double_arrow({QPointF(at, face), QPointF(at, tool.y() + radius)}, b.look.ink);
  b.rule({QPointF(tool.x(), tool.y() + radius), QPointF(at + b.u(6), tool.y() + radius)});
  b.rule({QPointF(material.right(), face), QPointF(at + b.u(6), face)});
  const double words_left = at + b.u(12);
  b.write(
      {words_left, (face + tool.y() + radius - b.line) / 2.0, b.room.right() - words_left, b.line},
      words::column_name(PartSlot::duty, "load_cases", "engagement"), b.look.ink);
  b.write({tool.x() + radius + b.u(70), tool.y() - b.line / 2.0,
           b.room.right() - tool.x() - radius - b.u(70), b.line},
          words::column_name(PartSlot::duty, "load_cases", "feed"), b.look.accent);
  b.write({tool.x() - radius, tool.y() - b.line / 2.0, 2.0 * radius, b.line},
          words::column_name(PartSlot::duty, "load_cases", "tool_diameter"), b.look.faint_ink,
          Qt::AlignCenter);
}

constexpr Diagram diagrams[] = {
    {"belt-mesh", 9.0, &belt_mesh},         {"loop-with-idler", 12.0, &loop_with_idler},
    {"reduction", 10.0, &reduction},        {"two-sides", 11.0, &two_sides},
    {"move-profiles", 9.0, &move_profiles}, {"cut", 9.0, &cut}};

} // namespace

std::span<const Diagram> drive_diagrams() {
  return diagrams;
}

} // namespace feedwright
