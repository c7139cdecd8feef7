// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/command_line.h"

#include "headless/arguments.h"
#include "sheet/program_version.h"
#include "text/language.h"

#include <CLI/CLI.hpp>
#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>
#include <array>
#include <string_view>

namespace feedwright {

namespace headless {

namespace {

/// The same words everywhere a machine is named.
constexpr const char* file_name = "FILE";

/// `std::string name(` would be taken for a function of std by what gathers sentences.
using Text = std::string;

class Reader {
  Q_DECLARE_TR_FUNCTIONS(Headless)

public:
  Reader() : app_(about(), "feedwright") {
    app_.footer(examples());
    app_.get_formatter()->column_width(28);
    app_.set_help_flag("-h,--help", text(tr("Print this help and leave.")));
    app_.set_version_flag("--version", std::string(program_version()),
                          text(tr("Print the version and leave.")));
    app_.require_subcommand(1);
    check_command();
    sheet_command();
    schema_command();
    picture_command();
  }

  CommandLine read(int argc, char** argv) {
    try {
      app_.parse(argc, argv);
    } catch (const CLI::CallForHelp&) {
      return {std::nullopt, app_.help(), false};
    } catch (const CLI::CallForVersion&) {
      return {std::nullopt, "Feedwright " + std::string(program_version()) + "\n", false};
    } catch (const CLI::ParseError& error) {
      return {std::nullopt, sentence(error), true};
    }
    return finished();
  }

  static CommandLine not_a_command(std::string_view first) {
    return wrong(
        tr("\"%1\" is not one of the commands %2.").arg(shown(std::string(first)), command_list()));
  }

private:
  static QString command_list() {
    QStringList names;
    for (const std::string_view name : command_names) {
      names.append(shown(std::string(name)));
    }
    return names.join(QStringLiteral(", "));
  }

  static Text text(const QString& words) { return words.toStdString(); }

  static Text about() {
    return text(tr("Feedwright sizes the drive trains of CNC router and mill axes and says what "
                   "limits each.\nWith a machine file, or with nothing, it opens the window. The "
                   "commands below need no display."));
  }

  static Text examples() {
    return text(
        tr("Exit codes:\n"
           "  0  done; for check: no limit is over\n"
           "  1  check only: some limit is over what is wanted\n"
           "  2  the command line, the machine or the place to write to is unusable;\n"
           "     every reason is on standard error, one sentence a line\n"
           "\n"
           "Examples:\n"
           "  feedwright router.feedwright                 open it in the window\n"
           "  feedwright check router.feedwright           all results as text\n"
           "  feedwright check router.feedwright --json > now.json\n"
           "  feedwright check router.feedwright > log.txt || echo \"look at the limits\"\n"
           "  feedwright sheet router.feedwright --output router.pdf --paper letter\n"
           "  feedwright sheet router.feedwright -o log.pdf --working --date 2026-05-01\n"
           "  feedwright schema > machine.schema.json\n"
           "  feedwright picture router.feedwright -o window.png --size 1920x1080 --dark\n"
           "\n"
           "The same file on the same date gives the same bytes, whatever the locale: words are\n"
           "English unless --language is given.\n"
           "Figures help to choose parts; they are not an approval."));
  }

  CLI::App* command(std::string_view name, const QString& what) {
    CLI::App* made = app_.add_subcommand(std::string(name), text(what));
    made->set_help_flag("-h,--help", text(tr("Print this help and leave.")));
    made->footer(text(tr("Exit codes and examples: feedwright --help.")));
    made->add_option(
            std::string(language_option), language_,
            text(tr("Language of the words: %1; English if not given.").arg(language_codes())))
        ->type_name("CODE");
    return made;
  }

  void add_file(CLI::App* to) {
    to->add_option(file_name, file_, text(tr("The machine file to read.")))
        ->required()
        ->type_name("");
  }

  void add_output(CLI::App* to, const QString& what) {
    to->add_option("-o,--output", output_, text(what))->required()->type_name("OUT");
  }

  void check_command() {
    CLI::App* made = command(command_names[0], tr("Size every axis and print all results."));
    add_file(made);
    made->add_flag("--json", command_.json,
                   text(tr("Print JSON with stable names, in SI and in the file's units.")));
  }

  void sheet_command() {
    CLI::App* made = command(command_names[1], tr("Write the drive-sizing sheet as PDF."));
    add_file(made);
    add_output(made, tr("The PDF to write."));
    made->add_option("--paper", paper_, text(tr("a4 or letter; a4 if not given.")))
        ->type_name("PAPER");
    made->add_flag("--working", command_.working, text(tr("Append how each figure came about.")));
    made->add_option("--date", date_,
                     text(tr("Date on the sheet, YYYY-MM-DD; today if not given.")))
        ->type_name("DATE");
  }

  void schema_command() {
    command(command_names[2], tr("Print the JSON Schema of machine files."));
  }

