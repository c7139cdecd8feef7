// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/machine_document.h"

#include "document/differences.h"
#include "machine/machine_file.h"
#include "sizing/size_axis.h"
#include "text/words.h"

#include <QFileInfo>

#include <algorithm>
#include <optional>
#include <utility>

namespace feedwright {

namespace {

/// Where somebody must look to see what a step did; `at` if that is one of the places.
Selection place_of_change(const Machine& before, const Machine& after, const Selection& at) {
  std::optional<Selection> first;
  for (const Difference& difference : differences(before, after)) {
    const std::size_t axis = of_machine(difference.slot) ? at.axis : difference.axis;
    const Selection place{axis, difference.slot, {}};
    if (place.axis == at.axis && place.slot == at.slot) {
      return at;
    }
    first = first.value_or(place);
  }
  return first.value_or(at);
}

} // namespace

/// One step of Undo: the machine before and after. Machines are small; copies of them cannot
/// disagree with each other.
class MachineCommand : public QUndoCommand {
public:
  MachineCommand(MachineDocument& document, Machine after, const QString& name, QString merge_key,
                 TypedMoves moves)
      : QUndoCommand(name), document_(document), before_(document.machine()),
        after_(std::move(after)), merge_key_(std::move(merge_key)), moves_(std::move(moves)),
        number_(++document.steps_made_) {}

  std::uint64_t number() const { return number_; }

  void undo() override { show(after_, before_, moves_.back); }
  void redo() override {
    if (std::exchange(is_new_, false)) {
      // Done for the first time it is somebody's edit, made where they are.
      document_.put(after_, moves_, moves_.forth, gone_);
    } else {
      show(before_, after_, moves_.forth);
    }
  }
  int id() const override { return merge_key_.isEmpty() ? -1 : 1; }

  bool mergeWith(const QUndoCommand* next) override {
    const auto* other = static_cast<const MachineCommand*>(next);
    if (other->merge_key_ != merge_key_) {
      return false;
    }
    after_ = other->after_;
    number_ = other->number_;
    setText(other->text());
    setObsolete(after_ == before_);
    return true;
  }

private:
  void show(const Machine& from, const Machine& to, const TypedMove& move) {
    const Selection place = place_of_change(from, to, document_.selection());
    document_.stepping_ = true;
    document_.put(to, moves_, move, gone_);
    document_.select(place);
    document_.stepping_ = false;
  }

