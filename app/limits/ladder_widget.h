// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "limits/paint_ladder.h"

#include <QWidget>

#include <vector>

namespace feedwright {

/// One ladder whose rows a click, or the arrow keys and Enter, choose.
class LadderWidget : public QWidget {
  Q_OBJECT
public:
  explicit LadderWidget(QWidget* parent = nullptr);

  void show_ladder(Ladder ladder);
  /// The row whose part and working are shown; none if the ladder has no such limit.
  void mark_chosen(std::optional<LimitId> id);
  std::optional<LimitId> chosen() const { return chosen_; }
  const Ladder& ladder() const { return ladder_; }
  /// The limit the keyboard stands on; nothing in an empty ladder.
  std::optional<LimitId> current_limit() const {
    return current_ < ladder_.rows.size() ? std::optional(ladder_.rows[current_].id) : std::nullopt;
  }
  /// Where a row stands, in the widget's coordinates.
  QRectF row_area(std::size_t row) const;

  /// The width at which its bars have a good length beside their names.
  int easy_width() const;

  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

signals:
  void row_chosen(feedwright::LimitId id);
  /// The sentence on the row that pointer or keyboard stands on; empty if on none.
  void row_pointed_at(const QString& sentence);

protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  bool event(QEvent* event) override;

private:
  /// A plan and what it was made for, besides the ladder.
  struct KeptPlan {
    QRectF room;
    QFont font;
    int dots_per_inch = 0;
    bool mirrored = false;
    LadderPlan plan;
  };

  std::optional<std::size_t> row_at(const QPointF& point) const;
  const LadderPlan& plan() const;
  const LadderPlan& plan_in(const QRectF& room) const;
  LadderOptions options() const;
  bool row_ties() const;
  void describe();
  void point_out();
  void keep_in_view();

  Ladder ladder_;
  /// Layouts ask for the same few heights again and again, and measuring text is slow.
  mutable std::vector<KeptPlan> plans_;
  std::optional<LimitId> chosen_;
  std::size_t current_ = 0;
  std::optional<std::size_t> hovered_;
};

} // namespace feedwright
