// SPDX-License-Identifier: GPL-3.0-or-later
#include "machine/swap_belts.h"

#include "machine/loop_layout.h"
#include "mechanics/belt_geometry.h"
#include "units/literals.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <numeric>

namespace feedwright {

namespace {

using namespace literals;

const std::vector<int>* stock_teeth(const std::string& profile,
                                    const std::vector<StockBelts>& stock) {
  const auto found = std::ranges::find(stock, profile, &StockBelts::profile);
  return found != stock.end() ? &found->teeth : nullptr;
}

/// To the whole millimetre, as somebody would type it.
Length rounded(Length length) {
  return from_si<Length>(std::round(si_value(length) * 1e3) * 1e-3);
}

LoopMember toothed(PulleyRole role, Length x, Length y, int teeth) {
  LoopMember made;
  made.role = role;
  made.x = Finite<Length>::of(x);
  made.y = Finite<Length>::of(y);
  made.teeth = teeth;
  return made;
}

LoopMember back_roller(Length x, Length y, Length diameter) {
  LoopMember made;
  made.x = Finite<Length>::of(x);
  made.y = Finite<Length>::of(y);
  made.diameter = Positive<Length>::of(diameter);
  made.face = BeltFace::back;
  return made;
}

/// A belt does not like to be bent back over less. Common practice, no source.
Length roller_diameter(const BeltBody& body) {
  return rounded(std::max(30_mm, Length(6.0 * *body.pitch)));
}

BeltLoopDrive bare_loop(const BeltBody& body) {
  BeltLoopDrive loop;
  static_cast<BeltBody&>(loop) = body;
  loop.heard_note.reset(); // it was another span's
  loop.pulleys.clear();
  return loop;
}

/// Sizes that a layout is made of.
struct LoopSizes {
  Length motor, screw, roller; ///< radii
  Length back;                 ///< from the belt's pitch line to its back

