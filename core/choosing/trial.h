// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// One axis on which changes are tried, one at a time, and taken back.

#include "choosing/remedy.h"
#include "machine/parts_list.h"
#include "sheet/file_units.h"
#include "sizing/axis_preparation.h"

#include <span>

namespace feedwright::choosing {

/// How a change came out for the limit in question.
enum class Tried : std::uint8_t { short_of, reached, unsound };

bool is_over(const Limit& limit);

/// Over, and its margin lower than before by more than a builder would overlook.
bool is_further_over(const Limit& now, const Limit& then);

/// A listed part tried: with `worse`, some other limit is over that was not, or further over.
struct TriedPart {
  Tried tried{};
  bool worse = false;
};

/// A remedy before everything else about it is known.
struct Proposal {
  RemedyNature nature = RemedyNature::change;
  ChangeSense sense = ChangeSense::exactly;
  std::vector<FieldChange> changes;
  std::optional<std::size_t> part;
  double size = 0.0;
};

class Trial {
public:
  /// The machine must be sound, and the limit over or close.
  Trial(const Machine& machine, std::size_t axis, LimitId limit, std::span<const ListedPart> parts,
        const FileUnits& units);

  /// The machine with the tried axis alone, as number 0.
  const Machine& machine() const { return machine_; }
  const Axis& axis() const { return machine_.axes.front(); }
  const AxisResults& before() const { return before_; }
  LimitId limit() const { return limit_; }
  std::span<const ListedPart> parts() const { return parts_; }

  /// Margin to be reached: as wanted for a limit that is over, clear for one that is close.
  bool reaches(const Limit& limit) const;
  bool reaches(const AxisResults& results) const { return reaches(results.limit(limit_)); }

  Tried with(std::span<const FieldChange> changes);
  TriedPart with(const ListedPart& part);
  /// Whether a limit is over with the results that was not before, or further over.
  bool is_worse(const AxisResults& results) const;
  /// The results with the changes; nothing if that is not sound.
  std::optional<AxisResults> sized(std::span<const FieldChange> changes);

  /// A change of a field to the value, with its text; nothing if the axis has no such field, the
  /// field is open, or that is its value already.
  std::optional<FieldChange> change_to(PartSlot slot, std::string_view member,
                                       const FieldValue& value) const;
  /// The unit the field was typed in, else the one the machine's file speaks in.
  const Unit& unit_of(const FieldView& field) const;

private:
  std::optional<AxisResults> size_now(bool same_motor, bool same_belt) const;
  /// Whether a change shortens the screw below what travel and nut want.
  bool shortens_too_far(const AxisResults& results) const;
  Tried judged(const std::optional<AxisResults>& results) const;

  Machine machine_;
  LimitId limit_;
  std::span<const ListedPart> parts_;
  const FileUnits& units_;
  AxisPreparation ready_;
  AxisResults before_;
  double goal_ = 1.0;
};

/// Sets a field without its note, for trying; false if it does not take the value.
bool put(Machine& machine, const FieldChange& change, const FieldValue& value);

// Each finds the least changes of its sort that reach the limit.

/// Dimensions, masses, forces, figures of parts, targets.
void propose_numbers(Trial& trial, std::vector<Proposal>& proposals);
/// Teeth, microsteps, leads, voltages: by the sizes there are.
void propose_sizes(Trial& trial, std::vector<Proposal>& proposals);
/// The pulleys of a belt loop, each size with a belt that fits.
void propose_loops(Trial& trial, std::vector<Proposal>& proposals);
/// How the screw is held, what turns, single or paired nuts, one motor or two.
void propose_arrangements(Trial& trial, std::vector<Proposal>& proposals);
/// Parts from the lists, each row whole.
void propose_parts(Trial& trial, std::vector<Proposal>& proposals);

} // namespace feedwright::choosing
