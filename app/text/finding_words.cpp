// SPDX-License-Identifier: GPL-3.0-or-later

// What was computed but deserves care, and what could not be, in sentences that say what to do.

#include "text/word_table.h"
#include "text/words.h"

namespace feedwright::words {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Words)

public:
  static QString wants(const QString& field, const QString& part) {
    return tr("missing: %1 (%2)", "an open limit: field that is missing, its part")
        .arg(field, part);
  }

  static QString sentence(FindingCode code) {
    switch (code) {
    case FindingCode::axis_can_fall:
      return tr("The axis can fall when the power goes: gravity puts %1 on the motor, which "
                "resists with %2 unpowered. Hands and heads below it are in danger. Fit a brake or "
                "a counterbalance, keep to your local rules, and ask somebody qualified.");
    case FindingCode::self_locking_not_promised:
      return tr("By these figures the thread does not drive back, but vibration, grease and wear "
                "can still let the axis creep down. Do not trust it with hands below; keep to your "
                "local rules.");
    case FindingCode::near_whip:
      return tr("The wanted feed turns the screw at %1, past the allowed %2 and near the speed at "
                "which it whips. A whipping screw bends, breaks loose and hits: guard it, and do "
                "not try it out.");
    case FindingCode::whip_beyond_critical:
      return tr("The wanted feed turns the screw at %1, at or past its first critical speed of "
                "%2. It would whip: bend, break loose and hit. Change the drive before turning it "
                "that fast.");
    case FindingCode::stall_at_rest:
      return tr("The motor would stall from rest: accelerating needs %1, usable are %2.");
    case FindingCode::motor_curve_ends:
      return tr("The wanted feed turns the motor at %1; its torque is known only up to %2.");
    case FindingCode::points_at_other_voltage:
      return tr("The torque curve was taken at %1, the supply gives %2. At less voltage the torque "
                "falls earlier; find the curve for yours.");
    case FindingCode::few_teeth_in_mesh:
      return tr("Only %1 teeth of the smaller pulley are in mesh; under %2 the belt carries less "
                "and may jump. Use a larger pulley or a longer belt.");
    case FindingCode::long_open_screw:
      return tr("%1 of turning screw lie between the bearings: cover it, for it winds up sleeves, "
                "hair and cables.");
    case FindingCode::hold_beyond_motor:
      return tr("At rest gravity asks %1 of the motor, more than the %2 it may be asked to hold: "
                "the axis can slip even with the power on.");
    case FindingCode::typical_figures: break;
    }
    return tr("The figures of this part are typical, not your supplier's. Put in those of the data "
              "sheet before you buy.");
  }
};

std::string_view usual_unit(Kind kind) {
  switch (kind) {
  case Kind::torque: return "N·m";
  case Kind::angular_velocity: return "rpm";
  case Kind::voltage: return "V";
  case Kind::length: return "mm";
  default: return "";
  }
}

QString value_text(const std::optional<AnyQuantity>& value) {
  constexpr int digits = 3;
  return value ? quantity(*value, usual_unit(value->kind), digits) : QString();
}

} // namespace

QString finding_text(const Finding& finding) {
  QString text = Words::sentence(finding.code);
  if (finding.actual) {
    text = text.arg(value_text(finding.actual));
  }
  if (finding.allowed) {
    text = text.arg(value_text(finding.allowed));
  }
  return text;
}

QString open_reason(const Limit& limit) {
  const auto slot = static_cast<PartSlot>(limit.missing.slot);
  return Words::wants(field_name(slot, limit.missing.member), part_name(slot));
}

} // namespace feedwright::words
