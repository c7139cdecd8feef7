// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/lay_out_sheet.h"

#include "sheet/sheet_words.h"
#include "text/words.h"
#include "working/write_working.h"

#include <QCoreApplication>
#include <QPainter>

namespace feedwright::sheet {

namespace {

class WorkingPages {
  Q_DECLARE_TR_FUNCTIONS(Sheet)

public:
  WorkingPages(Pages& pages, const SheetAxis& content) : pages_(pages), content_(content) {}

  void add() {
    pages_.begin_page(tr("%1 · working").arg(axis_title(content_.letter, content_.name)));
    for (const WorkingStep& step : content_.working) {
      add_step(step);
    }
  }

private:
  void add_step(const WorkingStep& step) {}

  Pages& pages_;
  const SheetAxis& content_;
};

} // namespace

void add_working_pages(Pages& pages, const SheetAxis& content) {
  WorkingPages(pages, content).add();
}

} // namespace feedwright::sheet
