// SPDX-License-Identifier: GPL-3.0-or-later
#include "help/topic_at.h"

#include "help/help_topics.h"
#include "limits/ladder_widget.h"
#include "studies/studies_view.h"
#include "train/train_view.h"
#include "window/axes_panel.h"

#include <iterator>

namespace feedwright {

namespace {

QString page_of(PartSlot slot, const MachineDocument& document) {
  const std::size_t axis = document.selection().axis;
  const bool there = of_machine(slot) || document.current_axis() != nullptr;
  return topic_of(slot, there ? part_type(document.machine(), axis, slot) : std::string_view());
}

QString page_of_study(int study) {
  if (study >= int(std::size(all_studies))) {
    return QStringLiteral("guide/working");
  }
  return study >= 0 && all_studies[study] == Study::stretch ? QStringLiteral("guide/stretch")
                                                            : QStringLiteral("guide/studies");
}

/// An editor of the fields is named after its part and member.
std::optional<PartSlot> slot_of_editor(const QWidget& widget) {
  const QString part = widget.objectName().section(QLatin1Char('.'), 0, 0);
  const HelpLink link = read_help_link(QStringLiteral("part:") + part);
  return link.to == HelpLink::To::part && widget.objectName().contains(QLatin1Char('.'))
             ? std::optional(link.slot)
             : std::nullopt;
}

} // namespace

QString topic_at(const QWidget* widget, const MachineDocument& document) {
  for (const QWidget* at = widget; at != nullptr; at = at->parentWidget()) {
    if (const auto slot = slot_of_editor(*at)) {
      return page_of(*slot, document);
    }
    if (const auto* ladder = qobject_cast<const LadderWidget*>(at)) {
      if (const auto limit = ladder->current_limit()) {
        return topic_of(*limit);
      }
      return QStringLiteral("guide/ladders");
    }
    if (const auto* studies = qobject_cast<const StudiesView*>(at)) {
      return page_of_study(studies->study());
    }
    if (const auto* train = qobject_cast<const TrainView*>(at)) {
      return page_of(train->focused_part(), document);
    }
    if (qobject_cast<const AxesPanel*>(at) != nullptr) {
      return of_machine(document.selection().slot) ? QString(first_topic)
                                                   : QStringLiteral("part/axis");
    }
  }
  return page_of(document.selection().slot, document);
}

} // namespace feedwright
