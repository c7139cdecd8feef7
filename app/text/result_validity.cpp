// SPDX-License-Identifier: GPL-3.0-or-later

// Where equations hold and what they leave out, in a sentence or two; core/derivations says it at
// length.

#include "text/word_table.h"
#include "text/working_words.h"

#include <iterator>

namespace feedwright::words {

namespace {

constexpr Word of_screw[] = {
    {"whip_speed",
     QT_TRANSLATE_NOOP("Words", "Holds for a straight, slender shaft. Shear and rotary inertia, "
                                "left out, lower it: at 15 diameters by up to 0.3 % fixed–free, "
                                "0.6 % supported–supported, 1.3 % fixed–supported, 2.2 % "
                                "fixed–fixed, at twice the length by a quarter of that. Left out "
                                "too: axial load, give of the bearings, the nut's mass, "
                                "imbalance.")},
    {"whip_allowed_speed",
     QT_TRANSLATE_NOOP("Words", "The share pays for what the critical speed leaves out: imbalance, "
                                "bends, give of the bearings.")},
    {"whip_feed", QT_TRANSLATE_NOOP(
                      "Words", "Holds as far as the critical speed does: a straight, slender screw "
                               "held at its ends as stated.")},
    {"whip_feed_nut_to_bearing",
     QT_TRANSLATE_NOOP("Words",
                       "Takes the nut for a plain support, which a stiff nut betters and a "
                       "loose one does not reach.")},
    {"whip_speed_loaded",
     QT_TRANSLATE_NOOP("Words", "Exact for both ends supported, close for others. Holds below the "
                                "buckling load.")},
    {"buckling_load",
     QT_TRANSLATE_NOOP("Words", "Euler holds above the slenderness where both curves meet, J. B. "
                                "Johnson below it. For a straight screw, loaded along its axis, "
                                "without shock.")},
    {"buckling_thrust",
     QT_TRANSLATE_NOOP("Words",
                       "The whole force is taken to pass through the longest loaded length; "
                       "where two fixed ends share it, this is on the safe side.")},
    {"slenderness_limit",
     QT_TRANSLATE_NOOP("Words", "Where the load is half of what yields the core.")},
    {"core_stress_thrust",
     QT_TRANSLATE_NOOP("Words", "Plain pressure over the core. Left out: torsion, notches of the "
                                "thread, fatigue.")},
    {"core_stress", QT_TRANSLATE_NOOP("Words", "Plain pressure over the core. Left out: torsion, "
                                               "notches of the thread, fatigue.")},
    {"ball_speed_feed",
     QT_TRANSLATE_NOOP("Words",
                       "An experience with the balls' return; the supplier's own figure for "
                       "the nut is better.")},
    {"static_thrust",
     QT_TRANSLATE_NOOP("Words",
                       "For a load along the axis that all balls share; side load and tilt "
                       "take off much of it.")},
    {"bearing_thrust",
     QT_TRANSLATE_NOOP("Words",
                       "As good as the bearing maker's figure; what stretch or heat already "
                       "takes is counted off.")},
    {"forward_efficiency",
     QT_TRANSLATE_NOOP("Words", "Holds for one coefficient of friction, whatever speed, grease and "
                                "load; cold grease and wear make it worse.")},
    {"back_driving_efficiency",
     QT_TRANSLATE_NOOP("Words",
                       "At rest and without vibration. Below zero a thread holds by itself "
                       "on paper only; do not rely on it to keep a load up.")},
    {"preload_holds_to",
     QT_TRANSLATE_NOOP("Words",
                       "For balls, by Hertz: deflection goes with load to the power of two "
                       "thirds.")},
    {"preload_drag_torque",
     QT_TRANSLATE_NOOP("Words",
                       "Left out: stick at rest, wear, heat, oil at speed. A measured drag "
                       "is better.")},
    {"mean_load", QT_TRANSLATE_NOOP("Words", "Over the load cases and moves as they were given.")},
    {"life_turns",
     QT_TRANSLATE_NOOP("Words", "Holds for good lubrication, a clean nut and load along the axis. "
                                "Left out: side load and tilt, dirt, strokes of a few turns.")},
    {"life_distance",
     QT_TRANSLATE_NOOP("Words",
                       "A life that the stated share of screws reaches; any single one may "
                       "last a fraction or many times as long.")},
    {"life_time", QT_TRANSLATE_NOOP(
                      "Words", "A life that the stated share of screws reaches; any single one may "
                               "last a fraction or many times as long.")},
    {"guide_life",
     QT_TRANSLATE_NOOP("Words",
                       "Nine of ten reach it, well greased and clean. Left out: couples on "
                       "the blocks beyond those named, shocks.")},
    {"lead_error",
     QT_TRANSLATE_NOOP("Words", "What the grade permits; a single screw may be much better. A "
                                "controller that corrects pitch takes most of it away.")},
    {"heat_error",
     QT_TRANSLATE_NOOP("Words",
                       "For an evenly warmed screw held at one end; the frame's own warming "
                       "is left out.")},
};

constexpr Word of_belts[] = {
    {"belt_centre_distance",
     QT_TRANSLATE_NOOP("Words", "Geometry of the pitch line; tension and tolerance of the belt "
                                "shift it by tenths of a millimetre.")},
    {"belt_mesh_factor",
     QT_TRANSLATE_NOOP("Words", "Whole teeth only. Fewer than two in mesh are no drive.")},
    {"belt_pull_allowed",
     QT_TRANSLATE_NOOP("Words", "For a new, clean, true belt at room temperature with even load; "
                                "shocks want a margin.")},
    {"haul_pull_allowed",
     QT_TRANSLATE_NOOP("Words", "For a new, clean, true belt at room temperature with even load; "
                                "shocks want a margin.")},
    {"belt_tension_needed",
     QT_TRANSLATE_NOOP("Words",
                       "The least, for the wanted load: a motor that runs into a stop pulls "
                       "harder, and a belt maker's own figure goes before it. Shaft "
                       "centres stand still and the belt is elastic. Left out: the belt's "
                       "own mass at speed.")},
    {"haul_tension_needed",
     QT_TRANSLATE_NOOP("Words",
                       "The least, for the wanted load: a motor that runs into a stop pulls "
                       "harder, and a belt maker's own figure goes before it. Shaft "
                       "centres stand still and the belt is elastic. Left out: the belt's "
                       "own mass at speed.")},
    {"belt_note",
     QT_TRANSLATE_NOOP("Words", "The span as a string. Short, stiff spans sound higher, "
                                "and their pull is then less than it sounds.")},
    {"haul_note",
     QT_TRANSLATE_NOOP("Words", "The span as a string. Short, stiff spans sound higher, "
                                "and their pull is then less than it sounds.")},
    {"belt_pull_heard",
     QT_TRANSLATE_NOOP("Words", "The span as a string; a stiff belt on a short span makes the pull "
                                "read too high.")},
    {"haul_pull_heard",
     QT_TRANSLATE_NOOP("Words", "The span as a string; a stiff belt on a short span makes the pull "
                                "read too high.")},
    {"belt_shaft_load",
     QT_TRANSLATE_NOOP("Words", "At rest. Hold it against what the motor's maker allows as radial "
                                "load.")},
    {"haul_stiffness",
     QT_TRANSLATE_NOOP("Words", "While both ways of the belt stay taut. Left out: teeth and "
                                "clamps.")},
    {"transmission_stiffness",
     QT_TRANSLATE_NOOP("Words", "Of a belt while both spans stay taut; its teeth are left out.")},
};

constexpr Word of_motion[] = {
    {"friction_force",
     QT_TRANSLATE_NOOP("Words", "One coefficient at all speeds. Left out: stick at rest, cold "
                                "grease, guides out of true.")},
    {"falling_acceleration",
     QT_TRANSLATE_NOOP(
         "Words", "With friction and drags as given; zero where they hold it. The caution that "
                  "an axis can fall does not count on them: a worn or shaken drive falls, and "
                  "faster. Do not stand under it.")},
    {"holding_torque_needed",
     QT_TRANSLATE_NOOP("Words", "Guide friction is not counted on. Without power only a brake or a "
                                "counterbalance holds.")},
    {"usable_torque",
     QT_TRANSLATE_NOOP("Words", "Holds on the motor's curve at the stated supply, warm enough and "
                                "away from resonance. Past the last known point nothing is said.")},
    {"usable_torque_cutting",
     QT_TRANSLATE_NOOP("Words", "Holds on the motor's curve at the stated supply, warm enough and "
                                "away from resonance. Past the last known point nothing is said.")},
    {"motor_torque_feed",
     QT_TRANSLATE_NOOP("Words", "Accelerating all the way up to this feed. A stepper curve from "
                                "ratings leaves out saturation, iron loss and resonance; measured "
                                "points are better. Where the curve ends above the need, the "
                                "figure is a least one.")},
    {"whole_torque",
     QT_TRANSLATE_NOOP("Words", "Holds on the motor's curve at the stated supply, warm enough and "
                                "away from resonance. Past the last known point nothing is said.")},
    {"whole_torque_cutting",
     QT_TRANSLATE_NOOP("Words", "Holds on the motor's curve at the stated supply, warm enough and "
                                "away from resonance. Past the last known point nothing is said.")},
    {"motor_speed_feed",
     QT_TRANSLATE_NOOP("Words", "Where the known curve ends: the motor may turn faster, but nobody "
                                "has said with what torque.")},
    {"acceleration_available",
     QT_TRANSLATE_NOOP("Words", "At the wanted feed, where torque is least; from rest there is "
                                "more.")},
    {"thrust_available",
     QT_TRANSLATE_NOOP("Words", "At steady feed. Cutting forces swing: their peaks lie above the "
                                "mean.")},
    {"inertia_match",
     QT_TRANSLATE_NOOP("Words", "A habit of drive builders, not a law of nature: a stiff train "
                                "tolerates more.")},
    {"motor_resonance",
     QT_TRANSLATE_NOOP("Words", "Small swings about rest with a stiff train. Microstepping weakens "
                                "it, damping is left out.")},
    {"resonance_feed",
     QT_TRANSLATE_NOOP("Words", "Small swings about rest with a stiff train. Microstepping weakens "
                                "it, damping is left out.")},
    {"full_travel_time",
     QT_TRANSLATE_NOOP("Words", "One axis alone, from rest to rest, with the same limits up and "
                                "down.")},
    {"rms_torque",
     QT_TRANSLATE_NOOP("Words",
                       "While a cycle is short against the time the motor takes to warm up, "
                       "and torque goes with current.")},
    {"load_case_reserve",
     QT_TRANSLATE_NOOP("Words",
                       "For the mean of the force in each case; peaks within a turn of the "
                       "cutter lie above it.")},
    {"winding_heat",
     QT_TRANSLATE_NOOP("Words", "With cold windings; warm copper adds up to a third. Iron loss is "
                                "left out.")},
    {"supply_power",
     QT_TRANSLATE_NOOP("Words",
                       "This axis alone: add up the axes that work at the same time, and the "
                       "drives' own needs.")},
    {"returned_energy",
     QT_TRANSLATE_NOOP("Words",
                       "On the safe side: loss in the windings and what other axes draw are "
                       "left out.")},
    {"bus_voltage",
     QT_TRANSLATE_NOOP("Words",
                       "On the safe side: a supply that takes back, a brake resistor and the "
                       "drives' own needs are left out.")},
    {"best_lead", QT_TRANSLATE_NOOP(
                      "Words", "At one torque and with inertias as they are. The top is flat: half "
                               "or twice as much still gives about 80 % of the acceleration.")},
    {"best_reduction",
     QT_TRANSLATE_NOOP("Words",
                       "At one torque and with inertias as they are. The top is flat: half "
                       "or twice as much still gives about 80 % of the acceleration.")},
};

constexpr Word of_stiffness[] = {
    {"worst_side_share",
     QT_TRANSLATE_NOOP("Words", "For a stiff gantry. Left out: bending of the gantry and the "
                                "rails.")},
    {"shaft_stiffness",
     QT_TRANSLATE_NOOP("Words", "The core in tension and compression, at the place of the travel "
                                "where it is softest.")},
    {"nut_stiffness",
     QT_TRANSLATE_NOOP("Words", "By Hertz from one listed figure; housing and tilt of the nut are "
                                "left out.")},
    {"drive_stiffness",
     QT_TRANSLATE_NOOP("Words", "Springs one after the other. Left out: housing, bed and carriage, "
                                "which often give more than the drive.")},
    {"axis_stiffness",
     QT_TRANSLATE_NOOP("Words",
                       "Of the drive alone. Left out: housing, bed and carriage, which often "
                       "give more.")},
    {"natural_frequency",
     QT_TRANSLATE_NOOP("Words", "One mass on the drive's spring, undamped; frame and guides are "
                                "left out.")},
    {"torsional_frequency", QT_TRANSLATE_NOOP("Words", "Two inertias on one spring, undamped.")},
    {"skew",
     QT_TRANSLATE_NOOP("Words", "For a stiff gantry, small angles and blocks without play.")},
    {"windup_error",
     QT_TRANSLATE_NOOP("Words",
                       "Friction that turns round with the motion winds the drive's spring "
                       "both ways.")},
    {"friction_load_angle",
     QT_TRANSLATE_NOOP("Words",
                       "A stepper lags by the arcsine of its load; microstepping errors of "
                       "the motor itself come on top.")},
    {"cutting_load_angle",
     QT_TRANSLATE_NOOP("Words",
                       "A stepper lags by the arcsine of its load; microstepping errors of "
                       "the motor itself come on top.")},
    {"reversal_error",
     QT_TRANSLATE_NOOP("Words", "All parts at their worst at once; the root of squares is what is "
                                "likely.")},
    {"cutting_deflection",
     QT_TRANSLATE_NOOP("Words", "Of the drive along the axis alone; spindle, frame and guides give "
                                "as well.")},
};

struct Group {
  const char* title;
  ResultId first;
};

/// By their declared order: each group goes on to where the next begins.
constexpr Group groups[] = {
    {QT_TRANSLATE_NOOP("Words", "Kinematics"), ResultId::reduction},
    {QT_TRANSLATE_NOOP("Words", "Screw shaft"), ResultId::whip_length},
    {QT_TRANSLATE_NOOP("Words", "Inertia"), ResultId::screw_inertia},
    {QT_TRANSLATE_NOOP("Words", "Forces"), ResultId::couple_force},
    {QT_TRANSLATE_NOOP("Words", "Torque at the motor"), ResultId::rotor_torque},
    {QT_TRANSLATE_NOOP("Words", "Limits of feed"), ResultId::whip_feed},
    {QT_TRANSLATE_NOOP("Words", "Limits of axial force"), ResultId::heat_force},
    {QT_TRANSLATE_NOOP("Words", "Belt between motor and screw"), ResultId::belt_rim_force},
    {QT_TRANSLATE_NOOP("Words", "Hauling belt"), ResultId::haul_rim_force},
    {QT_TRANSLATE_NOOP("Words", "Stiffness"), ResultId::shaft_stiffness},
    {QT_TRANSLATE_NOOP("Words", "Errors"), ResultId::tooth_gap_error},
    {QT_TRANSLATE_NOOP("Words", "Life"), ResultId::mean_load},
    {QT_TRANSLATE_NOOP("Words", "Moves and duty"), ResultId::full_travel_time},
    {QT_TRANSLATE_NOOP("Words", "Motor, controller and supply"), ResultId::step_rate},
};

} // namespace

QString result_validity(ResultId id) {
  const std::string_view name = descriptor(id).name;
  QString found = looked_up(of_screw, name);
  if (found.isEmpty()) {
    found = looked_up(of_belts, name);
  }
  if (found.isEmpty()) {
    found = looked_up(of_motion, name);
  }
  return found.isEmpty() ? looked_up(of_stiffness, name) : found;
}

QString result_group(ResultId id) {
  const char* title = groups[0].title;
  for (const Group& group : groups) {
    if (group.first <= id) {
      title = group.title;
    }
  }
  return translated(title);
}

} // namespace feedwright::words
