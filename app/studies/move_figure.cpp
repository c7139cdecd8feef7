// SPDX-License-Identifier: GPL-3.0-or-later

// The quickest move over a distance: where it is, how fast, and what the motor is asked meanwhile.

#include "sizing/move_over_time.h"
#include "studies/figure_maker.h"
#include "studies/figures.h"
#include "text/text_of.h"

#include <algorithm>

namespace feedwright {

namespace {

constexpr int moments = 120;

class MoveMaker : FigureMaker {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  using FigureMaker::FigureMaker;

  StudyFigure make() {
    set_x(tr("time"), time_unit());
    const Length distance = subject_.move.value_or(Length(*axis_.basics.travel * 0.1));
    const auto move = move_over_time(subject_.machine, axis_, distance, moments);
    if (!move) {
      out_.summary = tr("A move needs a wanted feed and a wanted acceleration; give both.");
      return std::move(out_);
    }
    out_.x_end = in_unit(move->least_time, time_unit());
    out_.panels.clear();
    for (const MoveMoment& at : move->moments) {
      times_.push_back(in_unit(at.time, time_unit()));
    }
    add_motion(*move);
    add_torque(*move);
    out_.summary = summary(*move, distance);
    return std::move(out_);
  }

private:
  const Unit& time_unit() const { return unit(Kind::time, "s"); }

  template <class Get>
  StudyCurve curve(const QString& label, const MoveOverTime& move, const Unit& in,
                   const Get& get) const {
    StudyCurve made{label};
    made.x = times_;
    for (const MoveMoment& at : move.moments) {
      made.y.push_back(in_unit(get(at), in));
    }
    return made;
  }

  template <class Get>
  void add_panel(const QString& name, const MoveOverTime& move, const Unit& in, const Get& get) {
    StudyPanel made{name, text_of(in.symbol)};
    made.curves = {curve(name, move, in, get)};
    made.curves.front().named = false;
    const double high = std::ranges::max(made.curves.front().y);
    const double least = std::ranges::min(made.curves.front().y);
    constexpr double nothing = 1e-9; // of the highest: what rounding leaves of a standstill
    const double low = least < -nothing * high ? least : 0.0;
    constexpr double headroom = 1.15;
    made.y_end = high > 0.0 ? high * headroom : 1.0;
    made.y_start = low < 0.0 ? low * headroom : 0.0;
    made.numbers = {high, 0.0, low};
    made.numbers.resize(low < 0.0 ? 3 : 2);
    out_.panels.push_back(std::move(made));
  }

  void add_motion(const MoveOverTime& move) {
    add_panel(tr("position"), move, length_unit(), [](const auto& at) { return at.position; });
    add_panel(tr("feed"), move, feed_unit(), [](const auto& at) { return at.feed; });
    add_panel(tr("acceleration"), move, acceleration_unit(),
              [](const auto& at) { return at.acceleration; });
  }

  void add_torque(const MoveOverTime& move) {
    const Unit& in = torque_unit();
    add_panel(tr("motor torque"), move, in, [](const auto& at) { return at.up; });
    StudyPanel& torque = out_.panels.back();
    torque.chief = true;
    torque.numbers.clear();
    if (move.sloping) {
      torque.curves.front().label = tr("motor torque, upwards");
      torque.curves.push_back(
          curve(tr("motor torque, downwards"), move, in, [](const auto& at) { return at.down; }));
      torque.curves.back().dash = 1;
      torque.curves.front().caption = tr("upwards");
      torque.curves.back().caption = tr("downwards");
      torque.curves.front().named = true;
    }
    StudyBand available{tr("available")};
    available.x = times_;
    for (const MoveMoment& at : move.moments) {
      available.high.push_back(in_unit(at.usable.value_or(Torque()), in));
      available.low.push_back(-available.high.back());
    }
    scale_torque(torque, available);
    torque.bands = {std::move(available)};
    torque.marks.push_back({pressed_label(move), times_[told(move).at], in_unit(asked(move), in),
                            move.verdict, false});
  }

  /// What counts: where it stalls, or first has too little to rely on, or is hardest pressed.
  static const PressedMoment& told(const MoveOverTime& move) {
    return move.stalls ? *move.stalls : move.lacks ? *move.lacks : move.hardest;
  }

  static Torque asked(const MoveOverTime& move) {
    const MoveMoment& at = move.moments[told(move).at];
    return told(move).upwards ? at.up : at.down;
  }

  /// Holds the torque asked whole, and of the available what is not far beyond.
  static void scale_torque(StudyPanel& panel, const StudyBand& available) {
    double most = 0.0;
    for (const StudyCurve& each : panel.curves) {
      for (const double y : each.y) {
        most = std::max(most, std::abs(y));
      }
    }
    constexpr double far_beyond = 2.2;
    const double has = std::ranges::max(available.high);
    panel.y_end = std::max(most, std::min(has, most * far_beyond)) * 1.15;
    panel.y_end = panel.y_end > 0.0 ? panel.y_end : 1.0;
    panel.y_start = -panel.y_end;
  }

  QString pressed_label(const MoveOverTime& move) const {
    const MoveMoment& at = move.moments[told(move).at];
    const Torque has = move.stalls ? *at.whole : *at.usable;
    return tr("asks %1, has %2").arg(text(asked(move), torque_unit()), text(has, torque_unit()));
  }

  QString summary(const MoveOverTime& move, Length distance) const {
    const QString way = text(distance, length_unit());
    const QString time = text(move.least_time, time_unit());
    const QString feed = text(move.peak_feed, feed_unit());
    const QString took =
        move.feed_reached
            ? tr("%1 take at least %2, at %3 in the middle.").arg(way, time, feed)
            : tr("%1 take at least %2; the way is too short for the wanted feed, it comes to %3.")
                  .arg(way, time, feed);
    return with_stop(unknown_told(pressed_told(took, move), move), move.peak_feed);
  }

  QString pressed_told(const QString& took, const MoveOverTime& move) const {
    const QString at = text(move.moments[told(move).at].time, time_unit());
    const QString label = pressed_label(move);
    if (move.stalls) {
      return tr("%1 The motor would stall at %2: %3. What is drawn after that would not happen.",
                "sentence, time, asked and available torque")
          .arg(took, at, label);
    }
    return move.lacks ? tr("%1 From %2 on the motor is asked more than can be relied on: %3.",
                           "sentence, time, asked and usable torque")
                            .arg(took, at, label)
                      : tr("%1 The motor is hardest pressed at %2: %3.",
                           "sentence, time, asked and available torque")
                            .arg(took, at, label);
  }

  QString unknown_told(const QString& told, const MoveOverTime& move) const {
    return move.unknown
               ? tr("%1 From %2 on it turns past the end of its curve: nothing is known of "
                    "its torque there.",
                    "sentence, time")
                     .arg(told, text(move.moments[*move.unknown].time, time_unit()))
               : told;
  }

  std::vector<double> times_;
};

} // namespace

StudyFigure move_figure(const StudySubject& subject) {
  return MoveMaker(subject).make();
}

} // namespace feedwright
