// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/read_file.h"
#include "machine/machine_file.h"
#include "sizing/size_axis.h"
#include "support/axes.h"

#include <nlohmann/json.hpp>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validator.hpp>

#include <catch2/catch.hpp>

#include <filesystem>

using namespace feedwright;

namespace {

const std::filesystem::path source_dir = FEEDWRIGHT_SOURCE_DIR;

std::string contents(const std::filesystem::path& path) {
  const auto text = read_file(path, std::size_t{1} << 20U);
  REQUIRE(text);
  return *text;
}

std::vector<std::filesystem::path> sample_files() {
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(source_dir / "sample-machines")) {
    if (entry.path().extension() == ".feedwright") {
      files.push_back(entry.path());
    }
  }
  std::sort(files.begin(), files.end());
  return files;
}

bool fits_schema(const nlohmann::json& document) {
  const nlohmann::json schema_text = nlohmann::json::parse(machine_schema());
  valijson::Schema schema;
  valijson::SchemaParser parser;
  parser.populateSchema(valijson::adapters::NlohmannJsonAdapter(schema_text), schema);
  valijson::Validator validator;
  return validator.validate(schema, valijson::adapters::NlohmannJsonAdapter(document), nullptr);
}

std::string replaced(std::string text, std::string_view from, std::string_view to) {
  const auto at = text.find(from);
  REQUIRE(at != std::string::npos);
  return text.replace(at, from.size(), to);
}

std::vector<Fault> faults_in(const std::string& text) {
  const auto read = read_machine(text);
  REQUIRE_FALSE(read);
  return read.error();
}

std::string plank_router() {
  return contents(source_dir / "sample-machines/plank-router.feedwright");
}

} // namespace

TEST_CASE("every sample machine is sound, fits the schema and is written back byte for byte") {
  REQUIRE(sample_files().size() == 3);
  for (const auto& path : sample_files()) {
    INFO(path.filename().string());
    const std::string text = contents(path);
    const auto machine = read_machine(text);
    REQUIRE(machine);
    CHECK(write_machine(*machine) == text);
    CHECK(fits_schema(nlohmann::json::parse(text)));
  }
}

TEST_CASE("every sample machine shows its builder something close or over") {
  for (const auto& path : sample_files()) {
    INFO(path.filename().string());
    const auto machine = read_machine(contents(path));
    REQUIRE(machine);
    int worth_seeing = 0;
    for (const Axis& axis : machine->axes) {
      for (const Limit& limit : size_axis(*machine, axis).limits) {
        worth_seeing +=
            limit.applies && (limit.verdict == Verdict::close || limit.verdict == Verdict::over);
      }
    }
    CHECK(worth_seeing > 0);
  }
}

TEST_CASE("whip governs the plank router and the clockmaker's head can fall") {
  const auto router = read_machine(plank_router());
  REQUIRE(router);
  CHECK(size_axis(*router, router->axes[0]).governing == LimitId::whip);
  CHECK(size_axis(*router, router->axes[0]).limit(LimitId::whip).verdict == Verdict::over);
  const auto mill = read_machine(contents(source_dir / "sample-machines/clock-mill.feedwright"));
  REQUIRE(mill);
  const auto findings = size_axis(*mill, mill->axes[1]).findings;
  CHECK(std::any_of(findings.begin(), findings.end(), [](const Finding& finding) {
    return finding.code == FindingCode::axis_can_fall;
  }));
}

TEST_CASE("the published schema is the one the program makes") {
  CHECK(contents(source_dir / "resources/schema/feedwright-machine.schema.json") ==
        machine_schema());
}

TEST_CASE("the schema refuses what the reader refuses by type") {
  const auto document = nlohmann::json::parse(plank_router());
  auto wrong = document;
  wrong["axes"][0]["drive"]["lead"] = 5;
  CHECK_FALSE(fits_schema(wrong));
  wrong = document;
  wrong["axes"][0]["drive"]["far_end"] = "loose";
  CHECK_FALSE(fits_schema(wrong));
  wrong = document;
  wrong["axes"][0]["drive"].erase("span");
  CHECK_FALSE(fits_schema(wrong));
  wrong = document;
  wrong["axes"][0]["transmission"]["belt_teeth"] = 80.5;
  CHECK_FALSE(fits_schema(wrong));
}

TEST_CASE("a machine made in the program survives writing and reading") {
  const Machine machine = testing::ordinary_router();
  const auto read = read_machine(write_machine(machine));
  REQUIRE(read);
  CHECK(write_machine(*read) == write_machine(machine));
  const auto before = size_axis(machine, machine.axes[0]);
  const auto after = size_axis(*read, read->axes[0]);
  for (const ResultDescriptor& result : result_descriptors()) {
    INFO(result.name);
    CHECK(result.get(before) == result.get(after));
  }
}

TEST_CASE("texts stay as typed and unknown members stay byte for byte") {
  std::string text = replaced(plank_router(), "\"lead\": \"5 mm\"", "\"lead\": \"0,2 in\"");
  text = replaced(
      text, "        \"changed\": [\"span\", \"overall_length\", \"motor_end\", \"far_end\"]\n",
      "        \"changed\": [\"span\", \"overall_length\", \"motor_end\", \"far_end\"],\n"
      "        \"grease\": {\"kind\":  [1.50, null]}\n");
  text = replaced(text, "    \"minor\": 0\n", "    \"minor\": 7\n");
  const auto machine = read_machine(text);
  REQUIRE(machine);
  CHECK(machine->newer_minor == 7);
  CHECK(write_machine(*machine) == text);
}

