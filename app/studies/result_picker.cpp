// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/result_picker.h"

#include "fields/wheel_guard.h"
#include "text/words.h"
#include "text/working_words.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QLineEdit>
#include <QStandardItemModel>

namespace feedwright {

ResultPicker::ResultPicker(QWidget* parent) : QComboBox(parent) {
  setAccessibleName(tr("Result"));
  setEditable(true);
  setInsertPolicy(QComboBox::NoInsert);
  setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  setMinimumContentsLength(16);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setMaxVisibleItems(24);
  completer()->setFilterMode(Qt::MatchContains);
  completer()->setCompletionMode(QCompleter::PopupCompletion);
  setToolTip(tr("Type part of a name to find a result."));
  lineEdit()->setAccessibleName(accessibleName());
  new WheelGuard(this);
  connect(this, &QComboBox::activated, this, [this](int index) {
    if (const QVariant id = itemData(index); id.isValid()) {
      emit picked(static_cast<ResultId>(id.toInt()));
    }
  });
  connect(lineEdit(), &QLineEdit::returnPressed, this, &ResultPicker::take_first_match);
  connect(lineEdit(), &QLineEdit::editingFinished, this, [this] {
    // What was not taken does not stay.
    setEditText(itemText(currentIndex()));
    show_start();
  });
}

void ResultPicker::show_start() {
  lineEdit()->setCursorPosition(0);
}

void ResultPicker::take_first_match() {
  const QString typed = lineEdit()->text().trimmed();
  if (typed.isEmpty() || typed == itemText(currentIndex())) {
    return;
  }
  for (int i = 0; i < count(); ++i) {
    if (itemData(i).isValid() && itemText(i).contains(typed, Qt::CaseInsensitive)) {
      setCurrentIndex(i);
      emit picked(static_cast<ResultId>(itemData(i).toInt()));
      return;
    }
  }
}

void ResultPicker::add_group(const QString& title) {
  addItem(title);
  auto* rows = qobject_cast<QStandardItemModel*>(model());
  if (rows != nullptr) {
    QStandardItem* head = rows->item(count() - 1);
    head->setFlags(Qt::NoItemFlags);
    QFont bold = font();
    bold.setBold(true);
    head->setFont(bold);
  }
}

void ResultPicker::show_results(const AxisResults& results, ResultId chosen) {
  std::vector<ResultId> shown;
  for (const ResultDescriptor& result : result_descriptors()) {
    if (result.get(results) || result.id == chosen) {
      shown.push_back(result.id);
    }
  }
  // Not while somebody is choosing from the list.
  if (shown != shown_ && !view()->isVisible()) {
    shown_ = std::move(shown);
    clear();
    QString group;
    for (const ResultId id : shown_) {
      if (const QString title = words::result_group(id); title != group) {
        group = title;
        add_group(title);
      }
      addItem(words::result_name(id), static_cast<int>(id));
    }
  }
  const QString before = currentText();
  setCurrentIndex(findData(static_cast<int>(chosen)));
  if (currentText() != before || !lineEdit()->hasFocus()) {
    show_start();
  }
}

} // namespace feedwright
