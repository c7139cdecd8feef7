// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The drive-sizing sheet on paper and as PDF.

#include "machine/machine.h"

#include <QByteArray>
#include <QDate>
#include <QString>

class QWidget;

namespace feedwright {

class MachineDocument;

enum class SheetPaper : std::uint8_t { a4, letter };

struct SheetInfo {
  QString file_name;   ///< without its folder; empty if never saved
  QString fingerprint; ///< of the file's bytes
  QDate date;          ///< printed, and the PDF's date of creation
  SheetPaper paper = SheetPaper::a4;
  bool working = false; ///< with an appendix: how each figure came about
};

/// The sheet of a document as it stands today, with what is chosen in the window (SheetChoices).
SheetInfo sheet_info(const MachineDocument& document);

/// The sheet as PDF: text as text, drawings and plots as lines. The machine must be sound.
QByteArray sheet_pdf(const Machine& machine, const SheetInfo& info);

/// Asks for a printer and prints. Does nothing but say so while the machine has faults.
void print_sheet(MachineDocument& document, QWidget* parent);

/// Shows the sheet as it will be printed.
void preview_sheet(MachineDocument& document, QWidget* parent);

} // namespace feedwright
