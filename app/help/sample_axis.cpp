// SPDX-License-Identifier: GPL-3.0-or-later
#include "help/sample_axis.h"

#include "machine/machine_file.h"
#include "sizing/size_axis.h"
#include "text/text_of.h"

#include <QFile>

namespace feedwright {

namespace {

/// A belt as it comes is shorter than the travel of some samples.
void make_belt_long_enough(Axis& axis) {
  if (auto* haul = std::get_if<HaulingBelt>(&axis.drive)) {
    constexpr double there_and_back = 2.5;
    haul->belt_length = Positive<Length>::of(*axis.basics.travel * there_and_back);
  }
}

bool put_other_part(Machine& machine, std::size_t axis, const QString& other_part) {
  const QString place = other_part.section(QLatin1Char('='), 0, 0);
  const std::string type = other_part.section(QLatin1Char('='), 1).toStdString();
  for (const PartSlot slot : axis_slots) {
    if (text_of(slot_name(slot)) == place && set_part_type(machine, axis, slot, type)) {
      make_belt_long_enough(machine.axes[axis]);
      return true;
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

SampleAxis with_stiffnesses(SampleAxis sample) {
  Axis& axis = sample.machine.axes.at(sample.axis);
  if (auto* coupling = std::get_if<Coupling>(&axis.transmission)) {
    coupling->stiffness = Positive<TorsionalStiffness>::of(from_si<TorsionalStiffness>(200.0));
  }
  if (auto* screw = std::get_if<Screw>(&axis.drive)) {
    screw->nut_stiffness = Positive<Stiffness>::of(from_si<Stiffness>(150e6));
    screw->bearing_stiffness = Positive<Stiffness>::of(from_si<Stiffness>(60e6));
    screw->dynamic_rating = Positive<Force>::of(from_si<Force>(9000.0));
    screw->grade = LeadGrade::g7;
    screw->temperature_rise = NonNegative<Temperature>::of(from_si<Temperature>(3.0));
  }
  sample.results = size_axis(sample.machine, axis);
  return sample;
}

} // namespace feedwright
