// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/machine_files.h"

#include "document/machine_store.h"
#include "document/new_machine.h"
#include "files/write_file.h"
#include "sheet/print_sheet.h"
#include "text/file_words.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QWidget>

namespace feedwright {

MachineFiles::MachineFiles(MachineDocument& document, QWidget& window)
    : document_(document), window_(window) {
  connect(&watch_, &FileWatch::changed_outside, this, &MachineFiles::changed_outside);
  watch_.watch(document_.file_path(), document_.file_fingerprint());
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

bool MachineFiles::open(const QString& path) {
  auto loaded = load_machine(path);
  if (!loaded) {
    prompts_->tell(&window_, tr("%1 cannot be opened.").arg(QFileInfo(path).fileName()),
                   loaded.error());
    return false;
  }
  // A sample has no file of its own: saving it asks where.
  const bool sample = path.startsWith(QLatin1String(":/"));
  const QString place = sample ? QString() : QFileInfo(path).absoluteFilePath();
  watch_.watch(place, loaded->fingerprint);
  document_.open(std::move(loaded->machine), place, sample ? QString() : loaded->fingerprint);
  emit opened(place);
  return true;
}

void MachineFiles::ask_and_open() {
  if (!may_leave()) {
    return;
  }
  const QString path = prompts_->machine_to_open(&window_, folder());
  if (!path.isEmpty()) {
    open(path);
  }
}

void MachineFiles::start_new() {
  if (may_leave()) {
    watch_.watch({}, {});
    document_.open(new_machine(), {}, {});
    emit opened({});
  }
}

bool MachineFiles::save() {
  document_.gather_typed();
  const QString path = document_.file_path();
  if (path.isEmpty()) {
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
  const QString suggested =
      document_.file_path().isEmpty()
          ? QDir(folder()).filePath(document_.display_name() + QStringLiteral(".feedwright"))
          : document_.file_path();
  const QString path = prompts_->machine_to_save(&window_, suggested);
  return !path.isEmpty() && write_to(path);
}

bool MachineFiles::write_to(const QString& path) {
  const auto stored = store_machine(document_.machine(), path);
  if (!stored) {
    prompts_->tell(&window_, tr("The machine is not saved."), {stored.error()});
    return false;
  }
  const QString place = QFileInfo(path).absoluteFilePath();
  watch_.watch(place, *stored);
  document_.set_file(place, *stored);
  emit opened(place);
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
  }
  return written.has_value();
}

QString MachineFiles::folder() const {
  return document_.file_path().isEmpty() ? QDir::homePath()
                                         : QFileInfo(document_.file_path()).absolutePath();
}

} // namespace feedwright
