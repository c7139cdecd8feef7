// SPDX-License-Identifier: GPL-3.0-or-later
#include "files/stale_temporaries.h"
#include "files/write_file.h"

#include "core/files/temporary_folder.h"

#include <sys/stat.h>
#include <unistd.h>

namespace {

using namespace feedwright;
namespace fs = std::filesystem;

FileFault fault_of(const fs::path& path, std::string_view bytes = "new") {
  const auto result = write_file(path, bytes);
  REQUIRE_FALSE(result.has_value());
  CHECK(result.error().path == path.string());
  return result.error().fault;
}

mode_t mode_of(const fs::path& path) {
  struct stat state {};
  REQUIRE(::stat(path.c_str(), &state) == 0);
  return state.st_mode & 07777U;
}

} // namespace

TEST_CASE("a file is made and replaced with exactly the bytes given") {
  const TemporaryFolder folder;
  for (const std::size_t size : {0U, 1U, 4095U, 4096U, 4097U, 70'000U, 300'000U, 5U}) {
    std::string bytes(size, 'x');
    for (std::size_t i = 0; i < size; ++i) {
      bytes[i] = static_cast<char>(i * 131U);
    }
    REQUIRE(write_file(folder / "a.json", bytes).has_value());
    CHECK(got(folder / "a.json") == bytes);
    CHECK(folder.entries() == 1);
  }
}

TEST_CASE("a bare file name goes to the working folder") {
  const TemporaryFolder folder;
  const fs::path before = fs::current_path();
  fs::current_path(folder.path());
  const bool written = write_file("bare.json", "new").has_value();
  fs::current_path(before);
  CHECK(written);
  CHECK(got(folder / "bare.json") == "new");
}

TEST_CASE("the mode bits of the file replaced are kept") {
  const TemporaryFolder folder;
  for (const mode_t mode : {0600U, 0644U, 0664U, 0755U, 0200U, 02664U}) {
    put(folder / "a", "old");
    REQUIRE(::chmod((folder / "a").c_str(), mode) == 0);
    REQUIRE(write_file(folder / "a", "new").has_value());
    CHECK(mode_of(folder / "a") == mode);
  }
}

TEST_CASE("a new file gets what the umask leaves") {
  const TemporaryFolder folder;
  for (const mode_t mask : {022U, 077U, 002U, 027U}) {
    const mode_t before = ::umask(mask);
    const bool written = write_file(folder / std::to_string(mask), "new").has_value();
    ::umask(before);
    REQUIRE(written);
    CHECK(mode_of(folder / std::to_string(mask)) == (0666U & ~mask));
  }
}

