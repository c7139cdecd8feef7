// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/axis_actions.h"

#include "document/axis_clip.h"
#include "document/new_machine.h"
#include "machine/machine_file.h"
#include "text/text_of.h"

#include <QClipboard>
#include <QCoreApplication>
#include <QGuiApplication>
#include <QMimeData>

namespace feedwright {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(AxisActions)

public:
  static QString added(const std::string& letter) { return tr("add axis %1").arg(text_of(letter)); }
  static QString duplicated(const std::string& from, const std::string& to) {
    return tr("duplicate axis %1 as %2").arg(text_of(from), text_of(to));
  }
  static QString removed(const std::string& letter) {
    return tr("remove axis %1").arg(text_of(letter));
  }
  static QString moved_up(const std::string& letter) {
    return tr("move axis %1 up").arg(text_of(letter));
  }
  static QString moved_down(const std::string& letter) {
    return tr("move axis %1 down").arg(text_of(letter));
  }
  static QString pasted(const std::string& letter) {
    return tr("paste axis %1").arg(text_of(letter));
  }
  static QString pasted_several(std::size_t count) {
    return tr("paste %n axis(es)", nullptr, static_cast<int>(count));
  }
  static QString full() {
    return tr("A machine has at most %n axis(es).", nullptr, static_cast<int>(most_axes));
  }
};

void put_axis(MachineDocument& document, Axis axis, const QString& name, PartSlot shown) {
  Machine changed = document.machine();
  changed.axes.push_back(std::move(axis));
  document.edit(std::move(changed), name);
  document.select({document.machine().axes.size() - 1, shown, {}});
}

AxisPlaces same_places(const Machine& machine) {
  AxisPlaces places;
  for (std::size_t i = 0; i < machine.axes.size(); ++i) {
    places.emplace_back(i);
  }
  return places;
}

/// Which axis is which is said, not told by letters: two may have the same.
void put_moved(MachineDocument& document, Machine changed, const QString& name,
               const AxisPlaces& places) {
  const std::size_t count = changed.axes.size();
  document.edit_moving(std::move(changed), name, TypedMoves::by_axes(places, count));
}

} // namespace

bool has_room_for_axes(const MachineDocument& document, std::size_t more) {
  return document.machine().axes.size() + more <= most_axes;
}

void add_axis(MachineDocument& document) {
  if (has_room_for_axes(document)) {
    const Axis axis = new_axis(document.machine());
    put_axis(document, axis, Words::added(axis.basics.letter), PartSlot::targets);
  }
}

void duplicate_axis(MachineDocument& document) {
  document.gather_typed();
  const Axis* from = document.current_axis();
  if (from != nullptr && has_room_for_axes(document)) {
    const QString name =
        Words::duplicated(from->basics.letter, guest_axis(document.machine(), *from).basics.letter);
    put_axis(document, guest_axis(document.machine(), *from), name, PartSlot::targets);
  }
}

void remove_axis(MachineDocument& document) {
  // What stands typed in the form belongs to this axis, not to the one that takes its place.
  document.gather_typed();
  const std::size_t at = document.selection().axis;
  // A machine keeps at least one axis.
  if (document.machine().axes.size() < 2 || document.current_axis() == nullptr) {
    return;
  }
  Machine changed = document.machine();
  const std::string letter = changed.axes[at].basics.letter;
  changed.axes.erase(changed.axes.begin() + static_cast<std::ptrdiff_t>(at));
  AxisPlaces places = same_places(document.machine());
  for (std::size_t i = at; i < places.size(); ++i) {
    places[i] = i == at ? std::nullopt : std::optional(i - 1);
  }
  put_moved(document, std::move(changed), Words::removed(letter), places);
}

bool can_move_axis(const MachineDocument& document, int by) {
  const std::size_t at = document.selection().axis;
  return by < 0 ? at > 0 : at + 1 < document.machine().axes.size();
}

void move_axis(MachineDocument& document, int by) {
  document.gather_typed();
  if (!can_move_axis(document, by)) {
    return;
  }
  const Selection at = document.selection();
  const std::size_t to = by < 0 ? at.axis - 1 : at.axis + 1;
  Machine changed = document.machine();
  std::swap(changed.axes[at.axis], changed.axes[to]);
  const std::string letter = changed.axes[to].basics.letter;
  AxisPlaces places = same_places(document.machine());
  std::swap(places[at.axis], places[to]);
  put_moved(document, std::move(changed),
            by < 0 ? Words::moved_up(letter) : Words::moved_down(letter), places);
  document.select({to, at.slot, {}});
}

void copy_axis(const MachineDocument& document) {
  if (document.current_axis() != nullptr) {
    QGuiApplication::clipboard()->setMimeData(
        axis_clip(document.machine(), document.selection().axis).release());
  }
}

QString paste_axes(MachineDocument& document, const QMimeData& clip) {
  auto axes = axes_in(clip);
  if (!axes) {
    return axes.error();
  }
  if (!has_room_for_axes(document, axes->size())) {
    return Words::full();
  }
  Machine changed = document.machine();
  for (Axis& axis : *axes) {
    changed.axes.push_back(guest_axis(changed, std::move(axis)));
  }
  const std::size_t first = document.machine().axes.size();
  const QString name = axes->size() == 1 ? Words::pasted(changed.axes.back().basics.letter)
                                         : Words::pasted_several(axes->size());
  document.edit(std::move(changed), name);
  document.select({first, PartSlot::targets, {}});
  return {};
}

} // namespace feedwright
