// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Studies of machines as they stand in files.

#include "document/machine_document.h"
#include "studies/study_figure.h"
#include "support/machine_files.h"

#include <catch2/catch.hpp>

#include <string>
#include <utility>
#include <vector>

namespace feedwright::testing {

inline std::vector<std::pair<std::string, Machine>> many_machines() {
  std::vector<std::pair<std::string, Machine>> machines;
  for (const char* name : {"plank-router", "clock-mill", "sign-engraver"}) {
    machines.emplace_back(name, machine_in("/sample-machines/", name));
  }
  for (const char* name :
       {"belt-hauled", "looped-screws", "motors", "preloaded-pairs", "upright", "slaved-gantry"}) {
    machines.emplace_back(name, machine_in("/tests/machines/", name));
  }
  return machines;
}

inline StudyFigure figure_of(Study study, const Machine& machine, std::size_t axis = 0) {
  MachineDocument document(machine);
  REQUIRE(axis < document.results().size());
  return study_figure(study,
                      {document.machine(), axis, document.results()[axis], document.units()});
}

} // namespace feedwright::testing
