// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/axes_panel.h"

#include "document/axis_clip.h"
#include "sizing/concerns.h"
#include "window/axis_card.h"

#include <QListWidget>
#include <QMimeData>
#include <QMouseEvent>
#include <QPushButton>
#include <QVBoxLayout>

namespace feedwright {

namespace {

/// The cards, of which those of axes can be dragged onto another window.
class AxesList : public QListWidget {
public:
  AxesList(const MachineDocument& document, QWidget* parent)
      : QListWidget(parent), document_(document) {
    setDragEnabled(true);
    setDragDropMode(QAbstractItemView::DragOnly);
    setDefaultDropAction(Qt::CopyAction);
  }

protected:
  /// Beside the cards there is nothing to choose: what is shown stays marked.
  void mousePressEvent(QMouseEvent* event) override {
    if (itemAt(event->pos()) != nullptr) {
      QListWidget::mousePressEvent(event);
    }
  }
  /// The narrower, the higher the cards are.
  void resizeEvent(QResizeEvent* event) override {
    QListWidget::resizeEvent(event);
    scheduleDelayedItemsLayout();
  }
  QStringList mimeTypes() const override { return {QLatin1String(axis_mime_type)}; }
  QMimeData* mimeData(const QList<QListWidgetItem*>& items) const override {
    const auto axis = items.isEmpty() ? -1 : row(items.constFirst()) - 1;
    const bool is_axis = axis >= 0 && axis < static_cast<int>(document_.machine().axes.size());
    return is_axis ? axis_clip(document_.machine(), static_cast<std::size_t>(axis)).release()
                   : nullptr;
  }

private:
  const MachineDocument& document_;
};

} // namespace

AxesPanel::AxesPanel(MachineDocument& document, QWidget* parent)
    : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("axes_panel"));
  list_ = new AxesList(document_, this);
  list_->setObjectName(QStringLiteral("axes_list"));
  list_->setAccessibleName(tr("Machine and axes"));
  list_->setFrameShape(QFrame::NoFrame);
  list_->setItemDelegate(new AxisCardDelegate(list_));
  list_->setResizeMode(QListView::Adjust);
  list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list_->viewport()->setBackgroundRole(QPalette::Window);
  list_->viewport()->setAutoFillBackground(true);
  connect(list_, &QListWidget::currentRowChanged, this, &AxesPanel::choose);
  auto* add = new QPushButton(tr("Add axis"), this);
  add->setObjectName(QStringLiteral("add_axis_button"));
  connect(add, &QPushButton::clicked, this, &AxesPanel::add_axis_wanted);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 4, 0, 8);
  layout->addWidget(list_, 1);
  auto* below = new QHBoxLayout;
  below->setContentsMargins(8, 0, 8, 0);
  below->addWidget(add);
  below->addStretch();
  layout->addLayout(below);
  connect(&document_, &MachineDocument::changed, this, &AxesPanel::refresh);
  connect(&document_, &MachineDocument::selection_changed, this, &AxesPanel::take_selection);
  connect(&document_.pending(), &PendingTexts::changed, this, &AxesPanel::refresh);
  refresh();
}

void AxesPanel::refresh() {
  filling_ = true;
  const Machine& machine = document_.machine();
  const auto& results = document_.results();
  const int rows = static_cast<int>(machine.axes.size()) + 1;
  while (list_->count() > rows) {
    delete list_->takeItem(list_->count() - 1);
  }
  while (list_->count() < rows) {
    list_->addItem(new QListWidgetItem);
  }
  std::optional<MachineResults> together;
  std::size_t to_settle = 0;
  if (!results.empty()) {
    together = size_machine(machine, results);
    const auto waits = [](const Concern& concern) { return !concern.answer.has_value(); };
    to_settle = static_cast<std::size_t>(
        std::ranges::count_if(concerns_of(machine, results, *together).list, waits));
  }
  for (int row = 0; row < rows; ++row) {
    const auto axis = static_cast<std::size_t>(row) - 1;
    AxisCard card = row == 0 ? machine_card(machine, to_settle, together ? &*together : nullptr)
                             : axis_card(machine.axes[axis], document_.results_of(axis));
    const bool typed_waits =
        document_.pending().any_on(row == 0 ? std::nullopt : std::optional(axis));
    if (typed_waits) {
      card.waiting = tr("✎ typed text waits");
    }
    QListWidgetItem* item = list_->item(row);
    if (item->data(Qt::UserRole).value<AxisCard>() == card) {
      continue;
    }
    item->setData(Qt::UserRole, QVariant::fromValue(card));
    item->setData(Qt::AccessibleTextRole, card.spoken());
    item->setData(Qt::ToolTipRole, QStringLiteral("<p>%1</p>").arg(card.spoken().toHtmlEscaped()));
  }
  filling_ = false;
  take_selection();
}

void AxesPanel::take_selection() {
  filling_ = true;
  const Selection& at = document_.selection();
  list_->setCurrentRow(at.machine ? 0 : static_cast<int>(at.axis) + 1);
  filling_ = false;
}

void AxesPanel::choose(int row) {
  if (filling_ || row < 0) {
    return;
  }
  const Selection& at = document_.selection();
  if (row == 0) {
    document_.select({at.axis, PartSlot::supply, {}, true});
    return;
  }
  const bool machine = of_machine(at.slot);
  document_.select({static_cast<std::size_t>(row) - 1, machine ? PartSlot::drive : at.slot, {}});
}

} // namespace feedwright
