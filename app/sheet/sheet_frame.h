// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sheet/sheet_content.h"
#include "sheet/sheet_pages.h"

class QPagedPaintDevice;

namespace feedwright::sheet {

/// Which of the laid-out pages to paint, from 1; `last` 0 means to the end.
struct PageRange {
  int first = 1;
  int last = 0;
};

/// Paints the pages with head and foot. The device must have 96 dots to the inch and no margins.
/// False if it could not be painted on.
bool paint_pages(QPagedPaintDevice& device, const Pages& pages, const SheetContent& content,
                 PageRange range);

} // namespace feedwright::sheet
