// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "working/write_working.h"

#include <QTimer>
#include <QWidget>

#include <optional>

class QLabel;
class QScrollArea;
class QToolButton;

namespace feedwright {

class FormulaLabel;
class ResultPicker;
class TermsTable;
class WorkingTrail;
struct TermRow;

/// How one result of the selected axis came about, as a textbook's margin would have it: the
/// equation in symbols, in numbers and worked out; what weighs most; each symbol with its value and
/// origin; where the equation is from and where it holds. A symbol is a door to the field or the
/// result it names; the way back is kept.
class WorkingView : public QWidget {
  Q_OBJECT
public:
  explicit WorkingView(MachineDocument& document, QWidget* parent = nullptr);

  /// Another result, come upon from elsewhere.
  void choose(ResultId result);
  ResultId chosen() const;
  void refresh();

public slots:
  void go_back();
  void go_forward();
  /// The whole working, its equation as MathML too; the table's rows if the keyboard is there.
  void copy();

private:
  void lay_out();
  void connect_parts();
  void add_shortcuts();
  QWidget* make_bar();
  void make_content(QWidget* content);
  void show_step(const WrittenStep& step);
  void show_without_step(const AxisResults& results);
  void show_nothing(const QString& why);
  void show_shares(const WrittenStep& step);
  void show_movers();
  void show_notes(ResultId id);
  void follow(const TermRow& row);
  /// What is shown, for a build log or a letter: name, equation, symbols, validity, source.
  QString as_text() const;

  MachineDocument& document_;
  /// The axis is sized anew for every figure: after all else has been shown.
  bool by_hand_ = false;                 ///< somebody has chosen a result
  std::optional<std::size_t> opened_on_; ///< the axis whose governing limit it opened with
  QTimer movers_later_;
  std::optional<ResultId> movers_of_; ///< the result whose movers are shown
  std::vector<WrittenTerm> shown_terms_;
  WorkingTrail* trail_ = nullptr;
  ResultPicker* results_ = nullptr;
  QToolButton* copy_ = nullptr;
  QScrollArea* area_ = nullptr;
  QLabel* meaning_ = nullptr;
  FormulaLabel* formula_ = nullptr;
  QLabel* solved_ = nullptr;
  QLabel* shares_ = nullptr;
  TermsTable* terms_ = nullptr;
  QLabel* movers_title_ = nullptr;
  TermsTable* movers_ = nullptr;
  QLabel* validity_ = nullptr;
  QLabel* source_ = nullptr;
};

} // namespace feedwright
