// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/letters.h"

#include <QFontMetrics>
#include <QTextLayout>

#include <algorithm>

namespace feedwright {

double least_share(const QFont& font) {
  constexpr double usual = 9.5; // points
  constexpr double smallest = 0.62;
  return font.pointSizeF() > 0.0 ? std::clamp(usual / font.pointSizeF(), smallest, 1.0) : 1.0;
}

QFont fitted(const QFont& font, double share) {
  QFont made = font;
  const double taken = std::clamp(share, least_share(font), 1.0);
  if (taken < 1.0) {
    made.setPointSizeF(font.pointSizeF() * taken);
  }
  return made;
}

QStringList broken(const QString& text, const QFont& font, int width) {
  QString lined = text;
  lined.replace(QLatin1Char('\n'), QChar::LineSeparator);
  QTextLayout layout(lined, font);
  layout.beginLayout();
  QStringList lines;
  for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
    line.setLineWidth(width);
    lines << lined.mid(line.textStart(), line.textLength()).trimmed();
  }
  layout.endLayout();
  return lines;
}

QString cut_to_lines(const QString& text, const QFont& font, int width, int lines) {
  const QStringList all = broken(text, font, width);
  if (all.size() <= lines || lines < 1) {
    return text;
  }
  const QString rest = all.mid(lines - 1).join(QLatin1Char(' '));
  const QString last = QFontMetrics(font).elidedText(rest, Qt::ElideRight, width);
  return (all.mid(0, lines - 1) << last).join(QLatin1Char('\n'));
}

} // namespace feedwright
