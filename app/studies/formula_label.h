// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "studies/formula_layout.h"
#include "working/write_working.h"

#include <QStringList>
#include <QWidget>

namespace feedwright {

/// The equation of a working: in symbols, in numbers, and what comes out, below each other at the
/// sign of equality and wrapped to the width. A symbol under the pointer says what it is; a click
/// on it chooses its term.
class FormulaLabel : public QWidget {
  Q_OBJECT
public:
  explicit FormulaLabel(QWidget* parent = nullptr);

  /// `about` says of each term what it is.
  void show_step(const WrittenStep& step, const QStringList& about);
  void clear();
  /// The term that is pointed out wherever it stands.
  void mark_term(std::optional<std::size_t> term);
  std::optional<std::size_t> marked_term() const { return marked_; }

  QString plain_text() const { return plain_text_; }
  QString mathml() const { return mathml_; }
  /// Where a term stands first, in the widget's coordinates.
  QRectF term_area(std::size_t term) const;

  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

signals:
  void term_pointed_at(std::optional<std::size_t> term);
  void term_chosen(std::size_t term);

protected:
  void paintEvent(QPaintEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void changeEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  bool event(QEvent* event) override;

private:
  QFont formula_font() const;
  const FormulaBox& set_for(int width) const;
  QPointF origin() const;
  void point_at(std::optional<std::size_t> term);

  Notation left_;
  std::vector<Notation> rights_;
  QStringList about_;
  QString plain_text_, mathml_;
  std::optional<std::size_t> marked_, pointed_at_;
  mutable FormulaBox box_;
  mutable int box_width_ = -1;
};

} // namespace feedwright
