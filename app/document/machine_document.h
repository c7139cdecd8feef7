// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/pending_texts.h"
#include "machine/fault.h"
#include "machine/machine.h"
#include "sheet/file_units.h"
#include "sizing/results.h"

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <cstdint>
#include <optional>
#include <vector>

namespace feedwright {

/// What is chosen in the window: an axis, a part of it, perhaps a field.
struct Selection {
  std::size_t axis = 0;
  PartSlot slot = PartSlot::drive;
  QString member;
  /// The machine as a whole, not one of its axes. Supply, controller and spindle can be chosen from
  /// an axis too, and then the axis stays in sight; once the machine is chosen they keep it so.
  bool machine = false;
  friend bool operator==(const Selection&, const Selection&) = default;
};

/// A machine, its undo stack and its file name. Views read it and call `edit…`; every edit is one
/// command on the stack and recomputes everything at once.
class MachineDocument : public QObject {
  Q_OBJECT
public:
  explicit MachineDocument(Machine machine, QObject* parent = nullptr);
  ~MachineDocument() override;

  const Machine& machine() const { return machine_; }
  /// What is not sound is not computed: results() is empty then, while axes without a fault have
  /// results of their own still.
  const std::vector<Fault>& faults() const { return faults_; }
  /// One per axis, or empty while there are faults.
  const std::vector<AxisResults>& results() const { return results_; }
  /// Results of an axis, or nullptr while it, or the machine, has faults.
  const AxisResults* results_of(std::size_t axis) const;
  /// Results of the selected axis, or nullptr while it, or the machine, has faults.
  const AxisResults* current() const;
  const Axis* current_axis() const;
  /// The units the machine's own figures are typed in; results are shown in them too.
  const FileUnits& units() const { return units_; }

  const Selection& selection() const { return selection_; }
  void select(const Selection& selection);

  /// Puts `machine` in place as one named, undoable step. Steps with the same non-empty
  /// `merge_key` in a row become one, until end_merging. A step that changes nothing is dropped.
  /// Undoing and redoing it selects the part it changes.
  void edit(Machine machine, const QString& name, const QString& merge_key = {});
  /// The same where typed texts are to go elsewhere with what they were typed for. Which axis is
  /// which is else told by their letters, or by their order where those are in doubt.
  void edit_moving(Machine machine, const QString& name, TypedMoves moves);
  /// Sets one field of one part, named for Undo after the field.
  bool edit_field(std::size_t axis, PartSlot slot, std::string_view member, const FieldValue& value,
                  const EntryNote& note);

  /// Edits to come are steps of their own, whatever their merge key: the keyboard has moved on.
  void end_merging() { ++merging_; }

  /// Another machine altogether; nothing of the one before can be undone. An empty path is a
  /// machine that has no file yet.
  void open(Machine machine, const QString& path, const QString& fingerprint);

  /// Texts typed into fields and not taken.
  PendingTexts& pending() { return pending_; }
  const PendingTexts& pending() const { return pending_; }
  /// Has everybody who holds a typed text hand it in, before the machine is saved or left.
  void gather_typed() { emit typed_wanted(); }

  QUndoStack* undo_stack() { return &undo_stack_; }
  /// Tells the step that Undo would take back from every other of this document; zero if there is
  /// none. A step that took another into itself is another one.
  std::uint64_t last_step() const;
  /// Whether a step is just being undone or redone: an edit now would leave the stack out of order.
  bool is_stepping() const { return stepping_; }
  bool is_modified() const { return !undo_stack_.isClean(); }

  QString file_path() const { return file_path_; }
  /// File name for titles; without one the machine's own name, or "Untitled".
  QString display_name() const;
  void set_file(const QString& path, const QString& fingerprint);
  /// As it stands it is in no file, though nothing was edited.
  void mark_unsaved();
  /// Hash of the file's bytes when last read or written; to notice changes by others.
  QString file_fingerprint() const { return fingerprint_; }

  /// What is being typed waits from now on among the pending texts: the views are about to go.
  void put_typed_aside() { emit typed_moving(true); }

signals:
  /// Machine, faults and results have changed.
  void changed();
  void selection_changed();
  /// File name or modified mark has changed.
  void state_changed();
  /// What is typed and fits is to be taken now.
  void typed_wanted();
  /// What is typed is to be put among the pending texts now, not taken: what it was typed for is
  /// about to move, whole axes or the rows of a table.
  void typed_moving(bool of_axes);

private:
  friend class MachineCommand;
  /// `gone` are the texts that went with their places when the opposite step was made, and
  /// afterwards those that went with this one.
  void put(const Machine& machine, const TypedMoves& moves, const TypedMove& move,
           TypedTexts& gone);
  void push(Machine machine, const QString& name, const QString& key, TypedMoves moves);
  void recompute();
  void recompute_sound_axes();

  Machine machine_;
  std::vector<Fault> faults_;
  std::vector<AxisResults> results_;
  /// Of each axis that has no fault, while another has.
  std::vector<std::optional<AxisResults>> sound_results_;
  FileUnits units_;
  Selection selection_;
  PendingTexts pending_;
  QUndoStack undo_stack_;
  QString file_path_;
  QString fingerprint_;
  int merging_ = 0;
  std::uint64_t steps_made_ = 0;
  bool stepping_ = false;
};

} // namespace feedwright
