// SPDX-License-Identifier: GPL-3.0-or-later

// Names and help of parts and their fields.

#include "text/word_table.h"
#include "text/words.h"

namespace feedwright::words {

namespace {

constexpr const char* part_names[] = {
    QT_TRANSLATE_NOOP("Words", "Supply"),   QT_TRANSLATE_NOOP("Words", "Controller"),
    QT_TRANSLATE_NOOP("Words", "Axis"),     QT_TRANSLATE_NOOP("Words", "Targets"),
    QT_TRANSLATE_NOOP("Words", "Carriage"), QT_TRANSLATE_NOOP("Words", "Guides"),
    QT_TRANSLATE_NOOP("Words", "Motor"),    QT_TRANSLATE_NOOP("Words", "Transmission"),
    QT_TRANSLATE_NOOP("Words", "Screw"),
};

constexpr Word part_types[] = {
    {"stepper_by_points", QT_TRANSLATE_NOOP("Words", "Stepper, by torque curve")},
    {"stepper_by_ratings", QT_TRANSLATE_NOOP("Words", "Stepper, by ratings")},
    {"servo", QT_TRANSLATE_NOOP("Words", "Servo motor")},
    {"coupling", QT_TRANSLATE_NOOP("Words", "Coupling")},
    {"belt", QT_TRANSLATE_NOOP("Words", "Belt and two pulleys")},
};

constexpr Word choices[] = {
    {"thread/ball", QT_TRANSLATE_NOOP("Words", "ball screw")},
    {"thread/trapezoidal", QT_TRANSLATE_NOOP("Words", "trapezoidal screw")},
    {"end/fixed", QT_TRANSLATE_NOOP("Words", "fixed")},
    {"end/supported", QT_TRANSLATE_NOOP("Words", "supported")},
    {"end/free", QT_TRANSLATE_NOOP("Words", "free")},
    {"whip_span/between_bearings", QT_TRANSLATE_NOOP("Words", "bearing to bearing")},
    {"whip_span/nut_to_bearing", QT_TRANSLATE_NOOP("Words", "nut to bearing")},
    {"drive_current_reading/peak", QT_TRANSLATE_NOOP("Words", "peak")},
    {"drive_current_reading/rms", QT_TRANSLATE_NOOP("Words", "effective (rms)")},
};

struct FieldWords {
  std::string_view key; ///< slot.member
  const char* name;
  const char* help;
};

constexpr FieldWords field_words[] = {
    {"supply.voltage", QT_TRANSLATE_NOOP("Words", "supply voltage"),
     QT_TRANSLATE_NOOP("Words", "Voltage of the motor supply. A stepper keeps its torque to higher "
                                "speeds with more; stay within what drive and motor allow.")},
    {"controller.step_rate_limit", QT_TRANSLATE_NOOP("Words", "step rate limit"),
     QT_TRANSLATE_NOOP("Words", "Most steps a second the controller can send. More microsteps "
                                "use it up sooner.")},
    {"axis.letter", QT_TRANSLATE_NOOP("Words", "letter"),
     QT_TRANSLATE_NOOP("Words", "The axis' letter in programs, such as X.")},
    {"axis.name", QT_TRANSLATE_NOOP("Words", "name"),
     QT_TRANSLATE_NOOP("Words", "What moves, in your words; printed on the sheet.")},
    {"axis.travel", QT_TRANSLATE_NOOP("Words", "travel"),
     QT_TRANSLATE_NOOP("Words", "How far the carriage goes from end to end.")},
    {"axis.incline", QT_TRANSLATE_NOOP("Words", "incline"),
     QT_TRANSLATE_NOOP("Words", "Angle to the horizontal: 0° lies flat, 90° stands upright, where "
                                "gravity works against the motor.")},
    {"axis.nut_at_start", QT_TRANSLATE_NOOP("Words", "nut at start of travel"),
     QT_TRANSLATE_NOOP("Words", "From the motor-end bearing to the nut at the start of travel. "
                                "Left open, the travel lies in the middle of the screw.")},
    {"targets.feed", QT_TRANSLATE_NOOP("Words", "wanted feed"),
     QT_TRANSLATE_NOOP("Words", "Fastest feed the axis should reach, not cutting.")},
    {"targets.acceleration", QT_TRANSLATE_NOOP("Words", "wanted acceleration"),
     QT_TRANSLATE_NOOP("Words", "Acceleration the axis should still have at the wanted feed.")},
    {"targets.cutting_feed", QT_TRANSLATE_NOOP("Words", "cutting feed"),
     QT_TRANSLATE_NOOP("Words", "Feed at which the cutting thrust is asked for.")},
    {"targets.thrust", QT_TRANSLATE_NOOP("Words", "cutting thrust"),
     QT_TRANSLATE_NOOP("Words", "Force the tool asks of the axis along its travel.")},
    {"targets.resolution", QT_TRANSLATE_NOOP("Words", "wanted resolution"),
     QT_TRANSLATE_NOOP("Words", "Longest travel one command step may make.")},
    {"targets.lost_motion", QT_TRANSLATE_NOOP("Words", "allowed lost motion"),
     QT_TRANSLATE_NOOP("Words", "Most that may be lost when the direction changes.")},
    {"targets.inertia_match", QT_TRANSLATE_NOOP("Words", "inertia match up to"),
     QT_TRANSLATE_NOOP("Words", "Most the load's inertia may be as a multiple of the rotor's. Ten "
                                "is common practice for steppers.")},
    {"carriage.mass", QT_TRANSLATE_NOOP("Words", "moving mass"),
     QT_TRANSLATE_NOOP("Words",
                       "Everything that travels with this axis, the other axes on it too.")},
    {"carriage.counterbalance", QT_TRANSLATE_NOOP("Words", "counterbalance"),
     QT_TRANSLATE_NOOP("Words", "Upward pull of a spring, weight or gas strut along the axis.")},
    {"carriage.brake", QT_TRANSLATE_NOOP("Words", "holding brake"),
     QT_TRANSLATE_NOOP("Words", "A brake that closes when the power goes.")},
    {"guides.friction", QT_TRANSLATE_NOOP("Words", "guide friction"),
     QT_TRANSLATE_NOOP("Words", "Friction coefficient of the guides: about 0.005 for rolling "
                                "blocks, 0.1 for sliding ways.")},
    {"guides.blocks", QT_TRANSLATE_NOOP("Words", "guide blocks"),
     QT_TRANSLATE_NOOP("Words", "Number of blocks or bushings; each drags with its seals.")},
    {"guides.seal_drag", QT_TRANSLATE_NOOP("Words", "seal drag of a block"),
     QT_TRANSLATE_NOOP("Words", "Force the seals of one block cost at any load.")},
    {"guides.cover_drag", QT_TRANSLATE_NOOP("Words", "drag of covers and cables"),
     QT_TRANSLATE_NOOP("Words", "Force that bellows, wipers and cable chains cost.")},
    {"guides.speed_limit", QT_TRANSLATE_NOOP("Words", "guide speed limit"),
     QT_TRANSLATE_NOOP("Words", "Fastest travel the guides' maker allows.")},
    {"motor.frame", QT_TRANSLATE_NOOP("Words", "frame size"),
     QT_TRANSLATE_NOOP("Words", "Size of the flange, such as NEMA 23; for the parts to buy.")},
    {"motor.points", QT_TRANSLATE_NOOP("Words", "torque curve"),
     QT_TRANSLATE_NOOP("Words", "Pull-out torque at rising speeds, from the data sheet's curve at "
                                "your supply voltage.")},
    {"motor.points_voltage", QT_TRANSLATE_NOOP("Words", "voltage of the curve"),
     QT_TRANSLATE_NOOP("Words", "Supply voltage at which the torque curve was taken.")},
    {"motor.rotor_inertia", QT_TRANSLATE_NOOP("Words", "rotor inertia"),
     QT_TRANSLATE_NOOP("Words", "Moment of inertia of the rotor, from the data sheet.")},
    {"motor.holding_torque", QT_TRANSLATE_NOOP("Words", "holding torque"),
     QT_TRANSLATE_NOOP("Words", "Torque at rest with both phases at rated current.")},
    {"motor.detent_torque", QT_TRANSLATE_NOOP("Words", "detent torque"),
     QT_TRANSLATE_NOOP("Words", "What the motor resists unpowered; it helps to keep an axis up.")},
    {"motor.step_angle", QT_TRANSLATE_NOOP("Words", "step angle"),
     QT_TRANSLATE_NOOP("Words", "Turn of one full step: 1.8° is 200 steps a turn.")},
    {"motor.microsteps", QT_TRANSLATE_NOOP("Words", "microsteps"),
     QT_TRANSLATE_NOOP("Words", "Command steps the drive makes of one full step.")},
    {"motor.usable_share", QT_TRANSLATE_NOOP("Words", "usable share of torque"),
     QT_TRANSLATE_NOOP("Words", "How much of the torque curve you trust; the rest is reserve "
                                "against stalling.")},
    {"motor.rated_current", QT_TRANSLATE_NOOP("Words", "rated current"),
     QT_TRANSLATE_NOOP("Words",
                       "Effective current of a phase at which the holding torque is given.")},
    {"motor.resistance", QT_TRANSLATE_NOOP("Words", "phase resistance"),
     QT_TRANSLATE_NOOP("Words", "Resistance of one phase.")},
    {"motor.inductance", QT_TRANSLATE_NOOP("Words", "phase inductance"),
     QT_TRANSLATE_NOOP("Words",
                       "Inductance of one phase; a lower one keeps torque to higher speeds.")},
    {"motor.drive_current", QT_TRANSLATE_NOOP("Words", "drive current"),
     QT_TRANSLATE_NOOP("Words", "Current the drive is set to.")},
    {"motor.drive_current_reading", QT_TRANSLATE_NOOP("Words", "drive current is"),
     QT_TRANSLATE_NOOP("Words", "Whether the drive's setting means the top of the sine or its "
                                "effective value.")},
    {"motor.continuous_torque", QT_TRANSLATE_NOOP("Words", "continuous torque"),
     QT_TRANSLATE_NOOP("Words", "Torque the servo gives for ever; cutting is held against it.")},
    {"motor.peak_torque", QT_TRANSLATE_NOOP("Words", "peak torque"),
     QT_TRANSLATE_NOOP("Words",
                       "Torque the servo gives for a moment; accelerating is held against it.")},
    {"motor.rated_speed", QT_TRANSLATE_NOOP("Words", "rated speed"),
     QT_TRANSLATE_NOOP("Words",
                       "Up to here the torques hold; beyond they fall with one over the speed.")},
    {"motor.top_speed", QT_TRANSLATE_NOOP("Words", "top speed"),
     QT_TRANSLATE_NOOP("Words", "The servo's fastest speed.")},
    {"motor.steps_per_turn", QT_TRANSLATE_NOOP("Words", "command steps a turn"),
     QT_TRANSLATE_NOOP("Words", "Steps the servo drive takes for one turn, after its gearing.")},
    {"transmission.inertia", QT_TRANSLATE_NOOP("Words", "coupling inertia"),
     QT_TRANSLATE_NOOP("Words", "Moment of inertia of the coupling.")},
    {"transmission.profile", QT_TRANSLATE_NOOP("Words", "belt profile"),
     QT_TRANSLATE_NOOP(
         "Words", "Tooth profile by its designation, such as 5M or T5; for the parts to buy.")},
    {"transmission.pitch", QT_TRANSLATE_NOOP("Words", "belt pitch"),
     QT_TRANSLATE_NOOP("Words", "From tooth to tooth.")},
    {"transmission.width", QT_TRANSLATE_NOOP("Words", "belt width"),
     QT_TRANSLATE_NOOP("Words", "Width of belt and pulleys.")},
    {"transmission.motor_pulley_teeth", QT_TRANSLATE_NOOP("Words", "motor pulley teeth"),
     QT_TRANSLATE_NOOP("Words",
                       "Teeth of the pulley on the motor. Fewer than on the screw gear down.")},
    {"transmission.screw_pulley_teeth", QT_TRANSLATE_NOOP("Words", "screw pulley teeth"),
     QT_TRANSLATE_NOOP("Words", "Teeth of the pulley on the screw.")},
    {"transmission.belt_teeth", QT_TRANSLATE_NOOP("Words", "belt teeth"),
     QT_TRANSLATE_NOOP("Words",
                       "Teeth of the whole belt; with the pulleys they set the centre distance.")},
    {"transmission.efficiency", QT_TRANSLATE_NOOP("Words", "belt efficiency"),
     QT_TRANSLATE_NOOP("Words", "Share of the power that comes through the belt stage.")},
    {"transmission.mass_per_length", QT_TRANSLATE_NOOP("Words", "belt mass per length"),
     QT_TRANSLATE_NOOP("Words", "Mass of a metre of the belt at its width.")},
    {"transmission.motor_pulley_inertia", QT_TRANSLATE_NOOP("Words", "motor pulley inertia"),
     QT_TRANSLATE_NOOP("Words", "Left open, a solid disc of the pitch diameter is taken.")},
    {"transmission.screw_pulley_inertia", QT_TRANSLATE_NOOP("Words", "screw pulley inertia"),
     QT_TRANSLATE_NOOP("Words", "Left open, a solid disc of the pitch diameter is taken.")},
    {"transmission.pulley_density", QT_TRANSLATE_NOOP("Words", "pulley density"),
     QT_TRANSLATE_NOOP("Words",
                       "Of the pulleys' material: aluminium 2700 kg/m³, steel 7850 kg/m³.")},
    {"transmission.speed_limit", QT_TRANSLATE_NOOP("Words", "belt speed limit"),
     QT_TRANSLATE_NOOP("Words", "Fastest the belt may run, from its maker.")},
    {"screw.thread", QT_TRANSLATE_NOOP("Words", "thread"),
     QT_TRANSLATE_NOOP("Words", "Balls roll and drive back easily; a trapezoidal thread slides and "
                                "wastes more, but may hold by itself.")},
    {"screw.nominal_diameter", QT_TRANSLATE_NOOP("Words", "nominal diameter"),
     QT_TRANSLATE_NOOP("Words",
                       "The diameter the screw is sold by; its inertia is taken from it.")},
    {"screw.core_diameter", QT_TRANSLATE_NOOP("Words", "core diameter"),
     QT_TRANSLATE_NOOP("Words", "At the bottom of the thread. Whip and buckling go by it; look it "
                                "up, do not guess.")},
    {"screw.pitch_diameter", QT_TRANSLATE_NOOP("Words", "pitch diameter"),
     QT_TRANSLATE_NOOP("Words", "Ball-circle diameter of a ball screw, pitch diameter of a "
                                "trapezoidal one.")},
    {"screw.lead", QT_TRANSLATE_NOOP("Words", "lead"),
     QT_TRANSLATE_NOOP("Words",
                       "Travel for one turn of the screw. More lead turns the screw slower "
                       "for the same feed and asks more torque of the motor.")},
    {"screw.span", QT_TRANSLATE_NOOP("Words", "length between bearings"),
     QT_TRANSLATE_NOOP("Words",
                       "Whip falls with its square: half the length allows four times the speed.")},
    {"screw.overall_length", QT_TRANSLATE_NOOP("Words", "overall length"),
     QT_TRANSLATE_NOOP("Words", "Of the whole shaft, for its inertia. Left open, the length "
                                "between bearings counts.")},
    {"screw.motor_end", QT_TRANSLATE_NOOP("Words", "motor end"),
     QT_TRANSLATE_NOOP("Words", "Fixed holds place, thrust and direction (a bearing pair); "
                                "supported holds place only.")},
    {"screw.far_end", QT_TRANSLATE_NOOP("Words", "far end"),
     QT_TRANSLATE_NOOP("Words",
                       "A fixed far end lets a long screw turn faster than a supported one.")},
    {"screw.whip_span", QT_TRANSLATE_NOOP("Words", "length that whips"),
     QT_TRANSLATE_NOOP("Words", "Between the bearings is the safe reading. Nut to bearing counts "
                                "the nut as a support.")},
    {"screw.thread_friction", QT_TRANSLATE_NOOP("Words", "thread friction"),
     QT_TRANSLATE_NOOP("Words", "Friction coefficient in the thread: about 0.01 for balls, 0.1 to "
                                "0.2 for greased trapezoidal threads.")},
    {"screw.efficiency", QT_TRANSLATE_NOOP("Words", "measured efficiency"),
     QT_TRANSLATE_NOOP("Words", "If you have it from data sheet or measurement, it counts instead "
                                "of the friction.")},
    {"screw.preload_drag", QT_TRANSLATE_NOOP("Words", "preload drag"),
     QT_TRANSLATE_NOOP("Words", "Torque a preloaded nut costs at any load.")},
    {"screw.bearing_drag", QT_TRANSLATE_NOOP("Words", "bearing drag"),
     QT_TRANSLATE_NOOP("Words", "Torque the end bearings and their seals cost.")},
    {"screw.backlash", QT_TRANSLATE_NOOP("Words", "backlash"),
     QT_TRANSLATE_NOOP("Words",
                       "Axial play of the nut. Inexpensive rolled screws show about 50 µm; "
                       "preloaded nuts none.")},
    {"screw.ball_speed_limit", QT_TRANSLATE_NOOP("Words", "diameter × speed limit"),
     QT_TRANSLATE_NOOP("Words",
                       "Ball-circle diameter times speed that the nut's ball return bears: "
                       "70000 mm·rpm is usual for common rolled nuts.")},
    {"screw.speed_limit", QT_TRANSLATE_NOOP("Words", "screw speed limit"),
     QT_TRANSLATE_NOOP("Words", "Fastest speed that nut or bearings are rated for.")},
    {"screw.static_rating", QT_TRANSLATE_NOOP("Words", "static load rating"),
     QT_TRANSLATE_NOOP("Words", "The nut's static rating C0a, from its maker.")},
    {"screw.bearing_thrust_limit", QT_TRANSLATE_NOOP("Words", "bearing thrust limit"),
     QT_TRANSLATE_NOOP("Words", "Most axial force the end bearing may carry.")},
    {"screw.whip_share", QT_TRANSLATE_NOOP("Words", "allowed share of whip speed"),
     QT_TRANSLATE_NOOP("Words",
                       "How near the first critical speed you let the screw turn; 80 % is usual.")},
    {"screw.buckling_safety", QT_TRANSLATE_NOOP("Words", "safety against buckling"),
     QT_TRANSLATE_NOOP("Words", "The critical load is divided by it.")},
    {"screw.stress_safety", QT_TRANSLATE_NOOP("Words", "safety against yielding"),
     QT_TRANSLATE_NOOP("Words", "The yield strength is divided by it.")},
    {"screw.static_safety", QT_TRANSLATE_NOOP("Words", "safety of the static rating"),
     QT_TRANSLATE_NOOP("Words", "The static rating is divided by it: 1 to 2 in smooth running, 2 "
                                "to 3 with shocks.")},
    {"screw.elastic_modulus", QT_TRANSLATE_NOOP("Words", "elastic modulus"),
     QT_TRANSLATE_NOOP("Words", "Of the screw's steel.")},
    {"screw.yield_strength", QT_TRANSLATE_NOOP("Words", "yield strength"),
     QT_TRANSLATE_NOOP("Words", "Of the screw's core.")},
    {"screw.density", QT_TRANSLATE_NOOP("Words", "density"),
     QT_TRANSLATE_NOOP("Words", "Of the screw's steel.")},
};

const FieldWords* words_of(PartSlot slot, std::string_view member) {
  const std::string key = std::string(slot_name(slot)) + "." + std::string(member);
  for (const FieldWords& words : field_words) {
    if (words.key == key) {
      return &words;
    }
  }
  return nullptr;
}

} // namespace

QString part_name(PartSlot slot) {
  return translated(part_names[static_cast<std::size_t>(slot)]);
}

QString part_type_title(std::string_view type) {
  return looked_up(part_types, type);
}

QString field_name(PartSlot slot, std::string_view member) {
  const FieldWords* words = words_of(slot, member);
  return words != nullptr ? translated(words->name) : QString();
}

QString field_help(PartSlot slot, std::string_view member) {
  const FieldWords* words = words_of(slot, member);
  return words != nullptr ? translated(words->help) : QString();
}

QString choice_name(std::string_view member, std::string_view choice) {
  const bool end = member == "motor_end" || member == "far_end";
  return looked_up(choices,
                   (end ? std::string("end") : std::string(member)) + "/" + std::string(choice));
}

} // namespace feedwright::words
