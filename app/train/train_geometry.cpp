// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/train_geometry.h"

#include "mechanics/belt_geometry.h"
#include "mechanics/whip_shape.h"
#include "sizing/limits.h"
#include "text/text_of.h"
#include "text/words.h"
#include "train/figure_texts.h"
#include "train/train_words.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>
#include <cmath>

namespace feedwright {

namespace {

class Train {
  Q_DECLARE_TR_FUNCTIONS(Train)

public:
  Train(const Machine& machine, std::size_t axis, const AxisResults* results, const AtPosition* at)
      : machine_(machine), axis_number_(axis), about_{machine, axis}, axis_(machine.axes.at(axis)),
        results_(results), at_(at) {}

  TrainGeometry drawn() {
    fill_drive();
    fill_motor();
    fill_transmission();
    fill_loads();
    fill_machine_side();
    if (results_ != nullptr) {
      fill_whip();
      fill_governing();
    }
    out_.figures = figure_texts(out_, about_);
    return out_;
  }

private:
  static double mm(Length length) { return si_value(length) * 1e3; }

  QString shown(PartSlot slot, std::string_view member) const { return about_.shown(slot, member); }

  void fill_hauling_belt(const HaulingBelt& belt) {
    out_.haul = PulleyCircle{mm(pulley_pitch_diameter(double(belt.pulley_teeth), *belt.pitch)),
                             belt.pulley_teeth};
    const double round = out_.haul->pitch_diameter * pi;
    out_.span = std::max(1.0, (mm(*belt.belt_length) - round) / 2.0);
    out_.nominal_diameter = out_.haul->pitch_diameter;
    out_.core_diameter = out_.nominal_diameter;
    out_.lead = round;
    out_.screw_text = train_words::hauling_belt(about_);
    const QString span = words::quantity({Kind::length, out_.span * 1e-3}, "mm");
    out_.span_text = {tr("%1 between pulleys").arg(span), span};
  }

  void fill_screw(const Screw& screw) {
    out_.span = mm(*screw.span);
    out_.nominal_diameter = mm(*screw.nominal_diameter);
    out_.core_diameter = std::min(mm(*screw.core_diameter), out_.nominal_diameter);
    out_.lead = si_value(*screw.lead) * 2.0 * pi * 1e3;
    out_.motor_end = screw.motor_end;
    out_.far_end = screw.far_end;
    out_.nut_turns = screw.driven == DrivenMember::nut;
    out_.preloaded_pair = screw.nuts == NutArrangement::preloaded_pair;
    out_.screw_text = train_words::screw(about_);
    out_.nut_text = train_words::nut(screw);
    const bool free_end = screw.motor_end == EndSupport::free || screw.far_end == EndSupport::free;
    const QString span = shown(PartSlot::drive, "span");
    out_.span_text = {(free_end         ? tr("%1 from bearing to free end")
                       : out_.nut_turns ? tr("%1 between end supports")
                                        : tr("%1 between bearings"))
                          .arg(span),
                      span};
  }

  void fill_drive() {
    const auto* screw = std::get_if<Screw>(&axis_.drive);
    if (screw != nullptr) {
      fill_screw(*screw);
    } else {
      fill_hauling_belt(std::get<HaulingBelt>(axis_.drive));
    }
    out_.title = train_words::title(about_);
    out_.travel = mm(*axis_.basics.travel);
    const QString travel = shown(PartSlot::axis, "travel");
    out_.travel_text = {tr("travel %1").arg(travel), travel};
    out_.nut_at_start = screw != nullptr && axis_.basics.nut_at_start
                            ? mm(**axis_.basics.nut_at_start)
                            : (out_.span - out_.travel) / 2.0;
    out_.nut_along = at_ != nullptr ? mm(at_->place) - out_.nut_at_start : out_.travel / 2.0;
    out_.twin = axis_.sides.layout != DriveLayout::one;
    out_.twin_motor = axis_.sides.layout == DriveLayout::two_motors;
    if (out_.twin && screw != nullptr && axis_.sides.pairing == Pairing::opposed) {
      out_.opposed_text = train_words::opposed();
    }
    out_.sides_text = train_words::sides(about_);
    out_.works = !axis_.duty.load_cases.empty() || !axis_.duty.moves.empty();
    out_.duty_text = train_words::duty(axis_.duty);
  }