TEST_CASE("owner and group of the file replaced are kept where permitted") {
  if (::geteuid() != 0) {
    WARN("skipped: only the superuser can give files away");
    return;
  }
  const TemporaryFolder folder;
  put(folder / "a", "old");
  REQUIRE(::chown((folder / "a").c_str(), 12'345, 23'456) == 0);
  REQUIRE(::chmod((folder / "a").c_str(), 0660) == 0);
  REQUIRE(write_file(folder / "a", "new").has_value());
  struct stat state {};
  REQUIRE(::stat((folder / "a").c_str(), &state) == 0);
  CHECK(state.st_uid == 12'345);
  CHECK(state.st_gid == 23'456);
  CHECK((state.st_mode & 07777U) == 0660);
}

TEST_CASE("links stay and what they point to is replaced") {
  const TemporaryFolder folder;
  fs::create_directory(folder / "sub");
  put(folder / "sub/target", "old");
  fs::create_symlink("sub/target", folder / "near");
  fs::create_symlink(folder / "near", folder / "far");
  fs::create_directory_symlink("sub", folder / "door");
  REQUIRE(write_file(folder / "far", "new").has_value());
  CHECK(got(folder / "sub/target") == "new");
  REQUIRE(write_file(folder / "door/target", "newer").has_value());
  CHECK(got(folder / "sub/target") == "newer");
  CHECK(fs::read_symlink(folder / "near") == "sub/target");
  CHECK(fs::read_symlink(folder / "far") == folder / "near");
  CHECK(fs::is_symlink(folder / "door"));
}

TEST_CASE("a link that leads nowhere gets its target made") {
  const TemporaryFolder folder;
  fs::create_symlink("missing", folder / "link");
  REQUIRE(write_file(folder / "link", "new").has_value());
  CHECK(fs::is_symlink(folder / "link"));
  CHECK(got(folder / "missing") == "new");
  fs::create_symlink("no-folder/missing", folder / "worse");
  CHECK(fault_of(folder / "worse") == FileFault::not_found);
}

TEST_CASE("a ring of links is refused and left") {
  const TemporaryFolder folder;
  fs::create_symlink("b", folder / "a");
  fs::create_symlink("a", folder / "b");
  fs::create_symlink("self", folder / "self");
  CHECK(fault_of(folder / "a") == FileFault::link_loop);
  CHECK(fault_of(folder / "self") == FileFault::link_loop);
  CHECK(fault_of(folder / "self/file") == FileFault::link_loop);
  CHECK(fs::is_symlink(folder / "a"));
  CHECK(folder.entries() == 3);
}

TEST_CASE("folders, pipes and devices are refused and left") {
  const TemporaryFolder folder;
  fs::create_directory(folder / "sub");
  REQUIRE(::mkfifo((folder / "pipe").c_str(), 0600) == 0);
  fs::create_symlink("pipe", folder / "to-pipe");
  CHECK(fault_of(folder / "sub") == FileFault::is_directory);
  CHECK(fault_of(folder.path() / "sub/") == FileFault::is_directory);
  CHECK(fault_of(folder / "sub/..") == FileFault::is_directory);
  CHECK(fault_of(folder / "pipe") == FileFault::not_regular_file);
  CHECK(fault_of(folder / "to-pipe") == FileFault::not_regular_file);
  CHECK(fault_of("/dev/null") == FileFault::not_regular_file);
  CHECK(fs::is_fifo(folder / "pipe"));
  CHECK(fs::is_character_file("/dev/null"));
  CHECK(folder.entries() == 3);
}

TEST_CASE("a file marked read-only is refused and left, even to the superuser") {
  const TemporaryFolder folder;
  put(folder / "a", "old");
  REQUIRE(::chmod((folder / "a").c_str(), 0444) == 0);
  CHECK(fault_of(folder / "a") == FileFault::read_only_file);
  CHECK(got(folder / "a") == "old");
  CHECK(folder.entries() == 1);
}

TEST_CASE("a read-only folder is refused and its file left") {
  if (::geteuid() == 0) {
    WARN("skipped: the superuser may write in any folder");
    return;
  }
  const TemporaryFolder folder;
  put(folder / "a", "old");
  fs::permissions(folder.path(), fs::perms::owner_read | fs::perms::owner_exec);
  CHECK(fault_of(folder / "a") == FileFault::no_permission);
  CHECK(fault_of(folder / "b") == FileFault::no_permission);
  CHECK(got(folder / "a") == "old");
}

TEST_CASE("paths that name no place for a file are refused by kind") {
  const TemporaryFolder folder;
  put(folder / "file", "old");
  CHECK(fault_of("") == FileFault::bad_name);
  CHECK(fault_of(folder / std::string("a\0b", 3)) == FileFault::bad_name);
  CHECK(fault_of(folder / "none/a") == FileFault::not_found);
  CHECK(fault_of(folder / "file/a") == FileFault::not_found);
  CHECK(fault_of(folder / std::string(256, 'n')) == FileFault::name_too_long);
  CHECK(fault_of("/") == FileFault::is_directory);
  CHECK(folder.entries() == 1);
}

TEST_CASE("names up to 255 bytes work, whatever is in them") {
  const TemporaryFolder folder;
  std::string greek = "x";
  while (greek.size() < 255) {
    greek += "\u03c6";
  }
  for (const std::string& name :
       {std::string(255, 'n'), greek, std::string("a\n\"b' \\ \U0001F529"), std::string("\xff\xfe"),
        std::string(" "), std::string("-rf"), std::string(236, 'm'), std::string(235, 'm')}) {
    for (const char* bytes : {"first", "second"}) {
      REQUIRE(write_file(folder / name, bytes).has_value());
      CHECK(got(folder / name) == bytes);
    }
  }
  CHECK(folder.entries() == 8);
}

TEST_CASE("another hard link keeps the old bytes") {
  const TemporaryFolder folder;
  put(folder / "a", "old");
  fs::create_hard_link(folder / "a", folder / "b");
  REQUIRE(write_file(folder / "a", "new").has_value());
  CHECK(got(folder / "a") == "new");
  CHECK(got(folder / "b") == "old");
}

TEST_CASE("only stale temporary files of this program are swept") {
  const TemporaryFolder folder;
  const auto made = [&](const std::string& name, int hours) {
    put(folder / name, "x");
    fs::last_write_time(folder / name,
                        fs::file_time_type::clock::now() - std::chrono::hours(hours));
  };
  made(".a.json.feedwright-abc123", 25);
  made(".b.json.feedwright-zzzzzz", 240);
  made(".c.json.feedwright-abc123", 23);  // may still be written to
  made(".d.json.feedwright-abc123", -48); // from the future
  made("a.json.feedwright-abc123", 48);
  made(".a.json.feedwright-abc12", 48);
  made(".a.json.feedwright-ABC123", 48);
  made(".a.json.feedwright-abc123.bak", 48);
  made(".feedwright-abc123", 48);
  made("a.json", 48);
  fs::create_directory(folder / ".e.feedwright-abc123");
  fs::create_symlink("a.json", folder / ".f.feedwright-abc123");
  CHECK(sweep_stale_temporaries(folder.path()) == 2);
  CHECK_FALSE(fs::exists(folder / ".a.json.feedwright-abc123"));
  CHECK_FALSE(fs::exists(folder / ".b.json.feedwright-zzzzzz"));
  CHECK(folder.entries() == 10);
  CHECK(sweep_stale_temporaries(folder.path()) == 0);
  CHECK(sweep_stale_temporaries(folder / "none") == 0);
}
