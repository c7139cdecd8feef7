// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Runs the built program as a script would.

#include "files/read_file.h"
#include "files/write_file.h"
#include "machine/machine_file.h"
#include "support/axes.h"

#include <QByteArray>
#include <QProcess>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

#ifndef FEEDWRIGHT_PROGRAM
#define FEEDWRIGHT_PROGRAM FEEDWRIGHT_BINARY_DIR "/app/feedwright"
#endif

namespace feedwright::testing {

struct Outcome {
  int code = -1;
  QByteArray out;
  QByteArray err;
};

using Variables = std::vector<std::pair<QString, QString>>;

/// Without a display and without a platform named, whatever the test itself runs on.
inline Outcome run(const QStringList& arguments, const Variables& variables = {},
                   const QString& standard_output = {}) {
  QProcess process;
  QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
  for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "LC_ALL", "LANG"}) {
    environment.remove(QString::fromLatin1(name));
  }
  for (const auto& [name, value] : variables) {
    environment.insert(name, value);
  }
  process.setProcessEnvironment(environment);
  if (!standard_output.isEmpty()) {
    process.setStandardOutputFile(standard_output);
  }
  process.start(QStringLiteral(FEEDWRIGHT_PROGRAM), arguments);
  REQUIRE(process.waitForFinished(60'000));
  REQUIRE(process.exitStatus() == QProcess::NormalExit);
  return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

/// What another program, such as pdftotext, says.
inline QByteArray said_by(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  REQUIRE(process.waitForFinished(60'000));
  REQUIRE(process.exitCode() == 0);
  return process.readAllStandardOutput();
}

/// A folder with machine files in it.
class MachineFolder {
public:
  QString path(const char* name) const { return folder_.filePath(QString::fromUtf8(name)); }

  QString put(const char* name, std::string_view bytes) const {
    REQUIRE(write_file(path(name).toStdString(), bytes));
    return path(name);
  }
  QString put(const char* name, const Machine& machine) const {
    return put(name, std::string_view(write_machine(machine)));
  }
  QByteArray bytes(const char* name) const {
    const auto read = read_file(path(name).toStdString(), std::size_t{64} << 20U);
    REQUIRE(read);
    return QByteArray::fromStdString(*read);
  }

private:
  QTemporaryDir folder_;
};

/// The ordinary router asked for more feed than its screw can turn.
inline Machine hurried_router() {
  using namespace literals;
  Machine machine = ordinary_router();
  machine.axes.front().targets.feed = Positive<Velocity>::of(60_m_per_min);
  return machine;
}

} // namespace feedwright::testing
