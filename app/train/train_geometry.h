// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The drive train as a drawing needs it: true sizes in millimetres and the words that go with
// them. No colours, no pixels.

#include "machine/machine.h"
#include "sizing/at_position.h"
#include "sizing/results.h"
#include "train/loop_drawing.h"

#include <QPointF>
#include <QString>

#include <optional>
#include <vector>

namespace feedwright {

struct PulleyCircle {
  double pitch_diameter = 0.0; ///< mm
  int teeth = 0;
};

/// Belt and two pulleys, seen from the end and turned into the plane of the drawing.
struct BeltDrawing {
  PulleyCircle motor_pulley;
  PulleyCircle screw_pulley;
  /// mm; nothing if no centre distance fits the belt.
  std::optional<double> centre_distance;
};

/// The shape the screw whips in, from `from` to `to` in mm along the span.
struct WhipDrawing {
  double from = 0.0;
  double to = 0.0;
  std::vector<QPointF> shape; ///< x from 0 to 1, y up to 1
  Verdict verdict = Verdict::open;
  QString text;
  /// Wanted speed over critical speed; nothing without a wanted feed.
  std::optional<double> nearness;
};

/// A limit that wants attention, said at the part it stands at.
struct GoverningMark {
  PartSlot slot = PartSlot::drive;
  QString member;
  Verdict verdict = Verdict::open;
  QString text;
};

/// A figure in the drawing's words, that can be typed over where it stands.
struct TrainFigure {
  PartSlot slot = PartSlot::drive;
  QString member;
  QString shown; ///< as the words have it; empty where they say that it is missing
};

/// Words with figures in them.
struct FigureText {
  QString text;
  std::vector<TrainFigure> figures; ///< in the text's order
};

/// What a dimension says, and its figure alone where the words have no room.
struct DimensionText {
  QString words;
  QString figure;
};

/// Lengths in mm. The screw (or the run of the hauling belt) lies along x, its motor-end bearing
/// (or the motor's pulley) at 0.
struct TrainGeometry {
  QString title;
  double span = 0.0;
  double nominal_diameter = 0.0; ///< of a hauling belt's pulleys the pitch diameter
  double core_diameter = 0.0;
  double lead = 0.0;
  EndSupport motor_end = EndSupport::fixed;
  EndSupport far_end = EndSupport::supported;
  double nut_at_start = 0.0;
  double travel = 0.0;
  double nut_along = 0.0;       ///< where on its travel the nut is drawn
  double motor_face = 0.0;      ///< side of the motor's flange
  bool motor_face_known = true; ///< false: drawn at a usual size
  std::optional<BeltDrawing> belt;
  std::optional<LoopDrawing> loop;
  std::optional<PulleyCircle> haul; ///< each of the pulleys of a belt that hauls the carriage
  bool nut_turns = false;
  bool preloaded_pair = false; ///< two nuts on the screw
  bool twin = false;           ///< a second screw or hauling belt on the other side
  bool twin_motor = false;     ///< and a motor for it
  /// Down, in the drawing's axes (y up), for an axis that is not level; of length 1.
  std::optional<QPointF> down;
  bool brake = false;
  bool balanced = false; ///< a spring or weight pulls against gravity
  bool cuts = false;
  bool works = false; ///< has load cases or moves
  std::optional<WhipDrawing> whip;
  std::optional<GoverningMark> governing;
  /// Limits nearly as low as the governing one, and others that are over, worst first.
  std::vector<GoverningMark> also;
  std::vector<FigureText> figures;

  QString motor_text;
  QString transmission_text;
  QString screw_text; ///< or the hauling belt's
  QString nut_text;
  QString sides_text;
  QString opposed_text; ///< empty where the sides share
  QString duty_text;
  DimensionText span_text;
  DimensionText travel_text;
  QString carriage_text; ///< a line each
  QString guides_text;
  QString cut_text;
  bool can_fall = false; ///< or rise, when the power goes: what stands in the drawing says so
  bool rises = false;    ///< what can "fall": its counterbalance is stronger than its weight
  QString fall_text;     ///< that it can, in few words
  QString gravity_text;
  QString lying_text; ///< of an axis that does not lie as it is drawn
  QString supply_text;
  QString controller_text;
};

/// `results` may be missing while the machine has faults: then what is computed is left out. With
/// `at` the carriage is drawn there, and what depends on its place as it is there; else in the
/// middle, with the worst over the travel.
TrainGeometry train_geometry(const Machine& machine, std::size_t axis, const AxisResults* results,
                             const AtPosition* at = nullptr);

} // namespace feedwright
