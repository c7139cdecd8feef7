// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

#include <functional>
#include <vector>

class QBoxLayout;
class QLabel;

namespace feedwright {

/// A line across the window that says something and may offer what to do, without stopping the
/// work. The latest message is shown; one of another topic waits beneath it until that is closed.
class Banner : public QFrame {
  Q_OBJECT
public:
  struct Choice {
    QString text;
    QString name; ///< object name of its button
    std::function<void()> act;
    bool stays = false; ///< the message stays when it is chosen
  };

  explicit Banner(QWidget* parent = nullptr);

  /// Takes the place of an earlier message of the same topic.
  void say(const QString& text, const std::vector<Choice>& choices = {}, const QString& topic = {});
  /// Takes the topic's message away, whether shown or waiting.
  void be_quiet(const QString& topic = {});
  /// Takes the shown message away.
  void close_message();
  QString text() const;
  /// Whether the topic has a message, shown or waiting.
  bool speaks_of(const QString& topic) const;

protected:
  void resizeEvent(QResizeEvent* event) override;

private:
  struct Message {
    QString topic;
    QString text;
    std::vector<Choice> choices;
  };
  void show_latest();
  void take_buttons();
  void arrange();

  QLabel* label_ = nullptr;
  QBoxLayout* row_ = nullptr;
  QBoxLayout* buttons_ = nullptr;
  std::vector<Message> messages_; ///< the last is shown
};

} // namespace feedwright
