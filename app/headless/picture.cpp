// SPDX-License-Identifier: GPL-3.0-or-later
#include "headless/picture.h"

#include "document/machine_document.h"
#include "help/help_window.h"
#include "studies/studies_view.h"
#include "window/main_window.h"
#include "window/style.h"

#include <QApplication>
#include <QBuffer>
#include <QPixmap>

namespace feedwright::headless {

namespace {

/// What is computed after the first painting asks for a layout, and that for another painting.
void settle() {
  constexpr int rounds = 4;
  for (int round = 0; round < rounds; ++round) {
    QApplication::processEvents();
  }
}

QByteArray as_png(const QPixmap& picture) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  picture.save(&buffer, "PNG");
  return bytes;
}

} // namespace

std::size_t study_count() {
  return static_cast<std::size_t>(StudiesView::study_count());
}

std::optional<QByteArray> window_picture(const Machine& machine, const SheetIdentity& identity,
                                         const Command& command) {
  if (command.study.value_or(0) >= study_count()) {
    return std::nullopt;
  }
  apply_theme(command.dark ? Theme::dark : Theme::light);
  if (command.font_size) {
    QFont font = QApplication::font();
    font.setPointSizeF(*command.font_size);
    QApplication::setFont(font);
  }
  auto document = std::make_unique<MachineDocument>(machine);
  document->set_file(QString::fromStdString(command.file.string()),
                     QString::fromStdString(identity.fingerprint));
  MachineDocument& shown = *document;
  MainWindow window(std::move(document));
  window.resize(command.size);
  if (command.axis) {
    window.show_axis(*command.axis);
  }
  if (command.machine) {
    shown.select({.slot = PartSlot::supply, .member = {}, .machine = true});
  }
  if (command.study) {
    window.show_study(static_cast<int>(*command.study));
  }
  window.show();
  settle();
  if (command.page.empty()) {
    return as_png(window.grab());
  }
  window.show_help(QString::fromStdString(command.page));
  auto& help = *window.findChild<HelpWindow*>();
  help.resize(command.size);
  settle();
  return as_png(help.grab());
}

} // namespace feedwright::headless
