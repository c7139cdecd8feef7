// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/kept_palette_style.h"

#include <QStyleOption>

#include <algorithm>

namespace feedwright {

namespace {

/// Two themes, with the rows' faint buttons and what a widget may want besides.
constexpr std::size_t most_kept = 16;

} // namespace

KeptPaletteStyle::KeptPaletteStyle(QStyle* base) : QProxyStyle(base) {}

/// The palette of the same colours that was drawn with before.
QPalette KeptPaletteStyle::kept(const QPalette& palette) const {
  auto found = std::ranges::find(kept_, palette);
  if (found == kept_.end()) {
    if (kept_.size() == most_kept) {
      kept_.erase(kept_.begin());
    }
    found = kept_.insert(kept_.end(), palette);
  }
  QPalette shared = *found;
  shared.setCurrentColorGroup(palette.currentColorGroup());
  return shared;
}

/// Calls `draw` with a copy of `option` that has the kept palette, where `option` is an `Option`.
template <class Option, class Draw>
bool KeptPaletteStyle::draw_as(const QStyleOption* option, const Draw& draw) const {
  const auto* given = qstyleoption_cast<const Option*>(option);
  if (given == nullptr) {
    return false;
  }
  Option shared(*given);
  shared.palette = kept(given->palette);
  draw(shared);
  return true;
}

void KeptPaletteStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option,
                                     QPainter* painter, const QWidget* widget) const {
  const auto draw = [&](const QStyleOption& shared) {
    QProxyStyle::drawPrimitive(element, &shared, painter, widget);
  };
  if (element != PE_PanelButtonCommand || !draw_as<QStyleOptionButton>(option, draw)) {
    QProxyStyle::drawPrimitive(element, option, painter, widget);
  }
}

void KeptPaletteStyle::drawControl(ControlElement element, const QStyleOption* option,
                                   QPainter* painter, const QWidget* widget) const {
  const auto draw = [&](const QStyleOption& shared) {
    QProxyStyle::drawControl(element, &shared, painter, widget);
  };
  const bool drawn = (element == CE_HeaderSection && draw_as<QStyleOptionHeader>(option, draw)) ||
                     (element == CE_MenuItem && draw_as<QStyleOptionMenuItem>(option, draw));
  if (!drawn) {
    QProxyStyle::drawControl(element, option, painter, widget);
  }
}

void KeptPaletteStyle::drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                                          QPainter* painter, const QWidget* widget) const {
  const auto draw = [&](const QStyleOptionComplex& shared) {
    QProxyStyle::drawComplexControl(control, &shared, painter, widget);
  };
  const bool drawn = draw_as<QStyleOptionComboBox>(option, draw) ||
                     draw_as<QStyleOptionToolButton>(option, draw) ||
                     draw_as<QStyleOptionSpinBox>(option, draw) ||
                     draw_as<QStyleOptionSlider>(option, draw);
  if (!drawn) {
    QProxyStyle::drawComplexControl(control, option, painter, widget);
  }
}

} // namespace feedwright
