// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/pdf_date.h"

namespace feedwright::sheet {

QByteArray with_creation_date(QByteArray pdf, QDate date) {
  const QByteArray key("/CreationDate (");
  // The document's information comes first in the file, with its strings in UTF-16: nothing the
  // user wrote can look like the key.
  const qsizetype begin = pdf.indexOf(key);
  const qsizetype end = begin < 0 ? -1 : pdf.indexOf(')', begin);
  if (end < 0) {
    return pdf;
  }
  const qsizetype length = end + 1 - begin;
  const QByteArray replaced =
      key + "D:" + date.toString(QStringLiteral("yyyyMMdd")).toLatin1() + "120000Z)";
  if (replaced.size() <= length) {
    // Spaces keep the length, and with it every offset in the file's table of contents.
    pdf.replace(begin, length, replaced.leftJustified(length, ' '));
  }
  return pdf;
}

} // namespace feedwright::sheet
