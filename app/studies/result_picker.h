// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/results.h"

#include <QComboBox>

namespace feedwright {

/// All results there are of an axis, by what they are about; typing part of a name finds it.
class ResultPicker : public QComboBox {
  Q_OBJECT
public:
  explicit ResultPicker(QWidget* parent = nullptr);

  /// Those that have a value; `chosen` stands among them even if it is open.
  void show_results(const AxisResults& results, ResultId chosen);

signals:
  void picked(feedwright::ResultId id);

private:
  void add_group(const QString& title);
  void take_first_match();
  /// Of a name too long for the box its beginning says more than its end.
  void show_start();

  std::vector<ResultId> shown_;
};

} // namespace feedwright
