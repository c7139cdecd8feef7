// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Remedies in words.

#include "choosing/remedies.h"

#include <QString>

namespace feedwright {

/// One remedy as it is shown, spoken and named for Undo.
struct RemedyText {
  Verdict verdict = Verdict::over; ///< of the limit afterwards; over where the trouble only
                                   ///< moves, open where something is known no more
  QString what;                    ///< "length between bearings ≤ 1288 mm"
  QString then;                    ///< "then whip governs: 6 m/min, close"
  QString trouble;                 ///< what it makes worse, with the caution that goes with it
  QString spoken;                  ///< all of it as one sentence
  QString details;                 ///< old and new of each field and of every limit it moves
  QString step;                    ///< "Try length between bearings 1288 mm"
};

/// What the words are about: the machine as it stands, its results, and the lists.
struct RemedyContext {
  const Machine& machine;
  std::size_t axis = 0;
  const AxisResults& now;
  LimitId limit{};
  std::span<const ListedPart> parts;
  const FileUnits& units;
};

RemedyText text_of(const Remedy& remedy, const RemedyContext& context);

/// "▲ over: whip, 4.55 of 6 m/min. To reach it:"
QString limit_heading(const RemedyContext& context, bool any);

/// "▲ whip", as a choice among the limits in trouble.
QString limit_entry(const Limit& limit);

} // namespace feedwright
