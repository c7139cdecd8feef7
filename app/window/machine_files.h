// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/file_watch.h"
#include "document/machine_document.h"
#include "prompts/prompts.h"

#include <QObject>

namespace feedwright {

/// Opening and saving the document's machine, so that nothing is lost without a question.
class MachineFiles : public QObject {
  Q_OBJECT
public:
  MachineFiles(MachineDocument& document, QWidget& window);

  void set_prompts(Prompts& prompts) { prompts_ = &prompts; }
  Prompts& prompts() { return *prompts_; }

  /// Whether the present machine may be left: it is saved, or the user said it may go.
  bool may_leave();
  /// False if it could not be read; then the document is as it was and the user has been told.
  bool open(const QString& path);
  void ask_and_open();
  void start_new();
  bool save();
  bool save_as();
  /// Reads the file again, losing what is not saved.
  void reload();
  /// Looks whether somebody else has changed the file.
  void look() { watch_.look(); }
  bool save_pdf();

signals:
  /// Another machine has been put in place; the path is empty if it has no file.
  void opened(const QString& path);
  void changed_outside();

private:
  bool write_to(const QString& path);
  QString folder() const;

  MachineDocument& document_;
  QWidget& window_;
  DialogPrompts dialogs_;
  Prompts* prompts_ = &dialogs_;
  FileWatch watch_;
};

} // namespace feedwright
