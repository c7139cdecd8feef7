// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/quantity_edit.h"

#include "text/text_of.h"
#include "text/words.h"
#include "units/read_quantity.h"
#include "window/style.h"

#include <QAction>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QPointer>
#include <QRegularExpression>

namespace feedwright {

namespace {

constexpr int longest_quantity = 256;

constexpr int wedge_size = 16;

/// A small wedge that points down.
QPixmap wedge(const QColor& colour, qreal ratio) {
  QPixmap pixmap(QSize(wedge_size, wedge_size) * ratio);
  pixmap.setDevicePixelRatio(ratio);
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(colour, 1.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.drawPolyline(QPolygonF({{4.5, 6.5}, {8.0, 10.0}, {11.5, 6.5}}));
  return pixmap;
}

bool opens_menu(const QKeyEvent& key) {
  return (key.key() == Qt::Key_F4 && key.modifiers() == Qt::NoModifier) ||
         (key.key() == Qt::Key_Down && (key.modifiers() & Qt::AltModifier) != 0);
}

} // namespace

QuantityEdit::QuantityEdit(Kind kind, std::string_view unit, QWidget* parent)
    : EntryEdit(parent), kind_(kind), unit_(unit) {
  setMaxLength(longest_quantity);
  setAlignment(Qt::AlignRight);
  mark_ = new QAction(this);
  mark_->setText(tr("In other units"));
  mark_->setToolTip(tr("The value in each unit (Alt+Down)"));
  addAction(mark_, QLineEdit::TrailingPosition);
  connect(mark_, &QAction::triggered, this, &QuantityEdit::open_menu);
  draw_mark();
}

void QuantityEdit::draw_mark() {
  QIcon icon;
  const QColor colour = Look::of(palette()).faint_ink;
  for (const qreal ratio : {1.0, 2.0, 3.0}) {
    icon.addPixmap(wedge(colour, ratio));
  }
  mark_->setIcon(icon);
}

void QuantityEdit::show_quantity(const QString& text, const std::optional<AnyQuantity>& value) {
  value_ = value;
  show_taken(text);
}

QString QuantityEdit::unit_of(const QString& text) const {
  const auto read =
      read_quantity(text.toStdString(), kind_, find_unit(kind_, std::string_view(unit_)));
  return read && read->unit != nullptr ? text_of(read->unit->symbol) : QString();
}

/// More digits than anybody reads are kept, but shown only to who edits them.
QString QuantityEdit::at_rest(const QString& text) const {
  static const QRegularExpression number(QStringLiteral("(\\d+)[.,]\\d+"));
  constexpr qsizetype most_characters = 10;
  constexpr qsizetype shown_characters = 7;
  const auto match = number.match(text);
  if (!match.hasMatch() || match.capturedLength() <= most_characters) {
    return text;
  }
  const qsizetype kept = std::max(shown_characters, match.capturedLength(1) + 2);
  return text.left(match.capturedStart() + kept) + QChar(0x2026) + text.mid(match.capturedEnd());
}

/// Nothing where what was typed, once taken, made the form anew without this editor.
QMenu* QuantityEdit::made_menu() {
  const QPointer<QuantityEdit> alive(this);
  hand_in();
  if (alive == nullptr) {
    return nullptr;
  }
  auto* menu = new QMenu(this);
  menu->setAccessibleName(tr("The value in each unit"));
  fill_menu(*menu);
  add_offers(*menu);
  return menu;
}

void QuantityEdit::open_menu() {
  QMenu* menu = made_menu();
  if (menu == nullptr) {
    return;
  }
  menu->setAttribute(Qt::WA_DeleteOnClose);
  const bool mirrored = layoutDirection() == Qt::RightToLeft;
  const int across = mirrored ? 0 : std::max(0, width() - menu->sizeHint().width());
  menu->popup(mapToGlobal(QPoint(across, height())));
  if (menu->activeAction() == nullptr && !menu->actions().isEmpty()) {
    menu->setActiveAction(menu->actions().constFirst());
  }
}

void QuantityEdit::fill_menu(QMenu& menu) {
  if (!value_ || holds_typed()) {
    return;
  }
  if (!menu.isEmpty()) {
    menu.addSeparator();
  }
  const QString present = unit_of(taken());
  for (const Unit& unit : units_of(kind_)) {
    constexpr int digits = 6;
    QAction* action = menu.addAction(
        QString::fromStdString(write_quantity(*value_, unit, digits, words::decimal_mark())));
    action->setObjectName(QStringLiteral("in ") + text_of(unit.symbol));
    action->setCheckable(true);
    action->setChecked(text_of(unit.symbol) == present);
    // When the menu is gone: what is chosen may make the form anew, and this editor with it.
    connect(
        action, &QAction::triggered, this, [this, &unit] { choose(unit); }, Qt::QueuedConnection);
  }
}

void QuantityEdit::choose(const Unit& unit) {
  if (!value_) {
    return;
  }
  if (const auto text = write_in(*value_, unit, words::decimal_mark())) {
    emit committed(QString::fromStdString(*text), true);
  }
}

void QuantityEdit::keyPressEvent(QKeyEvent* event) {
  if (opens_menu(*event)) {
    open_menu();
    return;
  }
  EntryEdit::keyPressEvent(event);
}

bool QuantityEdit::event(QEvent* event) {
  // The keys are the field's own, whatever shortcut the window has for them.
  if (event->type() == QEvent::ShortcutOverride) {
    const auto& key = *static_cast<QKeyEvent*>(event);
    if (opens_menu(key) || (key.key() == Qt::Key_Escape && holds_typed())) {
      event->accept();
      return true;
    }
  }
  return EntryEdit::event(event);
}

void QuantityEdit::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) {
    draw_mark();
  }
  EntryEdit::changeEvent(event);
}

} // namespace feedwright
