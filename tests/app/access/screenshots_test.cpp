// SPDX-License-Identifier: GPL-3.0-or-later

// Pictures of the window at every size, colour, language and scale, to be looked at: in the build
// directory's `screenshots`, with a page that shows them all.

#include "headless/picture.h"
#include "headless/program.h"

#include <QDir>
#include <QImage>

#include <set>

using feedwright::testing::Outcome;
using feedwright::testing::run;

namespace {

struct Shot {
  QSize size;
  bool dark;
  QString language;
  int scale;
  double font_size;  ///< 0: as it comes
  QStringList shows; ///< arguments that choose what is shown; empty for the window as it opens

  QString name() const {
    QString shown = shows.join(QLatin1Char('-')).remove(QStringLiteral("--"));
    shown.replace(QLatin1Char('/'), QLatin1Char('-'));
    return QStringLiteral("%1x%2-%3-%4-x%5%6%7.png")
        .arg(size.width())
        .arg(size.height())
        .arg(dark ? QStringLiteral("dark") : QStringLiteral("light"), language)
        .arg(scale)
        .arg(font_size > 0.0 ? QStringLiteral("-%1pt").arg(font_size) : QString(),
             shown.isEmpty() ? shown : QLatin1Char('-') + shown);
  }
};

std::vector<Shot> all_shots() {
  std::vector<Shot> shots;
  for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
    for (const bool dark : {false, true}) {
      for (const char* language : {"en", "de", "x-pseudo"}) {
        for (const int scale : {1, 2}) {
          shots.push_back({size, dark, QString::fromLatin1(language), scale, 0.0, {}});
        }
      }
    }
  }
  for (const bool dark : {false, true}) {
    for (const char* language : {"en", "de"}) {
      shots.push_back({{1920, 1080}, dark, QString::fromLatin1(language), 1, 18.0, {}});
      shots.push_back({{1100, 900},
                       dark,
                       QString::fromLatin1(language),
                       1,
                       0.0,
                       {QStringLiteral("--page"), QStringLiteral("limit/whip")}});
    }
    for (const char* language : {"en", "de", "x-pseudo"}) {
      shots.push_back({{1280, 800},
                       dark,
                       QString::fromLatin1(language),
                       1,
                       0.0,
                       {QStringLiteral("--machine")}});
    }
  }
  for (std::size_t study = 2; study <= feedwright::headless::study_count(); ++study) {
    shots.push_back({{1280, 800},
                     false,
                     QStringLiteral("de"),
                     1,
                     0.0,
                     {QStringLiteral("--study"), QString::number(study)}});
  }
  return shots;
}

QImage taken(const Shot& shot, const QString& path) {
  QStringList arguments{
      QStringLiteral("picture"),
      QStringLiteral(FEEDWRIGHT_SOURCE_DIR "/sample-machines/plank-router.feedwright"),
      QStringLiteral("--output"),
      path,
      QStringLiteral("--size"),
      QStringLiteral("%1x%2").arg(shot.size.width()).arg(shot.size.height()),
      QStringLiteral("--language"),
      shot.language};
  if (shot.dark) {
    arguments << QStringLiteral("--dark");
  }
  if (shot.font_size > 0.0) {
    arguments << QStringLiteral("--font-size") << QString::number(shot.font_size);
  }
  arguments << shot.shows;
  const Outcome outcome =
      run(arguments, {{QStringLiteral("QT_SCALE_FACTOR"), QString::number(shot.scale)}});
  INFO(shot.name().toStdString() << outcome.err.toStdString());
  REQUIRE(outcome.code == 0);
  CHECK(outcome.err.isEmpty());
  return QImage(path);
}

std::size_t colours_in(const QImage& image) {
  std::set<QRgb> colours;
  for (int y = 0; y < image.height(); y += 9) {
    for (int x = 0; x < image.width(); x += 9) {
      colours.insert(image.pixel(x, y));
    }
  }
  return colours.size();
}

} // namespace

TEST_CASE("the window can be pictured at every size, colour, language and scale") {
  const QDir folder(QStringLiteral(FEEDWRIGHT_BINARY_DIR "/screenshots"));
  REQUIRE(folder.mkpath(QStringLiteral(".")));
  std::string index = "<!doctype html><meta charset=utf-8><title>Screenshots</title>\n";
  for (const Shot& shot : all_shots()) {
    const QImage image = taken(shot, folder.filePath(shot.name()));
    INFO(shot.name().toStdString());
    CHECK(image.size() == shot.size * shot.scale);
    CHECK(colours_in(image) > 20);
    const std::string name = shot.name().toStdString();
    index += "<h2>" + name + "</h2><img src=\"" + name + "\" width=900>\n";
  }
  CHECK(feedwright::write_file(folder.filePath(QStringLiteral("index.html")).toStdString(), index));
}
