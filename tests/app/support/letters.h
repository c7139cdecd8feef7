// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>
#include <QFont>

namespace feedwright::testing {

/// Letters of that size in every window, for the length of a test.
struct WithLetters {
  explicit WithLetters(int points) {
    QFont font = before;
    font.setPointSize(points);
    QApplication::setFont(font);
  }
  ~WithLetters() { QApplication::setFont(before); }
  WithLetters(const WithLetters&) = delete;
  WithLetters& operator=(const WithLetters&) = delete;
  QFont before = QApplication::font();
};

} // namespace feedwright::testing
