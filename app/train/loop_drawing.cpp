// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/loop_drawing.h"

#include "limits/number_text.h"
#include "machine/loop_layout.h"
#include "text/words.h"

#include <QCoreApplication>
#include <QtMath>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

double mm(Length length) {
  return si_value(length) * 1e3;
}

QRectF square_of(const QPointF& centre, double radius) {
  return {centre.x() - radius, centre.y() - radius, 2.0 * radius, 2.0 * radius};
}

struct LoopWords {
  Q_DECLARE_TR_FUNCTIONS(Train)

public:
  static QString pulley(const LoopMember& member, std::optional<double> in_mesh) {
    const bool toothed = member.teeth > 0 && member.face == BeltFace::toothed;
    if (toothed && in_mesh) {
      return tr("%1 z, %2 in mesh", "teeth of a pulley, how many of them are in mesh")
          .arg(member.teeth)
          .arg(number_text(*in_mesh, 2));
    }
    if (toothed) {
      return tr("%1 z", "teeth of a pulley").arg(member.teeth);
    }
    const QString size =
        member.diameter ? words::quantity(any(**member.diameter), "mm", 3) : QString();
    return member.face == BeltFace::back ? tr("Ø %1, on the back", "idler").arg(size)
                                         : tr("Ø %1", "smooth idler").arg(size);
  }

  static QString belt(const BeltLoopDrive& drive) {
    return tr("belt %1, %2, %3 teeth", "profile, width, number of teeth")
        .arg(QString::fromStdString(drive.profile), words::quantity(any(*drive.width), "mm", 3))
        .arg(drive.belt_teeth);
  }
};

/// The belt's pitch line: an arc on every pulley, and straight from one to the next.
QPainterPath belt_of(const LoopLayout& layout) {
  QPainterPath path;
  for (std::size_t i = 0; i < layout.pulleys.size(); ++i) {
    const LoopPulley& pulley = layout.pulleys[i];
    const LoopContact& contact = layout.path.contacts[i];
    const QRectF circle =
        square_of(QPointF(mm(pulley.x), -mm(pulley.y)), mm(pulley.pitch_diameter) / 2.0);
    const double from = qRadiansToDegrees(si_value(contact.from));
    const double to = qRadiansToDegrees(si_value(contact.to));
    if (i == 0) {
      path.arcMoveTo(circle, from);
    }
    path.arcTo(circle, from, to - from);
  }
  path.closeSubpath();
  return path;
}

double drawn_diameter(const BeltLoopDrive& drive, const LoopMember& member) {
  const bool on_teeth = member.teeth > 0 && member.face == BeltFace::toothed;
  if (!on_teeth && member.diameter) {
    return mm(**member.diameter);
  }
  const auto pitch_line = loop_pitch_diameter(drive, member);
  return pitch_line ? mm(*pitch_line) : 0.0;
}

} // namespace

const LoopPulleyDrawing* LoopDrawing::screw() const {
  const auto found = std::find_if(pulleys.begin(), pulleys.end(), [](const LoopPulleyDrawing& p) {
    return p.role == PulleyRole::screw;
  });
  return found != pulleys.end() ? &*found : nullptr;
}

QRectF LoopDrawing::bounds(double motor_face) const {
  QRectF all = belt.boundingRect();
  for (const LoopPulleyDrawing& pulley : pulleys) {
    const bool on_motor = pulley.role == PulleyRole::motor;
    constexpr double least = 4.0;
    const double side = std::max({pulley.diameter, on_motor ? motor_face : 0.0, least});
    const QRectF square = square_of(pulley.centre, side / 2.0);
    all = all.isEmpty() ? square : all.united(square);
  }
  return all;
}

LoopDrawing loop_drawing(const BeltLoopDrive& drive, const AxisResults* results) {
  LoopDrawing out;
  const auto layout = loop_layout(drive);
  for (std::size_t i = 0; i < drive.pulleys.size(); ++i) {
    const LoopMember& member = drive.pulleys[i];
    const Length x = layout ? layout->pulleys[i].x : *member.x;
    const Length y = layout ? layout->pulleys[i].y : *member.y;
    const bool known = layout && results != nullptr && i < results->loop.size();
    out.pulleys.push_back(
        {QPointF(mm(x), -mm(y)), drawn_diameter(drive, member), member.teeth, member.role,
         LoopWords::pulley(member,
                           known ? std::optional(results->loop[i].teeth_in_mesh) : std::nullopt)});
  }
  if (layout) {
    out.belt = belt_of(*layout);
  }
  const auto slider = static_cast<std::size_t>(drive.sliding_pulley) - 1;
  if (slider < drive.pulleys.size()) {
    out.sliding = slider;
    const double angle = si_value(*drive.slide_direction);
    out.slide = QPointF(std::cos(angle), -std::sin(angle));
  }
  out.belt_width = mm(*drive.width);
  out.text = LoopWords::belt(drive);
  return out;
}

} // namespace feedwright
