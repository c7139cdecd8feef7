// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/edge_names.h"

#include "studies/plot_items.h"
#include "studies/plot_labels.h"
#include "studies/word_widths.h"
#include "window/text_measure.h"

#include <qcustomplot.h>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

constexpr int most_lines = 3; // of one name
constexpr double leader_length = 10.0;
constexpr double sample_length = 24.0; // the longest dash with its gaps
constexpr double before_name = 4.0;
constexpr int beside_name = int(leader_length + sample_length + before_name) + 3;

QFont font_of(const StudyCurve& curve, QFont font) {
  font.setBold(curve.present);
  return font;
}

// Of the plot's width; the more lines, the narrower the names are, and the less it can be helped.
constexpr double most_of_width[] = {0.36, 0.42, 0.5};

bool ends_in_view(const StudyCurve& curve, const StudyPanel& panel) {
  return !curve.y.empty() && curve.y.back() >= panel.y_start && curve.y.back() <= panel.y_end;
}

bool is_named(const StudyCurve& curve, const StudyPanel& panel, bool spare) {
  return curve.at_edge && ends_in_view(curve, panel) && (spare || !curve.spare);
}

/// Of the widest name, where each has that many lines.
double width_of_names(const StudyPanel& panel, const QFont& font, const EdgeNames& names) {
  double width = 0.0;
  for (const StudyCurve& curve : panel.curves) {
    if (is_named(curve, panel, names.spare)) {
      const QFont own = font_of(curve, font);
      width = std::max(width, widest_line(broken_name(short_name(curve), names.lines, own), own));
    }
  }
  return width;
}

double height_of_names(const StudyPanel& panel, const QFont& font, const EdgeNames& names) {
  double height = 0.0;
  for (const StudyCurve& curve : panel.curves) {
    if (is_named(curve, panel, names.spare)) {
      const QFont own = font_of(curve, font);
      height +=
          TextMeasure(own).height() * double(edge_lines(short_name(curve), names, own).size());
    }
  }
  return height;
}

} // namespace

const QString& short_name(const StudyCurve& curve) {
  return curve.caption.isEmpty() ? curve.label : curve.caption;
}

QStringList edge_lines(const QString& name, const EdgeNames& names, const QFont& font) {
  for (int lines = 1; lines < names.lines; ++lines) {
    QStringList tried = broken_name(name, lines, font);
    if (widest_line(tried, font) <= names.width - beside_name) {
      return tried;
    }
  }
  return broken_name(name, names.lines, font);
}

EdgeNames edge_names(const StudyPanel& panel, const QFont& font, const QSize& plot) {
  if (std::ranges::none_of(panel.curves, &StudyCurve::at_edge)) {
    return {.width = 1};
  }
  EdgeNames made;
  for (const bool spare : {true, false}) {
    for (int lines = 1; lines <= most_lines; ++lines) {
      made = {.lines = lines, .spare = spare};
      made.width = int(std::ceil(width_of_names(panel, font, made))) + beside_name;
      made.fit = made.width <= most_of_width[lines - 1] * plot.width() &&
                 height_of_names(panel, font, made) <= plot.height();
      if (made.fit) {
        return made;
      }
    }
  }
  return made;
}

EdgeKeeper::EdgeKeeper(QCustomPlot& plot, QCPAxisRect& rect)
    : QObject(&plot), plot_(plot), rect_(rect) {
  setObjectName(QStringLiteral("label_keeper"));
  connect(&plot, &QCustomPlot::afterLayout, this, &EdgeKeeper::arrange);
}

void EdgeKeeper::add(QCPItemText* item, const StudyCurve& curve, const QPen& pen) {
  QCPItemLine* sample = leader_on(plot_, rect_, pen.color());
  sample->setPen(pen);
  // What is has room before what might be.
  names_.insert(curve.present ? names_.begin() : names_.end(),
                {item, leader_on(plot_, rect_, pen.color()), sample, curve.x, curve.y});
}

void EdgeKeeper::show(const Name& name, bool shown) {
  name.item->setVisible(shown);
  name.leader->setVisible(shown);
  name.sample->setVisible(shown);
}

/// From the top down.
std::vector<EdgeKeeper::Place> EdgeKeeper::in_view(double most_height) const {
  const QRectF frame(rect_.rect());
  const QCPAxis& across = *rect_.axis(QCPAxis::atBottom);
  const QCPAxis& up = *rect_.axis(QCPAxis::atLeft);
  std::vector<Place> places;
  double used = 0.0;
  for (const Name& name : names_) {
    const auto beyond =
        std::upper_bound(name.x.begin(), name.x.end(), across.range().upper * (1.0 + 1e-9));
    show(name, false);
    if (beyond == name.x.begin()) {
      continue;
    }
    const double y = up.coordToPixel(name.y[std::size_t(beyond - name.x.begin()) - 1]);
    const double height = size_of(*name.item).height();
    if (y >= frame.top() && y <= frame.bottom() + 1.0 && used + height <= most_height) {
      places.push_back({&name, y, height});
      used += height;
    }
  }
  std::ranges::stable_sort(places, {}, &Place::y);
  return places;
}

void EdgeKeeper::arrange() {
  const QRectF whole(plot_.viewport());
  QRectF room(rect_.rect());
  const std::vector<Place> places = in_view(whole.height());
  std::vector<double> middles;
  std::vector<double> heights;
  double sum = 0.0;
  for (const Place& place : places) {
    middles.push_back(place.y);
    heights.push_back(place.height);
    sum += place.height;
  }
  if (sum > room.height()) {
    const double more = sum - room.height();
    const double under = std::min(more, whole.bottom() - room.bottom());
    room.adjust(0.0, -(more - under), 0.0, under);
  }
  const std::vector<double> tops = spread_labels(middles, heights, room.top(), room.bottom());
  const double edge = room.right();
  for (std::size_t i = 0; i < places.size(); ++i) {
    const Name& name = *places[i].name;
    const double sample = edge + leader_length;
    const double line = TextMeasure(name.item->font()).height();
    const double beside = tops[i] + line / 2.0; // its first line
    show(name, true);
    name.item->position->setCoords(QPointF(sample + sample_length + before_name, tops[i]));
    name.leader->start->setCoords(QPointF(edge, middles[i]));
    name.leader->end->setCoords(QPointF(sample, beside));
    name.sample->start->setCoords(QPointF(sample, beside));
    name.sample->end->setCoords(QPointF(sample + sample_length, beside));
  }
}

} // namespace feedwright
