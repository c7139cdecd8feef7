// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/symbol_text.h"

#include "text/whole_lines.h"

#include <QPainter>

namespace feedwright {

namespace {

struct Marked {
  QString text;
  QList<QTextLayout::FormatRange> subscripts;
};

/// A subscript goes on over letters, digits, commas and decimal points between them, and primes.
bool in_subscript(const QString& text, qsizetype at) {
  const QChar c = text[at];
  if (c.isLetterOrNumber() || c == QLatin1Char('\'')) {
    return true;
  }
  if (at + 1 >= text.size()) {
    return false;
  }
  // "k_c1.1" is one symbol; the full stop after "F_1" ends a sentence.
  const bool within_number =
      c == QLatin1Char('.') && text[at - 1].isDigit() && text[at + 1].isDigit();
  return within_number || (c == QLatin1Char(',') && text[at + 1].isLetterOrNumber());
}

Marked marked(const QString& text) {
  Marked made;
  QTextCharFormat lowered;
  lowered.setVerticalAlignment(QTextCharFormat::AlignSubScript);
  for (qsizetype at = 0; at < text.size(); ++at) {
    if (text[at] != QLatin1Char('_')) {
      made.text += text[at];
      continue;
    }
    const qsizetype start = made.text.size();
    while (at + 1 < text.size() && in_subscript(text, at + 1)) {
      made.text += text[++at];
    }
    made.subscripts.append({int(start), int(made.text.size() - start), lowered});
  }
  return made;
}

} // namespace

QString lowered_symbols(const QString& text) {
  static const QString usual = QStringLiteral("0123456789aehijklmnoprstuvxβγρφχ");
  static const QString lowered = QStringLiteral("₀₁₂₃₄₅₆₇₈₉ₐₑₕᵢⱼₖₗₘₙₒₚᵣₛₜᵤᵥₓᵦᵧᵨᵩᵪ");
  const Marked plain = marked(text);
  QString made = plain.text;
  for (const QTextLayout::FormatRange& range : plain.subscripts) {
    QString below;
    for (const QChar letter : QStringView(plain.text).mid(range.start, range.length)) {
      if (const qsizetype at = usual.indexOf(letter); at >= 0) {
        below += lowered[at];
      }
    }
    // All of it or none: half a subscript reads as another one.
    if (below.size() == range.length) {
      made.replace(range.start, range.length, below);
    }
  }
  return made;
}

QString plain_symbols(const QString& text) {
  return marked(text).text;
}

qreal symbols_height(const QString& text, const QFont& font, qreal width) {
  const Marked made = marked(text);
  return WholeLines(made.text, font, width, made.subscripts).height();
}

void paint_symbols(QPainter& painter, const QRectF& rect, const QString& text, const QFont& font,
                   const QColor& colour) {
  const Marked made = marked(text);
  painter.setPen(colour);
  WholeLines(made.text, font, rect.width(), made.subscripts).paint(painter, rect, Qt::AlignLeft);
}

} // namespace feedwright
