// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/axis_clip.h"

#include "document/machine_store.h"
#include "machine/machine_file.h"
#include "text/words.h"

#include <QCoreApplication>
#include <QMimeData>

namespace feedwright {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(AxisClip)

public:
  static QString nothing() { return tr("There is no axis on the clipboard."); }
  static QString no_axis() { return tr("The machine on the clipboard has no axis."); }
  static QString too_large() { return tr("What is on the clipboard is too large for a machine."); }
  static QString unreadable(const QString& why) {
    return tr("What is on the clipboard is no axis. %1").arg(why);
  }
};

} // namespace

std::unique_ptr<QMimeData> axis_clip(const Machine& machine, std::size_t axis) {
  Machine one = machine;
  one.axes = {machine.axes.at(axis)};
  one.story.clear();
  const std::string text = write_machine(one);
  auto clip = std::make_unique<QMimeData>();
  clip->setData(QLatin1String(axis_mime_type), QByteArray::fromStdString(text));
  clip->setText(QString::fromStdString(text));
  return clip;
}

tl::expected<std::vector<Axis>, QString> axes_in(const QMimeData& clip) {
  const QString type = QLatin1String(axis_mime_type);
  const std::string text =
      clip.hasFormat(type) ? clip.data(type).toStdString() : clip.text().toStdString();
  if (text.empty()) {
    return tl::unexpected(Words::nothing());
  }
  if (text.size() > largest_machine_file) {
    return tl::unexpected(Words::too_large());
  }
  auto machine = read_machine_as_typed(text);
  if (!machine) {
    return tl::unexpected(Words::unreadable(words::fault_text(machine.error().front())));
  }
  if (machine->axes.empty()) {
    return tl::unexpected(Words::no_axis());
  }
  return std::move(machine->axes);
}

} // namespace feedwright
