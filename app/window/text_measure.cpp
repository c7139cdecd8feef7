// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/text_measure.h"

#include <QGuiApplication>
#include <QPaintDevice>
#include <QScreen>

#include <algorithm>
#include <vector>

namespace feedwright {

namespace {

int dots_of(const QPaintDevice* device) {
  if (device != nullptr) {
    return device->logicalDpiY();
  }
  const QScreen* screen = QGuiApplication::primaryScreen();
  return screen != nullptr ? qRound(screen->logicalDotsPerInchY()) : 0;
}

} // namespace

std::shared_ptr<TextMeasure::Widths> TextMeasure::widths_for(const QFont& font, int dots_per_inch) {
  struct OfFont {
    QFont font;
    int dots_per_inch;
    std::shared_ptr<Widths> widths;
  };
  // A window has a dozen at once; with room for fewer each would be measured anew.
  constexpr std::size_t most_fonts = 32;
  static thread_local std::vector<OfFont> known;
  const auto found = std::ranges::find_if(known, [&](const OfFont& one) {
    return one.dots_per_inch == dots_per_inch && one.font == font;
  });
  if (found != known.end()) {
    return found->widths;
  }
  if (known.size() == most_fonts) {
    known.erase(known.begin());
  }
  known.push_back({font, dots_per_inch, std::make_shared<Widths>()});
  return known.back().widths;
}

TextMeasure::TextMeasure(const QFont& font, const QPaintDevice* device)
    : metrics_(device != nullptr ? QFontMetricsF(font, device) : QFontMetricsF(font)),
      widths_(widths_for(font, dots_of(device))) {}

double TextMeasure::width(const QString& text) const {
  if (const auto found = widths_->constFind(text); found != widths_->constEnd()) {
    return *found;
  }
  constexpr qsizetype most_texts = 2000;
  if (widths_->size() >= most_texts) {
    widths_->clear();
  }
  const double width = metrics_.horizontalAdvance(text);
  widths_->insert(text, width);
  return width;
}

QString TextMeasure::elided(const QString& text, double room) const {
  return width(text) <= room ? text : metrics_.elidedText(text, Qt::ElideMiddle, room);
}

} // namespace feedwright
