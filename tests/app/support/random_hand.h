// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Somebody who does anything at all to a window, the same for the same seed.

#include "fields/fields_panel.h"
#include "studies/studies_view.h"
#include "support/dice.h"
#include "support/random_pointer.h"
#include "support/whole_workbench.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QTabBar>
#include <QTableWidget>

namespace feedwright::testing {

class RandomHand {
  template <class Range>
  auto& one_of(Range& range) {
    const int last = static_cast<int>(std::size(range)) - 1;
    return range[static_cast<std::size_t>(dice_.whole(0, last))];
  }

public:
  RandomHand(Running& run, unsigned seed) : run_(run), dice_(seed) {
    run_.answers.path = run_.window().document().file_path();
  }

  /// Does one thing, and says what.
  std::string act() {
    const Deed& deed = one_of(deeds);
    detail_.clear();
    (this->*deed.act)();
    QCoreApplication::processEvents();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    return deed.name + detail_;
  }
  /// Where "save as" goes to.
  void set_path(const QString& path) { run_.answers.path = path; }

private:
  struct Deed {
    const char* name;
    void (RandomHand::*act)();
  };

  MainWindow& window() { return run_.window(); }
  MachineDocument& document() { return window().document(); }

  /// One of the kind that is shown among the fields and can be used; nullptr if there is none.
  template <class W>
  W* shown() {
    QList<W*> usable;
    for (W* widget : window().fields().template findChildren<W*>()) {
      const bool in_box = qobject_cast<QComboBox*>(widget->parentWidget()) != nullptr;
      if (widget->isVisible() && widget->isEnabled() && !in_box &&
          !widget->objectName().startsWith(QLatin1String("qt_")) &&
          widget->objectName() != QLatin1String("part_chooser")) {
        usable << widget;
      }
    }
    return usable.isEmpty() ? nullptr : usable[dice_.whole(0, int(usable.size()) - 1)];
  }

  QString some_text(const QString& present) {
    static const char* const texts[] = {
        "",    "0",       "-3",  "1",     "12.5",      "1/2 in",  "3*5",   "10 mm", "5 kg",
        "1e9", "1,234,5", "abc", "40 mm", "190 oz in", "3 m/min", "2 N·m", "80 %",  "<b>x</b>"};
    if (dice_.chance(0.5)) {
      // The number that stands there, a little other, with its unit.
      const QString number = present.section(QLatin1Char(' '), 0, 0);
      bool is_number = false;
      const double value = number.toDouble(&is_number);
      if (is_number) {
        return QString::number(value * dice_.over(0.5, 2.0), 'g', 4) + present.mid(number.size());
      }
    }
    return QString::fromUtf8(one_of(texts));
  }

