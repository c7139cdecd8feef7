// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/program.h"
#include "sheet/pdf_date.h"
#include "sheet/sheet_pages.h"
#include "sizing/size_axis.h"
#include "text/words.h"

#include <QRegularExpression>

using namespace feedwright;
using feedwright::testing::hurried_router;
using feedwright::testing::MachineFolder;
using feedwright::testing::ordinary_router;
using feedwright::testing::Outcome;
using feedwright::testing::run;
using feedwright::testing::said_by;

namespace {

Machine three_axes() {
  Machine machine = hurried_router();
  for (const char* letter : {"Y", "Z"}) {
    machine.axes.push_back(machine.axes.front());
    machine.axes.back().basics.letter = letter;
  }
  machine.axes.front().basics.name = "<b>long & wide</b>";
  return machine;
}

Outcome write_sheet(const MachineFolder& folder, const Machine& machine, const QStringList& more,
                    const char* to = "sheet.pdf") {
  return run(QStringList{QStringLiteral("sheet"), folder.put("router.json", machine),
                         QStringLiteral("--output"), folder.path(to), QStringLiteral("--date"),
                         QStringLiteral("2026-05-01")} +
             more);
}

/// Text of the PDF: ligatures as letters, lines as spaces.
QString text_of(const QString& pdf) {
  const QByteArray raw =
      said_by(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, QStringLiteral("-")});
  return QString::fromUtf8(raw)
      .normalized(QString::NormalizationForm_KC)
      .replace(QRegularExpression(QStringLiteral("\\s+")), QStringLiteral(" "));
}

int pages_of(const QString& pdf) {
  const QString about = QString::fromUtf8(said_by(QStringLiteral("pdfinfo"), {pdf}));
  static const QRegularExpression pages(QStringLiteral("Pages: *([0-9]+)"));
  return pages.match(about).captured(1).toInt();
}

} // namespace

TEST_CASE("the sheet names the governing limit, every limit, every part and field") {
  const MachineFolder folder;
  REQUIRE(write_sheet(folder, three_axes(), {}).code == 0);
  const QString text = text_of(folder.path("sheet.pdf"));
  const Machine machine = three_axes();
  const AxisResults results = size_axis(machine, machine.axes.front());
  for (const LimitDescriptor& limit : limit_descriptors()) {
    INFO(limit.name);
    CHECK(text.contains(words::limit_name(limit.id)));
  }
  CHECK(text.contains(words::limit_name(*results.governing) + QStringLiteral(" ")));
  CHECK(text.contains(QStringLiteral("governs the feed")));
  for (const PartSlot slot : axis_slots) {
    CHECK(text.contains(words::part_name(slot)));
  }
}

TEST_CASE("every page says machine, axis, number, date, file, fingerprint and who checked") {
  const MachineFolder folder;
  REQUIRE(write_sheet(folder, three_axes(), {}).code == 0);
  const QString pdf = folder.path("sheet.pdf");
  const int pages = pages_of(pdf);
  REQUIRE(pages >= 4);
  for (int page = 1; page <= pages; ++page) {
    const QString number = QString::number(page);
    const QByteArray raw =
        said_by(QStringLiteral("pdftotext"), {QStringLiteral("-f"), number, QStringLiteral("-l"),
                                              number, pdf, QStringLiteral("-")});
    const QString text = QString::fromUtf8(raw).normalized(QString::NormalizationForm_KC);
    INFO(text.toStdString());
    CHECK(text.contains(QStringLiteral("Ordinary router")));
    CHECK(text.contains(QStringLiteral("Page %1 of %2").arg(page).arg(pages)));
    CHECK(text.contains(QStringLiteral("2026-05-01")));
    CHECK(text.contains(QStringLiteral("router.json")));
    CHECK(text.contains(QStringLiteral("Checked by")));
    CHECK(text.contains(QStringLiteral("not an approval")));
  }
}

TEST_CASE("text of the machine stands on the sheet as it is written") {
  const MachineFolder folder;
  REQUIRE(write_sheet(folder, three_axes(), {}).code == 0);
  CHECK(text_of(folder.path("sheet.pdf")).contains(QStringLiteral("<b>long & wide</b>")));
}

TEST_CASE("the sheet has lines and text only, no pictures") {
  const MachineFolder folder;
  REQUIRE(write_sheet(folder, three_axes(), {QStringLiteral("--working")}).code == 0);
  const QByteArray images =
      said_by(QStringLiteral("pdfimages"), {QStringLiteral("-list"), folder.path("sheet.pdf")});
  CHECK(images.count('\n') == 2); // the two lines of its heading
}

TEST_CASE("the paper is A4 or Letter as asked") {
  const MachineFolder folder;
  const auto size = [&](const char* paper) {
    REQUIRE(write_sheet(folder, ordinary_router(),
                        {QStringLiteral("--paper"), QString::fromLatin1(paper)})
                .code == 0);
    return said_by(QStringLiteral("pdfinfo"), {folder.path("sheet.pdf")});
  };
  CHECK(size("a4").contains("595 x 842"));
  CHECK(size("letter").contains("612 x 792"));
}

TEST_CASE("the working is appended when asked") {
  const MachineFolder folder;
  REQUIRE(write_sheet(folder, ordinary_router(), {}).code == 0);
  const int without = pages_of(folder.path("sheet.pdf"));
  REQUIRE(write_sheet(folder, ordinary_router(), {QStringLiteral("--working")}).code == 0);
  CHECK(pages_of(folder.path("sheet.pdf")) > without);
  CHECK(text_of(folder.path("sheet.pdf")).contains(words::result_name(ResultId::whip_speed)));
}

