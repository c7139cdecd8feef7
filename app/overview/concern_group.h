// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "sizing/concerns.h"

#include <QFrame>

#include <vector>

class QBoxLayout;
class QLabel;
class QPushButton;

namespace feedwright {

class ConcernRow;

/// Whether concerns that say the same may stand under one heading: what is grave, and limits, which
/// have figures of their own, always stand for themselves.
bool may_share_heading(const Concern& concern);

/// The same caution at several places, said once: a heading that names the places and unfolds into
/// a row for each, with a door and an answer of its own.
class ConcernGroup : public QFrame {
  Q_OBJECT
public:
  /// `key` tells groups apart and names their controls: "show_all_typical_figures".
  explicit ConcernGroup(const QString& key, QWidget* parent);

  /// `rows` are two or more, each with a concern that says the same.
  void show_rows(const std::vector<ConcernRow*>& rows, const Machine& machine,
                 const FileUnits& units);
  const std::vector<ConcernRow*>& rows() const { return rows_; }
  bool is_open() const { return open_; }
  void set_open(bool open);
  /// Puts the keyboard's way through this heading after `before`, if that is any.
  QWidget* follow(QWidget* before);

protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void show_state();
  void fit_buttons();

  std::vector<ConcernRow*> rows_;
  bool open_ = false;
  QString subject_;
  QBoxLayout* line_ = nullptr;
  QLabel* text_ = nullptr;
  QPushButton* show_ = nullptr;
  QPushButton* unfold_ = nullptr;
};

} // namespace feedwright
