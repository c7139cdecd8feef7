// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What is painted in the plot of a study.

#include <QFontMetricsF>
#include <QRectF>
#include <QString>
#include <catch2/catch.hpp>
#include <qcustomplot.h>

#include <utility>
#include <vector>

namespace feedwright::testing {

/// Where the words of a plot are painted.
inline std::vector<std::pair<QString, QRectF>> words_of(const QCustomPlot& plot) {
  std::vector<std::pair<QString, QRectF>> words;
  for (int i = 0; i < plot.itemCount(); ++i) {
    const auto* text = qobject_cast<QCPItemText*>(plot.item(i));
    if (text != nullptr && text->visible() && !text->text().isEmpty()) {
      const QFontMetricsF metrics(text->font());
      words.emplace_back(text->text(),
                         QRectF(text->position->pixelPosition(), metrics.size(0, text->text()))
                             .adjusted(1, 1, -1, -1));
    }
  }
  return words;
}

inline void check_words_apart(const QCustomPlot& plot) {
  const auto words = words_of(plot);
  const QRectF whole(plot.rect());
  for (std::size_t i = 0; i < words.size(); ++i) {
    INFO(words[i].first.toStdString());
    CHECK(whole.contains(words[i].second));
    for (std::size_t j = i + 1; j < words.size(); ++j) {
      INFO(words[j].first.toStdString());
      CHECK_FALSE(words[i].second.intersects(words[j].second));
    }
  }
}

} // namespace feedwright::testing
