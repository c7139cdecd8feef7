// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/plot_tickers.h"

#include "limits/number_text.h"

#include <qcustomplot.h>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

QString scale_number(double value, int digits) {
  return number_text(value, digits).replace(QLatin1Char('-'), QChar(0x2212));
}

class RoundTicker : public QCPAxisTicker {
protected:
  /// With as many digits as tell it from the next, however far the plot is zoomed in.
  QString getTickLabel(double tick, const QLocale&, QChar, int) override {
    constexpr int usual = 4;
    constexpr int most = 15;
    if (!(step_ > 0.0)) {
      return scale_number(tick, usual);
    }
    if (std::abs(tick) < 1e-6 * step_) {
      return scale_number(0.0, usual);
    }
    const double steps = std::abs(tick) / step_;
    const int apart = 2 + int(std::ceil(std::log10(std::max(1.0, steps))));
    return scale_number(tick, std::clamp(apart, usual, most));
  }
  double getTickStep(const QCPRange& range) override { return step_ = step_for(range); }

private:
  /// No finer than was asked: the count is what has room.
  double step_for(const QCPRange& range) {
    const double exact = range.size() / std::max(1, tickCount());
    if (!(exact > 0.0)) {
      return QCPAxisTicker::getTickStep(range);
    }
    const double decade = std::pow(10.0, std::floor(std::log10(exact)));
    double chosen = 0.1 * decade;
    for (const double step : {0.2, 0.25, 0.5, 1.0, 2.0, 2.5, 5.0, 10.0}) {
      // One number alone gives no scale.
      if (in_range(range, step * decade) < 2.0) {
        break;
      }
      chosen = step * decade;
      if (exact <= chosen * (1.0 + 1e-9)) {
        break;
      }
    }
    return chosen;
  }

  static double in_range(const QCPRange& range, double step) {
    return std::floor(range.upper / step) - std::ceil(range.lower / step) + 1.0;
  }

  double step_ = 0.0; ///< of the numbers that are being written
};

class OnlyTicker : public RoundTicker {
public:
  explicit OnlyTicker(std::span<const double> numbers) : numbers_(numbers.begin(), numbers.end()) {
    std::ranges::sort(numbers_);
  }

protected:
  QVector<double> createTickVector(double, const QCPRange&) override { return numbers_; }
  QString getTickLabel(double tick, const QLocale&, QChar, int) override {
    return scale_number(tick, 3);
  }

private:
  QVector<double> numbers_;
};

} // namespace

QSharedPointer<QCPAxisTicker> round_numbers() {
  return QSharedPointer<RoundTicker>::create();
}

QSharedPointer<QCPAxisTicker> only_numbers(std::span<const double> numbers) {
  return QSharedPointer<OnlyTicker>::create(numbers);
}

} // namespace feedwright
