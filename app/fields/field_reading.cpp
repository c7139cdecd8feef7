// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/field_reading.h"

#include "text/text_of.h"
#include "text/words.h"
#include "units/kept_text.h"
#include "json/read_json.h"

#include <QCoreApplication>
#include <QRegularExpression>

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
    case FieldType::quantity: return placed(quantity(typed), text, typed);
    case FieldType::count: return placed(count(typed), text, typed);
    default: break;
    }
    FieldReading taken;
    taken.value = typed.toStdString();
    taken.note.origin = Origin::entered;
    return taken;
  }

private:
  QString name() const { return words::field_name(slot_, field_.member); }

  static FieldReading refused(const QString& why) {
    FieldReading reading;
    reading.error = why;
    return reading;
  }

  /// Places of the trimmed text as places of the text. Where nothing in particular is at fault,
  /// all of it is; where something is missing at the end, the last character.
  static FieldReading placed(FieldReading reading, const QString& text, const QString& typed) {
    if (reading.error.isEmpty()) {
      return reading;
    }
    const int size = static_cast<int>(typed.size());
    if (reading.error_at >= size) {
      reading.error_at = size - 1;
      reading.error_length = 1;
    } else if (reading.error_length == 0) {
      reading.error_length = size - reading.error_at;
    }
    reading.error_at += static_cast<int>(text.indexOf(typed));
    return reading;
  }

  /// "1.234" and "1,234" could be meant as a thousand and more.
  static bool looks_grouped(const QString& typed) {
    static const QRegularExpression grouped(
        QStringLiteral("(?<![\\d.,])[1-9]\\d{0,2}[.,]\\d{3}(?![\\d.,])"));
    return typed.contains(grouped);
  }

  /// "1.8 °" is "1.8°".
  static bool same_but_for_gaps(QString one, QString other) {
    static const QRegularExpression gaps(QStringLiteral("\\s"));
    return one.remove(gaps) == other.remove(gaps);
  }

  FieldReading nothing_typed() const {
    switch (field_.presence) {
    case Presence::open: return {};
    case Presence::preset: {
      FieldReading reading;
      reading.value = preset_of(machine_, axis_, slot_, field_);
      reading.note.origin = Origin::preset;
      return reading;
    }
    case Presence::required: break;
    }
    return refused(tr("The %1 must be given, such as %2.")
                       .arg(name(), field_.type == FieldType::count
                                        ? QString::number(field_.least)
                                        : words::value_example(field_.kind, field_.unit)));
  }

  FieldReading quantity(const QString& typed) const {
    const Unit* usual = find_unit(field_.kind, field_.unit);
    const auto read = read_quantity(typed.toStdString(), field_.kind, usual);
    if (!read) {
      FieldReading reading =
          refused(words::read_error_text(read.error(), field_.unit, slot_, field_.member));
      const QByteArray bytes = typed.toUtf8();
      const auto characters = [&](std::size_t from, std::size_t count) {
        return static_cast<int>(QString::fromUtf8(bytes.mid(static_cast<qsizetype>(from),
                                                            static_cast<qsizetype>(count)))
                                    .size());
      };
      reading.error_at = characters(0, read.error().position);
      reading.error_length = characters(read.error().position, read.error().length);
      return reading;
    }
    if (!within(field_.bound, read->value.si)) {
      return refused(tr("The %1 must be %2.").arg(name(), words::bound_text(field_.bound)));
    }
    FieldReading result;
    result.value = read->value;
    result.note = {kept_text(typed.toStdString(), *read), Origin::entered};
    const QString shown = words::quantity(read->value, field_.unit, 6);
    if (!same_but_for_gaps(shown, QString::fromStdString(result.note.text))) {
      result.became = tr("= %1", "what a typed quantity became").arg(shown);
    }
    if (!same_but_for_gaps(shown, typed) || looks_grouped(typed)) {
      result.echo = tr("= %1", "what a typed quantity became").arg(shown);
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
    FieldReading reading;
    reading.value = std::int64_t{number};
    reading.note.origin = Origin::entered;
    return reading;
  }

  const Machine& machine_;
  std::size_t axis_;
  PartSlot slot_;
  const FieldInfo& field_;
};

class CellReader {
  Q_DECLARE_TR_FUNCTIONS(Fields)

public:
  CellReader(PartSlot slot, std::string_view table, const FieldInfo& column)
      : slot_(slot), table_(table), column_(column),
        name_(words::column_name(slot, table, column.member)) {}

  CellReading read(const QString& text) const {
    switch (column_.type) {
    case FieldType::choice: return choice(text);
    case FieldType::count: return count(text);
    case FieldType::quantity: return quantity(text);
    default: return plain(text);
    }
  }

private:
  CellReading plain(const QString& text) const {
    std::string bytes = text.toStdString();
    if (bytes.size() > JsonLimits{}.text) {
      return {{},
              tr("%1 is too long: at most %2 bytes are kept, and it has %3.", "column")
                  .arg(name_)
                  .arg(JsonLimits{}.text)
                  .arg(bytes.size())};
    }
    return {CellValue(std::move(bytes)), {}};
  }

  CellReading choice(const QString& text) const {
    for (const std::string_view choice : column_.choices) {
      if (text == text_of(choice) || text == words::choice_name(column_.member, choice)) {
        return {CellValue(std::string(choice)), {}};
      }
    }
    return {{}, tr("\"%1\" is not a choice for %2.").arg(text, name_)};
  }

  CellReading count(const QString& text) const {
    bool whole = false;
    const qlonglong number = text.toLongLong(&whole);
    if (whole && number >= column_.least && number <= column_.most) {
      return {CellValue(static_cast<std::int64_t>(number)), {}};
    }
    return {{},
            tr("%1 is a whole number from %2 to %3.")
                .arg(name_, QString::number(column_.least), QString::number(column_.most))};
  }

  CellReading quantity(const QString& text) const {
    if (text.isEmpty() && column_.presence == Presence::open) {
      return {};
    }
    const auto read =
        read_quantity(text.toStdString(), column_.kind, find_unit(column_.kind, column_.unit));
    if (!read) {
      return {{}, words::read_error_text(read.error(), column_.unit, slot_, table_)};
    }
    if (!within(column_.bound, read->value.si)) {
      return {{},
              tr("%1 must be %2, such as %3.", "column, bound, example")
                  .arg(name_, words::bound_text(column_.bound),
                       words::value_example(column_.kind, column_.unit))};
    }
    return {CellValue(read->value), {}};
  }

  PartSlot slot_;
  std::string_view table_;
  const FieldInfo& column_;
  QString name_;
};

} // namespace

FieldReading read_field(const Machine& machine, std::size_t axis, PartSlot slot,
                        const FieldInfo& field, const QString& text) {
  return Reader(machine, axis, slot, field).read(text);
}

FieldValue preset_of(const Machine& machine, std::size_t axis, PartSlot slot,
                     const FieldInfo& field) {
  Machine fresh;
  fresh.axes.resize(1);
  if (const auto type = part_type(machine, axis, slot); !type.empty()) {
    set_part_type(fresh, 0, slot, type);
  }
  const auto found = field_of(fresh, 0, slot, field.member);
  return found ? found->value : FieldValue();
}

CellReading read_cell(PartSlot slot, std::string_view table, const FieldInfo& column,
                      const QString& text) {
  return CellReader(slot, table, column).read(text.trimmed());
}

} // namespace feedwright
