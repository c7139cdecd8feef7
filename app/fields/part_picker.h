// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "parts/part_shelf.h"

#include <QString>
#include <QWidget>

class QComboBox;
class QLabel;
class QTreeView;

namespace feedwright {

/// What is typed to find a part, with sizes written alike: "16 x 10", "16*10", "16-10" and "16×10".
QString searched_words(const QString& text);
/// A part's name likewise, with the shorthand of its size: "16×10, rolled 1610".
QString findable_words(const QString& name);

/// Offers what the parts lists have for a place of the machine; typing narrows the offer.
class PartPicker : public QWidget {
  Q_OBJECT
public:
  PartPicker(const PartShelf& shelf, PartSlot slot, QWidget* parent);

  /// Whether there is anything to offer.
  bool has_parts() const;
  /// Offers what the shelf has now.
  void refill();

signals:
  void picked(const feedwright::ListedPart& part);

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void make_completer();
  void fill();
  void choose(int index);
  /// Says so where the lists have nothing of what is typed.
  void say_what_is_found();
  bool finds_something() const;
  bool take_key(int key);

  const PartShelf& shelf_;
  PartSlot slot_;
  QComboBox* box_ = nullptr;
  QTreeView* found_ = nullptr; ///< what fits the typed text
  QLabel* note_ = nullptr;
};

} // namespace feedwright
