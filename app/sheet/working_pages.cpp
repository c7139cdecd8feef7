// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/lay_out_sheet.h"

#include "sheet/sheet_words.h"
#include "studies/formula_layout.h"
#include "text/symbol_text.h"
#include "text/words.h"
#include "text/working_words.h"
#include "working/write_working.h"

#include <QCoreApplication>
#include <QPainter>

namespace feedwright::sheet {

namespace {

constexpr qreal indent = 14.0;
constexpr qreal between_steps = 7.0;
constexpr qreal under_name = 3.0;

class WorkingPages {
  Q_DECLARE_TR_FUNCTIONS(Sheet)

public:
  WorkingPages(Pages& pages, const Machine& machine, std::size_t axis, const SheetAxis& content)
      : pages_(pages), machine_(machine), axis_(axis), content_(content) {}

  void add() {
    pages_.begin_page(tr("%1 · working").arg(axis_title(content_.letter, content_.name)));
    for (const WorkingStep& step : content_.working) {
      add_step(write_step(step, machine_, axis_, words::decimal_mark()));
    }
  }

private:
  void add_step(const WrittenStep& step) {
    const FormulaBox box = set_equations(step.symbol_notation, right_sides(step), font(body_size),
                                         pages_.body().width() - indent);
    // An equation is not torn from its name.
    constexpr qreal name_and_notes = 50.0;
    pages_.ensure(box.height() + name_and_notes);
    line(words::result_name(step.result), true, 0.0);
    pages_.skip(under_name);
    pages_.add(box.height() + under_name, [box](QPainter& painter, const QRectF& rect) {
      paint_formula(painter, box, rect.topLeft() + QPointF(indent, 0.0), Qt::black);
    });
    QStringList notes;
    if (!step.solved.empty()) {
      notes << words::solved_by(step.solved);
    }
    for (const WrittenTerm& term : step.terms) {
      notes << term_text(term);
    }
    if (const QString validity = words::result_validity(step.result); !validity.isEmpty()) {
      notes << validity;
    }
    if (const QString source = words::result_source(step.result); !source.isEmpty()) {
      notes << tr("source: %1").arg(source);
    }
    if (!notes.isEmpty()) {
      line(notes.join(QStringLiteral(" · ")), false, indent, true);
    }
    pages_.skip(between_steps);
  }

  static QString term_text(const WrittenTerm& term) {
    QString about = words::constant_name(term.symbol);
    if (term.input) {
      about =
          tr("%1, %2", "field, origin of its value")
              .arg(words::field_name(static_cast<PartSlot>(term.input->slot), term.input->member),
                   words::origin_name(term.origin));
    } else if (term.result) {
      about = words::result_name(*term.result);
    }
    return tr("%1: %2", "symbol: what it is").arg(QString::fromStdString(term.symbol), about);
  }

  void line(const QString& text, bool bold, qreal left, bool grey = false) {
    const QFont used = font(grey ? small_size : body_size, bold);
    const qreal width = pages_.body().width() - left;
    const qreal height = symbols_height(text, used, width) + 1.0;
    pages_.add(height, [text, used, left, grey](QPainter& painter, const QRectF& rect) {
      paint_symbols(painter, rect.adjusted(left, 0.0, 0.0, 0.0), text, used,
                    grey ? QColor(0x55, 0x55, 0x55) : QColor(Qt::black));
    });
  }

  Pages& pages_;
  const Machine& machine_;
  std::size_t axis_;
  const SheetAxis& content_;
};

} // namespace

void add_working_pages(Pages& pages, const Machine& machine, std::size_t axis,
                       const SheetAxis& content) {
  WorkingPages(pages, machine, axis, content).add();
}

} // namespace feedwright::sheet
