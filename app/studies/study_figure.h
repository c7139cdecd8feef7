// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A study as numbers and words, before anything is drawn: plots, copied tables and spoken
// summaries are made from the same.

#include "machine/machine.h"
#include "sizing/results.h"

#include <QString>

#include <optional>
#include <vector>

namespace feedwright {

enum class Study { thrust, acceleration, stretch, motor };
inline constexpr Study all_studies[] = {Study::thrust, Study::acceleration, Study::stretch,
                                        Study::motor};

struct StudyCurve {
  QString label;
  std::vector<double> x, y; ///< in the figure's units; x rises
  bool present = true;      ///< as the machine is, not as it might be
  int dash = 0;             ///< 0 solid; others by number, so that no two look alike
};

/// Across the whole figure.
struct StudyLine {
  QString label;
  double value = 0.0;
  bool upright = true;
  bool target = true; ///< what is wanted, not what is
};

struct StudyMark {
  QString label;
  double x = 0.0;
  double y = 0.0;
  Verdict verdict = Verdict::open;
};

struct StudyFigure {
  QString title;
  QString x_name, y_name;
  QString x_unit, y_unit;
  double x_start = 0.0, x_end = 1.0, y_end = 1.0; ///< y starts at 0
  std::vector<StudyCurve> curves;
  std::vector<StudyLine> lines;
  std::vector<StudyMark> marks;
  QString summary; ///< one sentence
};

StudyFigure study_figure(Study study, const Machine& machine, std::size_t axis,
                         const AxisResults& results);

QString study_name(Study study);
QString x_axis_label(const StudyFigure& figure); ///< "feed, m/min"
QString y_axis_label(const StudyFigure& figure);
/// All curves as tab-separated columns with a heading, for a spreadsheet.
QString as_table(const StudyFigure& figure);

} // namespace feedwright
