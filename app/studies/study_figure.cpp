// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/study_figure.h"

#include "limits/number_text.h"
#include "sizing/envelopes.h"
#include "text/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace feedwright {

namespace {

constexpr int points = 100;
constexpr double headroom = 1.08;

class FigureMaker {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  FigureMaker(const Machine& machine, std::size_t axis, const AxisResults& results)
      : machine_(machine), axis_(machine.axes.at(axis)), results_(results) {}

  StudyFigure thrust() {
    begin_over_feed(tr("cutting thrust"), QStringLiteral("N"));
    StudyCurve curve{tr("the motor can push"), {}, {}, true, 0};
    for (const ThrustPoint& point : thrust_over_feed(machine_, axis_, points, last_feed())) {
      add(curve, any(point.feed), any(point.thrust));
    }
    out_.curves.push_back(std::move(curve));
    const Targets& targets = axis_.targets;
    if (targets.cutting_feed && targets.thrust) {
      mark(any(**targets.cutting_feed), any(**targets.thrust), LimitId::motor_thrust);
    }
    fit();
    out_.summary = results_.thrust_available && targets.cutting_feed
                       ? tr("At %1 the motor can cut with %2.%3")
                             .arg(text(any(**targets.cutting_feed), "m/min"),
                                  text(any(*results_.thrust_available), "N"),
                                  wanted_sentence(target(targets.thrust), "N"))
                       : tr("Cutting thrust against feed; give a cutting feed to read it off.");
    return std::move(out_);
  }

  StudyFigure acceleration() {
    begin_over_feed(tr("acceleration"), QStringLiteral("m/s²"));
    StudyCurve curve{tr("the motor can reach"), {}, {}, true, 0};
    for (const AccelerationPoint& point :
         acceleration_over_feed(machine_, axis_, points, last_feed())) {
      add(curve, any(point.feed), any(point.acceleration));
    }
    out_.curves.push_back(std::move(curve));
    const Targets& targets = axis_.targets;
    if (targets.feed && targets.acceleration) {
      mark(any(**targets.feed), any(**targets.acceleration), LimitId::acceleration);
    }
    fit();
    out_.summary = results_.acceleration_available && targets.feed
                       ? tr("At %1 the motor can accelerate with %2.%3")
                             .arg(text(any(**targets.feed), "m/min"),
                                  text(any(*results_.acceleration_available), "m/s²"),
                                  wanted_sentence(target(targets.acceleration), "m/s²"))
                       : tr("Acceleration against feed; give a feed to read it off.");
    return std::move(out_);
  }

  StudyFigure stretch() {
    out_.x_name = tr("length between bearings");
    out_.x_unit = QStringLiteral("mm");
    out_.y_name = tr("allowed feed");
    out_.y_unit = QStringLiteral("m/min");
    if (screw_ == nullptr || screw_->driven == DrivenMember::nut) {
      out_.summary = screw_ == nullptr ? tr("A belt that hauls the carriage does not whip.")
                                       : tr("The screw stands still: it does not whip.");
      return std::move(out_);
    }
    const Length span = *screw_->span;
    const auto& feed = axis_.targets.feed;
    const auto longest = feed ? longest_span_at(axis_, **feed) : std::nullopt;
    Length to = span * 1.6;
    if (longest && *longest > span && *longest < span * 4.0) {
      to = std::max(to, Length(*longest * 1.15));
    }
    Length from = span * 0.45;
    if (longest && *longest < span) {
      from = std::min(from, Length(*longest * 0.8));
    }
    add_support_curves(from, to);
    out_.x_start = number(any(from));
    out_.x_end = number(any(to));
    add_stretch_lines(longest);
    out_.y_end = stretch_top();
    out_.summary = stretch_summary(longest);
    return std::move(out_);
  }

