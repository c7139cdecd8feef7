// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/start_page.h"

#include "document/machine_store.h"
#include "document/recent_files.h"
#include "window/card_button.h"
#include "window/plain_label.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QVBoxLayout>

namespace feedwright {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(StartPage)

public:
  /// What a sample is good for.
  static QString lesson(const QString& sample) {
    if (sample == QLatin1String("plank-router")) {
      return tr("A long screw that whips before it is fast enough: see what lead, end supports "
                "and length do to the feed.");
    }
    if (sample == QLatin1String("clock-mill")) {
      return tr("A heavy head on a column, and a wish for a few micrometres: see what holds it "
                "up and where motion is lost.");
    }
    if (sample == QLatin1String("sign-engraver")) {
      return tr("Trapezoidal screws and a slow controller: see how step rate and friction set "
                "the limits.");
    }
    return {};
  }
};

CardButton* card(const QString& title, const QString& line, const QString& name, QWidget* parent) {
  auto* button = new CardButton(title, line, parent);
  button->setObjectName(name);
  return button;
}

QLabel* heading(const QString& text, double size, QWidget* parent) {
  QLabel* label = plain_label(text, parent);
  QFont font = label->font();
  font.setPointSizeF(font.pointSizeF() * size);
  font.setBold(true);
  label->setFont(font);
  return label;
}

} // namespace

StartPage::StartPage(QWidget* parent) : QScrollArea(parent) {
  setObjectName(QStringLiteral("start_page"));
  setAccessibleName(tr("Start page"));
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setFocusPolicy(Qt::NoFocus);
  auto* page = new QWidget(this);
  page->setMaximumWidth(96 * fontMetrics().averageCharWidth() * 3 / 2);
  auto* all = new QVBoxLayout(page);
  const int gap = fontMetrics().height();
  all->setContentsMargins(2 * gap, 2 * gap, 2 * gap, gap);
  all->setSpacing(gap);
  // A proper name, the same in every language.
  all->addWidget(heading(QStringLiteral("Feedwright"), 2.0, page));
  all->addWidget(plain_label(
      tr("Sizes the drive of every axis of a CNC router or mill before its parts are bought."),
      page));
  auto* columns = new QHBoxLayout;
  columns->setSpacing(3 * gap);
  auto* left = new QVBoxLayout;
  auto* right = new QVBoxLayout;
  left->setSpacing(gap / 2);
  right->setSpacing(gap / 2);
  add_actions(*left);
  add_recent(*left);
  left->addStretch();
  add_samples(*right);
  right->addStretch();
  columns->addLayout(left, 1);
  columns->addLayout(right, 1);
  all->addLayout(columns);
  all->addStretch();
  auto* middle = new QWidget(this);
  auto* across = new QHBoxLayout(middle);
  across->addStretch(1);
  across->addWidget(page, 100);
  across->addStretch(1);
  setWidget(middle);
  refresh({});
}

void StartPage::add_actions(QVBoxLayout& column) {
  column.addWidget(heading(tr("Begin"), 1.2, this));
  auto* back = card(tr("Back to the machine"), {}, QStringLiteral("start_back"), this);
  auto* fresh = card(tr("New machine"), tr("One axis of ordinary parts, to be changed."),
                     QStringLiteral("start_new"), this);
  auto* open = card(tr("Open…"), tr("A machine from a file. It can be dropped here, too."),
                    QStringLiteral("start_open"), this);
  connect(back, &CardButton::clicked, this, &StartPage::back_wanted);
  connect(fresh, &CardButton::clicked, this, &StartPage::new_wanted);
  connect(open, &CardButton::clicked, this, &StartPage::open_wanted);
  column.addWidget(back);
  column.addWidget(fresh);
  column.addWidget(open);
  auto* steps = card(tr("First steps"),
                     tr("Sizing a first router, step by step: a page to read "
                        "beside the program."),
                     QStringLiteral("start_first_steps"), this);
  connect(steps, &CardButton::clicked, this, &StartPage::first_steps_wanted);
  column.addWidget(steps);
  back_ = back;
  first_ = fresh;
}

void StartPage::add_recent(QVBoxLayout& column) {
  column.addSpacing(fontMetrics().height());
  recent_ = new QVBoxLayout;
  recent_->setSpacing(column.spacing());
  column.addLayout(recent_);
}

void StartPage::add_samples(QVBoxLayout& column) {
  column.addWidget(heading(tr("Samples"), 1.2, this));
  const QDir folder(QStringLiteral(":/sample-machines"));
  for (const QFileInfo& file : folder.entryInfoList({QStringLiteral("*.feedwright")})) {
    const QString path = file.filePath();
    const auto loaded = load_machine(path);
    const QString title =
        loaded ? QString::fromStdString(loaded->machine.name) : file.completeBaseName();
    auto* button = card(title, Words::lesson(file.completeBaseName()),
                        QStringLiteral("start_") + file.completeBaseName(), this);
    connect(button, &CardButton::clicked, this, [this, path] { emit sample_chosen(path); });
    column.addWidget(button);
  }
  column.addWidget(plain_label(
      tr("A sample is opened as a machine of your own: saving it asks for a place."), this));
}

void StartPage::refresh(const QString& machine) {
  back_->setVisible(!machine.isEmpty());
  back_->set_line(machine);
  while (QLayoutItem* item = recent_->takeAt(0)) {
    delete item->widget();
    delete item;
  }
  const QStringList paths = RecentFiles::paths();
  if (!paths.isEmpty()) {
    recent_->addWidget(heading(tr("Worked on last"), 1.2, this));
  }
  for (qsizetype i = 0; i < paths.size(); ++i) {
    const QString& path = paths[i];
    // Only the text of the path is used: nothing is looked up on the disk.
    const QFileInfo file(path);
    const QString folder = QDir::toNativeSeparators(file.path());
    constexpr int shown = 56;
    auto* button = card(
        file.fileName(),
        fontMetrics().elidedText(folder, Qt::ElideMiddle, shown * fontMetrics().averageCharWidth()),
        QStringLiteral("start_recent_%1").arg(i), this);
    button->setAccessibleDescription(folder);
    button->setToolTip(QStringLiteral("<p>%1</p>").arg(folder.toHtmlEscaped()));
    connect(
        button, &CardButton::clicked, this, [this, path] { emit file_chosen(path); },
        Qt::QueuedConnection);
    recent_->addWidget(button);
  }
}

void StartPage::showEvent(QShowEvent* event) {
  QScrollArea::showEvent(event);
  (back_->isVisibleTo(this) ? back_ : first_)->setFocus(Qt::OtherFocusReason);
}

} // namespace feedwright
