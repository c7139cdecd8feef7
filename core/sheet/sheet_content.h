// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What stands on the drive-sizing sheet, as data and ids. Words and painting are made elsewhere;
// every writer of a sheet starts from here, so that all of them say the same.

#include "sheet/file_units.h"
#include "sizing/size_machine.h"
#include "working/working.h"

#include <string>
#include <vector>

namespace feedwright {

/// Which file and program a sheet is of; all given by the caller, so that the same input gives
/// the same sheet.
struct SheetIdentity {
  std::string file_name;
  std::string fingerprint; ///< of the file's bytes; empty if never saved
  std::string date;        ///< as to be printed
};

/// What there is to buy.
enum class PurchaseKind : std::uint8_t {
  motor,
  coupling,
  belt,
  pulley,
  screw,           ///< with its nut
  roller,          ///< a smooth idler
  fixed_bearing,   ///< holds place and direction
  support_bearing, ///< holds place
  guide_blocks,
  brake,
  supply,
};

/// One number or word of a part's description.
struct PurchasePiece {
  PartSlot slot{};
  FieldView field;
};

struct Purchase {
  PurchaseKind kind{};
  std::int64_t count = 1;
  std::string_view type; ///< of the motor: "servo"; else empty
  std::vector<PurchasePiece> pieces;
  std::string source;               ///< list or data sheet behind it
  std::vector<std::string> letters; ///< of the axes that take it, each once
};

struct SheetResult {
  ResultId id{};
  std::optional<AnyQuantity> value;
};

/// The fields of one part.
struct SheetInputs {
  PartSlot slot{};
  std::string_view type; ///< "belt", empty where there is only one type
  std::string source;
  std::vector<FieldView> fields;
};

/// The limit with the least room.
struct LowestMargin {
  LimitId limit{};
  double margin = 0.0;
  Verdict verdict = Verdict::open;
};

/// One axis in the machine's table.
struct SummaryRow {
  std::string letter;
  std::string name;
  std::vector<PurchasePiece> motor;
  std::vector<PurchasePiece> transmission;
  std::vector<PurchasePiece> drive;
  std::string_view drive_type;
  std::string_view motor_type;
  std::string_view transmission_type;
  std::optional<LimitId> governing;
  std::optional<AnyQuantity> feed;
  std::optional<AnyQuantity> feed_wanted;
  std::optional<AnyQuantity> acceleration;
  std::optional<AnyQuantity> acceleration_wanted;
  std::optional<LimitId> governing_thrust_limit;
  std::optional<AnyQuantity> thrust;        ///< axial, that the lowest limit allows
  std::optional<AnyQuantity> thrust_wanted; ///< what is asked of that limit
  std::optional<AnyQuantity> resolution;
  std::optional<AnyQuantity> lost_motion;
  std::optional<LowestMargin> lowest; ///< nothing if all are open
};

/// Figures for the controller.
struct SetUp {
  std::optional<AnyQuantity> steps_per_length;
  /// The field that sets it, for its name: microsteps of a stepper, steps per turn of a servo.
  std::optional<FieldView> steps;
  std::optional<AnyQuantity> top_feed; ///< the highest at which every known limit of feed is clear
  std::optional<AnyQuantity> acceleration;
  /// Whether the acceleration is the one asked for; else what there is at the wanted feed.
  bool acceleration_as_wanted = false;
};

/// A load case with the name its row has.
struct SheetCase {
  std::string name;
  CaseResult result;
};

/// A pulley of a belt loop with what it sits on.
struct SheetPulley {
  PulleyRole role{};
  PulleyResult result;
};

struct SheetAxis {
  std::string letter;
  std::string name;
  std::vector<SheetInputs> inputs;
  std::vector<SheetResult> results; ///< all, in their declared order
  std::vector<Limit>
      limits; ///< those that apply: by scale, from what allows least or has least to spare
  std::vector<LimitId> not_applying;
  std::optional<LimitId> governing;        ///< of feed
  std::optional<LimitId> governing_thrust; ///< of axial force
  std::vector<Finding> findings;
  std::vector<Answer> answers; ///< to findings and limits of the axis
  SetUp set_up;
  std::vector<SheetCase> cases;
  std::vector<SheetPulley> loop;
  std::vector<WorkingStep> working;
};

struct SheetContent {
  std::string machine_name;
  std::string story;
  SheetIdentity identity;
  std::string_view program_version;
  FileUnits units; ///< results are shown in them
  std::vector<SummaryRow> summary;
  std::vector<Purchase> purchases;
  std::vector<SheetInputs> machine_inputs; ///< supply and controller
  MachineResults together;
  std::vector<Answer> answers; ///< to findings and limits of all axes together
  std::vector<SheetAxis> axes;
};

/// Sizes every axis, recording the working. The machine must be sound (see faults_of).
SheetContent sheet_content(const Machine& machine, const SheetIdentity& identity);

/// The figures for the controller of one axis.
SetUp set_up_of(const Machine& machine, std::size_t axis, const AxisResults& results);

/// The parts of all axes, like ones counted together, in the order of PurchaseKind.
std::vector<Purchase> purchases_of(const Machine& machine);

/// The applying limit with the least margin; nothing if all are open.
std::optional<LowestMargin> lowest_margin(const AxisResults& results);

/// Whether an applying limit is over.
bool any_limit_over(const AxisResults& results);

} // namespace feedwright
