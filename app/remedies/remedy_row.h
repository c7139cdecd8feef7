// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "remedies/remedy_text.h"

#include <QAbstractButton>

namespace feedwright {

/// One remedy as a row to press: what to change, what comes of it, and what it makes worse, each
/// wrapped to the row's width. Space and Enter press it too; the arrow keys go to its neighbours.
class RemedyRow : public QAbstractButton {
  Q_OBJECT
public:
  explicit RemedyRow(QWidget* parent = nullptr);

  void show_text(RemedyText text);
  const RemedyText& shown() const { return text_; }

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;

signals:
  /// The neighbour so many rows further is wanted.
  void neighbour_wanted(int step);

protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  bool event(QEvent* event) override;

private:
  /// A piece of text with its height at a width, and what it is written in.
  struct Piece {
    QString text;
    QColor colour;
  };
  std::vector<Piece> pieces() const;
  int text_left() const;

  RemedyText text_;
};

} // namespace feedwright
