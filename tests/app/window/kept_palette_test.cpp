// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/kept_palette_style.h"
#include "window/style.h"

#include <QApplication>
#include <QComboBox>
#include <QPushButton>
#include <QStyleFactory>
#include <QStyleOption>
#include <QToolButton>

#include <catch2/catch.hpp>

#include <set>

using namespace feedwright;

namespace {

/// Fusion, which writes down the keys of the palettes it is given to draw boxes and buttons with.
class Listening : public QProxyStyle {
public:
  Listening() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override {
    if (element == PE_PanelButtonCommand) {
      keys.insert(option->palette.cacheKey());
    }
    QProxyStyle::drawPrimitive(element, option, painter, widget);
  }

  void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option,
                          QPainter* painter, const QWidget* widget) const override {
    keys.insert(option->palette.cacheKey());
    QProxyStyle::drawComplexControl(control, option, painter, widget);
  }

  mutable std::set<qint64> keys;
};

void draw_each_kind(QStyle& style, int times, const QColor& letters) {
  for (int i = 0; i < times; ++i) {
    QComboBox box;
    QPushButton button;
    QToolButton tool;
    for (QWidget* widget : {static_cast<QWidget*>(&box), static_cast<QWidget*>(&button),
                            static_cast<QWidget*>(&tool)}) {
      QPalette palette = widget->palette();
      palette.setColor(QPalette::ButtonText, letters);
      widget->setPalette(palette);
      widget->setStyle(&style);
      widget->grab();
    }
  }
}

} // namespace

TEST_CASE("Widgets of equal colours are drawn with one palette, however many there are") {
  auto* listening = new Listening;
  KeptPaletteStyle style(listening);
  draw_each_kind(style, 10, Qt::blue);
  CHECK(listening->keys.size() == 1);
  draw_each_kind(style, 10, Qt::red);
  CHECK(listening->keys.size() == 2);
  draw_each_kind(style, 10, Qt::blue);
  CHECK(listening->keys.size() == 2);
}

TEST_CASE("Qt gives every widget a palette of its own, which is why they are shared in drawing") {
  Listening listening;
  draw_each_kind(listening, 10, Qt::blue);
  CHECK(listening.keys.size() == 30);
}

TEST_CASE("The program's themes are drawn in the style that shares palettes") {
  apply_theme(Theme::light);
  CHECK(qobject_cast<KeptPaletteStyle*>(QApplication::style()) != nullptr);
  const QStyle* style = QApplication::style();
  apply_theme(Theme::dark);
  CHECK(QApplication::style() == style);
  apply_theme(Theme::light);
  const qint64 light = QGuiApplication::palette().cacheKey();
  apply_theme(Theme::dark);
  CHECK(QGuiApplication::palette().cacheKey() != light);
  apply_theme(Theme::light);
  CHECK(QGuiApplication::palette().cacheKey() == light);
  apply_theme(Theme::system);
}
