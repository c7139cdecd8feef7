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
};

/// %1 is the actual value, %2 the allowed one; a sentence names those its finding gives.
constexpr Word sentences[] = {
    {"axis_can_fall",
     QT_TRANSLATE_NOOP("Words",
                       "The axis can fall when the power goes: gravity puts %1 on the motor, which "
                       "resists with %2 unpowered. Hands and heads below it are in danger. Fit a "
                       "brake or a counterbalance, keep to your local rules, and ask somebody "
                       "qualified.")},
    {"brake_not_judged",
     QT_TRANSLATE_NOOP("Words",
                       "A holding brake is fitted, its strength is not judged here: at the motor's "
                       "shaft it has to hold %1, worn and greasy too, and what stands between "
                       "it and the carriage must not fail. Take it from its maker's data, keep to "
                       "your local rules.")},
    {"self_locking_not_promised",
     QT_TRANSLATE_NOOP("Words",
                       "By these figures the thread does not drive back, but vibration, grease and "
                       "wear can still let the axis creep down. Do not trust it with hands below; "
                       "keep to your local rules.")},
    {"held_unpowered_by_detent",
     QT_TRANSLATE_NOOP("Words",
                       "Without power only friction and the motor's detent torque hold the axis: "
                       "weight less counterbalance puts %1 on the motor, detent resists with %2. "
                       "Vibration and wear can overcome that, and the axis then runs off. Fit a "
                       "brake, or balance it; keep clear of its way and keep to your local "
                       "rules.")},
    {"near_whip",
     QT_TRANSLATE_NOOP("Words",
                       "The wanted feed turns the screw at %1, past the allowed %2 and near the "
                       "speed at which it whips. A whipping screw bends, breaks loose and hits: "
                       "guard it, and do not try it out.")},
    {"whip_beyond_critical",
     QT_TRANSLATE_NOOP("Words",
                       "The wanted feed turns the screw at %1, at or past its first critical speed "
                       "of %2. It would whip: bend, break loose and hit. Change the drive before "
                       "turning it that fast.")},
    {"stall_at_rest",
     QT_TRANSLATE_NOOP("Words",
                       "The motor may stall from rest: accelerating needs %1, usable is %2.")},
    {"motor_curve_ends",
     QT_TRANSLATE_NOOP(
         "Words", "The wanted feed turns the motor at %1; its torque is known only up to %2.")},
    {"points_at_other_voltage",
     QT_TRANSLATE_NOOP(
         "Words", "The torque curve was taken at %1, the supply gives only %2. At less voltage "
                  "the torque falls earlier, so the curve's speeds are taken down with it. "
                  "That is an estimate; find the curve for your voltage.")},
    {"curve_of_less_voltage",
     QT_TRANSLATE_NOOP("Words",
                       "The torque curve was taken at %1, the supply gives %2. At more voltage the "
                       "torque falls later; nothing is reckoned for that, the curve is used as it "
                       "is. The motor may give more at speed; find the curve for your voltage.")},
    {"few_teeth_in_mesh",
     QT_TRANSLATE_NOOP("Words",
                       "Only %1 teeth of a driven pulley are in mesh; under %2 the belt carries "
                       "less and may jump. Use a larger pulley, a longer belt, or an idler that "
                       "leads the belt farther round.")},
    {"long_open_screw",
     QT_TRANSLATE_NOOP("Words", "%1 of screw turns between its supports: cover it, for it winds up "
                                "sleeves, hair and cables. Keep to your local rules.")},
    {"hold_beyond_motor",
     QT_TRANSLATE_NOOP("Words",
                       "At rest weight and counterbalance together ask %1 of the motor, more than "
                       "the %2 it may be asked to "
                       "hold: the axis can slip even with the power on. Keep hands from below it, "
                       "and fit a brake or a counterbalance; keep to your local rules.")},
    {"axis_can_rise",
     QT_TRANSLATE_NOOP(
         "Words", "The counterbalance pulls more than the axis weighs. When the power goes the "
                  "axis can rise: that puts %1 on the motor, which resists with %2 unpowered. "
                  "Hands and heads above it are in danger. Lessen the counterbalance, or fit a "
                  "brake that holds both ways; keep to your local rules, and ask somebody "
                  "qualified.")},
    {"lifting_axis_flat",
     QT_TRANSLATE_NOOP(
         "Words", "The axis is called Z but lies flat: its incline is 0°. If it lifts, give the "
                  "incline, 90° for straight up; until then its weight counts only as friction, "
                  "and nothing warns that it could fall.")},
    {"torque_from_ratings",
     QT_TRANSLATE_NOOP(
         "Words", "The torque at speed is reckoned from the motor's ratings, without iron loss "
                  "and saturation: a measured curve lies lower, the more so the faster. Find "
                  "the maker's curve for your drive and voltage, or leave a larger reserve.")},
    {"preset_figures",
     QT_TRANSLATE_NOOP("Words",
                       "Of this part's figures nobody has given %1: they are the program's own, to "
                       "have something to compute with. Put in those of the data sheet, or take a "
                       "part from a list, before you buy.")},
    {"typical_figures",
     QT_TRANSLATE_NOOP("Words",
                       "The figures of this part are typical, not your supplier's. Put in those of "
                       "the data sheet before you buy.")},
    {"nut_near_shaft_frequency",
     QT_TRANSLATE_NOOP("Words",
                       "The wanted feed turns the nut at %1, near or past the %2 at which the "
                       "still screw swings by itself. It may shake: take a thicker, shorter or "
                       "better held screw, or a larger lead.")},
    {"preload_lost",
     QT_TRANSLATE_NOOP("Words",
                       "The largest axial force of %1 is over the %2 up to which the preload keeps "
                       "both halves loaded. Past it play comes back; raise the preload within what "
                       "its maker allows, or ask less force.")},
    {"slack_belt",
     QT_TRANSLATE_NOOP("Words",
                       "The belt is set to %1, but at the largest pull its slack side goes limp "
                       "below %2, and teeth may jump. Tighten it within what belt and bearings "
                       "bear.")},
    {"too_few_pulley_teeth",
     QT_TRANSLATE_NOOP("Words",
                       "A pulley has %1 teeth, fewer than the %2 this belt asks for: bent so "
                       "tightly its cords break early. Use a larger pulley.")},
    {"curve_reckoned_anew",
     QT_TRANSLATE_NOOP(
         "Words", "The torque curve was taken at %1 and is reckoned anew for the supply's %2. "
                  "It is an estimate from the winding's figures; a measured curve is better.")},
    {"cut_capped_by_spindle",
     QT_TRANSLATE_NOOP("Words",
                       "A load case asks more than the spindle gives: it would stall, so %1 of "
                       "thrust are reckoned with. A stalled tool can break and fly; take less "
                       "depth, width or feed, and keep to your local rules.")},
    {"guard_moving_belt",
     QT_TRANSLATE_NOOP("Words",
                       "%1 of belt run along the axis: it draws in fingers, hair and sleeves where "
                       "it meets the pulleys. Cover it there and along the travel; keep to your "
                       "local rules.")},
    {"sides_can_skew",
     QT_TRANSLATE_NOOP("Words",
                       "If one of the two motors stalls, its side falls back by at least %1 and "
                       "the sides run askew and may jam. Let a fault on either side stop both, and "
                       "square them before each start.")},
    {"screw_too_short",
     QT_TRANSLATE_NOOP("Words",
                       "The screw is %1 long between its bearings; travel, nut and a turn of free "
                       "thread at either end want %2. Make it longer, or travel less; if your nut "
                       "is another length, give it.")},
    {"overall_below_span",
     QT_TRANSLATE_NOOP("Words",
                       "The whole screw is given as %1, less than the %2 between its bearings. "
                       "It must be longer, by its journals; inertia and the parts to buy go by "
                       "the length given.")},
    {"bus_over_limit",
     QT_TRANSLATE_NOOP("Words",
                       "Braking can lift the supply to %1, over the %2 at which a drive switches "
                       "off; the axis then runs on unbraked, or falls. Brake more gently, or fit "
                       "capacitance or a brake resistor; have it done by somebody qualified and "
                       "keep to your local rules.")},
};

std::string_view usual_unit(Kind kind) {
  switch (kind) {
  case Kind::torque: return "N·m";
  case Kind::angular_velocity: return "rpm";
  case Kind::voltage: return "V";
  case Kind::length: return "mm";
  case Kind::force: return "N";
  case Kind::energy: return "J";
  case Kind::power: return "W";
  default: return "";
  }
}

QString value_text(const std::optional<AnyQuantity>& value) {
  constexpr int digits = 3;
  return value ? quantity(*value, usual_unit(value->kind), digits) : QString();
}

} // namespace

QString finding_text(const Finding& finding) {
  QString text = looked_up(sentences, finding_name(finding.code));
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
