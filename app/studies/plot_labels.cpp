// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/plot_labels.h"

#include <algorithm>
#include <limits>

namespace feedwright {

namespace {

constexpr double gap = 5.0;

std::vector<QRectF> candidates(const PlotLabel& label) {
  const double w = label.size.width();
  const double h = label.size.height();
  std::vector<QRectF> found;
  for (const QPointF& at : label.anchors) {
    if (label.stand == PlotLabel::Stand::on) {
      found.emplace_back(at.x() - w / 2.0, at.y() - h / 2.0, w, h);
      continue;
    }
    if (label.stand == PlotLabel::Stand::level) {
      found.emplace_back(at.x() - w, at.y() - h - 2.0, w, h);
      found.emplace_back(at.x() - w, at.y() + 2.0, w, h);
      continue;
    }
    found.emplace_back(at.x() + gap, at.y() - h - 2.0, w, h);
    found.emplace_back(at.x() + gap, at.y() + 2.0, w, h);
    found.emplace_back(at.x() - gap - w, at.y() + 2.0, w, h);
    found.emplace_back(at.x() - gap - w, at.y() - h - 2.0, w, h);
    found.emplace_back(at.x() - w / 2.0, at.y() - h - 3.0 * gap, w, h);
    found.emplace_back(at.x() - w / 2.0, at.y() + 3.0 * gap, w, h);
  }
  return found;
}

QRectF pushed_inside(QRectF rect, const QRectF& room) {
  rect.moveLeft(
      std::clamp(rect.left(), room.left(), std::max(room.left(), room.right() - rect.width())));
  rect.moveTop(
      std::clamp(rect.top(), room.top(), std::max(room.top(), room.bottom() - rect.height())));
  return rect;
}

} // namespace

std::vector<std::optional<PlacedLabel>> place_plot_labels(const QRectF& room,
                                                          const std::vector<PlotLabel>& labels,
                                                          std::vector<QRectF> taken) {
  // A word over a word cannot be read; over a curve it can.
  const std::ptrdiff_t curves = std::ssize(taken);
  constexpr std::ptrdiff_t word_over_word = 10'000;
  // Words first, and no farther than to what is no better.
  const auto covered_by = [&](const QRectF& rect, std::ptrdiff_t enough) {
    std::ptrdiff_t covered = 0;
    for (std::ptrdiff_t i = std::ssize(taken); i-- > 0 && covered < enough;) {
      if (taken[static_cast<std::size_t>(i)].intersects(rect)) {
        covered += i < curves ? 1 : word_over_word;
      }
    }
    return covered;
  };
  std::vector<std::optional<PlacedLabel>> places;
  for (const PlotLabel& label : labels) {
    QRectF best(room.topLeft(), label.size);
    if (label.anchors.isEmpty()) { // nowhere in view: takes no room
      places.emplace_back();
      continue;
    }
    std::ptrdiff_t fewest = std::numeric_limits<std::ptrdiff_t>::max();
    for (const QRectF& rect : candidates(label)) {
      if (label.clear && !room.contains(rect)) {
        continue; // pushed, it might stand in another zone
      }
      // Free inside the room first; else what covers least, pushed inside.
      const QRectF tried = room.contains(rect) ? rect : pushed_inside(rect, room);
      const std::ptrdiff_t covered = covered_by(tried, fewest);
      if (covered < fewest) {
        fewest = covered;
        best = tried;
      }
      if (fewest == 0) {
        break;
      }
    }
    if (fewest >= (label.clear ? 1 : word_over_word)) {
      places.emplace_back();
      continue;
    }
    // Two in one line need a gap, or they are read as one phrase.
    taken.push_back(best.adjusted(-label.size.height(), 0.0, label.size.height(), 0.0));
    places.push_back(PlacedLabel{best.topLeft(), fewest == 0});
  }
  return places;
}

std::vector<double> spread_labels(const std::vector<double>& middles, double height, double top,
                                  double bottom) {
  return spread_labels(middles, std::vector<double>(middles.size(), height), top, bottom);
}

std::vector<double> spread_labels(const std::vector<double>& middles,
                                  const std::vector<double>& heights, double top, double bottom) {
  std::vector<double> tops;
  double free_from = top;
  for (std::size_t i = 0; i < middles.size(); ++i) {
    tops.push_back(std::max(free_from, middles[i] - heights[i] / 2.0));
    free_from = tops.back() + heights[i];
  }
  double free_to = bottom;
  for (std::size_t i = tops.size(); i-- > 0;) {
    tops[i] = std::max(std::min(tops[i], free_to - heights[i]), top);
    free_to = tops[i];
  }
  return tops;
}

std::vector<QRectF> cover(const QPolygonF& curve, const QRectF& room) {
  std::vector<QRectF> rects;
  for (qsizetype i = 1; i < curve.size(); ++i) {
    const QRectF rect = QRectF(curve[i - 1], curve[i]).normalized().adjusted(-1, -1, 1, 1);
    if (rect.intersects(room)) {
      rects.push_back(rect.intersected(room));
    }
  }
  return rects;
}

} // namespace feedwright
