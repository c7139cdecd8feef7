// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Machine files of examples reckoned in print, sized by the program.

#include "headless/program.h"
#include "units/kind.h"

#include <nlohmann/json.hpp>

#include <cmath>

namespace feedwright::testing {

/// The results of one axis, as `check --json` prints them.
class Figures {
public:
  Figures(const QString& file, std::size_t axis) {
    const Outcome outcome = run({QStringLiteral("check"), file, QStringLiteral("--json")});
    INFO(outcome.err.toStdString());
    // A limit may be over: what the sources leave out is only filled in.
    REQUIRE((outcome.code == 0 || outcome.code == 1));
    results_ = nlohmann::json::parse(outcome.out.toStdString()).at("axes").at(axis).at("results");
  }

  template <class Q>
  Q get(const char* name) const {
    return from_si<Q>(si_of(name));
  }
  double number(const char* name) const { return si_of(name); }
  Torque torque(const char* name) const { return get<Torque>(name); }
  Inertia inertia(const char* name) const { return get<Inertia>(name); }
  Force force(const char* name) const { return get<Force>(name); }
  AngularVelocity motor_speed() const { return get<AngularVelocity>("motor_speed"); }

private:
  double si_of(const char* name) const {
    INFO(name);
    REQUIRE(results_.at(name).is_object());
    return results_.at(name).at("si").get<double>();
  }

  nlohmann::json results_;
};

inline QString machine_file(const char* name) {
  return QStringLiteral(FEEDWRIGHT_SOURCE_DIR "/tests/published/machines/%1.feedwright")
      .arg(QString::fromUtf8(name));
}

inline Figures sized(const char* name, std::size_t axis = 0) {
  return {machine_file(name), axis};
}

using Changes = std::vector<std::pair<std::string, std::string>>;

/// The same with places of the file put in another way.
inline Figures sized_with(const char* name, const Changes& changes) {
  const auto read = read_file(machine_file(name).toStdString(), std::size_t{1} << 20U);
  REQUIRE(read);
  std::string text = *read;
  for (const auto& [from, to] : changes) {
    const std::size_t at = text.find(from);
    INFO(from);
    REQUIRE(at != std::string::npos);
    text.replace(at, from.size(), to);
  }
  const MachineFolder folder;
  return {folder.put("changed.feedwright", std::string_view(text)), 0};
}

/// Whether a figure comes out as the source prints it: within half of what its last digit counts.
template <class Q>
bool prints(const Q& actual, const Q& printed, const Q& last_digit) {
  const double off = std::abs(si_value(actual) - si_value(printed));
  CAPTURE(si_value(actual), si_value(printed));
  return off <= si_value(last_digit) * (0.5 + 1e-6);
}

} // namespace feedwright::testing
