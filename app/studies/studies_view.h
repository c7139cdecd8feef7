// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"
#include "studies/study_figure.h"

#include <QWidget>

#include <functional>

class QComboBox;
class QStackedLayout;
class QTabBar;

namespace feedwright {

class LengthenRow;
class MoveDistance;
class Prompts;
class StudyCanvas;
class WorkingView;

/// One study at a time behind a row of tabs: the plots, then the working of a result. Only the one
/// shown is computed.
class StudiesView : public QWidget {
  Q_OBJECT
public:
  explicit StudiesView(MachineDocument& document, QWidget* parent = nullptr);

  static int study_count();
  void show_study(int study);
  /// The study of what more length does, the keyboard where a length can be typed.
  void show_lengthening();
  int study() const;
  QString study_title(int study) const;
  StudyCanvas& canvas() { return *canvas_; }
  WorkingView& working() { return *working_; }
  /// Who asks for the path of a picture or of numbers, and says what went wrong.
  void set_prompts(std::function<Prompts&()> prompts) { prompts_ = std::move(prompts); }

public slots:
  void show_working(feedwright::ResultId result);
  /// The working of the result a limit is, without leaving a plot for it.
  void show_limit_working(feedwright::LimitId limit);

protected:
  void showEvent(QShowEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  QWidget* make_chooser();
  /// Tabs where all have room, else a box with the same entries.
  void fit_chooser();
  void refresh();
  void show_plot(int study);
  void save_picture();
  void save_numbers();
  void save(const QString& ending, const QByteArray& bytes);

  MachineDocument& document_;
  QTabBar* tabs_ = nullptr;
  QComboBox* box_ = nullptr;
  QStackedLayout* stack_ = nullptr;
  StudyCanvas* canvas_ = nullptr;
  MoveDistance* distance_ = nullptr;
  LengthenRow* longer_ = nullptr;
  WorkingView* working_ = nullptr;
  std::function<Prompts&()> prompts_;
};

} // namespace feedwright
