// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>

namespace feedwright {

/// The line of text under a study: its sentence, or what is read off under the cursor. The sentence
/// is whole while the holder has half its height to spare for it; what has no room is in the tool
/// tip.
class ReadOutLabel : public QLabel {
  Q_OBJECT
public:
  explicit ReadOutLabel(QWidget* holder);

  /// Says the study's sentence.
  void say(const QString& sentence);
  /// Says what is read off from the study of that sentence.
  void read_off(const QString& sentence, const QString& read);
  /// In full.
  const QString& said() const { return said_; }
  /// The holder has another height.
  void fit();

protected:
  void resizeEvent(QResizeEvent* event) override;

private:
  int lines_to_read() const;

  QString sentence_;
  QString said_;
  bool reading_off_ = false;
};

} // namespace feedwright
