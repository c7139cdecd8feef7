// SPDX-License-Identifier: GPL-3.0-or-later

// What the window does about texts that stand in fields and could not be taken.

#include "document/differences.h"
#include "overview/machine_view.h"
#include "text/machine_words.h"
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
  static QString waits_beside_answers(const QString& field, int others) {
    return tr("What is typed for %1 cannot be taken, and %n more text(s) wait; they are not saved.",
              nullptr, others)
        .arg(field);
  }
  static QString is_written(const QString& subject, int others) {
    return others == 0
               ? tr("The answer to %1 is not kept yet and is not saved.").arg(subject)
               : tr("The answers to %1 and to %n more thing(s) are not kept yet and are not saved.",
                    nullptr, others)
                     .arg(subject);
  }
};

QString name_of(const TypedAt& at, const Machine& machine) {
  const auto axis = at.axis_or_machine();
  const std::string letter =
      axis && *axis < machine.axes.size() ? machine.axes[*axis].basics.letter : std::string();
  const auto named = [&](Difference::What what, const char* member) {
    return difference_name({what, at.axis, at.slot, member, letter});
  };
  if (at.member == TypedAt::source) {
    return named(Difference::What::notes, "");
  }
  if (at.member == TypedAt::machine_name) {
    return named(Difference::What::machine, "name");
  }
  if (at.member == TypedAt::machine_notes) {
    return named(Difference::What::machine, "story");
  }
  return words::field_name(at.slot, at.field());
}

QString typed_that_waits(const MachineDocument& document) {
  const auto places = document.pending().places();
  const Machine& machine = document.machine();
  const TypedAt& first = places.front();
  const int others = static_cast<int>(places.size()) - 1;
  if (first.answer) {
    const AnsweredThing& thing = *first.answer;
    return Words::is_written(
        words::answer_subject(machine, first.axis_or_machine(), thing.to, thing.code, thing.part),
        others);
  }
  const QString name = name_of(first, machine);
  // Answers come last.
  return places.back().answer ? Words::waits_beside_answers(name, others)
                              : Words::waits(name, others);
}

} // namespace

/// What was saved is what the fields took; a text still standing in one is not in the file.
void MainWindow::tell_of_typed() {
  if (!document_->pending().empty()) {
    banner_->say(typed_that_waits(*document_),
                 {{tr("Show it"), QStringLiteral("show_typed"), [this] { show_typed(); }}});
  }
}

void MainWindow::show_typed() {
  const auto places = document_->pending().places();
  if (places.empty()) {
    return;
  }
  const TypedAt& at = places.front();
  leave_start_page();
  if (at.answer) {
    document_->select({document_->selection().axis, PartSlot::supply, {}, true});
    machine_->show_answer(at);
  } else {
    document_->select({of_machine(at.slot) ? document_->selection().axis : at.axis, at.slot,
                       text_of(at.field())});
  }
}

/// True once the user has been told of typed texts that would be lost, or there are none.
bool MainWindow::may_lose_typed() {
  if (document_ == nullptr || document_->pending().empty()) {
    return true;
  }
  banner_->say(typed_that_waits(*document_),
               {{tr("Show it"), QStringLiteral("show_typed"), [this] { show_typed(); }},
                {tr("Close without it"), QStringLiteral("close_without_typed"), [this] {
                   document_->pending().give_up_all();
                   close();
                 }}});
  return false;
}

} // namespace feedwright
