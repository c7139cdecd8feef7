// SPDX-License-Identifier: GPL-3.0-or-later
#include "remedies/remedy_row.h"

#include "text/whole_quantities.h"
#include "text/words.h"
#include "window/style.h"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QPainter>
#include <QStyle>
#include <QToolTip>

#include <vector>

namespace feedwright {

namespace {

constexpr int across = 6; ///< between the frame and the text
constexpr int down = 3;
constexpr int wrapped = Qt::TextWordWrap | Qt::AlignLeading | Qt::AlignTop;

int height_of(const QFontMetrics& metrics, const QString& text, int width) {
  constexpr int any_height = 1 << 20;
  return text.isEmpty() ? 0 : metrics.boundingRect(0, 0, width, any_height, wrapped, text).height();
}

} // namespace

RemedyRow::RemedyRow(QWidget* parent) : QAbstractButton(parent) {
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setAttribute(Qt::WA_Hover);
}

void RemedyRow::show_text(RemedyText text) {
  text_ = std::move(text);
  setAccessibleName(text_.spoken);
  setAccessibleDescription(text_.details);
  updateGeometry();
  update();
}

int RemedyRow::text_left() const {
  return across + fontMetrics().horizontalAdvance(words::verdict_sign(Verdict::over)) +
         fontMetrics().horizontalAdvance(QLatin1Char(' ')) + across / 2;
}

std::vector<RemedyRow::Piece> RemedyRow::pieces() const {
  const Look look = Look::of(palette());
  return {{with_whole_quantities(text_.what), look.accent},
          {with_whole_quantities(text_.then), look.faint_ink},
          {with_whole_quantities(text_.trouble), look.over}};
}

int RemedyRow::heightForWidth(int width) const {
  const int room = std::max(1, width - text_left() - across);
  int height = 2 * down;
  for (const Piece& piece : pieces()) {
    height += height_of(fontMetrics(), piece.text, room);
  }
  return height;
}

QSize RemedyRow::sizeHint() const {
  const int width = 40 * fontMetrics().averageCharWidth();
  return {width, heightForWidth(width)};
}

QSize RemedyRow::minimumSizeHint() const {
  return {12 * fontMetrics().averageCharWidth(), 2 * fontMetrics().lineSpacing()};
}

void RemedyRow::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setLayoutDirection(layoutDirection());
  painter.setRenderHint(QPainter::Antialiasing);
  const Look look = Look::of(palette());
  const QRectF frame = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
  if (underMouse() || isDown()) {
    painter.setPen(QPen(look.rule, 1.0));
    painter.setBrush(look.paper);
    painter.drawRoundedRect(frame, 3.0, 3.0);
  }
  if (hasFocus()) {
    painter.setPen(QPen(look.accent, 1.0, Qt::DotLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(frame.adjusted(1.0, 1.0, -1.0, -1.0), 2.0, 2.0);
  }
  const auto mirrored = [this](const QRect& logical) {
    return QStyle::visualRect(layoutDirection(), rect(), logical);
  };
  const bool over = text_.verdict == Verdict::over;
  painter.setPen(over ? look.over : text_.verdict == Verdict::close ? look.close : look.clear);
  painter.drawText(mirrored({across, down, text_left(), fontMetrics().lineSpacing()}), wrapped,
                   words::verdict_sign(text_.verdict));
  QRect line(text_left(), down, std::max(1, width() - text_left() - across), 0);
  for (const Piece& piece : pieces()) {
    line.setHeight(height_of(fontMetrics(), piece.text, line.width()));
    painter.setPen(piece.colour);
    painter.drawText(mirrored(line), wrapped, piece.text);
    line.moveTop(line.bottom() + 1);
  }
}

void RemedyRow::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
  case Qt::Key_Return:
  case Qt::Key_Enter: click(); return;
  case Qt::Key_Down: emit neighbour_wanted(1); return;
  case Qt::Key_Up: emit neighbour_wanted(-1); return;
  default: QAbstractButton::keyPressEvent(event);
  }
}

bool RemedyRow::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    // Escaped, and only then given line ends: names of parts come from files.
    QString text = text_.details.toHtmlEscaped();
    text.replace(QLatin1Char('\n'), QStringLiteral("<br/>"));
    QToolTip::showText(help->globalPos(), QStringLiteral("<p>%1</p>").arg(text), this);
    return true;
  }
  if (event->type() == QEvent::FontChange || event->type() == QEvent::PaletteChange) {
    updateGeometry();
    update();
  }
  return QAbstractButton::event(event);
}

} // namespace feedwright
