// SPDX-License-Identifier: GPL-3.0-or-later
#include "help/help_page_view.h"

#include "help/page_typography.h"
#include "help/pictures.h"
#include "window/style.h"

#include <QApplication>
#include <QMimeData>
#include <QResizeEvent>
#include <QScrollBar>
#include <QTextBlock>
#include <QTextTable>

#include <algorithm>
#include <cmath>

namespace feedwright {

HelpPageView::HelpPageView(QWidget* parent) : QTextBrowser(parent) {
  setObjectName(QStringLiteral("help_page"));
  setOpenLinks(false);
  setOpenExternalLinks(false);
  setUndoRedoEnabled(false);
  setFrameShape(QFrame::NoFrame);
  // Always there, so that pictures keep the width they were drawn for.
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
  document()->setDocumentMargin(2.0 * fontMetrics().averageCharWidth());
}

void HelpPageView::show_page(const QString& markdown) {
  markdown_ = markdown;
  words_.clear();
  setExtraSelections({});
  render();
  moveCursor(QTextCursor::Start);
  verticalScrollBar()->setValue(0);
}

void HelpPageView::mark_words(const QStringList& words) {
  words_ = words;
  mark_found();
  const auto found = extraSelections();
  if (!found.isEmpty()) {
    QTextCursor at = found.constFirst().cursor;
    at.setPosition(at.selectionStart());
    setTextCursor(at);
    ensureCursorVisible();
  }
}

void HelpPageView::set_larger_by(int points) {
  constexpr int most = 16;
  larger_by_ = std::clamp(points, -3, most);
  render();
}

/// Lines of some 70 letters are read with ease; a picture is no wider, and never cut off.
double HelpPageView::picture_width() const {
  const double room = viewport()->width() - 2.0 * document()->documentMargin() - 4.0;
  return std::floor(std::max(160.0, std::min(room, 74.0 * fontMetrics().averageCharWidth())));
}

QVariant HelpPageView::loadResource(int type, const QUrl& name) {
  if (type != QTextDocument::ImageResource) {
    return {};
  }
  PictureFrame frame;
  frame.look = Look::of(palette());
  frame.font = document()->defaultFont();
  frame.width = picture_width();
  frame.pixel_ratio = devicePixelRatioF();
  const auto picture = help_picture(name.toString(), frame);
  return picture ? QVariant(*picture) : QVariant();
}

void HelpPageView::render() {
  if (rendering_) {
    return;
  }
  rendering_ = true;
  const int at = verticalScrollBar()->value();
  QFont shown = QApplication::font();
  shown.setPointSizeF(std::max(6.0, shown.pointSizeF() + larger_by_));
  rendered_width_ = picture_width();
  document()->setDefaultFont(shown);
  // Emptied first: a document keeps the pictures it has asked for once.
  document()->clear();
  document()->setMarkdown(markdown_, QTextDocument::MarkdownDialectGitHub);
  set_page(*document());
  style_blocks();
  style_tables();
  mark_found();
  // A view that is first shown scrolls to its cursor, which the new text has pushed to the end.
  moveCursor(QTextCursor::Start);
  verticalScrollBar()->setValue(at);
  rendering_ = false;
}

/// Room between paragraphs, and headings in the drawing-board's weights.
void HelpPageView::style_blocks() {
  const Look look = Look::of(palette());
  const double line = QFontMetricsF(document()->defaultFont()).height();
  const double size = document()->defaultFont().pointSizeF();
  for (QTextBlock block = document()->begin(); block.isValid(); block = block.next()) {
    QTextCursor cursor(block);
    QTextBlockFormat format = block.blockFormat();
    const int level = format.headingLevel();
    // A picture is a letter of its line: more line height would be room below it.
    const bool picture = block.text().contains(QChar::ObjectReplacementCharacter);
    format.setLineHeight(picture ? 100.0 : 118.0, QTextBlockFormat::ProportionalHeight);
    const bool in_table = cursor.currentTable() != nullptr;
    const bool in_list = block.textList() != nullptr && block.next().textList() != nullptr;
    format.setTopMargin(level == 1 ? 0.2 * line : level > 1 ? 0.9 * line : 0.0);
    format.setBottomMargin(in_table ? 0.0 : in_list ? 0.15 * line : 0.5 * line);
    cursor.setBlockFormat(format);
    if (level > 0) {
      QTextCharFormat heading;
      heading.setFontPointSize(level == 1 ? 1.5 * size : 1.12 * size);
      heading.setFontWeight(QFont::DemiBold);
      heading.setForeground(look.ink);
      heading.clearProperty(QTextFormat::FontSizeAdjustment);
      cursor.select(QTextCursor::BlockUnderCursor);
      cursor.mergeCharFormat(heading);
    }
  }
}

void HelpPageView::style_tables() {
  const Look look = Look::of(palette());
  const double line = QFontMetricsF(document()->defaultFont()).height();
  for (QTextFrame* frame : document()->rootFrame()->childFrames()) {
    if (auto* table = qobject_cast<QTextTable*>(frame)) {
      QTextTableFormat format = table->format();
      format.setBorder(1.0);
      format.setBorderBrush(look.rule);
      format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
      format.setBorderCollapse(true);
      format.setCellPadding(0.25 * line);
      format.setBottomMargin(0.6 * line);
      format.setCellSpacing(0.0);
      table->setFormat(format);
    }
  }
}

void HelpPageView::mark_found() {
  const Look look = Look::of(palette());
  QList<QTextEdit::ExtraSelection> found;
  QTextCharFormat format;
  format.setBackground(look.accent);
  format.setForeground(look.paper);
  for (const QString& word : words_) {
    const QString set = as_set(word);
    for (QTextCursor at = document()->find(set); !at.isNull(); at = document()->find(set, at)) {
      found.append({at, format});
    }
  }
  std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) {
    return a.cursor.selectionStart() < b.cursor.selectionStart();
  });
  setExtraSelections(found);
}

/// What is copied is pasted into fields as well, whose reader knows no signs of typesetting.
QMimeData* HelpPageView::createMimeDataFromSelection() const {
  QMimeData* copied = QTextBrowser::createMimeDataFromSelection();
  copied->setText(as_written(copied->text()));
  return copied;
}

void HelpPageView::changeEvent(QEvent* event) {
  QTextBrowser::changeEvent(event);
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
    render();
  }
}

void HelpPageView::resizeEvent(QResizeEvent* event) {
  QTextBrowser::resizeEvent(event);
  if (std::abs(picture_width() - rendered_width_) > 1.0) {
    render();
  }
}

} // namespace feedwright
