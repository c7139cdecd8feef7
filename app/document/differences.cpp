// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/differences.h"

#include "text/text_of.h"
#include "text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <optional>

namespace feedwright {

namespace {

using What = Difference::What;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Differences)

public:
  static QString added(const QString& letter) { return tr("axis %1 is new").arg(letter); }
  static QString removed(const QString& letter) { return tr("axis %1 is gone").arg(letter); }
  static QString moved(const QString& letter) { return tr("place of axis %1").arg(letter); }
  static QString of_axis(const QString& letter, const QString& what) {
    return tr("%1: %2", "axis: what differs").arg(letter, what);
  }
  static QString type(const QString& part) { return tr("type of %1").arg(part); }
  static QString notes(const QString& part) { return tr("source of %1").arg(part); }
  static QString machine(const std::string& member) {
    return member == "name"    ? tr("name of the machine")
           : member == "story" ? tr("notes on the machine")
                               : tr("what a newer program wrote");
  }
  static QString sentence(int count, const QString& list) {
    return tr("%n thing(s) differ: %1.", nullptr, count).arg(list);
  }
  static QString shortened(const QString& list, std::size_t more) {
    return tr("%1 and %n more", nullptr, static_cast<int>(more)).arg(list);
  }
};

std::vector<std::string> letters(const Machine& machine) {
  std::vector<std::string> all;
  for (const Axis& axis : machine.axes) {
    all.push_back(axis.basics.letter);
  }
  return all;
}

bool has_twins(std::vector<std::string> all) {
  std::ranges::sort(all);
  return std::ranges::adjacent_find(all) != all.end();
}

/// Letters tell which axis is which, unless one is twice or one was only given another.
bool told_by_letter(std::vector<std::string> a, std::vector<std::string> b) {
  if (has_twins(a) || has_twins(b)) {
    return false;
  }
  std::ranges::sort(a);
  std::ranges::sort(b);
  return a.size() != b.size() || a == b;
}

/// Gathers the differences of two machines.
class Comparison {
public:
  Comparison(const Machine& before, const Machine& after) : before_(before), after_(after) {}

  std::vector<Difference> run() {
    own("name", before_.name == after_.name);
    own("story", before_.story == after_.story);
    for (const PartSlot slot : machine_slots) {
      part(0, 0, slot, {});
    }
    by_letter() ? axes_by_letter() : axes_by_order();
    own("", before_.unknown == after_.unknown && before_.unknown_format == after_.unknown_format &&
                before_.newer_minor == after_.newer_minor);
    return std::move(found_);
  }

private:
  void own(const char* member, bool same) {
    if (!same) {
      found_.push_back({What::machine, 0, PartSlot::supply, member, {}});
    }
  }

  bool by_letter() const { return told_by_letter(letters(before_), letters(after_)); }

  void axes_by_letter() {
    const auto a = letters(before_);
    const auto b = letters(after_);
    for (std::size_t i = 0; i < b.size(); ++i) {
      const auto at = std::ranges::find(a, b[i]);
      if (at == a.end()) {
        found_.push_back({What::axis_added, i, PartSlot::axis, {}, b[i]});
        continue;
      }
      const auto from = static_cast<std::size_t>(at - a.begin());
      if (a.size() == b.size() && from != i) {
        found_.push_back({What::axis_moved, i, PartSlot::axis, {}, b[i]});
      }
      axis(from, i);
    }
    for (std::size_t i = 0; i < a.size(); ++i) {
      if (std::ranges::find(b, a[i]) == b.end()) {
        found_.push_back({What::axis_removed, i, PartSlot::axis, {}, a[i]});
      }
    }
  }

  void axes_by_order() {
    const auto a = letters(before_);
    const auto b = letters(after_);
    for (std::size_t i = 0; i < std::max(a.size(), b.size()); ++i) {
      if (i >= b.size()) {
        found_.push_back({What::axis_removed, i, PartSlot::axis, {}, a[i]});
      } else if (i >= a.size()) {
        found_.push_back({What::axis_added, i, PartSlot::axis, {}, b[i]});
      } else {
        axis(i, i);
      }
    }
  }

  void axis(std::size_t from, std::size_t to) {
    for (const PartSlot slot : axis_slots) {
      part(from, to, slot, after_.axes[to].basics.letter);
    }
  }

  void part(std::size_t from, std::size_t to, PartSlot slot, const std::string& letter) {
    if (part_type(before_, from, slot) != part_type(after_, to, slot)) {
      found_.push_back({What::type, to, slot, {}, letter});
      return;
    }
    const auto notes = [slot](const Machine& machine, std::size_t at) {
      return visit_part(machine, at, slot, [](const auto& p) { return p.notes; });
    };
    const PartNotes a = notes(before_, from);
    const PartNotes b = notes(after_, to);
    const std::size_t count = found_.size();
    for (const FieldView& now : fields_of(after_, to, slot)) {
      const auto then = field_of(before_, from, slot, now.info.member);
      if (!then || then->value != now.value || note(a, now) != note(b, now)) {
        found_.push_back({What::field, to, slot, std::string(now.info.member), letter});
      }
    }
    if (a.source != b.source || a.unknown != b.unknown ||
        (found_.size() == count && a.entries != b.entries)) {
      found_.push_back({What::notes, to, slot, {}, letter});
    }
  }

  static std::optional<EntryNote> note(const PartNotes& notes, const FieldView& field) {
    const auto found = notes.entries.find(field.info.member);
    return found != notes.entries.end() ? std::optional(found->second) : std::nullopt;
  }

  const Machine& before_;
  const Machine& after_;
  std::vector<Difference> found_;
};

} // namespace

std::vector<Difference> differences(const Machine& before, const Machine& after) {
  return Comparison(before, after).run();
}

AxisPlaces axis_places(const Machine& before, const Machine& after) {
  const auto a = letters(before);
  const auto b = letters(after);
  AxisPlaces places(a.size());
  if (told_by_letter(a, b)) {
    for (std::size_t i = 0; i < a.size(); ++i) {
      if (const auto at = std::ranges::find(b, a[i]); at != b.end()) {
        places[i] = static_cast<std::size_t>(at - b.begin());
      }
    }
    return places;
  }
  const bool same_number = a.size() == b.size();
  for (std::size_t i = 0; i < std::min(a.size(), b.size()); ++i) {
    if (!same_number && !(before.axes[i] == after.axes[i])) {
      break;
    }
    places[i] = i;
  }
  return places;
}

QString difference_name(const Difference& difference) {
  const QString letter = text_of(difference.letter);
  QString name;
  switch (difference.what) {
  case What::axis_added: return Words::added(letter);
  case What::axis_removed: return Words::removed(letter);
  case What::axis_moved: return Words::moved(letter);
  case What::machine: return Words::machine(difference.member);
  case What::type: name = Words::type(words::part_name(difference.slot)); break;
  case What::notes: name = Words::notes(words::part_name(difference.slot)); break;
  case What::field: name = words::field_name(difference.slot, difference.member); break;
  }
  return letter.isEmpty() ? name : Words::of_axis(letter, name);
}

QString differences_sentence(const std::vector<Difference>& all) {
  constexpr std::size_t named = 3;
  QStringList names;
  for (std::size_t i = 0; i < std::min(named, all.size()); ++i) {
    names << difference_name(all[i]);
  }
  const QString list = names.join(QStringLiteral(", "));
  return Words::sentence(static_cast<int>(all.size()),
                         all.size() > named ? Words::shortened(list, all.size() - named) : list);
}

} // namespace feedwright
