// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The real window with answers in place of its dialogs.

#include "files/read_file.h"
#include "files/write_file.h"
#include "machine/machine_file.h"
#include "support/axes.h"
#include "text/language.h"
#include "window/banner.h"
#include "window/main_window.h"

#include <QCoreApplication>
#include <QTemporaryDir>
#include <QTest>
#include <catch2/catch.hpp>

#include <memory>

namespace feedwright::testing {

/// Answers as set, and remembers what it was asked.
class SetAnswers : public Prompts {
public:
  UnsavedAnswer unsaved = UnsavedAnswer::cancel;
  OverwriteAnswer overwriting = OverwriteAnswer::cancel;
  QString path;
  QString suggested;
  int times_unsaved = 0;
  QList<OverwriteReason> reasons;
  QStringList told;

  UnsavedAnswer unsaved_changes(QWidget*, const QString&) override {
    ++times_unsaved;
    return unsaved;
  }
  OverwriteAnswer overwrite(QWidget*, const QString&, OverwriteReason reason) override {
    reasons << reason;
    return overwriting;
  }
  QString machine_to_open(QWidget*, const QString&) override { return path; }
  QString machine_to_save(QWidget*, const QString&) override { return path; }
  QString pdf_to_save(QWidget*, const QString&) override { return path; }
  QString table_to_import(QWidget*) override { return path; }
  QString study_to_save(QWidget*, const QString& suggestion) override {
    suggested = suggestion;
    return path;
  }
  void tell(QWidget*, const QString& sentence, const QStringList& details) override {
    told << sentence << details;
  }
};

/// A shown window on a machine.
struct Shown {
  explicit Shown(const Machine& machine = ordinary_router(), QSize size = {1280, 800})
      : window(std::make_unique<MainWindow>(std::make_unique<MachineDocument>(machine))) {
    window->files().set_prompts(answers);
    window->resize(size);
    window->show();
    QCoreApplication::processEvents();
  }

  MachineDocument& document() { return window->document(); }

  template <class W = QWidget>
  W& find(const char* name) {
    auto* found = window->findChild<W*>(QString::fromUtf8(name));
    INFO(name);
    REQUIRE(found != nullptr);
    return *found;
  }
  void trigger(const char* action) { find<QAction>(action).trigger(); }

  SetAnswers answers;
  std::unique_ptr<MainWindow> window;
};

/// A folder for files of one test.
struct Folder {
  QTemporaryDir dir;
  QString path(const char* name) const { return dir.filePath(QString::fromUtf8(name)); }
  QString put(const char* name, std::string_view bytes) const {
    REQUIRE(write_file(path(name).toStdString(), bytes));
    return path(name);
  }
  std::string bytes(const char* name) const {
    const auto read = read_file(path(name).toStdString(), std::size_t{1} << 24U);
    REQUIRE(read);
    return *read;
  }
};

/// For the length of a test.
struct InLanguage {
  explicit InLanguage(const char* code) { REQUIRE(use_language(QString::fromLatin1(code))); }
  ~InLanguage() { use_language(QStringLiteral("en")); }
};

} // namespace feedwright::testing
