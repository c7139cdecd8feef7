// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/machine_file.h"
#include "sizing/size_axis.h"
#include "support/axes.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <random>

using namespace feedwright;

namespace {

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
  case FieldType::text:
  case FieldType::points: break;
  }
  return std::monostate{};
}

} // namespace

TEST_CASE("absurd machines are refused or give finite results") {
  std::mt19937 random(20260);
  int computed = 0;
  for (int round = 0; round < 20000; ++round) {
    Machine machine = testing::ordinary_router();
    for (const PartSlot slot : {PartSlot::motor, PartSlot::transmission}) {
      const auto types = part_types(slot);
      set_part_type(machine, 0, slot, types[random() % types.size()]);
    }
    for (const PartSlot slot : axis_slots) {
      for (const FieldView& field : fields_of(machine, 0, slot)) {
        // about a third of the fields, so that many machines stay sound
        if (random() % 3 == 0) {
          set_field(machine, 0, slot, field.info.member, absurd(field.info, random), {});
        }
      }
    }
    if (!faults_of(machine).empty()) {
      continue;
    }
    ++computed;
    const AxisResults results = size_axis(machine, machine.axes[0]);
    for (const ResultDescriptor& result : result_descriptors()) {
      if (const auto value = result.get(results)) {
        INFO("round " << round << " " << result.name);
        REQUIRE(std::isfinite(value->si));
      }
    }
  }
  CHECK(computed > 200);
}
