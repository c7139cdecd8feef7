// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_columns.h"

#include <QPainter>

#include <algorithm>
#include <span>

namespace feedwright::sheet {

namespace {

constexpr qreal between = 22.0;
constexpr int text_size = body_size;

/// A row or a heading, with its height.
struct Item {
  bool heading = false;
  QString title;
  Row row;
  qreal height = 0.0;
};

std::vector<Item> items_of(const Table& table, const std::vector<TableGroup>& groups, qreal width) {
  std::vector<Item> items;
  for (const TableGroup& group : groups) {
    items.push_back({true, group.title, {}, 20.0});
    for (const Row& row : group.rows) {
      items.push_back({false, {}, row, row_height(table, row, width)});
    }
  }
  return items;
}

qreal height_of(std::span<const Item> items) {
  qreal height = 0.0;
  for (const Item& item : items) {
    height += item.height;
  }
  return height;
}

/// A group of a few rows is not torn.
constexpr std::ptrdiff_t few_rows = 8;

/// Whether a column may end above this item, which is no heading.
bool may_tear_above(std::span<const Item> items, std::size_t at) {
  const auto here = items.begin() + static_cast<std::ptrdiff_t>(at);
  const auto is_heading = [](const Item& item) { return item.heading; };
  const auto end = std::find_if(here, items.end(), is_heading);
  const auto above = std::find_if(std::make_reverse_iterator(here), items.rend(), is_heading);
  const auto rows_above = above - std::make_reverse_iterator(here);
  // Of a group gone on with from a column before, all that is left is at hand.
  const bool begins_here = above != items.rend();
  const auto rows_below = end - here;
  return !(here - 1)->row.leads && rows_below > 1 && (!begins_here || rows_above > 1) &&
         (!begins_here || rows_above + rows_below > few_rows);
}

/// Whether a column may end above this item.
bool may_break_above(std::span<const Item> items, std::size_t at) {
  return at >= items.size() || items[at].heading ||
         (!items[at - 1].heading && may_tear_above(items, at));
}

/// How many items make a column: up to the last place within the wanted height where it may end,
/// else up to the first there is in the room; none if there is none.
std::size_t fitting(std::span<const Item> items, qreal wanted, qreal room) {
  std::size_t count = 0;
  qreal used = 0.0;
  for (std::size_t at = 1; at <= items.size(); ++at) {
    used += items[at - 1].height;
    if (used > room || (used > wanted && count > 0)) {
      break;
    }
    if (may_break_above(items, at)) {
      count = at;
    }
  }
  return count;
}

/// What has no place to end on a whole page ends where the page does; one item at least.
std::size_t filling(std::span<const Item> items, qreal room) {
  std::size_t count = 0;
  for (qreal used = 0.0; count < items.size() && used + items[count].height <= room; ++count) {
    used += items[count].height;
  }
  return std::max<std::size_t>(count, 1);
}

void place_column(Pages& pages, const Table& table, std::span<const Item> items, qreal left,
                  qreal width) {
  qreal y = pages.y();
  for (const Item& item : items) {
    const QRectF rect(left, y, width, item.height);
    if (item.heading) {
      pages.place(
          {rect,
           [title = item.title](QPainter& painter, const QRectF& place) {
             paint_text(painter, place.adjusted(0.0, 5.0, 0.0, 0.0), title, {body_size, true});
           },
           {}});
    } else {
      pages.place({rect,
                   [table, row = item.row](QPainter& painter, const QRectF& place) {
                     paint_row(painter, place, table, row);
                   },
                   {}});
    }
    y += item.height;
  }
}

} // namespace

void add_two_columns(Pages& pages, const std::vector<Column>& head,
                     const std::vector<TableGroup>& groups) {
  const Table table{head, {}, text_size};
  const qreal width = (pages.body().width() - between) / 2.0;
  const std::vector<Item> all = items_of(table, groups, width);
  std::span<const Item> rest(all);
  while (!rest.empty()) {
    pages.ensure(60.0);
    const qreal balanced = height_of(rest) / 2.0 + 16.0;
    std::size_t count = fitting(rest, balanced, pages.room());
    if (height_of(rest.subspan(count)) > pages.room()) {
      // There will be a further page: none of this one is left empty.
      count = fitting(rest, pages.room(), pages.room());
    }
    if (count == 0 && !pages.is_fresh()) {
      pages.ensure(pages.body().height());
      continue;
    }
    count = count > 0 ? count : filling(rest, pages.room());
    const std::span<const Item> left = rest.first(count);
    rest = rest.subspan(count);
    const std::span<const Item> right = rest.first(fitting(rest, pages.room(), pages.room()));
    rest = rest.subspan(right.size());
    place_column(pages, table, left, pages.body().left(), width);
    place_column(pages, table, right, pages.body().left() + width + between, width);
    pages.skip(std::max(height_of(left), height_of(right)));
  }
}

} // namespace feedwright::sheet
