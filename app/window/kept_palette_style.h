// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPalette>
#include <QProxyStyle>

#include <vector>

namespace feedwright {

/// A style that lets widgets of equal colours share one palette when they are drawn.
///
/// Qt gives the palette of every widget a key of its own, equal colours or not. Fusion puts that
/// key into the name of each picture it keeps, and Qt's cache of pictures never forgets a name. A
/// window whose forms are made anew would so grow for as long as somebody works in it.
class KeptPaletteStyle : public QProxyStyle {
  Q_OBJECT
public:
  /// `base`: the style that draws; becomes the child of this one.
  explicit KeptPaletteStyle(QStyle* base);

  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override;
  void drawControl(ControlElement element, const QStyleOption* option, QPainter* painter,
                   const QWidget* widget) const override;
  void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                          QPainter* painter, const QWidget* widget) const override;

private:
  QPalette kept(const QPalette& palette) const;
  template <class Option, class Draw>
  bool draw_as(const QStyleOption* option, const Draw& draw) const;

  mutable std::vector<QPalette> kept_; ///< the last ones drawn with, the newest at the end
};

} // namespace feedwright
