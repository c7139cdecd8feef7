// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/print_sheet.h"

#include "document/machine_document.h"
#include "sheet/lay_out_sheet.h"
#include "sheet/pdf_date.h"
#include "sheet/sheet_choices.h"
#include "sheet/sheet_frame.h"
#include "sizing/size_axis.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFileInfo>
#include <QMessageBox>
#include <QPdfWriter>
#include <QPrintDialog>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QRegularExpression>

namespace feedwright {

namespace {

constexpr int dots_per_inch = 96;

class SheetPrint {
  Q_DECLARE_TR_FUNCTIONS(Sheet)

public:
  SheetPrint(const Machine& machine, const SheetInfo& info)
      : machine_(machine), working_(info.working),
        content_(
            sheet_content(machine, {info.file_name.toStdString(), info.fingerprint.toStdString(),
                                    info.date.toString(Qt::ISODate).toStdString()})) {}

  bool paint(QPagedPaintDevice& device, sheet::PageRange range) const {
    const QSizeF paper = device.pageLayout().fullRect(QPageLayout::Inch).size() * dots_per_inch;
    sheet::Pages pages(paper);
    lay_out(pages);
    return sheet::paint_pages(device, pages, content_, range);
  }

  QString title() const {
    const QString name = QString::fromStdString(content_.machine_name);
    return name.isEmpty() ? tr("Drive-sizing sheet") : tr("%1: drive-sizing sheet").arg(name);
  }

  static void say_why_not(QWidget* parent) {
    QMessageBox box(QMessageBox::Information, tr("Sheet"),
                    tr("There is no sheet while the machine has faults, for nothing is computed "
                       "from it. Mend the faults first."),
                    QMessageBox::Ok, parent);
    box.setObjectName(QStringLiteral("sheet_needs_sound_machine"));
    box.setTextFormat(Qt::PlainText);
    box.exec();
  }

  static void say_printing_failed(QWidget* parent) {
    QMessageBox box(QMessageBox::Warning, tr("Sheet"),
                    tr("The printer did not take the sheet. Nothing may have been printed."),
                    QMessageBox::Ok, parent);
    box.setObjectName(QStringLiteral("sheet_printing_failed"));
    box.setTextFormat(Qt::PlainText);
    box.exec();
  }

private:
  void lay_out(sheet::Pages& pages) const {
    sheet::add_machine_pages(pages, content_);
    for (std::size_t axis = 0; axis < content_.axes.size(); ++axis) {
      const AxisResults results = size_axis(machine_, machine_.axes[axis]);
      sheet::add_axis_pages(pages, machine_, axis, results, content_.axes[axis], content_.units);
    }
    if (working_) {
      for (std::size_t axis = 0; axis < content_.axes.size(); ++axis) {
        sheet::add_working_pages(pages, machine_, axis, content_.axes[axis]);
      }
    }
  }

  const Machine& machine_;
  bool working_;
  SheetContent content_;
};

/// Lines and text stay lines and text at any resolution; the plot library lays out at this one.
void set_up_printer(QPrinter& printer, const SheetPrint& sheet) {
  printer.setResolution(dots_per_inch);
  printer.setFullPage(true);
  // Printing to a file makes its name of this: no sign that names of files cannot have.
  static const QRegularExpression not_in_names(QStringLiteral("[/\\\\:*?\"<>|]+\\s*"));
  printer.setDocName(sheet.title().replace(not_in_names, QStringLiteral(" – ")));
  printer.setCreator(QCoreApplication::applicationName());
}

sheet::PageRange chosen_range(const QPrinter& printer) {
  return printer.printRange() == QPrinter::PageRange
             ? sheet::PageRange{printer.fromPage(), printer.toPage()}
             : sheet::PageRange{};
}

} // namespace

SheetInfo sheet_info(const MachineDocument& document) {
  SheetInfo info;
  info.file_name = QFileInfo(document.file_path()).fileName();
  // Of an edited machine the file's fingerprint would vouch for what it does not hold.
  info.fingerprint = document.is_modified() ? QString() : document.file_fingerprint();
  info.date = QDate::currentDate();
  info.working = SheetChoices::with_working();
  return info;
}

QByteArray sheet_pdf(const Machine& machine, const SheetInfo& info) {
  const SheetPrint sheet(machine, info);
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  {
    QPdfWriter pdf(&buffer);
    pdf.setResolution(dots_per_inch);
    pdf.setPageSize(QPageSize(info.paper == SheetPaper::a4 ? QPageSize::A4 : QPageSize::Letter));
    pdf.setPageMargins(QMarginsF());
    pdf.setTitle(sheet.title());
    pdf.setCreator(QStringLiteral("Feedwright"));
    if (!sheet.paint(pdf, {})) {
      return {};
    }
  }
  return sheet::with_creation_date(buffer.data(), info.date);
}

void print_sheet(MachineDocument& document, QWidget* parent) {
  if (document.results().empty()) {
    SheetPrint::say_why_not(parent);
    return;
  }
  const SheetPrint sheet(document.machine(), sheet_info(document));
  QPrinter printer(QPrinter::ScreenResolution);
  set_up_printer(printer, sheet);
  QPrintDialog dialog(&printer, parent);
  dialog.setObjectName(QStringLiteral("print_sheet"));
  dialog.setOption(QAbstractPrintDialog::PrintPageRange);
  if (dialog.exec() != QDialog::Accepted) {
    return;
  }
  set_up_printer(printer, sheet);
  if (!sheet.paint(printer, chosen_range(printer))) {
    SheetPrint::say_printing_failed(parent);
  }
}

void preview_sheet(MachineDocument& document, QWidget* parent) {
  if (document.results().empty()) {
    SheetPrint::say_why_not(parent);
    return;
  }
  const SheetPrint sheet(document.machine(), sheet_info(document));
  QPrinter printer(QPrinter::ScreenResolution);
  set_up_printer(printer, sheet);
  QPrintPreviewDialog dialog(&printer, parent);
  dialog.setObjectName(QStringLiteral("preview_sheet"));
  QObject::connect(&dialog, &QPrintPreviewDialog::paintRequested, &dialog,
                   [&](QPrinter* target) { sheet.paint(*target, chosen_range(*target)); });
  dialog.exec();
}

} // namespace feedwright
