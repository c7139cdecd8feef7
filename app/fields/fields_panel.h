// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/fields_form.h"
#include "parts/part_shelf.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QScrollArea;

namespace feedwright {

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

protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void make_filter();
  void take_changes();
  void take_selection();
  void take_typed();
  void take_listed_part(PartSlot slot, const ListedPart& part);
  void rebuild();
  void show_help(const FieldRow& row);
  void focus_member();
  void leave_filter();
  void say_where_found();
  void keep_in_sight();
  std::vector<PartSlot> shown_slots() const;
  QString shape() const;
  bool is_narrow() const;
  bool is_there() const;
  void look_again();
  void fit_help();

  MachineDocument& document_;
  PartShelf shelf_ = read_part_shelf();
  TableAsker ask_for_table_;
  FoldedSections folded_;
  PartChooser* chooser_ = nullptr;
  QLineEdit* filter_ = nullptr;
  QLabel* not_found_ = nullptr;
  QScrollArea* scroll_ = nullptr;
  FieldsForm* form_ = nullptr;
  QLabel* help_ = nullptr;
  QString built_shape_;
  std::size_t built_axis_ = 0;
  bool handing_in_ = false;
};

} // namespace feedwright
