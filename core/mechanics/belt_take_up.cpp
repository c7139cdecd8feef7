// SPDX-License-Identifier: GPL-3.0-or-later
#include "mechanics/belt_take_up.h"

#include <algorithm>
#include <array>
#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <limits>
#include <utility>

namespace feedwright {

namespace {

/// Length of the loop over the position of its slide; built once, called often.
class SlidingLoop {
public:
  SlidingLoop(std::span<const LoopPulley> pulleys, const TakeUp& take_up, LoopSense sense)
      : count_(pulleys.size()), pulley_(take_up.pulley), sense_(sense) {
    std::ranges::copy(pulleys, pulleys_.begin());
    drawn_ = pulleys_[pulley_];
    cosine_ = std::cos(si_value(take_up.direction));
    sine_ = std::sin(si_value(take_up.direction));
  }

  std::optional<Length> length(Length position) {
    pulleys_[pulley_].x = drawn_.x + position * cosine_;
    pulleys_[pulley_].y = drawn_.y + position * sine_;
    const auto length = belt_loop_length(std::span(pulleys_.data(), count_), sense_);
    return length ? std::optional(*length) : std::nullopt;
  }

private:
  std::array<LoopPulley, most_loop_pulleys> pulleys_ = {};
  std::size_t count_;
  std::size_t pulley_;
  LoopSense sense_;
  LoopPulley drawn_ = {};
  double cosine_ = 1.0;
  double sine_ = 0.0;
};

bool is_slide(std::span<const LoopPulley> pulleys, const TakeUp& take_up) {
  return pulleys.size() >= 2 && pulleys.size() <= most_loop_pulleys &&
         take_up.pulley < pulleys.size() && std::isfinite(si_value(take_up.direction));
}

bool has_range(const TakeUp& take_up) {
  const double range = si_value(take_up.back + take_up.forth);
  return std::isfinite(si_value(take_up.back)) && std::isfinite(range) && range > 0.0;
}

struct Sample {
  Length position, length;
};

/// Between two samples the length is taken to rise or to fall throughout.
struct Piece {
  Sample nearer, farther; ///< from the drawn centre
};

/// The last sound position on the way from a sound one to a faulty one.
Sample edge_of_soundness(SlidingLoop& loop, Sample sound, Length faulty) {
  constexpr int halvings = 50;
  for (int i = 0; i < halvings; ++i) {
    const Length middle = (sound.position + faulty) / 2.0;
    if (const auto length = loop.length(middle)) {
      sound = {middle, *length};
    } else {
      faulty = middle;
    }
  }
  return sound;
}

/// Shortest or longest loop between two positions, all sound.
std::optional<Sample> turning_point(SlidingLoop& loop, const Sample& from, const Sample& to,
                                    double sign) {
  const auto height = [&](double position) {
    return sign * si_value(loop.length(from_si<Length>(position)).value_or(from.length));
  };
  std::uintmax_t rounds = 100;
  const double at =
      boost::math::tools::brent_find_minima(height, si_value(from.position), si_value(to.position),
                                            std::numeric_limits<double>::digits / 2, rounds)
          .first;
  const auto length = loop.length(from_si<Length>(at));
  return length ? std::optional(Sample{from_si<Length>(at), *length}) : std::nullopt;
}

/// Puts the turning points that lie between samples among them.
std::vector<Sample> with_turning_points(SlidingLoop& loop, const std::vector<Sample>& run) {
  std::vector<Sample> out;
  for (std::size_t i = 0; i < run.size(); ++i) {
    out.push_back(run[i]);
    if (i == 0 || i + 1 == run.size()) {
      continue;
    }
    const bool falls_then_rises =
        run[i].length < run[i - 1].length && run[i].length <= run[i + 1].length;
    const bool rises_then_falls =
        run[i].length > run[i - 1].length && run[i].length >= run[i + 1].length;
    if (!falls_then_rises && !rises_then_falls) {
      continue;
    }
    const auto turn = turning_point(loop, run[i - 1], run[i + 1], falls_then_rises ? 1.0 : -1.0);
    if (turn && turn->position != run[i].position) {
      out.insert(turn->position < run[i].position ? out.end() - 1 : out.end(), *turn);
    }
  }
  return out;
}

/// Appends the run's pieces, cut at the drawn centre, the end nearer to it first.
void cut_into_pieces(SlidingLoop& loop, const std::vector<Sample>& run,
                     std::vector<Piece>& pieces) {
  const std::vector<Sample> samples = with_turning_points(loop, run);
  for (std::size_t i = 1; i < samples.size(); ++i) {
    const Sample& a = samples[i - 1];
    const Sample& b = samples[i];
    const bool straddles = a.position < Length() && b.position > Length();
    if (const auto drawn = straddles ? loop.length(Length()) : std::nullopt) {
      pieces.push_back({{Length(), *drawn}, a});
      pieces.push_back({{Length(), *drawn}, b});
    } else if (abs(a.position) <= abs(b.position)) {
      pieces.push_back({a, b});
    } else {
      pieces.push_back({b, a});
    }
  }
}

/// All pieces of the slide's range over which the loop is sound, nearest to the drawn centre first.
std::vector<Piece> monotone_pieces(SlidingLoop& loop, const TakeUp& take_up) {
  constexpr int steps = 256;
  std::vector<Piece> pieces;
  std::vector<Sample> run;
  Length before = Length();
  for (int i = 0; i <= steps; ++i) {
    const Length position = -take_up.back + (take_up.back + take_up.forth) * (double(i) / steps);
    const auto length = loop.length(position);
    if (length) {
      const Sample sample{position, *length};
      if (run.empty() && i > 0) {
        run.push_back(edge_of_soundness(loop, sample, before));
      }
      run.push_back(sample);
    } else if (!run.empty()) {
      run.push_back(edge_of_soundness(loop, run.back(), position));
      cut_into_pieces(loop, run, pieces);
      run.clear();
    }
    before = position;
  }
  cut_into_pieces(loop, run, pieces);
  std::ranges::stable_sort(pieces, {}, [](const Piece& p) { return abs(p.nearer.position); });
  return pieces;
}

/// Where in the piece the loop has that length; it lies between the ends' lengths, or by rounding
/// just beyond one.
Length solve(SlidingLoop& loop, const Piece& piece, Length wanted) {
  const Sample& a = piece.nearer.position < piece.farther.position ? piece.nearer : piece.farther;
  const Sample& b = piece.nearer.position < piece.farther.position ? piece.farther : piece.nearer;
  const double at_a = si_value(a.length - wanted);
  const double at_b = si_value(b.length - wanted);
  if (at_a * at_b >= 0.0) {
    return std::abs(at_a) < std::abs(at_b) ? a.position : b.position;
  }
  const auto excess = [&](double position) {
    return si_value(loop.length(from_si<Length>(position)).value_or(a.length) - wanted);
  };
  std::uintmax_t rounds = 100;
  const auto bracket = boost::math::tools::toms748_solve(
      excess, si_value(a.position), si_value(b.position), at_a, at_b,
      boost::math::tools::eps_tolerance<double>(50), rounds);
  return from_si<Length>((bracket.first + bracket.second) / 2.0);
}

/// Part of its length by which a loop may miss a wanted one through rounding.
constexpr double rounding = 1e-12;

/// The whole tooth counts of one piece, the nearest to the drawn centre first, `most` at most.
std::vector<TakeUpPosition> whole_teeth(SlidingLoop& loop, const Piece& piece, Length pitch,
                                        int most) {
  const double from = double(piece.nearer.length / pitch);
  const double to = double(piece.farther.length / pitch);
  const double slack = rounding * std::max(from, to);
  std::vector<TakeUpPosition> found;
  constexpr double largest = 1e9;
  if (std::max(from, to) > largest) {
    return found;
  }
  const bool rises = to >= from;
  int teeth = static_cast<int>(rises ? std::ceil(from - slack) : std::floor(from + slack));
  while (static_cast<int>(found.size()) < most && teeth >= 1 &&
         (rises ? teeth <= to + slack : teeth >= to - slack)) {
    found.push_back({teeth, solve(loop, piece, double(teeth) * pitch)});
    teeth += rises ? 1 : -1;
  }
  return found;
}

bool same_place(const TakeUpPosition& a, const TakeUpPosition& b, Length range) {
  constexpr double apart = 1e-7; // a turning point is found no closer
  return a.belt_teeth == b.belt_teeth && abs(a.position - b.position) <= apart * range;
}

/// The position nearest to the drawn centre that makes the loop so long.
std::optional<Length> nearest_position(SlidingLoop& loop, const TakeUp& take_up, Length wanted) {
  const Length slack = rounding * wanted;
  std::optional<Length> best;
  for (const Piece& piece : monotone_pieces(loop, take_up)) {
    const auto [shorter, longer] = std::minmax(piece.nearer.length, piece.farther.length);
    if (wanted < shorter - slack || wanted > longer + slack) {
      continue;
    }
    const Length position = solve(loop, piece, wanted);
    if (!best || abs(position) < abs(*best)) {
      best = position;
    }
  }
  return best;
}

} // namespace

std::vector<LoopPulley> at_position(std::span<const LoopPulley> pulleys, const TakeUp& take_up,
                                    Length position) {
  std::vector<LoopPulley> moved(pulleys.begin(), pulleys.end());
  if (take_up.pulley < moved.size()) {
    moved[take_up.pulley].x += position * std::cos(si_value(take_up.direction));
    moved[take_up.pulley].y += position * std::sin(si_value(take_up.direction));
  }
  return moved;
}

std::vector<TakeUpPosition> whole_tooth_positions(std::span<const LoopPulley> pulleys,
                                                  const TakeUp& take_up, Length pitch, int most) {
  std::vector<TakeUpPosition> out;
  if (!is_slide(pulleys, take_up) || !has_range(take_up) || !(pitch > Length()) ||
      !std::isfinite(si_value(pitch)) || most < 1) {
    return out;
  }
  SlidingLoop loop(pulleys, take_up, loop_sense(pulleys));
  const Length range = take_up.back + take_up.forth;
  const auto distance = [](const TakeUpPosition& p) { return abs(p.position); };
  for (const Piece& piece : monotone_pieces(loop, take_up)) {
    const bool full = static_cast<int>(out.size()) == most;
    if (full && distance(out.back()) <= abs(piece.nearer.position)) {
      break;
    }
    for (const TakeUpPosition& found : whole_teeth(loop, piece, pitch, most)) {
      if (std::ranges::none_of(out, [&](const auto& o) { return same_place(o, found, range); })) {
        out.push_back(found);
      }
    }
    std::ranges::stable_sort(out, {}, distance);
    out.resize(std::min(out.size(), static_cast<std::size_t>(most)));
  }
  std::ranges::sort(out, {}, [](const auto& p) { return std::pair(p.belt_teeth, p.position); });
  return out;
}

std::optional<Length> position_for(std::span<const LoopPulley> pulleys, const TakeUp& take_up,
                                   Length belt_length) {
  if (!is_slide(pulleys, take_up) || !has_range(take_up) || !(belt_length > Length())) {
    return std::nullopt;
  }
  SlidingLoop loop(pulleys, take_up, loop_sense(pulleys));
  return nearest_position(loop, take_up, belt_length);
}

TakeUpTravel take_up_travel(std::span<const LoopPulley> pulleys, const TakeUp& take_up,
                            Length position, Length ease, Length stretch) {
  if (!is_slide(pulleys, take_up) || !(ease >= Length()) || !(stretch >= Length())) {
    return {};
  }
  // Searched like a range of its own whose drawn centre is the fitted belt's position.
  const std::vector<LoopPulley> fitted = at_position(pulleys, take_up, position);
  SlidingLoop loop(fitted, take_up, loop_sense(pulleys));
  const auto length = loop.length(Length());
  if (!length) {
    return {};
  }
  const TakeUp around{take_up.pulley, take_up.direction, *length / 5.0, *length / 5.0};
  return {nearest_position(loop, around, *length - ease),
          nearest_position(loop, around, *length + stretch)};
}

} // namespace feedwright
