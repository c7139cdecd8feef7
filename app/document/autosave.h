// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/unsaved_folder.h"

#include <QObject>
#include <QTimer>

#include <chrono>

namespace feedwright {

class MachineDocument;

/// Puts a copy of a changed machine aside, soon after each change, so that a crash costs seconds.
/// The copy goes when the machine is saved or back as it was saved; it stays if this object is
/// destroyed without either.
class Autosave : public QObject {
  Q_OBJECT
public:
  struct Pace {
    std::chrono::milliseconds quiet{2'000};    ///< after the last change
    std::chrono::milliseconds longest{15'000}; ///< while changes go on
  };

  Autosave(MachineDocument& document, Pace pace);

  /// Puts the copy aside now, if it is not yet. False if it cannot be written.
  bool keep_now();
  /// The user does not want the changes: the copy goes among the discarded ones.
  void discard();

signals:
  /// The copy cannot be written; told once, until it can be written again.
  void failed(const QString& sentence);

private:
  void take_change();
  void tell(const QString& sentence);
  void forget();

  MachineDocument& document_;
  QTimer quiet_;
  QTimer longest_;
  std::unique_ptr<CopyPlace> place_;
  std::string written_; ///< machine, file and base of the copy; empty without one
  bool told_ = false;
};

} // namespace feedwright
