// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QString>
#include <QStringList>

#include <vector>

class QCPItemLine;
class QCPItemRect;
class QCPItemText;

namespace feedwright {

/// What one column of parts that add up is drawn with.
struct StackColumn {
  /// A number, never cut, and what it is of, which may be broken or shortened.
  struct Word {
    QCPItemText* number;
    QCPItemText* name;
    QCPItemLine* leader;
    QString with_unit, without_unit, full;
    double at;     ///< on the scale
    double weight; ///< the least goes first where there is no room
    bool little;   ///< hardly to be seen in its column
    QRectF area = {};
  };
  struct Note {
    QCPItemText* item;
    QString full;
    QRectF area = {};
  };
  struct Part {
    QCPItemRect* item;
    double low, high;
  };
  struct Level {
    QCPItemLine* item;
    double at;
    QCPItemLine* reach = nullptr; ///< from the foot of the one part it measures
    double foot = 0.0;
  };

  QCPItemText* name;
  QStringList name_lines;
  std::vector<Part> parts;
  std::vector<Level> levels;
  std::vector<Word> words;
  std::vector<Note> notes;
};

} // namespace feedwright
