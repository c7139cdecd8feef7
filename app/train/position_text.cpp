// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/position_text.h"

#include "text/text_of.h"
#include "text/words.h"

#include <QCoreApplication>
#include <QStringList>

namespace feedwright {

namespace {

class Rows {
  Q_DECLARE_TR_FUNCTIONS(ReadOut)

public:
  explicit Rows(const FileUnits& units) : units_(units) {}

  QString shown(const AnyQuantity& value, std::string_view usual, int digits = 4) const {
    return words::quantity(value, units_.unit_of(value.kind, usual).symbol, digits);
  }

  template <class Q>
  bool add(ReadOut& out, const QString& name, const std::optional<Q>& value,
           std::string_view usual) const {
    if (value) {
      out.rows.emplace_back(name, shown(any(*value), usual, 3));
    }
    return value.has_value();
  }

  ReadOut position(const AtPosition& at, Length along) const {
    ReadOut out;
    out.heading = tr("carriage at x %1").arg(shown(any(along), "mm"));
    if (at.whip_depends) {
      add(out, words::limit_name(LimitId::whip), at.whip_feed, "m/min");
    }
    add(out, words::limit_name(LimitId::buckling), at.buckling_thrust, "N");
    if (!add(out, words::result_name(ResultId::axis_stiffness), at.axis_stiffness, "N/µm")) {
      add(out, words::result_name(ResultId::shaft_stiffness), at.shaft_stiffness, "N/µm");
      add(out, words::result_name(ResultId::haul_stiffness), at.haul_stiffness, "N/µm");
    }
    add(out, words::result_name(ResultId::natural_frequency), at.natural_frequency, "Hz");
    add(out, words::result_name(ResultId::windup_error), at.windup_error, "µm");
    return out;
  }

  ReadOut pulley(const BeltLoopDrive& loop, std::size_t number) const {
    const LoopMember& member = loop.pulleys[number];
    ReadOut out;
    out.heading = tr("pulley %1", "its number").arg(number + 1);
    out.rows.emplace_back(tr("x", "coordinate"), shown(any(*member.x), "mm"));
    out.rows.emplace_back(tr("y", "coordinate"), shown(any(*member.y), "mm"));
    const auto layout = loop_layout(loop);
    if (layout) {
      out.rows.emplace_back(tr("slide stands at"), shown(any(layout->slide_position), "mm", 3));
      return out;
    }
    QStringList teeth;
    constexpr int most = 4;
    for (const TakeUpPosition& belt : fitting_belts(loop, most)) {
      teeth << QString::number(belt.belt_teeth);
    }
    out.rows.emplace_back(
        words::verdict_sign(Verdict::over) + QLatin1Char(' ') + tr("belt does not fit"),
        teeth.isEmpty()
            ? tr("none would")
            : tr("would: %1 teeth", "list of numbers").arg(teeth.join(QStringLiteral(", "))));
    return out;
  }

private:
  const FileUnits& units_;
};

} // namespace

QString ReadOut::spoken() const {
  QStringList said{heading};
  for (const auto& [name, value] : rows) {
    said << name + QLatin1Char(' ') + value;
  }
  return said.join(QStringLiteral(", "));
}

ReadOut position_read_out(const AtPosition& at, Length along, const FileUnits& units) {
  return Rows(units).position(at, along);
}

ReadOut pulley_read_out(const BeltLoopDrive& loop, std::size_t pulley, const FileUnits& units) {
  return Rows(units).pulley(loop, pulley);
}

} // namespace feedwright
