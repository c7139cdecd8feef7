// SPDX-License-Identifier: GPL-3.0-or-later

// Equations as one would read them aloud: where a bar or a root ends is said where it could be
// doubted.

#include "text/text_of.h"
#include "text/working_words.h"

#include <QCoreApplication>

namespace feedwright::words {

namespace {

using Form = Notation::Form;

bool is_simple(const Notation& part) {
  return part.form == Form::symbol || part.form == Form::number;
}

class Speaker {
  Q_DECLARE_TR_FUNCTIONS(Words)

public:
  QString said(const Notation& n) const {
    switch (n.form) {
    case Form::symbol: return symbol(n);
    case Form::number: return number(n);
    case Form::sum: return sum(n);
    case Form::product: return joined(n, tr("%1 times %2"));
    case Form::fraction: return fraction(n);
    case Form::negative: return tr("minus %1").arg(part(n, 0));
    case Form::square:
      return is_simple(n.parts[0]) ? tr("%1 squared").arg(said(n.parts[0]))
                                   : tr("the square of %1, end of square").arg(said(n.parts[0]));
    case Form::root:
      return is_simple(n.parts[0]) ? tr("the square root of %1").arg(said(n.parts[0]))
                                   : tr("the square root of %1, end of root").arg(said(n.parts[0]));
    case Form::function: return tr("%1 of %2", "function").arg(text_of(n.text), said(n.parts[0]));
    case Form::solved: return solved(n);
    case Form::relation: break;
    }
    return joined(n, tr("%1 equals %2"));
  }

private:
  QString part(const Notation& whole, std::size_t i) const {
    const QString inner = said(whole.parts[i]);
    return wants_brackets(whole, i, false) ? tr("bracket %1, end of bracket").arg(inner) : inner;
  }

  static QString symbol(const Notation& n) {
    const auto [base, subscript] = symbol_parts(n.text);
    QString letters = text_of(base);
    if (letters.endsWith(QLatin1Char('\''))) {
      letters.chop(1);
      letters = tr("%1 prime").arg(letters);
    }
    return subscript.empty() ? letters
                             : tr("%1 %2", "symbol, subscript").arg(letters, text_of(subscript));
  }

  static QString number(const Notation& n) {
    const auto [digits, exponent] = number_parts(n.text);
    QString made = text_of(digits).replace(QLatin1Char('-'), QChar(0x2212));
    if (!exponent.empty()) {
      made = tr("%1 times ten to the power of %2").arg(made, text_of(exponent));
    }
    return n.unit.empty() ? made : tr("%1 %2", "number, unit").arg(made, text_of(n.unit));
  }

  QString sum(const Notation& n) const {
    QString made = part(n, 0);
    for (std::size_t i = 1; i < n.parts.size(); ++i) {
      const Notation& next = n.parts[i];
      made = next.form == Form::negative ? tr("%1 minus %2").arg(made, part(next, 0))
                                         : tr("%1 plus %2").arg(made, part(n, i));
    }
    return made;
  }

  QString fraction(const Notation& n) const {
    const bool plain = is_simple(n.parts[0]) && is_simple(n.parts[1]);
    const QString over = said(n.parts[0]);
    const QString under = said(n.parts[1]);
    return plain ? tr("%1 over %2").arg(over, under)
                 : tr("the fraction %1, over %2, end of fraction").arg(over, under);
  }

  QString solved(const Notation& n) const {
    QStringList over;
    for (const Notation& one : n.parts) {
      over << said(one);
    }
    return over.isEmpty() ? tr("a function f")
                          : tr("a function f of %1").arg(over.join(QStringLiteral("; ")));
  }

  QString joined(const Notation& n, const QString& pattern) const {
    QString made = part(n, 0);
    for (std::size_t i = 1; i < n.parts.size(); ++i) {
      made = pattern.arg(made, part(n, i));
    }
    return made;
  }
};

} // namespace

QString spoken(const Notation& notation) {
  return Speaker().said(notation);
}

} // namespace feedwright::words
