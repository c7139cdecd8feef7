// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/place_labels.h"

#include <algorithm>

namespace feedwright {

namespace {

/// Along the side: level with the area first, then either way.
constexpr double shifts[] = {0.0, -0.25, 0.25, -0.5, 0.5, -1.0, 1.0};
constexpr double distances[] = {1.0, 2.5, 4.0, 5.0, 6.0, 8.0};

QRectF candidate(const QRectF& area, const QSizeF& size, Beside side, double gap, double shift) {
  QRectF rect(QPointF(), size);
  rect.moveCenter(area.center());
  if (side == Beside::right || side == Beside::left) {
    rect.translate(0.0, shift * (area.height() + size.height()) / 2.0);
    side == Beside::right ? rect.moveLeft(area.right() + gap) : rect.moveRight(area.left() - gap);
  } else {
    rect.translate(shift * (area.width() + size.width()) / 2.0, 0.0);
    side == Beside::above ? rect.moveBottom(area.top() - gap) : rect.moveTop(area.bottom() + gap);
  }
  return rect;
}

} // namespace

bool LabelPlacer::is_free(const QRectF& rect) const {
  return bounds_.contains(rect) && std::none_of(taken_.begin(), taken_.end(), [&](const QRectF& t) {
           return t.intersects(rect);
         });
}

std::optional<QRectF> LabelPlacer::place(const QRectF& area, const QSizeF& size,
                                         const std::vector<Beside>& sides, double gap) {
  for (const double distance : distances) {
    for (const Beside side : sides) {
      for (const double shift : shifts) {
        const QRectF rect = candidate(area, size, side, gap * distance, shift);
        if (is_free(rect)) {
          take(rect);
          return rect;
        }
      }
    }
  }
  return std::nullopt;
}

std::optional<QRectF> LabelPlacer::place_anywhere(const QSizeF& size, double step) {
  for (double y = bounds_.bottom() - size.height(); y >= bounds_.top(); y -= step) {
    for (double x = bounds_.right() - size.width(); x >= bounds_.left(); x -= 2.0 * step) {
      const QRectF rect(QPointF(x, y), size);
      if (is_free(rect)) {
        take(rect);
        return rect;
      }
    }
  }
  return std::nullopt;
}

} // namespace feedwright