  StudyFigure motor() {
    out_.x_name = tr("motor speed");
    out_.x_unit = QStringLiteral("rpm");
    out_.y_name = tr("torque");
    out_.y_unit = QStringLiteral("N·m");
    const bool servo = std::holds_alternative<Servo>(axis_.motor);
    StudyCurve whole{servo ? tr("short-time") : tr("pull-out"), {}, {}, true, 1};
    StudyCurve usable{tr("usable"), {}, {}, true, 0};
    for (const MotorTorquePoint& point : motor_torque_over_speed(machine_, axis_, points)) {
      add(whole, any(point.speed), any(point.pull_out));
      add(usable, any(point.speed), any(point.usable));
    }
    out_.curves.push_back(std::move(whole));
    out_.curves.push_back(std::move(usable));
    out_.summary =
        tr("Motor torque against speed; give a feed and an acceleration to see the need.");
    if (results_.motor_speed && results_.rapid_torque) {
      const AnyQuantity speed = any(*results_.motor_speed);
      const AnyQuantity need = any(*results_.rapid_torque);
      out_.marks.push_back({tr("needed %1 at %2").arg(text(need, "N·m"), text(speed, "rpm")),
                            number_in(speed, "rpm"), number_in(need, "N·m"),
                            results_.limit(LimitId::acceleration).verdict});
      out_.summary = results_.usable_torque
                         ? tr("At the wanted feed, %1, the motor needs %2 of its usable %3.")
                               .arg(text(speed, "rpm"), text(need, "N·m"),
                                    text(any(*results_.usable_torque), "N·m"))
                         : tr("At the wanted feed, %1, the motor needs %2; its curve ends before.")
                               .arg(text(speed, "rpm"), text(need, "N·m"));
    }
    fit();
    return std::move(out_);
  }

private:
  template <class C>
  static std::optional<AnyQuantity> target(const std::optional<C>& value) {
    return value ? std::optional(any(**value)) : std::nullopt;
  }

  static QString text(const AnyQuantity& value, std::string_view unit) {
    return words::quantity(value, unit, 3);
  }

  static QString wanted_sentence(const std::optional<AnyQuantity>& wanted, std::string_view unit) {
    return wanted ? tr(" Wanted is %1.").arg(text(*wanted, unit)) : QString();
  }

  /// Twice what is wanted or reached: beyond, the curve has nothing to tell of this axis.
  std::optional<Velocity> last_feed() const {
    constexpr double beyond = 2.0;
    Velocity most;
    for (const auto& feed : {axis_.targets.feed, axis_.targets.cutting_feed}) {
      most = feed ? std::max(most, Velocity(**feed)) : most;
    }
    most = results_.governing_feed ? std::max(most, *results_.governing_feed) : most;
    return most > Velocity() ? std::optional(Velocity(most * beyond)) : std::nullopt;
  }

  void begin_over_feed(const QString& y_name, const QString& y_unit) {
    out_.x_name = tr("feed");
    out_.x_unit = QStringLiteral("m/min");
    out_.y_name = y_name;
    out_.y_unit = y_unit;
  }

  double number(const AnyQuantity& x) const { return number_in(x, out_.x_unit.toStdString()); }

  void add(StudyCurve& curve, const AnyQuantity& x, const AnyQuantity& y) const {
    curve.x.push_back(number_in(x, out_.x_unit.toStdString()));
    curve.y.push_back(number_in(y, out_.y_unit.toStdString()));
  }

  void mark(const AnyQuantity& x, const AnyQuantity& y, LimitId limit) {
    const std::string x_unit = out_.x_unit.toStdString();
    const std::string y_unit = out_.y_unit.toStdString();
    out_.marks.push_back({tr("wanted %1 at %2").arg(text(y, y_unit), text(x, x_unit)),
                          number_in(x, x_unit), number_in(y, y_unit),
                          results_.limit(limit).verdict});
  }

  void fit() {
    double x_end = 0.0;
    double y_end = 0.0;
    for (const StudyCurve& curve : out_.curves) {
      for (std::size_t i = 0; i < curve.x.size(); ++i) {
        x_end = std::max(x_end, curve.x[i]);
        y_end = std::max(y_end, curve.y[i]);
      }
    }
    for (const StudyMark& each : out_.marks) {
      x_end = std::max(x_end, each.x);
      y_end = std::max(y_end, each.y);
    }
    out_.x_end = x_end > 0.0 ? x_end * 1.03 : 1.0;
    out_.y_end = y_end > 0.0 ? y_end * headroom : 1.0;
  }

