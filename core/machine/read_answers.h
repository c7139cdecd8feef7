// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/answer.h"
#include "machine/fault_list.h"

namespace feedwright {

/// Reads the `answers` of `parent`, if it has any; `at` is the place of the parent. What is wrong
/// goes to `faults`, each with its place.
std::vector<Answer> read_answers(FaultList& faults, std::string_view source, const Place& at,
                                 const JsonNode& parent);

} // namespace feedwright
