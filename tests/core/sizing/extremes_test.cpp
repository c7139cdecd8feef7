// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/machine_file.h"
#include "sizing/size_axis.h"
#include "support/axes.h"

#include <catch2/catch.hpp>

#include <cfenv>
#include <cmath>
#include <random>

using namespace feedwright;

namespace {

/// Traps what would make a NaN or an infinity, so that the place shows.
class FloatTraps {
public:
  FloatTraps() { feenableexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW); }
  ~FloatTraps() { fedisableexcept(FE_INVALID | FE_DIVBYZERO | FE_OVERFLOW); }
  FloatTraps(const FloatTraps&) = delete;
  FloatTraps& operator=(const FloatTraps&) = delete;
};

FieldValue absurd(const FieldInfo& info, std::mt19937& random);

/// A few rows of absurd cells.
FieldValue absurd_rows(const FieldInfo& info, std::mt19937& random) {
  TableRows table;
  const std::size_t rows = info.table->least_rows + random() % 4;
  for (std::size_t i = 0; i < rows; ++i) {
    std::vector<CellValue> row = info.table->fresh_row();
    const auto columns = info.table->columns();
    for (std::size_t c = 0; c < columns.size(); ++c) {
      if (columns[c].type != FieldType::text && random() % 2 == 0) {
        row[c] = cell_value(absurd(columns[c], random));
      }
    }
    table.rows.push_back(row);
  }
  return table;
}

/// A value of the field's kind far beyond sense, but within its bound.
FieldValue absurd(const FieldInfo& info, std::mt19937& random) {
  std::uniform_real_distribution<double> exponent(-6.0, 6.0);
  std::uniform_real_distribution<double> unit(0.001, 1.0);
  switch (info.type) {
  case FieldType::quantity: {
    const bool share = info.bound == Bound::fraction || info.bound == Bound::fraction_above_zero;
    return AnyQuantity{info.kind, share ? unit(random) : std::pow(10.0, exponent(random))};
  }
  case FieldType::count:
    return std::uniform_int_distribution<std::int64_t>(
        info.least, std::min<std::int64_t>(info.most, 500))(random);
  case FieldType::choice: {
    std::uniform_int_distribution<std::size_t> pick(0, info.choices.size() - 1);
    return std::string(info.choices[pick(random)]);
  }
  case FieldType::flag: return random() % 2 == 0;
  case FieldType::text: break;
  case FieldType::table: return absurd_rows(info, random);
  }
  return std::monostate{};
}

/// One machine in so many fields absurd that many stay sound.
Machine absurd_machine(std::mt19937& random) {
  Machine machine = testing::ordinary_router();
  for (const PartSlot slot : {PartSlot::motor, PartSlot::transmission, PartSlot::drive}) {
    const auto types = part_types(slot);
    set_part_type(machine, 0, slot, types[random() % types.size()]);
  }
  if (std::holds_alternative<BeltLoopDrive>(machine.axes[0].transmission)) {
    machine.axes[0].sides.layout = DriveLayout::one_motor;
  }
  const auto set_some = [&](PartSlot slot, unsigned one_in) {
    for (const FieldView& field : fields_of(machine, 0, slot)) {
      if (random() % one_in == 0) {
        set_field(machine, 0, slot, field.info.member, absurd(field.info, random), {});
      }
    }
  };
  for (const PartSlot slot : machine_slots) {
    set_some(slot, 2);
  }
  const auto one_in = static_cast<unsigned>(3 + random() % 12);
  for (const PartSlot slot : axis_slots) {
    set_some(slot, one_in);
  }
  return machine;
}

} // namespace

TEST_CASE("a hundred thousand absurd machines are refused by name or give finite results") {
  std::mt19937 random(20260);
  int computed = 0;
  constexpr int machines = 100'000;
  for (int round = 0; round < machines; ++round) {
    const Machine machine = absurd_machine(random);
    const FloatTraps traps;
    if (!faults_of(machine).empty()) {
      continue;
    }
    ++computed;
    const AxisResults results = size_axis(machine, machine.axes[0]);
    for (const ResultDescriptor& result : result_descriptors()) {
      if (const auto value = result.get(results); value && !std::isfinite(value->si)) {
        FAIL("round " << round << " " << result.name);
      }
    }
  }
  INFO(computed << " of " << machines << " were sound");
  CHECK(computed > machines / 20);
}