TEST_CASE("all faults of a file are listed with their lines") {
  std::string text = replaced(plank_router(), "\"lead\": \"5 mm\"", "\"lead\": \"5 kg\"");
  text = replaced(text, "\"voltage\": \"48 V\"", "\"voltage\": \"-48 V\"");
  text = replaced(text, "\"belt_teeth\": 92", "\"belt_teeth\": 92.5");
  text = replaced(text, "\"far_end\": \"supported\"", "\"far_end\": \"glued\"");
  const auto faults = faults_in(text);
  REQUIRE(faults.size() == 4);
  CHECK(faults[0].path == "supply.voltage");
  CHECK(faults[0].line == 10);
  CHECK(faults[0].code == FaultCode::out_of_bounds);
  CHECK(faults[1].path == "axes[0].transmission.belt_teeth");
  CHECK(faults[2].path == "axes[0].drive.lead");
  CHECK(faults[2].code == FaultCode::unreadable_quantity);
  CHECK(faults[2].quantity->found_kind == Kind::mass);
  CHECK(faults[3].code == FaultCode::unknown_choice);
  CHECK(faults[3].choices.size() == 3);
}

TEST_CASE("a machine that reads well but cannot be is refused with the place") {
  const std::pair<std::string, std::string> edits[] = {
      {"\"motor_end\": \"fixed\",\n        \"far_end\": \"supported\"",
       "\"motor_end\": \"free\",\n        \"far_end\": \"supported\""},
      {"\"core_diameter\": \"13.2 mm\"", "\"core_diameter\": \"17 mm\""},
      {"\"travel\": \"1200 mm\"", "\"travel\": \"1600 mm\""},
      {"\"travel\": \"1200 mm\"", "\"travel\": \"1300 mm\",\n      \"nut_at_start\": \"300 mm\""},
      {"[\"150 rpm\", \"1.65 N·m\"]", "[\"450 rpm\", \"1.65 N·m\"]"},
      {"\"belt_teeth\": 92", "\"belt_teeth\": 24"},
      {"\"letter\": \"Y\"", "\"letter\": \"X\""},
  };
  const FaultCode codes[] = {FaultCode::ends_do_not_hold,   FaultCode::core_not_below_nominal,
                             FaultCode::travel_beyond_span, FaultCode::nut_beyond_span,
                             FaultCode::curve_not_rising,   FaultCode::belt_too_short,
                             FaultCode::duplicate_letter};
  for (std::size_t i = 0; i < std::size(edits); ++i) {
    const auto faults = faults_in(replaced(plank_router(), edits[i].first, edits[i].second));
    INFO(i);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].code == codes[i]);
    CHECK(faults[0].line > 0);
  }
}

TEST_CASE("other files and newer formats are refused in one fault") {
  CHECK(faults_in("{\"a\": 1}")[0].code == FaultCode::not_a_machine);
  CHECK(faults_in("[]")[0].code == FaultCode::not_a_machine);
  CHECK(faults_in("")[0].code == FaultCode::not_json);
  CHECK(faults_in("{")[0].code == FaultCode::not_json);
  const auto newer = faults_in(replaced(plank_router(), "\"major\": 2", "\"major\": 3"));
  REQUIRE(newer.size() == 1);
  CHECK(newer[0].code == FaultCode::newer_major);
}

TEST_CASE("a file cut short anywhere is refused, never half read") {
  const std::string text = plank_router();
  for (std::size_t length = 0; length + 2 < text.size(); length += 7) {
    CHECK_FALSE(read_machine(std::string_view(text).substr(0, length)));
  }
}

TEST_CASE("every field of every part refuses what is not its own") {
  const Machine machine = *read_machine(plank_router());
  const auto document = nlohmann::ordered_json::parse(plank_router());
  int mutants = 0;
  for (const PartSlot slot : axis_slots) {
    for (const FieldView& field : fields_of(machine, 0, slot)) {
      const auto refused = [&](const nlohmann::ordered_json& value) {
        auto mutant = document;
        auto& axis = mutant["axes"][0];
        auto& part = slot == PartSlot::axis ? axis : axis[std::string(slot_name(slot))];
        part[std::string(field.info.member)] = value;
        INFO(slot_name(slot) << "." << field.info.member << " = " << value.dump());
        const auto read = read_machine(mutant.dump());
        REQUIRE_FALSE(read);
        CHECK(read.error()[0].path.find(field.info.member) != std::string::npos);
        ++mutants;
      };
      refused(nlohmann::ordered_json::array({1}));
      refused(nullptr);
      if (field.info.type == FieldType::quantity) {
        refused(field.info.kind == Kind::mass ? "5 mm" : "5 kg");
        refused("5 furlongs");
        refused("");
        if (field.info.kind != Kind::number) {
          refused("5");
        }
        if (field.info.bound != Bound::any) {
          refused("-1 " + std::string(field.info.unit));
        }
        if (field.info.bound == Bound::positive) {
          refused("0 " + std::string(field.info.unit));
        }
      } else if (field.info.type == FieldType::count) {
        refused(1.9);
        refused(-1);
        refused("12");
      } else if (field.info.type == FieldType::choice) {
        refused("none such");
      }
    }
  }
  CHECK(mutants > 150);
}
