// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "overview/concern_group.h"
#include "overview/concern_row.h"

#include <QWidget>

#include <map>
#include <vector>

class QLabel;
class QVBoxLayout;

namespace feedwright {

/// Everything that deserves care over all axes: what waits for an answer, then what has one.
/// Waiting cautions that say the same stand under one heading.
class ConcernList : public QWidget {
  Q_OBJECT
public:
  explicit ConcernList(MachineDocument& document, QWidget* parent = nullptr);

  void show_concerns(const Concerns& concerns);
  /// Puts the keyboard into the answer that is being written there; nothing if none is.
  QWidget* write_on(const TypedAt& place);

signals:
  void door_chosen(const feedwright::Selection& selection,
                   const std::optional<feedwright::LimitId>& limit);

private:
  ConcernRow* row_of(const QString& key);
  std::vector<ConcernRow*> show_lost();
  /// Rows that stand together; a heading over them where they are several.
  struct Entry {
    QString key; ///< of the heading
    std::vector<ConcernRow*> rows = {};
    ConcernGroup* heading = nullptr;
    bool operator==(const Entry&) const = default;
  };
  std::vector<Entry> gathered(const std::vector<ConcernRow*>& waiting);
  void show_headings(std::vector<Entry>& entries);
  void unfold(const ConcernRow& row);
  ConcernGroup* heading_of(const QString& key);
  void arrange(const std::vector<Entry>& waiting, const std::vector<ConcernRow*>& answered);
  void drop_unused(const std::vector<ConcernRow*>& used);

  MachineDocument& document_;
  QVBoxLayout* layout_ = nullptr;
  QLabel* waiting_head_ = nullptr;
  QLabel* answered_head_ = nullptr;
  std::map<QString, ConcernRow*> rows_;   ///< kept, so that what is being written stays
  std::map<TypedAt, ConcernRow*> places_; ///< where answers are written
  std::map<QString, ConcernGroup*> headings_;
  std::vector<Entry> waiting_;
  std::vector<ConcernRow*> answered_;
};

} // namespace feedwright
