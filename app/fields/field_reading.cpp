// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/field_reading.h"

#include "text/words.h"
#include "units/read_quantity.h"

#include <QCoreApplication>

namespace feedwright {

namespace {

class Reader {
  Q_DECLARE_TR_FUNCTIONS(Fields)

public:
  Reader(const Machine& machine, std::size_t axis, PartSlot slot, const FieldInfo& field)
      : machine_(machine), axis_(axis), slot_(slot), field_(field) {}

  FieldReading read(const QString& text) const {
    const QString typed = text.trimmed();
    if (typed.isEmpty() && field_.type != FieldType::text) {
      return nothing_typed();
    }
    switch (field_.type) {
    case FieldType::quantity: return quantity(typed);
    case FieldType::count: return count(typed);
    default: return {typed.toStdString(), {{}, Origin::entered}, {}, {}};
    }
  }

private:
  QString name() const { return words::field_name(slot_, field_.member); }

  static FieldReading refused(const QString& why) { return {{}, {}, {}, why}; }

  FieldReading nothing_typed() const {
    switch (field_.presence) {
    case Presence::open: return {};
    case Presence::preset: return {preset(), {{}, Origin::preset}, {}, {}};
    case Presence::required: break;
    }
    return refused(tr("The %1 must be given, such as %2.")
                       .arg(name(), field_.type == FieldType::count
                                        ? QString::number(field_.least)
                                        : words::value_example(field_.kind, field_.unit)));
  }

  /// The field's value in a part of the same type as it comes.
  FieldValue preset() const {
    Machine fresh;
    fresh.axes.resize(1);
    if (const auto type = part_type(machine_, axis_, slot_); !type.empty()) {
      set_part_type(fresh, 0, slot_, type);
    }
    const auto field = field_of(fresh, 0, slot_, field_.member);
    return field ? field->value : FieldValue();
  }

  FieldReading quantity(const QString& typed) const {
    const Unit* usual = find_unit(field_.kind, field_.unit);
    const auto read = read_quantity(typed.toStdString(), field_.kind, usual);
    if (!read) {
      return refused(words::read_error_text(read.error(), field_.unit, slot_, field_.member));
    }
    if (!within(field_.bound, read->value.si)) {
      return refused(tr("The %1 must be %2.").arg(name(), words::bound_text(field_.bound)));
    }
    FieldReading result{read->value, {typed.toStdString(), Origin::entered}, {}, {}};
    if (read->bare && usual != nullptr && !usual->symbol.empty()) {
      // What is kept says its unit, so that the file can be read without this program.
      result.note.text += " " + std::string(usual->symbol);
    }
    const QString shown = words::quantity(read->value, field_.unit, 6);
    if (shown != QString::fromStdString(result.note.text)) {
      result.became = tr("= %1", "what a typed quantity became").arg(shown);
    }
    return result;
  }

  FieldReading count(const QString& typed) const {
    bool whole = false;
    const qlonglong number = typed.toLongLong(&whole);
    if (!whole || number < field_.least || number > field_.most) {
      return refused(tr("The %1 must be a whole number from %2 to %3.")
                         .arg(name(), QString::number(field_.least), QString::number(field_.most)));
    }
    return {std::int64_t{number}, {{}, Origin::entered}, {}, {}};
  }

  const Machine& machine_;
  std::size_t axis_;
  PartSlot slot_;
  const FieldInfo& field_;
};

} // namespace

FieldReading read_field(const Machine& machine, std::size_t axis, PartSlot slot,
                        const FieldInfo& field, const QString& text) {
  return Reader(machine, axis, slot, field).read(text);
}

} // namespace feedwright
