// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "help/help_topics.h"

#include <QWidget>

#include <functional>
#include <vector>

class QLabel;
class QLineEdit;
class QToolButton;
class QTreeWidget;
class QTreeWidgetItem;

namespace feedwright {

class HelpPageView;

/// Help beside the window, not in its way: contents, search, pages with a way back. It follows
/// language, colours and font while it is open.
class HelpWindow : public QWidget {
  Q_OBJECT
public:
  explicit HelpWindow(QWidget* parent = nullptr);

  /// Shows the page and the window; an unknown topic shows the first page.
  void show_topic(const QString& topic);
  QString topic() const { return topic_; }
  /// A page that is made when it is shown, in the language then chosen.
  void set_made_page(const QString& topic, std::function<QString()> markdown);

  void go_back();
  void go_forward();
  void search_for(const QString& text);

signals:
  void part_wanted(feedwright::PartSlot slot, const QString& member);

protected:
  void changeEvent(QEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void make_bar();
  QToolButton* add_button(const QString& name, const QKeySequence& keys, std::function<void()> act);
  void put_words();
  void fill_contents();
  void add_group(const QString& title, const QStringList& topics);
  QStringList found_topics(const QStringList& words) const;
  QString page(const QString& topic) const;
  void put_page(const QString& topic);
  void mark_current();
  void follow(const QUrl& link);
  QStringList searched_words() const;

  std::vector<std::pair<QString, std::function<QString()>>> made_pages_;
  QString topic_;
  QStringList past_;
  QStringList future_;
  bool filling_ = false;

  QLineEdit* search_ = nullptr;
  QLabel* found_ = nullptr;
  QTreeWidget* contents_ = nullptr;
  HelpPageView* page_ = nullptr;
  QToolButton* back_ = nullptr;
  QToolButton* forward_ = nullptr;
  QToolButton* smaller_ = nullptr;
  QToolButton* larger_ = nullptr;
  QWidget* bar_ = nullptr;
};

} // namespace feedwright
