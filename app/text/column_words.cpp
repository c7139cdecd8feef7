// SPDX-License-Identifier: GPL-3.0-or-later

// Heads of the columns of table fields: short, for the columns are narrow.

#include "text/word_table.h"
#include "text/words.h"

#include <string>

namespace feedwright::words {

namespace {

constexpr Word columns[] = {
    {"duty.load_cases.name", QT_TRANSLATE_NOOP("Words", "name")},
    {"duty.load_cases.time", QT_TRANSLATE_NOOP("Words", "time")},
    {"duty.load_cases.feed", QT_TRANSLATE_NOOP("Words", "feed")},
    {"duty.load_cases.thrust", QT_TRANSLATE_NOOP("Words", "thrust")},
    {"duty.load_cases.specific_force", QT_TRANSLATE_NOOP("Words", "specific force")},
    {"duty.load_cases.exponent", QT_TRANSLATE_NOOP("Words", "exponent")},
    {"duty.load_cases.tool_diameter", QT_TRANSLATE_NOOP("Words", "tool diameter")},
    {"duty.load_cases.teeth", QT_TRANSLATE_NOOP("Words", "tool teeth")},
    {"duty.load_cases.spindle_speed", QT_TRANSLATE_NOOP("Words", "spindle speed")},
    {"duty.load_cases.depth", QT_TRANSLATE_NOOP("Words", "depth")},
    {"duty.load_cases.engagement", QT_TRANSLATE_NOOP("Words", "cut width")},
    {"duty.moves.distance", QT_TRANSLATE_NOOP("Words", "distance")},
    {"duty.moves.rest", QT_TRANSLATE_NOOP("Words", "rest")},
    {"motor.points.speed", QT_TRANSLATE_NOOP("Words", "speed")},
    {"motor.points.torque", QT_TRANSLATE_NOOP("Words", "torque")},
    {"transmission.pulleys.role", QT_TRANSLATE_NOOP("Words", "on")},
    {"transmission.pulleys.x", "x"},
    {"transmission.pulleys.y", "y"},
    {"transmission.pulleys.teeth", QT_TRANSLATE_NOOP("Words", "teeth")},
    {"transmission.pulleys.diameter", QT_TRANSLATE_NOOP("Words", "diameter")},
    {"transmission.pulleys.face", QT_TRANSLATE_NOOP("Words", "face")},
    {"transmission.tooth_loads.speed", QT_TRANSLATE_NOOP("Words", "speed")},
    {"transmission.tooth_loads.load", QT_TRANSLATE_NOOP("Words", "tooth load")},
    {"drive.tooth_loads.speed", QT_TRANSLATE_NOOP("Words", "speed")},
    {"drive.tooth_loads.load", QT_TRANSLATE_NOOP("Words", "tooth load")},
};

} // namespace

QString column_name(PartSlot slot, std::string_view member, std::string_view column) {
  return looked_up(columns, std::string(slot_name(slot)) + "." + std::string(member) + "." +
                                std::string(column));
}

} // namespace feedwright::words
