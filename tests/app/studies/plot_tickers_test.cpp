// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/plot_tickers.h"

#include "support/window.h"

#include <qcustomplot.h>

#include <cmath>
#include <set>
#include <string>
#include <vector>

using namespace feedwright;
using feedwright::testing::InLanguage;

namespace {

using Texts = std::vector<std::string>;

/// What stands along a scale that has room for so many steps.
Texts written(const QSharedPointer<QCPAxisTicker>& ticker, double from, double to, int steps) {
  ticker->setTickCount(steps);
  const QCPRange range(from, to);
  QVector<double> places;
  QVector<QString> texts;
  ticker->generate(range, QLocale(QLocale::German), QLatin1Char('g'), 6, places, nullptr, &texts);
  Texts inside;
  for (qsizetype i = 0; i < places.size(); ++i) {
    if (range.contains(places[i])) {
      inside.push_back(texts[i].toStdString());
    }
  }
  return inside;
}

} // namespace

TEST_CASE("a scale has no more round numbers than have room, but never one alone") {
  CHECK(written(round_numbers(), 0.0, 100.0, 5) == Texts{"0", "20", "40", "60", "80", "100"});
  CHECK(written(round_numbers(), 0.0, 27.0, 5) == Texts{"0", "10", "20"});
  CHECK(written(round_numbers(), 40.0, 95.0, 1) == Texts{"50", "75"});
  for (const double end : {0.013, 0.7, 1.0, 3.3, 9.9, 47.0, 680.0}) {
    for (int steps = 1; steps <= 5; ++steps) {
      INFO(end << " in " << steps);
      const auto count = written(round_numbers(), 0.0, end, steps).size();
      CHECK(count >= 2);
      CHECK(count <= std::size_t(steps) + 1);
    }
  }
}

TEST_CASE("however far a plot is zoomed in, the numbers of its scale read apart and true") {
  for (const double middle : {-5.4321, 0.0, 0.0123456, 5.4321, 1234.5678}) {
    for (double width = 1.0; width > 1e-7; width /= 3.0) {
      INFO(width << " about " << middle);
      const Texts texts = written(round_numbers(), middle - width / 2, middle + width / 2, 5);
      CHECK(texts.size() >= 2);
      CHECK(std::set<std::string>(texts.begin(), texts.end()).size() == texts.size());
      double before = -HUGE_VAL;
      for (const std::string& text : texts) {
        const double read =
            QString::fromStdString(text).replace(QChar(0x2212), QLatin1Char('-')).toDouble();
        CHECK(read > before);
        CHECK(std::abs(read - middle) <= width / 2 * (1.0 + 1e-9) + 1e-12 * std::abs(middle));
        before = read;
      }
    }
  }
}

TEST_CASE("the numbers of a scale have the language's decimal mark, not the locale's") {
  CHECK(written(round_numbers(), 0.0, 1.0, 2) == Texts{"0", "0.5", "1"});
  const InLanguage german("de");
  CHECK(written(round_numbers(), 0.0, 1.0, 2) == Texts{"0", "0,5", "1"});
}

TEST_CASE("a scale that is given its numbers has those and no others") {
  const double numbers[] = {7.0, 0.125, 3.0};
  CHECK(written(only_numbers(numbers), 0.0, 10.0, 5) == Texts{"0.125", "3", "7"});
}
