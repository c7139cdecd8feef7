// SPDX-License-Identifier: GPL-3.0-or-later

// Names of results and limits, and what each is.

#include "text/result_words.h"
#include "text/word_table.h"
#include "text/words.h"

#include <array>

namespace feedwright::words {

namespace {

constexpr const char* limit_names[limit_count] = {
    QT_TRANSLATE_NOOP("Words", "whip"),
    QT_TRANSLATE_NOOP("Words", "ball speed"),
    QT_TRANSLATE_NOOP("Words", "screw speed"),
    QT_TRANSLATE_NOOP("Words", "motor torque"),
    QT_TRANSLATE_NOOP("Words", "motor speed"),
    QT_TRANSLATE_NOOP("Words", "step rate"),
    QT_TRANSLATE_NOOP("Words", "belt speed"),
    QT_TRANSLATE_NOOP("Words", "guide speed"),
    QT_TRANSLATE_NOOP("Words", "buckling"),
    QT_TRANSLATE_NOOP("Words", "core stress"),
    QT_TRANSLATE_NOOP("Words", "static rating"),
    QT_TRANSLATE_NOOP("Words", "bearing thrust"),
    QT_TRANSLATE_NOOP("Words", "motor thrust"),
    QT_TRANSLATE_NOOP("Words", "acceleration"),
    QT_TRANSLATE_NOOP("Words", "inertia match"),
    QT_TRANSLATE_NOOP("Words", "resolution"),
    QT_TRANSLATE_NOOP("Words", "lost motion"),
    QT_TRANSLATE_NOOP("Words", "belt pull"),
    QT_TRANSLATE_NOOP("Words", "hauling belt pull"),
    QT_TRANSLATE_NOOP("Words", "coupling torque"),
    QT_TRANSLATE_NOOP("Words", "RMS torque"),
    QT_TRANSLATE_NOOP("Words", "reversal error"),
    QT_TRANSLATE_NOOP("Words", "error under cut"),
    QT_TRANSLATE_NOOP("Words", "life"),
    QT_TRANSLATE_NOOP("Words", "supply power, axis alone"),
    QT_TRANSLATE_NOOP("Words", "bus voltage, axis alone"),
    QT_TRANSLATE_NOOP("Words", "load cases"),
};

constexpr const char* verdict_words[] = {
    QT_TRANSLATE_NOOP("Words", "clear"),
    QT_TRANSLATE_NOOP("Words", "close"),
    QT_TRANSLATE_NOOP("Words", "over"),
    QT_TRANSLATE_NOOP("Words", "open"),
};

constexpr std::array verdict_signs = {u"✓", u"◑", u"▲", u"○"};

const ResultWords* words_of(ResultId id) {
  for (const auto& table : {train_result_words(), limits_result_words(), outcome_result_words()}) {
    for (const ResultWords& words : table) {
      if (words.key == descriptor(id).name) {
        return &words;
      }
    }
  }
  return nullptr;
}

} // namespace

QString result_name(ResultId id) {
  const ResultWords* words = words_of(id);
  return words != nullptr ? translated(words->name) : QString();
}

QString result_meaning(ResultId id) {
  const ResultWords* words = words_of(id);
  return words != nullptr ? translated(words->meaning) : QString();
}

QString result_source(ResultId id) {
  return text_of(descriptor(id).publication);
}

QString limit_name(LimitId id) {
  return translated(limit_names[static_cast<std::size_t>(id)]);
}

QString verdict_word(Verdict verdict) {
  return translated(verdict_words[static_cast<std::size_t>(verdict)]);
}

QString verdict_sign(Verdict verdict) {
  return QString::fromUtf16(verdict_signs[static_cast<std::size_t>(verdict)]);
}

} // namespace feedwright::words
