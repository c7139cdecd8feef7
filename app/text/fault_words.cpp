// SPDX-License-Identifier: GPL-3.0-or-later

// Why a machine cannot be read or computed: one sentence with its place, what was found and what
// was wanted.

#include "text/soundness_words.h"
#include "text/word_table.h"
#include "text/words.h"

#include <QStringList>

#include <utility>

namespace feedwright::words {

namespace {

constexpr std::pair<std::string_view, double> examples[] = {
    {"mm", 5},         {"µm", 20},   {"m/min", 3},     {"m/s²", 1},  {"m/s", 10},  {"m/s³", 50},
    {"N", 200},        {"kN", 5},    {"N/µm", 150},    {"N/cm", 30}, {"N·m", 1.9}, {"rpm", 3000},
    {"N·m/rad", 2000}, {"W", 400},   {"kg·cm²", 0.48}, {"V", 48},    {"A", 2.8},   {"Ω", 1.1},
    {"mH", 3.6},       {"µF", 4700}, {"kHz", 100},     {"°", 1.8},   {"%", 80},    {"kg", 12},
    {"kg/m³", 7850},   {"g/m", 60},  {"MPa", 300},     {"GPa", 206}, {"K", 10},    {"ppm/K", 11.5},
    {"min", 5},        {"h", 10000},
};

/// "5 mm": how a value of the kind is written.
QString example(Kind kind, std::string_view unit) {
  double number = kind == Kind::rim_speed ? 70000.0 : 2.0;
  for (const auto& [symbol, usual] : examples) {
    if (symbol == unit) {
      number = usual;
    }
  }
  const Unit* found = find_unit(kind, unit);
  const Unit& written = found != nullptr ? *found : si_unit(kind);
  return quantity({kind, number * written.factor + written.offset}, written.symbol, 5);
}

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Words)

public:
  static QString with_place(const Fault& fault, const QString& sentence) {
    // Brackets in brackets without end tell nothing.
    constexpr std::size_t longest_path = 120;
    const QString path =
        fault.path.size() > longest_path ? QString() : QString::fromStdString(fault.path);
    if (fault.line == 0) {
      return path.isEmpty() ? sentence : tr("%1: %2", "path, sentence").arg(path, sentence);
    }
    return path.isEmpty() ? tr("Line %1: %2", "line number, sentence").arg(fault.line).arg(sentence)
                          : tr("Line %1, %2: %3", "line number, path, sentence")
                                .arg(QString::number(fault.line), path, sentence);
  }

  static QString type_name(const std::string& type) {
    if (type == "object") {
      return tr("an object { }");
    }
    if (type == "array") {
      return tr("a list [ ]");
    }
    if (type == "string") {
      return tr("a text in quotes");
    }
    if (type == "pair") {
      return tr("a pair of values [ , ]");
    }
    if (type == "number") {
      return tr("a bare number");
    }
    if (type == "boolean") {
      return tr("true or false");
    }
    return type == "null" ? tr("null") : QString::fromStdString(type);
  }

  static QString bound(Bound bound) {
    switch (bound) {
    case Bound::positive: return tr("more than zero");
    case Bound::non_negative: return tr("zero or more");
    case Bound::fraction: return tr("from zero to one");
    case Bound::fraction_above_zero: return tr("more than zero and at most one");
    case Bound::any: break;
    }
    return tr("a finite number");
  }

  static QString out_of_bounds(const Fault& fault) {
    if (fault.found.empty() && fault.least != fault.most) {
      return tr("Too many rows; a table has at most %1.").arg(fault.most);
    }
    if (fault.least != fault.most) {
      return tr("%1 found; wanted is a whole number from %2 to %3.")
          .arg(QString::fromStdString(fault.found), QString::number(fault.least),
               QString::number(fault.most));
    }
    return tr("%1 found; wanted is %2, such as %3.")
        .arg(QString::fromStdString(fault.found), bound(fault.bound),
             example(fault.kind, fault.unit));
  }

  static QString wrong_type(const Fault& fault) {
    const QString found = type_name(fault.found);
    const QString wanted = type_name(fault.wanted);
    const bool quantity = fault.kind != Kind::number && fault.wanted == "string";
    return quantity ? tr("%1 found; wanted is %2, such as \"%3\".")
                          .arg(found, wanted, example(fault.kind, fault.unit))
                    : tr("%1 found; wanted is %2.").arg(found, wanted);
  }

  static QString choices(const Fault& fault) {
    QStringList names;
    for (const std::string_view choice : fault.choices) {
      names.append(QLatin1Char('"') + text_of(choice) + QLatin1Char('"'));
    }
    return tr("\"%1\" found; wanted is one of %2.")
        .arg(QString::fromStdString(fault.found), names.join(QStringLiteral(", ")));
  }

  static QString unreadable(const Fault& fault) {
    return fault.quantity ? read_error_text(*fault.quantity, fault.unit,
                                            fault.slot.value_or(PartSlot::drive), fault.member)
                          : tr("This cannot be read.");
  }

  static QString json(const JsonError& error);

