// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/overview_content.h"

#include "sheet/lay_out_sheet.h"
#include "sheet/sheet_content.h"
#include "sheet/sheet_words.h"
#include "text/machine_words.h"
#include "text/text_of.h"
#include "text/words.h"
#include "train/train_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <functional>

namespace feedwright {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(MachineView)

public:
  static QString with_unit(const QString& name, std::string_view unit) {
    return unit.empty() ? name : tr("%1 [%2]", "figure, its unit").arg(name, text_of(unit));
  }
  static QString at_most(const QString& value) { return QStringLiteral("≤ ") + value; }
};

/// A value with what it is held against, of one axis.
struct Pair {
  std::optional<AnyQuantity> reached;
  std::optional<AnyQuantity> wanted;
};

/// So many decimals that the smallest has three digits that count, and the largest not over five
/// unless the smallest would be left with fewer than two.
int decimals_for(const std::vector<double>& values) {
  double least = 0.0;
  double most = 0.0;
  for (const double value : values) {
    const double size = std::abs(value);
    if (size > 0.0 && std::isfinite(size)) {
      least = least > 0.0 ? std::min(least, size) : size;
      most = std::max(most, size);
    }
  }
  if (!(least > 0.0)) {
    return 0;
  }
  constexpr int finest = 6;
  const int small = static_cast<int>(std::floor(std::log10(least)));
  const int large = static_cast<int>(std::floor(std::log10(most)));
  return std::clamp(std::min(2 - small, std::max(4 - large, 1 - small)), 0, finest);
}

QString fixed(double value, int decimals) {
  QString text = QString::number(value, 'f', decimals);
  return text.replace(QLatin1Char('.'), QLatin1Char(static_cast<char>(words::decimal_mark())));
}

double in_unit(const AnyQuantity& value, const Unit& unit) {
  return (value.si - unit.offset) / unit.factor;
}

/// Values of one kind, shown in one unit with the same decimals.
class Series {
public:
  Series(const FileUnits& units, Kind kind, std::string_view usual)
      : unit_(units.unit_of(kind, usual)) {}

  void note(const std::optional<AnyQuantity>& value) {
    if (value) {
      values_.push_back(in_unit(*value, unit_));
    }
  }
  QString text(const std::optional<AnyQuantity>& value) const {
    return value ? fixed(in_unit(*value, unit_), decimals_for(values_)) : sheet::open_word();
  }
  QString head(const QString& name) const { return Words::with_unit(name, unit_.symbol); }

private:
  const Unit& unit_;
  std::vector<double> values_;
};

FigureDoor door_to(std::size_t axis, PartSlot slot, std::string_view member = {},
                   std::optional<LimitId> limit = std::nullopt) {
  return {{axis, slot, text_of(member), false}, limit};
}

FigureDoor door_to_limit(std::size_t axis, const Limit& limit) {
  const bool open = limit.verdict == Verdict::open && !limit.missing.member.empty();
  const LimitDescriptor& about = descriptor(limit.id);
  const auto slot = open ? static_cast<PartSlot>(limit.missing.slot) : about.part;
  return door_to(axis, slot, open ? limit.missing.member : about.member, limit.id);
}

FigureCell words_cell(const QString& text, std::optional<FigureDoor> door = std::nullopt) {
  FigureCell cell;
  cell.text = text;
  cell.door = std::move(door);
  return cell;
}

FigureCell figure_cell(const QString& text, std::optional<FigureDoor> door = std::nullopt) {
  FigureCell cell = words_cell(text, std::move(door));
  cell.figure = true;
  return cell;
}

template <class Q>
std::optional<AnyQuantity> as_any(const std::optional<Q>& value) {
  return value ? std::optional(any(*value)) : std::nullopt;
}

class Comparison {
  Q_DECLARE_TR_FUNCTIONS(MachineView)

public:
  explicit Comparison(const SizedMachine& sized) : sized_(sized) { out_.paired = true; }

