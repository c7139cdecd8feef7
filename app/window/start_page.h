// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QScrollArea>

class QVBoxLayout;

namespace feedwright {

class CardButton;

/// What a window shows that has no machine to show: a new one, one from a file, those worked on
/// last, and the samples with what each is good for.
class StartPage : public QScrollArea {
  Q_OBJECT
public:
  explicit StartPage(QWidget* parent = nullptr);

  /// Lists the recent files anew. `machine` names the machine behind the page; empty if it is
  /// untouched and there is nothing to go back to.
  void refresh(const QString& machine);

signals:
  void new_wanted();
  void open_wanted();
  void back_wanted();
  void first_steps_wanted();
  void file_chosen(const QString& path);
  void sample_chosen(const QString& path);

protected:
  void showEvent(QShowEvent* event) override;

private:
  void add_actions(QVBoxLayout& column);
  void add_recent(QVBoxLayout& column);
  void add_samples(QVBoxLayout& column);

  CardButton* back_ = nullptr;
  CardButton* first_ = nullptr;
  QVBoxLayout* recent_ = nullptr;
};

} // namespace feedwright