  MachineDocument& document_;
  Machine before_;
  Machine after_;
  QString merge_key_;
  TypedMoves moves_;
  TypedTexts gone_; ///< typed texts that went with what the step, or its undoing, took away
  std::uint64_t number_;
  bool is_new_ = true;
};

MachineDocument::MachineDocument(Machine machine, QObject* parent)
    : QObject(parent), machine_(std::move(machine)) {
  constexpr int kept_steps = 1000;
  undo_stack_.setUndoLimit(kept_steps);
  connect(&undo_stack_, &QUndoStack::cleanChanged, this, &MachineDocument::state_changed);
  recompute();
}

MachineDocument::~MachineDocument() {
  // The stack outlives the signals' receiver while it is taken apart.
  undo_stack_.disconnect(this);
}

const AxisResults* MachineDocument::results_of(std::size_t axis) const {
  if (axis < results_.size()) {
    return &results_[axis];
  }
  const bool sound = axis < sound_results_.size() && sound_results_[axis];
  return sound ? &*sound_results_[axis] : nullptr;
}

const AxisResults* MachineDocument::current() const {
  return results_of(selection_.axis);
}

const Axis* MachineDocument::current_axis() const {
  return selection_.axis < machine_.axes.size() ? &machine_.axes[selection_.axis] : nullptr;
}

void MachineDocument::select(const Selection& selection) {
  Selection wanted = selection;
  if (wanted.axis >= machine_.axes.size()) {
    wanted.axis = machine_.axes.empty() ? 0 : machine_.axes.size() - 1;
  }
  wanted.machine = of_machine(wanted.slot) && (wanted.machine || selection_.machine);
  // A member chosen anew is told again: a door may lead twice to the same field.
  if (wanted == selection_ && wanted.member.isEmpty()) {
    return;
  }
  selection_ = wanted;
  emit selection_changed();
}

void MachineDocument::edit(Machine machine, const QString& name, const QString& merge_key) {
  const QString key =
      merge_key.isEmpty() ? merge_key : QStringLiteral("%1/%2").arg(merging_).arg(merge_key);
  TypedMoves moves = TypedMoves::by_axes(axis_places(machine_, machine), machine.axes.size());
  push(std::move(machine), name, key, std::move(moves));
}

void MachineDocument::edit_moving(Machine machine, const QString& name, TypedMoves moves) {
  push(std::move(machine), name, {}, std::move(moves));
}

void MachineDocument::push(Machine machine, const QString& name, const QString& key,
                           TypedMoves moves) {
  if (!(machine == machine_)) {
    undo_stack_.push(new MachineCommand(*this, std::move(machine), name, key, std::move(moves)));
  }
}

std::uint64_t MachineDocument::last_step() const {
  const int index = undo_stack_.index();
  return index > 0 ? static_cast<const MachineCommand*>(undo_stack_.command(index - 1))->number()
                   : 0;
}

bool MachineDocument::edit_field(std::size_t axis, PartSlot slot, std::string_view member,
                                 const FieldValue& value, const EntryNote& note) {
  const auto before = field_of(machine_, axis, slot, member);
  Machine changed = machine_;
  if (!before || !set_field(changed, axis, slot, member, value, note)) {
    return false;
  }
  const auto after = field_of(changed, axis, slot, member);
  const auto text = [](const FieldView& field) {
    const QString shown = words::field_text(field);
    return shown.isEmpty() ? tr("open") : shown;
  };
  const QString name = words::field_name(slot, member);
  const bool short_value = before->info.type != FieldType::table;
  edit(std::move(changed), short_value ? tr("%1 %2 → %3", "field, value before, value after")
                                             .arg(name, text(*before), text(*after))
                                       : name);
  return true;
}

void MachineDocument::open(Machine machine, const QString& path, const QString& fingerprint) {
  undo_stack_.clear();
  pending_.give_up_all();
  machine_ = std::move(machine);
  recompute();
  selection_ = {0, PartSlot::drive, {}};
  emit changed();
  emit selection_changed();
  set_file(path, fingerprint);
}

QString MachineDocument::display_name() const {
  if (!file_path_.isEmpty()) {
    return QFileInfo(file_path_).fileName();
  }
  const QString name = QString::fromStdString(machine_.name);
  return name.isEmpty() ? tr("Untitled") : name;
}

void MachineDocument::set_file(const QString& path, const QString& fingerprint) {
  file_path_ = path;
  fingerprint_ = fingerprint;
  undo_stack_.setClean();
  emit state_changed();
}

void MachineDocument::mark_unsaved() {
  undo_stack_.resetClean();
  emit state_changed();
}

void MachineDocument::put(const Machine& machine, const TypedMoves& moves, const TypedMove& move,
                          TypedTexts& gone) {
  if (move) {
    emit typed_moving(moves.of_axes);
  }
  gone = pending_.follow(move, std::exchange(gone, {}));
  machine_ = machine;
  recompute();
  const Selection kept = selection_;
  if (kept.axis >= machine_.axes.size()) {
    select(kept);
  }
  emit changed();
  if (move) {
    emit pending_.changed();
  }
}

void MachineDocument::recompute() {
  faults_ = faults_of(machine_);
  units_ = FileUnits(machine_);
  results_.clear();
  sound_results_.clear();
  if (!faults_.empty()) {
    recompute_sound_axes();
    return;
  }
  for (const Axis& axis : machine_.axes) {
    results_.push_back(size_axis(machine_, axis));
  }
}

/// An axis is sized by itself: one that is half typed leaves the others as they are.
void MachineDocument::recompute_sound_axes() {
  const auto of_all = [](const Fault& fault) { return !fault.slot || of_machine(*fault.slot); };
  if (std::ranges::any_of(faults_, of_all)) {
    return;
  }
  for (std::size_t axis = 0; axis < machine_.axes.size(); ++axis) {
    const bool faulty = std::ranges::find(faults_, axis, &Fault::axis) != faults_.end();
    sound_results_.push_back(faulty ? std::nullopt
                                    : std::optional(size_axis(machine_, machine_.axes[axis])));
  }
}

} // namespace feedwright
