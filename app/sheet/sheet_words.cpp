// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/sheet_words.h"

#include "text/listed_names.h"
#include "text/machine_words.h"
#include "text/printed_words.h"
#include "text/text_of.h"
#include "text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace feedwright::sheet {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Sheet)

public:
  static QString purchase(PurchaseKind kind) {
    switch (kind) {
    case PurchaseKind::motor: return tr("Motor");
    case PurchaseKind::coupling: return tr("Coupling");
    case PurchaseKind::belt: return tr("Synchronous belt");
    case PurchaseKind::pulley: return tr("Belt pulley");
    case PurchaseKind::screw: return tr("Screw with nut");
    case PurchaseKind::roller: return tr("Smooth roller");
    case PurchaseKind::fixed_bearing: return tr("Fixed end bearing");
    case PurchaseKind::support_bearing: return tr("Supporting end bearing");
    case PurchaseKind::guide_blocks: return tr("Guide block");
    case PurchaseKind::brake: return tr("Holding brake");
    case PurchaseKind::supply: return tr("Supply");
    }
    return {};
  }

  static QString piece(const PurchasePiece& piece) {
    const FieldView& field = piece.field;
    const QString value = words::field_value(field);
    const std::string_view member = field.info.member;
    if (member == "motor_pulley_teeth" || member == "screw_pulley_teeth" ||
        member == "pulley_teeth" || member == "teeth") {
      return tr("%1 teeth").arg(value);
    }
    if (member == "belt_teeth") {
      return tr("%1 belt teeth").arg(value);
    }
    if (const auto* choice = std::get_if<std::string>(&field.value)) {
      return field.info.type == FieldType::choice ? words::choice_name(member, *choice) : value;
    }
    if (member == "diameter") {
      return tr("Ø %1").arg(value);
    }
    return tr("%1 %2", "name of a figure, figure with unit")
        .arg(words::field_name(piece.slot, member), value);
  }

  static QString for_screw(const FieldView& diameter) {
    return tr("for a screw of %1").arg(words::field_value(diameter));
  }

  /// What is bought by the name of a list must not be taken for it where a figure differs, nor what
  /// stands there only to be computed with for something chosen.
  static QString origin(const Purchase& purchase, const QString& source) {
    // A screw's lengths are cut to order; what joins parts is of several lists.
    const auto any = [&](Origin origin) {
      return std::ranges::any_of(purchase.pieces, [origin](const PurchasePiece& piece) {
        const std::string_view member = piece.field.info.member;
        return piece.field.note.origin == origin && member != "span" && member != "overall_length";
      });
    };
    const bool of_one_list =
        purchase.kind == PurchaseKind::screw || purchase.kind == PurchaseKind::motor;
    if (of_one_list && !any(Origin::entered) && !any(Origin::part_list)) {
      return tr("not chosen yet: the program's own figures", "of a part to buy");
    }
    return of_one_list && any(Origin::entered) && any(Origin::part_list)
               ? tr("changed from %1", "name of a part in a list").arg(source)
               : source;
  }
  /// Cut to the length between its bearings it would be too short.
  static QString with_ends(const Purchase& purchase, const QString& text) {
    const bool to_bearings = purchase.kind == PurchaseKind::screw &&
                             std::ranges::any_of(purchase.pieces, [](const PurchasePiece& piece) {
                               return std::string_view(piece.field.info.member) == "span";
                             });
    return to_bearings ? tr("%1, plus its ends", "screw with its length between bearings").arg(text)
                       : text;
  }
  static QString open() { return tr("open"); }
  static QString more_than(const QString& value) { return tr("more than %1").arg(value); }
  static QString typed_as(const QString& value, const QString& typed) {
    return tr("%1, typed as %2", "value, the sum it was worked out from").arg(value, typed);
  }
  static QString boundless() { return tr("over 1000"); }
  static QString key() {
    return tr("Margin: what is allowed over what is wanted. %1 from 1.2 up, %2 from 1, %3 below 1; "
              "%4: a target or an input is missing.")
        .arg(verdict_text(Verdict::clear), verdict_text(Verdict::close),
             verdict_text(Verdict::over), verdict_text(Verdict::open));
  }
  static QString care() {
    return tr("These figures help to choose parts; they are not an approval. Machines crush and "
              "cut: follow the local rules and ask competent help where safety is at stake.");
  }
};

} // namespace

QString purchase_name(const Purchase& purchase) {
  return purchase.kind == PurchaseKind::motor ? words::part_type_title(purchase.type)
                                              : Words::purchase(purchase.kind);
}

QString pieces_text(const std::vector<PurchasePiece>& pieces) {
  QStringList texts;
  for (const PurchasePiece& piece : pieces) {
    if (const QString text = Words::piece(piece); !text.isEmpty()) {
      texts.append(text);
    }
  }
  return texts.join(QStringLiteral(", "));
}

QString purchase_text(const Purchase& purchase) {
  const bool bearing = purchase.kind == PurchaseKind::fixed_bearing ||
                       purchase.kind == PurchaseKind::support_bearing;
  QString text = bearing && !purchase.pieces.empty()
                     ? Words::for_screw(purchase.pieces.front().field)
                     : Words::with_ends(purchase, pieces_text(purchase.pieces));
  if (const QString source =
          Words::origin(purchase, words::listed_source(text_of(purchase.source)));
      !source.isEmpty()) {
    text += text.isEmpty() ? source : QStringLiteral(" (%1)").arg(source);
  }
  return text;
}

QString value_or_open(const FileUnits& units, const std::optional<AnyQuantity>& value,
                      std::string_view usual_unit) {
  return value ? words::printed_quantity(*value, units.unit_of(value->kind, usual_unit).symbol)
               : Words::open();
}

QString life_or_value(const FileUnits& units, const std::optional<AnyQuantity>& value,
                      std::string_view usual_unit, const std::optional<AnyQuantity>& wanted) {
  constexpr double longest = 100000.0 * 3600.0;
  const auto beyond = [](const std::optional<AnyQuantity>& life) {
    return life && life->kind == Kind::time && life->si > longest;
  };
  return beyond(value) && !beyond(wanted)
             ? Words::more_than(words::printed_quantity({Kind::time, longest}, "h"))
             : value_or_open(units, value, usual_unit);
}

QString input_text(const FieldView& field) {
  const QString value = words::field_value(field);
  const QString typed = words::worked_out_from(field);
  return typed.isEmpty() ? value : Words::typed_as(value, typed);
}

QString open_word() {
  return Words::open();
}

QString margin_text(double margin) {
  constexpr double shown_up_to = 1000.0;
  return margin > shown_up_to
             ? Words::boundless()
             : words::printed_quantity({Kind::number, margin}, "", words::margin_digits(margin));
}

QString verdict_text(Verdict verdict) {
  return words::verdict_sign(verdict) + QLatin1Char(' ') + words::verdict_word(verdict);
}

QString verdict_key() {
  return Words::key();
}
QString care_text() {
  return Words::care();
}

} // namespace feedwright::sheet
