// SPDX-License-Identifier: GPL-3.0-or-later

// What is known of a field besides its value: what the part's list has for it, which limits want
// it, and what its menu offers.

#include "fields/field_row.h"

#include "fields/field_reading.h"
#include "text/field_guide.h"
#include "text/words.h"

#include <QMenu>

#include <algorithm>
#include <utility>

namespace feedwright {

namespace {

/// A field's value as its editor would show it.
QString shown_value(const FieldInfo& info, const FieldValue& value, const std::string& text) {
  return words::field_text({info, value, {text, Origin::entered}});
}

} // namespace

QStringList FieldRow::wanted_by() const {
  const InputRef here = input_ref(slot_, field_.info.member);
  QStringList names;
  const auto& results = document().results();
  for (std::size_t axis = 0; axis < results.size(); ++axis) {
    if (!of_machine(slot_) && axis != axis_) {
      continue;
    }
    for (const Limit& limit : results[axis].limits) {
      if (!limit.applies || limit.verdict != Verdict::open || !(limit.missing == here)) {
        continue;
      }
      if (const QString name = words::limit_name(limit.id); !names.contains(name)) {
        names << name;
      }
    }
  }
  return names;
}

const ListedPart* FieldRow::listed_part() const {
  const std::string source = visit_part(document().machine(), axis_, slot_,
                                        [](const auto& part) { return part.notes.source; });
  if (source.empty()) {
    return nullptr;
  }
  for (const ShelvedPart& shelved : context_.shelf.parts) {
    const auto has = [&](const ListedValue& value) { return value.member == field_.info.member; };
    if (fits(shelved.part.kind, slot_) && is_source(source, shelved.part) &&
        std::ranges::any_of(shelved.part.values, has)) {
      return &shelved.part;
    }
  }
  return nullptr;
}

const ListedValue* FieldRow::listed() const {
  const ListedPart* part = listed_part();
  if (part == nullptr) {
    return nullptr;
  }
  const auto found = std::ranges::find(part->values, field_.info.member, &ListedValue::member);
  return found != part->values.end() ? &*found : nullptr;
}

void FieldRow::put_back(const ListedValue& listed) {
  commit(listed.value, {listed.text, Origin::part_list});
}

/// An entry of a menu over an editor. It does its deed when the menu is gone: the deed may make the
/// form anew, and the editor and its menu with it.
template <class Deed>
QAction* FieldRow::add_offer(QMenu& menu, const QString& text, const char* name, Deed deed) {
  QAction* action = menu.addAction(text);
  action->setObjectName(QString::fromLatin1(name));
  connect(action, &QAction::triggered, this, std::move(deed), Qt::QueuedConnection);
  return action;
}

/// One entry of each kind that would change something, and the way to more help.
void FieldRow::add_offers(QMenu& menu) {
  if (!menu.isEmpty()) {
    menu.addSeparator();
  }
  const bool given = !std::holds_alternative<std::monostate>(field_.value);
  const bool table = field_.info.type == FieldType::table;
  const bool text = field_.info.type == FieldType::text;
  if (field_.info.presence == Presence::preset && is_given() && !text) {
    const FieldValue preset = preset_of(document().machine(), axis_, slot_, field_.info);
    const QString value = shown_value(field_.info, preset, {});
    add_offer(menu,
              value.isEmpty() ? tr("Back to the preset") : tr("Back to the preset, %1").arg(value),
              "back_to_preset", [this, preset] {
                commit(preset, {{}, Origin::preset});
              });
  }
  if (const ListedValue* from_list = listed();
      from_list != nullptr && !(from_list->value == field_.value)) {
    const QString value = shown_value(field_.info, from_list->value, from_list->text);
    add_offer(menu,
              table ? tr("Put the list's figures back") : tr("Put the list's %1 back").arg(value),
              "put_back", [this, kept = *from_list] { put_back(kept); });
  }
  if (field_.info.presence == Presence::open && given) {
    add_offer(menu, tr("Leave it open"), "leave_open", [this] { commit({}, {}); });
  }
  QAction* help = add_offer(menu, tr("What it is"), "what_it_is", [this] { emit help_wanted(); });
  help->setShortcut(QKeySequence(Qt::Key_F1));
}

/// What else is to be said of a value that is all right.
QString FieldRow::asides() const {
  QStringList said;
  if (const QString text = became(); !text.isEmpty()) {
    said << text;
  }
  if (const QString text = words::beyond_any_machine(field_.info, field_.value); !text.isEmpty()) {
    said << text;
  }
  const bool entered = is_given() && field_.note.origin == Origin::entered;
  const ListedValue* from_list = entered ? listed() : nullptr;
  if (from_list != nullptr && !(from_list->value == field_.value)) {
    said << (field_.info.type == FieldType::table
                 ? tr("changed from the list")
                 : tr("changed from the list: %1")
                       .arg(shown_value(field_.info, from_list->value, from_list->text)));
  }
  if (const QStringList limits = wanted_by(); !limits.isEmpty()) {
    said << tr("%1 wanted by %2", "sign, limits that need the field")
                .arg(words::verdict_sign(Verdict::open), limits.join(QStringLiteral(", ")));
  }
  return said.join(QStringLiteral(" · "));
}

} // namespace feedwright
