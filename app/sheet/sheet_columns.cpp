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

/// How many items fit; at least one, and a heading only with the row below it.
std::size_t fitting(std::span<const Item> items, qreal room) {
  std::size_t count = 0;
  for (qreal used = 0.0; count < items.size() && used + items[count].height <= room; ++count) {
    used += items[count].height;
  }
  if (count > 1 && count < items.size() && items[count - 1].heading) {
    --count;
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
    const qreal room = std::min(pages.room(), balanced);
    const std::span<const Item> left = rest.first(fitting(rest, room));
    rest = rest.subspan(left.size());
    const std::span<const Item> right = rest.first(rest.empty() ? 0 : fitting(rest, pages.room()));
    rest = rest.subspan(right.size());
    place_column(pages, table, left, pages.body().left(), width);
    place_column(pages, table, right, pages.body().left() + width + between, width);
    pages.skip(std::max(height_of(left), height_of(right)));
  }
}

} // namespace feedwright::sheet