  void select_part() {
    const std::size_t axes = document().machine().axes.size();
    const auto axis = static_cast<std::size_t>(dice_.whole(0, static_cast<int>(axes) - 1));
    document().select({axis, dice_.chance(0.1) ? PartSlot::supply : one_of(axis_slots), {}});
  }
  void select_card() {
    auto* list = window().findChild<QListWidget*>(QStringLiteral("axes_list"));
    list->setCurrentRow(dice_.whole(0, list->count() - 1));
  }
  /// Letter by letter; of a letter that no key of Latin-1 has (Ω) only the text is sent.
  static void type(QWidget& into, const QString& text) {
    for (const QChar letter : text) {
      QTest::sendKeyEvent(QTest::Click, &into, Qt::Key_unknown, QString(letter), Qt::NoModifier);
    }
  }
  void type_in_field() {
    if (auto* edit = shown<QLineEdit>()) {
      const QString text = some_text(edit->text());
      edit->setFocus();
      edit->selectAll();
      QTest::keyClick(edit, Qt::Key_Delete);
      type(*edit, text);
      QTest::keyClick(edit, dice_.chance(0.2) ? Qt::Key_Escape : Qt::Key_Return);
    }
  }
  void choose() {
    auto* box = shown<QComboBox>();
    if (box != nullptr && box->count() > 0) {
      const int index = dice_.whole(0, box->count() - 1);
      box->setCurrentIndex(index);
      emit box->activated(index);
    }
  }
  void tick() {
    if (auto* box = shown<QCheckBox>()) {
      QTest::mouseClick(box, Qt::LeftButton, Qt::NoModifier, QPoint(8, box->height() / 2));
    }
  }
  void type_in_table() {
    auto* table = shown<QTableWidget>();
    if (table == nullptr) {
      return;
    }
    if (dice_.chance(0.3)) {
      const QString name = table->objectName() +
                           (dice_.chance(0.5) ? QStringLiteral("_add") : QStringLiteral("_remove"));
      if (auto* button = window().findChild<QPushButton*>(name)) {
        QTest::mouseClick(button, Qt::LeftButton);
      }
      return;
    }
    if (table->rowCount() > 0) {
      QTableWidgetItem* item = table->item(dice_.whole(0, table->rowCount() - 1),
                                           dice_.whole(0, table->columnCount() - 1));
      if (item != nullptr && (item->flags() & Qt::ItemIsEditable) != 0) {
        item->setText(some_text(item->text()));
      }
    }
  }
  void write_notes() {
    document().select({0, PartSlot::supply, {}});
    if (auto* notes = window().findChild<QPlainTextEdit*>(QStringLiteral("machine.story"))) {
      notes->setFocus();
      QTest::keyClicks(notes, QStringLiteral("ab "));
    }
  }
  void trigger(const char* name) {
    auto* action = window().findChild<QAction*>(QString::fromUtf8(name));
    if (action != nullptr && action->isEnabled()) {
      action->trigger();
    }
  }
  void change_axes() {
    static const char* const names[] = {"add_axis",     "duplicate_axis", "remove_axis",
                                        "move_axis_up", "move_axis_down", "copy_axis",
                                        "paste_axis"};
    // Machines of a hundred axes would only be slow.
    if (document().machine().axes.size() > 6) {
      trigger("remove_axis");
    } else {
      trigger(one_of(names));
    }
  }
  void undo() {
    for (int steps = dice_.whole(1, 4); steps > 0; --steps) {
      trigger("undo");
    }
  }
  void redo() {
    for (int steps = dice_.whole(1, 4); steps > 0; --steps) {
      trigger("redo");
    }
  }
  void save() { trigger(dice_.chance(0.7) ? "save" : "save_as"); }
  void look_otherwise() {
    static const char* const names[] = {"theme_0", "theme_1", "theme_2", "language_de",
                                        "language_en"};
    trigger(one_of(names));
  }
  void show_study() {
    const int last = StudiesView::study_count() - 1;
    trigger(QStringLiteral("study_%1").arg(dice_.whole(0, last)).toUtf8());
  }
  void show_machine() {
    document().select({0, PartSlot::supply, {}, true});
    auto* tabs = window().findChild<QTabBar*>(QStringLiteral("machine_tabs"));
    tabs->setCurrentIndex(dice_.whole(0, tabs->count() - 1));
  }
  void resize() {
    const bool usual = dice_.chance(0.5);
    window().resize(usual ? QSize(dice_.whole(600, 2000), dice_.whole(400, 1200))
                          : QSize(dice_.whole(1, 2600), dice_.whole(1, 1500)));
  }
  void leave_and_return() {
    trigger("start_page");
    if (auto* back = window().findChild<QAbstractButton*>(QStringLiteral("start_back"));
        back != nullptr && back->isVisible()) {
      QTest::mouseClick(back, Qt::LeftButton);
    }
  }

  /// What opens other machines or windows is done by name only, where it is known what to expect.
  void use_mouse_or_keys() {
    RandomPointer pointer(dice_, {QStringLiteral("start_page"), QStringLiteral("buttons"),
                                  QStringLiteral("close_without_typed")});
    detail_ = ": " + pointer.act(window());
  }

  void close_and_think_better() {
    // What is typed is taken first, and may bring the machine back to what is saved.
    document().gather_typed();
    if (document().is_modified()) {
      window().close();
    }
  }

  static constexpr Deed deeds[] = {
      {"type in a field", &RandomHand::type_in_field},
      {"type in a field", &RandomHand::type_in_field},
      {"type in a field", &RandomHand::type_in_field},
      {"type in a field", &RandomHand::type_in_field},
      {"choose", &RandomHand::choose},
      {"choose", &RandomHand::choose},
      {"tick", &RandomHand::tick},
      {"type in a table", &RandomHand::type_in_table},
      {"type in a table", &RandomHand::type_in_table},
      {"write notes", &RandomHand::write_notes},
      {"change axes", &RandomHand::change_axes},
      {"change axes", &RandomHand::change_axes},
      {"select a part", &RandomHand::select_part},
      {"select a part", &RandomHand::select_part},
      {"select a part", &RandomHand::select_part},
      {"select a card", &RandomHand::select_card},
      {"undo", &RandomHand::undo},
      {"undo", &RandomHand::undo},
      {"redo", &RandomHand::redo},
      {"save", &RandomHand::save},
      {"look otherwise", &RandomHand::look_otherwise},
      {"show a study", &RandomHand::show_study},
      {"show the machine", &RandomHand::show_machine},
      {"resize", &RandomHand::resize},
      {"use mouse or keys", &RandomHand::use_mouse_or_keys},
      {"use mouse or keys", &RandomHand::use_mouse_or_keys},
      {"use mouse or keys", &RandomHand::use_mouse_or_keys},
      {"use mouse or keys", &RandomHand::use_mouse_or_keys},
      {"start page and back", &RandomHand::leave_and_return},
      {"close and think better of it", &RandomHand::close_and_think_better},
  };

  Running& run_;
  Dice dice_;
  std::string detail_; ///< of what was done last
};

} // namespace feedwright::testing
