// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/write_results.h"

#include "sheet/file_units.h"
#include "sheet/program_version.h"
#include "sizing/concerns.h"
#include "units/unit_table.h"
#include "json/write_json.h"

#include <cmath>

namespace feedwright {

namespace {

double in_unit(const AnyQuantity& value, const Unit& unit) {
  return (value.si - unit.offset) / unit.factor;
}

class ResultsWriter {
public:
  explicit ResultsWriter(const Machine& machine) : units_(machine) {}

  std::string write(const Machine& machine, std::span<const AxisResults> results,
                    const SheetIdentity& identity) {
    json_.begin_object();
    json_.member("format").value("feedwright results");
    json_.member("version").value(1);
    json_.member("program").value(program_version());
    json_.member("machine").value(machine.name);
    json_.member("file").value(identity.file_name);
    json_.member("fingerprint").value(identity.fingerprint);
    const MachineResults together = size_machine(machine, results);
    const Concerns concerns = concerns_of(machine, results, together);
    json_.member("axes").begin_array();
    for (std::size_t axis = 0; axis < results.size(); ++axis) {
      write_axis(machine.axes[axis], results[axis], concerns, axis);
    }
    json_.end_array();
    write_together(machine, together, concerns);
    json_.end_object();
    return std::move(json_).finish();
  }

private:
  void write_axis(const Axis& axis, const AxisResults& results, const Concerns& concerns,
                  std::size_t number) {
    json_.begin_object();
    json_.member("letter").value(axis.basics.letter);
    json_.member("name").value(axis.basics.name);
    json_.member("over").value(any_limit_over(results));
    json_.member("governing");
    limit_name(results.governing);
    json_.member("governing_thrust_limit");
    limit_name(results.governing_thrust_limit);
    json_.member("limits").begin_object();
    for (const Limit& limit : results.limits) {
      write_limit(limit);
    }
    json_.end_object();
    json_.member("findings").begin_array();
    for (const Finding& finding : results.findings) {
      write_finding(finding);
    }
    json_.end_array();
    json_.member("results").begin_object();
    for (const ResultDescriptor& result : result_descriptors()) {
      json_.member(result.name);
      quantity(result.get(results), result.unit);
    }
    json_.end_object();
    write_cases(results);
    write_loop(results);
    write_answers(concerns, number);
    json_.end_object();
  }

  void write_cases(const AxisResults& results) {
    json_.member("load_cases").begin_array();
    for (const CaseResult& load : results.cases) {
      json_.begin_object();
      json_.member("thrust");
      quantity(any(load.thrust), "N");
      json_.member("capped").value(load.capped);
      json_.member("axial");
      quantity(any(load.axial), "N");
      json_.member("torque");
      quantity(any(load.torque), "N·m");
      json_.end_object();
    }
    json_.end_array();
  }

  void write_loop(const AxisResults& results) {
    json_.member("loop").begin_array();
    for (const PulleyResult& pulley : results.loop) {
      json_.begin_object();
      json_.member("wrap");
      quantity(any(pulley.wrap), "°");
      json_.member("teeth_in_mesh");
      number(pulley.teeth_in_mesh);
      json_.member("span_after");
      quantity(any(pulley.span_after), "mm");
      json_.end_object();
    }
    json_.end_array();
  }

  void limit_name(const std::optional<LimitId>& id) {
    if (id) {
      json_.value(descriptor(*id).name);
    } else {
      json_.null();
    }
  }

  void write_limit(const Limit& limit) {
    const LimitDescriptor& about = descriptor(limit.id);
    const std::string_view unit = descriptor(about.result).unit;
    json_.member(about.name).begin_object();
    json_.member("applies").value(limit.applies);
    json_.member("verdict").value(verdict_name(limit.verdict));
    json_.member("margin");
    number(limit.margin);
    json_.member("reached");
    quantity(limit.reached, unit);
    json_.member("at_least").value(limit.at_least);
    json_.member("wanted");
    quantity(limit.wanted, unit);
    json_.member("result").value(descriptor(about.result).name);
    input(limit.missing);
    json_.end_object();
  }

  void input(const InputRef& missing) {
    json_.member("missing");
    if (missing.member.empty()) {
      json_.null();
      return;
    }
    json_.begin_object();
    json_.member("part").value(slot_name(static_cast<PartSlot>(missing.slot)));
    json_.member("member").value(missing.member);
    json_.end_object();
  }

  /// What was answered, each with whether it was to the figures as they are now; null for what is
  /// no longer a concern.
  void write_answers(const Concerns& concerns, std::optional<std::size_t> axis) {
    json_.member("answers").begin_array();
    for (const Concern& concern : concerns.list) {
      if (concern.axis == axis && concern.answer) {
        answer(*concern.answer, concern.standing == AnswerStanding::stands);
      }
    }
    for (const IdleAnswer& idle : concerns.idle) {
      if (idle.axis == axis) {
        answer(idle.answer, std::nullopt);
      }
    }
    json_.end_array();
  }

