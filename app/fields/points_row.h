// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/field_row.h"

class QTableWidget;

namespace feedwright {

/// A torque curve as a table of speeds and torques, each with any unit.
class PointsRow : public FieldRow {
  Q_OBJECT
public:
  PointsRow(MachineDocument& document, std::size_t axis, PartSlot slot, const FieldView& field);

protected:
  QWidget* make_editor(QWidget& parent) override;
  void show_value() override;

private:
  void take_table();
  void add_point();
  void remove_point();
  void paste();
  std::vector<TorquePoint> points() const;

  QWidget* frame_ = nullptr;
  QTableWidget* table_ = nullptr;
  bool filling_ = false;
};

} // namespace feedwright
