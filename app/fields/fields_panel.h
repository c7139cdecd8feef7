// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/field_row.h"
#include "parts/part_shelf.h"

#include <QWidget>

#include <memory>
#include <vector>

class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QScrollArea;

namespace feedwright {

class BeltChooser;
class MachineForm;

/// The fields of the chosen part, or of the machine, with a sentence on what the field at hand
/// does.
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

private:
  void take_changes();
  void take_selection();
  void rebuild();
  void refresh();
  void make_chooser();
  void fill_chooser();
  void add_part_rows(PartSlot slot);
  void add_heading(const QString& text);
  void add_type_row(PartSlot slot);
  void add_source_row(PartSlot slot);
  void add_picker(PartSlot slot);
  void show_help(const FieldRow& row);
  void focus_member();
  std::vector<PartSlot> shown_slots() const;
  QString shape() const;
  int widest_origin() const;

  MachineDocument& document_;
  QComboBox* chooser_ = nullptr;
  QScrollArea* scroll_ = nullptr;
  QWidget* form_ = nullptr;
  QGridLayout* grid_ = nullptr;
  QLabel* help_ = nullptr;
  QComboBox* type_ = nullptr;
  QLineEdit* source_ = nullptr;
  MachineForm* machine_form_ = nullptr;
  BeltChooser* belts_ = nullptr;
  std::vector<std::unique_ptr<FieldRow>> rows_;
  QString built_shape_;
  TableAsker ask_for_table_;
  PartShelf shelf_ = read_part_shelf();
};

} // namespace feedwright
