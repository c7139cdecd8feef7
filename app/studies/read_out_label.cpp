// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/read_out_label.h"

#include "studies/shown_sentence.h"
#include "text/whole_quantities.h"

#include <QCoreApplication>

#include <algorithm>

namespace feedwright {

namespace {

QString empty_hint() {
  return QCoreApplication::translate(
      "Studies",
      "Point at the plot, or press the arrow keys, to read it off. The wheel zooms while "
      "the plot has the keyboard or Ctrl is held, dragging pans, a double click or 0 "
      "resets, Ctrl+C copies picture and numbers.");
}

} // namespace

ReadOutLabel::ReadOutLabel(QWidget* holder) : QLabel(holder) {
  setTextFormat(Qt::PlainText);
  setWordWrap(true);
  setAlignment(Qt::AlignLeading | Qt::AlignTop);
  setForegroundRole(QPalette::PlaceholderText);
}

void ReadOutLabel::say(const QString& sentence) {
  sentence_ = said_ = sentence;
  reading_off_ = false;
  setAccessibleDescription(said_);
  fit();
}

void ReadOutLabel::read_off(const QString& sentence, const QString& read) {
  sentence_ = sentence;
  said_ = read;
  reading_off_ = true;
  setAccessibleDescription(said_);
  fit();
}

/// As many as the sentence takes, for half a number is a wrong one; and two for what is read off,
/// so that the plot stands still while one points at it, but one where the pane is low. Never so
/// many that the window must grow for them.
int ReadOutLabel::lines_to_read() const {
  constexpr int lines_to_one = 5;
  constexpr int to_read_off = 2;
  constexpr double most_of_height = 0.6;
  const QWidget& holder = *parentWidget();
  const int line = std::max(1, fontMetrics().lineSpacing());
  const int usual = std::clamp(holder.height() / (lines_to_one * line), 1, to_read_off);
  if (!holder.isVisible()) {
    return usual; // before it is laid out its width says nothing
  }
  const int sentence = lines_of_sentence(sentence_, font(), std::max(1, width()));
  return std::max(usual, std::min(sentence, int(most_of_height * holder.height() / line)));
}

void ReadOutLabel::fit() {
  const int lines = lines_to_read();
  setFixedHeight(lines * fontMetrics().lineSpacing() + 2);
  const QString shown = shown_sentence(said_, font(), std::max(1, width()), lines);
  if (text() != shown) {
    setText(shown);
  }
  QStringList tip;
  if (shown != with_whole_quantities(said_)) {
    tip << said_.toHtmlEscaped();
  }
  if (!reading_off_) {
    tip << empty_hint().toHtmlEscaped();
  }
  setToolTip(tip.isEmpty() ? QString()
                           : QStringLiteral("<p>%1</p>").arg(tip.join(QStringLiteral("</p><p>"))));
}

void ReadOutLabel::resizeEvent(QResizeEvent* event) {
  QLabel::resizeEvent(event);
  fit();
}

} // namespace feedwright
