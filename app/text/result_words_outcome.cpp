// SPDX-License-Identifier: GPL-3.0-or-later

// Names and meanings of results. Stiffness, errors, life, duty and power.

#include "text/result_words.h"
#include "text/word_table.h"

namespace feedwright::words {

namespace {

constexpr ResultWords result_words[] = {
    {"shaft_stiffness", QT_TRANSLATE_NOOP("Words", "shaft stiffness"),
     QT_TRANSLATE_NOOP("Words",
                       "Of the screw's core along the axis, the nut at its weakest place.")},
    {"nut_stiffness", QT_TRANSLATE_NOOP("Words", "nut stiffness under load"),
     QT_TRANSLATE_NOOP("Words",
                       "The listed stiffness, of a ball nut brought to its load or preload.")},
    {"bearing_stiffness", QT_TRANSLATE_NOOP("Words", "bearings stiffness"),
     QT_TRANSLATE_NOOP("Words",
                       "Of the fixed bearings along the axis; two fixed ends count twice.")},
    {"torsion_stiffness", QT_TRANSLATE_NOOP("Words", "twist stiffness"),
     QT_TRANSLATE_NOOP(
         "Words", "Twist of the screw up to the nut at its farthest, as a spring along the axis.")},
    {"transmission_stiffness", QT_TRANSLATE_NOOP("Words", "transmission stiffness"),
     QT_TRANSLATE_NOOP("Words", "Coupling or belt as a spring along the axis.")},
    {"haul_stiffness", QT_TRANSLATE_NOOP("Words", "hauling belt stiffness"),
     QT_TRANSLATE_NOOP("Words", "Of both runs of belt to the carriage at its worst place.")},
    {"drive_stiffness", QT_TRANSLATE_NOOP("Words", "stiffness of one drive"),
     QT_TRANSLATE_NOOP("Words", "Everything in one drive, spring after spring.")},
    {"axis_stiffness", QT_TRANSLATE_NOOP("Words", "axis stiffness"),
     QT_TRANSLATE_NOOP("Words", "All drives side by side, at the worst place of the travel.")},
    {"natural_frequency", QT_TRANSLATE_NOOP("Words", "natural frequency"),
     QT_TRANSLATE_NOOP("Words", "Of the moving mass on the axis stiffness.")},
    {"torsional_frequency", QT_TRANSLATE_NOOP("Words", "torsional frequency"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Of the motor against screw and load, on the transmission and the screw's twist.")},
    {"skew", QT_TRANSLATE_NOOP("Words", "skew under cut"),
     QT_TRANSLATE_NOOP("Words", "How far the guides let the sides run apart under the couple of a "
                                "cut with one central drive.")},
    {"skew_per_slip", QT_TRANSLATE_NOOP("Words", "skew of one slip"),
     QT_TRANSLATE_NOOP("Words",
                       "How far one side falls back when its stepper slips by the least it can.")},
    {"stall_couple_force", QT_TRANSLATE_NOOP("Words", "couple on the blocks in a stall"),
     QT_TRANSLATE_NOOP("Words", "Sideways force on the guide blocks when one motor pushes with all "
                                "it has and the other stands.")},
    {"tooth_gap_error", QT_TRANSLATE_NOOP("Words", "tooth gap error"),
     QT_TRANSLATE_NOOP("Words", "Play of the belt's teeth at both pulleys of the stage, at the "
                                "carriage; none with a coupling.")},
    {"windup_error", QT_TRANSLATE_NOOP("Words", "wind-up error"),
     QT_TRANSLATE_NOOP("Words", "What friction bends the drive one way and then the other.")},
    {"friction_load_angle", QT_TRANSLATE_NOOP("Words", "load angle on reversal"),
     QT_TRANSLATE_NOOP(
         "Words",
         "What friction holds an open-loop stepper behind its field, one way and then the other.")},
    {"reversal_error", QT_TRANSLATE_NOOP("Words", "error on reversal"),
     QT_TRANSLATE_NOOP("Words", "Lost motion, tooth gap, wind-up and load angle added up.")},
    {"reversal_error_rss", QT_TRANSLATE_NOOP("Words", "error on reversal, likely"),
     QT_TRANSLATE_NOOP("Words",
                       "The same as root of the sum of squares, since not all is worst at once.")},
    {"lead_error", QT_TRANSLATE_NOOP("Words", "lead error"),
     QT_TRANSLATE_NOOP("Words", "Over the travel, as given or by the grade as of a transport "
                                "screw; a positioning screw does better.")},
    {"heat_error", QT_TRANSLATE_NOOP("Words", "heat error"),
     QT_TRANSLATE_NOOP("Words", "What a warmer screw grows over the travel, less its stretch.")},
    {"stretch_needed", QT_TRANSLATE_NOOP("Words", "stretch needed for heat"),
     QT_TRANSLATE_NOOP("Words", "Pull that takes up the whole warmth between two fixed ends.")},
    {"travel_error", QT_TRANSLATE_NOOP("Words", "error over the travel"),
     QT_TRANSLATE_NOOP("Words", "Lead error and heat error added up.")},
    {"travel_error_rss", QT_TRANSLATE_NOOP("Words", "error over the travel, likely"),
     QT_TRANSLATE_NOOP("Words", "The same as root of the sum of squares.")},
    {"cutting_deflection", QT_TRANSLATE_NOOP("Words", "deflection under cut"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Cutting thrust over the axis stiffness, the tool at the end of its cross travel.")},
    {"cutting_load_angle", QT_TRANSLATE_NOOP("Words", "load angle under cut"),
     QT_TRANSLATE_NOOP("Words", "How far the cutting torque holds an open-loop stepper behind its "
                                "field, at the carriage.")},
    {"cutting_error", QT_TRANSLATE_NOOP("Words", "error under cut"),
     QT_TRANSLATE_NOOP("Words", "Deflection and load angle added up.")},
    {"cutting_error_rss", QT_TRANSLATE_NOOP("Words", "error under cut, likely"),
     QT_TRANSLATE_NOOP("Words", "The same as root of the sum of squares.")},
    {"mean_load", QT_TRANSLATE_NOOP("Words", "mean axial force"),
     QT_TRANSLATE_NOOP("Words", "Cubic mean over the turns of the cycle, on the harder-loaded "
                                "screw, the preload counted in.")},
    {"life_turns", QT_TRANSLATE_NOOP("Words", "life in turns"),
     QT_TRANSLATE_NOOP("Words", "Turns of the screw that the wanted share of screws reaches.")},
    {"life_distance", QT_TRANSLATE_NOOP("Words", "life in distance"),
     QT_TRANSLATE_NOOP("Words", "Life in turns times the lead.")},
    {"life_time", QT_TRANSLATE_NOOP("Words", "life in hours"),
     QT_TRANSLATE_NOOP("Words", "Life in turns by the turns of a cycle and its time.")},
    {"guide_block_load", QT_TRANSLATE_NOOP("Words", "load of a guide block"),
     QT_TRANSLATE_NOOP(
         "Words", "Weight on the blocks of the heavier rail, and what the couple adds to one.")},
    {"guide_life", QT_TRANSLATE_NOOP("Words", "guide life"),
     QT_TRANSLATE_NOOP("Words", "Travel that nine of ten blocks reach at that load.")},
    {"full_travel_time", QT_TRANSLATE_NOOP("Words", "time for the whole travel"),
     QT_TRANSLATE_NOOP("Words",
                       "Quickest move from end to end at the wanted feed and acceleration.")},
    {"load_case_reserve", QT_TRANSLATE_NOOP("Words", "reserve in the load cases"),
     QT_TRANSLATE_NOOP("Words",
                       "Least over the load cases: usable torque over the torque asked, or "
                       "the feed reached over the feed asked.")},
    {"cycle_time", QT_TRANSLATE_NOOP("Words", "cycle time"),
     QT_TRANSLATE_NOOP("Words", "Load cases, moves and rests together.")},
    {"rms_torque", QT_TRANSLATE_NOOP("Words", "RMS torque"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Root mean square of the motor's torque over the cycle; it stands for the motor's heat.")},
    {"continuous_torque", QT_TRANSLATE_NOOP("Words", "continuous torque usable"),
     QT_TRANSLATE_NOOP("Words", "The usable share of what a servo gives for ever.")},
    {"step_rate", QT_TRANSLATE_NOOP("Words", "step rate"),
     QT_TRANSLATE_NOOP("Words", "Command steps a second at the wanted feed.")},
    {"motor_resonance", QT_TRANSLATE_NOOP("Words", "stepper's own frequency"),
     QT_TRANSLATE_NOOP("Words", "At which rotor and load swing on the motor's field at rest.")},
    {"resonance_feed", QT_TRANSLATE_NOOP("Words", "feed to hurry through"),
     QT_TRANSLATE_NOOP("Words", "Where full steps come at the stepper's own frequency.")},
    {"motor_power", QT_TRANSLATE_NOOP("Words", "motor power"),
     QT_TRANSLATE_NOOP("Words", "Largest at the motor's shaft, accelerating or cutting.")},
    {"winding_heat", QT_TRANSLATE_NOOP("Words", "winding heat"),
     QT_TRANSLATE_NOOP("Words", "What a stepper's windings turn to heat at the drive current.")},
    {"supply_power", QT_TRANSLATE_NOOP("Words", "power from the supply"),
     QT_TRANSLATE_NOOP("Words", "Shaft power and losses of this axis' motors alone; the other axes "
                                "draw on the supply too. All of them at once are judged with the "
                                "machine.")},
    {"supply_current", QT_TRANSLATE_NOOP("Words", "current from the supply"),
     QT_TRANSLATE_NOOP("Words", "That power over the supply voltage.")},
    {"returned_energy", QT_TRANSLATE_NOOP("Words", "energy returned"),
     QT_TRANSLATE_NOOP("Words", "What comes back to the supply when the axis stops from its wanted "
                                "feed, downhill where it can.")},
    {"bus_voltage", QT_TRANSLATE_NOOP("Words", "bus voltage after braking"),
     QT_TRANSLATE_NOOP(
         "Words", "Supply voltage raised by the energy returned into the capacitance when this "
                  "axis alone brakes. All of them at once are judged with the machine.")},
    {"best_lead", QT_TRANSLATE_NOOP("Words", "best lead to accelerate"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Lead with the most acceleration at the wanted feed's torque, all else as it is.")},
    {"best_reduction", QT_TRANSLATE_NOOP("Words", "best reduction to accelerate"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Reduction with the most acceleration at the wanted feed's torque, all else as it is.")},
    {"coupling_torque", QT_TRANSLATE_NOOP("Words", "torque on the coupling"),
     QT_TRANSLATE_NOOP("Words", "Largest while accelerating or cutting.")},
    {"coupling_torque_limit", QT_TRANSLATE_NOOP("Words", "allowed coupling torque"),
     QT_TRANSLATE_NOOP("Words", "As given by the coupling's maker.")},
};

} // namespace

std::span<const ResultWords> outcome_result_words() {
  return result_words;
}

} // namespace feedwright::words
