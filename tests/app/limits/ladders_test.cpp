// SPDX-License-Identifier: GPL-3.0-or-later

// The ladders as they are seen and pressed.

#include "limits/grave_cautions.h"
#include "limits/ladder_widget.h"
#include "limits/limits_view.h"
#include "limits/paint_ladder.h"
#include "sizing/limits.h"
#include "sizing/size_axis.h"
#include "studies/studies_view.h"
#include "studies/working_view.h"
#include "support/machine_files.h"
#include "support/window.h"
#include "train/svg_device.h"

#include <QApplication>
#include <QImage>
#include <QLabel>
#include <QMouseEvent>
#include <QPainter>
#include <QRegularExpression>
#include <QScrollArea>
#include <QScrollBar>
#include <QToolButton>

#include <cmath>
#include <set>

using namespace feedwright;
using feedwright::testing::InLanguage;
using feedwright::testing::ordinary_router;
using feedwright::testing::sample;
using feedwright::testing::Shown;

namespace {

LadderWidget& ladder(Shown& shown, const char* name) {
  return shown.find<LadderWidget>(name);
}

std::size_t row_of(const LadderWidget& widget, LimitId id) {
  const auto& rows = widget.ladder().rows;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    if (rows[i].id == id) {
      return i;
    }
  }
  FAIL("no such limit");
  return 0;
}

void click(LadderWidget& widget, LimitId id) {
  QTest::mouseClick(&widget, Qt::LeftButton, Qt::NoModifier,
                    widget.row_area(row_of(widget, id)).center().toPoint());
  QCoreApplication::processEvents();
}

/// Whether all of the widget can be seen without scrolling.
bool is_in_view(Shown& shown, const QWidget& widget) {
  const auto& area = shown.find<QScrollArea>("limits_scroll");
  const QRect seen(widget.mapTo(area.viewport(), QPoint()), widget.size());
  return area.viewport()->rect().contains(seen);
}

/// The texts that are painted, with their heights.
std::vector<std::pair<double, QString>> painted_texts(const LadderWidget& widget) {
  SvgDevice device(widget.size());
  QPainter painter(&device);
  LadderOptions options;
  options.font = widget.font();
  paint_ladder(painter, widget.ladder(), QRectF(widget.rect()), Look::of(widget.palette()),
               options);
  painter.end();
  static const QRegularExpression text(
      QStringLiteral("<text[^>]* y=\"([-0-9.]+)\"[^>]*>([^<]*)</text>"));
  std::vector<std::pair<double, QString>> texts;
  auto found = text.globalMatch(QString::fromUtf8(device.document()));
  while (found.hasNext()) {
    const auto match = found.next();
    texts.emplace_back(match.captured(1).toDouble(), match.captured(2));
  }
  return texts;
}

/// Nothing is cut, what governs says so, and the scale can be read.
void check_whole(const LadderWidget& widget) {
  INFO(widget.objectName().toStdString());
  const Ladder& ladder = widget.ladder();
  const bool bars = !ladder.rows.empty() && ladder.rows.front().length;
  SvgDevice device(widget.size());
  LadderOptions options;
  options.font = widget.font();
  const LadderPlan plan = plan_ladder(ladder, QRectF(widget.rect()), options, &device);
  int governing = 0;
  for (const LadderRow& row : ladder.rows) {
    governing += row.governs && row.length ? 1 : 0;
  }
  int told = 0;
  int numbers = 0;
  for (const auto& [y, text] : painted_texts(widget)) {
    INFO(text.toStdString());
    CHECK_FALSE(text.contains(QChar(0x2026)));
    told += text.contains(ladder.governs_label) && !ladder.tie.contains(text) ? 1 : 0;
    numbers += y > plan.ticks_top && y <= plan.ticks_top + plan.line ? 1 : 0;
  }
  CHECK(told == governing);
  if (bars) {
    CHECK(numbers >= 2);
  }
}

void point_at(QWidget& widget, const QPointF& where) {
  QMouseEvent move(QEvent::MouseMove, where, widget.mapToGlobal(where), Qt::NoButton, Qt::NoButton,
                   Qt::NoModifier);
  QCoreApplication::sendEvent(&widget, &move);
}

} // namespace

