// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>

#include <vector>

class QToolButton;

namespace feedwright {

/// What may hurt somebody: the gravest always whole, more beside it as far as two lines hold them,
/// so that little is pushed away; the rest opens in place. No sentence is ever cut, and nothing
/// hidden without a button that says how much is.
class GraveCautions : public QWidget {
  Q_OBJECT
public:
  explicit GraveCautions(QWidget* parent = nullptr);

  void show_texts(const QStringList& texts);
  bool is_open() const { return open_; }

  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override;
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  struct Lines {
    QStringList shown;
    int hidden = 0;   ///< cautions of which nothing is shown
    bool cut = false; ///< something is not shown
  };
  Lines lines_for(int width) const;
  int text_width(int width, bool with_button) const;
  void turn(bool open);
  void place_button();

  QStringList texts_;
  bool open_ = false;
  QToolButton* more_;
};

} // namespace feedwright