  static QString of_file(const Fault& fault) {
    switch (fault.code) {
    case FaultCode::not_json: return fault.json ? json(*fault.json) : tr("This is not JSON.");
    case FaultCode::not_a_machine:
      return tr("This is JSON, but no machine of this program: it wants a member \"format\" with "
                "the name \"feedwright machine\".");
    case FaultCode::newer_major:
      return tr("The file was written by a newer program, in format %1, which this one does not "
                "understand. It is not touched.")
          .arg(QString::fromStdString(fault.found));
    case FaultCode::missing_member: return tr("This member is missing; it must be given.");
    case FaultCode::wrong_type: return wrong_type(fault);
    case FaultCode::unreadable_quantity: return unreadable(fault);
    case FaultCode::out_of_bounds: return out_of_bounds(fault);
    case FaultCode::unknown_choice: return choices(fault);
    case FaultCode::too_many_axes:
      return tr("%1 axes found; at most %2 are read.")
          .arg(QString::fromStdString(fault.found), QString::number(fault.most));
    case FaultCode::too_many_answers:
      return tr("There are more answers here than the %1 that are read.").arg(fault.most);
    case FaultCode::answer_too_long:
      return tr("This text of an answer is longer than the %1 bytes that are read.")
          .arg(fault.most);
    case FaultCode::answer_to_nothing:
      return tr("An answer names what it answers: either a \"finding\" or a \"limit\".");
    default: return soundness_text(fault);
    }
  }
};

QString Words::json(const JsonError& error) {
  const QString found = QString::fromStdString(error.found);
  switch (error.fault) {
  case JsonFault::too_large: return tr("The file is too large to be a machine.");
  case JsonFault::empty: return tr("The file is empty.");
  case JsonFault::not_utf8:
    return tr("The byte %1 is no text in UTF-8; save the file in that encoding.").arg(found);
  case JsonFault::unreadable: return tr("\"%1\" does not belong here in JSON.").arg(found);
  case JsonFault::unfinished:
    return tr("The text ends too early; a bracket or quotation mark is still open.");
  case JsonFault::trailing_text:
    return tr("\"%1\" follows after the end of the machine.").arg(found);
  case JsonFault::too_deep: return tr("Brackets are nested too deeply to be a machine.");
  case JsonFault::too_many_values: return tr("There are too many values to be a machine.");
  case JsonFault::text_too_long: return tr("A text or number here is too long to be read.");
  case JsonFault::number_out_of_range:
    return tr("%1 is too large or too small a number.").arg(found);
  case JsonFault::duplicate_member: break;
  }
  return tr("The member \"%1\" stands here a second time.").arg(found);
}

QString member_or_value(PartSlot slot, std::string_view member) {
  const QString name = field_name(slot, member);
  return name.isEmpty() ? text_of(member) : name;
}

} // namespace

QString fault_text(const Fault& fault) {
  return Words::with_place(fault, Words::of_file(fault));
}

QString fault_sentence(const Fault& fault) {
  return Words::of_file(fault);
}

QString value_example(Kind kind, std::string_view unit) {
  return example(kind, unit);
}

QString bound_text(Bound bound) {
  return Words::bound(bound);
}

namespace {

struct ReadWords {
  Q_DECLARE_TR_FUNCTIONS(Words)

public:
  static QString of(const ReadError& error, const QString& name, const QString& like) {
    const QString found = QString::fromStdString(error.found);
    const QString kind = kind_name(error.wanted);
    switch (error.fault) {
    case ReadFault::empty:
      return tr("Nothing is written here; %1 is %2, such as %3.").arg(name, kind, like);
    case ReadFault::not_a_number:
      return tr("\"%1\" is not a number; %2 is %3, such as %4.").arg(found, name, kind, like);
    case ReadFault::two_decimal_marks:
      return tr("\"%1\" has two decimal marks; a number has one, point or comma, and digits are "
                "not grouped.")
          .arg(found);
    case ReadFault::grouped_digits:
      return tr("\"%1\" has a gap in its digits; write them together.").arg(found);
    case ReadFault::unknown_unit:
      return tr("\"%1\" is not a unit known here; %2 is %3, such as %4.")
          .arg(found, name, kind, like);
    case ReadFault::wrong_kind:
      return tr("\"%1\" is %2; %3 is %4, such as %5.")
          .arg(found, kind_name(error.found_kind.value_or(Kind::number)), name, kind, like);
    case ReadFault::unit_missing:
      return tr("\"%1\" has no unit; %2 is %3, such as %4.").arg(found, name, kind, like);
    case ReadFault::bare_number_in_sum:
      return tr("\"%1\" has no unit, while other terms of the sum have one.").arg(found);
    case ReadFault::product_of_units:
      return tr("\"%1\" multiplies or divides units; give one value with its unit.").arg(found);
    case ReadFault::division_by_zero: return tr("\"%1\" divides by zero.").arg(found);
    case ReadFault::out_of_range:
      return tr("\"%1\" is too large or too small a number.").arg(found);
    case ReadFault::unbalanced_bracket: return tr("A bracket at \"%1\" has no partner.").arg(found);
    case ReadFault::unexpected_text: break;
    }
    return tr("\"%1\" does not belong here; %2 is %3, such as %4.").arg(found, name, kind, like);
  }
};

} // namespace

QString read_error_text(const ReadError& error, std::string_view usual_unit, PartSlot slot,
                        std::string_view member) {
  return ReadWords::of(error, member_or_value(slot, member), example(error.wanted, usual_unit));
}

} // namespace feedwright::words
