// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The parts lists there are: those that come with the program and the user's own.

#include "machine/belt_choices.h"
#include "machine/parts_list.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace feedwright {

struct ShelvedPart {
  ListedPart part;
  bool own = false; ///< from the user's folder
};

struct PartShelf {
  std::vector<ShelvedPart> parts;
  std::vector<StockBelts> stock_belts;
  QStringList troubles; ///< lists that cannot be read, a sentence each
};

/// Where the user's own lists lie: feedwright/parts in the desktop's data folder.
QString own_parts_folder();

/// Reads all lists, the user's after the program's; what cannot be read is left out and said.
PartShelf read_part_shelf();

} // namespace feedwright