  FigureContent make() {
    for (std::size_t axis = 0; axis < count(); ++axis) {
      const AxisBasics& basics = sized_.machine.axes[axis].basics;
      out_.heads << sheet::axis_title(basics.letter, basics.name);
      out_.head_doors.emplace_back(door_to(axis, PartSlot::drive));
    }
    add_words(tr("Feed governed by"),
              [this](std::size_t axis) { return governing(axis, results(axis).governing); });
    add_pairs(tr("Feed"), Kind::velocity, "m/min", false,
              [this](std::size_t axis) { return limit_of(axis, results(axis).governing); });
    add_limit(tr("Acceleration"), LimitId::acceleration, "m/s²");
    add_words(tr("Axial force governed by"), [this](std::size_t axis) {
      return governing(axis, results(axis).governing_thrust_limit);
    });
    add_pairs(tr("Axial force"), Kind::force, "N", false, [this](std::size_t axis) {
      return limit_of(axis, results(axis).governing_thrust_limit);
    });
    add_limit(tr("Resolution"), LimitId::resolution, "µm");
    add_limit(tr("Lost motion"), LimitId::lost_motion, "µm");
    add_words(tr("Lowest margin"), [this](std::size_t axis) { return lowest(axis); });
    add_shares(tr("Motor torque used"), &AxisTally::torque_used, LimitId::motor_torque);
    const auto has_rms = [](const AxisTally& tally) { return tally.rms_used.has_value(); };
    if (std::ranges::any_of(sized_.together.axes, has_rms)) {
      add_shares(tr("RMS torque used"), &AxisTally::rms_used, LimitId::rms_torque);
    }
    add_masses();
    add_words(words::part_name(PartSlot::motor), [this](std::size_t axis) { return motor(axis); });
    add_words(words::part_name(PartSlot::transmission),
              [this](std::size_t axis) { return transmission(axis); });
    add_words(words::part_name(PartSlot::drive), [this](std::size_t axis) { return drive(axis); });
    return std::move(out_);
  }

private:
  using MadeCell = std::function<FigureCell(std::size_t)>;
  using ChosenLimit = std::function<const Limit*(std::size_t)>;

  std::size_t count() const { return sized_.machine.axes.size(); }
  const AxisResults& results(std::size_t axis) const { return sized_.results[axis]; }

  const Limit* limit_of(std::size_t axis, const std::optional<LimitId>& id) const {
    return id ? &results(axis).limit(*id) : nullptr;
  }

  void add_words(const QString& name, const MadeCell& make) {
    out_.names << name;
    auto& row = out_.rows.emplace_back();
    for (std::size_t axis = 0; axis < count(); ++axis) {
      row.push_back(make(axis));
    }
  }

  FigureCell governing(std::size_t axis, const std::optional<LimitId>& id) const {
    const Limit* limit = limit_of(axis, id);
    if (limit == nullptr) {
      return words_cell(sheet::open_word());
    }
    FigureCell cell = words_cell(words::limit_name(limit->id), door_to_limit(axis, *limit));
    cell.verdict = limit->verdict;
    return cell;
  }

  FigureCell lowest(std::size_t axis) const {
    const auto found = lowest_margin(results(axis));
    if (!found) {
      FigureCell cell = words_cell(words::verdict_word(Verdict::open));
      cell.verdict = Verdict::open;
      return cell;
    }
    FigureCell cell =
        words_cell(tr("%1 (%2)", "margin (limit)")
                       .arg(sheet::margin_text(found->margin), words::limit_name(found->limit)),
                   door_to_limit(axis, results(axis).limit(found->limit)));
    cell.verdict = found->verdict;
    return cell;
  }

  void add_limit(const QString& name, LimitId id, std::string_view usual) {
    add_pairs(name, descriptor(descriptor(id).result).kind, usual, descriptor(id).at_most,
              [this, id](std::size_t axis) { return limit_of(axis, id); });
  }

  /// Reached against wanted.
  void add_pairs(const QString& name, Kind kind, std::string_view usual, bool at_most,
                 const ChosenLimit& chosen) {
    Series series(sized_.units, kind, usual);
    for (std::size_t axis = 0; axis < count(); ++axis) {
      if (const Limit* limit = chosen(axis)) {
        series.note(limit->reached);
        series.note(limit->wanted);
      }
    }
    out_.names << series.head(name);
    auto& row = out_.rows.emplace_back();
    for (std::size_t axis = 0; axis < count(); ++axis) {
      const Limit* limit = chosen(axis);
      if (limit == nullptr) {
        row.push_back(figure_cell(sheet::open_word()));
        continue;
      }
      FigureCell cell = figure_cell(series.text(limit->reached), door_to_limit(axis, *limit));
      cell.verdict = limit->verdict;
      if (limit->wanted) {
        const QString wanted = series.text(limit->wanted);
        cell.against = at_most ? Words::at_most(wanted) : wanted;
      }
      row.push_back(cell);
    }
  }

