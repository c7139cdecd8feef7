// SPDX-License-Identifier: GPL-3.0-or-later

// Names and help of fields. Couplings and belts between motor and drive.

#include "text/field_words.h"
#include "text/word_table.h"

namespace feedwright::words {

namespace {

constexpr FieldWords field_words[] = {
    {"transmission.inertia", QT_TRANSLATE_NOOP("Words", "coupling inertia"),
     QT_TRANSLATE_NOOP("Words", "Moment of inertia of the coupling.")},
    {"transmission.torque_limit", QT_TRANSLATE_NOOP("Words", "coupling torque limit"),
     QT_TRANSLATE_NOOP("Words", "Most torque the coupling may hand on, from its maker.")},
    {"transmission.stiffness", QT_TRANSLATE_NOOP("Words", "torsional stiffness"),
     QT_TRANSLATE_NOOP("Words", "Torque for a radian of twist of the coupling, from its maker.")},
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
    {"transmission.screw_pulley_teeth", QT_TRANSLATE_NOOP("Words", "driven pulley teeth"),
     QT_TRANSLATE_NOOP("Words",
                       "Teeth of the pulley on the screw, or on the shaft of a hauling belt.")},
    {"transmission.belt_teeth", QT_TRANSLATE_NOOP("Words", "belt teeth"),
     QT_TRANSLATE_NOOP("Words", "Teeth of the whole belt; with the pulleys they set the centre "
                                "distance, or the place of a loop's slide.")},
    {"transmission.motor_pulley_inertia", QT_TRANSLATE_NOOP("Words", "motor pulley inertia"),
     QT_TRANSLATE_NOOP("Words", "Left open, a solid disc of the pitch diameter is taken.")},
    {"transmission.screw_pulley_inertia", QT_TRANSLATE_NOOP("Words", "screw pulley inertia"),
     QT_TRANSLATE_NOOP("Words", "Left open, a solid disc of the pitch diameter is taken.")},
    {"transmission.pulleys", QT_TRANSLATE_NOOP("Words", "pulleys"),
     QT_TRANSLATE_NOOP("Words", "Every pulley and idler in belt order, seen along the shafts. One "
                                "sits on the motor, one or two on screws.")},
    {"transmission.sliding_pulley", QT_TRANSLATE_NOOP("Words", "sliding pulley"),
     QT_TRANSLATE_NOOP("Words",
                       "Number of the pulley, in the table, that slides to take up the belt.")},
    {"transmission.slide_direction", QT_TRANSLATE_NOOP("Words", "slide direction"),
     QT_TRANSLATE_NOOP("Words", "Direction the slide goes forth in: 0° along x, 90° along y.")},
    {"transmission.slide_back", QT_TRANSLATE_NOOP("Words", "slide travel back"),
     QT_TRANSLATE_NOOP("Words", "How far the sliding pulley can go back from its drawn place.")},
    {"transmission.slide_forth", QT_TRANSLATE_NOOP("Words", "slide travel forth"),
     QT_TRANSLATE_NOOP("Words", "How far the sliding pulley can go forth from its drawn place.")},
    {"transmission.back_height", QT_TRANSLATE_NOOP("Words", "pitch line to back"),
     QT_TRANSLATE_NOOP(
         "Words", "From the belt's pitch line to its smooth back; it sets where rollers touch.")},
    {"transmission.efficiency", QT_TRANSLATE_NOOP("Words", "belt efficiency"),
     QT_TRANSLATE_NOOP("Words", "Share of the power that comes through the belt stage.")},
    {"transmission.mass_per_length", QT_TRANSLATE_NOOP("Words", "belt mass per length"),
     QT_TRANSLATE_NOOP("Words", "Mass of a metre of the belt at its width.")},
    {"transmission.pulley_density", QT_TRANSLATE_NOOP("Words", "pulley density"),
     QT_TRANSLATE_NOOP("Words",
                       "Of the pulleys' material: aluminium 2700 kg/m³, steel 7850 kg/m³.")},
    {"transmission.speed_limit", QT_TRANSLATE_NOOP("Words", "belt speed limit"),
     QT_TRANSLATE_NOOP("Words", "Fastest the belt may run, from its maker.")},
    {"transmission.specific_stiffness", QT_TRANSLATE_NOOP("Words", "belt specific stiffness"),
     QT_TRANSLATE_NOOP("Words", "Pull that would stretch the belt to twice its length, at its "
                                "width; a span's stiffness times its length.")},
    {"transmission.heard_note", QT_TRANSLATE_NOOP("Words", "heard note"),
     QT_TRANSLATE_NOOP("Words", "Tone of the longest free span when plucked, from a tuning app or "
                                "microphone; the pull follows from it.")},
    {"transmission.tension", QT_TRANSLATE_NOOP("Words", "set belt tension"),
     QT_TRANSLATE_NOOP("Words", "Pull each span is set to at rest. Left open, the least that keeps "
                                "the slack side tight counts.")},
    {"transmission.tooth_gap", QT_TRANSLATE_NOOP("Words", "tooth gap"),
     QT_TRANSLATE_NOOP("Words", "Play of the belt's teeth in the pulley's gaps, at the pitch line, "
                                "from the profile's maker.")},
    {"transmission.allowable_pull", QT_TRANSLATE_NOOP("Words", "allowable cord pull"),
     QT_TRANSLATE_NOOP("Words",
                       "Pull the belt's cords carry for ever, at its width, from its maker.")},
    {"transmission.rated_pull", QT_TRANSLATE_NOOP("Words", "rated pull, base width"),
     QT_TRANSLATE_NOOP("Words", "Allowable pull at the base width, as ISO 5295 gives it; with the "
                                "base width it sets the strength.")},
    {"transmission.base_width", QT_TRANSLATE_NOOP("Words", "base width"),
     QT_TRANSLATE_NOOP("Words", "Width the rated pull is given for.")},
    {"transmission.tooth_loads", QT_TRANSLATE_NOOP("Words", "load of a tooth"),
     QT_TRANSLATE_NOOP("Words", "What one tooth in mesh carries for each belt width at rising "
                                "pulley speeds, from the maker; it counts before the rated pull.")},
    {"transmission.most_teeth_counted", QT_TRANSLATE_NOOP("Words", "most teeth counted"),
     QT_TRANSLATE_NOOP("Words", "Teeth in mesh beyond this number carry no more; 12 is usual.")},
    {"transmission.least_teeth", QT_TRANSLATE_NOOP("Words", "least pulley teeth"),
     QT_TRANSLATE_NOOP("Words", "Fewest teeth a pulley may have for this belt, from its maker.")},
};

} // namespace

std::span<const FieldWords> transmission_field_words() {
  return field_words;
}

} // namespace feedwright::words
