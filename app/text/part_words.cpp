// SPDX-License-Identifier: GPL-3.0-or-later

// Names of parts, types and choices; names and help of fields by part and member.

#include "text/field_words.h"
#include "text/word_table.h"
#include "text/words.h"

#include <string>

namespace feedwright::words {

namespace {

constexpr const char* part_names[slot_count] = {
    QT_TRANSLATE_NOOP("Words", "Supply"),       QT_TRANSLATE_NOOP("Words", "Controller"),
    QT_TRANSLATE_NOOP("Words", "Spindle"),      QT_TRANSLATE_NOOP("Words", "Axis"),
    QT_TRANSLATE_NOOP("Words", "Targets"),      QT_TRANSLATE_NOOP("Words", "Carriage"),
    QT_TRANSLATE_NOOP("Words", "Guides"),       QT_TRANSLATE_NOOP("Words", "Sides"),
    QT_TRANSLATE_NOOP("Words", "Duty"),         QT_TRANSLATE_NOOP("Words", "Motor"),
    QT_TRANSLATE_NOOP("Words", "Transmission"), QT_TRANSLATE_NOOP("Words", "Final drive"),
};

constexpr Word part_types[] = {
    {"stepper_by_points", QT_TRANSLATE_NOOP("Words", "Stepper, by torque curve")},
    {"stepper_by_ratings", QT_TRANSLATE_NOOP("Words", "Stepper, by ratings")},
    {"servo", QT_TRANSLATE_NOOP("Words", "Servo motor")},
    {"coupling", QT_TRANSLATE_NOOP("Words", "Coupling")},
    {"belt", QT_TRANSLATE_NOOP("Words", "Belt and two pulleys")},
    {"belt_loop", QT_TRANSLATE_NOOP("Words", "Belt loop")},
    {"screw", QT_TRANSLATE_NOOP("Words", "Screw")},
    {"hauling_belt", QT_TRANSLATE_NOOP("Words", "Belt that hauls the carriage")},
};

// Numbers of grades are the same in every language.
constexpr Word choices[] = {
    {"thread/ball", QT_TRANSLATE_NOOP("Words", "ball screw")},
    {"thread/trapezoidal", QT_TRANSLATE_NOOP("Words", "trapezoidal screw")},
    {"end/fixed", QT_TRANSLATE_NOOP("Words", "fixed")},
    {"end/supported", QT_TRANSLATE_NOOP("Words", "supported")},
    {"end/free", QT_TRANSLATE_NOOP("Words", "free")},
    {"whip_span/between_bearings", QT_TRANSLATE_NOOP("Words", "bearing to bearing")},
    {"whip_span/nut_to_bearing", QT_TRANSLATE_NOOP("Words", "nut to bearing")},
    {"driven/screw", QT_TRANSLATE_NOOP("Words", "the screw")},
    {"driven/nut", QT_TRANSLATE_NOOP("Words", "the nut")},
    {"nuts/single", QT_TRANSLATE_NOOP("Words", "single nut")},
    {"nuts/preloaded_pair", QT_TRANSLATE_NOOP("Words", "preloaded pair")},
    {"grade/unknown", QT_TRANSLATE_NOOP("Words", "not known")},
    {"grade/1", "1"},
    {"grade/2", "2"},
    {"grade/3", "3"},
    {"grade/4", "4"},
    {"grade/5", "5"},
    {"grade/7", "7"},
    {"grade/10", "10"},
    {"layout/one", QT_TRANSLATE_NOOP("Words", "one motor, one drive")},
    {"layout/two_motors", QT_TRANSLATE_NOOP("Words", "a motor on each side")},
    {"layout/one_motor", QT_TRANSLATE_NOOP("Words", "one motor for both")},
    {"pairing/share", QT_TRANSLATE_NOOP("Words", "share the load")},
    {"pairing/opposed", QT_TRANSLATE_NOOP("Words", "wound against each other")},
    {"role/motor", QT_TRANSLATE_NOOP("Words", "motor")},
    {"role/screw", QT_TRANSLATE_NOOP("Words", "screw")},
    {"role/idler", QT_TRANSLATE_NOOP("Words", "idler")},
    {"face/toothed", QT_TRANSLATE_NOOP("Words", "toothed")},
    {"face/back", QT_TRANSLATE_NOOP("Words", "back")},
    {"drive_current_reading/peak", QT_TRANSLATE_NOOP("Words", "peak")},
    {"drive_current_reading/rms", QT_TRANSLATE_NOOP("Words", "effective (rms)")},
};

std::span<const FieldWords> words_of(PartSlot slot) {
  switch (slot) {
  case PartSlot::motor: return motor_field_words();
  case PartSlot::transmission: return transmission_field_words();
  case PartSlot::drive: return drive_field_words();
  default: return motion_field_words();
  }
}

const FieldWords* words_of(PartSlot slot, std::string_view member) {
  const std::string key = std::string(slot_name(slot)) + "." + std::string(member);
  for (const FieldWords& words : words_of(slot)) {
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
