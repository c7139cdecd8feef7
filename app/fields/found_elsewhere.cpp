// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/found_elsewhere.h"

#include "text/text_of.h"
#include "text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace feedwright {

namespace {

struct Said {
  Q_DECLARE_TR_FUNCTIONS(feedwright::FieldsPanel)

public:
  static QString field(const Selection& place) {
    return tr("%1 (%2)", "field, its part")
        .arg(words::field_name(place.slot, place.member.toStdString()),
             words::part_name(place.slot));
  }
  static QString none() { return tr("No field of this axis or of the machine is called so."); }
  static QString some(const QStringList& fields) {
    return tr("None in this part. Elsewhere: %1. Enter goes to the first.",
              "fields with their parts")
        .arg(fields.join(QStringLiteral(", ")));
  }
};

} // namespace

std::vector<Selection> found_elsewhere(const MachineDocument& document,
                                       const std::vector<PartSlot>& shown, const QString& text) {
  std::vector<Selection> found;
  const Selection& at = document.selection();
  for (std::size_t i = 0; i < slot_count; ++i) {
    const auto slot = static_cast<PartSlot>(i);
    if (std::ranges::find(shown, slot) != shown.end() ||
        (!of_machine(slot) && document.current_axis() == nullptr)) {
      continue;
    }
    for (const FieldView& field : fields_of(document.machine(), at.axis, slot)) {
      if (words::field_name(slot, field.info.member).contains(text, Qt::CaseInsensitive)) {
        found.push_back(
            {at.axis, slot, text_of(field.info.member), at.machine && of_machine(slot)});
      }
    }
  }
  return found;
}

QString sentence_on(const std::vector<Selection>& found) {
  constexpr std::size_t most = 4;
  if (found.empty()) {
    return Said::none();
  }
  QStringList fields;
  for (std::size_t i = 0; i < std::min(most, found.size()); ++i) {
    fields << Said::field(found[i]);
  }
  return Said::some(fields);
}

} // namespace feedwright
