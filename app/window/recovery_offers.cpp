// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/recovery_offers.h"

#include "document/differences.h"
#include "document/machine_store.h"
#include "document/true_path.h"
#include "machine/machine_file.h"
#include "window/banner.h"
#include "window/main_window.h"
#include "window/windows.h"

#include <QFileInfo>
#include <QLocale>

#include <algorithm>

namespace feedwright {

const QString RecoveryOffers::topic = QStringLiteral("recovery");

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(RecoveryOffers)

public:
  static QString untitled(const Machine& machine, const QString& time) {
    const QString letters = axis_letters(machine);
    return machine.name.empty()
               ? tr("A machine without a name (axes %1), last changed %2, was never saved.")
                     .arg(letters, time)
               : tr("%1 (axes %2), last changed %3, was never saved.")
                     .arg(QString::fromStdString(machine.name), letters, time);
  }
  static QString without_file(const QString& file, const QString& time) {
    return tr("Changes to %1, made %2, were not saved, and the file cannot be read now.")
        .arg(file, time);
  }
  static QString changes(const QString& file, const QString& time, const QString& differences) {
    return tr("Changes to %1, made %2, were not saved. Against the file, %3")
        .arg(file, time, differences);
  }
  static QString changes_and_others(const QString& file, const QString& time,
                                    const QString& differences) {
    return tr("Changes to %1, made %2, were not saved, and the file has been changed since. "
              "Against the file as it is now, %3")
        .arg(file, time, differences);
  }
  static QString take_up() { return tr("Take up"); }
  static QString look_at() { return tr("Look at it in another window"); }
  static QString throw_away() { return tr("Throw away"); }
  static QString step() { return tr("take up what was not saved"); }

private:
  static QString axis_letters(const Machine& machine) {
    QStringList letters;
    for (const Axis& axis : machine.axes) {
      letters << QString::fromStdString(axis.basics.letter);
    }
    return letters.join(QStringLiteral(", "));
  }
};

/// What there is to offer; empty if the copy holds nothing that the file does not.
QString sentence_for(const UnsavedCopy& copy) {
  const QString time = QLocale().toString(copy.time.toLocalTime(), QLocale::ShortFormat);
  if (copy.file.isEmpty()) {
    return Words::untitled(copy.machine, time);
  }
  const QString name = QFileInfo(copy.file).fileName();
  const auto file = load_machine(copy.file);
  if (!file) {
    return Words::without_file(name, time);
  }
  if (write_machine(file->machine) == write_machine(copy.machine)) {
    return {};
  }
  const QString what = differences_sentence(differences(file->machine, copy.machine));
  return file->fingerprint == copy.base ? Words::changes(name, time, what)
                                        : Words::changes_and_others(name, time, what);
}

} // namespace

void RecoveryOffers::gather(const std::optional<QString>& file) {
  for (LeftCopy& left : take_left_copies()) {
    if (file && !same_file(left.copy.file, *file)) {
      continue;
    }
    const QString sentence = sentence_for(left.copy);
    if (sentence.isEmpty()) {
      left.place->remove();
    } else {
      offers_.push_back({std::move(left), sentence});
    }
  }
}

void RecoveryOffers::look(MainWindow& window) {
  gather();
  offer(window);
}

void RecoveryOffers::offer(MainWindow& window) {
  const QString file = window.document().file_path();
  if (const Offer* own = of_file(file)) {
    show(window, *own);
  } else if (!offers_.empty()) {
    show(window, offers_.front());
  }
}

void RecoveryOffers::look_for_file(MainWindow& window, const QString& path) {
  gather(path);
  if (const Offer* own = of_file(path)) {
    show(window, *own);
  }
}

const RecoveryOffers::Offer* RecoveryOffers::of_file(const QString& file) const {
  const auto found = std::ranges::find_if(
      offers_, [&](const Offer& offer) { return same_file(offer.left.copy.file, file); });
  return found != offers_.end() ? &*found : nullptr;
}

void RecoveryOffers::show(MainWindow& window, const Offer& offer) {
  const QString place = offer.left.place->path();
  window.banner().say(
      offer.sentence,
      {{Words::take_up(), QStringLiteral("recovery_take_up"),
        [this, &window, place] { take_up(window, place); }},
       {Words::look_at(), QStringLiteral("recovery_look"), [this, place] { look_at(place); }, true},
       {Words::throw_away(), QStringLiteral("recovery_throw_away"),
        [this, &window, place] { throw_away(window, place); }}},
      topic);
}

const RecoveryOffers::Offer* RecoveryOffers::find(const QString& place) const {
  const auto found = std::ranges::find_if(
      offers_, [&](const Offer& offer) { return offer.left.place->path() == place; });
  return found != offers_.end() ? &*found : nullptr;
}

LeftCopy RecoveryOffers::taken(const QString& place) {
  const auto found = std::ranges::find_if(
      offers_, [&](const Offer& offer) { return offer.left.place->path() == place; });
  if (found == offers_.end()) {
    return {};
  }
  LeftCopy left = std::move(found->left);
  offers_.erase(found);
  return left;
}

void RecoveryOffers::take_up(MainWindow& window, const QString& place) {
  const LeftCopy left = taken(place);
  if (left.place == nullptr) {
    return;
  }
  const UnsavedCopy& copy = left.copy;
  MainWindow* target = copy.file.isEmpty() ? nullptr : windows_.showing(copy.file);
  const bool there = target != nullptr;
  if (!there) {
    target = window.is_pristine() ? &window : &windows_.another();
  }
  auto stored = there || copy.file.isEmpty() ? std::nullopt : [&] {
    auto loaded = load_machine(copy.file);
    return loaded ? std::optional(*std::move(loaded)) : std::nullopt;
  }();
  const bool replaces_what_stands = there || stored.has_value();
  if (stored) {
    target->files().put(*std::move(stored), copy.file);
  }
  if (replaces_what_stands) {
    // A step like any other: Undo shows what the file says.
    target->document().edit(copy.machine, Words::step());
  } else {
    target->files().put_unsaved(copy.machine, copy.file, {});
  }
  target->come_forward();
  if (target->keep_now()) {
    left.place->remove();
  }
  offer(window);
}

void RecoveryOffers::look_at(const QString& place) {
  if (const Offer* offer = find(place)) {
    const Machine machine = offer->left.copy.machine;
    MainWindow& window = windows_.another();
    window.files().put_untitled(machine);
    window.come_forward();
  }
}

void RecoveryOffers::throw_away(MainWindow& window, const QString& place) {
  const LeftCopy left = taken(place);
  if (left.place != nullptr) {
    left.place->discard();
  }
  offer(window);
}

} // namespace feedwright
