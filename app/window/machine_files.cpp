// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/machine_files.h"

#include "document/new_machine.h"
#include "files/write_file.h"
#include "sheet/print_sheet.h"
#include "text/file_words.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QWidget>

namespace feedwright {

MachineFiles::MachineFiles(MachineDocument& document, Safekeeping* safekeeping, QWidget& window)
    : document_(document), safekeeping_(safekeeping), window_(window) {
  connect(&watch_, &FileWatch::changed_outside, this, &MachineFiles::changed_outside);
  watch_.watch(document_.file_path(), document_.file_fingerprint());
  claim(document_.file_path());
}

bool MachineFiles::may_leave() {
  document_.gather_typed();
  if (!document_.is_modified()) {
    return true;
  }
  switch (prompts_->unsaved_changes(&window_, document_.display_name())) {
  case UnsavedAnswer::save: return save();
  case UnsavedAnswer::discard: return true;
  case UnsavedAnswer::cancel: break;
  }
  return false;
}

void MachineFiles::let_go() {
  // Else the fields would hand it in to the machine that comes.
  document_.gather_typed();
  if (safekeeping_ != nullptr && document_.is_modified()) {
    safekeeping_->autosave.discard();
  }
}

void MachineFiles::claim(const QString& path) {
  const bool was_held = held_by_.has_value();
  held_by_ = safekeeping_ != nullptr ? safekeeping_->claim.claim(path) : std::nullopt;
  if (held_by_) {
    // The file of the machine before is no longer ours to hold.
    safekeeping_->claim.claim({});
  }
  if (was_held || held_by_) {
    emit holder_changed();
  }
}

std::optional<StoredMachine> MachineFiles::read(const QString& path) {
  auto loaded = load_machine(path);
  if (!loaded) {
    prompts_->tell(&window_, tr("%1 cannot be opened.").arg(QFileInfo(path).fileName()),
                   loaded.error());
    return std::nullopt;
  }
  return *std::move(loaded);
}

bool MachineFiles::open(const QString& path) {
  auto loaded = read(path);
  if (!loaded) {
    return false;
  }
  put(*std::move(loaded), path);
  return true;
}

void MachineFiles::put(StoredMachine stored, const QString& path) {
  // A sample has no file of its own: saving it asks where.
  if (path.startsWith(QLatin1String(":/"))) {
    put_untitled(std::move(stored.machine));
    return;
  }
  const QString place = QFileInfo(path).absoluteFilePath();
  let_go();
  watch_.watch(place, stored.fingerprint);
  document_.open(std::move(stored.machine), place, stored.fingerprint);
  claim(place);
  emit opened(place);
}

void MachineFiles::put_unsaved(Machine machine, const QString& path, const QString& fingerprint) {
  let_go();
  watch_.watch(path, fingerprint);
  document_.open(std::move(machine), path, fingerprint);
  document_.mark_unsaved();
  claim(path);
  emit opened(path);
}

void MachineFiles::put_untitled(Machine machine) {
  let_go();
  watch_.watch({}, {});
  document_.open(std::move(machine), {}, {});
  claim({});
  emit opened({});
}

QString MachineFiles::ask_what_to_open() {
  return prompts_->machine_to_open(&window_, folder());
}

void MachineFiles::start_new() {
  if (may_leave()) {
    put_untitled(new_machine());
  }
}

bool MachineFiles::save() {
  document_.gather_typed();
  const QString path = document_.file_path();
  if (path.isEmpty()) {
    return save_as();
  }
  // Whoever held the file may be gone by now.
  claim(path);
  if (held_by_) {
    return save_as();
  }
  const QString there = fingerprint_of_file(path);
  const bool changed = !there.isEmpty() && there != document_.file_fingerprint();
  if (changed || document_.machine().newer_minor > 0) {
    const auto reason = changed ? OverwriteReason::changed_outside : OverwriteReason::newer_format;
    switch (prompts_->overwrite(&window_, document_.display_name(), reason)) {
    case OverwriteAnswer::overwrite: break;
    case OverwriteAnswer::save_as: return save_as();
    case OverwriteAnswer::cancel: return false;
    }
  }
  return write_to(path);
}

bool MachineFiles::save_as() {
  document_.gather_typed();
  const QString path = prompts_->machine_to_save(&window_, suggested_path());
  return !path.isEmpty() && write_to(path);
}

QString MachineFiles::suggested_path() const {
  const QString ending = QStringLiteral(".feedwright");
  if (document_.file_path().isEmpty()) {
    return QDir(folder()).filePath(document_.display_name() + ending);
  }
  if (!held_by_) {
    return document_.file_path();
  }
  const QString base = QFileInfo(document_.file_path()).completeBaseName();
  return QDir(folder()).filePath(tr("%1 copy", "file name").arg(base) + ending);
}

bool MachineFiles::write_to(const QString& path) {
  const QString place = QFileInfo(path).absoluteFilePath();
  if (safekeeping_ != nullptr) {
    if (const auto holder = safekeeping_->claim.claim(place)) {
      prompts_->tell(&window_, tr("The machine is not saved."),
                     {tr("%1 is open elsewhere (%2). Save under another name.")
                          .arg(QFileInfo(path).fileName(), holder_text(*holder))});
      return false;
    }
  }
  const auto stored = store_machine(document_.machine(), path);
  if (!stored) {
    claim(document_.file_path());
    prompts_->tell(&window_, tr("The machine is not saved."), {stored.error()});
    return false;
  }
  watch_.watch(place, *stored);
  document_.set_file(place, *stored);
  claim(place);
  emit saved(place);
  return true;
}

void MachineFiles::reload() {
  const QString path = document_.file_path();
  if (!path.isEmpty()) {
    open(path);
  }
}

bool MachineFiles::save_pdf() {
  document_.gather_typed();
  if (document_.results().empty()) {
    prompts_->tell(&window_,
                   tr("There is no sheet while the machine has faults, for nothing is computed "
                      "from it. Mend the faults first."),
                   {});
    return false;
  }
  const QString base = QFileInfo(document_.display_name()).completeBaseName();
  const QString path =
      prompts_->pdf_to_save(&window_, QDir(folder()).filePath(base + QStringLiteral(".pdf")));
  if (path.isEmpty()) {
    return false;
  }
  const QByteArray pdf = sheet_pdf(document_.machine(), sheet_info(document_));
  const auto written =
      write_file(std::filesystem::path(QFile::encodeName(path).toStdString()),
                 std::string_view(pdf.constData(), static_cast<std::size_t>(pdf.size())));
  if (!written) {
    prompts_->tell(&window_, tr("The sheet is not written."),
                   {words::file_error_text(written.error())});
    return false;
  }
  emit sheet_written(path);
  return true;
}

QString holder_text(const FileHolder& holder) {
  if (holder.process == QCoreApplication::applicationPid()) {
    return MachineFiles::tr("another window of this program");
  }
  return holder.user.isEmpty()
             ? MachineFiles::tr("on %1, process %2").arg(holder.host).arg(holder.process)
             : MachineFiles::tr("by %1 on %2, process %3")
                   .arg(holder.user, holder.host)
                   .arg(holder.process);
}

QString MachineFiles::folder() const {
  return document_.file_path().isEmpty() ? QDir::homePath()
                                         : QFileInfo(document_.file_path()).absolutePath();
}

} // namespace feedwright
