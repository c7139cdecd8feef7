// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Everything of a machine that deserves care, over all its axes, in order of weight, with what the
// builder has answered.

#include "sizing/finding_weight.h"
#include "sizing/size_machine.h"

namespace feedwright {

/// How an answer stands to the figures as they are now.
enum class AnswerStanding : std::uint8_t {
  none,    ///< not answered
  stands,  ///< the figures are those it was given for, to a hundredth
  changed, ///< they have moved since
};

/// A value as an answer keeps it: with the unit people know it by.
std::string answer_figure(const std::optional<AnyQuantity>& value);

AnswerStanding standing_of(const Answer* answer, const std::optional<AnyQuantity>& actual,
                           const std::optional<AnyQuantity>& allowed);

/// What a limit asks and what it allows, whichever of them the result is.
struct AskedAndAllowed {
  std::optional<AnyQuantity> asked;
  std::optional<AnyQuantity> allowed;
};
AskedAndAllowed asked_and_allowed(const Limit& limit);

/// One thing that deserves care.
struct Concern {
  std::optional<std::size_t> axis;             ///< nothing: all axes together
  std::optional<Finding> finding;              ///< else it is a limit, close or over:
  std::optional<LimitId> limit;                ///< of the axis,
  std::optional<MachineLimitId> machine_limit; ///< or of all together
  PartSlot part{};                             ///< a builder would look at first
  std::string_view member;                     ///< the field there; may be empty
  std::optional<AnyQuantity> actual;           ///< what is asked
  std::optional<AnyQuantity> allowed;
  std::optional<double> margin;
  Verdict verdict = Verdict::open; ///< of a limit
  bool grave = false;
  std::optional<Answer> answer;
  AnswerStanding standing = AnswerStanding::none;

  AnswerTo kind() const { return finding ? AnswerTo::finding : AnswerTo::limit; }
  std::string_view code() const;      ///< stable id of what it is
  std::string_view part_name() const; ///< as an answer names it: empty for a limit
};

/// An answer to what is no longer found.
struct IdleAnswer {
  std::optional<std::size_t> axis;
  Answer answer;
};

struct Concerns {
  /// Grave findings, then limits over and close by their margins, then the other findings.
  std::vector<Concern> list;
  std::vector<IdleAnswer> idle;
};

Concerns concerns_of(const Machine& machine, std::span<const AxisResults> results,
                     const MachineResults& together);

/// The answers of an axis, or of the machine.
std::vector<Answer>& answers_of(Machine& machine, std::optional<std::size_t> axis);
const std::vector<Answer>& answers_of(const Machine& machine, std::optional<std::size_t> axis);

/// An answer to the concern with its figures as they are now.
Answer answer_to(const Concern& concern, std::string note);

} // namespace feedwright
