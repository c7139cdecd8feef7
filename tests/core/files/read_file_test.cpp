// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/read_file.h"

#include "core/files/temporary_folder.h"

#include <sys/stat.h>
#include <unistd.h>

#include <atomic>
#include <thread>

namespace {

using namespace feedwright;
namespace fs = std::filesystem;

FileFault fault_of(const fs::path& path, std::size_t limit = 1000) {
  const auto bytes = read_file(path, limit);
  REQUIRE_FALSE(bytes.has_value());
  CHECK(bytes.error().path == path.string());
  return bytes.error().fault;
}

} // namespace

TEST_CASE("a file is read byte for byte up to the limit and refused beyond") {
  const TemporaryFolder folder;
  for (const std::size_t size : {0U, 1U, 262'143U, 262'144U, 262'145U, 600'000U}) {
    std::string bytes(size, '\0');
    for (std::size_t i = 0; i < size; ++i) {
      bytes[i] = static_cast<char>(i * 37U);
    }
    put(folder / "a", bytes);
    const auto read = read_file(folder / "a", size);
    REQUIRE(read.has_value());
    CHECK(*read == bytes);
    if (size > 0) {
      CHECK(fault_of(folder / "a", size - 1) == FileFault::too_large);
    }
  }
}

TEST_CASE("a huge sparse file is refused without being read") {
  const TemporaryFolder folder;
  put(folder / "a", "x");
  fs::resize_file(folder / "a", std::uintmax_t{1} << 40U);
  CHECK(fault_of(folder / "a", std::size_t{8} << 20U) == FileFault::too_large);
}

TEST_CASE("what is no regular file is refused without waiting") {
  const TemporaryFolder folder;
  REQUIRE(::mkfifo((folder / "pipe").c_str(), 0600) == 0);
  fs::create_symlink("pipe", folder / "to-pipe");
  CHECK(fault_of(folder / "pipe") == FileFault::not_regular_file);
  CHECK(fault_of(folder / "to-pipe") == FileFault::not_regular_file);
  CHECK(fault_of("/dev/zero") == FileFault::not_regular_file);
  CHECK(fault_of("/dev/null") == FileFault::not_regular_file);
  CHECK(fault_of(folder.path()) == FileFault::is_directory);
}

TEST_CASE("a path that leads to no file is refused by kind") {
  const TemporaryFolder folder;
  put(folder / "file", "x");
  fs::create_symlink("loop", folder / "loop");
  fs::create_symlink("nowhere", folder / "dangling");
  CHECK(fault_of("") == FileFault::bad_name);
  CHECK(fault_of(folder / std::string("file\0x", 6)) == FileFault::bad_name);
  CHECK(fault_of(folder / "none") == FileFault::not_found);
  CHECK(fault_of(folder / "file/a") == FileFault::not_found);
  CHECK(fault_of(folder / "dangling") == FileFault::not_found);
  CHECK(fault_of(folder / "loop") == FileFault::link_loop);
  CHECK(fault_of(folder / std::string(256, 'n')) == FileFault::name_too_long);
}

TEST_CASE("an unreadable file is refused for want of permission") {
  if (::geteuid() == 0) {
    WARN("skipped: the superuser may read any file");
    return;
  }
  const TemporaryFolder folder;
  put(folder / "a", "x");
  REQUIRE(::chmod((folder / "a").c_str(), 0) == 0);
  CHECK(fault_of(folder / "a") == FileFault::no_permission);
}

TEST_CASE("a file that holds more than its size says counts as changed") {
  // The kernel's status files are regular files of size 0 that hold text.
  CHECK(fault_of("/proc/self/status") == FileFault::changed_while_reading);
}

TEST_CASE("a file that grows while it is read is never half read") {
  const TemporaryFolder folder;
  put(folder / "a", "");
  std::atomic<bool> stop{false};
  std::thread writer([&] {
    std::ofstream file(folder / "a", std::ios::binary);
    for (int i = 0; i < 20'000 && !stop; ++i) {
      file << "0123456789abcde\n" << std::flush;
    }
  });
  int whole = 0;
  int changed = 0;
  for (int i = 0; i < 2'000; ++i) {
    const auto bytes = read_file(folder / "a", 1'000'000);
    if (bytes) {
      ++whole;
      CHECK(bytes->size() % 16 == 0);
    } else {
      ++changed;
      CHECK(bytes.error().fault == FileFault::changed_while_reading);
    }
  }
  stop = true;
  writer.join();
  CHECK(whole + changed == 2'000);
}
