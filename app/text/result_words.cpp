// SPDX-License-Identifier: GPL-3.0-or-later

// Names of results and limits, and what each is.

#include "text/word_table.h"
#include "text/words.h"

#include <array>

namespace feedwright::words {

namespace {

struct ResultWords {
  std::string_view key;
  const char* name;
  const char* meaning;
};

constexpr ResultWords result_words[] = {
    {"reduction", QT_TRANSLATE_NOOP("Words", "reduction"),
     QT_TRANSLATE_NOOP("Words", "Turns of the motor for one turn of the screw.")},
    {"screw_travel", QT_TRANSLATE_NOOP("Words", "travel per screw angle"),
     QT_TRANSLATE_NOOP("Words", "The lead over a whole turn.")},
    {"motor_travel", QT_TRANSLATE_NOOP("Words", "travel per motor angle"),
     QT_TRANSLATE_NOOP("Words", "The lead seen from the motor, through the reduction.")},
    {"steps_per_length", QT_TRANSLATE_NOOP("Words", "steps per length"),
     QT_TRANSLATE_NOOP("Words", "Command steps for a length of travel.")},
    {"resolution", QT_TRANSLATE_NOOP("Words", "resolution"),
     QT_TRANSLATE_NOOP("Words", "Travel of one command step.")},
    {"lost_motion", QT_TRANSLATE_NOOP("Words", "lost motion"),
     QT_TRANSLATE_NOOP("Words", "Axial play of the nut; none if it is preloaded.")},
    {"belt_centre_distance", QT_TRANSLATE_NOOP("Words", "centre distance"),
     QT_TRANSLATE_NOOP("Words", "From shaft to shaft, at which the whole belt goes taut round both "
                                "pulleys; the belt does not stretch.")},
    {"belt_teeth_in_mesh", QT_TRANSLATE_NOOP("Words", "teeth in mesh"),
     QT_TRANSLATE_NOOP("Words", "Teeth on the smaller pulley's arc of contact.")},
    {"whip_length", QT_TRANSLATE_NOOP("Words", "length that whips"),
     QT_TRANSLATE_NOOP("Words", "The free length of the screw that bends first.")},
    {"whip_speed", QT_TRANSLATE_NOOP("Words", "first critical speed"),
     QT_TRANSLATE_NOOP("Words", "Speed at which the screw whips: the first natural frequency of "
                                "bending of a slender round shaft of the core diameter.")},
    {"whip_allowed_speed", QT_TRANSLATE_NOOP("Words", "allowed screw speed"),
     QT_TRANSLATE_NOOP("Words", "The allowed share of the first critical speed.")},
    {"whip_feed_between_bearings", QT_TRANSLATE_NOOP("Words", "whip feed between bearings"),
     QT_TRANSLATE_NOOP("Words", "With the whole length between the bearings free to bend.")},
    {"whip_feed_nut_to_bearing", QT_TRANSLATE_NOOP("Words", "whip feed nut to bearing"),
     QT_TRANSLATE_NOOP("Words", "With the longest length between nut and bearing, the nut counted "
                                "as a support.")},
    {"buckling_length", QT_TRANSLATE_NOOP("Words", "length that buckles"),
     QT_TRANSLATE_NOOP("Words",
                       "From the bearing that takes the thrust to the nut at its farthest.")},
    {"core_area", QT_TRANSLATE_NOOP("Words", "core area"),
     QT_TRANSLATE_NOOP("Words", "Cross-section at the bottom of the thread.")},
    {"slenderness", QT_TRANSLATE_NOOP("Words", "slenderness"),
     QT_TRANSLATE_NOOP("Words", "Length over the core's radius of gyration.")},
    {"slenderness_limit", QT_TRANSLATE_NOOP("Words", "slenderness where Euler begins"),
     QT_TRANSLATE_NOOP("Words", "Where Johnson's parabola meets Euler's curve.")},
    {"buckling_load", QT_TRANSLATE_NOOP("Words", "critical buckling load"),
     QT_TRANSLATE_NOOP("Words", "By Euler for slender screws, by J. B. Johnson for stocky ones.")},
    {"tan_lead_angle", QT_TRANSLATE_NOOP("Words", "tangent of the lead angle"),
     QT_TRANSLATE_NOOP("Words", "Lead over the circumference at the pitch diameter.")},
    {"friction_angle", QT_TRANSLATE_NOOP("Words", "friction angle"),
     QT_TRANSLATE_NOOP("Words",
                       "Of the thread's friction, in radians, the slope of the flank counted in.")},
    {"forward_efficiency", QT_TRANSLATE_NOOP("Words", "efficiency, driving"),
     QT_TRANSLATE_NOOP("Words", "Of the thread, power going to the load.")},
    {"back_driving_efficiency", QT_TRANSLATE_NOOP("Words", "efficiency, driven back"),
     QT_TRANSLATE_NOOP("Words", "Of the thread, power coming from the load; at or below zero the "
                                "thread does not drive back.")},
    {"screw_inertia", QT_TRANSLATE_NOOP("Words", "screw inertia"),
     QT_TRANSLATE_NOOP("Words", "A solid cylinder of the nominal diameter, at the screw.")},
    {"motor_pulley_inertia", QT_TRANSLATE_NOOP("Words", "motor pulley inertia"),
     QT_TRANSLATE_NOOP("Words", "As given, or a solid disc of the pitch diameter.")},
    {"screw_pulley_inertia", QT_TRANSLATE_NOOP("Words", "screw pulley inertia"),
     QT_TRANSLATE_NOOP("Words", "As given, or a solid disc of the pitch diameter; at the screw.")},
    {"belt_inertia", QT_TRANSLATE_NOOP("Words", "belt inertia"),
     QT_TRANSLATE_NOOP("Words", "The belt's mass at the motor pulley's pitch radius.")},
    {"carriage_inertia", QT_TRANSLATE_NOOP("Words", "carriage inertia at the motor"),
     QT_TRANSLATE_NOOP("Words", "What the moving mass weighs as an inertia at the motor's shaft.")},
    {"load_inertia", QT_TRANSLATE_NOOP("Words", "load inertia"),
     QT_TRANSLATE_NOOP("Words", "Everything but the rotor, seen from the motor.")},
    {"inertia_match", QT_TRANSLATE_NOOP("Words", "inertia match"),
     QT_TRANSLATE_NOOP("Words", "Load inertia over rotor inertia.")},
    {"gravity_force", QT_TRANSLATE_NOOP("Words", "gravity along the axis"),
     QT_TRANSLATE_NOOP("Words", "Weight along the axis less the counterbalance.")},
    {"friction_force", QT_TRANSLATE_NOOP("Words", "friction force"),
     QT_TRANSLATE_NOOP("Words", "Guide friction, seals and covers together.")},
    {"lowering_force", QT_TRANSLATE_NOOP("Words", "force lowering"),
     QT_TRANSLATE_NOOP("Words", "Down the slope at steady feed; below zero the load pulls.")},
    {"rapid_force", QT_TRANSLATE_NOOP("Words", "force accelerating"),
     QT_TRANSLATE_NOOP("Words", "Accelerating up the slope at the wanted rate, not cutting.")},
    {"cutting_force", QT_TRANSLATE_NOOP("Words", "force cutting"),
     QT_TRANSLATE_NOOP("Words", "Cutting up the slope at steady feed.")},
    {"rotor_torque", QT_TRANSLATE_NOOP("Words", "torque for the motor's shaft"),
     QT_TRANSLATE_NOOP("Words", "To accelerate what turns with the motor.")},
    {"screw_shaft_torque", QT_TRANSLATE_NOOP("Words", "torque for the screw's shaft"),
     QT_TRANSLATE_NOOP("Words", "To accelerate what turns with the screw; at the screw.")},
    {"thread_torque", QT_TRANSLATE_NOOP("Words", "torque through the thread"),
     QT_TRANSLATE_NOOP("Words", "To push the axial force through the thread; at the screw.")},
    {"drag_torque", QT_TRANSLATE_NOOP("Words", "drag torque"),
     QT_TRANSLATE_NOOP("Words", "Preload, seals and bearings, at the screw.")},
    {"rapid_torque", QT_TRANSLATE_NOOP("Words", "torque needed accelerating"),
     QT_TRANSLATE_NOOP("Words", "At the motor, while accelerating up the slope.")},
    {"cutting_torque", QT_TRANSLATE_NOOP("Words", "torque needed cutting"),
     QT_TRANSLATE_NOOP("Words", "At the motor, while cutting up the slope.")},
    {"lowering_torque", QT_TRANSLATE_NOOP("Words", "torque lowering"),
     QT_TRANSLATE_NOOP(
         "Words", "At the motor, down the slope at steady feed; below zero the motor brakes.")},
    {"holding_torque_needed", QT_TRANSLATE_NOOP("Words", "torque needed to hold"),
     QT_TRANSLATE_NOOP("Words",
                       "What gravity asks of the motor at rest, guide friction not counted on.")},
    {"motor_speed", QT_TRANSLATE_NOOP("Words", "motor speed"),
     QT_TRANSLATE_NOOP("Words", "At the wanted feed.")},
    {"usable_torque", QT_TRANSLATE_NOOP("Words", "usable torque"),
     QT_TRANSLATE_NOOP("Words", "The usable share of the motor's torque at the wanted feed.")},
    {"usable_torque_cutting", QT_TRANSLATE_NOOP("Words", "usable torque cutting"),
     QT_TRANSLATE_NOOP("Words", "The usable share of the motor's torque at the cutting feed.")},
    {"acceleration_available", QT_TRANSLATE_NOOP("Words", "acceleration available"),
     QT_TRANSLATE_NOOP("Words", "From the usable torque at the wanted feed, up the slope.")},
    {"thrust_available", QT_TRANSLATE_NOOP("Words", "cutting thrust available"),
     QT_TRANSLATE_NOOP("Words",
                       "From the usable torque at the cutting feed, up the slope, friction "
                       "and gravity paid.")},
    {"whip_feed", QT_TRANSLATE_NOOP("Words", "feed allowed by whip"),
     QT_TRANSLATE_NOOP("Words", "Allowed screw speed times the lead.")},
    {"ball_speed_feed", QT_TRANSLATE_NOOP("Words", "feed allowed by ball speed"),
     QT_TRANSLATE_NOOP("Words", "From the limit of ball-circle diameter times speed.")},
    {"screw_speed_feed", QT_TRANSLATE_NOOP("Words", "feed at the screw's rated speed"),
     QT_TRANSLATE_NOOP("Words", "From the rated speed of nut and bearings.")},
    {"motor_torque_feed", QT_TRANSLATE_NOOP("Words", "feed allowed by motor torque"),
     QT_TRANSLATE_NOOP("Words", "Where the usable torque falls to what accelerating needs.")},
    {"motor_speed_feed", QT_TRANSLATE_NOOP("Words", "feed at the end of the motor's curve"),
     QT_TRANSLATE_NOOP("Words", "Beyond it the motor's torque is not known.")},
    {"step_rate_feed", QT_TRANSLATE_NOOP("Words", "feed allowed by step rate"),
     QT_TRANSLATE_NOOP("Words", "The controller's step rate times the travel of a step.")},
    {"belt_speed_feed", QT_TRANSLATE_NOOP("Words", "feed allowed by belt speed"),
     QT_TRANSLATE_NOOP("Words", "Where the belt runs at its allowed speed.")},
    {"guide_speed_feed", QT_TRANSLATE_NOOP("Words", "feed allowed by the guides"),
     QT_TRANSLATE_NOOP("Words", "As given by the guides' maker.")},
    {"governing_feed", QT_TRANSLATE_NOOP("Words", "feed reached"),
     QT_TRANSLATE_NOOP("Words", "The lowest of the feed limits.")},
    {"buckling_thrust", QT_TRANSLATE_NOOP("Words", "thrust allowed by buckling"),
     QT_TRANSLATE_NOOP("Words", "The critical load over its safety factor.")},
    {"core_stress_thrust", QT_TRANSLATE_NOOP("Words", "thrust allowed by core stress"),
     QT_TRANSLATE_NOOP("Words", "Core area times yield strength over its safety factor.")},
    {"static_thrust", QT_TRANSLATE_NOOP("Words", "thrust allowed by the static rating"),
     QT_TRANSLATE_NOOP("Words", "The nut's static rating over its safety factor.")},
    {"bearing_thrust", QT_TRANSLATE_NOOP("Words", "thrust allowed by the bearing"),
     QT_TRANSLATE_NOOP("Words", "What the end bearing may carry, as given.")},
    {"motor_thrust", QT_TRANSLATE_NOOP("Words", "axial force the motor makes"),
     QT_TRANSLATE_NOOP("Words", "From the usable torque at the cutting feed.")},
    {"axial_load", QT_TRANSLATE_NOOP("Words", "largest axial force"),
     QT_TRANSLATE_NOOP("Words", "On the screw, the larger of accelerating and cutting.")},
    {"core_stress", QT_TRANSLATE_NOOP("Words", "core stress"),
     QT_TRANSLATE_NOOP("Words", "Largest axial force over the core area.")},
    {"governing_thrust", QT_TRANSLATE_NOOP("Words", "axial force reached"),
     QT_TRANSLATE_NOOP("Words", "The lowest of the thrust limits.")},
};

constexpr const char* limit_names[limit_count] = {
    QT_TRANSLATE_NOOP("Words", "whip"),          QT_TRANSLATE_NOOP("Words", "ball speed"),
    QT_TRANSLATE_NOOP("Words", "screw speed"),   QT_TRANSLATE_NOOP("Words", "motor torque"),
    QT_TRANSLATE_NOOP("Words", "motor speed"),   QT_TRANSLATE_NOOP("Words", "step rate"),
    QT_TRANSLATE_NOOP("Words", "belt speed"),    QT_TRANSLATE_NOOP("Words", "guide speed"),
    QT_TRANSLATE_NOOP("Words", "buckling"),      QT_TRANSLATE_NOOP("Words", "core stress"),
    QT_TRANSLATE_NOOP("Words", "static rating"), QT_TRANSLATE_NOOP("Words", "bearing thrust"),
    QT_TRANSLATE_NOOP("Words", "motor thrust"),  QT_TRANSLATE_NOOP("Words", "acceleration"),
    QT_TRANSLATE_NOOP("Words", "inertia match"), QT_TRANSLATE_NOOP("Words", "resolution"),
    QT_TRANSLATE_NOOP("Words", "lost motion"),
};

constexpr const char* verdict_words[] = {
    QT_TRANSLATE_NOOP("Words", "clear"),
    QT_TRANSLATE_NOOP("Words", "close"),
    QT_TRANSLATE_NOOP("Words", "over"),
    QT_TRANSLATE_NOOP("Words", "open"),
};

constexpr std::array verdict_signs = {u"✓", u"◑", u"▲", u"○"};

constexpr Word constants[] = {
    {"g", QT_TRANSLATE_NOOP("Words", "standard acceleration of free fall")},
    {"λ", QT_TRANSLATE_NOOP("Words", "eigenvalue of the beam with these ends")},
    {"C", QT_TRANSLATE_NOOP("Words", "end condition constant of the column")},
    {"L_w", QT_TRANSLATE_NOOP("Words", "length that whips")},
    {"L_k", QT_TRANSLATE_NOOP("Words", "length that buckles")},
    {"n_t", QT_TRANSLATE_NOOP("Words", "command steps for one turn of the motor")},
    {"n_end", QT_TRANSLATE_NOOP("Words", "end of the motor's curve")},
    {"z_min", QT_TRANSLATE_NOOP("Words", "teeth of the smaller pulley")},
    {"φ_min", QT_TRANSLATE_NOOP("Words", "arc of contact on the smaller pulley, in radians")},
    {"η_c", QT_TRANSLATE_NOOP("Words", "a coupling loses nothing")},
};

constexpr Word solved_equations[] = {
    {"belt_length", QT_TRANSLATE_NOOP("Words", "f: the distance at which the belt's whole length "
                                               "goes round both pulleys, found by root finding")},
    {"motor_curve",
     QT_TRANSLATE_NOOP("Words", "f: the motor's torque at that speed times its usable share")},
    {"torque_meets_need",
     QT_TRANSLATE_NOOP("Words", "f: the lowest motor speed at which the usable "
                                "torque has fallen to the need, found by root finding")},
};

const ResultWords* words_of(ResultId id) {
  for (const ResultWords& words : result_words) {
    if (words.key == descriptor(id).name) {
      return &words;
    }
  }
  return nullptr;
}

} // namespace

QString result_name(ResultId id) {
  const ResultWords* words = words_of(id);
  return words != nullptr ? translated(words->name) : QString();
}

QString result_meaning(ResultId id) {
  const ResultWords* words = words_of(id);
  return words != nullptr ? translated(words->meaning) : QString();
}

QString result_source(ResultId id) {
  return text_of(descriptor(id).publication);
}

QString constant_name(std::string_view symbol) {
  return looked_up(constants, symbol);
}

QString solved_by(std::string_view equation) {
  return looked_up(solved_equations, equation);
}

QString limit_name(LimitId id) {
  return translated(limit_names[static_cast<std::size_t>(id)]);
}

QString verdict_word(Verdict verdict) {
  return translated(verdict_words[static_cast<std::size_t>(verdict)]);
}

QString verdict_sign(Verdict verdict) {
  return QString::fromUtf16(verdict_signs[static_cast<std::size_t>(verdict)]);
}

} // namespace feedwright::words
