// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QGridLayout;
class QKeyEvent;
class QLabel;
class QToolButton;

namespace feedwright {

/// A stretch of a form under a title that folds it away. Folded, it says what it holds.
class FieldSection : public QWidget {
  Q_OBJECT
public:
  /// Without a title it is always open. `key` tells it from others: its object name.
  FieldSection(const QString& title, const QString& key, QWidget* parent);

  QGridLayout& grid() { return *grid_; }
  QWidget& body() { return *body_; }
  /// What Tab stops at to fold it; nothing without a title.
  QWidget* head() const;
  bool is_open() const;
  void set_open(bool open);
  /// What it holds: "3 given", "1 wanted", "1 refused"; shown beside the title.
  void say(const QString& summary);

signals:
  /// The user has opened or closed it.
  void toggled(bool open);
  /// A letter or figure was typed while the keyboard stood on the head, which has no use for it.
  void typed(QKeyEvent* key);

protected:
  void resizeEvent(QResizeEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void show_state();
  void fit_summary();

  QToolButton* head_ = nullptr;
  QLabel* summary_ = nullptr;
  QWidget* body_ = nullptr;
  QGridLayout* grid_ = nullptr;
  QString title_;
};

} // namespace feedwright
