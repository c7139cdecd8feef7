// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/label_marks.h"

#include <algorithm>

namespace feedwright {

namespace {

QRectF area_of(const TrainPlan& plan, PartSlot slot) {
  const auto found = std::ranges::find(plan.parts, slot, &PlannedPart::slot);
  return found != plan.parts.end() ? found->area : QRectF();
}

/// The marks of one part in its order, the worst verdict first for the tone.
struct PartMarks {
  PartSlot slot;
  QStringList lines;
  const GoverningMark* worst;
};

/// Said in the box itself, which is drawn as large as they need.
bool in_box(PartSlot slot) {
  return slot == PartSlot::supply || slot == PartSlot::controller;
}

std::vector<PartMarks> marks_by_part(const TrainGeometry& train, const GoverningMark* said) {
  std::vector<const GoverningMark*> marks;
  if (train.governing && &*train.governing != said) {
    marks.push_back(&*train.governing);
  }
  for (const GoverningMark& mark : train.also) {
    if (&mark != said) {
      marks.push_back(&mark);
    }
  }
  std::vector<PartMarks> parts;
  for (const GoverningMark* mark : marks) {
    // A clear mark in one label with another that is over would wear its colour.
    const bool in_box = mark->slot == PartSlot::supply || mark->slot == PartSlot::controller;
    const bool clear = mark->verdict == Verdict::clear;
    auto found = std::ranges::find_if(parts, [&](const PartMarks& part) {
      return part.slot == mark->slot &&
             (in_box || (part.worst->verdict == Verdict::clear) == clear);
    });
    if (found == parts.end()) {
      parts.push_back({mark->slot, {}, mark});
      found = std::prev(parts.end());
    }
    found->lines << mark->text;
    if (mark->verdict == Verdict::over ||
        (mark->verdict == Verdict::close && found->worst->verdict == Verdict::clear)) {
      found->worst = mark;
    }
  }
  return parts;
}

} // namespace

const GoverningMark* whip_mark(const TrainGeometry& train) {
  const auto is_whip = [](const GoverningMark& mark) {
    return mark.slot == PartSlot::drive && mark.member == QLatin1String("span");
  };
  if (train.governing && is_whip(*train.governing)) {
    return &*train.governing;
  }
  const auto found = std::ranges::find_if(train.also, is_whip);
  return found != train.also.end() ? &*found : nullptr;
}

MarksAt marks_at(const TrainGeometry& train, PartSlot slot) {
  for (const PartMarks& part : marks_by_part(train, nullptr)) {
    if (part.slot == slot) {
      return {part.lines, tone_of_mark(*part.worst)};
    }
  }
  return {};
}

Tone tone_of_mark(const GoverningMark& mark) {
  return mark.verdict == Verdict::clear ? Tone::ink : tone_of(mark.verdict);
}

void label_marks(LabelWriter& writer, const TrainGeometry& train, const TrainPlan& plan) {
  using enum Beside;
  for (const PartMarks& part :
       marks_by_part(train, plan.whip.isEmpty() ? nullptr : whip_mark(train))) {
    const Tone tone = tone_of_mark(*part.worst);
    if (in_box(part.slot)) {
      continue;
    }
    const std::vector<Beside> sides{above, right, below, left};
    const QRectF area = area_of(plan, part.slot);
    // A part without a place of its own yet, such as a duty that the title had no room for.
    bool said = area.isNull() && writer.anywhere(part.lines.constFirst(), tone);
    for (QStringList lines = part.lines; !said && !lines.isEmpty(); lines.removeLast()) {
      said = writer.beside(lines.join(QLatin1Char('\n')), area, sides, tone, true) ||
             writer.beside(lines.join(QStringLiteral(" · ")), area, sides, tone, true);
    }
    if (!said) {
      writer.anywhere(part.lines.constFirst(), tone);
    }
  }
}

} // namespace feedwright
