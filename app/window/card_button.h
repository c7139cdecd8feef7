// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>

namespace feedwright {

/// A button that looks like the cards of the axes: a title, and under it a plain line that wraps.
class CardButton : public QAbstractButton {
  Q_OBJECT
public:
  CardButton(const QString& title, const QString& line, QWidget* parent);

  void set_line(const QString& line);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;

protected:
  void paintEvent(QPaintEvent* event) override;
  void enterEvent(QEnterEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

private:
  QFont title_font() const;

  QString title_;
  QString line_;
};

} // namespace feedwright
