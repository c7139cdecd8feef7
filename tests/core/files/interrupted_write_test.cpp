// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/temporary_file.h"
#include "files/write_file.h"

#include "core/files/temporary_folder.h"

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <random>

namespace {

using namespace feedwright;
namespace fs = std::filesystem;

enum Outcome { written = 0, too_large = 1, no_space = 2, other = 3 };

/// Writes in a child whose files may not grow past `limit` bytes, as on a full disk.
int write_under_limit(const fs::path& path, const std::string& bytes, std::size_t limit) {
  const pid_t child = ::fork();
  if (child == 0) {
    std::signal(SIGXFSZ, SIG_IGN);
    const rlimit size{limit, limit};
    if (::setrlimit(RLIMIT_FSIZE, &size) != 0) {
      ::_exit(other);
    }
    const auto result = write_file(path, bytes);
    if (result) {
      ::_exit(written);
    }
    const FileFault fault = result.error().fault;
    ::_exit(fault == FileFault::too_large  ? too_large
            : fault == FileFault::no_space ? no_space
                                           : other);
  }
  int status = 0;
  ::waitpid(child, &status, 0);
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

std::string content(std::size_t size, unsigned seed) {
  std::string bytes(size, '\0');
  std::minstd_rand random(seed + 1);
  for (char& c : bytes) {
    c = static_cast<char>(random());
  }
  return bytes;
}

void check_under_limit(const TemporaryFolder& folder, std::size_t size, std::size_t limit) {
  INFO("size " << size << ", limit " << limit);
  const std::string old = content(777, 1);
  const std::string bytes = content(size, 2);
  put(folder / "a", old);
  const int outcome = write_under_limit(folder / "a", bytes, limit);
  REQUIRE(outcome == (size <= limit ? written : too_large));
  REQUIRE(got(folder / "a") == (outcome == written ? bytes : old));
  REQUIRE(folder.entries() == 1);
}

/// One generation: its number, filling up to a size of its own, and its number again.
std::string generation(unsigned number) {
  constexpr std::size_t sizes[] = {2'048, 14'000, 262'144};
  const std::string mark = std::to_string(number) + "\n";
  return mark + content(sizes[number % 3], number) + mark;
}

[[noreturn]] void write_generations(const fs::path& path) {
  for (unsigned number = 0;; ++number) {
    if (!write_file(path, generation(number))) {
      ::_exit(1);
    }
  }
}

unsigned generation_number(const std::string& bytes) {
  unsigned number = 0;
  for (const char c : bytes.substr(0, bytes.find('\n'))) {
    number = number * 10 + static_cast<unsigned>(c - '0');
  }
  return number;
}

} // namespace

TEST_CASE("a write cut short by a full disk leaves the old file whole and says so") {
  const TemporaryFolder folder;
  for (const std::size_t edge : {1U, 4'096U, 8'192U, 16'384U, 65'536U, 307'200U}) {
    for (const std::size_t size : {edge - 1, edge, edge + 1}) {
      for (const std::size_t limit : {std::size_t{0}, size / 2, size - (size > 0 ? 1 : 0), size,
                                      size + 1, std::size_t{4'096}, std::size_t{12'288}}) {
        check_under_limit(folder, size, limit);
      }
    }
  }
}

TEST_CASE("a write cut short at any 512-byte step leaves the old file whole and says so") {
  const TemporaryFolder folder;
  for (std::size_t limit = 0; limit <= 20'480; limit += 512) {
    check_under_limit(folder, 20'000, limit);
  }
}

TEST_CASE("a first write cut short by a full disk leaves nothing behind") {
  const TemporaryFolder folder;
  const fs::path missing = folder / "new";
  CHECK(write_under_limit(missing, content(5'000, 3), 4'096) == too_large);
  CHECK_FALSE(fs::exists(missing));
  CHECK(folder.entries() == 0);
}

TEST_CASE("a writer killed at any moment leaves one complete generation") {
  const TemporaryFolder folder;
  const fs::path path = folder / "a";
  std::mt19937 random(7); // the moments; what the writer does at them differs from run to run
  unsigned past_the_first = 0;
  REQUIRE(write_file(path, generation(0)).has_value());
  for (int round = 0; round < 30; ++round) {
    const pid_t child = ::fork();
    if (child == 0) {
      write_generations(path);
    }
    ::usleep(static_cast<useconds_t>(random() % 30'000));
    ::kill(child, SIGKILL);
    int status = 0;
    ::waitpid(child, &status, 0);
    REQUIRE(WIFSIGNALED(status));
    const std::string bytes = got(path);
    const unsigned number = generation_number(bytes);
    REQUIRE(bytes == generation(number));
    past_the_first += number > 0 ? 1 : 0;
  }
  CHECK(past_the_first > 0); // the children did write
  for (const auto& entry : fs::directory_iterator(folder.path())) {
    CHECK((entry.path() == path || is_temporary_name(entry.path().filename().string())));
  }
}
