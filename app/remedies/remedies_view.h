// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "choosing/remedies.h"
#include "document/machine_document.h"
#include "parts/part_shelf.h"
#include "remedies/remedy_text.h"

#include <QTimer>
#include <QWidget>

#include <optional>
#include <vector>

class QComboBox;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace feedwright {

class RemedyList;

/// What would do: the single changes that would bring a limit of the selected axis to its target,
/// the chosen one or else the worst. A row tries its change as one step that Undo takes back.
/// Computed after the edit is painted, and only while it is to be seen.
class RemediesView : public QWidget {
  Q_OBJECT
public:
  RemediesView(MachineDocument& document, const PartShelf& shelf, QWidget* parent = nullptr);

  /// Shows a limit's remedies, if it is over or close.
  void choose(LimitId limit);
  std::optional<LimitId> shown_limit() const { return shown_; }
  /// The remedies that are shown, row by row.
  const std::vector<Remedy>& shown() const { return remedies_; }

  /// Puts its stops of Tab behind another of the window.
  void follow(QWidget* before);

  /// An edit has been made since the rows were.
  bool is_waiting() const { return after_painting_.isActive(); }

signals:
  /// There is something to show, or no more: so much height would do.
  void height_wanted(int height);

protected:
  void showEvent(QShowEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

private:
  void make_heading(QVBoxLayout& layout);
  void schedule();
  void take_selection();
  void refresh();
  void show_now();
  void show_quiet(const QString& sentence);
  void show_limit(const std::vector<LimitId>& troubled, const AxisResults& results);
  void fill_limits(const std::vector<LimitId>& troubled, const AxisResults& results);
  RemedyContext context(const AxisResults& results) const;
  void try_remedy(std::size_t index);
  bool just_tried() const;
  void take_back();
  void show_take_back();
  void place_sentence(bool quiet);
  void set_quiet(bool quiet);
  void fit_to_width();
  int usual_height() const;

  MachineDocument& document_;
  std::vector<ListedPart> parts_;
  QTimer after_painting_;
  bool slow_ = false; ///< the last search took long enough to be felt at every edit
  std::size_t axis_ = 0;
  bool of_machine_ = false; ///< the machine is chosen, not an axis
  std::optional<LimitId> chosen_;
  std::optional<LimitId> shown_;
  std::vector<Remedy> remedies_;
  std::optional<bool> quiet_; ///< nothing until first shown
  std::uint64_t tried_ = 0;   ///< the step of the last try; zero if there was none

  QWidget* heading_ = nullptr;
  QComboBox* limits_ = nullptr;
  QLabel* sentence_ = nullptr;
  QPushButton* take_back_ = nullptr;
  RemedyList* list_ = nullptr;
};

} // namespace feedwright
