// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/overview_content.h"

#include "overview/overview_cells.h"
#include "sheet/sheet_content.h"
#include "sheet/sheet_words.h"
#include "text/machine_words.h"
#include "text/words.h"

#include <QCoreApplication>

namespace feedwright {

using namespace overview;

namespace {

class MachineLimits {
  Q_DECLARE_TR_FUNCTIONS(MachineView)

public:
  explicit MachineLimits(const SizedMachine& sized) : sized_(sized) {}

  FigureContent make() {
    out_.heads =
        QStringList{tr("All at once"), tr("Most of one axis"), tr("Allowed"), tr("Margin")};
    add(tr("Supply power"), MachineLimitId::supply_power, Kind::power, "W");
    add(tr("Bus voltage, all braking"), MachineLimitId::bus_voltage, Kind::voltage, "V");
    return std::move(out_);
  }

private:
  void add(const QString& name, MachineLimitId id, Kind kind, std::string_view usual) {
    const MachineLimit& limit = sized_.together.limit(id);
    Series series(sized_.units, kind, usual);
    series.note(limit.reached);
    series.note(limit.single);
    series.note(limit.allowed);
    out_.names << series.head(name);
    const FigureDoor door = door_of(limit);
    FigureCell reached = figure_cell(series.text(limit.reached), door);
    reached.verdict = limit.verdict;
    if (limit.partial && limit.reached) {
      reached.text = QStringLiteral("≥ ") + reached.text;
    }
    FigureCell single = figure_cell(series.text(limit.single));
    if (limit.largest && limit.single) {
      single.text = tr("%1 (%2)", "figure (axis letter)")
                        .arg(series.text(limit.single),
                             words::axis_or_machine(sized_.machine, limit.largest));
      single.door = door_to_limit(
          *limit.largest, sized_.results[*limit.largest].limit(id == MachineLimitId::supply_power
                                                                   ? LimitId::supply_power
                                                                   : LimitId::bus_voltage));
    }
    const QString allowed = series.text(limit.allowed);
    FigureCell margin = limit.margin
                            ? figure_cell(sheet::margin_text(*limit.margin), door)
                            : words_cell(words::machine_open_reason(limit, sized_.machine), door);
    out_.rows.push_back(
        {reached, single, figure_cell(limit.allowed ? at_most(allowed) : allowed, door), margin});
  }

  /// To what is missing, or to what a builder would change.
  static FigureDoor door_of(const MachineLimit& limit) {
    const InputRef input =
        limit.missing.member.empty() ? machine_limit_input(limit.id) : limit.missing;
    FigureDoor door =
        door_to(limit.open_axis.value_or(0), static_cast<PartSlot>(input.slot), input.member);
    door.selection.machine = !limit.open_axis;
    return door;
  }

  const SizedMachine& sized_;
  FigureContent out_;
};

struct Purchases {
  Q_DECLARE_TR_FUNCTIONS(MachineView)

public:
  static QStringList heads() { return {tr("Count"), tr("Description"), tr("Axes")}; }
};

} // namespace

FigureContent machine_limits(const SizedMachine& sized) {
  return MachineLimits(sized).make();
}

FigureContent parts_to_buy(const Machine& machine) {
  FigureContent out;
  out.heads = Purchases::heads();
  for (const Purchase& purchase : purchases_of(machine)) {
    QStringList letters;
    for (const std::string& letter : purchase.letters) {
      letters << QString::fromStdString(letter);
    }
    out.names << sheet::purchase_name(purchase);
    out.rows.push_back({figure_cell(QString::number(purchase.count)),
                        words_cell(sheet::purchase_text(purchase)),
                        words_cell(letters.join(QStringLiteral(", ")))});
  }
  return out;
}

} // namespace feedwright
