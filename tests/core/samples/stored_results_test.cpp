// SPDX-License-Identifier: GPL-3.0-or-later

// Every sample machine is opened, computed, saved, reopened, and held against stored results. Where
// a change of the calculation moves them on purpose, the stored ones are written anew:
//   feedwright check sample-machines/NAME.feedwright --json > tests/samples/NAME.results.json
//   feedwright check tests/machines/NAME.feedwright --json > tests/machines/NAME.results.json

#include "files/read_file.h"
#include "machine/machine_file.h"
#include "sheet/write_results.h"
#include "sizing/size_axis.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace feedwright;

namespace {

const std::filesystem::path source_dir = FEEDWRIGHT_SOURCE_DIR;

std::string contents(const std::filesystem::path& path) {
  const auto text = read_file(path, std::size_t{1} << 20U);
  INFO(path.string());
  REQUIRE(text);
  return *text;
}

nlohmann::json results_of(const Machine& machine) {
  std::vector<AxisResults> results;
  for (const Axis& axis : machine.axes) {
    results.push_back(size_axis(machine, axis));
  }
  return nlohmann::json::parse(write_results(machine, results, {}));
}

void check_same(const nlohmann::json& now, const nlohmann::json& stored, const std::string& path) {
  INFO(path);
  if (stored.is_number()) {
    REQUIRE(now.is_number());
    // Libraries of other machines may differ in the last bits of a sine.
    CHECK(now.get<double>() == Approx(stored.get<double>()).epsilon(1e-9).margin(1e-12));
    return;
  }
  REQUIRE(now.type() == stored.type());
  if (stored.is_structured()) {
    REQUIRE(now.size() == stored.size());
    for (const auto& [name, value] : stored.items()) {
      check_same(stored.is_array() ? now.at(std::stoul(name)) : now.at(name), value,
                 path + "/" + name);
    }
  } else {
    CHECK(now == stored);
  }
}

void check_folder(const std::filesystem::path& machines, const std::filesystem::path& results,
                  int expected) {
  int samples = 0;
  for (const auto& entry : std::filesystem::directory_iterator(machines)) {
    if (entry.path().extension() != ".feedwright") {
      continue;
    }
    ++samples;
    const std::string name = entry.path().stem().string();
    const auto stored = nlohmann::json::parse(contents(results / (name + ".results.json")));
    const auto opened = read_machine(contents(entry.path()));
    REQUIRE(opened);
    const auto reopened = read_machine(write_machine(*opened));
    REQUIRE(reopened);
    check_same(results_of(*opened).at("axes"), stored.at("axes"), name);
    CHECK(results_of(*reopened) == results_of(*opened));
  }
  CHECK(samples == expected);
}

} // namespace

TEST_CASE("every sample machine gives its stored results, also after it is saved and reopened") {
  check_folder(source_dir / "sample-machines", source_dir / "tests/samples", 3);
}

TEST_CASE("a machine of each kind of train gives its stored results, also saved and reopened") {
  check_folder(source_dir / "tests/machines", source_dir / "tests/machines", 10);
}
