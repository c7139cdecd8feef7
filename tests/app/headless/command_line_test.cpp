// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/command_line.h"
#include "headless/headless.h"
#include "headless/program.h"
#include "headless/text_table.h"

#include <nlohmann/json.hpp>

using namespace feedwright;
using namespace feedwright::headless;
using feedwright::testing::Outcome;
using feedwright::testing::run;

namespace {

/// A command line as main gets it.
struct Line {
  explicit Line(std::vector<std::string> words) : words_(std::move(words)) {
    words_.insert(words_.begin(), "feedwright");
    for (std::string& word : words_) {
      pointers_.push_back(word.data());
    }
    pointers_.push_back(nullptr);
  }
  int count() const { return static_cast<int>(words_.size()); }
  char** words() { return pointers_.data(); }

private:
  std::vector<std::string> words_;
  std::vector<char*> pointers_;
};

} // namespace

TEST_CASE("nothing or a machine file alone opens the window") {
  Line none({});
  CHECK_FALSE(is_command(none.count(), none.words()));
  CHECK(path_to_open(none.count(), none.words()).empty());
  Line file({"plank.json"});
  CHECK_FALSE(is_command(file.count(), file.words()));
  CHECK(path_to_open(file.count(), file.words()) == "plank.json");
  Line german({"--language", "de", "plank.json"});
  CHECK_FALSE(is_command(german.count(), german.words()));
  CHECK(path_to_open(german.count(), german.words()) == "plank.json");
  CHECK(language_asked_for(german.count(), german.words()) == "de");
}

TEST_CASE("a command word, an option or two files do not open the window") {
  for (const auto& words : std::vector<std::vector<std::string>>{
           {"check", "a.json"}, {"--help"}, {"--version"}, {"--nonsense"}, {"a.json", "b.json"}}) {
    Line line(words);
    INFO(words.front());
    CHECK(is_command(line.count(), line.words()));
    CHECK(path_to_open(line.count(), line.words()).empty());
  }
}

TEST_CASE("a command line is read as written") {
  Line line({"picture", "a.json", "--output", "b.png", "--size", "1920x1080", "--dark", "--axis",
             "2", "--study", "3", "--machine"});
  const CommandLine read = read_command_line(line.count(), line.words());
  REQUIRE(read.command);
  CHECK(read.command->task == Task::picture);
  CHECK(read.command->file == "a.json");
  CHECK(read.command->output == "b.png");
  CHECK(read.command->size == QSize(1920, 1080));
  CHECK(read.command->machine);
  CHECK(read.command->dark);
  CHECK(read.command->axis == std::size_t{1});
  CHECK(read.command->study == std::size_t{2});
}

TEST_CASE("a command line that makes no sense gets a sentence with what was wrong") {
  const auto wrong = [](std::vector<std::string> words) {
    Line line(std::move(words));
    const CommandLine read = read_command_line(line.count(), line.words());
    CHECK(read.wrong);
    CHECK_FALSE(read.command);
    return read.text;
  };
  CHECK_THAT(wrong({"sheet", "a.json", "-o", "b.pdf", "--paper", "legal"}),
             Catch::Contains("legal"));
  CHECK_THAT(wrong({"sheet", "a.json", "-o", "b.pdf", "--date", "2026-02-30"}),
             Catch::Contains("2026-02-30"));
  CHECK_THAT(wrong({"picture", "a.json", "-o", "b.png", "--size", "wide"}),
             Catch::Contains("wide"));
  CHECK_THAT(wrong({"picture", "a.json", "-o", "b.png", "--axis", "0"}), Catch::Contains("\"0\""));
  CHECK_THAT(wrong({"picture", "a.json", "-o", "b.png", "--study", "-1"}),
             Catch::Contains("\"-1\""));
  CHECK_THAT(wrong({"sheet", "a.json"}), Catch::Contains("--output"));
  CHECK_THAT(wrong({"check", "a.json", "--verbose"}), Catch::Contains("--verbose"));
}

TEST_CASE("the help names every command and every exit code") {
  const Outcome help = run({QStringLiteral("--help")});
  CHECK(help.code == 0);
  for (const char* word :
       {"check", "sheet", "schema", "picture", "\n  0  ", "\n  1  ", "\n  2  "}) {
    INFO(word);
    CHECK(help.out.contains(word));
  }
}

TEST_CASE("every command has a help of its own") {
  for (const char* command : {"check", "sheet", "schema", "picture"}) {
    const Outcome help = run({QString::fromLatin1(command), QStringLiteral("--help")});
    CHECK(help.code == 0);
    CHECK(help.out.contains("--language"));
  }
}

TEST_CASE("an unknown option ends in 2 and a sentence on standard error") {
  const Outcome outcome = run({QStringLiteral("--nonsense")});
  CHECK(outcome.code == 2);
  CHECK(outcome.out.isEmpty());
  CHECK(outcome.err.contains("--nonsense"));
}

TEST_CASE("the schema is printed whole") {
  const Outcome outcome = run({QStringLiteral("schema")});
  CHECK(outcome.code == 0);
  CHECK(nlohmann::json::parse(outcome.out.toStdString()).contains("$schema"));
}

TEST_CASE("columns of a text table align by what the eye sees, not by bytes") {
  const QString table = text_table(
      {{QStringLiteral("µm²"), QStringLiteral("1")}, {QStringLiteral("mm"), QStringLiteral("10")}},
      {Side::left, Side::right}, 2);
  CHECK(table == QStringLiteral("  µm²   1\n  mm   10\n"));
}
