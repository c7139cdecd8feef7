// SPDX-License-Identifier: GPL-3.0-or-later

// Diagrams of how results read: the verdicts, and a sample's errors term by term.

#include "help/diagrams.h"

#include "help/sample_axis.h"
#include "limits/number_text.h"
#include "sizing/limits.h"
#include "text/words.h"

#include <algorithm>
#include <span>
#include <vector>

namespace feedwright {

namespace {

QColor colour_of(const Look& look, Verdict verdict) {
  switch (verdict) {
  case Verdict::over: return look.over;
  case Verdict::close: return look.close;
  case Verdict::clear: return look.clear;
  case Verdict::open: break;
  }
  return look.faint_ink;
}

/// The margin as a line from nothing to twice what is wanted, and where it changes its word.
void verdicts(DiagramBoard& b) {
  constexpr double end = 2.0;
  const QRectF line(b.room.left() + b.u(10), b.room.top() + 2.2 * b.line, b.room.width() - b.u(20),
                    b.u(14));
  const auto x_of = [&](double margin) { return line.left() + margin / end * line.width(); };
  // Where the word changes is asked of the rule itself.
  std::vector<double> edges{0.0};
  for (int i = 1; i <= 200; ++i) {
    if (verdict_of(i / 100.0) != verdict_of((i - 1) / 100.0)) {
      edges.push_back(i / 100.0);
    }
  }
  edges.push_back(end);
  for (std::size_t i = 0; i + 1 < edges.size(); ++i) {
    const Verdict verdict = verdict_of((edges[i] + edges[i + 1]) / 2.0);
    const QRectF stretch(x_of(edges[i]), line.top(), x_of(edges[i + 1]) - x_of(edges[i]),
                         line.height());
    b.stroke(b.look.ink, 1.0);
    b.p.setBrush(verdict == Verdict::clear ? b.look.bar : colour_of(b.look, verdict));
    b.p.drawRect(stretch);
    const QString said =
        words::verdict_sign(verdict) + QLatin1Char(' ') + words::verdict_word(verdict);
    const double wide = std::max(stretch.width(), b.width_of(said) * 1.3);
    b.write({stretch.center().x() - wide / 2.0, line.top() - 1.3 * b.line, wide, b.line}, said,
            colour_of(b.look, verdict), Qt::AlignCenter, true);
    b.write({stretch.right() - 2.0 * b.line, line.bottom() + b.u(3), 4.0 * b.line, b.line},
            i + 2 < edges.size() ? number_text(edges[i + 1], 2) : QString(), b.look.ink,
            Qt::AlignCenter);
  }
  b.write({b.room.left(), b.room.bottom() - b.line, b.room.width(), b.line},
          words::verdict_sign(Verdict::open) + QLatin1Char(' ') +
              words::verdict_word(Verdict::open) + QStringLiteral(": ") +
              b.tr("a target or an input is missing"),
          b.look.faint_ink, Qt::AlignCenter);
}

/// The terms of one error of a sample, each as long as it is large.
void error_terms(DiagramBoard& b, std::span<const ResultId> terms) {
  auto read = sample_axis(QStringLiteral("plank-router"), 1);
  if (!read) {
    return;
  }
  const SampleAxis sample = with_stiffnesses(*std::move(read));
  double largest = 0.0;
  for (const ResultId id : terms) {
    largest = std::max(largest, descriptor(id).si_of(sample.results).value_or(0.0));
  }
  const double name_room = 0.42 * b.room.width();
  const double value_room = 0.16 * b.room.width();
  b.write({b.room.left(), b.room.top(), b.room.width(), b.line},
          b.tr("an example; its stiffnesses are invented"), b.look.faint_ink,
          Qt::AlignRight | Qt::AlignVCenter);
  const double height = (b.room.height() - b.line) / double(terms.size());
  double top = b.room.top() + b.line;
  for (const ResultId id : terms) {
    const QRectF row(b.room.left(), top, b.room.width(), height);
    b.write({row.left(), top, name_room, height}, words::result_name(id), b.look.ink);
    const auto value = descriptor(id).get(sample.results);
    const double room = row.width() - name_room - value_room;
    const double length = value && largest > 0.0 ? value->si / largest * room : 0.0;
    b.stroke(b.look.ink, 1.0);
    b.p.setBrush(b.look.bar);
    if (length > 0.0) {
      b.p.drawRect(QRectF(row.left() + name_room, top + 0.2 * height, length, 0.6 * height));
    }
    b.write({row.right() - value_room, top, value_room, height},
            value ? words::quantity(*value, descriptor(id).unit, 2)
                  : words::verdict_word(Verdict::open),
            value ? b.look.ink : b.look.faint_ink, Qt::AlignRight | Qt::AlignVCenter);
    top += height;
  }
}

void reversal_errors(DiagramBoard& b) {
  constexpr ResultId terms[] = {ResultId::lost_motion, ResultId::tooth_gap_error,
                                ResultId::windup_error, ResultId::friction_load_angle};
  error_terms(b, terms);
}

void cutting_errors(DiagramBoard& b) {
  constexpr ResultId terms[] = {ResultId::cutting_deflection, ResultId::cutting_load_angle};
  error_terms(b, terms);
}

constexpr Diagram diagrams[] = {{"verdicts", 5.6, &verdicts},
                                {"reversal-errors", 7.5, &reversal_errors},
                                {"cutting-errors", 4.5, &cutting_errors}};

} // namespace

std::span<const Diagram> result_diagrams() {
  return diagrams;
}

} // namespace feedwright
