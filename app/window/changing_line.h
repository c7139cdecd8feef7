// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;

namespace feedwright {

/// One line of plain text that changes often, cut where it is too long and whole in its tip and for
/// a screen reader. It takes the width it gets; another text never has the layout around made anew,
/// which a label of its own would.
class ChangingLine : public QWidget {
  Q_OBJECT
public:
  /// The label takes the name.
  explicit ChangingLine(const QString& object_name, QWidget* parent = nullptr);

  void show_text(const QString& text);

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void fit();

  QLabel* label_ = nullptr;
  QString text_;
};

} // namespace feedwright
