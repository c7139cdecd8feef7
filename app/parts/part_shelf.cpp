// SPDX-License-Identifier: GPL-3.0-or-later
#include "parts/part_shelf.h"

#include "files/read_file.h"
#include "text/words.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QStandardPaths>

namespace feedwright {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Parts)

public:
  static QString unreadable(const QString& name) { return tr("%1 cannot be read.").arg(name); }
  static QString trouble(const QString& name, const QString& sentence) {
    return tr("%1: %2", "name of a parts list, what is wrong with it").arg(name, sentence);
  }
};

class Shelver {
public:
  explicit Shelver(PartShelf& shelf) : shelf_(shelf) {}

  void add_folder(const QDir& folder, bool own) {
    const QFileInfoList files =
        folder.entryInfoList({QStringLiteral("*.json")}, QDir::Files, QDir::Name);
    for (const QFileInfo& file : files) {
      add_file(file, own);
    }
  }

  /// Tooth counts of belts that shops keep.
  void add_stock(const QDir& folder) {
    const QFileInfoList files =
        folder.entryInfoList({QStringLiteral("*.json")}, QDir::Files, QDir::Name);
    for (const QFileInfo& file : files) {
      const auto text = contents(file);
      const auto stock = text ? read_stock_belts(*text) : std::nullopt;
      if (!stock) {
        shelf_.troubles << Words::unreadable(file.fileName());
        continue;
      }
      shelf_.stock_belts.insert(shelf_.stock_belts.end(), stock->begin(), stock->end());
    }
  }

private:
  void add_file(const QFileInfo& file, bool own) {
    const auto text = contents(file);
    if (!text) {
      shelf_.troubles << Words::unreadable(file.fileName());
      return;
    }
    auto parts = read_parts(*text);
    if (!parts) {
      shelf_.troubles << Words::trouble(file.fileName(), words::fault_text(parts.error().front()));
      return;
    }
    for (ListedPart& part : *parts) {
      shelf_.parts.push_back({std::move(part), own});
    }
  }

  static std::optional<std::string> contents(const QFileInfo& file) {
    constexpr std::size_t largest = std::size_t{4} << 20U;
    if (!file.filePath().startsWith(QLatin1Char(':'))) {
      auto text = read_file(file.filePath().toStdString(), largest);
      return text ? std::optional(*std::move(text)) : std::nullopt;
    }
    QFile resource(file.filePath());
    return resource.open(QIODevice::ReadOnly) ? std::optional(resource.readAll().toStdString())
                                              : std::nullopt;
  }

  PartShelf& shelf_;
};

} // namespace

QString own_parts_folder() {
  return QDir(QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation))
      .filePath(QStringLiteral("feedwright/parts"));
}

PartShelf read_part_shelf() {
  PartShelf shelf;
  Shelver shelver(shelf);
  shelver.add_folder(QDir(QStringLiteral(":/resources/parts")), false);
  shelver.add_folder(QDir(own_parts_folder()), true);
  shelver.add_stock(QDir(QStringLiteral(":/resources/parts/stock")));
  shelver.add_stock(QDir(own_parts_folder() + QStringLiteral("/stock")));
  return shelf;
}

} // namespace feedwright
