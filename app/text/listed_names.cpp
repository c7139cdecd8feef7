// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/listed_names.h"

#include "text/piecewise.h"
#include "text/word_table.h"
#include "text/words.h"

#include <QHash>
#include <QRegularExpression>

#include <vector>

namespace feedwright::words {

namespace {

/// Between the commas of a name; what is not among them (a thread, a profile) is a designation.
constexpr const char* pieces[] = {
    QT_TRANSLATE_NOOP("Words", "rolled"),
    QT_TRANSLATE_NOOP("Words", "ground"),
    QT_TRANSLATE_NOOP("Words", "transport grade"),
    QT_TRANSLATE_NOOP("Words", "lubricated"),
    QT_TRANSLATE_NOOP("Words", "bronze nut"),
    QT_TRANSLATE_NOOP("Words", "steel or dry nut"),
    QT_TRANSLATE_NOOP("Words", "rubber"),
    QT_TRANSLATE_NOOP("Words", "polyurethane"),
    QT_TRANSLATE_NOOP("Words", "glass cords"),
    QT_TRANSLATE_NOOP("Words", "steel cords"),
    QT_TRANSLATE_NOOP("Words", "open length"),
    QT_TRANSLATE_NOOP("Words", "%1 curvilinear"),
    QT_TRANSLATE_NOOP("Words", "jaw"),
    QT_TRANSLATE_NOOP("Words", "hard spider"),
    QT_TRANSLATE_NOOP("Words", "bellows"),
    QT_TRANSLATE_NOOP("Words", "beam"),
    QT_TRANSLATE_NOOP("Words", "helical slit"),
    QT_TRANSLATE_NOOP("Words", "rigid"),
    QT_TRANSLATE_NOOP("Words", "clamped sleeve"),
    QT_TRANSLATE_NOOP("Words", "%1 mm outside"),
    QT_TRANSLATE_NOOP("Words", "bore %1"),
    QT_TRANSLATE_NOOP("Words", "pair of angular contact ball bearings in a block"),
    QT_TRANSLATE_NOOP("Words", "pair of 60° angular contact thrust bearings"),
    QT_TRANSLATE_NOOP("Words", "two deep-groove ball bearings against each other"),
    QT_TRANSLATE_NOOP("Words", "one deep-groove ball bearing"),
    QT_TRANSLATE_NOOP("Words", "preloaded"),
    QT_TRANSLATE_NOOP("Words", "floating end only"),
    QT_TRANSLATE_NOOP("Words", "no thrust"),
    QT_TRANSLATE_NOOP("Words", "profile rail %1"),
    QT_TRANSLATE_NOOP("Words", "round rail %1"),
    QT_TRANSLATE_NOOP("Words", "rail and one block"),
    QT_TRANSLATE_NOOP("Words", "long block"),
    QT_TRANSLATE_NOOP("Words", "ball blocks"),
    QT_TRANSLATE_NOOP("Words", "roller blocks"),
    QT_TRANSLATE_NOOP("Words", "supported"),
    QT_TRANSLATE_NOOP("Words", "open ball bushings"),
    QT_TRANSLATE_NOOP("Words", "V-guide with steel wheels and felt wipers"),
    QT_TRANSLATE_NOOP("Words", "V-wheels"),
    QT_TRANSLATE_NOOP("Words", "polymer"),
    QT_TRANSLATE_NOOP("Words", "steel"),
    QT_TRANSLATE_NOOP("Words", "on aluminium extrusion"),
    QT_TRANSLATE_NOOP("Words", "on hardened track"),
    QT_TRANSLATE_NOOP("Words", "sliding ways"),
    QT_TRANSLATE_NOOP("Words", "worked example"),
    QT_TRANSLATE_NOOP("Words", "low"),
    QT_TRANSLATE_NOOP("Words", "high"),
    QT_TRANSLATE_NOOP("Words", "steel %1"),
    QT_TRANSLATE_NOOP("Words", "case-hardening steel %1"),
    QT_TRANSLATE_NOOP("Words", "heat-treatable steel %1"),
    QT_TRANSLATE_NOOP("Words", "stainless steel %1"),
    QT_TRANSLATE_NOOP("Words", "cast iron %1"),
    QT_TRANSLATE_NOOP("Words", "brass"),
    QT_TRANSLATE_NOOP("Words", "aluminium"),
    QT_TRANSLATE_NOOP("Words", "wrought"),
    QT_TRANSLATE_NOOP("Words", "particleboard"),
    QT_TRANSLATE_NOOP("Words", "softwood"),
    QT_TRANSLATE_NOOP("Words", "hardwood"),
    QT_TRANSLATE_NOOP("Words", "plywood"),
    QT_TRANSLATE_NOOP("Words", "acrylic"),
    QT_TRANSLATE_NOOP("Words", "servo %1 W"),
    QT_TRANSLATE_NOOP("Words", "%1 mm flange"),
    QT_TRANSLATE_NOOP("Words", "%1 at %2")};

struct Form {
  QRegularExpression pattern; ///< with a group for each of its numbers or designations
  const char* text;
};

/// The pieces, those without numbers by their text.
struct Pieces {
  QHash<QString, const char*> plain;
  std::vector<Form> forms;

  Pieces() {
    static const QRegularExpression place(QStringLiteral("\\\\%[12]"));
    for (const char* text : pieces) {
      const QString plain_text = QString::fromUtf8(text);
      if (!plain_text.contains(QLatin1Char('%'))) {
        plain.insert(plain_text, text);
        continue;
      }
      const QString form =
          QRegularExpression::escape(plain_text).replace(place, QStringLiteral("(.+)"));
      forms.push_back({QRegularExpression(QRegularExpression::anchoredPattern(form)), text});
    }
  }
};

/// Of measures and threads; a profile such as T2.5 is a name.
QString with_decimal_marks(QString text) {
  static const QRegularExpression point(QStringLiteral("(?<![A-Za-z0-9.])([0-9]+)\\.([0-9]+)"));
  return decimal_mark() == DecimalMark::comma ? text.replace(point, QStringLiteral("\\1,\\2"))
                                              : text;
}

QString translated_piece(const QString& piece) {
  static const Pieces known;
  if (const char* text = known.plain.value(piece)) {
    return translated(text);
  }
  for (const Form& form : known.forms) {
    const auto match = form.pattern.match(piece);
    if (match.hasMatch()) {
      const QString first = with_decimal_marks(match.captured(1));
      return match.lastCapturedIndex() == 1
                 ? translated(form.text).arg(first)
                 : translated(form.text).arg(first, with_decimal_marks(match.captured(2)));
    }
  }
  return with_decimal_marks(piece);
}

} // namespace

QString listed_name(const QString& name) {
  return piecewise(name, QStringLiteral(", "), translated_piece);
}

} // namespace feedwright::words
