// SPDX-License-Identifier: GPL-3.0-or-later
#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include "support/own_home.h"
#include "text/language.h"
#include "window/style.h"

#include <QApplication>

#include <optional>

int main(int argc, char** argv) {
  if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
  }
  std::optional<feedwright::testing::OwnHome> home;
  if (!feedwright::testing::OwnHome::is_given()) {
    home.emplace();
  }
  const QApplication application(argc, argv);
  feedwright::use_language(QStringLiteral("en"));
  feedwright::apply_theme(feedwright::Theme::light);
  return Catch::Session().run(argc, argv);
}
