// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/style.h"

#include <QApplication>
#include <QPixmapCache>
#include <QStyle>
#include <QStyleFactory>

namespace feedwright {

Look Look::light_look() {
  return {.paper = QColor(0xfb, 0xfa, 0xf5),
          .panel = QColor(0xf1, 0xef, 0xe8),
          .ink = QColor(0x1e, 0x2b, 0x38),
          .faint_ink = QColor(0x5a, 0x63, 0x6d),
          .rule = QColor(0xcf, 0xca, 0xbc),
          .accent = QColor(0x16, 0x66, 0x72),
          .over = QColor(0xa6, 0x3d, 0x17),
          .close = QColor(0x75, 0x56, 0x00),
          .clear = QColor(0x1e, 0x2b, 0x38),
          .bar = QColor(0x8b, 0x98, 0xa5),
          .dark = false};
}

Look Look::dark_look() {
  return {.paper = QColor(0x1c, 0x22, 0x29),
          .panel = QColor(0x15, 0x1a, 0x20),
          .ink = QColor(0xe7, 0xe4, 0xda),
          .faint_ink = QColor(0xa4, 0xab, 0xb2),
          .rule = QColor(0x3d, 0x46, 0x50),
          .accent = QColor(0x6f, 0xc3, 0xce),
          .over = QColor(0xf2, 0x8f, 0x6a),
          .close = QColor(0xe0, 0xb6, 0x4e),
          .clear = QColor(0xe7, 0xe4, 0xda),
          .bar = QColor(0x68, 0x76, 0x84),
          .dark = true};
}

Look Look::of(const QPalette& palette) {
  const bool dark =
      palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
  return dark ? dark_look() : light_look();
}

QPalette palette_of(const Look& look) {
  QPalette palette;
  palette.setColor(QPalette::Window, look.panel);
  palette.setColor(QPalette::WindowText, look.ink);
  palette.setColor(QPalette::Base, look.paper);
  palette.setColor(QPalette::AlternateBase, look.panel);
  palette.setColor(QPalette::Text, look.ink);
  palette.setColor(QPalette::PlaceholderText, look.faint_ink);
  palette.setColor(QPalette::Button, look.panel);
  palette.setColor(QPalette::ButtonText, look.ink);
  palette.setColor(QPalette::BrightText, look.over);
  palette.setColor(QPalette::ToolTipBase, look.paper);
  palette.setColor(QPalette::ToolTipText, look.ink);
  palette.setColor(QPalette::Highlight, look.accent);
  palette.setColor(QPalette::HighlightedText, look.paper);
  palette.setColor(QPalette::Link, look.accent);
  palette.setColor(QPalette::LinkVisited, look.accent);
  palette.setColor(QPalette::Light, look.dark ? look.panel.lighter(160) : Qt::white);
  palette.setColor(QPalette::Midlight, look.dark ? look.panel.lighter(130) : look.paper);
  palette.setColor(QPalette::Mid, look.rule);
  palette.setColor(QPalette::Dark, look.dark ? look.panel.darker(140) : look.rule.darker(115));
  // Even what is named "no role": one colour left out, and Qt mixes a new palette at each change.
  palette.setColor(QPalette::NoRole, look.ink);
  palette.setColor(QPalette::Shadow, look.dark ? QColor(Qt::black) : look.faint_ink);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
    // What cannot be used now must still be read: 3 to 1 at least.
    palette.setColor(QPalette::Disabled, role,
                     look.dark ? look.bar.lighter(115) : look.bar.darker(120));
  }
  palette.setColor(QPalette::Disabled, QPalette::Highlight, look.rule);
  palette.setColor(QPalette::Disabled, QPalette::HighlightedText, look.ink);
  return palette;
}

void apply_theme(Theme theme) {
  static const QPalette given = QApplication::palette();
  if (QApplication::style()->name() != QLatin1String("fusion")) {
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  }
  // Qt keeps the name of each picture of a button, in each of its sizes, states and palettes, also
  // when the picture has gone: some 220 bytes a name, for good. A picture it may not keep has none.
  QPixmapCache::setCacheLimit(0);
  QApplication::setPalette(theme == Theme::light  ? palette_of(Look::light_look())
                           : theme == Theme::dark ? palette_of(Look::dark_look())
                                                  : palette_of(Look::of(given)));
}

} // namespace feedwright