  void fill_motor() {
    const std::string& frame = std::visit(
        [](const auto& motor) -> const std::string& { return motor.frame; }, axis_.motor);
    const QString text = QString::fromStdString(frame).trimmed();
    const std::optional<double> face = flange_of(text);
    out_.motor_face_known = face.has_value();
    constexpr double usual_face = 57.0;
    out_.motor_face = face.value_or(usual_face);
    const QString torque = std::holds_alternative<Servo>(axis_.motor)
                               ? shown(PartSlot::motor, "continuous_torque")
                               : shown(PartSlot::motor, "holding_torque");
    const QString type = words::part_type_title(part_type(machine_, axis_number_, PartSlot::motor));
    out_.motor_text = text.isEmpty() ? type : tr("motor, size %1").arg(text);
    if (!torque.isEmpty()) {
      out_.motor_text += QLatin1Char('\n') + torque;
    }
  }

  /// Side of the flange in mm, from a frame size in tenths of an inch ("23", NEMA ICS 16) or in
  /// millimetres ("60 mm").
  static std::optional<double> flange_of(const QString& frame) {
    static const QRegularExpression pattern(QStringLiteral("(\\d+(?:[.,]\\d+)?)\\s*(mm)?"));
    const QRegularExpressionMatch match = pattern.match(frame);
    if (!match.hasMatch()) {
      return std::nullopt;
    }
    const double number = match.captured(1).replace(u',', u'.').toDouble();
    const bool millimetres = !match.captured(2).isEmpty();
    const double side = millimetres ? number : number * 2.54;
    return side >= 15.0 && side <= 250.0 ? std::optional(side) : std::nullopt;
  }

  void fill_transmission() {
    if (const auto* loop = std::get_if<BeltLoopDrive>(&axis_.transmission)) {
      out_.loop = loop_drawing(*loop, results_);
      out_.transmission_text = out_.loop->text;
      return;
    }
    out_.transmission_text = train_words::transmission(about_);
    const auto* belt = std::get_if<BeltStage>(&axis_.transmission);
    if (belt == nullptr) {
      return;
    }
    BeltDrawing drawing;
    const auto circle = [&](int teeth) {
      return PulleyCircle{mm(pulley_pitch_diameter(double(teeth), *belt->pitch)), teeth};
    };
    drawing.motor_pulley = circle(belt->motor_pulley_teeth);
    drawing.screw_pulley = circle(belt->screw_pulley_teeth);
    if (results_ != nullptr && results_->belt_centre_distance) {
      drawing.centre_distance = mm(*results_->belt_centre_distance);
    }
    out_.belt = drawing;
  }

  void fill_loads() {
    out_.carriage_text = train_words::carriage(about_);
    out_.guides_text = tr("μ %1", "coefficient of friction of the guides")
                           .arg(shown(PartSlot::guides, "friction"));
    out_.brake = axis_.carriage.brake;
    out_.cuts = axis_.targets.thrust.has_value();
    if (out_.cuts) {
      out_.cut_text = tr("cuts with %1").arg(shown(PartSlot::targets, "thrust"));
    } else {
      out_.cut_text = tr("no cutting force given");
    }
    const double incline = si_value(*axis_.basics.incline);
    if (std::abs(incline) < 1e-9) {
      return;
    }
    out_.down = QPointF(-std::sin(incline), -std::cos(incline));
    out_.balanced = *axis_.carriage.counterbalance > Force();
    const QString angle = shown(PartSlot::axis, "incline");
    out_.gravity_text =
        results_ != nullptr && results_->gravity_force
            ? tr("gravity %1").arg(words::quantity(any(*results_->gravity_force), "N", 3))
            : tr("gravity");
    const auto found = [this](FindingCode code) {
      return results_ != nullptr &&
             std::ranges::any_of(results_->findings,
                                 [code](const Finding& finding) { return finding.code == code; });
    };
    if (found(FindingCode::axis_can_rise)) {
      out_.can_fall = out_.rises = true;
      out_.fall_text = tr("▲ can rise");
      out_.gravity_text = tr("▲ %1 more than the weight, can rise", "pull of the counterbalance")
                              .arg(words::quantity(any(*results_->gravity_force), "N", 3));
    } else if (found(FindingCode::axis_can_fall)) {
      out_.can_fall = true;
      out_.fall_text = tr("▲ can fall");
      out_.gravity_text = tr("▲ %1, can fall", "gravity with its force").arg(out_.gravity_text);
    }
    out_.lying_text = tr("axis inclined %1, drawn lying").arg(angle);
    out_.title = tr("%1 (inclined %2, drawn lying)", "axis, angle").arg(out_.title, angle);
  }

