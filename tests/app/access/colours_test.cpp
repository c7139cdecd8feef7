// SPDX-License-Identifier: GPL-3.0-or-later

// Whether what is written can be read, whatever the eyes.

#include "studies/studies_view.h"
#include "support/window.h"
#include "text/words.h"
#include "window/style.h"

#include <QApplication>

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

using namespace feedwright;
using feedwright::testing::InLanguage;
using feedwright::testing::Shown;

namespace {

using Linear = std::array<double, 3>;

double linear(double c) {
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

Linear linear_of(const QColor& colour) {
  return {linear(colour.redF()), linear(colour.greenF()), linear(colour.blueF())};
}

/// Source: W3C, Web Content Accessibility Guidelines 2.1, relative luminance and contrast ratio
double luminance(const Linear& rgb) {
  return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
}

double contrast(const Linear& a, const Linear& b) {
  const double light = std::max(luminance(a), luminance(b));
  const double dark = std::min(luminance(a), luminance(b));
  return (light + 0.05) / (dark + 0.05);
}

/// Of linear sRGB, for eyes without one of the three receptors.
// Source: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, A Physiologically-based Model for
// Simulation of Color Vision Deficiency, IEEE TVCG 15 (2009), severity 1.0 (from memory)
struct Eyes {
  const char* name;
  double m[3][3];
};
constexpr Eyes all_eyes[] = {{"protanopia",
                              {{0.152286, 1.052583, -0.204868},
                               {0.114503, 0.786281, 0.099216},
                               {-0.003882, -0.048116, 1.051998}}},
                             {"deuteranopia",
                              {{0.367322, 0.860646, -0.227968},
                               {0.280085, 0.672501, 0.047413},
                               {-0.011820, 0.042940, 0.968881}}},
                             {"tritanopia",
                              {{1.255528, -0.076749, -0.178779},
                               {-0.078411, 0.930809, 0.147602},
                               {0.004733, 0.691367, 0.303900}}}};

Linear seen_by(const Eyes& eyes, const Linear& rgb) {
  Linear seen{};
  for (std::size_t row = 0; row < 3; ++row) {
    for (std::size_t column = 0; column < 3; ++column) {
      seen[row] += eyes.m[row][column] * rgb[column];
    }
    seen[row] = std::clamp(seen[row], 0.0, 1.0);
  }
  return seen;
}

struct Pair {
  QPalette::ColorRole text, ground;
};
constexpr Pair pairs[] = {{QPalette::WindowText, QPalette::Window},
                          {QPalette::Text, QPalette::Base},
                          {QPalette::Text, QPalette::AlternateBase},
                          {QPalette::ButtonText, QPalette::Button},
                          {QPalette::HighlightedText, QPalette::Highlight},
                          {QPalette::ToolTipText, QPalette::ToolTipBase},
                          {QPalette::PlaceholderText, QPalette::Base},
                          {QPalette::PlaceholderText, QPalette::Window},
                          {QPalette::Link, QPalette::Base},
                          {QPalette::Link, QPalette::Window},
                          {QPalette::LinkVisited, QPalette::Base}};
constexpr Pair disabled_pairs[] = {{QPalette::WindowText, QPalette::Window},
                                   {QPalette::Text, QPalette::Base},
                                   {QPalette::ButtonText, QPalette::Button},
                                   {QPalette::HighlightedText, QPalette::Highlight}};

const Look looks[] = {Look::light_look(), Look::dark_look()};

/// The share of pixels that differ.
double difference(const QImage& a, const QImage& b) {
  REQUIRE(a.size() == b.size());
  qint64 unlike = 0;
  for (int y = 0; y < a.height(); ++y) {
    for (int x = 0; x < a.width(); ++x) {
      unlike += a.pixel(x, y) != b.pixel(x, y) ? 1 : 0;
    }
  }
  return double(unlike) / (double(a.width()) * a.height());
}

struct InTheme {
  explicit InTheme(Theme theme) { apply_theme(theme); }
  ~InTheme() { apply_theme(Theme::light); }
};

QImage picture_of(Shown& shown, int study) {
  shown.window->show_study(study);
  QCoreApplication::processEvents();
  QCoreApplication::processEvents();
  return shown.window->grab().toImage();
}

} // namespace

TEST_CASE("every pair of colours the controls use can be read, in use and out of use") {
  for (const Look& look : looks) {
    const QPalette palette = palette_of(look);
    for (const auto group : {QPalette::Active, QPalette::Inactive}) {
      for (const Pair& pair : pairs) {
        INFO(look.dark << " " << pair.text << " on " << pair.ground);
        CHECK(contrast(linear_of(palette.color(group, pair.text)),
                       linear_of(palette.color(group, pair.ground))) >= 4.5);
      }
    }
    for (const Pair& pair : disabled_pairs) {
      INFO(look.dark << " disabled " << pair.text << " on " << pair.ground);
      CHECK(contrast(linear_of(palette.color(QPalette::Disabled, pair.text)),
                     linear_of(palette.color(QPalette::Disabled, pair.ground))) >= 3.0);
    }
  }
}

TEST_CASE("verdicts can be read by eyes that lack a receptor") {
  for (const Eyes& eyes : all_eyes) {
    // White stays white.
    CHECK(luminance(seen_by(eyes, {1.0, 1.0, 1.0})) == Approx(1.0).margin(1e-4));
    for (const Look& look : looks) {
      for (const QColor& ground : {look.paper, look.panel}) {
        for (const QColor& text : {look.ink, look.over, look.close, look.clear, look.accent}) {
          INFO(eyes.name << " " << text.name().toStdString());
          CHECK(contrast(seen_by(eyes, linear_of(text)), seen_by(eyes, linear_of(ground))) >= 4.5);
        }
        // Bars in trouble stand out from the plain ones by their lightness too.
        CHECK(contrast(seen_by(eyes, linear_of(look.over)), seen_by(eyes, linear_of(look.bar))) >=
              1.3);
      }
    }
  }
}

TEST_CASE("no verdict is told by colour alone") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    std::set<QString> signs;
    std::set<QString> said;
    for (const auto verdict : {Verdict::clear, Verdict::close, Verdict::over, Verdict::open}) {
      signs.insert(words::verdict_sign(verdict));
      said.insert(words::verdict_word(verdict));
    }
    CHECK(signs.size() == 4);
    CHECK(said.size() == 4);
  }
}

TEST_CASE("after the colours change no view keeps the old ones") {
  for (const auto& [from, to] :
       {std::pair(Theme::light, Theme::dark), std::pair(Theme::dark, Theme::light)}) {
    for (int study = 0; study < StudiesView::study_count(); ++study) {
      const InTheme before(from);
      Shown switched;
      picture_of(switched, study);
      apply_theme(to);
      const QImage after = picture_of(switched, study);
      Shown fresh;
      INFO("study " << study << (to == Theme::dark ? " to dark" : " to light"));
      CHECK(difference(after, picture_of(fresh, study)) < 0.0005);
    }
  }
}
