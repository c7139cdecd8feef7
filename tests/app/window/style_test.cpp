// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/style.h"

#include <QApplication>
#include <QComboBox>
#include <QPalette>
#include <QPixmapCache>
#include <QPushButton>
#include <QStyle>

#include <catch2/catch.hpp>

#include <malloc.h>

using namespace feedwright;

namespace {

/// What the heap has given out and not got back, in KiB, but for pictures that are kept.
long held() {
  QPixmapCache::clear();
  ::malloc_trim(0);
  const auto heap = ::mallinfo2();
  return long((heap.uordblks + heap.hblkhd) / 1024);
}

void paint_in_each_width(int from, int to) {
  QComboBox box;
  QPushButton button;
  for (int width = from; width < to; ++width) {
    for (QWidget* widget : {static_cast<QWidget*>(&box), static_cast<QWidget*>(&button)}) {
      widget->resize(width, 24);
      widget->grab();
    }
  }
}

} // namespace

TEST_CASE("painting buttons and boxes in ever other sizes and palettes holds nothing afterwards") {
  apply_theme(Theme::light);
  paint_in_each_width(100, 110);
  const long before = held();
  paint_in_each_width(200, 1200);
  for (int made_anew = 0; made_anew < 300; ++made_anew) {
    paint_in_each_width(100, 101);
  }
  CHECK(held() - before < 100);
}

TEST_CASE("a theme chosen again has the colours it had, and the style stays") {
  apply_theme(Theme::light);
  const QStyle* style = QApplication::style();
  const QPalette light = QApplication::palette();
  apply_theme(Theme::dark);
  CHECK(QApplication::palette() != light);
  CHECK(QApplication::style() == style);
  apply_theme(Theme::light);
  CHECK(QApplication::palette() == light);
}
