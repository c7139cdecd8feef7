// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

#include <functional>
#include <vector>

class QHBoxLayout;
class QLabel;

namespace feedwright {

/// A line across the window that says something and may offer what to do, without stopping the
/// work. One message at a time; a new one takes the place of the old.
class Banner : public QFrame {
  Q_OBJECT
public:
  struct Choice {
    QString text;
    QString name; ///< object name of its button
    std::function<void()> act;
  };

  explicit Banner(QWidget* parent = nullptr);

  void say(const QString& text, const std::vector<Choice>& choices = {});
  void be_quiet();
  QString text() const;

private:
  QLabel* label_ = nullptr;
  QHBoxLayout* buttons_ = nullptr;
};

} // namespace feedwright
