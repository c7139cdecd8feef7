// SPDX-License-Identifier: GPL-3.0-or-later
#include "help/help_window.h"

#include "help/help_page_view.h"
#include "window/plain_label.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QShortcut>
#include <QSplitter>
#include <QToolButton>
#include <QTreeWidget>
#include <QUrl>
#include <QVBoxLayout>

#include <algorithm>

namespace feedwright {

namespace {

constexpr int topic_role = Qt::UserRole;

} // namespace

HelpWindow::HelpWindow(QWidget* parent) : QWidget(parent, Qt::Window) {
  setObjectName(QStringLiteral("help_window"));
  page_ = new HelpPageView(this);
  contents_ = new QTreeWidget(this);
  contents_->setObjectName(QStringLiteral("help_contents_list"));
  contents_->setHeaderHidden(true);
  contents_->setUniformRowHeights(true);
  contents_->setTabKeyNavigation(false);
  search_ = new QLineEdit(this);
  search_->setObjectName(QStringLiteral("help_search"));
  search_->setClearButtonEnabled(true);
  search_->installEventFilter(this);
  found_ = plain_label({}, this);
  found_->setObjectName(QStringLiteral("help_found"));
  make_bar();

  auto* left = new QWidget(this);
  auto* left_layout = new QVBoxLayout(left);
  left_layout->setContentsMargins(6, 6, 0, 6);
  left_layout->addWidget(search_);
  left_layout->addWidget(found_);
  left_layout->addWidget(contents_, 1);
  auto* right = new QWidget(this);
  auto* right_layout = new QVBoxLayout(right);
  right_layout->setContentsMargins(0, 6, 6, 6);
  right_layout->addWidget(bar_);
  right_layout->addWidget(page_, 1);
  auto* across = new QSplitter(Qt::Horizontal, this);
  across->addWidget(left);
  across->addWidget(right);
  across->setStretchFactor(1, 1);
  across->setChildrenCollapsible(false);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(across);

  connect(search_, &QLineEdit::textChanged, this, &HelpWindow::fill_contents);
  connect(contents_, &QTreeWidget::currentItemChanged, this, [this](QTreeWidgetItem* item) {
    const QString chosen = item != nullptr ? item->data(0, topic_role).toString() : QString();
    if (!filling_ && !chosen.isEmpty() && chosen != topic_) {
      show_topic(chosen);
    }
  });
  connect(page_, &QTextBrowser::anchorClicked, this, &HelpWindow::follow);
  const int letter = fontMetrics().averageCharWidth();
  resize(126 * letter, 46 * fontMetrics().height());
  across->setSizes({44 * letter, 82 * letter});
  put_words();
}

QToolButton* HelpWindow::add_button(const QString& name, const QKeySequence& keys,
                                    std::function<void()> act) {
  auto* button = new QToolButton(bar_);
  button->setObjectName(name);
  button->setFocusPolicy(Qt::TabFocus);
  button->setShortcut(keys);
  connect(button, &QToolButton::clicked, this, std::move(act));
  bar_->layout()->addWidget(button);
  return button;
}

void HelpWindow::make_bar() {
  bar_ = new QWidget(this);
  auto* layout = new QHBoxLayout(bar_);
  layout->setContentsMargins(0, 0, 0, 0);
  back_ = add_button(QStringLiteral("help_back"), QKeySequence::Back, [this] { go_back(); });
  forward_ =
      add_button(QStringLiteral("help_forward"), QKeySequence::Forward, [this] { go_forward(); });
  smaller_ = add_button(QStringLiteral("help_smaller"), QKeySequence::ZoomOut,
                        [this] { page_->set_larger_by(page_->larger_by() - 1); });
  larger_ = add_button(QStringLiteral("help_larger"), QKeySequence::ZoomIn,
                       [this] { page_->set_larger_by(page_->larger_by() + 1); });
  layout->addStretch(1);
  auto* find = new QShortcut(QKeySequence::Find, this);
  connect(find, &QShortcut::activated, this, [this] {
    search_->setFocus(Qt::ShortcutFocusReason);
    search_->selectAll();
  });
  auto* leave = new QShortcut(QKeySequence::Cancel, this);
  connect(leave, &QShortcut::activated, this,
          [this] { search_->text().isEmpty() ? hide() : search_->clear(); });
  auto* away = new QShortcut(QKeySequence::Close, this);
  connect(away, &QShortcut::activated, this, &QWidget::hide);
}

void HelpWindow::put_words() {
  setAccessibleName(tr("Help"));
  page_->setAccessibleName(tr("Page of help"));
  back_->setText(tr("Back"));
  forward_->setText(tr("Forward"));
  smaller_->setText(tr("Smaller text"));
  larger_->setText(tr("Larger text"));
  // A button's text is also its mnemonic; setting it forgets the keys.
  back_->setShortcut(QKeySequence::Back);
  forward_->setShortcut(QKeySequence::Forward);
  smaller_->setShortcut(QKeySequence::ZoomOut);
  larger_->setShortcut(QKeySequence::ZoomIn);
  search_->setPlaceholderText(tr("Search all pages"));
  search_->setAccessibleName(tr("Search all pages"));
  contents_->setAccessibleName(tr("Contents"));
  fill_contents();
  if (!topic_.isEmpty()) {
    put_page(topic_);
  }
}

void HelpWindow::set_made_page(const QString& topic, std::function<QString()> markdown) {
  made_pages_.emplace_back(topic, std::move(markdown));
  fill_contents();
}

QString HelpWindow::page(const QString& topic) const {
  const auto made = std::ranges::find(made_pages_, topic, [](const auto& p) { return p.first; });
  return made != made_pages_.end() ? made->second() : help_page(topic);
}

QStringList HelpWindow::searched_words() const {
  return search_->text().split(QLatin1Char(' '), Qt::SkipEmptyParts);
}

/// Pages with every word; those with a word in their heading first.
QStringList HelpWindow::found_topics(const QStringList& words) const {
  QStringList by_heading;
  QStringList by_text;
  for (const QString& topic : all_help_topics()) {
    const QString markdown = page(topic);
    const auto has = [&](const QString& text) {
      return std::ranges::all_of(
          words, [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
    };
    if (has(help_title(markdown, topic))) {
      by_heading << topic;
    } else if (has(help_words(markdown))) {
      by_text << topic;
    }
  }
  return by_heading + by_text;
}

void HelpWindow::add_group(const QString& title, const QStringList& topics) {
  auto* group =
      title.isEmpty() ? contents_->invisibleRootItem() : new QTreeWidgetItem(contents_, {title});
  if (!title.isEmpty()) {
    QFont font = contents_->font();
    font.setBold(true);
    group->setFont(0, font);
  }
  for (const QString& topic : topics) {
    auto* item = new QTreeWidgetItem(group, {help_title(page(topic), topic)});
    item->setData(0, topic_role, topic);
    item->setToolTip(0, item->text(0).toHtmlEscaped());
  }
}

void HelpWindow::fill_contents() {
  filling_ = true;
  contents_->clear();
  const QStringList words = searched_words();
  if (words.isEmpty()) {
    for (const HelpGroup& group : help_groups()) {
      add_group(group.title, group.topics);
    }
    found_->hide();
  } else {
    const QStringList topics = found_topics(words);
    add_group({}, topics);
    found_->setText(tr("%n page(s) found.", nullptr, int(topics.size())));
    found_->show();
  }
  contents_->setRootIsDecorated(words.isEmpty());
  contents_->expandAll();
  filling_ = false;
  mark_current();
  if (!topic_.isEmpty()) {
    page_->mark_words(words);
  }
}

void HelpWindow::mark_current() {
  filling_ = true;
  contents_->setCurrentItem(nullptr);
  for (QTreeWidgetItemIterator it(contents_); *it != nullptr; ++it) {
    if ((*it)->data(0, topic_role).toString() == topic_) {
      contents_->setCurrentItem(*it);
    }
  }
  filling_ = false;
}

void HelpWindow::put_page(const QString& topic) {
  topic_ = topic;
  const QString markdown = page(topic);
  page_->show_page(markdown);
  page_->mark_words(searched_words());
  setWindowTitle(tr("%1 – Feedwright help").arg(help_title(markdown, topic)));
  page_->setAccessibleDescription(help_title(markdown, topic));
  back_->setEnabled(!past_.isEmpty());
  forward_->setEnabled(!future_.isEmpty());
  mark_current();
}

void HelpWindow::show_topic(const QString& topic) {
  const QString wanted =
      all_help_topics().contains(topic) && !page(topic).isEmpty() ? topic : QString(first_topic);
  if (wanted != topic_) {
    if (!topic_.isEmpty()) {
      past_ << topic_;
    }
    future_.clear();
    put_page(wanted);
  }
  show();
  raise();
}

void HelpWindow::go_back() {
  if (!past_.isEmpty()) {
    future_ << topic_;
    put_page(past_.takeLast());
  }
}

void HelpWindow::go_forward() {
  if (!future_.isEmpty()) {
    past_ << topic_;
    put_page(future_.takeLast());
  }
}

void HelpWindow::search_for(const QString& text) {
  search_->setText(text);
}

void HelpWindow::follow(const QUrl& link) {
  const HelpLink read = read_help_link(link.toString());
  switch (read.to) {
  case HelpLink::To::page: show_topic(read.topic); break;
  case HelpLink::To::part: emit part_wanted(read.slot, read.member); break;
  case HelpLink::To::elsewhere: break;
  }
}

/// From the search line Down goes into the list, Enter to the first page found.
bool HelpWindow::eventFilter(QObject* watched, QEvent* event) {
  if (watched == search_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool enter = key == Qt::Key_Return || key == Qt::Key_Enter;
    if ((enter || key == Qt::Key_Down) && contents_->topLevelItemCount() > 0) {
      if (!searched_words().isEmpty()) {
        contents_->setCurrentItem(contents_->topLevelItem(0));
      }
      (enter ? static_cast<QWidget*>(page_) : contents_)->setFocus(Qt::ShortcutFocusReason);
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

void HelpWindow::changeEvent(QEvent* event) {
  if (event->type() == QEvent::LanguageChange) {
    put_words();
  }
  QWidget::changeEvent(event);
}

} // namespace feedwright
