// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/figure_groups.h"

#include "sheet/sheet_words.h"
#include "text/printed_words.h"
#include "text/text_of.h"
#include "text/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace feedwright::sheet {

namespace {

/// A stretch of results in their declared order, both ends included.
struct Stretch {
  const char* title;
  ResultId first, last;
};

constexpr Stretch stretches[] = {
    {QT_TRANSLATE_NOOP("Sheet", "Sides and guides"), ResultId::worst_side_share,
     ResultId::worst_side_mass},
    {QT_TRANSLATE_NOOP("Sheet", "Falling and braking"), ResultId::falling_acceleration,
     ResultId::braking_torque},
    {QT_TRANSLATE_NOOP("Sheet", "Preload"), ResultId::preload_holds_to,
     ResultId::preload_drag_torque},
    {QT_TRANSLATE_NOOP("Sheet", "Belt"), ResultId::belt_rim_force, ResultId::belt_shaft_load},
    {QT_TRANSLATE_NOOP("Sheet", "Hauling belt"), ResultId::haul_rim_force, ResultId::haul_note},
    {QT_TRANSLATE_NOOP("Sheet", "Stiffness at the worst place"), ResultId::shaft_stiffness,
     ResultId::stall_couple_force},
    {QT_TRANSLATE_NOOP("Sheet", "Error on reversal"), ResultId::tooth_gap_error,
     ResultId::reversal_error_rss},
    {QT_TRANSLATE_NOOP("Sheet", "Error over the travel"), ResultId::lead_error,
     ResultId::travel_error_rss},
    {QT_TRANSLATE_NOOP("Sheet", "Error under cut"), ResultId::cutting_deflection,
     ResultId::cutting_error_rss},
    {QT_TRANSLATE_NOOP("Sheet", "Life"), ResultId::mean_load, ResultId::guide_life},
    {QT_TRANSLATE_NOOP("Sheet", "Moves and duty"), ResultId::full_travel_time,
     ResultId::rms_torque},
    {QT_TRANSLATE_NOOP("Sheet", "Motor, controller and supply"), ResultId::step_rate,
     ResultId::best_reduction},
};

constexpr std::size_t rows_a_case = 3;

class Groups {
  Q_DECLARE_TR_FUNCTIONS(Sheet)

public:
  Groups(const SheetAxis& axis, const FileUnits& units) : axis_(axis), units_(units) {}

  std::vector<TableGroup> all() {
    for (const Stretch& stretch : stretches) {
      add(tr(stretch.title), stretch);
    }
    pulleys();
    cases();
    return std::move(groups_);
  }

private:
  void add(const QString& title, const Stretch& stretch) {
    TableGroup group;
    group.title = title;
    for (const SheetResult& result : axis_.results) {
      if (result.id < stretch.first || result.id > stretch.last || !result.value) {
        continue;
      }
      const ResultDescriptor& about = descriptor(result.id);
      group.rows.push_back({{words::result_name(result.id), text_of(about.symbol),
                             life_or_value(units_, result.value, about.unit)}});
    }
    keep(std::move(group));
  }

  void pulleys() {
    TableGroup group;
    group.title = tr("Pulleys of the loop");
    for (std::size_t i = 0; i < axis_.loop.size(); ++i) {
      const PulleyResult& pulley = axis_.loop[i].result;
      const std::string_view role =
          fields::Names<PulleyRole>::list[static_cast<std::size_t>(axis_.loop[i].role)];
      const QString name = tr("%1 %2", "number of a pulley, what it sits on")
                               .arg(i + 1)
                               .arg(words::choice_name("role", role));
      const QString wrap = words::printed_quantity(any(pulley.wrap), "°", 3);
      const QString mesh =
          pulley.teeth_in_mesh > 0.0
              ? tr("%1, %2 in mesh", "arc of contact, teeth")
                    .arg(wrap, words::printed_quantity({Kind::number, pulley.teeth_in_mesh}, "", 3))
              : wrap;
      group.rows.push_back({{name, {}, mesh}, false, false, true});
      group.rows.push_back(
          {{tr("span after it"), {}, words::printed_quantity(any(pulley.span_after), "mm", 4)}});
    }
    keep(std::move(group));
  }

  void cases() {
    TableGroup group;
    group.title = tr("Load cases");
    for (const SheetCase& load : axis_.cases) {
      const QString name = QString::fromStdString(load.name);
      const QString thrust = value_or_open(units_, any(load.result.thrust), "N");
      group.rows.push_back(
          {{name,
            {},
            load.result.capped ? tr("%1, all the spindle gives", "cutting thrust").arg(thrust)
                               : thrust}});
      group.rows.push_back(
          {{force_on_drive(), {}, value_or_open(units_, any(load.result.axial), "N")}});
      group.rows.push_back(
          {{tr("torque at the motor"), {}, value_or_open(units_, any(load.result.torque), "N·m")}});
      for (std::size_t row = group.rows.size() - rows_a_case; row + 1 < group.rows.size(); ++row) {
        group.rows[row].leads = true;
      }
    }
    keep(std::move(group));
  }

  /// A belt has no axis to push along: it is pulled.
  QString force_on_drive() const {
    const SheetInputs& drive = part(PartSlot::drive);
    if (drive.type != part_type_name<HaulingBelt>) {
      return tr("axial force on one drive");
    }
    return is_single() ? tr("force on the drive") : tr("force on one drive");
  }

  bool is_single() const {
    const auto member = [](const FieldView& field) { return field.info.member; };
    const auto& given = part(PartSlot::sides).fields;
    const auto layout = std::ranges::find(given, std::string_view("layout"), member);
    return std::get<std::string>(layout->value) ==
           fields::Names<DriveLayout>::list[std::size_t(DriveLayout::one)];
  }

  const SheetInputs& part(PartSlot slot) const {
    return *std::ranges::find(axis_.inputs, slot, &SheetInputs::slot);
  }

  void keep(TableGroup group) {
    if (!group.rows.empty()) {
      groups_.push_back(std::move(group));
    }
  }

  const SheetAxis& axis_;
  const FileUnits& units_;
  std::vector<TableGroup> groups_;
};

} // namespace

std::vector<TableGroup> figure_groups(const SheetAxis& axis, const FileUnits& units) {
  return Groups(axis, units).all();
}

} // namespace feedwright::sheet