TEST_CASE("at 1280 by 800 every limit of feed and force of the plank router is in view") {
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    INFO(language.code);
    Shown shown(sample("plank-router"));
    auto& feed = ladder(shown, "feed_ladder");
    auto& force = ladder(shown, "thrust_ladder");
    CHECK(is_in_view(shown, feed));
    CHECK(is_in_view(shown, force));
    CHECK(feed.y() == force.y());
    CHECK(feed.x() + feed.width() <= force.x());
    const auto& area = shown.find<QScrollArea>("limits_scroll");
    CHECK(area.widget()->width() <= area.viewport()->width());
  }
}

TEST_CASE("where a desktop takes some of 1280 by 800, every name still stands beside its bar") {
  for (const char* language : {"en", "de"}) {
    const InLanguage spoken(language);
    for (const int width : {1280, 1264, 1240}) {
      Shown shown(sample("plank-router"), {width, 740});
      for (const char* name : {"feed_ladder", "thrust_ladder"}) {
        INFO(language << " " << width << " " << name);
        const LadderWidget& widget = ladder(shown, name);
        for (std::size_t i = 0; i < widget.ladder().rows.size(); ++i) {
          CHECK(widget.row_area(i).height() < 1.6 * widget.fontMetrics().height());
        }
      }
    }
  }
}

TEST_CASE("in a narrow window the ladders stand one below the other, each row on its own") {
  Shown shown(sample("plank-router"));
  auto& view = shown.find<LimitsView>("limits_view");
  QFont large = view.font();
  large.setPointSize(18);
  view.setFont(large);
  QCoreApplication::processEvents();
  auto& feed = ladder(shown, "feed_ladder");
  auto& force = ladder(shown, "thrust_ladder");
  CHECK(feed.x() == force.x());
  CHECK(force.y() >= feed.y() + feed.height());
}

TEST_CASE("no row of a ladder overlaps another or leaves the ladder") {
  for (const char* name : {"plank-router", "clock-mill", "sign-engraver"}) {
    const Machine machine = sample(name);
    Shown shown(machine);
    for (std::size_t axis = 0; axis < machine.axes.size(); ++axis) {
      shown.window->show_axis(axis);
      QCoreApplication::processEvents();
      for (const char* which : {"feed_ladder", "thrust_ladder", "margin_ladder"}) {
        const auto& widget = ladder(shown, which);
        INFO(name << " " << axis << " " << which);
        for (std::size_t i = 0; i < widget.ladder().rows.size(); ++i) {
          const QRectF area = widget.row_area(i);
          CHECK(QRectF(widget.rect()).adjusted(0, 0, 1, 1).contains(area));
          for (std::size_t k = 0; k < i; ++k) {
            CHECK_FALSE(area.adjusted(0.5, 0.5, -0.5, -0.5).intersects(widget.row_area(k)));
          }
        }
      }
    }
  }
}

TEST_CASE("the bar of what governs is seen however little room its words leave") {
  const Machine machine = sample("plank-router");
  const FileUnits units(machine);
  const AxisResults results = size_axis(machine, machine.axes[0]);
  const Ladder feeds = ladder_of(results, LimitScale::feed, units);
  REQUIRE(feeds.rows.front().governs);
  const Look look = Look::of(QPalette());
  for (const int width : {260, 320, 400, 520, 640, 900}) {
    QImage picture(width, 240, QImage::Format_RGB32);
    picture.fill(look.paper);
    LadderOptions options;
    options.font.setPixelSize(20);
    const LadderPlan plan =
        plan_ladder(feeds, QRectF(picture.rect()), options, static_cast<QPaintDevice*>(&picture));
    QPainter painter(&picture);
    paint_ladder(painter, feeds, QRectF(picture.rect()), plan, look, options);
    painter.end();
    int red = 0;
    const int middle = int(plan.bar_line(0).center().y());
    for (int x = int(plan.scale_left); x < width; ++x) {
      red += picture.pixelColor(x, middle) == look.over ? 1 : 0;
    }
    const double bar =
        *feeds.rows.front().length / feeds.end * (plan.scale_right - plan.scale_left);
    INFO(width);
    CHECK(red > 0.8 * bar);
  }
}

