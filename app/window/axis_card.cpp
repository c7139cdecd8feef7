// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/axis_card.h"

#include "choosing/remedies.h"
#include "limits/number_text.h"
#include "sizing/finding_weight.h"
#include "text/words.h"
#include "window/style.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace feedwright {

namespace {

constexpr qreal margin = 6.0;
constexpr qreal padding = 8.0;
constexpr qreal bar_height = 6.0;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(AxesPanel)

public:
  static QString axes(std::size_t count) {
    return tr("%n axis(es)", nullptr, static_cast<int>(count));
  }
  static QString to_settle(std::size_t count) {
    return tr("%n to settle", nullptr, static_cast<int>(count));
  }
  static QString unnamed() { return tr("Machine without a name"); }
  static QString supply_over() { return tr("supply over"); }
  static QString bus_over() { return tr("bus over"); }
  static QString faulty() { return tr("not computed"); }
  static QString governs(const QString& limit) { return tr("%1 governs").arg(limit); }
  static QString nothing_governs() { return tr("no feed limit known"); }
  static QString wanted(const QString& feed) { return tr("wanted %1").arg(feed); }
  static QString axis(const QString& letter) { return tr("Axis %1").arg(letter); }
  static QString over(const QString& limit) { return tr("%1 over", "limit").arg(limit); }
  static QString close(const QString& limit) { return tr("%1 close", "limit").arg(limit); }
  static QString and_more(const QString& first, int others) {
    return others == 0 ? first : tr("%1 and %n more", "trouble of an axis", others).arg(first);
  }
  /// What may hurt somebody, in as few words as a card holds; the caution says it in full.
  static QString danger(FindingCode code) {
    switch (code) {
    case FindingCode::axis_can_fall: return tr("can fall");
    case FindingCode::whip_beyond_critical: return tr("would whip");
    case FindingCode::hold_beyond_motor: return tr("can slip at rest");
    case FindingCode::near_whip: return tr("runs near whip");
    case FindingCode::nut_near_shaft_frequency: return tr("screw may shake");
    case FindingCode::bus_over_limit: return tr("braking lifts the supply");
    case FindingCode::stall_at_rest: return tr("stalls from rest");
    default: return tr("danger");
    }
  }
};

/// What is worse than, or as bad as, what governs the feed, and so must not hide behind it.
void set_trouble(AxisCard& card, const AxisResults& results) {
  std::vector<FindingCode> grave;
  for (const Finding& finding : results.findings) {
    if (is_grave(finding.code)) {
      grave.push_back(finding.code);
    }
  }
  std::ranges::sort(grave, {}, weight_of);
  std::vector<LimitId> limits;
  for (const LimitId id : limits_in_trouble(results)) {
    const bool over = results.limit(id).verdict == Verdict::over;
    if (id != results.governing && (over || card.verdict != Verdict::over)) {
      limits.push_back(id);
    }
  }
  if (grave.empty() && limits.empty()) {
    return;
  }
  const bool over = !grave.empty() || results.limit(limits.front()).verdict == Verdict::over;
  const QString name = limits.empty() ? QString() : words::limit_name(limits.front());
  const QString first = !grave.empty() ? Words::danger(grave.front())
                        : over         ? Words::over(name)
                                       : Words::close(name);
  card.trouble_verdict = over ? Verdict::over : Verdict::close;
  card.trouble = words::verdict_sign(card.trouble_verdict) + QLatin1Char(' ') +
                 Words::and_more(first, static_cast<int>(grave.size() + limits.size()) - 1);
}

/// Feeds on the card's bar: the wanted one stands at two thirds.
void set_shares(AxisCard& card, double reached, const std::optional<double>& wanted) {
  constexpr double wanted_at = 2.0 / 3.0;
  if (wanted && *wanted > 0.0) {
    card.wanted_share = wanted_at;
    card.share = std::clamp(reached / *wanted * wanted_at, 0.0, 1.0);
  } else {
    card.share = reached > 0.0 ? 1.0 : 0.0;
  }
}

} // namespace

QString AxisCard::spoken() const {
  QStringList parts{letter.isEmpty() ? name : Words::axis(letter)};
  for (const QString& part : {letter.isEmpty() ? QString() : name, trouble, governs, reached,
                              wanted, words::verdict_word(verdict)}) {
    if (!part.isEmpty()) {
      parts << part;
    }
  }
  return parts.join(QStringLiteral(", "));
}

AxisCard machine_card(const Machine& machine, std::size_t to_settle,
                      const MachineResults* together) {
  AxisCard card;
  card.name = machine.name.empty() ? Words::unnamed() : QString::fromStdString(machine.name);
  QStringList parts{Words::axes(machine.axes.size())};
  const auto is_over = [together](MachineLimitId id) {
    return together != nullptr && together->limit(id).verdict == Verdict::over;
  };
  if (is_over(MachineLimitId::supply_power) || is_over(MachineLimitId::bus_voltage)) {
    card.verdict = Verdict::over;
    card.sign = words::verdict_sign(Verdict::over);
    parts << (is_over(MachineLimitId::supply_power) ? Words::supply_over() : Words::bus_over());
  } else {
    parts << words::quantity(any(*machine.supply.voltage), "V", 3);
  }
  parts << (together != nullptr ? Words::to_settle(to_settle) : Words::faulty());
  card.governs = parts.join(QStringLiteral(" · "));
  return card;
}

