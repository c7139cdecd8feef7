// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "fields/typed_keeper.h"

#include <QWidget>

class QLabel;
class QPlainTextEdit;

namespace feedwright {

class EntryEdit;

/// The machine's own name and notes. Notes too long for the file stay as typed, with a sentence
/// that says so, and change nothing.
class MachineForm : public QWidget {
  Q_OBJECT
public:
  explicit MachineForm(MachineDocument& document, QWidget* parent = nullptr);

  /// Shows the machine's own, unless something else is typed here.
  void refresh();
  /// Takes the name as it is typed.
  void hand_in();
  /// Puts what is typed among the pending texts.
  void keep_typed();
  /// Where TypedAt's member of the machine is typed; nothing for another.
  QWidget* editor_of(std::string_view member) const;

private:
  void make_name();
  void make_notes();
  void take_name(const QString& name);
  void give_up_name();
  void take_notes();
  void show_notes();

  MachineDocument& document_;
  EntryEdit* name_ = nullptr;
  std::optional<TypedKeeper> typed_name_;
  QPlainTextEdit* notes_ = nullptr;
  QLabel* notes_help_ = nullptr;
  QString shown_notes_; ///< as put into the editor or typed there; it knows no other ends of lines
  bool taking_notes_ = false;
};

} // namespace feedwright
