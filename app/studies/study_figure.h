// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A study as numbers and words, before anything is drawn: plots, tables, read-outs and spoken
// summaries are made from the same.

#include "machine/machine.h"
#include "sheet/file_units.h"
#include "sizing/results.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace feedwright {

enum class Study : std::uint8_t { thrust, acceleration, stretch, motor, move, errors, torque };
inline constexpr Study all_studies[] = {Study::thrust, Study::acceleration, Study::stretch,
                                        Study::motor,  Study::move,         Study::errors,
                                        Study::torque};

/// What a study is made from.
struct StudySubject {
  const Machine& machine;
  std::size_t axis;
  const AxisResults& results;
  const FileUnits& units;
  std::optional<Length> move = std::nullopt; ///< of the move; a tenth of the travel if not given
};

struct StudyCurve {
  QString label;
  std::vector<double> x = {}, y = {}; ///< in the figure's units; x rises
  bool present = true;                ///< as the machine is, not as it might be
  int dash = 0;                       ///< 0 solid; others by number, so that no two look alike
  bool named = true;                  ///< on the plot; in tables and read-outs always
  bool at_edge = false;               ///< named beside the plot, where it leaves it
  bool spare = false;                 ///< not drawn where that leaves no room to others' names
  QString caption = {};               ///< in few words, over one of many panels and beside a plot
};

/// A region between two curves over the same x, told apart by its hatching and its word.
struct StudyBand {
  enum class Ground : std::uint8_t { plain, hatched };
  QString label;
  std::vector<double> x = {}, low = {}, high = {};
  Ground ground = Ground::plain;
};

/// Across the whole panel.
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
  bool wanted = true; ///< a wanted point; else one that follows
};

/// One pair of axes.
struct StudyPanel {
  QString y_name, y_unit;
  double y_start = 0.0, y_end = 1.0;
  std::vector<StudyCurve> curves = {};
  std::vector<StudyBand> bands = {};
  std::vector<StudyLine> lines = {};
  std::vector<StudyMark> marks = {};
  std::vector<double> numbers = {}; ///< up its scale if these and no others, the last go first
  bool chief = false;               ///< of many, the one that decides: it gets the most room
  QString over_word = {};           ///< for what lies above the first curve; empty for no word
};

struct StackPart {
  QString label;
  double size = 0.0;
  int hatching = 0;                ///< the same for the same thing in every column
  Verdict verdict = Verdict::open; ///< where it alone is held against something
};

/// A level that a column is held against.
struct StackTick {
  QString label;
  double at = 0.0;
  bool target = false;
  Verdict verdict = Verdict::open;
  std::optional<std::size_t> part = std::nullopt; ///< measures that one alone, from its foot
};

/// What is not in a column: in few words for the plot, and whole.
struct StackNote {
  QString label, full;
};

/// One column of parts that add up.
struct StudyStack {
  QString name;
  std::vector<StackPart> parts = {};
  std::vector<StackTick> ticks = {};
  std::vector<StackNote> notes = {};
};

/// A second scale along the top.
struct StudyScale {
  QString name, unit;
  double per_x = 1.0;
};

struct StudyFigure {
  QString title;
  QString x_name, x_unit;
  double x_start = 0.0, x_end = 1.0;
  std::optional<StudyScale> top;
  std::vector<StudyPanel> panels = std::vector<StudyPanel>(1);
  std::vector<StudyStack> stacks; ///< if any, drawn on the first panel's scale in place of curves
  QString summary;                ///< one sentence

  /// Whether there is nothing to draw, and only the sentence to say.
  bool is_empty() const;
};

StudyFigure study_figure(Study study, const StudySubject& subject);

QString study_name(Study study);
QString x_axis_label(const StudyFigure& figure); ///< "feed, m/min"
QString top_axis_label(const StudyFigure& figure);
/// One line for both, for along the bottom there is room.
QString both_axes_label(const StudyFigure& figure);
QString y_axis_label(const StudyPanel& panel);
/// "△ wanted 150 N at 1.5 m/min"
QString mark_text(const StudyMark& mark);
QString tick_text(const StackTick& tick, const QString& unit);
QString part_text(const StackPart& part, const QString& unit);
/// "▲ 87.1 µm" and, without a unit, "▲ 87.1"
QString tick_number(const StackTick& tick, const QString& unit);
QString part_number(const StackPart& part, const QString& unit);

/// A figure as a table: a row for each point, for each thing marked, for each part of a stack.
struct StudyTable {
  QStringList head;
  std::vector<QStringList> rows;
};
StudyTable as_table(const StudyFigure& figure);
QString as_tab_separated(const StudyTable& table);
QString as_comma_separated(const StudyTable& table);

/// On the straight between the two points about `at`; nothing outside them. `x` rises.
std::optional<double> value_at(const std::vector<double>& x, const std::vector<double>& y,
                               double at);

/// Everything at x, in words and units.
QString read_out(const StudyFigure& figure, double x);

} // namespace feedwright
