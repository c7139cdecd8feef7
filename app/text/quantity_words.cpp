// SPDX-License-Identifier: GPL-3.0-or-later

// Values as text in the language's way.

#include "text/text_of.h"
#include "text/word_table.h"
#include "text/words.h"

#include <QGuiApplication>
#include <QRegularExpression>
#include <QStringList>

namespace feedwright::words {

namespace {

/// The one thing of the language that is not a translation; set once with the language.
DecimalMark chosen_mark = DecimalMark::point;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Words)

public:
  static QString open() { return tr("open"); }
  static QString yes() { return tr("yes"); }
  static QString no() { return tr("no"); }
};

constexpr const char* kind_names[] = {
    QT_TRANSLATE_NOOP("Words", "a number"),
    QT_TRANSLATE_NOOP("Words", "a length"),
    QT_TRANSLATE_NOOP("Words", "an area"),
    QT_TRANSLATE_NOOP("Words", "a second moment of area"),
    QT_TRANSLATE_NOOP("Words", "a mass"),
    QT_TRANSLATE_NOOP("Words", "a time"),
    QT_TRANSLATE_NOOP("Words", "a force"),
    QT_TRANSLATE_NOOP("Words", "a torque"),
    QT_TRANSLATE_NOOP("Words", "an energy"),
    QT_TRANSLATE_NOOP("Words", "a power"),
    QT_TRANSLATE_NOOP("Words", "a moment of inertia"),
    QT_TRANSLATE_NOOP("Words", "an angle"),
    QT_TRANSLATE_NOOP("Words", "a speed of rotation"),
    QT_TRANSLATE_NOOP("Words", "an angular acceleration"),
    QT_TRANSLATE_NOOP("Words", "a speed"),
    QT_TRANSLATE_NOOP("Words", "an acceleration"),
    QT_TRANSLATE_NOOP("Words", "a pressure"),
    QT_TRANSLATE_NOOP("Words", "a density"),
    QT_TRANSLATE_NOOP("Words", "a mass per length"),
    QT_TRANSLATE_NOOP("Words", "a stiffness"),
    QT_TRANSLATE_NOOP("Words", "a frequency"),
    QT_TRANSLATE_NOOP("Words", "a temperature"),
    QT_TRANSLATE_NOOP("Words", "a voltage"),
    QT_TRANSLATE_NOOP("Words", "a current"),
    QT_TRANSLATE_NOOP("Words", "a resistance"),
    QT_TRANSLATE_NOOP("Words", "an inductance"),
    QT_TRANSLATE_NOOP("Words", "a torque per current"),
    QT_TRANSLATE_NOOP("Words", "a length"), // a lead is asked for as one
    QT_TRANSLATE_NOOP("Words", "a diameter times a speed"),
    QT_TRANSLATE_NOOP("Words", "a number per length"),
    QT_TRANSLATE_NOOP("Words", "a jerk"),
    QT_TRANSLATE_NOOP("Words", "a torsional stiffness"),
    QT_TRANSLATE_NOOP("Words", "a thermal expansion"),
    QT_TRANSLATE_NOOP("Words", "a capacitance"),
    QT_TRANSLATE_NOOP("Words", "a figure"),
};

constexpr const char* origin_names[] = {
    QT_TRANSLATE_NOOP("Words", "preset"),
    QT_TRANSLATE_NOOP("Words", "entered"),
    QT_TRANSLATE_NOOP("Words", "part"),
};

/// Both marks mean decimal (see read_quantity), so a typed text may be shown with the language's.
QString in_own_marks(QString text) {
  const QChar own = QLatin1Char(static_cast<char>(chosen_mark));
  for (qsizetype i = 0; i + 1 < text.size(); ++i) {
    const bool mark = text[i] == QLatin1Char('.') || text[i] == QLatin1Char(',');
    if (mark && text[i + 1].isDigit()) {
      text[i] = own;
    }
  }
  return text;
}

/// An angle's sign stands at its figure; "20 °C" is no angle, "6 °/s" a unit of its own.
QString with_degrees_closed_up(QString text) {
  static const QRegularExpression apart(QStringLiteral("(?<=\\d)[ \\x{00a0}]+(?=°(?![A-Za-z/]))"));
  return text.remove(apart);
}

