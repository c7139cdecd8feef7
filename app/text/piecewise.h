// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

namespace feedwright::words {

/// What `said` makes of each piece of a text, with the same between them.
template <class Said>
QString piecewise(const QString& text, const QString& between, const Said& said) {
  QStringList pieces = text.split(between);
  for (QString& piece : pieces) {
    piece = said(piece);
  }
  return pieces.join(between);
}

} // namespace feedwright::words
