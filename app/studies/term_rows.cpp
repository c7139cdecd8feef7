// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/term_rows.h"

#include "limits/number_text.h"
#include "text/text_of.h"
#include "text/words.h"

#include <QCoreApplication>

#include <cmath>

namespace feedwright {

namespace {

/// "−2 %": by how much a result moves when a figure grows by one per cent.
QString percent(double share) {
  const QString size = number_text(std::abs(share), 2);
  if (size == QLatin1String("0") || std::abs(share) < 0.005) {
    return QStringLiteral("0 %");
  }
  return (share < 0.0 ? QStringLiteral("−") : QStringLiteral("+")) + size + QStringLiteral(" %");
}

class RowMaker {
  Q_DECLARE_TR_FUNCTIONS(Working)

public:
  static QString field_of_part(const InputRef& input) {
    const auto slot = static_cast<PartSlot>(input.slot);
    return tr("%1 (%2)", "field (part)")
        .arg(words::field_name(slot, input.member), words::part_name(slot));
  }
  static QString computed() { return tr("computed"); }
  static QString fixed() { return tr("fixed"); }
};

} // namespace

TermRow term_row(const WrittenTerm& term) {
  TermRow row;
  row.symbol = text_of(term.symbol);
  row.value = text_of(term.value);
  row.input = term.input;
  row.result = term.result;
  if (term.input) {
    row.about = RowMaker::field_of_part(*term.input);
    row.origin = words::origin_name(term.origin);
  } else if (term.result) {
    row.about = words::result_name(*term.result);
    row.origin = RowMaker::computed();
  } else {
    row.about = words::constant_name(term.symbol);
    row.origin = RowMaker::fixed();
  }
  if (term.share) {
    row.passed_on = percent(*term.share);
  }
  return row;
}

TermRow result_row(ResultId id, const AxisResults& results, const FileUnits& units) {
  TermRow row;
  const ResultDescriptor& about = descriptor(id);
  row.symbol = text_of(about.symbol);
  if (const auto value = about.get(results)) {
    row.value = words::quantity(*value, units.unit_of(value->kind, about.unit).symbol);
  }
  row.about = words::result_name(id);
  row.origin = RowMaker::computed();
  row.result = id;
  return row;
}

TermRow input_row(const InputRef& input, std::optional<double> share,
                  const MachineDocument& document) {
  TermRow row;
  const auto slot = static_cast<PartSlot>(input.slot);
  row.input = input;
  row.about = RowMaker::field_of_part(input);
  if (const auto field =
          field_of(document.machine(), document.selection().axis, slot, input.member)) {
    row.symbol = text_of(field->info.symbol);
    row.value = words::field_text(*field);
    row.origin = words::origin_name(field->note.origin);
  }
  if (share) {
    row.passed_on = percent(*share);
  }
  return row;
}

} // namespace feedwright