  struct Pair {
    EndSupport a, b;
  };

  static QString pair_name(const Pair& pair) {
    const auto name = [](EndSupport end) {
      return words::choice_name("motor_end",
                                fields::Names<EndSupport>::list[static_cast<std::size_t>(end)]);
    };
    return tr("%1–%2", "supports at the two ends of a screw").arg(name(pair.a), name(pair.b));
  }

  void add_support_curves(const Length& from, const Length& to) {
    using enum EndSupport;
    constexpr Pair pairs[] = {
        {fixed, free}, {supported, supported}, {fixed, supported}, {fixed, fixed}};
    const Pair own{screw_->motor_end, screw_->far_end};
    int dash = 1;
    for (const Pair& pair : pairs) {
      const bool turned = own.a == pair.b && own.b == pair.a;
      const bool present = turned || (own.a == pair.a && own.b == pair.b);
      const Pair drawn = present ? own : pair;
      StudyCurve curve{pair_name(drawn), {}, {}, present, present ? 0 : dash++};
      for (const WhipPoint& point : whip_over_span(axis_, drawn.a, drawn.b, from, to, points)) {
        add(curve, any(point.span), any(point.feed));
      }
      out_.curves.push_back(std::move(curve));
    }
  }

  void add_stretch_lines(const std::optional<Length>& longest) {
    const AnyQuantity span = any(*screw_->span);
    out_.lines.push_back({tr("as it is, %1").arg(text_span(span)), number(span), true, false});
    if (!axis_.targets.feed) {
      return;
    }
    const AnyQuantity feed = any(**axis_.targets.feed);
    const double wanted = number_in(feed, "m/min");
    out_.lines.push_back({tr("wanted %1").arg(text(feed, "m/min")), wanted, false, true});
    if (longest) {
      out_.marks.push_back(
          {tr("longest at %1: %2").arg(text(feed, "m/min"), text_span(any(*longest))),
           number(any(*longest)), wanted, results_.limit(LimitId::whip).verdict});
    }
  }

  static QString text_span(const AnyQuantity& span) { return words::quantity(span, "mm", 4); }

  double stretch_top() const {
    double top = results_.whip_feed ? number_in(any(*results_.whip_feed), "m/min") * 2.2 : 0.0;
    if (axis_.targets.feed) {
      top = std::max(top, number_in(any(**axis_.targets.feed), "m/min") * 1.8);
    }
    return top > 0.0 ? top : 1.0;
  }

  QString stretch_summary(const std::optional<Length>& longest) const {
    QString now = results_.whip_feed ? tr("At %1 between bearings whip allows %2.")
                                           .arg(text_span(any(*screw_->span)),
                                                text(any(*results_.whip_feed), "m/min"))
                                     : tr("These end supports do not hold the screw.");
    if (!axis_.targets.feed) {
      return now;
    }
    const QString feed = text(any(**axis_.targets.feed), "m/min");
    return now + QLatin1Char(' ') +
           (longest ? tr("The longest for %1 is %2.").arg(feed, text_span(any(*longest)))
                    : tr("No length that holds the travel allows %1.").arg(feed));
  }

  const Machine& machine_;
  const Axis& axis_;
  const AxisResults& results_;
  const Screw* screw_ = std::get_if<Screw>(&axis_.drive);
  StudyFigure out_;
};

} // namespace

StudyFigure study_figure(Study study, const Machine& machine, std::size_t axis,
                         const AxisResults& results) {
  FigureMaker maker(machine, axis, results);
  const auto made = [&] {
    switch (study) {
    case Study::thrust: return maker.thrust();
    case Study::acceleration: return maker.acceleration();
    case Study::stretch: return maker.stretch();
    case Study::motor: break;
    }
    return maker.motor();
  };
  StudyFigure figure = made();
  figure.title = study_name(study);
  return figure;
}

} // namespace feedwright
