// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Tests neither read nor write what belongs to whoever runs them.

#include <QByteArray>
#include <QTemporaryDir>

namespace feedwright::testing {

/// A variable of the environment, for as long as this lives; then what it was.
class Environment {
public:
  Environment(const char* name, const QByteArray& value)
      : name_(name), was_set_(qEnvironmentVariableIsSet(name)), before_(qgetenv(name)) {
    qputenv(name, value);
  }
  ~Environment() { was_set_ ? qputenv(name_, before_) : qunsetenv(name_); }
  Environment(const Environment&) = delete;
  Environment& operator=(const Environment&) = delete;

private:
  const char* name_;
  bool was_set_;
  QByteArray before_;
};

/// The folders in which a desktop keeps a user's data, settings and state: empty ones, for this
/// process and those it starts.
class OwnHome {
public:
  /// Whether a test that started this process has given it one.
  static bool is_given() { return qEnvironmentVariableIsSet(given); }

private:
  static constexpr const char* given = "FEEDWRIGHT_TEST_HOME";

  QByteArray in(const char* folder) const {
    return home_.filePath(QString::fromLatin1(folder)).toUtf8();
  }

  QTemporaryDir home_;
  Environment given_{given, home_.path().toUtf8()};
  Environment data_{"XDG_DATA_HOME", in("data")};
  Environment config_{"XDG_CONFIG_HOME", in("config")};
  Environment state_{"XDG_STATE_HOME", in("state")};
};

} // namespace feedwright::testing
