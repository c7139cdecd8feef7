// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "overview/concern_row.h"

#include <QWidget>

#include <map>
#include <vector>

class QLabel;
class QVBoxLayout;

namespace feedwright {

/// Everything that deserves care over all axes: what waits for an answer, then what has one.
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
  void arrange(const std::vector<ConcernRow*>& waiting, const std::vector<ConcernRow*>& answered);
  void drop_unused(const std::vector<ConcernRow*>& used);

  MachineDocument& document_;
  QVBoxLayout* layout_ = nullptr;
  QLabel* waiting_head_ = nullptr;
  QLabel* answered_head_ = nullptr;
  std::map<QString, ConcernRow*> rows_;   ///< kept, so that what is being written stays
  std::map<TypedAt, ConcernRow*> places_; ///< where answers are written
  std::vector<ConcernRow*> waiting_;
  std::vector<ConcernRow*> answered_;
};

} // namespace feedwright