  void picture_command() {
    CLI::App* made = command(command_names[3], tr("Write a picture of the window as PNG."));
    add_file(made);
    add_output(made, tr("The PNG to write."));
    made->add_option("--size", size_, text(tr("Width and height; 1280x800 if not given.")))
        ->type_name("WxH");
    made->add_flag("--dark", command_.dark, text(tr("Light on dark.")));
    made->add_option("--axis", axis_, text(tr("Number of the axis to show, from 1.")))
        ->type_name("N");
    made->add_flag("--machine", command_.machine, text(tr("Show the page of the whole machine.")));
    made->add_option("--study", study_, text(tr("Number of the study to show, from 1.")))
        ->type_name("N");
    made->add_option("--font-size", font_size_, text(tr("Size of the letters, in points.")))
        ->type_name("PT");
    made->add_option("--page", command_.page,
                     text(tr("Show this page of help instead, such as limit/whip.")))
        ->type_name("PAGE");
  }

  static Text advice(const QString& what) {
    return text(what + QLatin1Char(' ') + tr("Try feedwright --help."));
  }

  static Text sentence(const CLI::ParseError& error) {
    const QString name = QString::fromStdString(error.what()).section(QLatin1Char(':'), 0, 0);
    if (dynamic_cast<const CLI::RequiredError*>(&error) != nullptr) {
      return advice(tr("The command line lacks something that is needed (%1).")
                        .arg(QString::fromStdString(error.what())));
    }
    if (dynamic_cast<const CLI::ExtrasError*>(&error) != nullptr) {
      return advice(tr("The command line has something that is not known (%1).")
                        .arg(QString::fromStdString(error.what())));
    }
    return advice(tr("The command line cannot be understood at %1.").arg(name));
  }

  static CommandLine wrong(const QString& what) { return {std::nullopt, advice(what), true}; }

  CommandLine finished() {
    const std::string name = app_.get_subcommands().front()->get_name();
    const auto at = std::ranges::find(command_names, name) - command_names.begin();
    command_.task = static_cast<Task>(at);
    command_.file = file_;
    command_.output = output_;
    if (paper_ != "a4" && paper_ != "letter") {
      return wrong(tr("The paper is a4 or letter, not \"%1\".").arg(shown(paper_)));
    }
    command_.paper = paper_ == "a4" ? SheetPaper::a4 : SheetPaper::letter;
    if (!date_.empty()) {
      const QDate date = QDate::fromString(shown(date_), Qt::ISODate);
      if (!date.isValid()) {
        return wrong(tr("\"%1\" is not a date; 2026-05-01 is one.").arg(shown(date_)));
      }
      command_.date = date;
    }
    return finished_picture();
  }

  CommandLine finished_picture() {
    static const QRegularExpression size(QStringLiteral("^([0-9]{2,4})x([0-9]{2,4})$"));
    if (!size_.empty()) {
      const QRegularExpressionMatch match = size.match(shown(size_));
      if (!match.hasMatch()) {
        return wrong(tr("\"%1\" is not a size; 1280x800 is one.").arg(shown(size_)));
      }
      command_.size = QSize(match.captured(1).toInt(), match.captured(2).toInt());
    }
    if (!font_size_.empty()) {
      bool ok = false;
      const double points = shown(font_size_).toDouble(&ok);
      if (!ok || !(points >= 4.0 && points <= 72.0)) {
        return wrong(
            tr("The size of letters is from 4 to 72 points, not \"%1\".").arg(shown(font_size_)));
      }
      command_.font_size = points;
    }
    if (!number(axis_, command_.axis) || !number(study_, command_.study)) {
      return wrong(tr("Axes and studies are numbered from 1; \"%1\" is not such a number.")
                       .arg(shown(number(axis_, command_.axis) ? study_ : axis_)));
    }
    return {command_, {}, false};
  }

  /// A number from 1, kept from 0. False if the text is none.
  static bool number(const std::string& text, std::optional<std::size_t>& to) {
    if (text.empty()) {
      return true;
    }
    bool ok = false;
    const uint read = shown(text).toUInt(&ok);
    if (ok && read > 0) {
      to = read - 1;
    }
    return ok && read > 0;
  }

  static QString shown(const std::string& text) { return QString::fromStdString(text); }

  CLI::App app_;
  Command command_;
  std::string file_;
  std::string output_;
  std::string language_;
  std::string paper_ = "a4";
  std::string date_;
  std::string size_;
  std::string font_size_;
  std::string axis_;
  std::string study_;
};

} // namespace

CommandLine read_command_line(int argc, char** argv) {
  constexpr std::array<std::string_view, 3> without_command = {"-h", "--help", "--version"};
  const auto arguments = without_language(argc, argv);
  const auto first = arguments.empty() ? std::string_view() : arguments.front();
  const bool known =
      is_command_name(first) || std::ranges::find(without_command, first) != without_command.end();
  return known ? Reader().read(argc, argv) : Reader::not_a_command(first);
}

} // namespace headless

} // namespace feedwright
