// SPDX-License-Identifier: GPL-3.0-or-later
#include "help/page_typography.h"

#include "text/symbol_text.h"
#include "text/whole_quantities.h"

#include <QRegularExpression>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>

namespace feedwright {

namespace {

constexpr QChar word_joiner(0x2060);

bool is_code(QTextCursor at) {
  at.movePosition(QTextCursor::NextCharacter, QTextCursor::KeepAnchor);
  return at.charFormat().fontFixedPitch();
}

/// A letter, perhaps a Greek one, with what stands below it.
const QRegularExpression& symbol() {
  static const QRegularExpression made(
      QStringLiteral("(?<![\\w])\\p{L}_([\\p{L}\\d]+(?:[.,][\\p{L}\\d]+)*)"),
      QRegularExpression::UseUnicodePropertiesOption);
  return made;
}

void set_symbols(const QTextBlock& block) {
  QList<QRegularExpressionMatch> found;
  for (auto it = symbol().globalMatch(block.text()); it.hasNext();) {
    found.prepend(it.next());
  }
  for (const QRegularExpressionMatch& match : found) {
    QTextCursor at(block);
    at.setPosition(block.position() + int(match.capturedStart(1)) - 1);
    if (is_code(at)) {
      continue;
    }
    at.deleteChar();
    at.movePosition(QTextCursor::NextCharacter, QTextCursor::KeepAnchor,
                    int(match.capturedLength(1)));
    QTextCharFormat below;
    below.setVerticalAlignment(QTextCharFormat::AlignSubScript);
    at.mergeCharFormat(below);
  }
}

/// Quantities and options of a command line ("--working") in one piece.
QString held_together(const QString& text) {
  static const QRegularExpression within_option(QStringLiteral("(?<=-)(?=-\\w)|(?<=--)(?=\\w)"));
  return with_whole_quantities(text).replace(within_option, QString(word_joiner));
}

/// What is to be put in stands where the held text differs from the block's; from the end back, so
/// that places before stay as they are.
void hold_together(const QTextBlock& block) {
  const QString text = block.text();
  const QString held = held_together(text);
  qsizetype at = text.size();
  for (qsizetype i = held.size() - 1; i >= 0; --i) {
    QTextCursor cursor(block);
    if (held[i] == word_joiner) {
      cursor.setPosition(block.position() + int(at));
      cursor.insertText(QString(word_joiner), cursor.charFormat());
      continue;
    }
    --at;
    if (held[i] != text[at]) {
      cursor.setPosition(block.position() + int(at));
      cursor.setPosition(block.position() + int(at) + 1, QTextCursor::KeepAnchor);
      cursor.insertText(QString(held[i]), cursor.charFormat());
    }
  }
}

} // namespace

void set_page(QTextDocument& document) {
  for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
    set_symbols(block);
    hold_together(block);
  }
}

QString as_set(const QString& words) {
  return held_together(plain_symbols(words));
}

QString as_written(QString text) {
  return text.remove(word_joiner).replace(QChar::Nbsp, QLatin1Char(' '));
}

} // namespace feedwright
