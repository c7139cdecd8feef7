// SPDX-License-Identifier: GPL-3.0-or-later
#include "help/about_window.h"

#include "sheet/program_version.h"
#include "text/text_of.h"
#include "window/plain_label.h"

#include <QCoreApplication>
#include <QFile>
#include <QFontDatabase>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QShortcut>
#include <QTableWidget>
#include <QVBoxLayout>

namespace feedwright {

namespace {

constexpr UsedLibrary libraries[] = {
    {"Qt 6", "LGPL-3.0 / GPL-3.0", QT_TRANSLATE_NOOP("About", "window, text, printing")},
    {"QCustomPlot", "GPL-3.0-or-later", QT_TRANSLATE_NOOP("About", "plots")},
    {"Boost.Units, Boost.Math", "BSL-1.0", QT_TRANSLATE_NOOP("About", "units, root finding")},
    {"JSON for Modern C++", "MIT", QT_TRANSLATE_NOOP("About", "reading machine files")},
    {"{fmt}", "MIT", QT_TRANSLATE_NOOP("About", "writing numbers")},
    {"tl::expected", "CC0-1.0", QT_TRANSLATE_NOOP("About", "values, or what went wrong")},
    {"CLI11", "BSD-3-Clause", QT_TRANSLATE_NOOP("About", "command line")},
};

QString licence_text() {
  QFile file(QStringLiteral(":/LICENSE"));
  return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

} // namespace

std::span<const UsedLibrary> used_libraries() {
  return libraries;
}

AboutWindow::AboutWindow(QWidget* parent) : QWidget(parent, Qt::Window) {
  setObjectName(QStringLiteral("about_window"));
  auto* layout = new QVBoxLayout(this);
  statement_ = plain_label({}, this);
  statement_->setObjectName(QStringLiteral("about_statement"));
  statement_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
  layout->addWidget(statement_);
  heading_ = plain_label({}, this);
  layout->addWidget(heading_);
  libraries_ = new QTableWidget(int(std::size(libraries)), 3, this);
  libraries_->setObjectName(QStringLiteral("about_libraries"));
  libraries_->setEditTriggers(QAbstractItemView::NoEditTriggers);
  libraries_->setTabKeyNavigation(false);
  libraries_->verticalHeader()->hide();
  libraries_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
  libraries_->horizontalHeader()->setStretchLastSection(true);
  layout->addWidget(libraries_, 2);
  licence_ = new QPlainTextEdit(this);
  licence_->setObjectName(QStringLiteral("about_licence"));
  licence_->setReadOnly(true);
  licence_->setTabChangesFocus(true);
  licence_->setFont(QFontDatabase::systemFont(QFontDatabase::FixedFont));
  licence_->hide();
  layout->addWidget(licence_, 3);
  auto* buttons = new QHBoxLayout;
  view_licence_ = new QPushButton(this);
  view_licence_->setObjectName(QStringLiteral("about_view_licence"));
  view_licence_->setCheckable(true);
  connect(view_licence_, &QPushButton::toggled, this, &AboutWindow::show_licence);
  close_ = new QPushButton(this);
  close_->setObjectName(QStringLiteral("about_close"));
  connect(close_, &QPushButton::clicked, this, &QWidget::hide);
  buttons->addWidget(view_licence_);
  buttons->addStretch(1);
  buttons->addWidget(close_);
  layout->addLayout(buttons);
  auto* leave = new QShortcut(QKeySequence::Cancel, this);
  connect(leave, &QShortcut::activated, this, &QWidget::hide);
  put_words();
  resize(76 * fontMetrics().averageCharWidth(), 34 * fontMetrics().height());
}

void AboutWindow::put_words() {
  const auto version = program_version();
  setWindowTitle(tr("About Feedwright"));
  statement_->setText(
      tr("Feedwright %1\n\nSizes the drive of every axis of a CNC router or mill before its parts "
         "are bought.\n\nIts figures help to choose; they are not an approval. Machines crush and "
         "cut: keep to your local rules, and ask somebody qualified where you are not.\n\nFree "
         "software under the GNU General Public License, version 3 or later; it comes without "
         "warranty.")
          .arg(text_of(version)));
  statement_->setAccessibleName(windowTitle());
  heading_->setText(tr("Made with:"));
  libraries_->setAccessibleName(tr("Libraries and their licences"));
  libraries_->setHorizontalHeaderLabels({tr("Library"), tr("Licence"), tr("Used for")});
  for (int row = 0; row < int(std::size(libraries)); ++row) {
    const UsedLibrary& library = libraries[row];
    const QString texts[] = {QString::fromLatin1(library.name),
                             QString::fromLatin1(library.licence),
                             QCoreApplication::translate("About", library.what_for)};
    for (int column = 0; column < 3; ++column) {
      libraries_->setItem(row, column, new QTableWidgetItem(texts[column]));
    }
  }
  libraries_->setCurrentCell(0, 0);
  licence_->setAccessibleName(tr("GNU General Public License, version 3"));
  view_licence_->setText(tr("View &licence"));
  close_->setText(tr("&Close"));
}

void AboutWindow::show_licence(bool shown) {
  if (shown && licence_->document()->isEmpty()) {
    licence_->setPlainText(licence_text());
  }
  licence_->setVisible(shown);
  libraries_->setVisible(!shown);
  heading_->setVisible(!shown);
}

void AboutWindow::changeEvent(QEvent* event) {
  if (event->type() == QEvent::LanguageChange) {
    put_words();
  }
  QWidget::changeEvent(event);
}

} // namespace feedwright
