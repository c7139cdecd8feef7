// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/field_row.h"
#include "fields/form_widths.h"

#include <QWidget>

#include <map>
#include <memory>
#include <vector>

class QKeyEvent;
class QVBoxLayout;

namespace feedwright {

class BeltChooser;
class FieldSection;
class MachineForm;
class PartHeader;

/// Which sections of forms the user has opened (true) or folded (false), by their key.
using FoldedSections = std::map<QString, bool>;

/// The rows of one part, or of the parts that belong to the machine, under titles that fold away.
/// Made for what stands in the slots; when that changes type, make another.
class FieldsForm : public QWidget {
  Q_OBJECT
public:
  /// `stacked`: names above the editors, where the form is narrow for its letters.
  FieldsForm(const FormContext& context, std::size_t axis, const std::vector<PartSlot>& slots_shown,
             FoldedSections& folded, bool stacked, QWidget* parent);
  ~FieldsForm() override;

  void refresh();
  /// Shows only rows whose name, symbol or member has the text; all if it is empty.
  void filter(const QString& text);
  /// Whether a field is found by the text, as filter would.
  bool finds(const QString& text) const;
  /// The first row that is shown; nothing if none is.
  FieldRow* first_shown() const;
  FieldRow* row_of(PartSlot slot, std::string_view member) const;
  /// Where what is no field is typed, by its member in TypedAt; nothing for another.
  QWidget* aside_of(PartSlot slot, std::string_view member) const;
  /// Opens the row's section.
  void reveal(const FieldRow& row);
  void hand_in();
  void keep_typed();
  void take_shelf();

signals:
  void row_entered(const feedwright::FieldRow* row);
  void help_wanted(feedwright::PartSlot slot, const QString& member);
  void picked(feedwright::PartSlot slot, const feedwright::ListedPart& part);
  void own_list_changed();

private:
  struct Section {
    FieldSection* widget = nullptr;
    QString key;
    std::vector<std::size_t> rows; ///< indices into rows_
    bool has_reason = false;       ///< to be open by itself: trouble or a wanted field
    bool starts_open = false;
  };

  void add_part(PartSlot slot, bool titled);
  void add_header(PartSlot slot);
  Section& section_for(PartSlot slot, std::string_view section, bool titled);
  void add_row(Section& section, PartSlot slot, const FieldView& field);
  void open_the_first();
  void open_as_remembered();
  void look_for_reasons();
  bool matches(const FieldRow& row, const QString& text) const;
  QString summary(const Section& section) const;
  void type_into(const QString& section, QKeyEvent& key);
  void order_tabs();

  FormContext context_;
  std::size_t axis_;
  FoldedSections& folded_;
  bool stacked_;
  FormWidths widths_;
  QVBoxLayout* layout_ = nullptr;
  MachineForm* machine_form_ = nullptr;
  BeltChooser* belts_ = nullptr;
  std::vector<PartHeader*> headers_;
  std::vector<Section> sections_;
  std::vector<std::unique_ptr<FieldRow>> rows_;
  QString filtered_by_;
};

} // namespace feedwright
