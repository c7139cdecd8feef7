// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QLineEdit>

namespace feedwright {

/// Where part of a field's name is typed to find it. Ctrl+F comes here from anywhere in the window
/// while it is in sight, Escape empties it.
class FieldFilter : public QLineEdit {
  Q_DECLARE_TR_FUNCTIONS(feedwright::FieldsPanel)

public:
  explicit FieldFilter(QWidget* parent);

  QString wanted() const { return text().trimmed(); }

protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

private:
  void fit_placeholder();
};

} // namespace feedwright
