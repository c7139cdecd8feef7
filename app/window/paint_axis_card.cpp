// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/axis_card.h"
#include "window/letters.h"
#include "window/style.h"

#include <QAbstractItemView>
#include <QPainter>

#include <algorithm>
#include <vector>

namespace feedwright {

namespace {

constexpr qreal margin = 6.0;
constexpr qreal padding = 8.0;
constexpr qreal bar_height = 6.0;

struct CardText {
  QString text;
  bool bold = false;
  int most_lines = 1;
  std::optional<Verdict> verdict; ///< whose colour it has
};

/// What a card says in words, from the top down.
std::vector<CardText> texts_of(const AxisCard& card) {
  constexpr int wrapped = 3;
  std::vector<CardText> texts{{.text = card.name, .bold = card.letter.isEmpty(), .verdict = {}}};
  if (!card.trouble.isEmpty()) {
    texts.push_back({card.trouble, true, wrapped, card.trouble_verdict});
  }
  const bool signed_line = !card.sign.isEmpty();
  texts.push_back({signed_line ? card.sign + QChar::Nbsp + card.governs : card.governs, false,
                   wrapped, card.verdict});
  if (!card.waiting.isEmpty()) {
    texts.push_back({card.waiting, true, wrapped, Verdict::close});
  }
  return texts;
}

/// The words of a card in lines: wrapped, and smaller only where a word alone is too long.
class CardLines {
public:
  CardLines(const AxisCard& card, const QFont& font, qreal width) {
    for (const CardText& text : texts_of(card)) {
      QFont used = fitted_to_words(text, font, width);
      const QString lines = cut_to_lines(text.text, used, int(width), text.most_lines);
      for (const QString& line : broken(lines, used, int(width))) {
        lines_.push_back({line, used, text.verdict});
      }
    }
  }

  struct Line {
    QString text;
    QFont font;
    std::optional<Verdict> verdict;
  };
  const std::vector<Line>& lines() const { return lines_; }

private:
  static QFont fitted_to_words(const CardText& text, QFont font, qreal width) {
    font.setBold(text.bold);
    if (text.most_lines == 1) {
      return font;
    }
    const auto fits = [&](const QFont& tried) {
      const QFontMetricsF metrics(tried);
      return std::ranges::all_of(text.text.split(QLatin1Char(' ')), [&](const QString& word) {
        return metrics.horizontalAdvance(word) < width;
      });
    };
    constexpr double step = 0.04;
    QFont used = font;
    for (double share = 1.0; !fits(used) && share > least_share(font); share -= step) {
      used = fitted(font, share);
    }
    return used;
  }

  std::vector<Line> lines_;
};

QFont letter_font(QFont font) {
  font.setPointSizeF(font.pointSizeF() * 2.0);
  font.setBold(true);
  return font;
}

constexpr qreal widest_letter = 60.0;

/// The room an axis' letter takes beside the words; none for the machine, which has no letter.
qreal letter_room(const AxisCard& card, const QFont& font) {
  if (card.letter.isEmpty()) {
    return 0.0;
  }
  const QFontMetricsF metrics(letter_font(font));
  const qreal wide = std::max(metrics.horizontalAdvance(QStringLiteral("X")),
                              metrics.horizontalAdvance(card.letter));
  return std::min(wide, widest_letter) + 10.0;
}

qreal line_height(const QFontMetrics& metrics) {
  return metrics.lineSpacing() + 2.0;
}

/// Paints one card from the top down.
class CardPainter {
public:
  CardPainter(QPainter& painter, const QStyleOptionViewItem& option, const AxisCard& card)
      : painter_(painter), option_(option), card_(card), look_(Look::of(option.palette)),
        area_(QRectF(option.rect).adjusted(margin, margin / 2.0, -margin, -margin / 2.0)) {}

  void paint() {
    frame();
    QRectF text = area_.adjusted(padding, padding - 2.0, -padding, -padding);
    if (!card_.letter.isEmpty()) {
      letter(text);
      text.setLeft(text.left() + letter_room(card_, option_.font));
    }
    const qreal height = line_height(option_.fontMetrics);
    qreal top = text.top();
    const CardLines words(card_, option_.font, text.width());
    for (const CardLines::Line& line : words.lines()) {
      write(QRectF(text.left(), top, text.width(), height), line);
      top += height;
    }
    if (!card_.letter.isEmpty()) {
      bar(area_.left() + padding, area_.right() - padding, top + 6.0);
      feeds(top + 6.0 + bar_height + 3.0, height);
    }
  }

private:
  bool selected() const { return (option_.state & QStyle::State_Selected) != 0; }

