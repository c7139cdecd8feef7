// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/field_row.h"
#include "fields/typed_keeper.h"

#include <QWidget>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

namespace feedwright {

class EntryEdit;
class PartPicker;

/// What is said of a part as a whole: its type, where its figures are from, and the lists it can be
/// taken from and kept in.
class PartHeader : public QWidget {
  Q_OBJECT
public:
  PartHeader(const FormContext& context, std::size_t axis, PartSlot slot, QWidget* parent);

  /// Shows the machine's own, unless something else is typed here.
  void refresh();
  /// Takes what is typed.
  void hand_in();
  /// Puts what is typed among the pending texts.
  void keep_typed();
  /// Where the source is typed; nothing if the part has none.
  QWidget* source_editor() const;
  PartSlot slot() const { return slot_; }
  /// The parts lists have changed.
  void take_shelf();
  /// Whether there is anything to say of the part as a whole.
  bool is_needed() const;

signals:
  void picked(const feedwright::ListedPart& part);
  /// A part was put into the user's own list.
  void own_list_changed();

private:
  void add_type();
  void add_source();
  void add_keeping();
  void choose_type(int index);
  void take_source(const QString& source);
  void give_up_source();
  QString source_of_figures() const;
  void ask_for_name();
  void ask_no_more();
  void keep();
  QString suggested_name() const;

  FormContext context_;
  std::size_t axis_;
  PartSlot slot_;
  QGridLayout* grid_ = nullptr;
  PartPicker* picker_ = nullptr;
  QComboBox* type_ = nullptr;
  EntryEdit* source_ = nullptr;
  std::optional<TypedKeeper> typed_source_;
  QPushButton* keep_ = nullptr;
  QLineEdit* name_ = nullptr;
  QLabel* kept_ = nullptr;
};

} // namespace feedwright
