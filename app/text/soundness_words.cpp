// SPDX-License-Identifier: GPL-3.0-or-later

// Why a machine cannot be computed: sentences that say what to change.

#include "text/soundness_words.h"
#include "text/word_table.h"

namespace feedwright::words {

namespace {

struct SoundnessWords {
  FaultCode code;
  const char* text; ///< %1 and %2 are the pulleys or the row it is about
};

constexpr const char* no_loop =
    QT_TRANSLATE_NOOP("Words", "These pulleys make no loop; check their number, places and sizes.");

constexpr const char* unusable = QT_TRANSLATE_NOOP("Words", "This cannot be used.");

using enum FaultCode;
constexpr SoundnessWords sentences[] = {
    {ends_do_not_hold,
     QT_TRANSLATE_NOOP(
         "Words",
         "These end supports leave the screw loose; fix at least one end, or support both.")},
    {core_not_below_nominal,
     QT_TRANSLATE_NOOP("Words", "The core diameter must be smaller than the nominal diameter.")},
    {travel_beyond_span,
     QT_TRANSLATE_NOOP("Words",
                       "The travel must be shorter than the screw's length between bearings.")},
    {nut_beyond_span,
     QT_TRANSLATE_NOOP("Words", "From its start the nut would travel past the bearings; start "
                                "earlier or make the screw longer.")},
    {curve_too_short, QT_TRANSLATE_NOOP("Words", "The torque curve needs at least two points.")},
    {curve_not_rising,
     QT_TRANSLATE_NOOP("Words", "The speeds of the torque curve must rise from point to point.")},
    {curve_negative,
     QT_TRANSLATE_NOOP("Words", "Speeds and torques of the torque curve must not be below zero.")},
    {belt_too_short,
     QT_TRANSLATE_NOOP("Words", "The belt is too short to go round both pulleys; use more belt "
                                "teeth or smaller pulleys.")},
    {belt_too_long,
     QT_TRANSLATE_NOOP("Words", "The belt is so long that no sensible centre distance fits it; "
                                "check its teeth.")},
    {top_speed_below_rated,
     QT_TRANSLATE_NOOP("Words", "The servo's top speed must not be below its rated speed.")},
    {no_axes, QT_TRANSLATE_NOOP("Words", "The machine has no axis; it needs at least one.")},
    {duplicate_letter,
     QT_TRANSLATE_NOOP("Words", "Another axis has the same letter; each needs its own.")},
    {thread_locks_forward,
     QT_TRANSLATE_NOOP("Words", "With this much friction the thread cannot be driven at all; check "
                                "the friction and the lead.")},
    {nut_without_inertia,
     QT_TRANSLATE_NOOP("Words",
                       "The nut turns, but its inertia is open; give it with its pulley's.")},
    {bore_not_below_core,
     QT_TRANSLATE_NOOP("Words", "The bore must be smaller than the core diameter.")},
    {pitch_not_above_core,
     QT_TRANSLATE_NOOP("Words", "The pitch diameter must be larger than the core diameter.")},
    {stretch_without_fixed_ends,
     QT_TRANSLATE_NOOP("Words", "A screw can be stretched only between two fixed ends; fix both or "
                                "set the stretch to zero.")},
    {crossing_beyond_mass,
     QT_TRANSLATE_NOOP("Words", "The mass that crosses is part of the moving mass; it must not be "
                                "more.")},
    {spacing_missing,
     QT_TRANSLATE_NOOP("Words", "With two sides and a cross travel the spacing of the sides must "
                                "be given.")},
    {block_spacing_missing,
     QT_TRANSLATE_NOOP("Words", "With one drive and a cross travel the guides take the couple; "
                                "give the block spacing.")},
    {opposed_without_pair,
     QT_TRANSLATE_NOOP("Words", "One screw cannot be wound against another; choose a layout with "
                                "two, or let them share the load.")},
    {opposed_by_two_motors,
     QT_TRANSLATE_NOOP("Words",
                       "Two motors would have to hold the preload against each other; drive "
                       "screws wound against each other with one motor and a belt loop.")},
    {preload_missing,
     QT_TRANSLATE_NOOP("Words", "Nuts or screws are wound against each other; give the preload.")},
    {loop_needed,
     QT_TRANSLATE_NOOP("Words", "One motor for both sides needs a belt loop with two pulleys on "
                                "screws.")},
    {loop_not_wanted,
     QT_TRANSLATE_NOOP("Words", "The belt loop drives two screws; choose one motor for both, "
                                "or take one pulley off.")},
    {loop_no_single_motor,
     QT_TRANSLATE_NOOP("Words", "A belt loop needs one pulley on a motor, no more and no less.")},
    {loop_screws, QT_TRANSLATE_NOOP("Words", "A belt loop needs one or two pulleys on screws.")},
    {loop_pulley_without_size,
     QT_TRANSLATE_NOOP("Words", "Pulley %1 has no size; give its teeth, or the diameter of a "
                                "smooth idler.")},
    {loop_screw_teeth_differ,
     QT_TRANSLATE_NOOP("Words", "Pulley %1 has other teeth than the first screw's; two screws must "
                                "turn alike.")},
    {loop_driven_on_back,
     QT_TRANSLATE_NOOP("Words", "Pulley %1 would slip on the belt's smooth back; put it on the "
                                "toothed face or make it an idler.")},
    {loop_no_such_slide,
     QT_TRANSLATE_NOOP("Words", "The table has no pulley of the sliding pulley's number.")},
    {loop_overlap, QT_TRANSLATE_NOOP("Words", "Pulleys %1 and %2 overlap; move them apart.")},
    {loop_wrong_side,
     QT_TRANSLATE_NOOP("Words", "The belt does not touch pulley %1 on the face it is given; choose "
                                "the other face or move it.")},
    {loop_crossing,
     QT_TRANSLATE_NOOP("Words", "The belt crosses itself: its spans after pulleys %1 and %2 meet. "
                                "List the pulleys in belt order or move them.")},
    {loop_span_through_pulley,
     QT_TRANSLATE_NOOP("Words", "The belt's span after pulley %1 runs through pulley %2; move one "
                                "of them or list them in belt order.")},
    {loop_belt_does_not_fit,
     QT_TRANSLATE_NOOP("Words", "The belt fits at no place of the slide; change its teeth, the "
                                "slide's travel or the pulleys.")},
    {hauling_belt_too_short,
     QT_TRANSLATE_NOOP("Words", "The belt is too short; it must go twice along the travel and "
                                "round the pulleys.")},
    {load_case_without_thrust,
     QT_TRANSLATE_NOOP("Words", "Load case %1 has neither a thrust nor a whole cut; give the "
                                "thrust, or material, tool and cut in full. A tool cuts no wider "
                                "than its diameter.")},
};

const char* sentence_of(const Fault& fault) {
  // Two pulleys overlap; one and the same is a loop that could not be made at all.
  if (fault.code == loop_overlap && fault.first == fault.second) {
    return no_loop;
  }
  for (const SoundnessWords& words : sentences) {
    if (words.code == fault.code) {
      return words.text;
    }
  }
  return unusable;
}

} // namespace

QString soundness_text(const Fault& fault) {
  if (fault.code == loop_belt_does_not_fit && !fault.found.empty()) {
    return translated(QT_TRANSLATE_NOOP("Words", "The belt fits at no place of the slide; those of "
                                                 "%1 teeth would."))
        .arg(QString::fromStdString(fault.found));
  }
  QString text = translated(sentence_of(fault));
  if (text.contains(QStringLiteral("%1"))) {
    text = text.arg(fault.first);
  }
  if (text.contains(QStringLiteral("%2"))) {
    text = text.arg(fault.second);
  }
  return text;
}

} // namespace feedwright::words