TEST_CASE("names, what governs and two figures of a scale are whole in letters of any size") {
  const QFont before = QApplication::font();
  for (const Language& language : languages()) {
    const InLanguage spoken(language.code);
    for (const int points : {9, 18}) {
      QFont font = before;
      font.setPointSize(points);
      QApplication::setFont(font);
      for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
        for (const char* name : {"plank-router", "clock-mill", "sign-engraver"}) {
          INFO(language.code << " " << points << " " << size.width() << " " << name);
          Shown shown(sample(name), size);
          for (std::size_t axis = 0; axis < shown.document().machine().axes.size(); ++axis) {
            shown.window->show_axis(axis);
            QCoreApplication::processEvents();
            for (const char* which : {"feed_ladder", "thrust_ladder", "margin_ladder"}) {
              check_whole(ladder(shown, which));
            }
          }
        }
      }
    }
  }
  QApplication::setFont(before);
}

TEST_CASE("limits within a twentieth of what governs are tied and told") {
  // The cross axis of the plank router, with steps that run out a little after the motor's curve.
  Machine machine = sample("plank-router");
  const AxisResults plain = size_axis(machine, machine.axes[1]);
  constexpr double little = 1.03;
  const double steps_over_curve =
      plain.limit(LimitId::step_rate).reached->si / plain.limit(LimitId::motor_speed).reached->si;
  const double steps = si_value(**machine.controller.step_rate_limit);
  machine.controller.step_rate_limit =
      Positive<Frequency>::of(from_si<Frequency>(steps * little / steps_over_curve));
  const AxisResults results = size_axis(machine, machine.axes[1]);
  const NearTie tie = near_tie(results, LimitScale::feed);
  REQUIRE(tie.limits.size() == 2);
  CHECK(tie.limits[0] == results.governing);
  CHECK(tie.gap <= 0.05);
  Shown shown(machine);
  shown.window->show_axis(1);
  auto& feed = ladder(shown, "feed_ladder");
  CHECK(feed.ladder().tie == QStringLiteral("motor speed and step rate are within 3 %: both "
                                            "govern."));
  std::size_t tied = 0;
  for (const LadderRow& row : feed.ladder().rows) {
    tied += row.ties ? 1 : 0;
  }
  CHECK(tied == 2);
  // The keyboard kept its limit of the axis before; the tie is told with the limits it ties.
  QTest::keyClick(&feed, Qt::Key_Home);
  REQUIRE(feed.current_limit());
  CHECK(feed.ladder().rows[row_of(feed, *feed.current_limit())].ties);
  CHECK(feed.accessibleDescription().contains(feed.ladder().tie));
}

TEST_CASE("one limit alone governs where none is near") {
  const Machine machine = sample("plank-router");
  const AxisResults results = size_axis(machine, machine.axes[0]);
  CHECK(near_tie(results, LimitScale::feed).limits.size() == 1);
  Shown shown(machine);
  CHECK(ladder(shown, "feed_ladder").ladder().tie.isEmpty());
}

TEST_CASE("two limits that differ by a twentieth tie, by a little more they do not") {
  AxisResults results;
  const auto set = [&](LimitId id, double feed) {
    Limit& limit = results.limits[static_cast<std::size_t>(id)];
    limit.id = id;
    limit.reached = AnyQuantity{Kind::velocity, feed};
  };
  for (const LimitDescriptor& about : limit_descriptors()) {
    results.limits[static_cast<std::size_t>(about.id)].id = about.id;
  }
  set(LimitId::whip, 1.0);
  set(LimitId::motor_torque, 1.0499);
  set(LimitId::step_rate, 1.051);
  const NearTie tie = near_tie(results, LimitScale::feed);
  REQUIRE(tie.limits.size() == 2);
  CHECK(tie.limits[1] == LimitId::motor_torque);
  CHECK(tie.gap == Approx(0.0499));
  CHECK(near_tie(results, LimitScale::thrust).limits.empty());
}

TEST_CASE("a limit clicked stays marked, its field is open and its working chosen") {
  Shown shown(sample("plank-router"));
  auto& feed = ladder(shown, "feed_ladder");
  click(feed, LimitId::step_rate);
  CHECK(feed.chosen() == LimitId::step_rate);
  CHECK(feed.accessibleDescription().contains(QStringLiteral("Chosen")));
  CHECK(shown.window->studies().working().chosen() == ResultId::step_rate_feed);
  auto& force = ladder(shown, "thrust_ladder");
  click(force, LimitId::buckling);
  CHECK(force.chosen() == LimitId::buckling);
  CHECK(feed.chosen() == LimitId::buckling); // one mark for all: none of its own rows
}

