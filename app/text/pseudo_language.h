// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTranslator>

namespace feedwright {

/// Not a language: English made longer, accented, bracketed and laid out from right to left, so
/// that a text which is not translatable, or has no room, shows at once. For pictures and tests.
inline constexpr QLatin1String pseudo_code("x-pseudo");

class PseudoTranslator : public QTranslator {
  Q_OBJECT
public:
  using QTranslator::QTranslator;

  QString translate(const char* context, const char* source, const char* disambiguation,
                    int n) const override;
  bool isEmpty() const override { return false; }
};

/// `[Ĺéñğťħ ƀéťŵééñ ƀéáříñğš ~~~~~~]`: marks such as %1 and & stay.
QString pseudo_text(const QString& english);

} // namespace feedwright
