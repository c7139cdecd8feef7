// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/form_widths.h"

#include "text/words.h"

#include <QStringList>

#include <algorithm>

namespace feedwright {

FormWidths form_widths(const Machine& machine, std::size_t axis,
                       const std::vector<PartSlot>& slots_shown, const QFontMetrics& metrics) {
  constexpr int name_margin = 6;
  constexpr int frame_and_arrow = 30;
  constexpr int button_margins = 14;
  FormWidths widths;
  for (const PartSlot slot : slots_shown) {
    for (const FieldView& field : fields_of(machine, axis, slot)) {
      const QString name = words::field_name(slot, field.info.member);
      for (const QString& word : name.split(QLatin1Char(' '))) {
        widths.name = std::max(widths.name, metrics.horizontalAdvance(word) + name_margin);
      }
      for (const std::string_view choice : field.info.choices) {
        const QString text = words::choice_name(field.info.member, choice);
        widths.editor = std::max(widths.editor, metrics.horizontalAdvance(text) + frame_and_arrow);
      }
    }
  }
  for (const Origin origin : {Origin::preset, Origin::entered, Origin::part_list}) {
    widths.origin = std::max(widths.origin, metrics.horizontalAdvance(words::origin_name(origin)) +
                                                button_margins);
  }
  return widths;
}

bool have_room(const FormWidths& widths, int width) {
  constexpr int gaps_and_scroll_bar = 48;
  return widths.name + widths.editor + widths.origin + gaps_and_scroll_bar <= width;
}

} // namespace feedwright