AxisCard axis_card(const Axis& axis, const AxisResults* results) {
  AxisCard card;
  card.letter = QString::fromStdString(axis.basics.letter);
  card.name = QString::fromStdString(axis.basics.name);
  if (axis.targets.feed) {
    // The unit stands beside it, at the feed that is reached.
    const double wanted = number_in(any(**axis.targets.feed), "m/min");
    card.wanted = Words::wanted(number_text(wanted, 3));
  }
  if (results == nullptr) {
    card.governs = Words::faulty();
    return card;
  }
  if (!results->governing) {
    card.governs = Words::nothing_governs();
    set_trouble(card, *results);
    return card;
  }
  const Limit& limit = results->limit(*results->governing);
  card.verdict = limit.verdict;
  card.sign = words::verdict_sign(limit.verdict);
  card.governs = Words::governs(words::limit_name(limit.id));
  card.reached = words::quantity(*limit.reached, "m/min", 3);
  set_shares(card, limit.reached->si,
             limit.wanted ? std::optional(limit.wanted->si) : std::nullopt);
  set_trouble(card, *results);
  return card;
}

namespace {

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
      text.setLeft(text.left() + letter(text));
    }
    const qreal line = option_.fontMetrics.lineSpacing() + 2.0;
    write(QRectF(text.left(), text.top(), text.width(), line), card_.name, card_.letter.isEmpty());
    if (!card_.trouble.isEmpty()) {
      text.setTop(text.top() + line);
      trouble(QRectF(text.left(), text.top(), text.width(), line));
    }
    const QString governs =
        card_.sign.isEmpty() ? card_.governs : card_.sign + QLatin1Char(' ') + card_.governs;
    write(QRectF(text.left(), text.top() + line, text.width(), line), governs, false,
          card_.verdict == Verdict::over ? look_.over : look_.ink);
    if (!card_.letter.isEmpty()) {
      bar(area_.left() + padding, area_.right() - padding, text.top() + 2.0 * line + 6.0);
      feeds(text.top() + 2.0 * line + 6.0 + bar_height + 3.0, line);
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

  /// The axis' letter; gives the room it took.
  qreal letter(const QRectF& text) {
    QFont large = option_.font;
    large.setPointSizeF(large.pointSizeF() * 2.0);
    large.setBold(true);
    painter_.setFont(large);
    painter_.setPen(look_.ink);
    const QFontMetricsF metrics(large);
    const QString shown = metrics.elidedText(card_.letter, Qt::ElideRight, 60.0);
    const qreal width =
        std::max(metrics.horizontalAdvance(QStringLiteral("X")), metrics.horizontalAdvance(shown));
    painter_.drawText(
        QRectF(text.left(), text.top(), width, 2.0 * (option_.fontMetrics.lineSpacing() + 2.0)),
        Qt::AlignLeft | Qt::AlignVCenter, shown);
    return width + 10.0;
  }

  void write(const QRectF& rect, const QString& text, bool bold, const QColor& colour) {
    QFont font = option_.font;
    font.setBold(bold);
    painter_.setFont(font);
    painter_.setPen(colour);
    painter_.drawText(rect, Qt::AlignLeft | Qt::AlignVCenter,
                      QFontMetricsF(font).elidedText(text, Qt::ElideRight, rect.width()));
  }
  void write(const QRectF& rect, const QString& text, bool bold) {
    write(rect, text, bold, look_.ink);
  }

  /// In smaller letters rather than cut.
  void trouble(const QRectF& rect) {
    constexpr qreal least = 0.7;
    QFont font = option_.font;
    font.setBold(true);
    const qreal needed = QFontMetricsF(font).horizontalAdvance(card_.trouble);
    if (needed > rect.width() && font.pointSizeF() > 0.0) {
      font.setPointSizeF(font.pointSizeF() * std::max(least, rect.width() / needed));
    }
    painter_.setFont(font);
    painter_.setPen(card_.trouble_verdict == Verdict::over ? look_.over : look_.ink);
    painter_.drawText(
        rect, Qt::AlignLeft | Qt::AlignVCenter,
        QFontMetricsF(font).elidedText(card_.trouble, Qt::ElideRight, rect.width() + 1.0));
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
  const auto card = index.data(Qt::UserRole).value<AxisCard>();
  const bool machine = card.letter.isEmpty();
  const qreal line = option.fontMetrics.lineSpacing() + 2.0;
  const qreal lines = card.trouble.isEmpty() ? 3.0 : 4.0;
  const qreal text = machine ? 2.0 * line : lines * line + bar_height + 9.0;
  return {160, int(text + 2.0 * padding + margin)};
}

} // namespace feedwright
