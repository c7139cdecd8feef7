// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/program.h"
#include "sizing/results.h"

#include <nlohmann/json.hpp>

using namespace feedwright;
using feedwright::testing::hurried_router;
using feedwright::testing::MachineFolder;
using feedwright::testing::ordinary_router;
using feedwright::testing::Outcome;
using feedwright::testing::run;

namespace {

const QString check = QStringLiteral("check");
const QString json = QStringLiteral("--json");

nlohmann::json results_of(const QString& file) {
  const Outcome outcome = run({check, file, json});
  REQUIRE(outcome.code == 0);
  return nlohmann::json::parse(outcome.out.toStdString()).at("axes").at(0).at("results");
}

/// The machine's own file with every place of one text put in another way.
std::string respelt(std::string text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  REQUIRE(at != std::string::npos);
  return text.replace(at, from.size(), to);
}

} // namespace

TEST_CASE("check leaves with 0 while no limit is over") {
  const MachineFolder folder;
  const Outcome outcome = run({check, folder.put("router.json", ordinary_router())});
  CHECK(outcome.code == 0);
  CHECK(outcome.err.isEmpty());
  CHECK(outcome.out.contains("Ordinary router"));
}

TEST_CASE("check leaves with 1 when a limit is over") {
  const MachineFolder folder;
  const Outcome outcome = run({check, folder.put("router.json", hurried_router())});
  CHECK(outcome.code == 1);
  CHECK(outcome.err.isEmpty());
  CHECK(outcome.out.contains("over"));
}

TEST_CASE("check leaves with 2 and names a file that is not there") {
  const Outcome outcome = run({check, QStringLiteral("/no/such/router.json")});
  CHECK(outcome.code == 2);
  CHECK(outcome.out.isEmpty());
  CHECK(outcome.err.contains("/no/such/router.json"));
}

TEST_CASE("check lists every fault of a broken file with its line, one sentence each") {
  const MachineFolder folder;
  std::string text = write_machine(ordinary_router());
  text = respelt(text, "\"span\": \"900 mm\"", "\"span\": \"900 kg\"");
  text = respelt(text, "\"mass\": \"20 kg\"", "\"mass\": \"-20 kg\"");
  const auto line_of = [&text](const char* what) {
    return 1 + std::count(text.begin(), text.begin() + static_cast<long>(text.find(what)), '\n');
  };
  const Outcome outcome = run({check, folder.put("router.json", std::string_view(text))});
  CHECK(outcome.code == 2);
  CHECK(outcome.out.isEmpty());
  CHECK(outcome.err.count('\n') == 2);
  for (const char* what : {"\"span\"", "\"mass\""}) {
    INFO(what << " in: " << outcome.err.toStdString());
    CHECK(outcome.err.contains(QByteArray::number(static_cast<int>(line_of(what)))));
  }
}

TEST_CASE("check refuses what is not JSON, empty, or no machine, and says which") {
  const MachineFolder folder;
  for (const char* text : {"", "{", "[]", "{\"format\": \"shopping list\"}", "\xff\xfe"}) {
    INFO(text);
    const Outcome outcome = run({check, folder.put("broken.json", std::string_view(text))});
    CHECK(outcome.code == 2);
    CHECK(outcome.out.isEmpty());
    CHECK(outcome.err.contains("broken.json"));
  }
}

TEST_CASE("the JSON of check has every result there is") {
  const MachineFolder folder;
  const nlohmann::json results = results_of(folder.put("router.json", ordinary_router()));
  for (const ResultDescriptor& result : result_descriptors()) {
    CHECK(results.contains(std::string(result.name)));
  }
}

TEST_CASE("check gives the same bytes in every locale") {
  const MachineFolder folder;
  const QString file = folder.put("router.json", hurried_router());
  for (const QStringList& arguments : {QStringList{check, file}, QStringList{check, file, json}}) {
    const Outcome plain = run(arguments, {{QStringLiteral("LC_ALL"), QStringLiteral("C")}});
    for (const char* locale : {"de_DE.UTF-8", "tr_TR.UTF-8", "C.UTF-8", ""}) {
      const QString name = QString::fromLatin1(locale);
      const Outcome there = run(arguments, {{QStringLiteral("LC_ALL"), name},
                                            {QStringLiteral("LANG"), name},
                                            {QStringLiteral("LANGUAGE"), QStringLiteral("de")}});
      INFO(locale);
      CHECK(there.code == plain.code);
      CHECK(there.out == plain.out);
    }
  }
}

TEST_CASE("the unit in which a value was entered does not move the results") {
  const MachineFolder folder;
  const std::string text = write_machine(ordinary_router());
  std::string other = respelt(text, "\"span\": \"900 mm\"", "\"span\": \"0.9 m\"");
  other = respelt(other, "\"travel\": \"750 mm\"", "\"travel\": \"75 cm\"");
  other = respelt(other, "\"mass\": \"20 kg\"", "\"mass\": \"20000 g\"");
  other = respelt(other, "\"feed\": \"3 m/min\"", "\"feed\": \"50 mm/s\"");
  const auto first = results_of(folder.put("one.json", std::string_view(text)));
  const auto second = results_of(folder.put("other.json", std::string_view(other)));
  for (const auto& [name, result] : first.items()) {
    INFO(name);
    REQUIRE(second.at(name).is_null() == result.is_null());
    if (!result.is_null()) {
      CHECK(second.at(name).at("si").get<double>() ==
            Approx(result.at("si").get<double>()).epsilon(1e-12).margin(1e-300));
    }
  }
}

TEST_CASE("a full disk under standard output ends in 2 and a sentence") {
  const MachineFolder folder;
  const QString file = folder.put("router.json", ordinary_router());
  const Outcome outcome = run({check, file}, {}, QStringLiteral("/dev/full"));
  CHECK(outcome.code == 2);
  CHECK(outcome.err.contains("Standard output"));
}

TEST_CASE("check speaks German when asked, with a decimal comma") {
  const MachineFolder folder;
  const QString file = folder.put("router.json", ordinary_router());
  const Outcome german = run({check, file, QStringLiteral("--language"), QStringLiteral("de")});
  CHECK(german.code == 0);
  CHECK(german.out.contains("3,125"));
  CHECK(german.out != run({check, file}).out);
}

TEST_CASE("a language there is not is refused by name") {
  const Outcome outcome = run({check, QStringLiteral("x.json"), QStringLiteral("--language=xx")});
  CHECK(outcome.code == 2);
  CHECK(outcome.err.contains("xx"));
}
