// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/headless.h"

#include "document/machine_store.h"
#include "files/content_fingerprint.h"
#include "files/read_file.h"
#include "files/write_file.h"
#include "headless/command_line.h"
#include "headless/picture.h"
#include "headless/report_text.h"
#include "headless/standard_output.h"
#include "help/help_topics.h"
#include "machine/machine_file.h"
#include "sheet/write_results.h"
#include "sizing/size_axis.h"
#include "sizing/size_machine.h"
#include "text/file_words.h"
#include "text/language.h"
#include "text/words.h"

#include <QApplication>

#include <algorithm>
#include <memory>

namespace feedwright {

namespace headless {

namespace {

struct OpenedMachine {
  Machine machine;
  SheetIdentity identity;
};

class Run {
  Q_DECLARE_TR_FUNCTIONS(Headless)

public:
  static ExitCode of(const CommandLine& line) {
    if (line.wrong) {
      complain(QString::fromStdString(line.text));
      return ExitCode::unusable;
    }
    return line.command ? Run(*line.command).run() : printed(line.text, ExitCode::none_over);
  }

  static void complain_of_language(const QString& code) {
    complain(tr("There is no language \"%1\"; there are: %2.").arg(code, language_codes()));
  }

private:
  explicit Run(const Command& command) : command_(command) {}

  ExitCode run() const {
    if (command_.task == Task::schema) {
      return printed(machine_schema(), ExitCode::none_over);
    }
    const auto opened = open();
    if (!opened) {
      return ExitCode::unusable;
    }
    switch (command_.task) {
    case Task::check: return check(*opened);
    case Task::sheet: return sheet(*opened);
    case Task::picture:
    case Task::schema: break;
    }
    return picture(*opened);
  }

  static ExitCode printed(std::string_view text, ExitCode code) {
    if (print(text)) {
      return code;
    }
    complain(tr("Standard output did not take everything; what is there is not complete."));
    return ExitCode::unusable;
  }

  std::optional<OpenedMachine> open() const {
    const auto bytes = read_file(command_.file, largest_machine_file);
    if (!bytes) {
      complain(words::file_error_text(bytes.error()));
      return std::nullopt;
    }
    auto machine = read_machine(*bytes);
    if (!machine) {
      const QString name = QString::fromStdString(command_.file.string());
      for (const Fault& fault : machine.error()) {
        complain(tr("%1: %2", "file: sentence").arg(name, words::fault_text(fault)));
      }
      return std::nullopt;
    }
    return OpenedMachine{
        *std::move(machine),
        {command_.file.filename().string(), content_fingerprint(*bytes), std::string()}};
  }

  ExitCode check(const OpenedMachine& opened) const {
    std::vector<AxisResults> results;
    for (const Axis& axis : opened.machine.axes) {
      results.push_back(size_axis(opened.machine, axis));
    }
    const bool over = std::ranges::any_of(
                          results, [](const AxisResults& axis) { return any_limit_over(axis); }) ||
                      any_limit_over(size_machine(opened.machine, results));
    const ExitCode code = over ? ExitCode::some_over : ExitCode::none_over;
    if (command_.json) {
      return printed(write_results(opened.machine, results, opened.identity), code);
    }
    const SheetContent content = sheet_content(opened.machine, opened.identity);
    return printed(report_text(content).toStdString(), code);
  }

  ExitCode sheet(const OpenedMachine& opened) const {
    SheetInfo info;
    info.file_name = QString::fromStdString(opened.identity.file_name);
    info.fingerprint = QString::fromStdString(opened.identity.fingerprint);
    info.date = command_.date.value_or(QDate::currentDate());
    info.paper = command_.paper;
    info.working = command_.working;
    return written(sheet_pdf(opened.machine, info));
  }

  ExitCode picture(const OpenedMachine& opened) const {
    const std::size_t axes = opened.machine.axes.size();
    if (command_.axis.value_or(0) >= axes) {
      complain(tr("The machine has no axis number %1; its axes are numbered from 1 to %2.")
                   .arg(*command_.axis + 1)
                   .arg(axes));
      return ExitCode::unusable;
    }
    if (const QString page = QString::fromStdString(command_.page);
        !page.isEmpty() && !all_help_topics().contains(page)) {
      complain(tr("There is no page of help \"%1\"; \"limit/whip\" is one.").arg(page));
      return ExitCode::unusable;
    }
    const auto png = window_picture(opened.machine, opened.identity, command_);
    if (!png) {
      complain(tr("There is no study number %1; studies are numbered from 1 to %2.")
                   .arg(command_.study.value_or(0) + 1)
                   .arg(study_count()));
      return ExitCode::unusable;
    }
    return written(*png);
  }

  ExitCode written(const QByteArray& bytes) const {
    const auto done =
        write_file(command_.output,
                   std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    if (!done) {
      complain(words::file_error_text(done.error()));
      return ExitCode::unusable;
    }
    return ExitCode::none_over;
  }

  const Command& command_;
};

/// Remarks of the library on the environment are none of the commands' sentences.
void keep_library_quiet(QtMsgType type, const QMessageLogContext&, const QString& text) {
  if (type == QtCriticalMsg || type == QtFatalMsg) {
    complain(text);
  }
}

/// The environment must not show in what the commands write: not its display, not its locale, not
/// the seed of hash tables, which sets the order of fonts in a PDF.
void shut_out_environment() {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
  }
  QHashSeed::setDeterministicGlobalSeed();
  qInstallMessageHandler(keep_library_quiet);
}

} // namespace

} // namespace headless

std::optional<int> run_headless(int argc, char** argv) {
  if (!headless::is_command(argc, argv)) {
    return std::nullopt;
  }
  headless::shut_out_environment();
  // Qt takes options of its own out of the list it is given; it gets the program's name only.
  int name_only = 1;
  const QApplication application(name_only, argv);
  const QString language = QString::fromStdString(language_asked_for(argc, argv));
  if (!use_language(language)) {
    headless::Run::complain_of_language(language);
    return static_cast<int>(ExitCode::unusable);
  }
  return static_cast<int>(headless::Run::of(headless::read_command_line(argc, argv)));
}

} // namespace feedwright
