// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "working/write_working.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QTableWidget;
class QTableWidgetItem;

namespace feedwright {

class FormulaLabel;

/// How one result of the selected axis came about: the equation in symbols and in numbers, and each
/// symbol with its value and origin. A row is a door to the field or the result it names.
class WorkingView : public QWidget {
  Q_OBJECT
public:
  explicit WorkingView(MachineDocument& document, QWidget* parent = nullptr);

  void choose(ResultId result);
  ResultId chosen() const { return chosen_; }
  void refresh();

private:
  void fill_results(const AxisResults& results);
  void show_step(const WrittenStep& step);
  void show_nothing(const QString& why);
  void add_term(const WrittenTerm& term);
  void follow(int row);

  MachineDocument& document_;
  ResultId chosen_ = ResultId::whip_feed;
  QComboBox* results_ = nullptr;
  QLabel* meaning_ = nullptr;
  FormulaLabel* formula_ = nullptr;
  QLabel* solved_ = nullptr;
  QTableWidget* terms_ = nullptr;
  QLabel* source_ = nullptr;
  std::vector<WrittenTerm> shown_terms_;
};

} // namespace feedwright
