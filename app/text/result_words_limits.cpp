// SPDX-License-Identifier: GPL-3.0-or-later

// Names and meanings of results. Limits of feed and thrust; belts.

#include "text/result_words.h"
#include "text/word_table.h"

namespace feedwright::words {

namespace {

constexpr ResultWords result_words[] = {
    {"whip_feed", QT_TRANSLATE_NOOP("Words", "feed allowed by whip"),
     QT_TRANSLATE_NOOP("Words", "Allowed screw speed times the lead.")},
    {"ball_speed_feed", QT_TRANSLATE_NOOP("Words", "feed allowed by ball speed"),
     QT_TRANSLATE_NOOP("Words", "From the limit of ball-circle diameter times speed.")},
    {"screw_speed_feed", QT_TRANSLATE_NOOP("Words", "feed at the screw's rated speed"),
     QT_TRANSLATE_NOOP("Words", "From the rated speed of nut and bearings.")},
    {"motor_torque_feed", QT_TRANSLATE_NOOP("Words", "feed allowed by motor torque"),
     QT_TRANSLATE_NOOP("Words",
                       "Where the usable torque falls to what accelerating needs; the end of the "
                       "motor's curve, or more, if it never does.")},
    {"motor_speed_feed", QT_TRANSLATE_NOOP("Words", "feed at the end of the motor's curve"),
     QT_TRANSLATE_NOOP("Words", "Beyond it the motor's torque is not known.")},
    {"step_rate_feed", QT_TRANSLATE_NOOP("Words", "feed allowed by step rate"),
     QT_TRANSLATE_NOOP("Words", "The controller's step rate times the travel of a step.")},
    {"belt_speed_feed", QT_TRANSLATE_NOOP("Words", "feed allowed by belt speed"),
     QT_TRANSLATE_NOOP("Words", "Where the belt, a hauling one first, runs at its allowed speed.")},
    {"guide_speed_feed", QT_TRANSLATE_NOOP("Words", "feed allowed by the guides"),
     QT_TRANSLATE_NOOP("Words", "As given by the guides' maker.")},
    {"governing_feed", QT_TRANSLATE_NOOP("Words", "feed reached"),
     QT_TRANSLATE_NOOP("Words", "The lowest of the feed limits.")},
    {"heat_force", QT_TRANSLATE_NOOP("Words", "pressure from heat"),
     QT_TRANSLATE_NOOP("Words", "What a warmer screw between two fixed ends presses with, less its "
                                "stretch.")},
    {"buckling_thrust", QT_TRANSLATE_NOOP("Words", "thrust allowed by buckling"),
     QT_TRANSLATE_NOOP("Words",
                       "The critical load over its safety factor, less what heat presses.")},
    {"core_stress_thrust", QT_TRANSLATE_NOOP("Words", "thrust allowed by core stress"),
     QT_TRANSLATE_NOOP("Words",
                       "Core area times yield strength over its safety factor, less the stretch.")},
    {"static_thrust", QT_TRANSLATE_NOOP("Words", "thrust allowed by the static rating"),
     QT_TRANSLATE_NOOP("Words", "The static rating over its safety factor; of a preloaded pair the "
                                "load that brings it there.")},
    {"bearing_thrust", QT_TRANSLATE_NOOP("Words", "thrust allowed by the bearing"),
     QT_TRANSLATE_NOOP("Words",
                       "What the end bearing may carry, less what stretch or heat already takes.")},
    {"motor_thrust", QT_TRANSLATE_NOOP("Words", "axial force the motor makes"),
     QT_TRANSLATE_NOOP("Words", "From the usable torque at the cutting feed.")},
    {"axial_load", QT_TRANSLATE_NOOP("Words", "largest axial force"),
     QT_TRANSLATE_NOOP("Words",
                       "On one screw or hauling belt, the larger of accelerating and cutting.")},
    {"core_stress", QT_TRANSLATE_NOOP("Words", "core stress"),
     QT_TRANSLATE_NOOP("Words", "Largest axial force over the core area.")},
    {"governing_thrust", QT_TRANSLATE_NOOP("Words", "axial force reached"),
     QT_TRANSLATE_NOOP("Words", "The lowest of the thrust limits.")},
    {"belt_rim_force", QT_TRANSLATE_NOOP("Words", "pull the belt hands on"),
     QT_TRANSLATE_NOOP("Words",
                       "Largest torque through the stage over the motor pulley's pitch radius.")},
    {"belt_mesh_factor", QT_TRANSLATE_NOOP("Words", "teeth in mesh factor"),
     QT_TRANSLATE_NOOP("Words", "One from six teeth in mesh up; each tooth fewer takes a fifth.")},
    {"belt_pull_allowed", QT_TRANSLATE_NOOP("Words", "allowed belt pull"),
     QT_TRANSLATE_NOOP(
         "Words", "The lower of what teeth in mesh and cords carry, as far as they are known.")},
    {"belt_tension_needed", QT_TRANSLATE_NOOP("Words", "least belt tension"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Least pull at rest that keeps the slack side from going limp at the largest pull.")},
    {"belt_note", QT_TRANSLATE_NOOP("Words", "note of the belt"),
     QT_TRANSLATE_NOOP("Words",
                       "Frequency of the longest span when plucked at its tension; tune by it.")},
    {"belt_pull_heard", QT_TRANSLATE_NOOP("Words", "belt pull as heard"),
     QT_TRANSLATE_NOOP("Words", "Pull of the longest span from the note that was heard.")},
    {"belt_shaft_load", QT_TRANSLATE_NOOP("Words", "belt load on the shaft"),
     QT_TRANSLATE_NOOP("Words", "What the tension pulls the motor's shaft with, at rest.")},
    {"haul_rim_force", QT_TRANSLATE_NOOP("Words", "pull of the hauling belt"),
     QT_TRANSLATE_NOOP("Words", "The largest axial force on it.")},
    {"haul_pull_allowed", QT_TRANSLATE_NOOP("Words", "allowed hauling pull"),
     QT_TRANSLATE_NOOP(
         "Words", "The lower of what teeth in mesh and cords carry, as far as they are known.")},
    {"haul_tension_needed", QT_TRANSLATE_NOOP("Words", "least hauling tension"),
     QT_TRANSLATE_NOOP("Words", "Least pull at rest that keeps the slack side from going limp, the "
                                "carriage at its worst place.")},
    {"haul_note", QT_TRANSLATE_NOOP("Words", "note of the hauling belt"),
     QT_TRANSLATE_NOOP("Words", "Frequency of the free run between the pulleys when plucked; tune "
                                "by it.")},
    {"haul_pull_heard", QT_TRANSLATE_NOOP("Words", "hauling pull as heard"),
     QT_TRANSLATE_NOOP("Words", "Pull of the free run between the pulleys from the note that was "
                                "heard.")},
};

} // namespace

std::span<const ResultWords> limits_result_words() {
  return result_words;
}

} // namespace feedwright::words
