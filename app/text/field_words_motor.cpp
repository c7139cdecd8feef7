// SPDX-License-Identifier: GPL-3.0-or-later

// Names and help of fields. Motors.

#include "text/field_words.h"
#include "text/word_table.h"

namespace feedwright::words {

namespace {

constexpr FieldWords field_words[] = {
    {"motor.frame", QT_TRANSLATE_NOOP("Words", "frame size"),
     QT_TRANSLATE_NOOP("Words", "Size of the flange, such as NEMA 23; for the parts to buy.")},
    {"motor.points", QT_TRANSLATE_NOOP("Words", "torque curve"),
     QT_TRANSLATE_NOOP("Words", "Pull-out torque at rising speeds, from the data sheet's curve, if "
                                "there is one at your supply voltage.")},
    {"motor.points_voltage", QT_TRANSLATE_NOOP("Words", "voltage of the curve"),
     QT_TRANSLATE_NOOP("Words", "Supply voltage at which the torque curve was taken.")},
    {"motor.reckon_for_supply", QT_TRANSLATE_NOOP("Words", "reckon for the supply"),
     QT_TRANSLATE_NOOP("Words", "Reckon the curve anew for the machine's supply. It needs the "
                                "curve's voltage and the winding's figures, and is an estimate.")},
    {"motor.holding_torque", QT_TRANSLATE_NOOP("Words", "holding torque"),
     QT_TRANSLATE_NOOP("Words", "Torque at rest with both phases at rated current.")},
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
     QT_TRANSLATE_NOOP(
         "Words", "Whether the drive's setting means the top of the sine or its effective value.")},
    {"motor.rotor_inertia", QT_TRANSLATE_NOOP("Words", "rotor inertia"),
     QT_TRANSLATE_NOOP("Words", "Moment of inertia of the rotor, from the data sheet.")},
    {"motor.detent_torque", QT_TRANSLATE_NOOP("Words", "detent torque"),
     QT_TRANSLATE_NOOP("Words", "What the motor resists unpowered; it helps to keep an axis up.")},
    {"motor.step_angle", QT_TRANSLATE_NOOP("Words", "step angle"),
     QT_TRANSLATE_NOOP("Words", "Turn of one full step: 1.8° is 200 steps a turn.")},
    {"motor.microsteps", QT_TRANSLATE_NOOP("Words", "microsteps"),
     QT_TRANSLATE_NOOP("Words", "Command steps the drive makes of one full step.")},
    {"motor.usable_share", QT_TRANSLATE_NOOP("Words", "usable share of torque"),
     QT_TRANSLATE_NOOP(
         "Words", "How much of the torque curve you trust; the rest is reserve against stalling.")},
    {"motor.closed_loop", QT_TRANSLATE_NOOP("Words", "closed loop"),
     QT_TRANSLATE_NOOP(
         "Words",
         "An encoder corrects the position: no step is lost and the load angle is no error.")},
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
};

} // namespace

std::span<const FieldWords> motor_field_words() {
  return field_words;
}

} // namespace feedwright::words
