// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "fields/form_widths.h"

#include <QFont>
#include <QString>

#include <optional>
#include <vector>

class QWidget;

namespace feedwright {

/// What a form is made for: which parts of what type, and how names stand.
struct FormShape {
  QString parts;
  bool narrow = false; ///< names and editors have no room beside each other
  bool operator==(const FormShape&) const = default;
};

/// Says what shape a form of the axis at hand would have, in the present language.
class FormShaper {
public:
  /// `around`: the form would be as wide, in its letters.
  FormShape shape(const MachineDocument& document, const std::vector<PartSlot>& shown,
                  const QWidget& around);

private:
  /// What those parts' fields take in that font; kept, for measuring text is slow.
  struct Measured {
    QString parts;
    QFont font;
    FormWidths widths;
  };
  std::optional<Measured> measured_;
};

} // namespace feedwright