  void frame() {
    painter_.setRenderHint(QPainter::Antialiasing);
    painter_.setPen(QPen(selected() ? look_.ink : look_.rule, selected() ? 1.6 : 1.0));
    painter_.setBrush(selected() ? look_.paper : look_.panel);
    painter_.drawRoundedRect(area_, 3.0, 3.0);
    if ((option_.state & QStyle::State_HasFocus) != 0) {
      painter_.setPen(QPen(look_.accent, 1.0, Qt::DotLine));
      painter_.setBrush(Qt::NoBrush);
      painter_.drawRoundedRect(area_.adjusted(3.0, 3.0, -3.0, -3.0), 2.0, 2.0);
    }
  }

  void letter(const QRectF& text) {
    const QFont large = letter_font(option_.font);
    painter_.setFont(large);
    painter_.setPen(look_.ink);
    painter_.drawText(
        QRectF(text.left(), text.top(), widest_letter, 2.0 * line_height(option_.fontMetrics)),
        Qt::AlignLeft | Qt::AlignVCenter,
        QFontMetricsF(large).elidedText(card_.letter, Qt::ElideRight, widest_letter));
  }

  void write(const QRectF& rect, const CardLines::Line& line) {
    painter_.setFont(line.font);
    painter_.setPen(line.verdict == Verdict::over    ? look_.over
                    : line.verdict == Verdict::close ? look_.close
                                                     : look_.ink);
    painter_.drawText(
        rect, Qt::AlignLeft | Qt::AlignVCenter,
        QFontMetricsF(line.font).elidedText(line.text, Qt::ElideRight, rect.width() + 1.0));
  }

  void bar(qreal left, qreal right, qreal top) {
    const qreal width = right - left;
    painter_.setPen(QPen(look_.rule, 1.0));
    painter_.setBrush(look_.paper);
    painter_.drawRoundedRect(QRectF(left, top, width, bar_height), 2.0, 2.0);
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(card_.verdict == Verdict::over ? look_.over : look_.bar);
    painter_.drawRoundedRect(QRectF(left, top, width * card_.share, bar_height), 2.0, 2.0);
    if (card_.wanted_share) {
      const qreal x = left + width * *card_.wanted_share;
      painter_.setPen(QPen(look_.accent, 2.0));
      painter_.drawLine(QPointF(x, top - 3.0), QPointF(x, top + bar_height + 3.0));
    }
  }

  void feeds(qreal top, qreal height) {
    const QRectF rect(area_.left() + padding, top, area_.width() - 2.0 * padding, height);
    QFont plain = option_.font;
    QFont bold = option_.font;
    bold.setBold(true);
    // Large letters are made smaller rather than let one figure run over the other.
    const qreal needed = QFontMetricsF(bold).horizontalAdvance(card_.reached) +
                         QFontMetricsF(plain).horizontalAdvance(card_.wanted) + padding;
    if (needed > rect.width() && plain.pointSizeF() > 0.0) {
      plain.setPointSizeF(plain.pointSizeF() * rect.width() / needed);
      bold.setPointSizeF(plain.pointSizeF());
    }
    painter_.setFont(bold);
    painter_.setPen(look_.ink);
    painter_.drawText(rect, Qt::AlignLeft | Qt::AlignVCenter, card_.reached);
    painter_.setFont(plain);
    painter_.setPen(look_.accent);
    painter_.drawText(rect, Qt::AlignRight | Qt::AlignVCenter, card_.wanted);
  }

  QPainter& painter_;
  const QStyleOptionViewItem& option_;
  const AxisCard& card_;
  Look look_;
  QRectF area_;
};

} // namespace

void AxisCardDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
  QStyleOptionViewItem full = option;
  initStyleOption(&full, index);
  painter->save();
  CardPainter(*painter, full, index.data(Qt::UserRole).value<AxisCard>()).paint();
  painter->restore();
}

QSize AxisCardDelegate::sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const {
  constexpr int least_width = 160;
  const auto card = index.data(Qt::UserRole).value<AxisCard>();
  const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
  // In the width it is painted in, which a narrow window makes less than it wants.
  const int width = view != nullptr ? view->viewport()->width() : least_width;
  constexpr qreal least_room = 20.0;
  const qreal room =
      std::max(least_room, width - 2.0 * (margin + padding) - letter_room(card, option.font));
  const auto lines = double(CardLines(card, option.font, room).lines().size());
  const qreal height = line_height(option.fontMetrics);
  const qreal text = card.letter.isEmpty()
                         ? lines * height
                         : (std::max(lines, 2.0) + 1.0) * height + bar_height + 9.0;
  return {least_width, int(text + 2.0 * padding + margin)};
}

} // namespace feedwright
