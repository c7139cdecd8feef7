// SPDX-License-Identifier: GPL-3.0-or-later
#include "help/pictures.h"

#include "help/diagrams.h"
#include "help/sample_axis.h"
#include "limits/paint_ladder.h"
#include "studies/plots.h"
#include "train/paint_train.h"

#include <QPainter>
#include <qcustomplot.h>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

class Picture {
public:
  Picture(const PictureFrame& frame, double height)
      : image_((QSizeF(frame.width, height) * frame.pixel_ratio).toSize(),
               QImage::Format_ARGB32_Premultiplied),
        room_(0.0, 0.0, frame.width, height) {
    image_.setDevicePixelRatio(frame.pixel_ratio);
    image_.fill(frame.look.paper);
  }

  QImage& image() { return image_; }
  QRectF room() const { return room_.adjusted(6.0, 6.0, -6.0, -6.0); }

private:
  QImage image_;
  QRectF room_;
};

double line_of(const PictureFrame& frame) {
  return QFontMetricsF(frame.font).height();
}

struct DrawnDiagram {
  QImage image;
  bool cut_text = false;
};

DrawnDiagram drawn(const Diagram& diagram, const PictureFrame& frame) {
  Picture picture(frame, diagram.lines * line_of(frame) + 12.0);
  QPainter painter(&picture.image());
  DiagramBoard board(painter, frame.look, frame.font, picture.room());
  diagram.paint(board);
  painter.end();
  return {picture.image(), board.cut_text()};
}

QImage diagram_picture(const Diagram& diagram, PictureFrame frame) {
  frame.font = diagram_font(diagram, frame);
  return drawn(diagram, frame).image;
}

QImage train_picture(const SampleAxis& sample, const PictureFrame& frame) {
  const double line = line_of(frame);
  Picture picture(frame, least_train_height(line) * 1.15 + 12.0);
  QPainter painter(&picture.image());
  TrainOptions options;
  // The drawing has many words: smaller ones leave it room in a narrow page.
  options.font = frame.font;
  options.font.setPointSizeF(std::max(6.0, frame.font.pointSizeF() * 0.85));
  paint_train(painter, train_geometry(sample.machine, sample.axis, &sample.results), picture.room(),
              frame.look, options);
  painter.end();
  return picture.image();
}

std::optional<QImage> ladder_picture(const SampleAxis& sample, const QString& scale,
                                     const PictureFrame& frame) {
  const QString names[] = {QStringLiteral("feed"), QStringLiteral("thrust"),
                           QStringLiteral("other")};
  const auto* found = std::find(std::begin(names), std::end(names), scale);
  if (found == std::end(names)) {
    return std::nullopt;
  }
  const Ladder ladder =
      ladder_of(sample.results, static_cast<LimitScale>(found - std::begin(names)),
                FileUnits(sample.machine));
  LadderOptions options;
  options.font = frame.font;
  Picture sizing(frame, 10.0);
  Picture picture(frame, ladder_height(ladder, frame.width, options, &sizing.image()) + 12.0);
  QPainter painter(&picture.image());
  paint_ladder(painter, ladder, picture.room(), frame.look, options);
  painter.end();
  return picture.image();
}

std::optional<QImage> study_picture(const SampleAxis& sample, const QString& name,
                                    const PictureFrame& frame) {
  const struct {
    QLatin1String name;
    Study study;
  } studies[] = {{QLatin1String("thrust"), Study::thrust},
                 {QLatin1String("acceleration"), Study::acceleration},
                 {QLatin1String("stretch"), Study::stretch},
                 {QLatin1String("motor"), Study::motor},
                 {QLatin1String("move"), Study::move},
                 {QLatin1String("errors"), Study::errors},
                 {QLatin1String("torque"), Study::torque}};
  const auto* found = std::find_if(std::begin(studies), std::end(studies),
                                   [&](const auto& s) { return s.name == name; });
  if (found == std::end(studies)) {
    return std::nullopt;
  }
  QCustomPlot plot;
  plot.setFont(frame.font);
  const FileUnits units(sample.machine);
  fill_plot(plot, study_figure(found->study, {sample.machine, sample.axis, sample.results, units}),
            frame.look, {.font = frame.font});
  const int width = int(frame.width);
  QPixmap pixmap = plot.toPixmap(width, int(0.52 * width), frame.pixel_ratio);
  pixmap.setDevicePixelRatio(frame.pixel_ratio);
  return pixmap.toImage();
}

} // namespace

const Diagram* diagram_named(const QString& name) {
  for (const auto& list : {screw_diagrams(), drive_diagrams(), result_diagrams()}) {
    for (const Diagram& diagram : list) {
      if (name == QLatin1String(diagram.name)) {
        return &diagram;
      }
    }
  }
  return nullptr;
}

QStringList diagram_names() {
  QStringList names;
  for (const auto& list : {screw_diagrams(), drive_diagrams(), result_diagrams()}) {
    for (const Diagram& diagram : list) {
      names << QString::fromLatin1(diagram.name);
    }
  }
  return names;
}

QFont diagram_font(const Diagram& diagram, const PictureFrame& frame) {
  constexpr double usual = 9.5; // points
  constexpr double step = 0.94;
  PictureFrame smaller = frame;
  while (smaller.font.pointSizeF() > usual && drawn(diagram, smaller).cut_text) {
    smaller.font.setPointSizeF(std::max(usual, smaller.font.pointSizeF() * step));
  }
  return smaller.font;
}

std::optional<QImage> help_picture(const QString& name, const PictureFrame& frame) {
  const QString kind = name.section(QLatin1Char(':'), 0, 0);
  const QStringList parts = name.section(QLatin1Char(':'), 1).split(QLatin1Char('/'));
  if (kind == QLatin1String("picture")) {
    const Diagram* diagram = diagram_named(parts.constFirst());
    return diagram != nullptr ? std::optional(diagram_picture(*diagram, frame)) : std::nullopt;
  }
  bool number = false;
  const auto axis = parts.value(1).toULongLong(&number);
  if (!number || axis < 1) {
    return std::nullopt;
  }
  const bool train = kind == QLatin1String("train");
  const auto sample = sample_axis(parts.constFirst(), axis - 1, train ? parts.value(2) : QString());
  if (!sample) {
    return std::nullopt;
  }
  if (train) {
    return train_picture(*sample, frame);
  }
  if (kind == QLatin1String("ladder")) {
    return ladder_picture(*sample, parts.value(2), frame);
  }
  return kind == QLatin1String("study") ? study_picture(*sample, parts.value(2), frame)
                                        : std::nullopt;
}

} // namespace feedwright
