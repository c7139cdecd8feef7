// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/autosave.h"

#include "document/machine_document.h"
#include "sheet/program_version.h"
#include "text/file_words.h"
#include "text/text_of.h"

namespace feedwright {

Autosave::Autosave(MachineDocument& document, Pace pace) : document_(document) {
  for (QTimer* timer : {&quiet_, &longest_}) {
    timer->setSingleShot(true);
    connect(timer, &QTimer::timeout, this, &Autosave::keep_now);
  }
  quiet_.setInterval(pace.quiet);
  longest_.setInterval(pace.longest);
  connect(&document_, &MachineDocument::changed, this, &Autosave::take_change);
  connect(&document_, &MachineDocument::state_changed, this, &Autosave::take_change);
}

void Autosave::take_change() {
  if (!document_.is_modified()) {
    forget();
    return;
  }
  quiet_.start();
  if (!longest_.isActive()) {
    longest_.start();
  }
}

bool Autosave::keep_now() {
  quiet_.stop();
  longest_.stop();
  if (!document_.is_modified()) {
    return true;
  }
  UnsavedCopy copy{document_.file_path(),
                   document_.file_fingerprint(),
                   {},
                   text_of(program_version()),
                   document_.machine()};
  // The time is left out of the comparison: the same machine is not written again.
  std::string content = write_unsaved_copy(copy);
  if (content == written_) {
    return true;
  }
  if (place_ == nullptr) {
    place_ = CopyPlace::make();
  }
  if (place_ == nullptr) {
    tell(tr("%1 cannot be made.").arg(unsaved_folder()));
    return false;
  }
  copy.time = QDateTime::currentDateTimeUtc();
  if (const auto done = place_->write(write_unsaved_copy(copy)); !done) {
    tell(words::file_error_text(done.error()));
    return false;
  }
  written_ = std::move(content);
  told_ = false;
  return true;
}

void Autosave::tell(const QString& sentence) {
  if (!told_) {
    told_ = true;
    emit failed(sentence);
  }
}

void Autosave::forget() {
  quiet_.stop();
  longest_.stop();
  if (place_ != nullptr && !written_.empty()) {
    place_->remove();
  }
  written_.clear();
}

void Autosave::discard() {
  quiet_.stop();
  longest_.stop();
  if (place_ != nullptr && !written_.empty()) {
    place_->discard();
    // The next copy gets a name of its own: among the discarded ones this one's is taken.
    place_.reset();
  }
  written_.clear();
}

} // namespace feedwright
