// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "studies/study_figure.h"

#include <QWidget>

class QStackedLayout;
class QTabBar;

namespace feedwright {

class StudyCanvas;
class WorkingView;

/// One study at a time behind a row of tabs: the four plots, then the working of a result. Only
/// the one shown is computed.
class StudiesView : public QWidget {
  Q_OBJECT
public:
  explicit StudiesView(MachineDocument& document, QWidget* parent = nullptr);

  static int study_count();
  void show_study(int study);
  int study() const;
  QString study_title(int study) const;
  StudyCanvas& canvas() { return *canvas_; }
  WorkingView& working() { return *working_; }

public slots:
  void show_working(feedwright::ResultId result);
  /// The working of the result a limit is, without leaving a plot for it.
  void show_limit_working(feedwright::LimitId limit);

protected:
  void showEvent(QShowEvent* event) override;

private:
  void refresh();

  MachineDocument& document_;
  QTabBar* tabs_ = nullptr;
  QStackedLayout* stack_ = nullptr;
  StudyCanvas* canvas_ = nullptr;
  WorkingView* working_ = nullptr;
};

} // namespace feedwright
