// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/headless.h"
#include "sheet/program_version.h"
#include "text/language.h"
#include "text/text_of.h"
#include "window/workbench.h"

#include <QApplication>

#include <cstdio>

int main(int argc, char** argv) {
  using namespace feedwright;
  if (const auto code = run_headless(argc, argv)) {
    return *code;
  }
  const QString path = QString::fromLocal8Bit(path_to_open(argc, argv).c_str());
  const QString language = QString::fromStdString(language_asked_for(argc, argv));
  QApplication application(argc, argv);
  QApplication::setApplicationName(QStringLiteral("Feedwright"));
  QApplication::setOrganizationName(QStringLiteral("feedwright"));
  const auto version = program_version();
  QApplication::setApplicationVersion(text_of(version));
  Workbench workbench;
  if (!workbench.start(path, language)) {
    std::fprintf(stderr, "%s\n",
                 qPrintable(QStringLiteral("There is no language \"%1\"; there are: %2.")
                                .arg(language, language_codes())));
    return static_cast<int>(ExitCode::unusable);
  }
  return QApplication::exec();
}
