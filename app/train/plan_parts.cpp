// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/plan_parts.h"

#include <algorithm>

namespace feedwright {

namespace {

class PartLister {
public:
  PartLister(TrainPlan& plan, const TrainGeometry& train) : plan_(plan), train_(train) {}

  void list() {
    add(PartSlot::motor, "", plan_.motor);
    list_transmission();
    list_drive();
    const double first = plan_.nut_at_start.center().x();
    add(PartSlot::axis, "travel",
        QRectF(first, plan_.travel_line - plan_.line / 2.0, plan_.nut_at_end.center().x() - first,
               plan_.line));
    add(PartSlot::carriage, "", plan_.carriage);
    add(PartSlot::guides, "",
        QRectF(plan_.start.x(), plan_.carriage.bottom(), plan_.screw.width(), u(12)));
    add(PartSlot::targets, "thrust",
        QRectF(plan_.cut_arrow.p1(), plan_.cut_arrow.p2()).adjusted(-u(2), -u(7), u(4), u(7)));
    add(PartSlot::supply, "", plan_.supply);
    add(PartSlot::controller, "", plan_.controller);
  }

private:
  double u(double n) const { return n * plan_.unit; }

  void add(PartSlot slot, const char* member, const QRectF& area) {
    plan_.parts.push_back({slot, QString::fromLatin1(member), area});
  }

  void list_transmission() {
    if (plan_.loop) {
      add(PartSlot::transmission, "pulleys", plan_.loop->area);
    } else if (train_.belt) {
      add(PartSlot::transmission, "", plan_.belt.boundingRect());
    } else if (!train_.haul) {
      add(PartSlot::transmission, "", plan_.coupling.adjusted(-u(2), -u(4), u(2), u(4)));
    }
    // A coupling behind a hauling belt's pulley is hidden: its word stands for it.
  }

  void list_drive() {
    const double half = plan_.screw.height() / 2.0;
    const double grip = train_.haul ? half : std::max(half, u(7)) + u(6);
    const QPointF near(train_.haul ? half : u(12), grip);
    const QPointF far(train_.haul ? half : u(16), grip);
    add(PartSlot::drive, "", QRectF(plan_.start - near, plan_.end + far));
    add(PartSlot::drive, train_.haul ? "belt_length" : "span",
        QRectF(plan_.start.x(), plan_.span_line - plan_.line / 2.0, plan_.screw.width(),
               plan_.line));
    if (plan_.twin) {
      add(PartSlot::sides, "layout", plan_.twin->screw.united(plan_.twin->nut));
    }
  }

  TrainPlan& plan_;
  const TrainGeometry& train_;
};

} // namespace

void list_parts(TrainPlan& plan, const TrainGeometry& train) {
  PartLister(plan, train).list();
}

} // namespace feedwright
