// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// One field of a part: its name, its editor, where its value came from, and what is wrong with
// what is typed. Made from the field's descriptor; knows nothing of particular fields.

#include "document/machine_document.h"
#include "parts/part_shelf.h"

#include <QObject>

#include <functional>
#include <memory>
#include <optional>

class QAction;
class QGridLayout;
class QLabel;
class QMenu;
class QToolButton;
class QWidget;

namespace feedwright {

/// Asks for the path of a table to import; empty if the user thought better of it.
using TableAsker = std::function<QString(QWidget& parent)>;

/// The part whose fields are shown, and what the rows need to show them.
struct FormContext {
  MachineDocument& document;
  const PartShelf& shelf;
  const TableAsker& ask_for_table;
};

class FieldRow : public QObject {
  Q_OBJECT
public:
  /// A row for the field, by its type.
  static std::unique_ptr<FieldRow> make(const FormContext& context, std::size_t axis, PartSlot slot,
                                        const FieldView& field);
  ~FieldRow() override;

  /// Puts the row's widgets at the end of a grid of three columns. `stacked` puts the name above
  /// its editor, where there is no room beside it.
  void add_to(QGridLayout& grid, QWidget& parent, bool stacked);
  /// Takes over the document's value and faults, unless something else is typed here.
  void refresh();
  void take_focus();
  void set_shown(bool shown);
  /// Takes what is typed, if it can be; else keeps it as pending.
  virtual void hand_in() {}
  /// Keeps what is typed as pending, for the row is about to go.
  virtual void keep_typed() {}
  /// Of a table: the row the keyboard is at, else the last; -1 if there is none.
  virtual int row_at_hand() const { return -1; }

  /// What Tab stops at, in order.
  virtual std::vector<QWidget*> tab_stops() const { return {editor_}; }

  const FieldInfo& info() const { return field_.info; }
  PartSlot slot() const { return slot_; }
  QWidget* editor() const { return editor_; }
  /// Whether what is typed cannot be taken, or the machine cannot be computed for this field.
  bool has_trouble() const { return trouble_; }
  bool is_given() const;
  /// Names of the limits that stay open until this field is given.
  QStringList wanted_by() const;

signals:
  /// The keyboard has come to this field.
  void entered();
  /// F1 was pressed here.
  void help_wanted();

protected:
  FieldRow(const FormContext& context, std::size_t axis, PartSlot slot, FieldView field);

  virtual QWidget* make_editor(QWidget& parent) = 0;
  virtual void show_value() = 0;
  /// Shows a pending text that is not shown yet: it was typed before, or elsewhere.
  virtual void restore_typed() {}
  /// What the value became where that is not what was typed; else empty.
  virtual QString became() const { return {}; }
  /// Why a part of what is typed cannot be taken, where the rest is; else empty.
  virtual QString refused_text() const { return {}; }
  /// Whether something is typed that is not in the machine; it is then left as it stands.
  virtual bool holds_typed() const { return false; }

  bool commit(const FieldValue& value, const EntryNote& note);
  /// Under the editor: an error with its sign, or what the text became.
  void show_error(const QString& sentence);
  void show_became(const QString& text);
  void show_note();
  TypedAt place() const { return TypedAt::of(axis_, slot_, field_.info.member); }
  MachineDocument& document() const { return context_.document; }
  /// What the field's menu offers: its preset, the list's figure, nothing at all, help.
  void add_offers(QMenu& menu);
  template <class Deed>
  QAction* add_offer(QMenu& menu, const QString& text, const char* name, Deed deed);

  bool eventFilter(QObject* watched, QEvent* event) override;

  FormContext context_;
  std::size_t axis_;
  PartSlot slot_;
  FieldView field_;

private:
  void make_labels(QWidget& parent);
  void show_origin();
  void say(const QString& text, bool error);
  /// What the part's list has for the field; nothing if the part is from no list.
  const ListedValue* listed() const;
  const ListedPart* listed_part() const;
  QString asides() const;
  void put_back(const ListedValue& listed);

  /// What the note says, and in which colours: saying the same again costs as much as the first
  /// time, at every edit and in every row.
  struct Said {
    QString text;
    bool error;
    qint64 colours; ///< key of the palette
    bool operator==(const Said&) const = default;
  };

  std::optional<Said> said_;
  qint64 painted_for_ = 0; ///< key of the palette
  bool trouble_ = false;
  bool shown_ = true;
  QWidget* editor_ = nullptr;
  QLabel* name_ = nullptr;
  QToolButton* origin_ = nullptr;
  QLabel* note_ = nullptr;
};

} // namespace feedwright