  void add_shares(const QString& name, std::optional<double> AxisTally::*share, LimitId limit) {
    std::vector<double> values;
    for (const AxisTally& tally : sized_.together.axes) {
      if (tally.*share) {
        values.push_back(*(tally.*share) * 100.0);
      }
    }
    const int decimals = std::min(decimals_for(values), 1);
    add_words(Words::with_unit(name, "%"), [&](std::size_t axis) {
      const auto& used = sized_.together.axes[axis].*share;
      const Limit& judged = sized_.results[axis].limit(limit);
      if (!judged.applies) {
        return words_cell(QStringLiteral("–"), {});
      }
      const FigureDoor door = door_to(axis, PartSlot::motor, {}, limit);
      FigureCell cell =
          figure_cell(used ? fixed(*used * 100.0, decimals) : sheet::open_word(), door);
      if (used && *used > 1.0) {
        cell.verdict = Verdict::over;
      }
      return cell;
    });
  }

  void add_masses() {
    Series series(sized_.units, Kind::mass, "kg");
    for (const AxisTally& tally : sized_.together.axes) {
      series.note(any(tally.moved));
    }
    add_words(series.head(tr("Moved mass")), [&](std::size_t axis) {
      return figure_cell(series.text(any(sized_.together.axes[axis].moved)),
                         door_to(axis, PartSlot::carriage, "mass"));
    });
  }

  FigureCell motor(std::size_t axis) const {
    const ShownAxis shown{sized_.machine, axis};
    QString torque = shown.shown(PartSlot::motor, "holding_torque");
    if (torque.isEmpty()) {
      torque = shown.shown(PartSlot::motor, "continuous_torque");
    }
    QStringList said{shown.shown(PartSlot::motor, "frame"), torque};
    said.removeAll(QString());
    if (said.isEmpty()) {
      said << words::part_type_title(part_type(sized_.machine, axis, PartSlot::motor));
    }
    QString text = said.join(QStringLiteral(", "));
    if (sized_.together.axes[axis].motors > 1) {
      text = tr("2 × %1", "motor").arg(text);
    }
    return words_cell(text, door_to(axis, PartSlot::motor));
  }

  FigureCell transmission(std::size_t axis) const {
    const Axis& of = sized_.machine.axes[axis];
    QString text;
    if (const auto* belt = std::get_if<BeltStage>(&of.transmission)) {
      text = tr("belt %1, %2 : %3 teeth", "profile, teeth of motor's pulley : of screw's pulley")
                 .arg(QString::fromStdString(belt->profile))
                 .arg(belt->motor_pulley_teeth)
                 .arg(belt->screw_pulley_teeth);
    } else if (const auto* loop = std::get_if<BeltLoopDrive>(&of.transmission)) {
      text = tr("belt loop, %n pulley(s)", nullptr, static_cast<int>(loop->pulleys.size()));
    } else {
      text = tr("coupling");
    }
    return words_cell(text, door_to(axis, PartSlot::transmission));
  }

  FigureCell drive(std::size_t axis) const {
    const ShownAxis shown{sized_.machine, axis};
    QString text;
    if (std::holds_alternative<Screw>(sized_.machine.axes[axis].drive)) {
      text = tr("%1 × %2, %3, %4–%5", "screw: diameter × lead, span, motor end–far end")
                 .arg(shown.shown(PartSlot::drive, "nominal_diameter"),
                      shown.shown(PartSlot::drive, "lead"), shown.shown(PartSlot::drive, "span"),
                      shown.shown(PartSlot::drive, "motor_end"),
                      shown.shown(PartSlot::drive, "far_end"));
    } else {
      text = train_words::hauling_belt(shown);
    }
    if (sized_.machine.axes[axis].sides.layout != DriveLayout::one) {
      text = tr("2 × %1", "screw or belt").arg(text);
    }
    return words_cell(text, door_to(axis, PartSlot::drive));
  }

  const SizedMachine& sized_;
  FigureContent out_;
};

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
    column(tr("Step rate"), Kind::frequency, "kHz", &AxisTally::top_step_rate, std::nullopt,
           LimitId::step_rate);
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
    out_.heads << Words::with_unit(tr("Steps"), unit.symbol);
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
    out_.rows.push_back({reached, single,
                         figure_cell(limit.allowed ? Words::at_most(allowed) : allowed, door),
                         margin});
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

FigureContent axes_compared(const SizedMachine& sized) {
  return Comparison(sized).make();
}

FigureContent machine_limits(const SizedMachine& sized) {
  return MachineLimits(sized).make();
}

FigureContent axis_shares(const SizedMachine& sized) {
  return ByAxis(sized).shares();
}

FigureContent controller_figures(const SizedMachine& sized) {
  return ByAxis(sized).controller();
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