TEST_CASE("an open limit is a link to the input it wants") {
  Shown shown(sample("plank-router"));
  auto& feed = ladder(shown, "feed_ladder");
  click(feed, LimitId::guide_speed);
  CHECK(shown.document().selection().slot == PartSlot::guides);
  CHECK(shown.document().selection().member == QStringLiteral("speed_limit"));
}

TEST_CASE("arrows walk all rows, Enter goes through, and the row stays in view") {
  Shown shown(sample("plank-router"));
  auto& margins = ladder(shown, "margin_ladder");
  shown.window->activateWindow();
  margins.setFocus(Qt::TabFocusReason);
  std::set<QString> said;
  for (std::size_t i = 0; i < margins.ladder().rows.size(); ++i) {
    said.insert(margins.accessibleDescription());
    QTest::keyClick(&margins, i % 2 == 0 ? Qt::Key_Down : Qt::Key_Right);
  }
  CHECK(said.size() == margins.ladder().rows.size());
  QCoreApplication::processEvents();
  const auto& area = shown.find<QScrollArea>("limits_scroll");
  const QRect last = margins.row_area(margins.ladder().rows.size() - 1).toRect();
  CHECK(area.viewport()->rect().contains(margins.mapTo(area.viewport(), last.center())));
  QTest::keyClick(&margins, Qt::Key_Return);
  CHECK(margins.chosen() == margins.ladder().rows.back().id);
}

TEST_CASE("pointing at a row says its sentence, leaving it says what governs") {
  Shown shown(sample("plank-router"));
  auto& feed = ladder(shown, "feed_ladder");
  const auto& sentence = shown.find<QLabel>("limit_sentence");
  const QString governing = sentence.text();
  CHECK(governing.contains(QStringLiteral("whip")));
  point_at(feed, feed.row_area(row_of(feed, LimitId::step_rate)).center());
  CHECK(sentence.accessibleName().contains(QStringLiteral("step rate")));
  QEvent leave(QEvent::Leave);
  QCoreApplication::sendEvent(&feed, &leave);
  CHECK(sentence.text() == governing);
}

TEST_CASE("ladders speak the units the machine is typed in") {
  Machine machine = sample("plank-router");
  const AnyQuantity feed{Kind::velocity, 200.0 * 0.0254 / 60.0};
  REQUIRE(set_field(machine, 0, PartSlot::targets, "feed", feed, {"200 in/min", Origin::entered}));
  const AnyQuantity thrust{Kind::force, 30.0 * 4.4482216152605};
  REQUIRE(set_field(machine, 0, PartSlot::targets, "thrust", thrust, {"30 lbf", Origin::entered}));
  Shown shown(machine);
  const Ladder& feeds = ladder(shown, "feed_ladder").ladder();
  CHECK(feeds.unit == QStringLiteral("in/min"));
  REQUIRE(feeds.wanted);
  CHECK(*feeds.wanted == Approx(200.0));
  CHECK(ladder(shown, "thrust_ladder").ladder().unit == QStringLiteral("lbf"));
}

TEST_CASE("other margins say what is reached of what is wanted, with its unit") {
  Shown shown(sample("plank-router"));
  const Ladder& margins = ladder(shown, "margin_ladder").ladder();
  bool said = false;
  for (const LadderRow& row : margins.rows) {
    if (row.id == LimitId::acceleration) {
      said = row.value.contains(QStringLiteral(", wanted ")) &&
             row.value.endsWith(QStringLiteral("m/s²"));
    }
  }
  CHECK(said);
}

