// SPDX-License-Identifier: GPL-3.0-or-later
#include "overview/overview_cells.h"
#include "overview/overview_content.h"

#include "sheet/lay_out_sheet.h"
#include "sheet/sheet_content.h"
#include "sheet/sheet_words.h"
#include "text/text_of.h"
#include "text/words.h"
#include "train/train_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <functional>

namespace feedwright {

using namespace overview;

namespace {

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
        cell.against = at_most ? overview::at_most(wanted) : wanted;
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
    add_words(with_unit(name, "%"), [&](std::size_t axis) {
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

} // namespace

FigureContent axes_compared(const SizedMachine& sized) {
  return Comparison(sized).make();
}

} // namespace feedwright
