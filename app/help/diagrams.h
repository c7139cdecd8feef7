// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Small explanatory diagrams. Shapes and figures come from core, words from the program's own.

#include "help/diagram_board.h"

#include <QStringList>

namespace feedwright {

struct Diagram {
  const char* name;
  double lines; ///< height in lines of text
  void (*paint)(DiagramBoard&);
};

std::span<const Diagram> screw_diagrams();
std::span<const Diagram> drive_diagrams();
std::span<const Diagram> result_diagrams();

/// nullptr if there is none of that name.
const Diagram* diagram_named(const QString& name);
QStringList diagram_names();

} // namespace feedwright
