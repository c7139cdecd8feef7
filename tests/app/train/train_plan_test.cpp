// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/size_axis.h"
#include "support/machine_files.h"
#include "support/window.h"
#include "train/paint_train.h"
#include "train/train_plan.h"

#include <QFontMetricsF>
#include <QImage>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <filesystem>

using namespace feedwright;

namespace {

std::vector<Machine> sample_machines() {
  std::vector<Machine> machines;
  for (const auto& entry :
       std::filesystem::directory_iterator(FEEDWRIGHT_SOURCE_DIR "/sample-machines")) {
    if (entry.path().extension() == ".feedwright") {
      const auto text = read_file(entry.path(), 1U << 20U);
      REQUIRE(text);
      machines.push_back(*read_machine(*text));
    }
  }
  REQUIRE(machines.size() == 3);
  return machines;
}

void check_apart(const TrainPlan& plan) {
  CHECK_FALSE(plan.motor.intersects(plan.supply));
  CHECK_FALSE(plan.motor.intersects(plan.controller));
  CHECK_FALSE(plan.supply.intersects(plan.controller));
  for (std::size_t a = 0; a < plan.labels.size(); ++a) {
    for (std::size_t b = a + 1; b < plan.labels.size(); ++b) {
      INFO(plan.labels[a].text.toStdString() << " / " << plan.labels[b].text.toStdString());
      CHECK_FALSE(plan.labels[a].area.intersects(plan.labels[b].area));
    }
  }
}

} // namespace

TEST_CASE("an axis that does not lie has a sign of how it stands, which covers nothing") {
  const Look look = Look::of(QPalette());
  constexpr double in_degree = 3.14159265358979 / 180.0;
  for (const double degrees : {-90.0, -30.0, 0.0, 30.0, 90.0}) {
    INFO(degrees);
    Machine machine = testing::ordinary_router();
    machine.axes[0].basics.incline = Finite<Angle>::of(from_si<Angle>(degrees * in_degree));
    const AxisResults results = size_axis(machine, machine.axes[0]);
    const TrainGeometry train = train_geometry(machine, 0, &results);
    TrainOptions options;
    options.units_per_mm = 96.0 / 25.4;
    QImage picture(760, 260, QImage::Format_RGB32);
    picture.fill(look.paper);
    QPaintDevice* device = &picture;
    const TrainPlan plan = plan_train(train, QRectF(picture.rect()), options, device);
    CHECK(plan.standing.isNull() == (degrees == 0.0));
    if (plan.standing.isNull()) {
      continue;
    }
    CHECK(QRectF(picture.rect()).contains(plan.standing));
    CHECK(plan.standing.top() == 0.0); // in the title's line
    for (const PlannedLabel& label : plan.labels) {
      INFO(label.text.toStdString());
      CHECK_FALSE(label.area.intersects(plan.standing));
    }
    for (const PlannedPart& part : plan.parts) {
      CHECK_FALSE(part.area.intersects(plan.standing));
    }
    QPainter painter(&picture);
    paint_train(painter, train, plan, look, options);
    painter.end();
    // The rail's far end, where the incline puts it.
    const double half = plan.standing.height() / 2.0 - 2.5 * plan.unit;
    const QPointF middle(plan.standing.left() + plan.standing.height() / 2.0,
                         plan.standing.center().y());
    const auto inked = [&](double angle) {
      const QPointF tip = middle + half * QPointF(std::cos(angle), -std::sin(angle));
      int darkest = look.paper.lightness();
      for (const QPoint by :
           {QPoint(0, 0), QPoint(1, 0), QPoint(-1, 0), QPoint(0, 1), QPoint(0, -1)}) {
        darkest = std::min(darkest, picture.pixelColor(tip.toPoint() + by).lightness());
      }
      return darkest < look.paper.lightness() - 60;
    };
    const double angle = degrees * in_degree;
    CHECK(inked(angle));
    CHECK_FALSE(inked(angle - 90.0 * in_degree)); // below the rail, with the carriage above it
  }
}

TEST_CASE(
    "a screw too long for any usual scale, or a room too narrow, still has a drawing of its size") {
  QImage device(8, 8, QImage::Format_ARGB32);
  for (const double metres : {0.3, 1.5, 40.0, 1e6, 1e9}) {
    for (const QSizeF& size :
         {QSizeF(900, 260), QSizeF(420, 200), QSizeF(100, 100), QSizeF(1, 1)}) {
      INFO(metres << " m in " << size.width());
      Machine machine = testing::ordinary_router();
      auto& screw = testing::screw_of(machine.axes[0]);
      screw.span = Positive<Length>::of(from_si<Length>(metres));
      TrainOptions options;
      options.units_per_mm = 96.0 / 25.4;
      const TrainPlan plan = plan_train(train_geometry(machine, 0, nullptr),
                                        QRectF(QPointF(), size), options, &device);
      CHECK(plan.scale > 0.0);
      CHECK(plan.screw.width() > 0.0);
      CHECK(plan.screw.width() <= std::max(size.width(), 40.0 * plan.unit));
    }
  }
}

