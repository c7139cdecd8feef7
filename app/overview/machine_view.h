// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "overview/figure_table.h"
#include "sizing/concerns.h"

#include <QWidget>

#include <array>

class QBoxLayout;
class QComboBox;
class QLabel;
class QPushButton;
class QStackedWidget;
class QTabBar;
class QVBoxLayout;

namespace feedwright {

class ConcernList;

/// The machine as a whole: its axes side by side, what they ask of it together, what deserves care
/// and what was answered to it, figures for the controller, parts to buy. While nothing can be
/// computed, the faults with a door to each.
class MachineView : public QWidget {
  Q_OBJECT
public:
  explicit MachineView(MachineDocument& document, QWidget* parent = nullptr);

  /// Puts the keyboard into the answer that is being written there.
  void show_answer(const TypedAt& place);

signals:
  void limit_chosen(feedwright::LimitId limit);

protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

private:
  QWidget* make_results();
  QBoxLayout* make_chooser(QWidget* all);
  void fit_chooser();
  QWidget* make_pages();
  QWidget* make_faults();
  QWidget* add_page(const QString& title, QWidget* page);
  FigureTable* add_table(const QString& name, const QString& spoken, bool whole, QWidget* parent);
  QWidget* page_with_lines(FigureTable* table, std::vector<QLabel*>& lines, const QString& name);
  void refresh();
  void take_pending();
  void show_results();
  void show_faults();
  void show_lines(std::vector<QLabel*>& lines, const QStringList& texts);
  void go(const Selection& selection, const std::optional<LimitId>& limit);

  MachineDocument& document_;
  bool stale_ = true;
  QStackedWidget* state_ = nullptr; ///< results or faults
  QLabel* title_ = nullptr;
  FigureTable* axes_ = nullptr;
  FigureTable* limits_ = nullptr;
  QTabBar* tabs_ = nullptr;
  QComboBox* box_ = nullptr; ///< in place of the tabs where those have no room
  QPushButton* copy_ = nullptr;
  QBoxLayout* chooser_ = nullptr;
  QStackedWidget* pages_ = nullptr;
  ConcernList* concerns_ = nullptr;
  Concerns found_; ///< as the list shows them
  FigureTable* shares_ = nullptr;
  std::vector<QLabel*> share_lines_;
  FigureTable* controller_ = nullptr;
  std::vector<QLabel*> controller_lines_;
  FigureTable* purchases_ = nullptr;
  QVBoxLayout* faults_ = nullptr;
  std::vector<QWidget*> fault_rows_;
};

} // namespace feedwright