  void fill_machine_side() {
    out_.supply_text = tr("supply %1").arg(shown(PartSlot::supply, "voltage"));
    const QString rate = shown(PartSlot::controller, "step_rate_limit");
    out_.controller_text = rate.isEmpty() ? tr("controller") : tr("steps ≤ %1").arg(rate);
  }

  void fill_whip() {
    const bool there = at_ != nullptr && at_->whip_depends;
    const auto& length = there ? at_->whip_length : results_->whip_length;
    const auto& speed = there ? at_->whip_speed : results_->whip_speed;
    if (!length || !speed || !results_->limit(LimitId::whip).applies) {
      return;
    }
    WhipDrawing whip;
    EndSupport from_end = out_.motor_end;
    EndSupport to_end = out_.far_end;
    const double farthest = there ? mm(at_->place) : out_.nut_at_start + out_.travel;
    whip.to = out_.span;
    constexpr double near_enough = 1e-6;
    if (std::abs(mm(*length) - out_.span) > near_enough * out_.span) {
      const bool motor_side = std::abs(farthest - mm(*length)) <= near_enough * out_.span;
      (motor_side ? to_end : from_end) = EndSupport::supported;
      (motor_side ? whip.to : whip.from) = motor_side ? mm(*length) : out_.span - mm(*length);
    }
    whip.shape = whip_points(from_end, to_end);
    whip.verdict = results_->limit(LimitId::whip).verdict;
    whip.nearness = whip_nearness(axis_, *results_, *speed);
    const QString said =
        there ? tr("nut here: whips at %1 · allowed %2") : tr("whips at %1 · allowed %2");
    const auto allowed = there ? at_->whip_allowed_speed : results_->whip_allowed_speed;
    whip.text = said.arg(words::quantity(any(*speed), "rpm"),
                         allowed ? words::quantity(any(*allowed), "rpm") : QString());
    out_.whip = whip;
  }

  /// The mode's shape with its largest bow made 1.
  static std::vector<QPointF> whip_points(EndSupport from, EndSupport to) {
    constexpr int steps = 48;
    std::vector<QPointF> shape;
    double largest = 0.0;
    for (int i = 0; i <= steps; ++i) {
      const double place = double(i) / steps;
      shape.emplace_back(place, whip_shape(from, to, place));
      largest = std::max(largest, std::abs(shape.back().y()));
    }
    for (QPointF& point : shape) {
      point.ry() /= largest > 0.0 ? largest : 1.0;
    }
    return shape;
  }

  GoverningMark mark(LimitId id, const QString& said) const {
    const LimitDescriptor& about = descriptor(id);
    const Verdict verdict = results_->limit(id).verdict;
    return {about.part, text_of(about.member), verdict,
            said.arg(words::verdict_sign(verdict), words::limit_name(id))};
  }

  void fill_governing() {
    if (results_->governing) {
      out_.governing = mark(*results_->governing, tr("%1 %2 governs", "sign, name of a limit"));
    }
    for (const LimitId id : near_tie(*results_, LimitScale::feed).limits) {
      if (id != results_->governing) {
        out_.also.push_back(mark(id, tr("%1 %2 nearly as low", "sign, name of a limit")));
      }
    }
    for (const LimitDescriptor& limit : limit_descriptors()) {
      const bool said = results_->governing == limit.id;
      if (!said && limit.scale != LimitScale::feed &&
          results_->limit(limit.id).verdict == Verdict::over) {
        out_.also.push_back(mark(limit.id, tr("%1 %2 over", "sign, name of a limit")));
      }
    }
  }

  const Machine& machine_;
  std::size_t axis_number_;
  ShownAxis about_;
  const Axis& axis_;
  const AxisResults* results_;
  const AtPosition* at_;
  TrainGeometry out_;
};

} // namespace

TrainGeometry train_geometry(const Machine& machine, std::size_t axis, const AxisResults* results,
                             const AtPosition* at) {
  return Train(machine, axis, results, at).drawn();
}

} // namespace feedwright