TEST_CASE("what governs at supply or controller is said in its box") {
  QImage device(8, 8, QImage::Format_ARGB32);
  bool any = false;
  for (const Machine& machine : sample_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      const AxisResults results = size_axis(machine, machine.axes[axis]);
      const TrainGeometry train = train_geometry(machine, axis, &results);
      if (!train.governing || train.governing->slot != PartSlot::controller) {
        continue;
      }
      any = true;
      TrainOptions options;
      options.units_per_mm = 96.0 / 25.4;
      const TrainPlan plan = plan_train(train, QRectF(0, 0, 660, 216), options, &device);
      check_apart(plan);
      const auto said = std::ranges::find_if(plan.labels, [&](const PlannedLabel& label) {
        return label.text.contains(train.governing->text);
      });
      REQUIRE(said != plan.labels.end());
      CHECK(plan.controller.contains(said->area));
      CHECK(QFontMetricsF(options.font, &device).size(0, said->text).width() <=
            plan.controller.width());
    }
  }
  CHECK(any);
}

TEST_CASE("in the drawing no word covers another and no box the motor, at any usual size") {
  QImage device(8, 8, QImage::Format_ARGB32);
  for (const Machine& machine : sample_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      const AxisResults results = size_axis(machine, machine.axes[axis]);
      for (const QSizeF& size : {QSizeF(660, 200), QSizeF(900, 240), QSizeF(1280, 280),
                                 QSizeF(1300, 420), QSizeF(2200, 500)}) {
        INFO(machine.name << " " << machine.axes[axis].basics.letter << " " << size.width());
        TrainOptions options;
        options.units_per_mm = 96.0 / 25.4;
        check_apart(plan_train(train_geometry(machine, axis, &results), QRectF(QPointF(), size),
                               options, &device));
      }
    }
  }
}

TEST_CASE("words of a dimension stand in its line or beside it, never over its ends") {
  int alone = 0;
  for (const Machine& machine : sample_machines()) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      const AxisResults results = size_axis(machine, machine.axes[axis]);
      const TrainGeometry train = train_geometry(machine, axis, &results);
      for (const QSizeF size : {QSizeF(350, 210), QSizeF(420, 210), QSizeF(660, 240)}) {
        QImage picture(size.toSize(), QImage::Format_RGB32);
        const TrainPlan plan = plan_train(train, QRectF(picture.rect()), TrainOptions(), &picture);
        for (const PlannedLabel& label : plan.labels) {
          if (label.text != train.span_text.words && label.text != train.span_text.figure) {
            continue;
          }
          INFO(machine.name << " axis " << axis << " " << size.width() << " "
                            << label.text.toStdString());
          alone += label.text == train.span_text.figure ? 1 : 0;
          CHECK((label.area.right() <= plan.start.x() || label.area.left() >= plan.end.x() ||
                 (label.area.left() > plan.start.x() && label.area.right() < plan.end.x())));
        }
      }
    }
  }
  CHECK(alone > 0);
}

TEST_CASE("that an axis can fall is said at its weight, in every usual size, letter and language") {
  QImage device(8, 8, QImage::Format_ARGB32);
  const char* language = GENERATE("en", "de");
  const double points = GENERATE(9.0, 18.0);
  const feedwright::testing::InLanguage spoken(language);
  std::vector<Machine> machines = sample_machines();
  machines.push_back(feedwright::testing::machine_in("/tests/machines/", "upright"));
  int falling = 0;
  for (const Machine& machine : machines) {
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      const AxisResults results = size_axis(machine, machine.axes[axis]);
      const bool falls = std::ranges::any_of(results.findings, [](const Finding& finding) {
        return finding.code == FindingCode::axis_can_fall;
      });
      const TrainGeometry train = train_geometry(machine, axis, &results);
      CHECK(train.can_fall == falls);
      falling += falls ? 1 : 0;
      const QString word = train.fall_text.section(QLatin1Char(' '), -1);
      for (const QSizeF size :
           {QSizeF(460, 290), QSizeF(560, 190), QSizeF(660, 216), QSizeF(1000, 320)}) {
        TrainOptions options;
        options.units_per_mm = 96.0 / 25.4;
        options.font.setPointSizeF(points);
        const TrainPlan plan = plan_train(train, QRectF(QPointF(), size), options, &device);
        INFO(language << " " << points << " pt " << machine.name << " " << axis << " "
                      << size.width());
        CHECK(falls == std::ranges::any_of(plan.labels, [&](const PlannedLabel& label) {
                return !word.isEmpty() && label.text.contains(word) && label.tone == Tone::over;
              }));
      }
    }
  }
  CHECK(falling > 0);
}