  LoopSizes(const BeltBody& body, const LoopWish& wish)
      : motor(pulley_pitch_diameter(double(wish.motor_teeth), *body.pitch) / 2.0),
        screw(pulley_pitch_diameter(double(wish.screw_teeth), *body.pitch) / 2.0),
        roller(roller_diameter(body) / 2.0), back(*BeltLoopDrive().back_height) {}
};

/// Motor under the middle, rollers beside it: the belt comes down, round it and up again.
BeltLoopDrive wrapped_layout(const BeltBody& body, const LoopWish& wish, Length drop) {
  const LoopSizes r(body, wish);
  const Length middle = rounded(*wish.spacing / 2.0);
  const Length aside = rounded(r.motor + r.roller + 9_mm);
  const Length rollers = -rounded(r.screw + r.roller + 8_mm);
  const Length motor = rollers - rounded(r.motor + r.roller + 19_mm) - drop;
  BeltLoopDrive loop = bare_loop(body);
  loop.pulleys = {toothed(PulleyRole::motor, middle, motor, wish.motor_teeth),
                  back_roller(middle + aside, rollers, 2.0 * r.roller),
                  toothed(PulleyRole::screw, *wish.spacing, Length(), wish.screw_teeth),
                  toothed(PulleyRole::screw, Length(), Length(), wish.screw_teeth),
                  back_roller(middle - aside, rollers, 2.0 * r.roller)};
  return loop;
}

BeltLoopDrive triangle_layout(const BeltBody& body, const LoopWish& wish, Length drop) {
  const LoopSizes r(body, wish);
  BeltLoopDrive loop = bare_loop(body);
  loop.pulleys = {toothed(PulleyRole::motor, rounded(*wish.spacing / 2.0),
                          -rounded(r.motor + r.screw + 40_mm) - drop, wish.motor_teeth),
                  toothed(PulleyRole::screw, *wish.spacing, Length(), wish.screw_teeth),
                  toothed(PulleyRole::screw, Length(), Length(), wish.screw_teeth)};
  return loop;
}

BeltLoopDrive one_screw_layout(const BeltBody& body, const LoopWish& wish, Length drop) {
  const LoopSizes r(body, wish);
  const Length motor = -rounded(std::max(100_mm, Length(r.motor + r.screw + 40_mm))) - drop;
  const Length pressed_in = 4_mm;
  const Length roller = (r.motor + r.screw) / 2.0 + r.roller - pressed_in;
  BeltLoopDrive loop = bare_loop(body);
  loop.pulleys = {toothed(PulleyRole::motor, Length(), motor, wish.motor_teeth),
                  back_roller(rounded(roller), rounded(motor / 2.0), 2.0 * r.roller),
                  toothed(PulleyRole::screw, Length(), Length(), wish.screw_teeth)};
  loop.sliding_pulley = 2;
  loop.slide_direction = Finite<Angle>::of(180_deg);
  loop.slide_back = NonNegative<Length>::of(4_mm);
  return loop;
}

bool in_stock(int teeth, const std::vector<int>* stock) {
  return stock != nullptr && std::ranges::binary_search(*stock, teeth);
}

/// The first loop of the drops with a belt in stock, else the first that any belt fits.
std::optional<BeltLoopDrive> first_fitting(const std::function<BeltLoopDrive(Length)>& layout,
                                           const std::vector<StockBelts>& stock) {
  std::optional<BeltLoopDrive> any_belt;
  constexpr int drops = 60;
  for (int i = 0; i < drops; ++i) {
    auto fitted = with_fitting_belt(layout(double(i) * 1_mm), stock);
    if (!fitted) {
      continue;
    }
    const auto* kept = stock_teeth(fitted->profile, stock);
    if (kept == nullptr || in_stock(fitted->belt_teeth, kept)) {
      return fitted;
    }
    if (!any_belt) {
      any_belt = fitted;
    }
  }
  return any_belt;
}

/// A roller pressing on a span's middle from outside.
std::optional<LoopMember> roller_on(const LoopSpan& span, LoopSense sense, Length diameter,
                                    Length back) {
  const double along_x = number((span.to.x - span.from.x) / span.length);
  const double along_y = number((span.to.y - span.from.y) / span.length);
  const double outward = sense == LoopSense::counter_clockwise ? 1.0 : -1.0;
  const Length pressed_in = 4_mm;
  const Length off = diameter / 2.0 + back - pressed_in;
  const Length x = (span.from.x + span.to.x) / 2.0 + outward * along_y * off;
  const Length y = (span.from.y + span.to.y) / 2.0 - outward * along_x * off;
  return back_roller(rounded(x), rounded(y), diameter);
}

} // namespace

int stage_belt_teeth(const BeltStage& stage, const std::vector<StockBelts>& stock) {
  const Length one = pulley_pitch_diameter(double(stage.motor_pulley_teeth), *stage.pitch);
  const Length other = pulley_pitch_diameter(double(stage.screw_pulley_teeth), *stage.pitch);
  const Length wanted = std::max(Length(1.5 * (one + other)), 100_mm);
  const Length length = open_belt_length(one, other, wanted);
  const int whole = static_cast<int>(std::lround(number(length / *stage.pitch)));
  const auto* kept = stock_teeth(stage.profile, stock);
  if (kept == nullptr || kept->empty()) {
    return whole;
  }
  const auto off = [whole](int teeth) { return std::abs(teeth - whole); };
  const int nearest = *std::ranges::min_element(*kept, {}, off);
  const auto fits = centre_distance(one, other, double(nearest) * *stage.pitch);
  return fits && *fits > 0.75 * wanted && *fits < 2.0 * wanted ? nearest : whole;
}

std::optional<BeltLoopDrive> with_fitting_belt(BeltLoopDrive loop,
                                               const std::vector<StockBelts>& stock) {
  constexpr int looked_at = 8;
  std::vector<TakeUpPosition> belts = fitting_belts(loop, looked_at);
  std::ranges::sort(belts, {}, [](const TakeUpPosition& at) { return abs(at.position); });
  const auto* kept = stock_teeth(loop.profile, stock);
  std::stable_partition(belts.begin(), belts.end(),
                        [kept](const TakeUpPosition& at) { return in_stock(at.belt_teeth, kept); });
  for (const TakeUpPosition& at : belts) {
    loop.belt_teeth = at.belt_teeth;
    if (loop_layout(loop)) {
      return loop;
    }
  }
  return std::nullopt;
}

std::optional<BeltLoopDrive> laid_out_loop(const BeltBody& body, const LoopWish& wish,
                                           const std::vector<StockBelts>& stock) {
  if (!wish.spacing) {
    return first_fitting([&](Length drop) { return one_screw_layout(body, wish, drop); }, stock);
  }
  const auto wrapped =
      first_fitting([&](Length drop) { return wrapped_layout(body, wish, drop); }, stock);
  return wrapped
             ? wrapped
             : first_fitting([&](Length drop) { return triangle_layout(body, wish, drop); }, stock);
}

std::optional<BeltLoopDrive> with_idler(const BeltLoopDrive& loop,
                                        const std::vector<StockBelts>& stock) {
  const auto layout = loop_layout(loop);
  if (!layout || loop.pulleys.size() >= most_loop_pulleys) {
    return std::nullopt;
  }
  const auto& spans = layout->path.spans;
  std::vector<std::size_t> order(spans.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::ranges::stable_sort(order, std::greater(), [&](std::size_t i) { return spans[i].length; });
  for (const std::size_t i : order) {
    if (spans[i].length <= Length()) {
      break;
    }
    const auto roller =
        roller_on(spans[i], loop_sense(layout->pulleys), roller_diameter(loop), *loop.back_height);
    BeltLoopDrive tried = loop;
    tried.pulleys.insert(tried.pulleys.begin() + static_cast<std::ptrdiff_t>(i) + 1, *roller);
    if (static_cast<std::size_t>(tried.sliding_pulley) > i + 1) {
      ++tried.sliding_pulley;
    }
    if (auto fitted = with_fitting_belt(std::move(tried), stock)) {
      return fitted;
    }
  }
  return std::nullopt;
}

std::optional<BeltLoopDrive> without_idler(const BeltLoopDrive& loop, std::size_t pulley,
                                           const std::vector<StockBelts>& stock) {
  if (pulley >= loop.pulleys.size() || loop.pulleys[pulley].role != PulleyRole::idler) {
    return std::nullopt;
  }
  BeltLoopDrive rest = loop;
  rest.pulleys.erase(rest.pulleys.begin() + static_cast<std::ptrdiff_t>(pulley));
  const auto slider = static_cast<std::size_t>(loop.sliding_pulley) - 1;
  if (slider > pulley) {
    --rest.sliding_pulley;
  }
  if (slider != pulley) {
    return with_fitting_belt(std::move(rest), stock);
  }
  const auto motor = std::ranges::find(rest.pulleys, PulleyRole::motor, &LoopMember::role);
  rest.sliding_pulley = static_cast<int>(motor - rest.pulleys.begin()) + 1;
  for (const Angle& direction : {-90_deg, 180_deg, 90_deg, 0_deg}) {
    BeltLoopDrive tried = rest;
    tried.slide_direction = Finite<Angle>::of(direction);
    tried.slide_back = NonNegative<Length>::of(10_mm);
    tried.slide_forth = NonNegative<Length>::of(10_mm);
    if (auto fitted = with_fitting_belt(std::move(tried), stock)) {
      return fitted;
    }
  }
  return std::nullopt;
}

} // namespace feedwright
