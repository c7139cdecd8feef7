// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "studies/typed_length.h"

#include <QHash>

namespace feedwright {

/// How far the move of the study goes: typed in any unit, kept for each axis while the window
/// lives, in no file. A tenth of the travel until something else is typed.
class MoveDistance : public TypedLength {
  Q_OBJECT
public:
  explicit MoveDistance(QWidget* parent = nullptr);

  /// `axis` tells the axes of all machines apart.
  void show_axis(const QString& axis, Length travel, const FileUnits& units);
  /// Above zero and within the travel; nothing typed, or nothing that can be used: the last that
  /// could, or nothing.
  std::optional<Length> distance() const;

signals:
  void changed();

private:
  struct Kept {
    QString text;
    std::optional<Length> read;
  };
  void take(const QString& text);
  void judge();

  QHash<QString, Kept> kept_;
  QString axis_;
  Length travel_{};
  FileUnits units_;
};

} // namespace feedwright
