// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/program.h"

#include <QImage>

using feedwright::testing::MachineFolder;
using feedwright::testing::ordinary_router;
using feedwright::testing::Outcome;
using feedwright::testing::run;

namespace {

Outcome picture(const MachineFolder& folder, const char* to, const QStringList& more = {}) {
  return run(QStringList{QStringLiteral("picture"), folder.put("router.json", ordinary_router()),
                         QStringLiteral("--output"), folder.path(to)} +
             more);
}

double lightness(const QImage& image) {
  double sum = 0.0;
  for (int y = 0; y < image.height(); y += 8) {
    for (int x = 0; x < image.width(); x += 8) {
      sum += image.pixelColor(x, y).lightnessF();
    }
  }
  return sum * 64.0 / (image.width() * image.height());
}

} // namespace

TEST_CASE("the picture of the window has the size asked for and is the same each time") {
  const MachineFolder folder;
  REQUIRE(picture(folder, "a.png", {QStringLiteral("--size"), QStringLiteral("1440x900")}).code ==
          0);
  REQUIRE(picture(folder, "b.png", {QStringLiteral("--size"), QStringLiteral("1440x900")}).code ==
          0);
  CHECK(QImage(folder.path("a.png")).size() == QSize(1440, 900));
  CHECK(folder.bytes("a.png") == folder.bytes("b.png"));
}

TEST_CASE("the picture is light, or dark when asked") {
  const MachineFolder folder;
  REQUIRE(picture(folder, "light.png").code == 0);
  REQUIRE(picture(folder, "dark.png", {QStringLiteral("--dark")}).code == 0);
  CHECK(lightness(QImage(folder.path("light.png"))) > 0.7);
  CHECK(lightness(QImage(folder.path("dark.png"))) < 0.3);
}

TEST_CASE("a picture of an axis or study there is not ends in 2 and a sentence") {
  const MachineFolder folder;
  const Outcome axis = picture(folder, "a.png", {QStringLiteral("--axis"), QStringLiteral("7")});
  CHECK(axis.code == 2);
  CHECK(axis.err.contains("7"));
  const Outcome study = picture(folder, "a.png", {QStringLiteral("--study"), QStringLiteral("99")});
  CHECK(study.code == 2);
  CHECK(study.err.contains("99"));
}
