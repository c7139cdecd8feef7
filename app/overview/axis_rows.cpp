// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/overview_cells.h"
#include "overview/overview_content.h"

#include "sheet/sheet_content.h"
#include "sheet/sheet_words.h"
#include "text/words.h"

#include <QCoreApplication>

namespace feedwright {

using namespace overview;

namespace {

/// Tables with an axis to a row.
class ByAxis {
  Q_DECLARE_TR_FUNCTIONS(MachineView)

public:
  explicit ByAxis(const SizedMachine& sized) : sized_(sized) {}

  FigureContent shares() {
    begin(true);
    counts(tr("Motors"));
    column(tr("Power"), Kind::power, "W", &AxisTally::power, total_power(), LimitId::supply_power);
    column(tr("Heat at rest"), Kind::power, "W", &AxisTally::standing,
           as_any(sized_.together.standing), LimitId::supply_power);
    column(tr("Energy returned"), Kind::energy, "J", &AxisTally::returned, total_energy(),
           LimitId::bus_voltage);
    column(tr("Bus, axis alone"), Kind::voltage, "V", &AxisTally::bus_alone,
           sized_.together.limit(MachineLimitId::bus_voltage).partial
               ? std::nullopt
               : sized_.together.limit(MachineLimitId::bus_voltage).reached,
           LimitId::bus_voltage);
    return std::move(out_);
  }

  FigureContent controller() {
    begin(false);
    counts(tr("Outputs"));
    std::vector<SetUp> figures;
    for (std::size_t axis = 0; axis < count(); ++axis) {
      figures.push_back(set_up_of(sized_.machine, axis, sized_.results[axis]));
    }
    steps(figures);
    set_up_column(tr("Top feed, limits clear"), Kind::velocity, "m/min", figures, &SetUp::top_feed);
    set_up_column(tr("Acceleration"), Kind::acceleration, "m/s²", figures, &SetUp::acceleration);
    column(tr("Step rate, feed reached"), Kind::frequency, "kHz", &AxisTally::top_step_rate,
           std::nullopt, LimitId::step_rate);
    limit_column();
    return std::move(out_);
  }

private:
  std::size_t count() const { return sized_.machine.axes.size(); }

  void begin(bool with_total) {
    total_ = with_total;
    for (const Axis& axis : sized_.machine.axes) {
      out_.names << QString::fromStdString(axis.basics.letter);
    }
    if (total_) {
      out_.names << tr("All");
    }
    out_.rows.resize(static_cast<std::size_t>(out_.names.size()));
  }

  std::optional<AnyQuantity> total_power() const {
    const MachineLimit& power = sized_.together.limit(MachineLimitId::supply_power);
    return power.partial ? std::nullopt : power.reached;
  }
  std::optional<AnyQuantity> total_energy() const {
    return sized_.together.limit(MachineLimitId::bus_voltage).partial
               ? std::nullopt
               : as_any(sized_.together.returned_energy);
  }

  void counts(const QString& head) {
    out_.heads << head;
    for (std::size_t axis = 0; axis < count(); ++axis) {
      out_.rows[axis].push_back(figure_cell(QString::number(sized_.together.axes[axis].motors),
                                            door_to(axis, PartSlot::sides, "layout")));
    }
    if (total_) {
      out_.rows.back().push_back(figure_cell(QString::number(sized_.together.motors)));
      out_.rows.back().back().bold = true;
    }
  }

  template <class Q>
  void column(const QString& name, Kind kind, std::string_view usual,
              std::optional<Q> AxisTally::*value, const std::optional<AnyQuantity>& total,
              LimitId limit) {
    Series series(sized_.units, kind, usual);
    for (const AxisTally& tally : sized_.together.axes) {
      series.note(as_any(tally.*value));
    }
    series.note(total);
    out_.heads << series.head(name);
    for (std::size_t axis = 0; axis < count(); ++axis) {
      out_.rows[axis].push_back(
          figure_cell(series.text(as_any(sized_.together.axes[axis].*value)),
                      door_to_limit(axis, sized_.results[axis].limit(limit))));
    }
    if (total_) {
      out_.rows.back().push_back(figure_cell(series.text(total)));
      out_.rows.back().back().bold = true;
    }
  }

  void steps(const std::vector<SetUp>& figures) {
    // Seven digits: over a metre of travel the last one is under a micrometre.
    constexpr int digits = 7;
    const Unit& unit = sized_.units.unit_of(Kind::per_length, "steps/mm");
    out_.heads << with_unit(tr("Steps"), unit.symbol);
    for (std::size_t axis = 0; axis < count(); ++axis) {
      const auto& value = figures[axis].steps_per_length;
      const QString text = value ? QString::fromStdString(write_number(
                                       in_unit(*value, unit), digits, words::decimal_mark()))
                                 : sheet::open_word();
      const std::string_view member =
          figures[axis].steps ? figures[axis].steps->info.member : std::string_view();
      out_.rows[axis].push_back(figure_cell(text, door_to(axis, PartSlot::motor, member)));
    }
  }

  void set_up_column(const QString& name, Kind kind, std::string_view usual,
                     const std::vector<SetUp>& figures, std::optional<AnyQuantity> SetUp::*value) {
    Series series(sized_.units, kind, usual);
    for (const SetUp& figure : figures) {
      series.note(figure.*value);
    }
    out_.heads << series.head(name);
    for (std::size_t axis = 0; axis < count(); ++axis) {
      out_.rows[axis].push_back(
          figure_cell(series.text(figures[axis].*value), door_to(axis, PartSlot::targets)));
    }
  }

  /// How the step rate stands to what the controller gives.
  void limit_column() {
    out_.heads << tr("Step rate reads");
    for (std::size_t axis = 0; axis < count(); ++axis) {
      const Limit& limit = sized_.results[axis].limit(LimitId::step_rate);
      FigureCell cell = words_cell(words::verdict_word(limit.verdict), door_to_limit(axis, limit));
      cell.verdict = limit.verdict;
      out_.rows[axis].push_back(cell);
    }
  }

  const SizedMachine& sized_;
  FigureContent out_;
  bool total_ = false;
};

} // namespace

FigureContent axis_shares(const SizedMachine& sized) {
  return ByAxis(sized).shares();
}

FigureContent controller_figures(const SizedMachine& sized) {
  return ByAxis(sized).controller();
}

} // namespace feedwright