TEST_CASE("where each row has its own wanted value it stands beside what is reached") {
  const Machine machine = sample("clock-mill");
  AxisResults results = size_axis(machine, machine.axes[0]);
  const FileUnits units(machine);
  const Ladder shared = ladder_of(results, LimitScale::thrust, units);
  REQUIRE(shared.wanted);
  for (const LadderRow& row : shared.rows) {
    CHECK_FALSE(row.value.contains(QStringLiteral(", wanted ")));
  }
  for (Limit& limit : results.limits) {
    if (limit.id == LimitId::buckling && limit.wanted) {
      limit.wanted->si *= 2.0;
    }
  }
  const Ladder own = ladder_of(results, LimitScale::thrust, units);
  CHECK_FALSE(own.wanted);
  for (std::size_t i = 1; i < own.rows.size(); ++i) {
    const Limit& above = results.limit(own.rows[i - 1].id);
    const Limit& below = results.limit(own.rows[i].id);
    CHECK((!above.margin || !below.margin || *above.margin <= *below.margin));
  }
  int told = 0;
  for (const LadderRow& row : own.rows) {
    if (row.length) {
      INFO(row.value.toStdString());
      CHECK(row.value.contains(QStringLiteral(", wanted ")));
      ++told;
    }
  }
  CHECK(told >= 2);
}

TEST_CASE("grave cautions but for the first take two lines until they are opened") {
  GraveCautions cautions;
  QStringList texts;
  for (int i = 0; i < 4; ++i) {
    texts << QStringLiteral(
                 "▲ Screw: a sentence of some length that says what may happen, number %1, "
                 "and what to do about it before anybody switches it on.")
                 .arg(i);
  }
  cautions.show_texts(texts);
  cautions.resize(600, cautions.heightForWidth(600));
  cautions.show();
  QCoreApplication::processEvents();
  const int line = cautions.fontMetrics().lineSpacing();
  CHECK(cautions.heightForWidth(600) <= 2 * line + 2);
  auto* more = cautions.findChild<QToolButton*>(QStringLiteral("grave_more"));
  REQUIRE(more != nullptr);
  CHECK(more->isVisible());
  CHECK(cautions.accessibleName().contains(QStringLiteral("number 3")));
  QTest::mouseClick(more, Qt::LeftButton);
  CHECK(cautions.is_open());
  CHECK(cautions.heightForWidth(600) > 4 * line);
  QTest::keyClick(more, Qt::Key_Space);
  CHECK_FALSE(cautions.is_open());
}

TEST_CASE("cautions that stand below what is in sight are counted where it ends, a click away") {
  Shown shown(sample("plank-router"));
  shown.document().select({1, PartSlot::drive, {}});
  QCoreApplication::processEvents();
  auto& area = shown.find<QScrollArea>("limits_scroll");
  const auto in_sight = [&](const QWidget& widget) {
    const QRect place(widget.mapTo(area.viewport(), QPoint()), widget.size());
    return area.viewport()->rect().contains(place);
  };
  auto& button = shown.find<QToolButton>("to_cautions");
  const auto& first = shown.find<QLabel>("finding_0");
  CHECK(button.isVisible());
  CHECK(in_sight(button));
  CHECK(button.text().startsWith(QStringLiteral("△ ")));
  CHECK_FALSE(in_sight(first));
  button.click();
  QCoreApplication::processEvents();
  CHECK(in_sight(first));
}

TEST_CASE("one short caution needs no button") {
  GraveCautions cautions;
  cautions.show_texts({QStringLiteral("▲ Screw: take care.")});
  cautions.resize(600, 40);
  cautions.show();
  QCoreApplication::processEvents();
  CHECK_FALSE(cautions.findChild<QToolButton*>(QStringLiteral("grave_more"))->isVisible());
}

TEST_CASE("from right to left the ladder is mirrored, and a click finds the same rows") {
  Shown shown(sample("plank-router"));
  auto& feed = ladder(shown, "feed_ladder");
  const QRectF before = feed.row_area(row_of(feed, LimitId::guide_speed));
  shown.window->setLayoutDirection(Qt::RightToLeft);
  QCoreApplication::processEvents();
  const QRectF after = feed.row_area(row_of(feed, LimitId::guide_speed));
  // As far from the right edge as it stood from the left one, wherever on the line that is.
  CHECK(std::abs((feed.width() - after.right()) - before.left()) < 1.0);
  CHECK(std::abs(after.left() - before.left()) > 1.0);
  CHECK_FALSE(feed.grab().isNull());
  click(feed, LimitId::guide_speed);
  CHECK(feed.chosen() == LimitId::guide_speed);
}
