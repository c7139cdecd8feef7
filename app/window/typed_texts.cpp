// SPDX-License-Identifier: GPL-3.0-or-later

// What the window does about texts that stand in fields and could not be taken.

#include "text/text_of.h"
#include "text/words.h"
#include "window/banner.h"
#include "window/main_window.h"

#include <QCoreApplication>

namespace feedwright {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(MainWindow)

public:
  static QString waits(const QString& field, int others) {
    return others == 0 ? tr("What is typed for %1 cannot be taken and is not saved.").arg(field)
                       : tr("What is typed for %1 and %n more field(s) cannot be taken and is not "
                            "saved.",
                            nullptr, others)
                             .arg(field);
  }
};

QString typed_that_waits(const PendingTexts& pending) {
  const auto places = pending.places();
  const TypedAt& first = places.front();
  return Words::waits(words::field_name(first.slot, first.field()),
                      static_cast<int>(places.size()) - 1);
}

} // namespace

/// What was saved is what the fields took; a text still standing in one is not in the file.
void MainWindow::tell_of_typed() {
  if (!document_->pending().empty()) {
    banner_->say(typed_that_waits(document_->pending()),
                 {{tr("Show it"), QStringLiteral("show_typed"), [this] { show_typed(); }}});
  }
}

void MainWindow::show_typed() {
  const auto places = document_->pending().places();
  if (!places.empty()) {
    const TypedAt& at = places.front();
    document_->select({of_machine(at.slot) ? document_->selection().axis : at.axis, at.slot,
                       text_of(at.field())});
  }
}

/// True once the user has been told of typed texts that would be lost, or there are none.
bool MainWindow::may_lose_typed() {
  if (document_ == nullptr || document_->pending().empty()) {
    return true;
  }
  banner_->say(typed_that_waits(document_->pending()),
               {{tr("Show it"), QStringLiteral("show_typed"), [this] { show_typed(); }},
                {tr("Close without it"), QStringLiteral("close_without_typed"), [this] {
                   document_->pending().give_up_all();
                   close();
                 }}});
  return false;
}

} // namespace feedwright
