// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/pulley_move.h"

#include <QCoreApplication>

#include <cmath>

namespace feedwright {

namespace {

struct PulleyMove {
  Q_DECLARE_TR_FUNCTIONS(PulleyMove)
};

Finite<Length> whole_mm(double mm) {
  return Finite<Length>::of(from_si<Length>(std::round(mm) * 1e-3));
}

} // namespace

const BeltLoopDrive* chosen_loop(const MachineDocument& document) {
  const Axis* axis = document.current_axis();
  return axis != nullptr ? std::get_if<BeltLoopDrive>(&axis->transmission) : nullptr;
}

QPointF pulley_place(const BeltLoopDrive& loop, std::size_t pulley) {
  const LoopMember& member = loop.pulleys.at(pulley);
  return {si_value(*member.x) * 1e3, si_value(*member.y) * 1e3};
}

void move_pulley(MachineDocument& document, std::size_t pulley, const QPointF& place, int drag) {
  const BeltLoopDrive* loop = chosen_loop(document);
  if (loop == nullptr || pulley >= loop->pulleys.size()) {
    return;
  }
  constexpr double farthest = 1e5; // mm: a hundred metres
  if (!(std::abs(place.x()) < farthest && std::abs(place.y()) < farthest)) {
    return;
  }
  const std::size_t axis = document.selection().axis;
  Machine changed = document.machine();
  auto& moved = std::get<BeltLoopDrive>(changed.axes.at(axis).transmission);
  moved.pulleys[pulley].x = whole_mm(place.x());
  moved.pulleys[pulley].y = whole_mm(place.y());
  // The table as it was typed is no longer what it holds.
  moved.notes.entries.erase("pulleys");
  document.edit(std::move(changed), PulleyMove::tr("pulley %1 moved", "its number").arg(pulley + 1),
                QStringLiteral("pulley/%1/%2/%3").arg(axis).arg(pulley).arg(drag));
}

} // namespace feedwright
