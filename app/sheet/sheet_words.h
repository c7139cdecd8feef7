// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Sentences and descriptions of the sheet, made from its content.

#include "sheet/sheet_content.h"

#include <QString>

namespace feedwright::sheet {

QString purchase_name(const Purchase& purchase); ///< "Stepper motor", "Pulley"
QString purchase_text(const Purchase& purchase); ///< "16 mm, lead 5 mm, length 860 mm"
/// The pieces of a part in a row, each with its name unless it speaks for itself.
QString pieces_text(const std::vector<PurchasePiece>& pieces);

/// The value in the file's unit, or the word for an open one.
QString value_or_open(const FileUnits& units, const std::optional<AnyQuantity>& value,
                      std::string_view usual_unit);
/// The same, but of a life beyond what anybody waits for only that it is; unless more is wanted.
QString life_or_value(const FileUnits& units, const std::optional<AnyQuantity>& value,
                      std::string_view usual_unit,
                      const std::optional<AnyQuantity>& wanted = std::nullopt);
/// An input's value, and what was typed beside what it comes to: "1600 mm, typed as (1200+400) mm".
QString input_text(const FieldView& field);
QString open_word();
/// "1.25", or "over 1000" where nothing hinders.
QString margin_text(double margin);
/// "● clear": sign and word.
QString verdict_text(Verdict verdict);
/// What the four verdicts mean, in one line.
QString verdict_key();
/// That figures help to choose and are not an approval.
QString care_text();

} // namespace feedwright::sheet
