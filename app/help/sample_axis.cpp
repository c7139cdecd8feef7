// SPDX-License-Identifier: GPL-3.0-or-later
#include "help/sample_axis.h"

#include "machine/machine_file.h"
#include "sizing/size_axis.h"
#include "text/text_of.h"

#include <QFile>

namespace feedwright {

namespace {

bool put_other_part(Machine& machine, std::size_t axis, const QString& other_part) {
  const QString place = other_part.section(QLatin1Char('='), 0, 0);
  const std::string type = other_part.section(QLatin1Char('='), 1).toStdString();
  for (const PartSlot slot : axis_slots) {
    if (text_of(slot_name(slot)) == place) {
      return set_part_type(machine, axis, slot, type);
    }
  }
  return false;
}

} // namespace

std::optional<SampleAxis> sample_axis(const QString& sample, std::size_t axis,
                                      const QString& other_part) {
  QFile file(QStringLiteral(":/sample-machines/%1.feedwright").arg(sample));
  if (!file.open(QIODevice::ReadOnly)) {
    return std::nullopt;
  }
  auto machine = read_machine(file.readAll().toStdString());
  if (!machine || axis >= machine->axes.size() ||
      (!other_part.isEmpty() && !put_other_part(*machine, axis, other_part))) {
    return std::nullopt;
  }
  AxisResults results = size_axis(*machine, machine->axes[axis]);
  return SampleAxis{*std::move(machine), axis, std::move(results)};
}

} // namespace feedwright
