// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_frame.h"

#include "sheet/sheet_words.h"

#include <QCoreApplication>
#include <QPagedPaintDevice>
#include <qcustomplot.h>

#include <algorithm>

namespace feedwright::sheet {

namespace {

class Frame {
  Q_DECLARE_TR_FUNCTIONS(Sheet)

public:
  Frame(const Pages& pages, const SheetContent& content) : pages_(pages), content_(content) {}

  void paint(QPainter& painter, std::size_t index) const {
    head(painter, index);
    foot(painter);
  }

private:
  void head(QPainter& painter, std::size_t index) const {
    const QRectF body = pages_.body();
    const qreal right_width = 170.0;
    const QRectF left(body.left(), 36.0, body.width() - right_width - 12.0, 18.0);
    const QRectF right(body.right() - right_width, left.top(), right_width, 18.0);
    QStringList subjects;
    for (const QString& subject : pages_.list()[index].subjects) {
      subjects << (subject.isEmpty() ? tr("Machine") : subject);
    }
    paint_line(painter, left, QString::fromStdString(content_.machine_name), {heading_size, true});
    paint_line(painter, left.translated(0.0, 18.0), subjects.join(QStringLiteral(", ")),
               {heading_size - 1});
    paint_line(painter, right, tr("Drive-sizing sheet"), {body_size, true, Qt::AlignRight});
    paint_line(painter, right.translated(0.0, 18.0),
               tr("Page %1 of %2").arg(index + 1).arg(pages_.list().size()),
               {body_size, false, Qt::AlignRight});
    painter.setPen(QPen(Qt::black, 1.2));
    painter.drawLine(QPointF(body.left(), 75.0), QPointF(body.right(), 75.0));
  }

  void foot(QPainter& painter) const {
    const QRectF body = pages_.body();
    const qreal top = body.bottom() + 12.0;
    painter.setPen(QPen(Qt::black, 0.8));
    painter.drawLine(QPointF(body.left(), top), QPointF(body.right(), top));
    const qreal half = body.width() / 2.0;
    const QRectF line(body.left(), top + 5.0, half, 13.0);
    paint_line(painter, line, file_line(), {small_size});
    paint_line(painter, line.translated(0.0, 12.0), program_line(), {small_size});
    paint_line(painter, QRectF(body.left() + half + 10.0, top + 11.0, half - 10.0, 13.0),
               tr("Checked by"), {small_size});
    painter.drawLine(QPointF(body.left() + half + 70.0, top + 23.0),
                     QPointF(body.right(), top + 23.0));
    paint_text(painter, QRectF(body.left(), top + 31.0, body.width(), 24.0), care_text(),
               {small_size});
  }

  QString file_line() const {
    const QString name = QString::fromStdString(content_.identity.file_name);
    const QString mark = QString::fromStdString(content_.identity.fingerprint);
    if (name.isEmpty()) {
      return tr("File: not saved yet");
    }
    return mark.isEmpty() ? tr("File: %1").arg(name) : tr("File: %1 · content %2").arg(name, mark);
  }

  QString program_line() const {
    const QString version = QString::fromUtf8(
        content_.program_version.data(), static_cast<qsizetype>(content_.program_version.size()));
    return tr("Feedwright %1 · %2").arg(version, QString::fromStdString(content_.identity.date));
  }

  const Pages& pages_;
  const SheetContent& content_;
};

void paint_marks(QCPPainter& painter, const Page& page) {
  for (const Mark& mark : page.marks) {
    painter.save();
    if (mark.paint_plot) {
      mark.paint_plot(painter, mark.rect);
    } else {
      mark.paint(painter, mark.rect);
    }
    painter.restore();
  }
}

} // namespace

bool paint_pages(QPagedPaintDevice& device, const Pages& pages, const SheetContent& content,
                 PageRange range) {
  const auto count = static_cast<int>(pages.list().size());
  const int last = range.last > 0 ? std::min(range.last, count) : count;
  QCPPainter painter;
  if (!painter.begin(&device)) {
    return false;
  }
  // The plot library's own modes: everything as lines and text, nothing through a picture.
  painter.setMode(QCPPainter::pmVectorized);
  painter.setMode(QCPPainter::pmNoCaching);
  painter.setMode(QCPPainter::pmNonCosmetic);
  const Frame frame(pages, content);
  for (int number = std::max(range.first, 1); number <= last; ++number) {
    const auto index = static_cast<std::size_t>(number - 1);
    paint_marks(painter, pages.list()[index]);
    frame.paint(painter, index);
    if (number != last && !device.newPage()) {
      return false;
    }
  }
  return painter.end();
}

} // namespace feedwright::sheet
