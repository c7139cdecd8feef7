// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/symbol_text.h"

#include <QPainter>
#include <QTextLayout>

namespace feedwright {

namespace {

struct Marked {
  QString text;
  QList<QTextLayout::FormatRange> subscripts;
};

/// A subscript goes on over letters, digits, commas between them, and primes.
bool in_subscript(const QString& text, qsizetype at) {
  const QChar c = text[at];
  if (c.isLetterOrNumber() || c == QLatin1Char('\'')) {
    return true;
  }
  return c == QLatin1Char(',') && at + 1 < text.size() && text[at + 1].isLetterOrNumber();
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

qreal lay_out(QTextLayout& layout, const Marked& text, qreal width) {
  QTextOption option;
  option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
  layout.setTextOption(option);
  layout.setFormats(text.subscripts);
  qreal height = 0.0;
  layout.beginLayout();
  for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
    line.setLineWidth(width);
    line.setPosition(QPointF(0.0, height));
    height += line.height();
  }
  layout.endLayout();
  return height;
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
  QTextLayout layout(made.text, font);
  return lay_out(layout, made, width);
}

qreal symbols_width(const QString& text, const QFont& font) {
  constexpr qreal endless = 1e6;
  const Marked made = marked(text);
  QTextLayout layout(made.text, font);
  lay_out(layout, made, endless);
  return layout.lineCount() > 0 ? layout.lineAt(0).naturalTextWidth() : 0.0;
}

void paint_symbols(QPainter& painter, const QRectF& rect, const QString& text, const QFont& font,
                   const QColor& colour) {
  const Marked made = marked(text);
  QTextLayout layout(made.text, font, painter.device());
  lay_out(layout, made, rect.width());
  painter.setPen(colour);
  layout.draw(&painter, rect.topLeft());
}

} // namespace feedwright
