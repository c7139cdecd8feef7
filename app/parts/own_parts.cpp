// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/own_parts.h"

#include "files/read_file.h"
#include "files/write_file.h"
#include "parts/part_shelf.h"
#include "text/file_words.h"
#include "text/words.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>

#include <algorithm>

namespace feedwright {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Parts)

public:
  static QString no_folder(const QString& path) {
    return tr("The folder %1 cannot be made.").arg(path);
  }
  static QString trouble(const QString& name, const QString& sentence) {
    return tr("%1: %2", "name of a parts list, what is wrong with it").arg(name, sentence);
  }
};

std::filesystem::path as_path(const QString& path) {
  return {QFile::encodeName(path).toStdString()};
}

QString file_of(ListedKind kind) {
  return QStringLiteral("own-%1.json").arg(QString::fromStdString(std::string(list_name(kind))));
}

/// The rows there are; none if there is no such file yet.
tl::expected<std::vector<ListedPart>, QString> rows_in(const QString& path) {
  if (!QFile::exists(path)) {
    return {};
  }
  constexpr std::size_t largest = std::size_t{4} << 20U;
  const auto text = read_file(as_path(path), largest);
  if (!text) {
    return tl::unexpected(Words::trouble(path, words::file_error_text(text.error())));
  }
  auto rows = read_parts(*text);
  if (!rows) {
    return tl::unexpected(Words::trouble(path, words::fault_text(rows.error().front())));
  }
  return *std::move(rows);
}

} // namespace

tl::expected<QString, QString> keep_own_part(const ListedPart& part) {
  const QString folder = own_parts_folder();
  if (!QDir().mkpath(folder)) {
    return tl::unexpected(Words::no_folder(folder));
  }
  const QString path = QDir(folder).filePath(file_of(part.kind));
  auto rows = rows_in(path);
  if (!rows) {
    return tl::unexpected(rows.error());
  }
  const auto same = std::ranges::find(*rows, part.name, &ListedPart::name);
  if (same != rows->end()) {
    *same = part;
  } else {
    rows->push_back(part);
  }
  const auto written = write_file(as_path(path), write_parts(part.kind, *rows));
  if (!written) {
    return tl::unexpected(Words::trouble(path, words::file_error_text(written.error())));
  }
  return path;
}

} // namespace feedwright
