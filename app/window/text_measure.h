// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QFontMetricsF>
#include <QHash>

#include <memory>

class QPaintDevice;

namespace feedwright {

/// How wide texts are in a font on a device. A width is found once and kept: shaping the same names
/// anew at every edit took a tenth of the time an edit has until it is painted.
class TextMeasure {
public:
  /// `device` as for QFontMetricsF; null for the screen.
  explicit TextMeasure(const QFont& font, const QPaintDevice* device = nullptr);

  double width(const QString& text) const;
  /// The text, shortened in its middle where it is wider than the room.
  QString elided(const QString& text, double room) const;
  double height() const { return metrics_.height(); }
  const QFontMetricsF& metrics() const { return metrics_; }

private:
  using Widths = QHash<QString, double>;
  static std::shared_ptr<Widths> widths_for(const QFont& font, int dots_per_inch);

  QFontMetricsF metrics_;
  std::shared_ptr<Widths> widths_;
};

} // namespace feedwright
