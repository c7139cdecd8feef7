// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/printed_words.h"

#include "text/text_of.h"
#include "text/words.h"
#include "units/read_quantity.h"

#include <QRegularExpression>

namespace feedwright::words {

namespace {

constexpr QChar thin_space(0x202f); // no line ends at it
constexpr QChar minus(0x2212);

/// "16 855"; four digits are read at a glance.
QString in_groups(QString digits) {
  constexpr qsizetype least = 5;
  constexpr qsizetype group = 3;
  if (digits.size() >= least) {
    for (qsizetype at = digits.size() - group; at > 0; at -= group) {
      digits.insert(at, thin_space);
    }
  }
  return digits;
}

QString raised(const QString& exponent) {
  static const QString usual = QStringLiteral("-0123456789");
  static const QString raised_signs = QStringLiteral("⁻⁰¹²³⁴⁵⁶⁷⁸⁹");
  QString made;
  for (const QChar sign : exponent) {
    made += raised_signs[usual.indexOf(sign)];
  }
  return made;
}

/// The figure a text begins with as it is set on paper; a text that begins with none as it is.
QString printed(const QString& text) {
  static const QRegularExpression figure(
      QStringLiteral("^(\\x{2066}?)([-\\x{2212}]?)(\\d+)([.,]\\d+)?(?:e(-?\\d+))?(?![\\d/])"));
  const QRegularExpressionMatch found = figure.match(text);
  if (!found.hasMatch()) {
    return text;
  }
  QString made = found.captured(1);
  if (!found.captured(2).isEmpty()) {
    made += minus;
  }
  made += in_groups(found.captured(3)) + found.captured(4);
  if (const QString exponent = found.captured(5); !exponent.isEmpty()) {
    made += QStringLiteral("·10") + raised(exponent);
  }
  return made + text.mid(found.capturedEnd());
}

/// Whether a text is a number, whole, broken or mixed, with its unit or without, or feet and
/// inches: as people say a size, with nothing to work out.
bool is_plain(const QString& text, Kind kind) {
  static const QRegularExpression number(
      QStringLiteral("^\\s*[-+\\x{2212}]?\\s*\\d+(?:[.,]\\d*)?(?:[eE][-+]?\\d+)?"
                     "(?:/\\d+|[ -]\\s*\\d+/\\d+)?\\s*"));
  const QRegularExpressionMatch found = number.match(text);
  if (!found.hasMatch()) {
    return false;
  }
  const QString rest = text.mid(found.capturedEnd()).trimmed();
  if (rest.isEmpty() || find_unit(kind, rest.toStdString()) != nullptr) {
    return true;
  }
  static const QRegularExpression feet(QStringLiteral("^(?:'|′|’|ft)\\s*(?=\\d)"));
  const QRegularExpressionMatch begins = feet.match(rest);
  return begins.hasMatch() && is_plain(rest.mid(begins.capturedEnd()), kind);
}

} // namespace

QString printed_quantity(const AnyQuantity& value, std::string_view unit, int digits) {
  return printed(quantity(value, unit, digits));
}

QString worked_out_from(const FieldView& field) {
  const QString typed = text_of(field.note.text);
  if (typed.isEmpty()) {
    return {};
  }
  if (const auto* held = std::get_if<AnyQuantity>(&field.value)) {
    return is_plain(typed, held->kind) ? QString() : field_text(field);
  }
  const bool count = std::holds_alternative<std::int64_t>(field.value);
  return !count || is_plain(typed, Kind::number) ? QString() : field_text(field);
}

QString field_value(const FieldView& field) {
  if (worked_out_from(field).isEmpty()) {
    return printed(field_text(field));
  }
  if (const auto* count = std::get_if<std::int64_t>(&field.value)) {
    return QString::number(*count);
  }
  constexpr int digits = 6;
  const auto& held = std::get<AnyQuantity>(field.value);
  const Unit* usual = find_unit(held.kind, field.info.unit);
  const auto typed = read_quantity(field.note.text, held.kind, usual);
  return printed_quantity(held, typed ? typed->unit->symbol : field.info.unit, digits);
}

} // namespace feedwright::words
