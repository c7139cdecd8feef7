// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Writes words into a plan, each where it covers nothing.

#include "train/place_labels.h"
#include "train/train_plan.h"

#include <QFontMetricsF>

namespace feedwright {

class LabelWriter {
public:
  LabelWriter(TrainPlan& plan, const QRectF& rect, const TrainOptions& options,
              const QFontMetricsF& metrics)
      : plan_(plan), rect_(rect), options_(options), metrics_(metrics), placer_(rect) {}

  double u(double n) const { return n * plan_.unit; }
  QSizeF size_of(const QString& text, bool bold = false) const;

  void take(const QRectF& rect) { placer_.take(rect); }
  void take(const QLineF& line, double beside);
  /// Along every line of a path, so that what it encloses stays free.
  void take_along(const QPainterPath& path);

  void add(const QString& text, const QRectF& area, Tone tone, bool bold = false,
           Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignVCenter);
  /// Beside an area, on the first side that has room, from `gap` units to eight times as far;
  /// nothing if none has.
  std::optional<QRectF> beside(const QString& text, const QRectF& area,
                               const std::vector<Beside>& sides, Tone tone, bool bold = false,
                               double gap = 6.0);
  /// Where there is any room at all.
  std::optional<QRectF> anywhere(const QString& text, Tone tone);
  /// A word that stands for a part: beside the area, else anywhere, broken at a comma if need be;
  /// a click on it finds the part.
  void part_word(PartSlot slot, const char* member, const QString& text, const QRectF& area,
                 const std::vector<Beside>& sides);
  /// The measure of a dimension, in its line or past its end.
  void dimension(const DimensionText& text, double from, double to, double height);

private:
  TrainPlan& plan_;
  QRectF rect_;
  const TrainOptions& options_;
  const QFontMetricsF& metrics_;
  LabelPlacer placer_;
};

} // namespace feedwright
