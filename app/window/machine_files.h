// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/file_watch.h"
#include "document/machine_store.h"
#include "document/safekeeping.h"
#include "prompts/prompts.h"

#include <QObject>

namespace feedwright {

/// Opening and saving the document's machine, so that nothing is lost without a question.
class MachineFiles : public QObject {
  Q_OBJECT
public:
  /// Without safekeeping no copies are put aside and no file is claimed.
  MachineFiles(MachineDocument& document, Safekeeping* safekeeping, QWidget& window);

  void set_prompts(Prompts& prompts) { prompts_ = &prompts; }
  Prompts& prompts() { return *prompts_; }

  /// Whether the present machine may be left: it is saved, or the user said it may go.
  bool may_leave();
  /// The machine is left: the copy put aside of what was not saved goes among the discarded ones.
  void let_go();
  /// False if it could not be read; then the document is as it was and the user has been told.
  bool open(const QString& path);
  /// What is in the file; nothing if it could not be read, and the user has been told.
  std::optional<StoredMachine> read(const QString& path);
  /// Puts what was read from the file in place of the present machine.
  void put(StoredMachine stored, const QString& path);
  /// Puts a machine in place that was never saved as it is, or whose file is gone.
  void put_unsaved(Machine machine, const QString& path, const QString& fingerprint);
  /// A machine of no file, as good as untouched.
  void put_untitled(Machine machine);
  /// A path to open, or empty if the user thought better of it.
  QString ask_what_to_open();
  void start_new();
  bool save();
  bool save_as();
  /// Reads the file again, losing what is not saved.
  void reload();
  /// Looks whether somebody else has changed the file.
  void look() { watch_.look(); }
  bool save_pdf();
  /// Somebody else has the file open: saving here asks for another name.
  const std::optional<FileHolder>& held_by() const { return held_by_; }

signals:
  /// Another machine has been put in place; the path is empty if it has no file.
  void opened(const QString& path);
  /// The machine is in the file.
  void saved(const QString& path);
  void changed_outside();
  /// The sheet is in the file.
  void sheet_written(const QString& path);
  /// Somebody else has, or no longer has, the file open.
  void holder_changed();

private:
  void claim(const QString& path);
  bool write_to(const QString& path);
  QString folder() const;
  QString suggested_path() const;

  MachineDocument& document_;
  Safekeeping* safekeeping_;
  QWidget& window_;
  DialogPrompts dialogs_;
  Prompts* prompts_ = &dialogs_;
  FileWatch watch_;
  std::optional<FileHolder> held_by_;
};

/// "anna on workshop, process 1234"; "another window of this program".
QString holder_text(const FileHolder& holder);

} // namespace feedwright
