// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The drive train as a drawing needs it: true sizes in millimetres and the words that go with
// them. No colours, no pixels.

#include "machine/machine.h"
#include "sizing/results.h"

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
};

/// What governs, said where it stands.
struct GoverningMark {
  PartSlot slot = PartSlot::drive;
  QString member;
  Verdict verdict = Verdict::open;
  QString text;
};

/// Lengths in mm. The screw lies along x, its motor-end bearing at 0.
struct TrainGeometry {
  QString title;
  double span = 0.0;
  double nominal_diameter = 0.0;
  double core_diameter = 0.0;
  double lead = 0.0;
  EndSupport motor_end = EndSupport::fixed;
  EndSupport far_end = EndSupport::supported;
  double nut_at_start = 0.0;
  double travel = 0.0;
  double motor_face = 0.0;      ///< side of the motor's flange
  bool motor_face_known = true; ///< false: drawn at a usual size
  std::optional<BeltDrawing> belt;
  /// Down, in the drawing's axes (y up), for an axis that is not level; of length 1.
  std::optional<QPointF> down;
  bool cuts = false;
  std::optional<WhipDrawing> whip;
  std::optional<GoverningMark> governing;

  QString motor_text;
  QString transmission_text;
  QString screw_text;
  QString span_text;
  QString travel_text;
  QString carriage_text;
  QString guides_text;
  QString cut_text;
  QString gravity_text;
  QString lying_text; ///< of an axis that does not lie as it is drawn
  QString supply_text;
  QString controller_text;
};

/// `results` may be missing while the machine has faults: then what is computed is left out.
TrainGeometry train_geometry(const Machine& machine, std::size_t axis, const AxisResults* results);

} // namespace feedwright
