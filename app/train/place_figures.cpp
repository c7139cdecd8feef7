// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/place_figures.h"

#include <QStringList>

#include <algorithm>

namespace feedwright {

namespace {

/// However it was broken or joined to fit.
QString one_line(QString text) {
  return text.replace(QLatin1Char('\n'), QLatin1Char(' '))
      .replace(QStringLiteral(" · "), QStringLiteral(" "));
}

const PlannedLabel* label_of(const TrainPlan& plan, const FigureText& text) {
  const QString wanted = one_line(text.text);
  for (const PlannedLabel& label : plan.labels) {
    const QString said = one_line(label.text);
    if (!wanted.isEmpty() && !said.isEmpty() && (said.contains(wanted) || wanted.contains(said))) {
      return &label;
    }
  }
  return nullptr;
}

class FigureFinder {
public:
  FigureFinder(const PlannedLabel& label, const TextMeasure& metrics)
      : label_(label), metrics_(metrics), lines_(label.text.split(QLatin1Char('\n'))) {}

  /// The next figure of that text in the label; figures are asked for in the text's order.
  QRectF next(const QString& shown) {
    for (qsizetype line = line_; line < lines_.size() && !shown.isEmpty(); ++line) {
      const qsizetype from = line == line_ ? column_ : 0;
      const qsizetype found = lines_[line].indexOf(shown, from);
      if (found >= 0) {
        line_ = line;
        column_ = found + shown.size();
        return area_of(line, found, shown);
      }
    }
    return {};
  }

private:
  QRectF area_of(qsizetype line, qsizetype column, const QString& shown) const {
    const double height = metrics_.height();
    const double all = height * double(lines_.size());
    const double top = label_.area.center().y() - all / 2.0 + double(line) * height;
    const double width = metrics_.width(lines_[line]);
    double left = label_.area.left();
    if (label_.alignment.testFlag(Qt::AlignHCenter)) {
      left = label_.area.center().x() - width / 2.0;
    } else if (label_.alignment.testFlag(Qt::AlignRight)) {
      left = label_.area.right() - width;
    }
    left += metrics_.width(lines_[line].left(column));
    return {left, top, metrics_.width(shown), height};
  }

  const PlannedLabel& label_;
  const TextMeasure& metrics_;
  QStringList lines_;
  qsizetype line_ = 0;
  qsizetype column_ = 0;
};

std::ptrdiff_t visited_at(PartSlot slot) {
  return std::find(std::begin(visited_parts), std::end(visited_parts), slot) -
         std::begin(visited_parts);
}

} // namespace

void place_figures(TrainPlan& plan, const TrainGeometry& train, const TextMeasure& metrics) {
  for (const FigureText& text : train.figures) {
    const PlannedLabel* label = label_of(plan, text);
    std::optional<FigureFinder> finder;
    if (label != nullptr) {
      finder.emplace(*label, metrics);
      if (!text.figures.empty()) {
        plan.captions.push_back({text.figures.front().slot, label->area});
      }
    }
    for (const TrainFigure& figure : text.figures) {
      QRectF area = finder ? finder->next(figure.shown) : QRectF();
      // Words that say that a figure is missing stand for it whole.
      if (label != nullptr && figure.shown.isEmpty() && text.figures.size() == 1) {
        area = label->area;
      }
      plan.figures.push_back({figure.slot, figure.member, area});
    }
  }
  std::ranges::stable_sort(plan.figures, {},
                           [](const PlannedFigure& figure) { return visited_at(figure.slot); });
}

} // namespace feedwright