TEST_CASE("the same machine on the same date gives the same PDF bytes") {
  const MachineFolder folder;
  REQUIRE(write_sheet(folder, ordinary_router(), {}, "one.pdf").code == 0);
  REQUIRE(write_sheet(folder, ordinary_router(), {}, "two.pdf").code == 0);
  CHECK(folder.bytes("one.pdf") == folder.bytes("two.pdf"));
}

TEST_CASE("a sheet that cannot be written ends in 2 and leaves nothing") {
  const MachineFolder folder;
  const Outcome outcome = write_sheet(folder, ordinary_router(), {}, "no/such/folder/sheet.pdf");
  CHECK(outcome.code == 2);
  CHECK(outcome.err.contains("sheet.pdf"));
}

TEST_CASE("a broken machine gets no sheet and its old one stays") {
  const MachineFolder folder;
  folder.put("sheet.pdf", std::string_view("old"));
  const QString broken = folder.put("broken.json", std::string_view("{}"));
  const Outcome outcome =
      run({QStringLiteral("sheet"), broken, QStringLiteral("--output"), folder.path("sheet.pdf")});
  CHECK(outcome.code == 2);
  CHECK(folder.bytes("sheet.pdf") == QByteArray("old"));
}

TEST_CASE("the date of a PDF is set without moving anything else") {
  const QByteArray pdf("1 0 obj\n/CreationDate (D:20261125110540+01'00')\n/X\n");
  const QByteArray dated = sheet::with_creation_date(pdf, QDate(2026, 5, 1));
  CHECK(dated.size() == pdf.size());
  CHECK(dated.contains("/CreationDate (D:20260501120000Z)"));
  CHECK(dated.indexOf("/X") == pdf.indexOf("/X"));
  CHECK(sheet::with_creation_date(QByteArray("no date"), QDate(2026, 5, 1)) == "no date");
}

TEST_CASE("a mark that does not fit goes to a new page of the same subject") {
  sheet::Pages pages(QSizeF(600.0, 400.0));
  pages.begin_page(QStringLiteral("X"));
  const auto nothing = [](QPainter&, const QRectF&) {};
  pages.add(pages.room() - 10.0, nothing);
  pages.add(20.0, nothing);
  REQUIRE(pages.list().size() == 2);
  CHECK(pages.list()[1].subjects == QStringList{QStringLiteral("X")});
  CHECK(pages.list()[1].marks.front().rect.top() == pages.body().top());
}

TEST_CASE("a word longer than a line is broken, not cut off") {
  const sheet::TextStyle style;
  const QString word(400, QLatin1Char('m'));
  CHECK(sheet::text_height(word, style, 200.0) >
        10.0 * sheet::text_height(QStringLiteral("m"), style, 200.0));
}

TEST_CASE("the sheet prints what all axes ask at once, and each answer with its caution") {
  const MachineFolder folder;
  Machine machine = three_axes();
  machine.axes.front().answers = {
      {AnswerTo::finding,
       "long_open_screw",
       "drive",
       "Covered by bellows.\nSteel lip.",
       "900 mm",
       "",
       {}},
      {AnswerTo::limit, "whip", "", "Trial runs only.", "1 m/min", "2 m/min", {}}};
  machine.answers = {{AnswerTo::limit, "supply_power", "", "Never all at once.", "", "", {}}};
  REQUIRE(write_sheet(folder, machine, {}).code == 0);
  const QString text = text_of(folder.path("sheet.pdf"));
  for (const char* said :
       {"All axes at once", "Covered by bellows.", "Steel lip.", "Trial runs only.",
        "answered when it was", "Never all at once.", "no longer found"}) {
    INFO(said);
    const bool found = text.contains(QString::fromUtf8(said));
    // Nothing is left out; what is no longer found is told in the window only.
    CHECK(found == (std::string_view(said) != "no longer found"));
  }
}

TEST_CASE(
    "what may hurt somebody stands on the sheet's first page, with how many limits read what") {
  const MachineFolder folder;
  Machine machine = hurried_router();
  machine.axes.front().basics.incline = Finite<Angle>::of(from_si<Angle>(pi / 2.0));
  machine.axes.front().carriage.brake = false;
  const AxisResults results = size_axis(machine, machine.axes.front());
  REQUIRE(std::ranges::any_of(results.findings, [](const Finding& finding) {
    return finding.code == FindingCode::axis_can_fall;
  }));
  REQUIRE(write_sheet(folder, machine, {}).code == 0);
  const QString first = QString::fromUtf8(said_by(QStringLiteral("pdftotext"),
                                                  {QStringLiteral("-l"), QStringLiteral("1"),
                                                   QStringLiteral("-layout"),
                                                   folder.path("sheet.pdf"), QStringLiteral("-")}))
                            .simplified();
  CHECK(first.contains(QStringLiteral("Dangers")));
  CHECK(first.contains(QStringLiteral("can fall when the power goes")));
  const auto open = std::ranges::count_if(results.limits, [](const Limit& limit) {
    return limit.applies && limit.verdict == Verdict::open;
  });
  CHECK(first.contains(QStringLiteral("open: %1").arg(open)));
}

TEST_CASE("an answer of very many lines goes on over pages and loses none") {
  const MachineFolder folder;
  Machine machine = hurried_router();
  std::string note;
  for (int line = 100; line < 380; ++line) {
    note += "l" + std::to_string(line) + "\n";
  }
  machine.axes.front().answers = {
      {AnswerTo::finding, "long_open_screw", "drive", note, "900 mm", "", {}}};
  REQUIRE(write_sheet(folder, machine, {}).code == 0);
  const QString text = text_of(folder.path("sheet.pdf"));
  for (int line = 100; line < 380; ++line) {
    CHECK(text.contains(QStringLiteral("l%1 ").arg(line)));
  }
}
