// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// One field of a part: its name, its editor, where its value came from, and what is wrong with
// what is typed. Made from the field's descriptor; knows nothing of particular fields.

#include "document/machine_document.h"

#include <QObject>

#include <functional>
#include <memory>

class QGridLayout;
class QLabel;
class QWidget;

namespace feedwright {

/// Asks for the path of a table to import; empty if the user thought better of it.
using TableAsker = std::function<QString(QWidget& parent)>;

class FieldRow : public QObject {
  Q_OBJECT
public:
  /// A row for the field, by its type.
  static std::unique_ptr<FieldRow> make(MachineDocument& document, std::size_t axis, PartSlot slot,
                                        const FieldView& field);
  ~FieldRow() override;

  /// Puts the row's widgets at the end of a grid of three columns.
  void add_to(QGridLayout& grid, QWidget& parent);
  /// Takes over the document's value and faults, unless something else is typed here.
  void refresh();
  void take_focus();
  /// How to ask for a file to import a table from.
  void set_table_asker(TableAsker asker) { ask_for_table_ = std::move(asker); }

  const FieldInfo& info() const { return field_.info; }
  PartSlot slot() const { return slot_; }
  QWidget* editor() const { return editor_; }

signals:
  /// The keyboard has come to this field.
  void entered();

protected:
  FieldRow(MachineDocument& document, std::size_t axis, PartSlot slot, FieldView field);

  virtual QWidget* make_editor(QWidget& parent) = 0;
  virtual void show_value() = 0;
  /// What the value became where that is not what was typed; else empty.
  virtual QString became() const { return {}; }
  /// Whether something is typed that is not in the machine; it is then left as it stands.
  virtual bool holds_typed() const { return false; }

  bool commit(const FieldValue& value, const EntryNote& note);
  /// Under the editor: an error with its sign, or what the text became.
  void show_error(const QString& sentence);
  void show_became(const QString& text);

  bool eventFilter(QObject* watched, QEvent* event) override;

  MachineDocument& document_;
  std::size_t axis_;
  PartSlot slot_;
  FieldView field_;
  TableAsker ask_for_table_;

private:
  void show_origin();
  void show_note();
  void say(const QString& text, bool error);

  QWidget* editor_ = nullptr;
  QLabel* name_ = nullptr;
  QLabel* origin_ = nullptr;
  QLabel* note_ = nullptr;
};

} // namespace feedwright
