// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/fault_place.h"

#include "text/words.h"

#include <QCoreApplication>
#include <QStringList>

namespace feedwright::words {

namespace {

struct PlaceWords {
  Q_DECLARE_TR_FUNCTIONS(Words)

public:
  static QString axis(const QString& letter) { return tr("Axis %1", "letter").arg(letter); }
  static QString with_place(const QString& place, const QString& sentence) {
    return tr("%1: %2", "place of a fault, sentence").arg(place, sentence);
  }
};

} // namespace

QString fault_in_machine(const Fault& fault, const Machine& machine) {
  QString sentence = fault_sentence(fault);
  if (!fault.slot) {
    return sentence;
  }
  QStringList place;
  if (!of_machine(*fault.slot) && fault.axis < machine.axes.size()) {
    place << PlaceWords::axis(QString::fromStdString(machine.axes[fault.axis].basics.letter));
  }
  if (*fault.slot != PartSlot::axis) {
    place << part_name(*fault.slot);
  }
  if (const QString field = field_name(*fault.slot, fault.member); !field.isEmpty()) {
    place << field;
  }
  return place.isEmpty() ? sentence
                         : PlaceWords::with_place(place.join(QStringLiteral(", ")), sentence);
}

} // namespace feedwright::words