  void answer(const Answer& given, std::optional<bool> stands) {
    json_.begin_object();
    json_.member(given.to == AnswerTo::finding ? "finding" : "limit").value(given.code);
    json_.member("part").value(given.part);
    json_.member("note").value(given.note);
    json_.member("stands");
    if (stands) {
      json_.value(*stands);
    } else {
      json_.null();
    }
    json_.end_object();
  }

  /// What the axes ask of the machine at once.
  void write_together(const Machine& machine, const MachineResults& together,
                      const Concerns& concerns) {
    json_.member("together").begin_object();
    json_.member("over").value(any_limit_over(together));
    json_.member("limits").begin_object();
    for (const MachineLimit& limit : together.limits) {
      write_machine_limit(limit);
    }
    json_.end_object();
    json_.member("findings").begin_array();
    for (const Finding& finding : together.findings) {
      write_finding(finding);
    }
    json_.end_array();
    json_.member("motors").value(together.motors);
    json_.member("current");
    held(together.current, "A");
    json_.member("standing_heat");
    held(together.standing, "W");
    json_.member("returned_energy");
    held(together.returned_energy, "J");
    json_.member("capacitance_needed");
    held(together.capacitance_needed, "µF");
    json_.member("feed_any_direction");
    held(together.feed_any_direction, "m/min");
    json_.member("axes").begin_array();
    for (std::size_t axis = 0; axis < together.axes.size(); ++axis) {
      write_tally(machine.axes[axis], together.axes[axis]);
    }
    json_.end_array();
    json_.member("diagonals").begin_array();
    for (const DiagonalFeed& diagonal : together.diagonals) {
      json_.begin_object();
      json_.member("axes").begin_array();
      json_.value(machine.axes[diagonal.first].basics.letter);
      json_.value(machine.axes[diagonal.second].basics.letter).end_array();
      json_.member("together");
      quantity(any(diagonal.together), "m/min");
      json_.member("evenly");
      quantity(any(diagonal.evenly), "m/min");
      json_.end_object();
    }
    json_.end_array();
    write_answers(concerns, std::nullopt);
    json_.end_object();
  }

  void write_machine_limit(const MachineLimit& limit) {
    const std::string_view unit = limit.id == MachineLimitId::supply_power ? "W" : "V";
    json_.member(machine_limit_code(limit.id)).begin_object();
    json_.member("verdict").value(verdict_name(limit.verdict));
    json_.member("margin");
    number(limit.margin);
    json_.member("reached");
    quantity(limit.reached, unit);
    json_.member("partial").value(limit.partial);
    json_.member("single");
    quantity(limit.single, unit);
    json_.member("allowed");
    quantity(limit.allowed, unit);
    input(limit.missing);
    json_.end_object();
  }

  void write_tally(const Axis& axis, const AxisTally& tally) {
    json_.begin_object();
    json_.member("letter").value(axis.basics.letter);
    json_.member("motors").value(tally.motors);
    json_.member("top_step_rate");
    held(tally.top_step_rate, "kHz");
    json_.member("torque_used");
    number(tally.torque_used);
    json_.member("rms_used");
    number(tally.rms_used);
    json_.end_object();
  }

  template <class Q>
  void held(const std::optional<Q>& value, std::string_view unit) {
    quantity(value ? std::optional(any(*value)) : std::nullopt, unit);
  }

  void write_finding(const Finding& finding) {
    json_.begin_object();
    json_.member("code").value(finding_name(finding.code));
    json_.member("part").value(slot_name(finding.subject));
    json_.member("actual");
    quantity(finding.actual, {});
    json_.member("allowed");
    quantity(finding.allowed, {});
    json_.end_object();
  }

  void number(const std::optional<double>& value) {
    if (value && std::isfinite(*value)) {
      json_.value(*value);
    } else {
      json_.null();
    }
  }

  /// Without a unit only the SI value is written.
  void quantity(const std::optional<AnyQuantity>& value, std::optional<std::string_view> unit) {
    if (!value || !std::isfinite(value->si)) {
      json_.null();
      return;
    }
    json_.begin_object();
    json_.member("si").value(value->si);
    json_.member("si_unit").value(si_unit(value->kind).symbol);
    if (unit) {
      const Unit& shown = units_.unit_of(value->kind, *unit);
      json_.member("value");
      number(in_unit(*value, shown));
      json_.member("unit").value(shown.symbol);
    }
    json_.end_object();
  }

  FileUnits units_;
  JsonWriter json_;
};

} // namespace

std::string write_results(const Machine& machine, std::span<const AxisResults> results,
                          const SheetIdentity& identity) {
  return ResultsWriter(machine).write(machine, results, identity);
}

} // namespace feedwright
