// SPDX-License-Identifier: GPL-3.0-or-later

// What stands in a working besides fields and results: constants and equations solved elsewhere.

#include "text/word_table.h"
#include "text/words.h"

namespace feedwright::words {

namespace {

constexpr Word constants[] = {
    {"0", QT_TRANSLATE_NOOP("Words", "nothing")},
    {"1", QT_TRANSLATE_NOOP("Words", "the whole, not divided or geared")},
    {"2", QT_TRANSLATE_NOOP("Words", "two drives on one motor")},
    {"½", QT_TRANSLATE_NOOP("Words", "half to each side")},
    {"100 km", QT_TRANSLATE_NOOP("Words", "travel that a block's rating is given for")},
    {"g", QT_TRANSLATE_NOOP("Words", "standard acceleration of free fall")},
    {"λ", QT_TRANSLATE_NOOP("Words", "eigenvalue of the beam with these ends")},
    {"C", QT_TRANSLATE_NOOP("Words", "end condition constant of the column")},
    {"F", QT_TRANSLATE_NOOP("Words", "axial force on the nut, or its preload")},
    {"L_a", QT_TRANSLATE_NOOP("Words", "free length of belt one way round")},
    {"L_b", QT_TRANSLATE_NOOP("Words", "free length of belt the other way round")},
    {"L_s", QT_TRANSLATE_NOOP("Words", "length of the belt's span")},
    {"N_r", QT_TRANSLATE_NOOP("Words", "teeth of the rotor, four full steps each")},
    {"T_0", QT_TRANSLATE_NOOP("Words", "motor torque at standstill")},
    {"T_d", QT_TRANSLATE_NOOP("Words", "detent torque of the motor")},
    {"T_h", QT_TRANSLATE_NOOP("Words", "holding torque of the motor")},
    {"T_st", QT_TRANSLATE_NOOP("Words", "largest torque from the motor into coupling or belt")},
    {"V_300p", QT_TRANSLATE_NOOP("Words", "lead variation of the grade over 300 mm")},
    {"κ_t", QT_TRANSLATE_NOOP("Words", "largest share of the belt's length on its tight side")},
    {"n", QT_TRANSLATE_NOOP("Words", "number of drives side by side")},
    {"n_end", QT_TRANSLATE_NOOP("Words", "end of the motor's curve")},
    {"F_stand", QT_TRANSLATE_NOOP("Words", "what stretch or heat already takes of the bearing")},
    {"F_cut", QT_TRANSLATE_NOOP("Words", "thrust of the load case with the least reserve")},
    {"v_case", QT_TRANSLATE_NOOP("Words", "feed of the load case with the least reserve")},
    {"T_end", QT_TRANSLATE_NOOP("Words", "usable torque at the end of the motor's curve")},
    {"T_po", QT_TRANSLATE_NOOP("Words", "pull-out torque of the motor at that speed")},
    {"x_n", QT_TRANSLATE_NOOP("Words", "place of the nut, from the motor-end bearing")},
    {"F_case", QT_TRANSLATE_NOOP("Words", "force of the hardest load case")},
    {"η_m", QT_TRANSLATE_NOOP("Words", "usual efficiency of a servo with its drive, from memory")},
    {"N_m", QT_TRANSLATE_NOOP("Words", "number of motors")},
    {"n_t", QT_TRANSLATE_NOOP("Words", "command steps for one turn of the motor")},
    {"n_Σ", QT_TRANSLATE_NOOP("Words", "turns of the screw in a cycle")},
    {"r_1", QT_TRANSLATE_NOOP("Words", "pitch radius of the motor pulley")},
    {"t_Σ", QT_TRANSLATE_NOOP("Words", "time of a cycle")},
    {"x", QT_TRANSLATE_NOOP("Words", "length of screw from bearing to nut, at its weakest")},
    {"l_t", QT_TRANSLATE_NOOP("Words", "length of screw that twists, the nut at its farthest")},
    {"z_1", QT_TRANSLATE_NOOP("Words", "teeth of the motor pulley")},
    {"z_2", QT_TRANSLATE_NOOP("Words", "teeth of the screw pulley")},
    {"z_min", QT_TRANSLATE_NOOP("Words", "teeth of the smaller pulley")},
    {"φ_1", QT_TRANSLATE_NOOP("Words", "arc of contact on the motor pulley")},
    {"φ_min", QT_TRANSLATE_NOOP("Words", "arc of contact on the smaller pulley, in radians")},
    {"η_c", QT_TRANSLATE_NOOP("Words", "a coupling loses nothing")},
};

constexpr Word solved_equations[] = {
    {"belt_length", QT_TRANSLATE_NOOP("Words", "f: the distance at which the belt's whole length "
                                               "goes round both pulleys, found by root finding")},
    {"loop_length",
     QT_TRANSLATE_NOOP("Words", "f: the place of the slide at which the belt's whole "
                                "length goes round all pulleys, found by root "
                                "finding")},
    {"loop_mesh", QT_TRANSLATE_NOOP("Words", "f: the fewest teeth in mesh of the driven pulleys, "
                                             "from their arcs of contact")},
    {"idlers", QT_TRANSLATE_NOOP("Words", "f: the idlers as solid discs, each by the square of the "
                                          "motor pulley's diameter over its own")},
    {"belt_pull", QT_TRANSLATE_NOOP("Words", "f: the lower of what teeth and cords carry at that "
                                             "speed, from the maker's figures or ISO 5295")},
    {"mesh_factor", QT_TRANSLATE_NOOP("Words", "f: one from six teeth in mesh up, a fifth less for "
                                               "each tooth fewer")},
    {"motor_points",
     QT_TRANSLATE_NOOP("Words", "f: the motor's torque at that speed: its points joined by a curve "
                                "that never overshoots them (monotone cubic), less in proportion "
                                "where the drive is set below the rated current")},
    {"motor_points_taken_down",
     QT_TRANSLATE_NOOP(
         "Words", "f: the motor's torque at that speed: its points, their speeds times "
                  "(U − R I)/(U_p + R I) for the lower supply, U_p the voltage they were taken "
                  "at, R I the winding's drop at the peak of the current (0 where not known), "
                  "joined by a curve that never overshoots them (monotone cubic), less in "
                  "proportion where the drive is set below the rated current")},
    {"motor_points_fitted",
     QT_TRANSLATE_NOOP("Words",
                       "f: the motor's torque at that speed, from its ratings at the supply's "
                       "voltage, with the inductance and the loss that meet its points best")},
    {"ratings_by_current",
     QT_TRANSLATE_NOOP("Words",
                       "f: K I − T_d, for at that speed the current alone limits. "
                       "K = T_h/(√2 I_r); I is the peak of the drive's current, √2 times an "
                       "effective one")},
    {"ratings_by_voltage",
     QT_TRANSLATE_NOOP("Words",
                       "f: K (U/Z − K ω R/Z²) − T_d, for at that speed the voltage alone limits. "
                       "K = T_h/(√2 I_r); ω is the speed in radians a second, X = N_r ω L, "
                       "Z² = R² + X²; never less than nothing")},
    {"ratings_by_both",
     QT_TRANSLATE_NOOP("Words",
                       "f: K i − T_d, for at that speed current and voltage both limit. "
                       "K = T_h/(√2 I_r); I is the peak of the drive's current, √2 times an "
                       "effective one; ω is the speed in radians a second, X = N_r ω L, "
                       "Z² = R² + X², q = −K ω R/Z², d = K ω X/Z², c² = q² + d², "
                       "a = (I² − U²/Z² + c²)/(2 c); i = (q a + d √(I² − a²))/c; never less than "
                       "nothing")},
    {"torque_meets_need",
     QT_TRANSLATE_NOOP("Words", "f: the lowest motor speed at which the usable "
                                "torque has fallen to the need, found by root finding")},
    {"curve_ends_above_need",
     QT_TRANSLATE_NOOP("Words", "f: the end of the motor's known curve. The usable torque there is "
                                "still above the need, so the feed that torque allows is this or "
                                "more; what limits is the end of the curve")},
    {"best_lead", QT_TRANSLATE_NOOP("Words", "f: the lead at which the acceleration is greatest, "
                                             "torque, load and inertia as they are")},
    {"best_reduction",
     QT_TRANSLATE_NOOP("Words", "f: the reduction at which the acceleration is greatest, torque, "
                                "load and inertia as they are")},
    {"slide_travel",
     QT_TRANSLATE_NOOP("Words", "f: the slide's way until the belt's path is that much longer or "
                                "shorter, found by root finding")},
    {"case_reserve",
     QT_TRANSLATE_NOOP("Words",
                       "f: the least ratio of usable torque to the torque a load case asks "
                       "at its feed")},
    {"case_past_curve",
     QT_TRANSLATE_NOOP("Words", "f: nothing, for at that feed the motor's torque is not known or "
                                "none is left")},
    {"pair_capacity",
     QT_TRANSLATE_NOOP("Words", "f: the outer load under which the loaded half of the pair carries "
                                "that much, by ISO 3408-5")},
    {"pair_load",
     QT_TRANSLATE_NOOP("Words", "f: what the loaded one of two screws wound against each other "
                                "carries, by ISO 3408-5")},
    {"preload_holds_to", QT_TRANSLATE_NOOP("Words", "f: 2√2 times the preload, where the relieved "
                                                    "half comes loose")},
    {"nut_stiffness",
     QT_TRANSLATE_NOOP("Words", "f: 0.8 times the listed stiffness and the cube root of the load "
                                "over 30 % of the dynamic rating, or 10 % if preloaded")},
    {"torsional_frequency",
     QT_TRANSLATE_NOOP("Words", "f: two inertias that swing against each other on a spring")},
    {"load_angle", QT_TRANSLATE_NOOP("Words", "f: the arcsine of torque over pull-out torque, over "
                                              "the rotor's teeth, as travel")},
    {"root_sum", QT_TRANSLATE_NOOP("Words", "f: the root of the sum of the squares")},
    {"mean_load", QT_TRANSLATE_NOOP("Words", "f: the cubic mean of the axial force over the turns "
                                             "of the cycle")},
    {"screw_life",
     QT_TRANSLATE_NOOP("Words", "f: a million turns times the cube of the rating over factor times "
                                "mean load, less for more reliability or a preloaded pair")},
    {"least_time", QT_TRANSLATE_NOOP("Words", "f: the time of the quickest move within feed, "
                                              "acceleration and jerk")},
    {"rms_torque",
     QT_TRANSLATE_NOOP("Words", "f: the root of the mean square of the motor's torque "
                                "over the cycle")},
};

} // namespace

QString constant_name(std::string_view symbol) {
  return looked_up(constants, symbol);
}

QString solved_by(std::string_view equation) {
  return looked_up(solved_equations, equation);
}

} // namespace feedwright::words
