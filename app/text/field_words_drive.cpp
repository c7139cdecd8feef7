// SPDX-License-Identifier: GPL-3.0-or-later

// Names and help of fields. Screws and hauling belts; what both have is worded to fit both.

#include "text/field_words.h"
#include "text/word_table.h"

namespace feedwright::words {

namespace {

constexpr FieldWords field_words[] = {
    {"drive.thread", QT_TRANSLATE_NOOP("Words", "thread"),
     QT_TRANSLATE_NOOP("Words", "Balls roll and drive back easily; a trapezoidal thread slides and "
                                "wastes more, but may hold by itself.")},
    {"drive.nominal_diameter", QT_TRANSLATE_NOOP("Words", "nominal diameter"),
     QT_TRANSLATE_NOOP("Words",
                       "The diameter the screw is sold by; its inertia is taken from it.")},
    {"drive.core_diameter", QT_TRANSLATE_NOOP("Words", "core diameter"),
     QT_TRANSLATE_NOOP(
         "Words",
         "At the bottom of the thread. Whip and buckling go by it; look it up, do not guess.")},
    {"drive.pitch_diameter", QT_TRANSLATE_NOOP("Words", "pitch diameter"),
     QT_TRANSLATE_NOOP(
         "Words", "Ball-circle diameter of a ball screw, pitch diameter of a trapezoidal one.")},
    {"drive.lead", QT_TRANSLATE_NOOP("Words", "lead"),
     QT_TRANSLATE_NOOP("Words", "Travel for one turn of the screw. More lead turns the screw "
                                "slower for the same feed and asks more torque of the motor.")},
    {"drive.starts", QT_TRANSLATE_NOOP("Words", "starts"),
     QT_TRANSLATE_NOOP("Words",
                       "Threads side by side: lead over starts is the thread's own pitch.")},
    {"drive.driven", QT_TRANSLATE_NOOP("Words", "what turns"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Usually the screw. A turning nut lets the screw stand still, so that it cannot whip.")},
    {"drive.nut_inertia", QT_TRANSLATE_NOOP("Words", "inertia of turning nut"),
     QT_TRANSLATE_NOOP("Words",
                       "Of the nut with its pulley and bearings; needed when the nut turns.")},
    {"drive.bore", QT_TRANSLATE_NOOP("Words", "bore"),
     QT_TRANSLATE_NOOP("Words", "Bore of a hollow screw; zero for a solid one.")},
    {"drive.span", QT_TRANSLATE_NOOP("Words", "length between bearings"),
     QT_TRANSLATE_NOOP("Words",
                       "Whip falls with its square: half the length allows four times the speed.")},
    {"drive.overall_length", QT_TRANSLATE_NOOP("Words", "overall length"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Of the whole shaft, for its inertia. Left open, the length between bearings counts.")},
    {"drive.motor_end", QT_TRANSLATE_NOOP("Words", "motor end"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Fixed holds place, thrust and direction (a bearing pair); supported holds place only.")},
    {"drive.far_end", QT_TRANSLATE_NOOP("Words", "far end"),
     QT_TRANSLATE_NOOP("Words",
                       "A fixed far end lets a long screw turn faster than a supported one.")},
    {"drive.whip_span", QT_TRANSLATE_NOOP("Words", "length that whips"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Between the bearings is the safe reading. Nut to bearing counts the nut as a support.")},
    {"drive.thread_friction", QT_TRANSLATE_NOOP("Words", "thread friction"),
     QT_TRANSLATE_NOOP("Words", "Friction coefficient in the thread: about 0.01 for balls, 0.1 to "
                                "0.2 for greased trapezoidal threads.")},
    {"drive.efficiency", QT_TRANSLATE_NOOP("Words", "efficiency"),
     QT_TRANSLATE_NOOP("Words", "Share of the power that comes through. Of a screw, a measured "
                                "figure counts instead of the friction.")},
    {"drive.nuts", QT_TRANSLATE_NOOP("Words", "nuts"),
     QT_TRANSLATE_NOOP("Words",
                       "Two nuts wound against each other have no play, but cost drag and life.")},
    {"drive.nut_length", QT_TRANSLATE_NOOP("Words", "nut length"),
     QT_TRANSLATE_NOOP("Words", "Of the whole nut along the screw; it takes from the travel. Left "
                                "open, twice the diameter and twice the lead are reckoned with.")},
    {"drive.preload", QT_TRANSLATE_NOOP("Words", "preload"),
     QT_TRANSLATE_NOOP("Words", "Force with which two nuts or two screws are wound against each "
                                "other; of a preloaded nut, as its maker gives it.")},
    {"drive.preload_drag", QT_TRANSLATE_NOOP("Words", "preload drag"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Torque a preloaded nut costs at any load. Left open, it is reckoned from the preload.")},
    {"drive.collar_friction", QT_TRANSLATE_NOOP("Words", "collar friction"),
     QT_TRANSLATE_NOOP("Words", "Friction coefficient of a plain thrust washer; zero where balls "
                                "or rollers take the thrust.")},
    {"drive.collar_diameter", QT_TRANSLATE_NOOP("Words", "collar diameter"),
     QT_TRANSLATE_NOOP("Words", "Mean diameter of the thrust washer's rubbing face.")},
    {"drive.bearing_drag", QT_TRANSLATE_NOOP("Words", "bearing drag"),
     QT_TRANSLATE_NOOP("Words",
                       "Torque the bearings and their seals cost at the screw or pulley.")},
    {"drive.backlash", QT_TRANSLATE_NOOP("Words", "backlash"),
     QT_TRANSLATE_NOOP("Words", "Axial play of the nut. Inexpensive rolled screws show about 50 "
                                "µm; preloaded nuts none.")},
    {"drive.ball_speed_limit", QT_TRANSLATE_NOOP("Words", "diameter × speed limit"),
     QT_TRANSLATE_NOOP("Words", "Ball-circle diameter times speed that the nut's ball return "
                                "bears: 70000 mm·rpm is usual for common rolled nuts.")},
    {"drive.speed_limit", QT_TRANSLATE_NOOP("Words", "speed limit"),
     QT_TRANSLATE_NOOP("Words", "Fastest a screw's nut or bearings may turn, or fastest a hauling "
                                "belt may run, from its maker.")},
    {"drive.static_rating", QT_TRANSLATE_NOOP("Words", "static load rating"),
     QT_TRANSLATE_NOOP("Words", "The nut's static rating C0a, from its maker.")},
    {"drive.dynamic_rating", QT_TRANSLATE_NOOP("Words", "dynamic load rating"),
     QT_TRANSLATE_NOOP(
         "Words",
         "The nut's dynamic rating Ca for a million turns, from its maker; for the life.")},
    {"drive.load_factor", QT_TRANSLATE_NOOP("Words", "load factor"),
     QT_TRANSLATE_NOOP(
         "Words",
         "The mean load is multiplied by it: 1 to 1.2 in smooth running, up to 3 with shocks.")},
    {"drive.reliability", QT_TRANSLATE_NOOP("Words", "reliability"),
     QT_TRANSLATE_NOOP(
         "Words", "Share of screws that should reach the life; 90 % is what catalogues give.")},
    {"drive.nut_stiffness", QT_TRANSLATE_NOOP("Words", "nut stiffness"),
     QT_TRANSLATE_NOOP(
         "Words",
         "As catalogues give it: at 30 % of the dynamic rating, or of a preloaded nut at 10 %.")},
    {"drive.bearing_stiffness", QT_TRANSLATE_NOOP("Words", "bearing stiffness"),
     QT_TRANSLATE_NOOP("Words", "Axial stiffness of one fixed bearing set, from its maker.")},
    {"drive.grade", QT_TRANSLATE_NOOP("Words", "lead accuracy grade"),
     QT_TRANSLATE_NOOP("Words", "Grade by ISO 3408-3; a smaller number is more accurate. Rolled "
                                "screws are often 7 or 10.")},
    {"drive.travel_deviation", QT_TRANSLATE_NOOP("Words", "travel deviation"),
     QT_TRANSLATE_NOOP(
         "Words", "Over the travel, from the supplier's chart; it counts instead of the grade.")},
    {"drive.temperature_rise", QT_TRANSLATE_NOOP("Words", "warmer than the frame"),
     QT_TRANSLATE_NOOP("Words", "How much warmer than its frame the screw gets in work.")},
    {"drive.expansion", QT_TRANSLATE_NOOP("Words", "thermal expansion"),
     QT_TRANSLATE_NOOP("Words", "How much the screw's steel grows for each degree.")},
    {"drive.stretch", QT_TRANSLATE_NOOP("Words", "stretch"),
     QT_TRANSLATE_NOOP("Words", "Pull the screw is stretched with between two fixed ends, so that "
                                "warmth does not bend it.")},
    {"drive.bearing_thrust_limit", QT_TRANSLATE_NOOP("Words", "bearing thrust limit"),
     QT_TRANSLATE_NOOP("Words", "Most axial force the end bearing may carry.")},
    {"drive.whip_share", QT_TRANSLATE_NOOP("Words", "allowed share of whip speed"),
     QT_TRANSLATE_NOOP("Words",
                       "How near the first critical speed you let the screw turn; 80 % is usual.")},
    {"drive.buckling_safety", QT_TRANSLATE_NOOP("Words", "safety against buckling"),
     QT_TRANSLATE_NOOP("Words", "The critical load is divided by it.")},
    {"drive.stress_safety", QT_TRANSLATE_NOOP("Words", "safety against yielding"),
     QT_TRANSLATE_NOOP("Words", "The yield strength is divided by it.")},
    {"drive.static_safety", QT_TRANSLATE_NOOP("Words", "safety of the static rating"),
     QT_TRANSLATE_NOOP(
         "Words",
         "The static rating is divided by it: 1 to 2 in smooth running, 2 to 3 with shocks.")},
    {"drive.elastic_modulus", QT_TRANSLATE_NOOP("Words", "elastic modulus"),
     QT_TRANSLATE_NOOP("Words", "Of the screw's steel.")},
    {"drive.shear_modulus", QT_TRANSLATE_NOOP("Words", "shear modulus"),
     QT_TRANSLATE_NOOP("Words", "Of the screw's steel; for its twist.")},
    {"drive.yield_strength", QT_TRANSLATE_NOOP("Words", "yield strength"),
     QT_TRANSLATE_NOOP("Words", "Of the screw's core.")},
    {"drive.density", QT_TRANSLATE_NOOP("Words", "density"),
     QT_TRANSLATE_NOOP("Words", "Of the screw's steel.")},
    {"drive.profile", QT_TRANSLATE_NOOP("Words", "belt profile"),
     QT_TRANSLATE_NOOP(
         "Words", "Tooth profile by its designation, such as 5M or T5; for the parts to buy.")},
    {"drive.pitch", QT_TRANSLATE_NOOP("Words", "belt pitch"),
     QT_TRANSLATE_NOOP("Words", "From tooth to tooth.")},
    {"drive.width", QT_TRANSLATE_NOOP("Words", "belt width"),
     QT_TRANSLATE_NOOP("Words", "Width of belt and pulleys.")},
    {"drive.pulley_teeth", QT_TRANSLATE_NOOP("Words", "pulley teeth"),
     QT_TRANSLATE_NOOP("Words", "Teeth of each of the two pulleys. More give more travel a turn "
                                "and ask more torque of the motor.")},
    {"drive.belt_length", QT_TRANSLATE_NOOP("Words", "belt length"),
     QT_TRANSLATE_NOOP("Words", "Of the whole belt, from clamp to clamp.")},
    {"drive.pulley_inertia", QT_TRANSLATE_NOOP("Words", "pulley inertia"),
     QT_TRANSLATE_NOOP(
         "Words",
         "Of each of the two pulleys. Left open, a solid disc of the pitch diameter is taken.")},
    {"drive.mass_per_length", QT_TRANSLATE_NOOP("Words", "belt mass per length"),
     QT_TRANSLATE_NOOP("Words", "Mass of a metre of the belt at its width.")},
    {"drive.pulley_density", QT_TRANSLATE_NOOP("Words", "pulley density"),
     QT_TRANSLATE_NOOP("Words",
                       "Of the pulleys' material: aluminium 2700 kg/m³, steel 7850 kg/m³.")},
    {"drive.specific_stiffness", QT_TRANSLATE_NOOP("Words", "belt specific stiffness"),
     QT_TRANSLATE_NOOP("Words", "Pull that would stretch the belt to twice its length, at its "
                                "width; a span's stiffness times its length.")},
    {"drive.heard_note", QT_TRANSLATE_NOOP("Words", "heard note"),
     QT_TRANSLATE_NOOP("Words", "Tone of the free run between the pulleys when plucked, from a "
                                "tuning app or microphone; the pull follows from it.")},
    {"drive.tension", QT_TRANSLATE_NOOP("Words", "set belt tension"),
     QT_TRANSLATE_NOOP("Words", "Pull each span is set to at rest. Left open, the least that keeps "
                                "the slack side tight counts.")},
    {"drive.tooth_gap", QT_TRANSLATE_NOOP("Words", "tooth gap"),
     QT_TRANSLATE_NOOP("Words", "Play of the belt's teeth in the pulley's gaps, at the pitch line, "
                                "from the profile's maker.")},
    {"drive.allowable_pull", QT_TRANSLATE_NOOP("Words", "allowable cord pull"),
     QT_TRANSLATE_NOOP("Words",
                       "Pull the belt's cords carry for ever, at its width, from its maker.")},
    {"drive.rated_pull", QT_TRANSLATE_NOOP("Words", "rated pull, base width"),
     QT_TRANSLATE_NOOP("Words", "Allowable pull at the base width, as ISO 5295 gives it; with the "
                                "base width it sets the strength.")},
    {"drive.base_width", QT_TRANSLATE_NOOP("Words", "base width"),
     QT_TRANSLATE_NOOP("Words", "Width the rated pull is given for.")},
    {"drive.tooth_loads", QT_TRANSLATE_NOOP("Words", "load of a tooth"),
     QT_TRANSLATE_NOOP("Words", "What one tooth in mesh carries for each belt width at rising "
                                "pulley speeds, from the maker; it counts before the rated pull.")},
    {"drive.most_teeth_counted", QT_TRANSLATE_NOOP("Words", "most teeth counted"),
     QT_TRANSLATE_NOOP("Words", "Teeth in mesh beyond this number carry no more; 12 is usual.")},
    {"drive.least_teeth", QT_TRANSLATE_NOOP("Words", "least pulley teeth"),
     QT_TRANSLATE_NOOP("Words", "Fewest teeth a pulley may have for this belt, from its maker.")},
};

} // namespace

std::span<const FieldWords> drive_field_words() {
  return field_words;
}

} // namespace feedwright::words
