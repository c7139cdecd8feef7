// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Everything the program asks in a dialog of its own, behind one seam, so that tests can answer.

#include <QString>
#include <QStringList>

class QWidget;

namespace feedwright {

enum class UnsavedAnswer : std::uint8_t { save, discard, cancel };
enum class OverwriteAnswer : std::uint8_t { overwrite, save_as, cancel };

/// Why saving to the file's own place would lose something.
enum class OverwriteReason : std::uint8_t {
  changed_outside, ///< somebody else wrote the file since it was read
  newer_format,    ///< a newer program wrote it; what this one does not know is kept, but…
};

class Prompts {
public:
  Prompts() = default;
  Prompts(const Prompts&) = delete;
  Prompts& operator=(const Prompts&) = delete;
  virtual ~Prompts() = default;

  virtual UnsavedAnswer unsaved_changes(QWidget* parent, const QString& name) = 0;
  virtual OverwriteAnswer overwrite(QWidget* parent, const QString& name,
                                    OverwriteReason reason) = 0;
  /// A path, or empty if the user thought better of it.
  virtual QString machine_to_open(QWidget* parent, const QString& folder) = 0;
  virtual QString machine_to_save(QWidget* parent, const QString& suggested) = 0;
  virtual QString pdf_to_save(QWidget* parent, const QString& suggested) = 0;
  virtual QString table_to_import(QWidget* parent) = 0;
  /// For a study's picture (.png) or numbers (.csv), as the suggested path ends.
  virtual QString study_to_save(QWidget* parent, const QString& suggested) = 0;
  /// Says what went wrong; `details` are further sentences.
  virtual void tell(QWidget* parent, const QString& sentence, const QStringList& details) = 0;
};

/// The real dialogs.
class DialogPrompts : public Prompts {
public:
  UnsavedAnswer unsaved_changes(QWidget* parent, const QString& name) override;
  OverwriteAnswer overwrite(QWidget* parent, const QString& name, OverwriteReason reason) override;
  QString machine_to_open(QWidget* parent, const QString& folder) override;
  QString machine_to_save(QWidget* parent, const QString& suggested) override;
  QString pdf_to_save(QWidget* parent, const QString& suggested) override;
  QString table_to_import(QWidget* parent) override;
  QString study_to_save(QWidget* parent, const QString& suggested) override;
  void tell(QWidget* parent, const QString& sentence, const QStringList& details) override;
};

} // namespace feedwright
