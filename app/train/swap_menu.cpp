// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/swap_menu.h"

#include "text/words.h"
#include "train/swap_words.h"

#include <QActionGroup>
#include <QMenu>

namespace feedwright {

namespace {

/// Swaps that stand against each other: of each kind one is always there.
enum class Family { tie, idlers, layout, drive, driven, motor_end, far_end, motor, brake, work };

Family family_of(SwapKind kind) {
  switch (kind) {
  case SwapKind::coupling:
  case SwapKind::belt_stage:
  case SwapKind::belt_loop: return Family::tie;
  case SwapKind::add_idler:
  case SwapKind::remove_idler: return Family::idlers;
  case SwapKind::one_side:
  case SwapKind::two_motors:
  case SwapKind::one_motor: return Family::layout;
  case SwapKind::screw:
  case SwapKind::hauling_belt: return Family::drive;
  case SwapKind::screw_turns:
  case SwapKind::nut_turns: return Family::driven;
  case SwapKind::motor_end_fixed:
  case SwapKind::motor_end_supported:
  case SwapKind::motor_end_free: return Family::motor_end;
  case SwapKind::far_end_fixed:
  case SwapKind::far_end_supported:
  case SwapKind::far_end_free: return Family::far_end;
  case SwapKind::stepper_by_points:
  case SwapKind::stepper_by_ratings:
  case SwapKind::servo: return Family::motor;
  case SwapKind::brake:
  case SwapKind::no_brake: return Family::brake;
  case SwapKind::add_load_case: break;
  }
  return Family::work;
}

bool is_a_choice(Family family) {
  return family != Family::idlers && family != Family::work;
}

/// The ends of a screw each have a menu of their own.
QMenu* menu_for(QMenu& menu, Family family) {
  if (family != Family::motor_end && family != Family::far_end) {
    return &menu;
  }
  const char* member = family == Family::motor_end ? "motor_end" : "far_end";
  QMenu* made = menu.addMenu(words::field_name(PartSlot::drive, member));
  made->setObjectName(QString::fromLatin1(member));
  made->setToolTipsVisible(true);
  return made;
}

void add_swap(QMenu& menu, QActionGroup* group, MachineDocument& document, SwapBench& bench,
              const Swap& swap) {
  QAction* action = menu.addAction(swap_words::title(swap));
  action->setObjectName(QStringLiteral("swap_") + swap_words::id(swap));
  if (group != nullptr) {
    action->setCheckable(true);
    action->setActionGroup(group);
    action->setChecked(stands(*document.current_axis(), swap));
  }
  const auto tried = bench.tried(swap);
  if (!tried) {
    action->setEnabled(false);
    const QString why = words::fault_sentence(tried.error());
    action->setText(action->text() + QStringLiteral(" – ") + why);
    action->setToolTip(QStringLiteral("<p>%1</p>").arg(why.toHtmlEscaped()));
  }
  QObject::connect(action, &QAction::triggered, &menu, [&bench, swap] { bench.make(swap); });
}

} // namespace

void add_swaps(QMenu& menu, MachineDocument& document, SwapBench& bench, PartSlot slot) {
  menu.setToolTipsVisible(true);
  std::optional<Family> before;
  QMenu* place = &menu;
  QActionGroup* group = nullptr;
  for (const Swap& swap : swaps_of(*document.current_axis(), slot)) {
    const Family family = family_of(swap.kind);
    if (before != family) {
      if (before && place == &menu) {
        menu.addSeparator();
      }
      place = menu_for(menu, family);
      group = is_a_choice(family) ? new QActionGroup(&menu) : nullptr;
      before = family;
    }
    add_swap(*place, group, document, bench, swap);
  }
}

} // namespace feedwright
