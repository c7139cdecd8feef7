// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <span>

class QLabel;
class QPlainTextEdit;
class QPushButton;
class QTableWidget;

namespace feedwright {

/// A library the program is made with, and the licence it is used under.
struct UsedLibrary {
  const char* name;
  const char* licence;
  const char* what_for; ///< to be translated in the context "About"
};
std::span<const UsedLibrary> used_libraries();

/// Version, licence and libraries, beside the window.
class AboutWindow : public QWidget {
  Q_OBJECT
public:
  explicit AboutWindow(QWidget* parent = nullptr);

protected:
  void changeEvent(QEvent* event) override;

private:
  void put_words();
  void show_licence(bool shown);

  QLabel* statement_ = nullptr;
  QLabel* heading_ = nullptr;
  QTableWidget* libraries_ = nullptr;
  QPlainTextEdit* licence_ = nullptr;
  QPushButton* view_licence_ = nullptr;
  QPushButton* close_ = nullptr;
};

} // namespace feedwright
