// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/column_widths.h"

#include <algorithm>

namespace feedwright {

namespace {

using Want = double ColumnWants::*;

double sum(const std::vector<ColumnWants>& columns, Want want) {
  double made = 0.0;
  for (const ColumnWants& each : columns) {
    made += each.*want;
  }
  return made;
}

template <class F>
std::vector<double> of_each(const std::vector<ColumnWants>& columns, F width) {
  std::vector<double> made;
  made.reserve(columns.size());
  for (const ColumnWants& each : columns) {
    made.push_back(width(each));
  }
  return made;
}

/// So far from one to the other as lets all of them fill the room.
std::vector<double> between(double room, const std::vector<ColumnWants>& columns, Want low,
                            Want high) {
  const double taken = sum(columns, low);
  const double share = (room - taken) / std::max(1e-9, sum(columns, high) - taken);
  return of_each(columns, [&](const ColumnWants& each) {
    return each.*low + share * (each.*high - each.*low);
  });
}

} // namespace

std::vector<double> column_widths(double room, const std::vector<ColumnWants>& columns) {
  const auto count = double(std::max<std::size_t>(1, columns.size()));
  const double usual = room / count;
  const auto has_room = [&](const ColumnWants& each) { return each.wanted <= usual; };
  if (std::ranges::all_of(columns, has_room)) {
    return std::vector<double>(columns.size(), usual);
  }
  if (const double wanted = sum(columns, &ColumnWants::wanted); wanted <= room) {
    const double more = (room - wanted) / count;
    return of_each(columns, [&](const ColumnWants& each) { return each.wanted + more; });
  }
  if (sum(columns, &ColumnWants::named) <= room) {
    return between(room, columns, &ColumnWants::named, &ColumnWants::wanted);
  }
  const double least = sum(columns, &ColumnWants::least);
  if (least <= room) {
    return between(room, columns, &ColumnWants::least, &ColumnWants::named);
  }
  const double share = room / std::max(1e-9, least);
  return of_each(columns, [&](const ColumnWants& each) { return share * each.least; });
}

} // namespace feedwright
