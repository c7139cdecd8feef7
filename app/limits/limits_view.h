// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/machine_document.h"

#include <QStringList>
#include <QWidget>

#include <array>
#include <optional>
#include <vector>

class QBoxLayout;
class QLabel;
class QToolButton;
class QVBoxLayout;

namespace feedwright {

class GraveCautions;
class ChangingLine;
class LadderWidget;

/// Every limit of the selected axis on its scale, and what deserves care. Feed and force stand side
/// by side where there is room. A bar is a door to the part and field it comes from, and to its
/// working; the one gone through stays marked.
class LimitsView : public QWidget {
  Q_OBJECT
public:
  explicit LimitsView(MachineDocument& document, QWidget* parent = nullptr);

signals:
  void limit_chosen(feedwright::LimitId id);

protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void lay_out();
  QBoxLayout* make_line();
  void refresh();
  void show_faults();
  void clear_faults();
  void show_waiting();
  void add_row(const QString& name, const QString& text, const std::optional<Selection>& there);
  void show_results(const AxisResults& results);
  void tell_cautions(const QStringList& subjects);
  void bring_cautions_in_sight();
  void choose(LimitId id);
  void say(const QString& sentence);
  void fit_to_width();

  /// Plain sentences one below the other; labels are kept and used again.
  struct Notes {
    QString name;
    QVBoxLayout* layout = nullptr;
    std::vector<QLabel*> labels = {};
  };
  void show_notes(Notes& notes, const QStringList& texts);

  MachineDocument& document_;
  std::array<LadderWidget*, 3> ladders_{};
  QBoxLayout* pair_ = nullptr; ///< feed and force
  QLabel* not_computed_ = nullptr;
  ChangingLine* sentence_ = nullptr; ///< on the row pointed at, chosen or governing
  QToolButton* to_cautions_ = nullptr;
  int cautions_ = 0; ///< ordinary ones, the first of the notes
  QString usual_sentence_;
  std::optional<LimitId> chosen_;
  GraveCautions* grave_ = nullptr; ///< above the ladders: not to be missed
  QVBoxLayout* faults_ = nullptr;
  std::vector<QWidget*> fault_rows_;             ///< of faults, or of texts that wait
  Notes ordinary_{QStringLiteral("finding_%1")}; ///< below the ladders
};

} // namespace feedwright
