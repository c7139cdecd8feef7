// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/field_guide.h"

#include "text/symbol_text.h"
#include "text/word_table.h"
#include "text/words.h"

#include <string>

namespace feedwright::words {

namespace {

struct Guide {
  Q_DECLARE_TR_FUNCTIONS(Words)

public:
  static QString symbol(const QString& symbol) { return tr("In the working: %1.").arg(symbol); }
  static QString too_long(const QString& value) {
    return tr("△ %1 is more than any such machine has: is the unit right?").arg(value);
  }
};

constexpr Word sections[] = {
    {"targets.speed", QT_TRANSLATE_NOOP("Words", "Speed and force")},
    {"targets.accuracy", QT_TRANSLATE_NOOP("Words", "Accuracy")},
    {"targets.service", QT_TRANSLATE_NOOP("Words", "Life and inertia")},
    {"guides.drag", QT_TRANSLATE_NOOP("Words", "Drag and speed")},
    {"guides.blocks", QT_TRANSLATE_NOOP("Words", "Blocks")},
    {"motor.torque", QT_TRANSLATE_NOOP("Words", "Torque and speed")},
    {"motor.winding", QT_TRANSLATE_NOOP("Words", "Winding and current")},
    {"motor.rotor", QT_TRANSLATE_NOOP("Words", "Rotor and steps")},
    {"transmission.belt", QT_TRANSLATE_NOOP("Words", "Belt")},
    {"transmission.pulleys", QT_TRANSLATE_NOOP("Words", "Pulleys and length")},
    {"transmission.losses", QT_TRANSLATE_NOOP("Words", "Masses and losses")},
    {"transmission.stiffness", QT_TRANSLATE_NOOP("Words", "Stiffness and play")},
    {"transmission.strength", QT_TRANSLATE_NOOP("Words", "Tension and strength")},
    {"drive.belt", QT_TRANSLATE_NOOP("Words", "Belt")},
    {"drive.pulleys", QT_TRANSLATE_NOOP("Words", "Pulleys and length")},
    {"drive.stiffness", QT_TRANSLATE_NOOP("Words", "Stiffness and play")},
    {"drive.strength", QT_TRANSLATE_NOOP("Words", "Tension and strength")},
    {"drive.thread", QT_TRANSLATE_NOOP("Words", "Thread")},
    {"drive.ends", QT_TRANSLATE_NOOP("Words", "Length and ends")},
    {"drive.nut", QT_TRANSLATE_NOOP("Words", "Nut and preload")},
    {"drive.ratings", QT_TRANSLATE_NOOP("Words", "Ratings and speeds")},
    {"drive.losses", QT_TRANSLATE_NOOP("Words", "Masses and losses")},
    {"drive.accuracy", QT_TRANSLATE_NOOP("Words", "Stiffness, accuracy")},
    {"drive.safety", QT_TRANSLATE_NOOP("Words", "Safety and material")},
};

// What is usual and where to read it: common practice, no source. None of it is computed with.
constexpr Word usual[] = {
    {"supply.voltage",
     QT_TRANSLATE_NOOP("Words", "Usual: 24 V to 48 V for small steppers. Read it on the label of "
                                "the supply.")},
    {"controller.step_rate_limit",
     QT_TRANSLATE_NOOP(
         "Words",
         "Read it in the manual of the controller, for one axis; a figure for all is divided by "
         "the axes that move at once.")},
    {"targets.feed", QT_TRANSLATE_NOOP("Words", "Usual: 2 m/min to 10 m/min on a router, 1 m/min "
                                                "to 4 m/min on a small mill.")},
    {"targets.acceleration",
     QT_TRANSLATE_NOOP("Words", "Usual: 0.2 m/s² to 2 m/s² on home-built machines.")},
    {"targets.thrust",
     QT_TRANSLATE_NOOP("Words", "Usual: 50 N to 200 N in wood, 200 N to 1 kN in metal.")},
    {"targets.inertia_match",
     QT_TRANSLATE_NOOP("Words", "Usual: up to 10 for steppers; the motor's data sheet may say.")},
    {"carriage.mass",
     QT_TRANSLATE_NOOP("Words", "Weigh it, or take it from the drawing, spindle and cables too.")},
    {"guides.friction", QT_TRANSLATE_NOOP("Words", "Usual: 0.002 to 0.006 for balls, 0.1 to 0.2 "
                                                   "for sliding guides.")},
    {"motor.rotor_inertia",
     QT_TRANSLATE_NOOP("Words", "Read it on the motor's data sheet; often in g·cm².")},
    {"motor.holding_torque",
     QT_TRANSLATE_NOOP("Words", "Read it on the motor's data sheet; often in N·cm or oz·in.")},
    {"motor.inductance",
     QT_TRANSLATE_NOOP("Words", "Read it on the motor's data sheet, of one phase; usual: 1 mH to "
                                "8 mH.")},
    {"motor.resistance",
     QT_TRANSLATE_NOOP("Words", "Read it on the motor's data sheet, of one phase, or measure it.")},
    {"motor.rated_current",
     QT_TRANSLATE_NOOP("Words", "Read it on the motor's label or data sheet, of one phase.")},
    {"motor.usable_share", QT_TRANSLATE_NOOP("Words", "Usual: 50 % to 70 % for steppers.")},
    {"motor.microsteps", QT_TRANSLATE_NOOP("Words", "Read it on the drive's switches; usual: 8 to "
                                                    "16.")},
    {"transmission.tension",
     QT_TRANSLATE_NOOP("Words", "The belt maker's manual says how much; it can be heard as a "
                                "note.")},
    {"drive.core_diameter",
     QT_TRANSLATE_NOOP("Words", "Read it on the screw's drawing (root diameter) or measure it with "
                                "a calliper in the thread.")},
    {"drive.lead",
     QT_TRANSLATE_NOOP("Words", "Usual: 2 mm to 25 mm; 16 × 5 means a lead of 5 mm.")},
    {"drive.span",
     QT_TRANSLATE_NOOP("Words", "Read it on your drawing, from bearing middle to bearing middle.")},
    {"drive.efficiency", QT_TRANSLATE_NOOP("Words", "Usual: 85 % to 95 % for balls, 20 % to 60 % "
                                                    "for a sliding thread.")},
    {"drive.backlash",
     QT_TRANSLATE_NOOP("Words", "Usual: 20 µm to 100 µm for a single rolled nut; measure it with a "
                                "dial gauge.")},
    {"drive.dynamic_rating",
     QT_TRANSLATE_NOOP("Words", "Read it on the nut's data sheet, as C or C_a.")},
    {"drive.static_rating",
     QT_TRANSLATE_NOOP("Words", "Read it on the nut's data sheet, as C_0 or C_0a.")},
    {"drive.bearing_thrust_limit",
     QT_TRANSLATE_NOOP("Words", "Read it on the data sheet of the fixed bearing, axially.")},
    {"drive.whip_share", QT_TRANSLATE_NOOP("Words", "Usual: 80 % of the first critical speed.")},
};

/// Supply, controller and spindle are shown together.
constexpr const char* machine_guide = QT_TRANSLATE_NOOP(
    "Words", "What all axes share. The voltage decides how fast the motors still pull, the step "
             "rate how fast they may turn, the spindle how hard a cut can press.");

constexpr const char* part_guides[slot_count] = {
    machine_guide,
    machine_guide,
    machine_guide,
    QT_TRANSLATE_NOOP("Words", "How far the axis goes and how it lies. On an incline the motor "
                               "carries weight, and an axis that can fall wants a brake."),
    QT_TRANSLATE_NOOP("Words", "What the axis must do. Every limit is judged by these, so ask for "
                               "what the work needs and no more."),
    QT_TRANSLATE_NOOP("Words",
                      "All that this axis moves. Its mass decides the acceleration and, on "
                      "an incline, what must be held."),
    QT_TRANSLATE_NOOP("Words", "They carry the load and rub. What they and their covers take is "
                               "lost to the cut at every feed."),
    QT_TRANSLATE_NOOP("Words", "How the two sides are driven. Look at how far apart they are and "
                               "where between them the load stands."),
    QT_TRANSLATE_NOOP("Words", "A day's work. It warms the motor and wears screw, bearings and "
                               "guides; without it their life stays open."),
    QT_TRANSLATE_NOOP("Words",
                      "It turns the drive. Look at the torque it has left at speed, not at "
                      "its holding torque."),
    QT_TRANSLATE_NOOP("Words", "Between motor and drive. A ratio trades feed for force; whatever "
                               "gives or has play here shows at the tool."),
    QT_TRANSLATE_NOOP("Words", "It turns rotation into travel. A long lead or a large pulley is "
                               "fast, a short or small one strong; what is long and thin whips, "
                               "buckles and stretches."),
};

std::string key_of(PartSlot slot, std::string_view member) {
  return std::string(slot_name(slot)) + "." + std::string(member);
}

} // namespace

QString beyond_any_machine(const FieldInfo& field, const FieldValue& value) {
  // Common practice, no source: at 20 m a router fills a hall, and a lead of 1 m is no thread's.
  constexpr double longest = 20.0;
  constexpr double steepest = 1.0;
  const auto* quantity = std::get_if<AnyQuantity>(&value);
  if (quantity == nullptr || (quantity->kind != Kind::length && quantity->kind != Kind::lead)) {
    return {};
  }
  const Unit* metre = find_unit(quantity->kind, "m");
  const double most = quantity->kind == Kind::length ? longest : steepest;
  if (metre == nullptr || quantity->si <= most * metre->factor) {
    return {};
  }
  constexpr int digits = 6;
  return Guide::too_long(words::quantity(*quantity, field.unit, digits));
}

QString field_guide(PartSlot slot, const FieldInfo& field) {
  QStringList said{field_help(slot, field.member)};
  if (const QString known = looked_up(usual, key_of(slot, field.member)); !known.isEmpty()) {
    said << plain_symbols(known);
  }
  if (!field.symbol.empty()) {
    said << Guide::symbol(lowered_symbols(text_of(field.symbol)));
  }
  return said.join(QLatin1Char(' '));
}

QString part_guide(PartSlot slot) {
  return translated(part_guides[static_cast<std::size_t>(slot)]);
}

QString section_name(PartSlot slot, std::string_view section) {
  return looked_up(sections, key_of(slot, section));
}

} // namespace feedwright::words
