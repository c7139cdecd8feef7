// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/machine_words.h"

#include "sizing/limits.h"
#include "text/text_of.h"
#include "text/words.h"
#include "units/read_quantity.h"

#include <QCoreApplication>

namespace feedwright::words {

namespace {

constexpr int digits = 3;

std::string_view usual_unit(Kind kind) {
  switch (kind) {
  case Kind::velocity: return "m/min";
  case Kind::length: return "mm";
  case Kind::angular_velocity: return "rpm";
  case Kind::time: return "h";
  default: return units_of(kind).front().symbol;
  }
}

QString shown(const AnyQuantity& value, const FileUnits& units) {
  return quantity(value, units.unit_of(value.kind, usual_unit(value.kind)).symbol, digits);
}

/// A length of a limit is a resolution or an error.
QString shown_in(const AnyQuantity& value, std::string_view unit, const FileUnits& units) {
  return quantity(value, units.unit_of(value.kind, unit).symbol, digits);
}

/// A figure of an answer, read back as what it is compared with.
QString then_text(const std::string& text, const std::optional<AnyQuantity>& now,
                  const FileUnits& units) {
  if (now) {
    if (const auto read = read_quantity(text, now->kind)) {
      return shown(read->value, units);
    }
  }
  return QString::fromStdString(text);
}

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Words)

public:
  static QString supply() { return tr("supply power, all axes at once"); }
  static QString bus() { return tr("bus voltage, all axes braking at once"); }
  static QString machine() { return tr("Machine"); }
  static QString subject(const QString& axis, const QString& what) {
    return tr("%1 · %2", "axis letter or machine, part or limit").arg(axis, what);
  }
  static QString grave() { return tr("▲ grave", "a finding"); }
  static QString caution() { return tr("△ caution", "a finding"); }
  static QString cases(const QString& share) {
    return tr("The hardest load case gets %1 of the torque or feed it asks.").arg(share);
  }
  static QString limit(const QString& asked, const QString& allowed, const QString& margin) {
    return tr("%1 against %2 allowed; the margin is %3.").arg(asked, allowed, margin);
  }
  static QString figures(const QString& actual, const QString& allowed) {
    if (actual.isEmpty()) {
      return allowed.isEmpty() ? tr("without figures") : allowed;
    }
    return allowed.isEmpty() ? actual : tr("%1 against %2", "actual, allowed").arg(actual, allowed);
  }
  static QString answered(const QString& note) { return tr("✎ answered: %1").arg(note); }
  static QString answered_then(const QString& then, const QString& now, const QString& note) {
    return tr("✎ answered when it was %1; now it is %2. The answer was: %3").arg(then, now, note);
  }
  static QString idle(const QString& subject, const QString& note) {
    return tr("%1: answered, but no longer found. The answer was: %2", "subject, note")
        .arg(subject, note);
  }
  static QString missing(const QString& axis, const QString& field, const QString& part) {
    return tr("missing on %1: %2 (%3)", "axis letter or machine, field, its part")
        .arg(axis, field, part);
  }
};

} // namespace

QString machine_limit_name(MachineLimitId id) {
  return id == MachineLimitId::supply_power ? Words::supply() : Words::bus();
}

QString axis_or_machine(const Machine& machine, std::optional<std::size_t> axis) {
  return axis ? QString::fromStdString(machine.axes.at(*axis).basics.letter) : Words::machine();
}

QString concern_subject(const Concern& concern, const Machine& machine) {
  const QString what = concern.limit           ? limit_name(*concern.limit)
                       : concern.machine_limit ? machine_limit_name(*concern.machine_limit)
                                               : part_name(concern.part);
  return Words::subject(axis_or_machine(machine, concern.axis), what);
}

int margin_digits(double margin) {
  constexpr int usual = 3;
  constexpr int finest = 12; // as fine as verdicts are given
  int digits_shown = usual;
  const auto rounded = [&] { return QString::number(margin, 'g', digits_shown).toDouble(); };
  while (digits_shown < finest && verdict_of(rounded()) != verdict_of(margin)) {
    ++digits_shown;
  }
  return digits_shown;
}

QString concern_text(const Concern& concern, const FileUnits& units) {
  if (concern.finding) {
    return finding_text(*concern.finding);
  }
  if (concern.limit == LimitId::load_cases) {
    return Words::cases(
        quantity({Kind::number, *concern.margin}, "%", margin_digits(*concern.margin)));
  }
  const std::string_view unit = concern.limit ? descriptor(descriptor(*concern.limit).result).unit
                                              : usual_unit(concern.actual->kind);
  return Words::limit(
      shown_in(*concern.actual, unit, units), shown_in(*concern.allowed, unit, units),
      quantity({Kind::number, *concern.margin}, "", margin_digits(*concern.margin)));
}

QString concern_weight(const Concern& concern) {
  if (concern.finding) {
    return concern.grave ? Words::grave() : Words::caution();
  }
  return verdict_sign(concern.verdict) + QLatin1Char(' ') + verdict_word(concern.verdict);
}

QString answer_text(const Answer& answer, const std::optional<AnyQuantity>& actual,
                    const std::optional<AnyQuantity>& allowed, const FileUnits& units) {
  const QString note = QString::fromStdString(answer.note);
  if (standing_of(&answer, actual, allowed) != AnswerStanding::changed) {
    return Words::answered(note);
  }
  const auto now = [&](const std::optional<AnyQuantity>& value) {
    return value ? shown(*value, units) : QString();
  };
  return Words::answered_then(Words::figures(then_text(answer.actual, actual, units),
                                             then_text(answer.allowed, allowed, units)),
                              Words::figures(now(actual), now(allowed)), note);
}

QString answer_subject(const Machine& machine, std::optional<std::size_t> axis, AnswerTo to,
                       std::string_view code, std::string_view part) {
  QString what;
  if (to == AnswerTo::limit) {
    for (const LimitDescriptor& limit : limit_descriptors()) {
      if (axis && limit.name == code) {
        what = limit_name(limit.id);
      }
    }
    for (const auto id : {MachineLimitId::supply_power, MachineLimitId::bus_voltage}) {
      if (!axis && machine_limit_code(id) == code) {
        what = machine_limit_name(id);
      }
    }
  } else {
    for (std::size_t slot = 0; slot < slot_count; ++slot) {
      if (slot_name(static_cast<PartSlot>(slot)) == part) {
        what = part_name(static_cast<PartSlot>(slot));
      }
    }
  }
  if (what.isEmpty()) {
    what = text_of(code);
  }
  return Words::subject(axis_or_machine(machine, axis), what);
}

QString idle_answer_text(const IdleAnswer& idle, const Machine& machine) {
  const Answer& answer = idle.answer;
  return Words::idle(answer_subject(machine, idle.axis, answer.to, answer.code, answer.part),
                     QString::fromStdString(answer.note));
}

QString machine_open_reason(const MachineLimit& limit, const Machine& machine) {
  if (limit.missing.member.empty()) {
    return {};
  }
  if (!limit.open_axis) {
    Limit of_machine;
    of_machine.missing = limit.missing;
    return open_reason(of_machine);
  }
  const auto slot = static_cast<PartSlot>(limit.missing.slot);
  return Words::missing(axis_or_machine(machine, limit.open_axis),
                        field_name(slot, limit.missing.member), part_name(slot));
}

} // namespace feedwright::words
