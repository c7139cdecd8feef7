// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The drive train put in its place on a sheet or a window: where each shape and each word stands,
// in the units of the painter. What is painted and what a click finds are both read from here.

#include "train/train_geometry.h"

#include <QFont>
#include <QPaintDevice>
#include <QPainterPath>
#include <QRectF>

#include <vector>

namespace feedwright {

struct TrainOptions {
  QFont font;
  /// Painter units per millimetre of paper or screen, for the stated scale.
  double units_per_mm = 96.0 / 25.4;
  bool title = true;
  /// Says that a click chooses parts: marks them. On paper nothing is.
  std::optional<PartSlot> selected;
  std::optional<PartSlot> focused;
};

struct PlannedPart {
  PartSlot slot;
  QString member; ///< field to show; may be empty
  QRectF area;
};

/// What colour a label is written in.
enum class Tone { ink, faint, accent, clear, close, over };

struct PlannedLabel {
  QString text;
  QRectF area;
  Tone tone = Tone::faint;
  bool bold = false;
  Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignVCenter;
};

/// A figure in a label, where it can be typed over.
struct PlannedFigure {
  PartSlot slot;
  QString member;
  QRectF area; ///< of the figure itself; null where the words found no room
};

/// The whole of a label with figures in it: it stands for its part.
struct PlannedCaption {
  PartSlot slot;
  QRectF area;
};

/// The end view of a belt loop, seen along the shafts.
struct LoopPlan {
  double scale = 1.0;
  QPointF origin; ///< where the loop's coordinates are nought
  QPointF title;  ///< top left of the words that head it
  QRectF area;    ///< of pulleys, belt and motor
  std::vector<QPointF> centres;
  QPainterPath belt; ///< empty where none fits
  QLineF slide;      ///< null if nothing slides
  QLineF band;       ///< the belt seen from the side, from screw to screw
  QRectF twin_pulley;
};

/// The second screw or hauling belt, drawn beside the first.
struct TwinPlan {
  QRectF screw;
  QRectF nut;
  QRectF motor; ///< null if it has none that can be drawn
  QRectF coupling;
};

struct TrainPlan {
  double scale = 1.0;     ///< painter units per millimetre of the machine
  double thickness = 1.0; ///< by what the screw's diameters are exaggerated
  double unit = 1.0;      ///< a hair over a pixel at an ordinary text size
  double line = 15.0;     ///< height of a line of text
  bool belt_upright = true;
  QPointF start; ///< motor-end bearing, on the screw's axis
  QPointF end;   ///< far bearing
  QPointF motor_axis;
  QRectF motor;
  QRectF coupling; ///< or the pulley on the screw's end
  QRectF screw;    ///< at its nominal diameter; of a hauling belt its two runs
  QRectF nut;      ///< or the clamp on a hauling belt
  QRectF nut_at_start;
  QRectF nut_at_end;
  QRectF carriage;
  double rail = 0.0; ///< height of the guides' line
  double travel_line = 0.0;
  double span_line = 0.0;
  QLineF cut_arrow;
  QLineF gravity_arrow; ///< or what a too strong counterbalance leaves of it, upwards
  QRectF
      standing; ///< of the sign that shows how the axis stands; null if it lies, or without a title
  QLineF balance; ///< from the carriage to where a counterbalance pulls it
  QRectF brake;   ///< on the rail
  QPainterPath belt;
  std::optional<LoopPlan> loop;
  std::optional<TwinPlan> twin;
  QPolygonF leader;      ///< from the drive to a nut that turns
  QLineF opposing[2];    ///< what two screws do to each other, at their nuts
  QString carriage_text; ///< as much as has room in it
  QPolygonF whip;
  QRectF supply;
  QRectF controller;
  QString supply_text; ///< what stands in the box, with what governs there
  QString controller_text;
  std::vector<PlannedPart> parts;
  std::vector<PlannedLabel> labels;
  std::vector<PlannedFigure> figures;
  std::vector<PlannedCaption> captions; ///< of labels that have figures

  /// Of the arrow round a nut that turns.
  double turning_radius() const { return nut.height() / 2.0 + 7.0 * unit; }

  /// The part at a point: the smallest that holds it, else that of the words there.
  const PlannedPart* part_at(const QPointF& point) const;
  const PlannedFigure* figure_at(const QPointF& point) const;
  /// The figure at a point, or the nearest in the words there.
  const PlannedFigure* figure_near(const QPointF& point) const;
  /// The loop's pulley at a point of its end view.
  std::optional<std::size_t> pulley_at(const QPointF& point, const LoopDrawing& loop) const;
};

TrainPlan plan_train(const TrainGeometry& train, const QRectF& rect, const TrainOptions& options,
                     QPaintDevice* device);

Tone tone_of(Verdict verdict);

/// Parts in the order the keyboard visits them.
inline constexpr PartSlot visited_parts[] = {
    PartSlot::axis,       PartSlot::targets,  PartSlot::duty,  PartSlot::supply,
    PartSlot::controller, PartSlot::sides,    PartSlot::motor, PartSlot::transmission,
    PartSlot::drive,      PartSlot::carriage, PartSlot::guides};

} // namespace feedwright
