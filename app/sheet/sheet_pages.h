// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Pages being filled from the top down, kept as marks until all are laid out: only then is it
// known how many there are.

#include "sheet/sheet_text.h"

#include <QStringList>

#include <functional>
#include <vector>

class QCPPainter;
class QPainter;

namespace feedwright::sheet {

/// What is painted in a rectangle of a page.
struct Mark {
  QRectF rect;
  std::function<void(QPainter&, const QRectF&)> paint;
  /// Instead, for what only the plot library's own painter keeps as lines.
  std::function<void(QCPPainter&, const QRectF&)> paint_plot;
};

struct Page {
  /// "X · long table"; an empty one is the machine.
  QStringList subjects;
  std::vector<Mark> marks;
};

class Pages {
public:
  /// `paper` in 1/96 inch.
  explicit Pages(const QSizeF& paper);

  const std::vector<Page>& list() const { return pages_; }
  QSizeF paper() const { return paper_; }
  /// Where the marks go; head and foot lie outside.
  QRectF body() const;

  void begin_page(const QString& subject);
  /// A further subject: under a heading of its own where half of the page is left, else on a new
  /// page, whose head names it.
  void begin_subject(const QString& subject);
  /// A new page of the same subject unless that much room is left.
  void ensure(qreal height);
  bool is_fresh() const { return y_ <= body().top(); }
  qreal room() const { return body().bottom() - y_; }
  qreal y() const { return y_; }
  void skip(qreal height) { y_ += height; }

  /// Places the next mark over the whole width.
  void add(qreal height, std::function<void(QPainter&, const QRectF&)> paint);
  /// Places marks anywhere on the present page.
  void place(Mark mark) { pages_.back().marks.push_back(std::move(mark)); }

  /// With at least `kept` of what follows on the same page.
  void heading(const QString& text, qreal kept = 40.0);
  /// Goes on to further pages line by line where it must.
  void paragraph(const QString& text, const TextStyle& style = {});

private:
  QSizeF paper_;
  QString subject_; ///< of what is being added
  std::vector<Page> pages_;
  qreal y_ = 0.0;
};

} // namespace feedwright::sheet
