// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/machine_store.h"

#include "files/content_fingerprint.h"
#include "files/read_file.h"
#include "files/write_file.h"
#include "machine/machine_file.h"
#include "text/file_words.h"
#include "text/words.h"

#include <QFile>
#include <QFileInfo>

namespace feedwright {

namespace {

/// Sample machines live in the program itself; everything else on disk.
tl::expected<std::string, QString> bytes_of(const QString& path) {
  if (path.startsWith(QLatin1String(":/"))) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
      return tl::unexpected(file.errorString());
    }
    return file.readAll().toStdString();
  }
  const auto bytes =
      read_file(std::filesystem::path(QFile::encodeName(path).toStdString()), largest_machine_file);
  if (!bytes) {
    return tl::unexpected(words::file_error_text(bytes.error()));
  }
  return *bytes;
}

} // namespace

tl::expected<StoredMachine, QStringList> load_machine(const QString& path) {
  const auto bytes = bytes_of(path);
  if (!bytes) {
    return tl::unexpected(QStringList{bytes.error()});
  }
  auto machine = read_machine_as_typed(*bytes);
  if (!machine) {
    QStringList sentences;
    for (const Fault& fault : machine.error()) {
      sentences.append(words::fault_text(fault));
    }
    return tl::unexpected(sentences);
  }
  return StoredMachine{*std::move(machine), QString::fromStdString(content_fingerprint(*bytes))};
}

tl::expected<QString, QString> store_machine(const Machine& machine, const QString& path) {
  const std::string text = write_machine(machine);
  // Notes or tables longer than are read: the file that is there is worth more.
  if (const auto read = read_machine_as_typed(text); !read) {
    return tl::unexpected(words::fault_text(read.error().front()));
  }
  const auto written =
      write_file(std::filesystem::path(QFile::encodeName(path).toStdString()), text);
  if (!written) {
    return tl::unexpected(words::file_error_text(written.error()));
  }
  return QString::fromStdString(content_fingerprint(text));
}

QString fingerprint_of_file(const QString& path) {
  const auto bytes =
      read_file(std::filesystem::path(QFile::encodeName(path).toStdString()), largest_machine_file);
  return bytes ? QString::fromStdString(content_fingerprint(*bytes)) : QString();
}

} // namespace feedwright
