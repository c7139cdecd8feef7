// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "machine/machine.h"
#include "sizing/size_machine.h"

#include <QStyledItemDelegate>

#include <optional>

namespace feedwright {

/// What an entry of the list of axes says. The first entry is the machine's own, without a letter.
struct AxisCard {
  QString letter;
  QString name;
  QString trouble;    ///< the worst besides what governs: "▲ inertia match over and 2 more"
  QString sign;       ///< of the governing limit's verdict
  QString governs;    ///< "whip governs"
  QString waiting;    ///< that a text typed in a field is not taken
  QString reached;    ///< "4.5 m/min"
  QString wanted;     ///< "wanted 6"
  double share = 0.0; ///< of the bar that is reached
  std::optional<double> wanted_share;
  Verdict verdict = Verdict::open;         ///< of the governing limit
  Verdict trouble_verdict = Verdict::open; ///< grave findings count as over

  QString spoken() const; ///< the whole as a sentence
  friend bool operator==(const AxisCard&, const AxisCard&) = default;
};

/// `to_settle` counts the concerns that wait for an answer; `together` is nullptr while nothing is
/// computed.
AxisCard machine_card(const Machine& machine, std::size_t to_settle,
                      const MachineResults* together);
/// `results` is nullptr while nothing is computed.
AxisCard axis_card(const Axis& axis, const AxisResults* results);

/// Paints the cards of a list; the card is the item's Qt::UserRole.
class AxisCardDelegate : public QStyledItemDelegate {
  Q_OBJECT
public:
  using QStyledItemDelegate::QStyledItemDelegate;
  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override;
  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

} // namespace feedwright

Q_DECLARE_METATYPE(feedwright::AxisCard)
