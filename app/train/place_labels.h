// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Where words stand beside what they name, so that none covers a shape or another word.

#include <QRectF>
#include <QSizeF>

#include <optional>
#include <vector>

namespace feedwright {

enum class Beside { right, left, above, below };

/// Keeps count of what is taken.
class LabelPlacer {
public:
  explicit LabelPlacer(const QRectF& bounds) : bounds_(bounds) {}

  void take(const QRectF& rect) { taken_.push_back(rect); }
  bool is_free(const QRectF& rect) const;

  /// The first free place of that size beside `area`, sides in the order given, near first;
  /// taken then. Nothing if there is none.
  std::optional<QRectF> place(const QRectF& area, const QSizeF& size,
                              const std::vector<Beside>& sides, double gap);

  /// The lowest free place of that size, the rightmost of a row first; taken then.
  std::optional<QRectF> place_anywhere(const QSizeF& size, double step);

private:
  QRectF bounds_;
  std::vector<QRectF> taken_;
};

} // namespace feedwright
