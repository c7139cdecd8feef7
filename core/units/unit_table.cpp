// SPDX-License-Identifier: GPL-3.0-or-later
#include "units/unit_table.h"

#include <algorithm>
#include <array>
#include <utility>

namespace feedwright {

namespace {

// Exact by definition: inch and pound (international yard and pound agreement, 1959), standard
// gravity (CGPM 1901). Horsepower is 550 ft·lbf/s.
constexpr double inch = 0.0254;
constexpr double foot = 0.3048;
constexpr double pound = 0.45359237;
constexpr double gravity = 9.80665;
constexpr double pound_force = pound * gravity;
constexpr double ounce_force = pound_force / 16.0;
constexpr double turn = 2.0 * pi;
constexpr double horsepower = 550.0 * foot * pound_force;
constexpr double zero_celsius = 273.15;

using enum Kind;
// In the order of Kind; in each kind the usual units first.
constexpr Unit all_units[] = {
    {"", number, 1.0},
    {"%", number, 0.01},
    {"mm", length, 1e-3},
    {"µm", length, 1e-6},
    {"cm", length, 1e-2},
    {"m", length, 1.0},
    {"km", length, 1e3},
    {"in", length, inch},
    {"ft", length, foot},
    {"mm²", area, 1e-6},
    {"cm²", area, 1e-4},
    {"m²", area, 1.0},
    {"in²", area, inch* inch},
    {"mm⁴", second_moment, 1e-12},
    {"cm⁴", second_moment, 1e-8},
    {"m⁴", second_moment, 1.0},
    {"kg", mass, 1.0},
    {"g", mass, 1e-3},
    {"t", mass, 1e3},
    {"lb", mass, pound},
    {"oz", mass, pound / 16.0},
    {"s", time, 1.0},
    {"ms", time, 1e-3},
    {"µs", time, 1e-6},
    {"min", time, 60.0},
    {"h", time, 3600.0},
    {"N", force, 1.0},
    {"kN", force, 1e3},
    {"kgf", force, gravity},
    {"lbf", force, pound_force},
    {"ozf", force, ounce_force},
    {"N·m", torque, 1.0},
    {"N·cm", torque, 1e-2},
    {"N·mm", torque, 1e-3},
    {"mN·m", torque, 1e-3},
    {"kgf·cm", torque, gravity * 1e-2},
    {"ozf·in", torque, ounce_force* inch},
    {"lbf·in", torque, pound_force* inch},
    {"lbf·ft", torque, pound_force* foot},
    {"J", energy, 1.0},
    {"kJ", energy, 1e3},
    {"W·h", energy, 3600.0},
    {"W", power, 1.0},
    {"kW", power, 1e3},
    {"hp", power, horsepower},
    {"kg·cm²", inertia, 1e-4},
    {"g·cm²", inertia, 1e-7},
    {"kg·m²", inertia, 1.0},
    {"kg·mm²", inertia, 1e-6},
    {"oz·in²", inertia, pound / 16.0 * inch* inch},
    {"lb·in²", inertia, pound* inch* inch},
    {"°", angle, pi / 180.0},
    {"rad", angle, 1.0},
    {"rpm", angular_velocity, turn / 60.0},
    {"rad/s", angular_velocity, 1.0},
    {"rev/s", angular_velocity, turn},
    {"°/s", angular_velocity, pi / 180.0},
    {"rad/s²", angular_acceleration, 1.0},
    {"m/min", velocity, 1.0 / 60.0},
    {"mm/s", velocity, 1e-3},
    {"mm/min", velocity, 1e-3 / 60.0},
    {"m/s", velocity, 1.0},
    {"in/min", velocity, inch / 60.0},
    {"in/s", velocity, inch},
    {"m/s²", acceleration, 1.0},
    {"mm/s²", acceleration, 1e-3},
    {"in/s²", acceleration, inch},
    {"g", acceleration, gravity},
    {"GPa", pressure, 1e9},
    {"MPa", pressure, 1e6},
    {"N/mm²", pressure, 1e6},
    {"Pa", pressure, 1.0},
    {"bar", pressure, 1e5},
    {"psi", pressure, pound_force / (inch * inch)},
    {"ksi", pressure, 1e3 * pound_force / (inch * inch)},
    {"kg/m³", density, 1.0},
    {"g/cm³", density, 1e3},
    {"lb/in³", density, pound / (inch * inch * inch)},
    {"g/m", linear_density, 1e-3},
    {"kg/m", linear_density, 1.0},
    {"g/mm", linear_density, 1.0},
    {"N/µm", stiffness, 1e6},
    {"N/mm", stiffness, 1e3},
    {"N/cm", stiffness, 1e2},
    {"N/m", stiffness, 1.0},
    {"kHz", frequency, 1e3},
    {"Hz", frequency, 1.0},
    {"MHz", frequency, 1e6},
    {"steps/s", frequency, 1.0},
    {"°C", temperature, 1.0, zero_celsius},
    {"K", temperature, 1.0},
    {"°F", temperature, 5.0 / 9.0, zero_celsius - 32.0 * 5.0 / 9.0},
    {"V", voltage, 1.0},
    {"mV", voltage, 1e-3},
    {"kV", voltage, 1e3},
    {"A", current, 1.0},
    {"mA", current, 1e-3},
    {"Ω", resistance, 1.0},
    {"mΩ", resistance, 1e-3},
    {"kΩ", resistance, 1e3},
    {"mH", inductance, 1e-3},
    {"µH", inductance, 1e-6},
    {"H", inductance, 1.0},
    {"N·m/A", torque_per_current, 1.0},
    {"mm", lead, 1e-3 / turn},
    {"mm/rad", lead, 1e-3},
    {"cm", lead, 1e-2 / turn},
    {"m", lead, 1.0 / turn},
    {"in", lead, inch / turn},
    {"m/rad", lead, 1.0},
    {"mm·rpm", rim_speed, 1e-3 * turn / 60.0},
    {"m·rad/s", rim_speed, 1.0},
    {"steps/mm", per_length, 1e3},
    {"1/mm", per_length, 1e3},
    {"1/m", per_length, 1.0},
    {"1/in", per_length, 1.0 / inch},
    {"m/s³", jerk, 1.0},
    {"mm/s³", jerk, 1e-3},
    {"N·m/rad", torsional_stiffness, 1.0},
    {"N·m/°", torsional_stiffness, 180.0 / pi},
    {"ppm/K", expansion, 1e-6},
    {"1/K", expansion, 1.0},
    {"µF", capacitance, 1e-6},
    {"mF", capacitance, 1e-3},
    {"F", capacitance, 1.0},
};

struct Spelling {
  Kind kind;
  std::string_view text; ///< already plain
  std::string_view symbol;
};

// Spellings the trade uses besides the symbol itself.
constexpr Spelling spellings[] = {
    {length, "\"", "in"},
    {length, "inch", "in"},
    {length, "inches", "in"},
    {length, "'", "ft"},
    {length, "feet", "ft"},
    {length, "micron", "µm"},
    {lead, "\"", "in"},
    {lead, "inch", "in"},
    {lead, "mm/rev", "mm"},
    {lead, "mm/turn", "mm"},
    {lead, "in/rev", "in"},
    {mass, "lbs", "lb"},
    {force, "lb", "lbf"},
    {force, "lbs", "lbf"},
    {force, "oz", "ozf"},
    {force, "kp", "kgf"},
    {torque, "kgcm", "kgf·cm"},
    {torque, "ozin", "ozf·in"},
    {torque, "lbin", "lbf·in"},
    {torque, "inlb", "lbf·in"},
    {torque, "inlbf", "lbf·in"},
    {torque, "lbft", "lbf·ft"},
    {torque, "ftlb", "lbf·ft"},
    {torque, "ftlbf", "lbf·ft"},
    {angular_velocity, "1/min", "rpm"},
    {angular_velocity, "min^1", "rpm"},
    {angular_velocity, "r/min", "rpm"},
    {angular_velocity, "rev/min", "rpm"},
    {angular_velocity, "deg/s", "°/s"},
    {angular_velocity, "rps", "rev/s"},
    {velocity, "ipm", "in/min"},
    {angle, "deg", "°"},
    {frequency, "1/s", "Hz"},
    {frequency, "pps", "steps/s"},
    {expansion, "µm/m/K", "ppm/K"},
    {resistance, "ohm", "Ω"},
    {resistance, "Ohm", "Ω"},
    {resistance, "mohm", "mΩ"},
    {temperature, "C", "°C"},
    {temperature, "F", "°F"},
};

/// What one character sequence is written as in a plain spelling; empty drops it.
constexpr std::pair<std::string_view, std::string_view> rewritten[] = {
    {"·", ""},  {"⋅", ""},  {"−", "^"}, {"²", "2"}, {"³", "3"},  {"⁴", "4"},
    {"⁻", "^"}, {"¹", "1"}, {"μ", "u"}, {"µ", "u"}, {"″", "\""}, {"”", "\""},
    {"′", "'"}, {"’", "'"}, {"º", "°"}, {"Ω", "Ω"}, {" ", ""},   {"\t", ""},
    {".", ""},  {"-", ""},  {"^", ""},  {"*", ""}};

/// Units of one kind are neighbours in the table.
struct Range {
  std::size_t first = 0, count = 0;
};

constexpr std::size_t kind_count = static_cast<std::size_t>(Kind::compound) + 1;

constexpr std::array<Range, kind_count> make_ranges() {
  std::array<Range, kind_count> ranges{};
  for (std::size_t i = 0; i < std::size(all_units); ++i) {
    Range& range = ranges[static_cast<std::size_t>(all_units[i].kind)];
    if (range.count == 0) {
      range.first = i;
    }
    ++range.count;
  }
  return ranges;
}

constexpr auto ranges = make_ranges();

} // namespace

std::string plain_spelling(std::string_view text) {
  std::string plain;
  while (!text.empty()) {
    const auto* rule = std::ranges::find_if(
        rewritten, [&](const auto& candidate) { return text.starts_with(candidate.first); });
    if (rule != std::end(rewritten)) {
      plain += rule->second;
      text.remove_prefix(rule->first.size());
    } else {
      plain += text.front();
      text.remove_prefix(1);
    }
  }
  return plain;
}

std::span<const Unit> units_of(Kind kind) {
  const Range range = ranges[static_cast<std::size_t>(kind)];
  return std::span(all_units).subspan(range.first, range.count);
}

const Unit* find_unit(Kind kind, std::string_view text) {
  const std::string plain = plain_spelling(text);
  for (const Unit& unit : units_of(kind)) {
    if (unit.symbol == text || plain_spelling(unit.symbol) == plain) {
      return &unit;
    }
  }
  for (const Spelling& spelling : spellings) {
    if (spelling.kind == kind && spelling.text == plain) {
      return find_unit(kind, spelling.symbol);
    }
  }
  return nullptr;
}

std::optional<Kind> kind_with_unit(std::string_view text) {
  for (std::size_t k = 0; k < kind_count; ++k) {
    if (!text.empty() && find_unit(static_cast<Kind>(k), text) != nullptr) {
      return static_cast<Kind>(k);
    }
  }
  return std::nullopt;
}

const Unit& si_unit(Kind kind) {
  static constexpr Unit none{"", Kind::compound, 1.0};
  for (const Unit& unit : units_of(kind)) {
    if (unit.factor == 1.0 && unit.offset == 0.0) {
      return unit;
    }
  }
  return none;
}

} // namespace feedwright
