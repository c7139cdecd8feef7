// SPDX-License-Identifier: GPL-3.0-or-later

// Names and meanings of results. Kinematics, screw, inertias, forces and torques.

#include "text/result_words.h"
#include "text/word_table.h"

namespace feedwright::words {

namespace {

constexpr ResultWords result_words[] = {
    {"reduction", QT_TRANSLATE_NOOP("Words", "reduction"),
     QT_TRANSLATE_NOOP(
         "Words", "Turns of the motor for one turn of the screw, or of a hauling belt's pulley.")},
    {"screw_travel", QT_TRANSLATE_NOOP("Words", "travel per screw or pulley angle"),
     QT_TRANSLATE_NOOP(
         "Words",
         "A screw's lead over a whole turn, or the pitch radius of a hauling belt's pulley.")},
    {"motor_travel", QT_TRANSLATE_NOOP("Words", "travel per motor angle"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Travel per angle of screw or pulley, seen from the motor through the reduction.")},
    {"steps_per_length", QT_TRANSLATE_NOOP("Words", "steps per length"),
     QT_TRANSLATE_NOOP("Words", "Command steps for a length of travel.")},
    {"resolution", QT_TRANSLATE_NOOP("Words", "resolution"),
     QT_TRANSLATE_NOOP("Words", "Travel of one command step.")},
    {"lost_motion", QT_TRANSLATE_NOOP("Words", "lost motion"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Axial play of the nut, none if it is preloaded; of a hauling belt its tooth gap.")},
    {"belt_centre_distance", QT_TRANSLATE_NOOP("Words", "centre distance"),
     QT_TRANSLATE_NOOP("Words", "From shaft to shaft, at which the whole belt goes taut round both "
                                "pulleys; the belt does not stretch.")},
    {"belt_teeth_in_mesh", QT_TRANSLATE_NOOP("Words", "teeth in mesh"),
     QT_TRANSLATE_NOOP("Words", "Fewest belt teeth on the arc of contact of a driven pulley.")},
    {"slide_position", QT_TRANSLATE_NOOP("Words", "place of the slide"),
     QT_TRANSLATE_NOOP("Words", "From the sliding pulley's drawn place to where the belt's whole "
                                "length fits; forth is positive.")},
    {"slide_to_ease", QT_TRANSLATE_NOOP("Words", "slide travel to fit the belt"),
     QT_TRANSLATE_NOOP("Words", "From the slide's place, so that the belt comes loose by half a "
                                "tooth and goes over a flange.")},
    {"slide_to_stretch", QT_TRANSLATE_NOOP("Words", "slide travel to take up"),
     QT_TRANSLATE_NOOP("Words", "From the slide's place, for a belt stretched by one part in five "
                                "hundred.")},
    {"worst_side_share", QT_TRANSLATE_NOOP("Words", "share of the worst side"),
     QT_TRANSLATE_NOOP("Words", "Largest share of a load that one side carries while it crosses.")},
    {"worst_side_mass", QT_TRANSLATE_NOOP("Words", "mass of the worst side"),
     QT_TRANSLATE_NOOP(
         "Words",
         "What the harder-loaded motor moves: half of what stays, and its share of what crosses.")},
    {"whip_length", QT_TRANSLATE_NOOP("Words", "length that whips"),
     QT_TRANSLATE_NOOP("Words", "The free length of the screw that bends first.")},
    {"whip_speed", QT_TRANSLATE_NOOP("Words", "first critical speed"),
     QT_TRANSLATE_NOOP("Words",
                       "Speed at which the screw whips: the first natural frequency of bending of "
                       "a slender round shaft, solid or hollow, of the core diameter.")},
    {"whip_allowed_speed", QT_TRANSLATE_NOOP("Words", "allowed screw speed"),
     QT_TRANSLATE_NOOP("Words", "The allowed share of the first critical speed.")},
    {"whip_feed_between_bearings", QT_TRANSLATE_NOOP("Words", "whip feed between bearings"),
     QT_TRANSLATE_NOOP("Words", "With the whole length between the bearings free to bend.")},
    {"whip_feed_nut_to_bearing", QT_TRANSLATE_NOOP("Words", "whip feed nut to bearing"),
     QT_TRANSLATE_NOOP(
         "Words",
         "With the longest length between nut and bearing, the nut counted as a support.")},
    {"whip_speed_loaded", QT_TRANSLATE_NOOP("Words", "critical speed under load"),
     QT_TRANSLATE_NOOP("Words", "The first critical speed, lowered by the largest axial force and "
                                "raised by the stretch.")},
    {"buckling_length", QT_TRANSLATE_NOOP("Words", "length that buckles"),
     QT_TRANSLATE_NOOP("Words",
                       "From the bearing that takes the thrust to the nut at its farthest.")},
    {"core_area", QT_TRANSLATE_NOOP("Words", "core area"),
     QT_TRANSLATE_NOOP("Words", "Cross-section at the bottom of the thread, less the bore.")},
    {"slenderness", QT_TRANSLATE_NOOP("Words", "slenderness"),
     QT_TRANSLATE_NOOP("Words", "Length over the core's radius of gyration.")},
    {"slenderness_limit", QT_TRANSLATE_NOOP("Words", "slenderness where Euler begins"),
     QT_TRANSLATE_NOOP("Words", "Where Johnson's parabola meets Euler's curve.")},
    {"buckling_load", QT_TRANSLATE_NOOP("Words", "critical buckling load"),
     QT_TRANSLATE_NOOP("Words", "By Euler for slender screws, by J. B. Johnson for stocky ones.")},
    {"thread_pitch", QT_TRANSLATE_NOOP("Words", "thread pitch"),
     QT_TRANSLATE_NOOP("Words", "Lead over starts.")},
    {"tan_lead_angle", QT_TRANSLATE_NOOP("Words", "tangent of the lead angle"),
     QT_TRANSLATE_NOOP("Words", "Lead over the circumference at the pitch diameter.")},
    {"friction_angle", QT_TRANSLATE_NOOP("Words", "friction angle"),
     QT_TRANSLATE_NOOP("Words",
                       "Of the thread's friction, in radians, the slope of the flank counted in.")},
    {"collar_loss", QT_TRANSLATE_NOOP("Words", "collar loss"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Torque the thrust washer adds, as a share of the axial force times travel per angle.")},
    {"forward_efficiency", QT_TRANSLATE_NOOP("Words", "efficiency, driving"),
     QT_TRANSLATE_NOOP("Words", "Of the thread, power going to the load.")},
    {"back_driving_efficiency", QT_TRANSLATE_NOOP("Words", "efficiency, driven back"),
     QT_TRANSLATE_NOOP("Words", "Of the thread, power coming from the load; at or below zero the "
                                "thread does not drive back.")},
    {"preload_holds_to", QT_TRANSLATE_NOOP("Words", "load that frees the preload"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Axial force beyond which the relieved half of a preloaded pair carries nothing.")},
    {"preload_drag_torque", QT_TRANSLATE_NOOP("Words", "preload drag"),
     QT_TRANSLATE_NOOP("Words", "As given, or reckoned from the preload; at the screw.")},
    {"screw_inertia", QT_TRANSLATE_NOOP("Words", "screw or belt inertia"),
     QT_TRANSLATE_NOOP("Words",
                       "A cylinder of the screw's nominal diameter less its bore, a turning nut as "
                       "given, or a hauling belt with both pulleys; at its own shaft.")},
    {"motor_pulley_inertia", QT_TRANSLATE_NOOP("Words", "motor pulley inertia"),
     QT_TRANSLATE_NOOP(
         "Words",
         "As given, or a solid disc of the pitch diameter; a loop's idlers are counted in.")},
    {"screw_pulley_inertia", QT_TRANSLATE_NOOP("Words", "screw pulley inertia"),
     QT_TRANSLATE_NOOP("Words", "As given, or a solid disc of the pitch diameter; at the screw, "
                                "all pulleys on screws together.")},
    {"belt_inertia", QT_TRANSLATE_NOOP("Words", "belt inertia"),
     QT_TRANSLATE_NOOP("Words", "The belt's mass at the motor pulley's pitch radius.")},
    {"carriage_inertia", QT_TRANSLATE_NOOP("Words", "carriage inertia at the motor"),
     QT_TRANSLATE_NOOP("Words", "What the moving mass weighs as an inertia at the motor's shaft.")},
    {"load_inertia", QT_TRANSLATE_NOOP("Words", "load inertia"),
     QT_TRANSLATE_NOOP("Words", "Everything but the rotor, seen from the motor.")},
    {"inertia_match", QT_TRANSLATE_NOOP("Words", "inertia match"),
     QT_TRANSLATE_NOOP("Words", "Load inertia over rotor inertia.")},
    {"couple_force", QT_TRANSLATE_NOOP("Words", "couple on the guide blocks"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Sideways force on the blocks each way, from a cut off the line of one central drive.")},
    {"yaw_friction_share", QT_TRANSLATE_NOOP("Words", "friction of the couple"),
     QT_TRANSLATE_NOOP("Words",
                       "What the guides add to a force off the drive's line, as a share of it.")},
    {"gravity_force", QT_TRANSLATE_NOOP("Words", "gravity along the axis"),
     QT_TRANSLATE_NOOP("Words", "Weight along the axis less the counterbalance.")},
    {"friction_force", QT_TRANSLATE_NOOP("Words", "friction force"),
     QT_TRANSLATE_NOOP("Words", "Guide friction, seals and covers together.")},
    {"side_gravity", QT_TRANSLATE_NOOP("Words", "gravity of the worst side"),
     QT_TRANSLATE_NOOP("Words", "The harder-loaded motor's share of gravity along the axis.")},
    {"side_friction", QT_TRANSLATE_NOOP("Words", "friction of the worst side"),
     QT_TRANSLATE_NOOP("Words", "The harder-loaded motor's share of the friction force.")},
    {"lowering_force", QT_TRANSLATE_NOOP("Words", "force lowering"),
     QT_TRANSLATE_NOOP("Words", "Down the slope at steady feed; below zero the load pulls.")},
    {"rapid_force", QT_TRANSLATE_NOOP("Words", "force accelerating"),
     QT_TRANSLATE_NOOP("Words", "Accelerating up the slope at the wanted rate, not cutting.")},
    {"cutting_force", QT_TRANSLATE_NOOP("Words", "force cutting"),
     QT_TRANSLATE_NOOP("Words", "Cutting up the slope at steady feed.")},
    {"rotor_torque", QT_TRANSLATE_NOOP("Words", "torque for the motor's shaft"),
     QT_TRANSLATE_NOOP("Words", "To accelerate what turns with the motor.")},
    {"screw_shaft_torque", QT_TRANSLATE_NOOP("Words", "torque for the screw's shaft"),
     QT_TRANSLATE_NOOP(
         "Words",
         "To accelerate what turns with the screw or a hauling belt's pulleys; at that shaft.")},
    {"thread_torque", QT_TRANSLATE_NOOP("Words", "torque for the axial force"),
     QT_TRANSLATE_NOOP("Words", "To push the axial force through the thread or pull it by the "
                                "belt; at the screw or pulley.")},
    {"drag_torque", QT_TRANSLATE_NOOP("Words", "drag torque"),
     QT_TRANSLATE_NOOP("Words", "Preload, seals and bearings, at the screw or pulley.")},
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
    {"falling_acceleration", QT_TRANSLATE_NOOP("Words", "acceleration of a fall"),
     QT_TRANSLATE_NOOP("Words", "How fast the axis gains speed downwards unpowered and without a "
                                "brake; zero if it stays.")},
    {"braking_torque", QT_TRANSLATE_NOOP("Words", "torque braking"),
     QT_TRANSLATE_NOOP("Words", "At the motor, while slowing down on the way down the slope; below "
                                "zero the motor brakes.")},
    {"motor_speed", QT_TRANSLATE_NOOP("Words", "motor speed"),
     QT_TRANSLATE_NOOP("Words", "At the wanted feed.")},
    {"whole_torque", QT_TRANSLATE_NOOP("Words", "motor torque at the wanted feed"),
     QT_TRANSLATE_NOOP("Words", "The whole of what the motor has at that speed, before a share is "
                                "kept back.")},
    {"whole_torque_cutting", QT_TRANSLATE_NOOP("Words", "motor torque at the cutting feed"),
     QT_TRANSLATE_NOOP("Words", "The whole of what the motor has at that speed, before a share is "
                                "kept back.")},
    {"usable_torque", QT_TRANSLATE_NOOP("Words", "usable torque"),
     QT_TRANSLATE_NOOP("Words", "The usable share of the motor's torque at the wanted feed.")},
    {"usable_torque_cutting", QT_TRANSLATE_NOOP("Words", "usable torque cutting"),
     QT_TRANSLATE_NOOP("Words", "The usable share of the motor's torque at the cutting feed.")},
    {"acceleration_available", QT_TRANSLATE_NOOP("Words", "acceleration available"),
     QT_TRANSLATE_NOOP("Words", "From the usable torque at the wanted feed, up the slope.")},
    {"thrust_available", QT_TRANSLATE_NOOP("Words", "cutting thrust available"),
     QT_TRANSLATE_NOOP(
         "Words",
         "From the usable torque at the cutting feed, up the slope, friction and gravity paid.")},
};

} // namespace

std::span<const ResultWords> train_result_words() {
  return result_words;
}

} // namespace feedwright::words
