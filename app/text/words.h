// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Every word a person reads about a part, a field, a result, a limit, a finding or a fault, made
// here from core's codes and translated. Nothing here computes.

#include "machine/fault.h"
#include "sizing/results.h"
#include "units/write_quantity.h"

#include <QString>

namespace feedwright::words {

/// Decimal mark of the chosen language.
DecimalMark decimal_mark();
void set_decimal_mark(DecimalMark mark);

QString part_name(PartSlot slot);                           ///< "Screw or belt"
QString part_type_title(std::string_view type);             ///< "Belt and two pulleys"
QString field_name(PartSlot slot, std::string_view member); ///< "length between bearings"
QString field_help(PartSlot slot, std::string_view member); ///< one plain sentence
/// Head of a table field's column: "spindle speed".
QString column_name(PartSlot slot, std::string_view member, std::string_view column);
/// Of a choice field or of a column of choices, by its member.
QString choice_name(std::string_view member, std::string_view choice);
QString origin_name(Origin origin);  ///< "entered"
QString kind_name(Kind kind);        ///< "a length"
QString result_name(ResultId id);    ///< "allowed whip speed"
QString result_meaning(ResultId id); ///< one plain sentence
QString result_source(ResultId id);  ///< publication of the equation; empty for definitions
QString constant_name(std::string_view symbol);
/// What f(…) stands for in a working, by its equation's code.
QString solved_by(std::string_view equation);
QString limit_name(LimitId id);        ///< "whip"
QString verdict_word(Verdict verdict); ///< "over"
/// A sign for the verdict that reads without colour.
QString verdict_sign(Verdict verdict);
QString open_reason(const Limit& limit);                 ///< which input it wants, or why not
QString finding_text(const Finding& finding);            ///< one or two sentences, with caution
QString fault_text(const Fault& fault);                  ///< one sentence with place
QString fault_sentence(const Fault& fault);              ///< the same without its place
QString value_example(Kind kind, std::string_view unit); ///< "5 mm"
QString bound_text(Bound bound);                         ///< "more than zero"
QString read_error_text(
    const ReadError& error, std::string_view usual_unit, PartSlot slot,
    std::string_view member); ///< `"5 kg" is a mass; the lead is a length, such as 5 mm`
/// A value in the given unit with four sensible digits and the language's decimal mark.
QString quantity(const AnyQuantity& value, std::string_view unit, int digits = 4);
/// As it stands also within a text that runs from right to left: a figure with its unit, a ratio.
QString left_to_right(const QString& text);
QString result_value(ResultId id, const AxisResults& results,
                     int digits = 4); ///< "open" if missing
/// A quantity as somebody has written it, with the language's decimal mark.
QString typed_text(std::string_view text);
/// A field's value as shown in its editor: as typed if there is a text, else exact in its usual
/// unit.
QString field_text(const FieldView& field);

} // namespace feedwright::words
