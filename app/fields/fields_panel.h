// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/fields_form.h"
#include "fields/form_shape.h"
#include "parts/part_shelf.h"

#include <QWidget>

#include <optional>

class QBoxLayout;
class QLabel;

namespace feedwright {

class FieldFilter;
class FormScroll;
class PartChooser;

/// The fields of the chosen part, or of the machine, with a few sentences on the field at hand.
class FieldsPanel : public QWidget {
  Q_OBJECT
public:
  explicit FieldsPanel(MachineDocument& document, QWidget* parent = nullptr);
  ~FieldsPanel() override;

  /// The editor of a field; nothing if it is not shown.
  QWidget* editor_of(PartSlot slot, std::string_view member) const;
  void set_table_asker(TableAsker asker);
  /// The parts lists as they were read when the panel was made.
  const PartShelf& shelf() const { return shelf_; }

signals:
  /// More is wanted to be known of a field: F1 was pressed in it.
  void help_wanted(feedwright::PartSlot slot, const QString& member);
  /// Its fields are new widgets; Tab stops last at that one.
  void rebuilt(QWidget* last);

protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void take_changes();
  void take_selection();
  void take_typed();
  void keep_typed(bool of_axes);
  void take_listed_part(PartSlot slot, const ListedPart& part);
  void rebuild();
  QWidget* last_stop() const;
  void show_help(const FieldRow& row);
  void focus_member();
  void leave_filter();
  void say_where_found();
  std::vector<PartSlot> shown_slots() const;
  FormShape shape() const;
  bool is_there() const;
  void look_again();
  void fit_height();

  MachineDocument& document_;
  PartShelf shelf_ = read_part_shelf();
  TableAsker ask_for_table_;
  FoldedSections folded_;
  PartChooser* chooser_ = nullptr;
  FieldFilter* filter_ = nullptr;
  QBoxLayout* head_ = nullptr;
  QLabel* not_found_ = nullptr;
  FormScroll* scroll_ = nullptr;
  FieldsForm* form_ = nullptr;
  QLabel* help_ = nullptr;
  std::optional<FormShape> built_shape_;
  mutable FormShaper shaper_;
  std::size_t built_axis_ = 0;
  bool handing_in_ = false;
};

} // namespace feedwright
