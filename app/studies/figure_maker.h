// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the studies have in common: a subject, its units, and a figure that grows.

#include "studies/study_figure.h"
#include "units/unit_table.h"

#include <QCoreApplication>

namespace feedwright {

class FigureMaker {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  explicit FigureMaker(const StudySubject& subject)
      : subject_(subject), axis_(subject.machine.axes.at(subject.axis)), results_(subject.results) {
  }

protected:
  static constexpr int points = 101; // a hundred steps: round figures in the table

  /// The machine's unit for what is usually given in `usual`.
  const Unit& unit(Kind kind, std::string_view usual) const {
    return subject_.units.unit_of(kind, usual);
  }
  const Unit& feed_unit() const { return unit(Kind::velocity, "m/min"); }
  const Unit& length_unit() const { return unit(Kind::length, "mm"); }
  const Unit& force_unit() const { return unit(Kind::force, "N"); }
  const Unit& torque_unit() const { return unit(Kind::torque, "N·m"); }
  const Unit& acceleration_unit() const { return unit(Kind::acceleration, "m/s²"); }

  static double in_unit(const AnyQuantity& value, const Unit& unit) {
    return (value.si - unit.offset) / unit.factor;
  }
  template <class Q>
  static double in_unit(const Q& value, const Unit& unit) {
    return in_unit(any(value), unit);
  }
  static QString text(const AnyQuantity& value, const Unit& unit, int digits = 3);
  template <class Q>
  static QString text(const Q& value, const Unit& unit, int digits = 3) {
    return text(any(value), unit, digits);
  }

  StudyPanel& panel() { return out_.panels.front(); }
  void set_x(const QString& name, const Unit& unit);
  void set_y(const QString& name, const Unit& unit);

  /// Twice what is wanted or reached: beyond, a curve over feed has nothing to tell of this axis.
  std::optional<Velocity> last_feed() const;
  /// Scales that hold every curve and mark.
  void fit();
  /// The lowest limit of feed that the motor's curve does not show, as an upright line where it
  /// stands on the scale; so much feed is one of x.
  void add_stop_line(double feed_of_x = 1.0);
  /// A verdict as it reads at a feed, where that limit may read worse.
  Verdict at_feed(Verdict verdict, Velocity feed) const;
  /// With what that limit allows, where it is less than the feed.
  QString with_stop(const QString& sentence, Velocity feed) const;
  /// The regions under the first curve: up to `clear`, and from there up to the curve; none past
  /// what another limit allows.
  void add_margin_bands(const std::vector<double>& clear);
  static QString verdict_label(Verdict verdict);

  const StudySubject& subject_;
  const Axis& axis_;
  const AxisResults& results_;
  StudyFigure out_;
};

} // namespace feedwright
