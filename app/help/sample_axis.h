// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/machine.h"
#include "sizing/results.h"

#include <QString>

#include <optional>

namespace feedwright {

/// An axis of a sample machine, sized.
struct SampleAxis {
  Machine machine;
  std::size_t axis = 0;
  AxisResults results;
};

/// Nothing if there is no such sample or axis. `other_part` ("drive=hauling_belt") puts a part of
/// another type in its place first; empty leaves the sample as it is.
std::optional<SampleAxis> sample_axis(const QString& sample, std::size_t axis,
                                      const QString& other_part = {});

/// The same with what samples leave open for the errors (stiffnesses, grade, heat) at an invented
/// but ordinary value, sized anew.
SampleAxis with_stiffnesses(SampleAxis sample);

} // namespace feedwright
