// SPDX-License-Identifier: GPL-3.0-or-later

// A study's name, the labels of its axes and of what is marked, its read-out.

#include "limits/number_text.h"
#include "studies/study_figure.h"
#include "text/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace feedwright {

namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Studies)

public:
  static QString name(Study study) {
    switch (study) {
    case Study::thrust: return tr("Thrust");
    case Study::acceleration: return tr("Acceleration");
    case Study::stretch: return tr("Stretch");
    case Study::motor: return tr("Motor");
    case Study::move: return tr("Move");
    case Study::errors: return tr("Errors");
    case Study::torque: break;
    }
    return tr("Torque shares");
  }

  static QString with_unit(const QString& name, const QString& unit) {
    return unit.isEmpty() ? name : tr("%1, %2", "what an axis shows, its unit").arg(name, unit);
  }

  static QString along_both(const QString& bottom, const QString& top) {
    return tr("%1; along the top %2", "what the two scales show").arg(bottom, top);
  }

  static QString value(const QString& name, double value, const QString& unit) {
    return tr("%1 %2 %3", "what it is, number, unit").arg(name, number_text(value, 3), unit);
  }

  static QString value_first(const QString& name, double value, const QString& unit) {
    return tr("%1 %2 %3", "number, unit, what it is").arg(number_text(value, 3), unit, name);
  }

  static QString number(Verdict verdict, double value, const QString& unit) {
    const QString said = number_text(value, 3);
    return signed_text(verdict,
                       unit.isEmpty() ? said : tr("%1 %2", "number, unit").arg(said, unit));
  }

  static QString up_to(const QString& name, double value, const QString& unit) {
    return tr("%1 up to %2 %3", "region, number, unit").arg(name, number_text(value, 3), unit);
  }

  static QString by(const QString& verdict, const QString& limit) {
    return tr("%1: %2", "verdict with its sign, limit with its value").arg(verdict, limit);
  }
  static QString signed_text(Verdict verdict, const QString& text) {
    return verdict == Verdict::open
               ? text
               : tr("%1 %2", "sign of a margin, text").arg(words::verdict_sign(verdict), text);
  }
};

/// Where another limit has ended what reads clear, or all of it: how it reads, and by which.
QString past_stop(const StudyPanel& panel, double x) {
  const auto past = [x](const StudyBand& band) { return band.x.empty() || x > band.x.back(); };
  const auto stop = std::ranges::find_if(
      panel.lines, [](const StudyLine& line) { return line.upright && !line.target; });
  const auto open = std::ranges::find_if_not(panel.bands, past);
  if (stop == panel.lines.end() || panel.bands.empty() || open == panel.bands.begin()) {
    return {};
  }
  return Words::by(open == panel.bands.end() ? panel.over_word : open->label, stop->label);
}

void read_panel(const StudyPanel& panel, double x, QStringList& parts) {
  for (const StudyCurve& curve : panel.curves) {
    if (const auto y = value_at(curve.x, curve.y, x)) {
      parts << Words::value(curve.label, *y, panel.y_unit);
    }
  }
  for (const StudyBand& band : panel.bands) {
    const auto high = value_at(band.x, band.high, x);
    // Over a plain one that of a hatched one is the curve, which was read already.
    if (high && band.ground == StudyBand::Ground::plain) {
      parts << Words::up_to(band.label, *high, panel.y_unit);
    }
  }
  if (const QString word = past_stop(panel, x); !word.isEmpty()) {
    parts << word;
  }
}

QString read_stack(const StudyFigure& figure, double x) {
  const double last = double(figure.stacks.size()) - 1.0;
  const StudyStack& stack =
      figure.stacks[static_cast<std::size_t>(std::clamp(std::floor(x), 0.0, last))];
  const QString& unit = figure.panels.front().y_unit;
  QStringList parts{stack.name};
  for (const StackPart& part : stack.parts) {
    parts << part_text(part, unit);
  }
  for (const StackTick& tick : stack.ticks) {
    parts << tick_text(tick, unit);
  }
  for (const StackNote& note : stack.notes) {
    parts << note.full;
  }
  return parts.join(QStringLiteral("  ·  "));
}

} // namespace

QString study_name(Study study) {
  return Words::name(study);
}

QString x_axis_label(const StudyFigure& figure) {
  return Words::with_unit(figure.x_name, figure.x_unit);
}

QString top_axis_label(const StudyFigure& figure) {
  return figure.top ? Words::with_unit(figure.top->name, figure.top->unit) : QString();
}

QString both_axes_label(const StudyFigure& figure) {
  return figure.top ? Words::along_both(x_axis_label(figure), top_axis_label(figure))
                    : x_axis_label(figure);
}

QString y_axis_label(const StudyPanel& panel) {
  return Words::with_unit(panel.y_name, panel.y_unit);
}

QString mark_text(const StudyMark& mark) {
  return Words::signed_text(mark.verdict, mark.label);
}

QString tick_text(const StackTick& tick, const QString& unit) {
  return Words::signed_text(tick.verdict, Words::value_first(tick.label, tick.at, unit));
}

QString part_text(const StackPart& part, const QString& unit) {
  return Words::signed_text(part.verdict, Words::value_first(part.label, part.size, unit));
}

QString tick_number(const StackTick& tick, const QString& unit) {
  return Words::number(tick.verdict, tick.at, unit);
}

QString part_number(const StackPart& part, const QString& unit) {
  return Words::number(part.verdict, part.size, unit);
}

std::optional<double> value_at(const std::vector<double>& x, const std::vector<double>& y,
                               double at) {
  const auto above = std::lower_bound(x.begin(), x.end(), at);
  if (above == x.end() || (above == x.begin() && at < *above)) {
    return std::nullopt;
  }
  if (above == x.begin()) {
    return y.front();
  }
  const auto i = std::size_t(above - x.begin());
  const double share = (at - x[i - 1]) / (x[i] - x[i - 1]);
  return y[i - 1] + share * (y[i] - y[i - 1]);
}

QString read_out(const StudyFigure& figure, double x) {
  if (!figure.stacks.empty()) {
    return read_stack(figure, x);
  }
  QStringList parts{Words::value(figure.x_name, x, figure.x_unit)};
  if (figure.top) {
    parts << Words::value(figure.top->name, x * figure.top->per_x, figure.top->unit);
  }
  for (const StudyPanel& panel : figure.panels) {
    read_panel(panel, x, parts);
  }
  return parts.join(QStringLiteral("  ·  "));
}

} // namespace feedwright
