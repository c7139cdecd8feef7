// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Words about all axes together, and about what a builder answered.

#include "sheet/file_units.h"
#include "sizing/concerns.h"

#include <QString>

namespace feedwright::words {

/// "supply power, all axes at once"
QString machine_limit_name(MachineLimitId id);

/// "X", or the word for the machine.
QString axis_or_machine(const Machine& machine, std::optional<std::size_t> axis);

/// Significant digits at which a margin is not rounded to what reads better than it does.
int margin_digits(double margin);

/// What a concern is about: "X · Screw or belt", "X · whip".
QString concern_subject(const Concern& concern, const Machine& machine);
/// The concern as a sentence, with its figures in the file's units.
QString concern_text(const Concern& concern, const FileUnits& units);
/// Sign and word of how much it weighs: "▲ over", "▲ grave", "△ caution".
QString concern_weight(const Concern& concern);

/// "✎ answered: note", or "✎ answered when it was 1200 rpm; now it is 1400 rpm: note".
QString answer_text(const Answer& answer, const std::optional<AnyQuantity>& actual,
                    const std::optional<AnyQuantity>& allowed, const FileUnits& units);
/// What an answer is about, as far as its codes tell: "X · Screw or belt".
QString answer_subject(const Machine& machine, std::optional<std::size_t> axis, AnswerTo to,
                       std::string_view code, std::string_view part);
/// Of an answer to what is no longer found.
QString idle_answer_text(const IdleAnswer& idle, const Machine& machine);

/// What an axis waits for so that the sum of all can be made: "missing on X: …".
QString machine_open_reason(const MachineLimit& limit, const Machine& machine);

} // namespace feedwright::words
