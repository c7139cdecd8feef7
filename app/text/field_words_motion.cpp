// SPDX-License-Identifier: GPL-3.0-or-later

// Names and help of fields. What moves, what it must do, and what it hangs on: supply to duty.

#include "text/field_words.h"
#include "text/word_table.h"

namespace feedwright::words {

namespace {

constexpr FieldWords field_words[] = {
    {"supply.voltage", QT_TRANSLATE_NOOP("Words", "supply voltage"),
     QT_TRANSLATE_NOOP("Words", "Voltage of the motor supply. A stepper keeps its torque to higher "
                                "speeds with more; stay within what drive and motor allow.")},
    {"supply.power", QT_TRANSLATE_NOOP("Words", "supply power"),
     QT_TRANSLATE_NOOP("Words", "Power the supply can give for ever, from its label.")},
    {"supply.capacitance", QT_TRANSLATE_NOOP("Words", "capacitance"),
     QT_TRANSLATE_NOOP("Words", "All capacitors on the drives' side of the supply, the drives' own "
                                "included; they take up what braking sends back.")},
    {"supply.voltage_limit", QT_TRANSLATE_NOOP("Words", "voltage limit"),
     QT_TRANSLATE_NOOP("Words",
                       "Voltage at which the first drive switches off, from its data sheet.")},
    {"controller.step_rate_limit", QT_TRANSLATE_NOOP("Words", "step rate limit"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Most steps a second the controller can send. More microsteps use it up sooner.")},
    {"spindle.power", QT_TRANSLATE_NOOP("Words", "spindle power"),
     QT_TRANSLATE_NOOP("Words",
                       "Power of the spindle motor at its speed in the cut. Only load cases "
                       "reckoned from tool and material go by it; left open, no cut is "
                       "limited by it.")},
    {"spindle.efficiency", QT_TRANSLATE_NOOP("Words", "spindle efficiency"),
     QT_TRANSLATE_NOOP("Words", "Share of the spindle's power that reaches the tool.")},
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
     QT_TRANSLATE_NOOP(
         "Words", "From the motor-end bearing to the nut at the start of travel. Left open, the "
                  "travel lies in the middle of the screw. A hauling belt has no use for it.")},
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
    {"targets.reversal_error", QT_TRANSLATE_NOOP("Words", "allowed reversal error"),
     QT_TRANSLATE_NOOP("Words", "Most the carriage may be off when its direction changes: play, "
                                "wind-up and the motor's load angle together.")},
    {"targets.cutting_error", QT_TRANSLATE_NOOP("Words", "allowed error under cut"),
     QT_TRANSLATE_NOOP("Words", "Most the cutting thrust may push the carriage off its place.")},
    {"targets.life", QT_TRANSLATE_NOOP("Words", "wanted life"),
     QT_TRANSLATE_NOOP("Words", "Hours of the duty cycle the ball screw should last.")},
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
    {"guides.block_spacing", QT_TRANSLATE_NOOP("Words", "block spacing"),
     QT_TRANSLATE_NOOP("Words", "Along the travel, centre to centre of the outermost blocks on one "
                                "rail; it takes the couple of a load off the drive's line.")},
    {"guides.block_stiffness", QT_TRANSLATE_NOOP("Words", "block side stiffness"),
     QT_TRANSLATE_NOOP("Words", "Sideways stiffness of one block, from its maker; for the skew.")},
    {"guides.block_rating", QT_TRANSLATE_NOOP("Words", "block dynamic rating"),
     QT_TRANSLATE_NOOP("Words", "Basic dynamic rating of one block for 100 km of travel, from its "
                                "maker; for the guides' life.")},
    {"sides.layout", QT_TRANSLATE_NOOP("Words", "layout"),
     QT_TRANSLATE_NOOP("Words", "One drive in the middle, a motor and drive on each side, or one "
                                "motor that turns both sides by a belt loop.")},
    {"sides.pairing", QT_TRANSLATE_NOOP("Words", "two screws"),
     QT_TRANSLATE_NOOP("Words", "Whether two screws share the load, or are wound against each "
                                "other to take out the play.")},
    {"sides.spacing", QT_TRANSLATE_NOOP("Words", "spacing of the sides"),
     QT_TRANSLATE_NOOP("Words",
                       "Between the two screws or belts; with one drive, between the rails.")},
    {"sides.crossing_mass", QT_TRANSLATE_NOOP("Words", "mass that crosses"),
     QT_TRANSLATE_NOOP("Words", "The part of the moving mass that travels across, from side to "
                                "side; not more than the moving mass.")},
    {"sides.cross_travel", QT_TRANSLATE_NOOP("Words", "cross travel"),
     QT_TRANSLATE_NOOP(
         "Words",
         "How far that mass and the tool travel across, taken as centred between the sides.")},
    {"duty.load_cases", QT_TRANSLATE_NOOP("Words", "load cases"),
     QT_TRANSLATE_NOOP("Words", "How the axis is loaded while it cuts, and for how long in a "
                                "cycle. Give the thrust, or the whole cut to reckon it from.")},
    {"duty.moves", QT_TRANSLATE_NOOP("Words", "moves"),
     QT_TRANSLATE_NOOP("Words", "Moves without cutting in a cycle and the rest after each; a move "
                                "there and back is two rows.")},
    {"duty.jerk", QT_TRANSLATE_NOOP("Words", "jerk limit"),
     QT_TRANSLATE_NOOP("Words", "How fast the controller lets acceleration change. Left open, "
                                "acceleration starts at once.")},
};

} // namespace

std::span<const FieldWords> motion_field_words() {
  return field_words;
}

} // namespace feedwright::words