/// A minus of the length of a plus; the reader of quantities takes it as well.
QString with_true_minus(QString text) {
  if (text.startsWith(QLatin1Char('-'))) {
    text[0] = QChar(0x2212);
  }
  return text;
}

QString cell_text(const FieldInfo& column, const CellValue& cell) {
  if (const auto* held = std::get_if<AnyQuantity>(&cell)) {
    return quantity(*held, column.unit);
  }
  if (const auto* count = std::get_if<std::int64_t>(&cell)) {
    return QString::number(*count);
  }
  if (const auto* flag = std::get_if<bool>(&cell)) {
    return *flag ? Words::yes() : Words::no();
  }
  const auto* text = std::get_if<std::string>(&cell);
  if (text == nullptr) {
    return {};
  }
  return column.type == FieldType::choice ? choice_name(column.member, *text)
                                          : QString::fromStdString(*text);
}

/// A row a line: "150 rpm: 1.68 N·m", or with more columns "motor, 0 mm, 20 mm", empty cells left
/// out.
QString table_text(const TableInfo& table, const TableRows& value) {
  const auto columns = table.columns();
  const bool pairs = table.plain_rows && columns.size() == 2;
  QStringList lines;
  for (const std::vector<CellValue>& row : value.rows) {
    QStringList cells;
    for (std::size_t i = 0; i < row.size() && i < columns.size(); ++i) {
      if (const QString text = cell_text(columns[i], row[i]); !text.isEmpty()) {
        cells << text;
      }
    }
    lines << cells.join(pairs ? QStringLiteral(": ") : QStringLiteral(", "));
  }
  return lines.join(QLatin1Char('\n'));
}

QString plain_value(const FieldView& field) {
  if (const auto* held = std::get_if<AnyQuantity>(&field.value)) {
    const Unit* unit = find_unit(held->kind, field.info.unit);
    return QString::fromStdString(
        write_exact(*held, unit != nullptr ? *unit : si_unit(held->kind), chosen_mark));
  }
  if (const auto* count = std::get_if<std::int64_t>(&field.value)) {
    return QString::number(*count);
  }
  if (const auto* flag = std::get_if<bool>(&field.value)) {
    return *flag ? Words::yes() : Words::no();
  }
  if (const auto* table = std::get_if<TableRows>(&field.value)) {
    return field.info.table != nullptr ? table_text(*field.info.table, *table) : QString();
  }
  const auto* text = std::get_if<std::string>(&field.value);
  if (text == nullptr) {
    return {};
  }
  return field.info.type == FieldType::choice ? choice_name(field.info.member, *text)
                                              : QString::fromStdString(*text);
}

} // namespace

DecimalMark decimal_mark() {
  return chosen_mark;
}

void set_decimal_mark(DecimalMark mark) {
  chosen_mark = mark;
}

QString kind_name(Kind kind) {
  return translated(kind_names[static_cast<std::size_t>(kind)]);
}

QString origin_name(Origin origin) {
  return translated(origin_names[static_cast<std::size_t>(origin)]);
}

QString quantity(const AnyQuantity& value, std::string_view unit, int digits) {
  const Unit* found = find_unit(value.kind, unit);
  return left_to_right(with_true_minus(QString::fromStdString(write_quantity(
      value, found != nullptr ? *found : si_unit(value.kind), digits, chosen_mark))));
}

QString left_to_right(const QString& text) {
  // In a text from right to left "9 kg" would come out as "kg 9".
  const bool turned = QGuiApplication::layoutDirection() == Qt::RightToLeft;
  return turned ? QChar(0x2066) + text + QChar(0x2069) : text;
}

QString result_value(ResultId id, const AxisResults& results, int digits) {
  const ResultDescriptor& about = descriptor(id);
  const auto value = about.get(results);
  return value ? quantity(*value, about.unit, digits) : Words::open();
}

QString typed_text(std::string_view text) {
  return with_degrees_closed_up(in_own_marks(text_of(text)));
}

QString field_text(const FieldView& field) {
  const bool typed = field.info.type == FieldType::quantity || field.info.type == FieldType::count;
  if (typed && !field.note.text.empty() && !std::holds_alternative<std::monostate>(field.value)) {
    return typed_text(field.note.text);
  }
  return plain_value(field);
}

} // namespace feedwright::words
