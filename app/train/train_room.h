// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// How much room each piece of the drawing wants at a scale, and the scale that follows.

#include "train/train_plan.h"

#include <QFontMetricsF>

namespace feedwright {

class TrainRoom {
public:
  TrainRoom(const TrainGeometry& train, const QRectF& rect, const TrainOptions& options,
            const QFontMetricsF& metrics);

  /// Fills the plan's scale, thickness and the way its belt stands.
  void choose_scale(TrainPlan& plan) const;

  double width_of(const QString& text) const { return metrics_.horizontalAdvance(text); }
  /// Of the supply's or the controller's box. Both are as wide as the wider.
  QSizeF box(PartSlot slot) const;
  /// What is in that box: what governs there, then its own text.
  const QString& box_text(PartSlot slot) const {
    return slot == PartSlot::supply ? supply_text_ : controller_text_;
  }
  /// Of both boxes and the gap between them.
  double boxes_height() const;
  /// How far the drive reaches from the motor-end bearing to the left.
  double left(double scale, bool upright) const;
  double above(double scale, bool upright) const;
  double below(double scale, bool upright) const;
  double title_height() const;
  double half_screw(double scale) const;
  /// From the belt's motor to its screw, in mm; a usual distance where no belt fits.
  double centre_distance() const;
  /// From the screw's middle to the carriage's top.
  double carriage_drop(double scale) const;
  double carriage_height(double scale) const;
  /// As much of it as has room in the carriage.
  QString carriage_text(double scale) const;
  /// From the first screw up to the second.
  double twin_rise(double scale) const;
  double loop_scale(double scale) const;
  /// Of the end view with its words.
  double loop_width(double scale) const;
  double loop_margin() const;
  QSizeF loop_limits() const;

private:
  double u(double n) const { return n * unit_; }
  double text_width(const QString& lines) const { return metrics_.size(0, lines).width(); }
  QString text_in_box(PartSlot slot) const;
  bool fits_width(double scale, bool upright) const;
  /// Where none of the usual ones is small enough: the screw goes into what room there is.
  double last_scale() const;
  /// By how much the drawing is higher than its room.
  double overflow(double scale, bool upright) const;
  double thickness(double scale) const;
  double haul_radius(double scale) const;
  double drive_left(double scale, bool upright) const;

  const TrainGeometry& train_;
  QRectF rect_;
  const TrainOptions& options_;
  const QFontMetricsF& metrics_;
  double line_;
  double unit_;
  // Measured once: every scale is tried, and measuring text is slow.
  QString supply_text_, controller_text_;
  double box_width_;
  QString carriage_line_;
  double carriage_width_;
};

} // namespace feedwright
