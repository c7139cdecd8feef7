// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/results.h"

#include <QWidget>

#include <vector>

class QHBoxLayout;
class QToolButton;

namespace feedwright {

/// The workings visited, with the way back and forth, and the results one came through to the one
/// shown, each a door back to it.
class WorkingTrail : public QWidget {
  Q_OBJECT
public:
  explicit WorkingTrail(QWidget* parent = nullptr);

  ResultId chosen() const { return visits_[at_].back(); }
  /// Come upon from elsewhere: the trail starts there.
  void start_at(ResultId id);
  /// The first there is, as when the window opens; says nothing of it.
  void begin(ResultId id);
  /// Reached through the one shown.
  void go_on_to(ResultId id);
  void back();
  void forward();

  QToolButton* back_button() { return back_; }
  QToolButton* forward_button() { return forward_; }

signals:
  void moved();

protected:
  void changeEvent(QEvent* event) override;

private:
  using Trail = std::vector<ResultId>;
  void visit(Trail trail);
  void show_trail();

  std::vector<Trail> visits_;
  std::size_t at_ = 0;
  QToolButton* back_;
  QToolButton* forward_;
  QHBoxLayout* steps_;
};

} // namespace feedwright
