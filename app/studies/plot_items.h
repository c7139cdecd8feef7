// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What words on a plot are made of.

#include <QColor>
#include <QFont>
#include <QSizeF>
#include <QStaticText>
#include <QString>
#include <qcustomplot.h>

#include <vector>

namespace feedwright {

/// An item that belongs to the axes of that rectangle.
template <class Item>
Item* item_on(QCustomPlot& plot, QCPAxisRect& rect);

/// Without room to the sides, so that its size is its text's.
QCPItemText* plain_text(QCustomPlot& plot, QCPAxisRect& rect, const QString& text,
                        const QColor& colour, const QFont& font);

/// How much of what is behind a word shows through it.
enum class Ground : std::uint8_t {
  lines,   ///< only the glyphs are cleared, and lines still show
  crossed, ///< nothing shows at the glyphs, for lines run through them
  covered  ///< and the paper reaches farther, over a hatching
};

/// With the paper's colour round its glyphs.
class HaloText : public QCPItemText {
public:
  HaloText(QCustomPlot* plot, const QColor& paper, Ground ground);
  void set_ground(Ground ground) { ground_ = ground; }

protected:
  void draw(QCPPainter* painter) override;

private:
  QColor paper_;
  Ground ground_;
  std::vector<QStaticText> glyphs_; ///< a line each
  QString of_text_;
  QFont of_font_;
};

HaloText* halo_text(QCustomPlot& plot, QCPAxisRect& rect, const QString& text, const QColor& colour,
                    const QFont& font, const QColor& paper, Ground ground);

/// A hairline from a word to what it names; not shown until it has its place.
QCPItemLine* leader_on(QCustomPlot& plot, QCPAxisRect& rect, const QColor& colour);

QSizeF size_of(const QCPItemText& item);
/// Of a text in that item's letters, in one line.
double width_of(const QCPItemText& item, const QString& text);

} // namespace feedwright
