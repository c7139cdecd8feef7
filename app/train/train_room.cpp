// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/train_room.h"

#include "train/label_marks.h"

#include <QStringList>

#include <algorithm>
#include <iterator>
#include <limits>

namespace feedwright {

namespace {

/// 1 : n. Near enough together that the drawing fills its room.
constexpr double scales[] = {0.2, 0.5, 1,  1.5, 2,  2.5, 3,  3.5, 4,   4.5, 5,   6,   7,   8,
                             9,   10,  11, 12,  13, 14,  15, 16,  18,  20,  22,  25,  28,  30,
                             35,  40,  45, 50,  60, 70,  80, 90,  100, 150, 200, 300, 500, 1000};

} // namespace

TrainRoom::TrainRoom(const TrainGeometry& train, const QRectF& rect, const TrainOptions& options,
                     const QFontMetricsF& metrics)
    : train_(train), rect_(rect), options_(options), metrics_(metrics), line_(metrics.height()),
      unit_(metrics.height() / 15.0), supply_text_(text_in_box(PartSlot::supply)),
      controller_text_(text_in_box(PartSlot::controller)),
      box_width_(std::max(text_width(supply_text_), text_width(controller_text_)) + u(14)),
      carriage_line_(
          QString(train.carriage_text).replace(QLatin1Char('\n'), QStringLiteral(" · "))),
      carriage_width_(width_of(carriage_line_)) {}

QString TrainRoom::text_in_box(PartSlot slot) const {
  QStringList lines = marks_at(train_, slot).lines;
  lines << (slot == PartSlot::supply ? train_.supply_text : train_.controller_text);
  return lines.join(QLatin1Char('\n'));
}

QSizeF TrainRoom::box(PartSlot slot) const {
  const auto lines = double(box_text(slot).count(QLatin1Char('\n')) + 1);
  return {box_width_, lines * line_ + u(6)};
}

double TrainRoom::boxes_height() const {
  return box(PartSlot::supply).height() + u(5) + box(PartSlot::controller).height();
}

double TrainRoom::centre_distance() const {
  const BeltDrawing& belt = *train_.belt;
  return belt.centre_distance.value_or(
      (belt.motor_pulley.pitch_diameter + belt.screw_pulley.pitch_diameter) * 1.2);
}

double TrainRoom::haul_radius(double scale) const {
  return train_.haul ? train_.haul->pitch_diameter / 2.0 * scale : 0.0;
}

double TrainRoom::drive_left(double scale, bool upright) const {
  if (train_.loop) {
    const LoopPulleyDrawing* screw = train_.loop->screw();
    const double pulley =
        train_.haul ? std::max(haul_radius(scale), u(8)) : u(30) + train_.loop->belt_width * scale;
    return loop_width(scale) + u(12) + (screw != nullptr ? pulley : u(16));
  }
  if (!train_.belt) {
    return train_.haul ? std::max(train_.motor_face / 2.0 * scale, haul_radius(scale)) + u(6)
                       : train_.motor_face * 1.3 * scale + u(56);
  }
  const double half_end = train_.belt->screw_pulley.pitch_diameter / 2.0;
  const double half_motor =
      std::max(train_.motor_face, train_.belt->motor_pulley.pitch_diameter) / 2.0;
  const double widest = std::max(half_end, half_motor);
  if (train_.haul) {
    return std::max((upright ? widest : centre_distance() + half_motor) * scale,
                    haul_radius(scale)) +
           u(6);
  }
  return (upright ? 2.0 * widest : half_end + centre_distance() + half_motor) * scale + u(26);
}

double TrainRoom::left(double scale, bool upright) const {
  return std::max(drive_left(scale, upright), box(PartSlot::supply).width() + u(14));
}

double TrainRoom::above(double scale, bool upright) const {
  double drive = train_.loop ? 0.0 : train_.motor_face / 2.0 * scale;
  if (train_.belt) {
    const double half = std::max(train_.motor_face, train_.belt->motor_pulley.pitch_diameter) / 2;
    drive = (upright ? centre_distance() + half : half) * scale + u(4);
  }
  const double words = line_ * 2.0 + u(32) + half_screw(scale);
  if (!train_.twin) {
    return std::max(drive, words);
  }
  const double half_twin = train_.twin_motor && !train_.belt && !train_.loop && !train_.haul
                               ? train_.motor_face / 2.0 * scale
                               : half_screw(scale) * (train_.haul ? 1.0 : 1.7);
  return std::max(
      {drive, words, twin_rise(scale) + half_twin + u(train_.opposed_text.isEmpty() ? 4 : 12)});
}

double TrainRoom::twin_rise(double scale) const {
  const double half = half_screw(scale);
  const bool motors = train_.twin_motor && !train_.belt && !train_.loop && !train_.haul;
  // The whip's arc and its words pass between the two.
  const double row = (train_.haul ? 2.0 : 2.7) * half + line_ + u(train_.haul ? 16 : 35);
  return motors ? std::max(row, train_.motor_face * scale + u(8)) : row;
}

double TrainRoom::thickness(double scale) const {
  // A core thinner than this would not be seen to have a thread; pulleys are drawn true.
  const double seen = u(4);
  return train_.haul ? 1.0 : std::max(1.0, seen / (train_.core_diameter * scale));
}

double TrainRoom::half_screw(double scale) const {
  return train_.nominal_diameter * scale * thickness(scale) / 2.0;
}

double TrainRoom::carriage_drop(double scale) const {
  const double words = half_screw(scale) + (train_.twin ? u(28) : u(18) + line_);
  // The motor of a hauling belt stands behind its pulley and may reach down to the guides.
  const double motor = train_.haul && !train_.loop ? train_.motor_face / 2.0 * scale : 0.0;
  return std::max(words, motor - line_);
}

QString TrainRoom::carriage_text(double scale) const {
  if (carriage_width_ + u(16) <= std::max(train_.span * scale * 0.8, u(150))) {
    return carriage_line_;
  }
  // A second screw leaves no height for a second line.
  const qsizetype after_mass = train_.carriage_text.indexOf(QLatin1Char('\n'));
  return train_.twin ? train_.carriage_text.left(after_mass)
                     : QString(carriage_line_).replace(after_mass, 3, QLatin1Char('\n'));
}

double TrainRoom::carriage_height(double scale) const {
  return line_ * double(carriage_text(scale).count(QLatin1Char('\n')) + 1) + u(12);
}

double TrainRoom::below(double scale, bool upright) const {
  const double rows = carriage_drop(scale) + carriage_height(scale) + u(12) + 2.0 * (line_ + u(5));
  const double pulley = train_.belt ? train_.belt->screw_pulley.pitch_diameter / 2.0 * scale : 0.0;
  const bool level = !train_.loop && (!train_.belt || !upright);
  const double half_motor = level ? train_.motor_face / 2.0 * scale : 0.0;
  const double boxes = boxes_height() + u(7);
  return std::max(rows, std::max(pulley, half_motor) + boxes);
}

double TrainRoom::title_height() const {
  return options_.title ? line_ + u(8) : 0.0;
}

double TrainRoom::loop_margin() const {
  return rect_.width() > u(760) ? u(64) : u(24);
}

QSizeF TrainRoom::loop_limits() const {
  const double boxes = boxes_height() + u(9);
  const double words = 3.0 * (line_ + u(5));
  return {std::max(rect_.width() * 0.36 - 2.0 * loop_margin(), u(60)),
          std::max(rect_.height() - title_height() - boxes - words, u(30))};
}

double TrainRoom::loop_scale(double scale) const {
  const QRectF loop = train_.loop->bounds(train_.motor_face);
  const QSizeF most = loop_limits();
  const auto fits = [&](double at) {
    return loop.width() * at <= most.width() && loop.height() * at <= most.height();
  };
  const double seen = u(120);
  if (fits(scale) && std::max(loop.width(), loop.height()) * scale >= seen) {
    return scale;
  }
  for (const double n : scales) {
    if (fits(options_.units_per_mm / n)) {
      return options_.units_per_mm / n;
    }
  }
  return std::min(most.width() / loop.width(), most.height() / loop.height());
}

double TrainRoom::loop_width(double scale) const {
  const double drawn = train_.loop->bounds(train_.motor_face).width() * loop_scale(scale);
  return std::max(drawn + 2.0 * loop_margin(), width_of(train_.transmission_text) + u(10));
}

bool TrainRoom::fits_width(double scale, bool upright) const {
  const double right = u(34) + haul_radius(scale);
  return left(scale, upright) + train_.span * scale + right <= rect_.width();
}

double TrainRoom::overflow(double scale, bool upright) const {
  const double wanted = title_height() + above(scale, upright) + below(scale, upright);
  return std::max(0.0, wanted - rect_.height());
}

double TrainRoom::last_scale() const {
  const double smallest = options_.units_per_mm / *std::rbegin(scales);
  const double right = u(34) + haul_radius(smallest);
  const double room = rect_.width() - left(smallest, true) - right;
  return std::max(room, u(40)) / train_.span;
}

void TrainRoom::choose_scale(TrainPlan& plan) const {
  // The largest that fits; in a room too low for any, the one that leaves it least.
  plan.scale = last_scale();
  plan.thickness = thickness(plan.scale);
  double least = std::numeric_limits<double>::max();
  for (const double n : scales) {
    const double scale = options_.units_per_mm / n;
    const bool too_small =
        least < std::numeric_limits<double>::max() && train_.span * scale < rect_.width() * 0.3;
    for (const bool upright : {true, false}) {
      const double over = overflow(scale, upright);
      if (too_small || over >= least || !fits_width(scale, upright)) {
        continue;
      }
      least = over;
      plan.belt_upright = upright;
      plan.scale = scale;
      plan.thickness = thickness(scale);
    }
  }
}

} // namespace feedwright
