// SPDX-License-Identifier: GPL-3.0-or-later

// A study's name, its axes' labels, its curves as a table.

#include "limits/number_text.h"
#include "studies/study_figure.h"

#include <QCoreApplication>

namespace feedwright {

QString study_name(Study study) {
  switch (study) {
  case Study::thrust: return QCoreApplication::translate("Studies", "Thrust");
  case Study::acceleration: return QCoreApplication::translate("Studies", "Acceleration");
  case Study::stretch: return QCoreApplication::translate("Studies", "Stretch");
  case Study::motor: break;
  }
  return QCoreApplication::translate("Studies", "Motor torque");
}

namespace {

QString with_unit(const QString& name, const QString& unit) {
  return QCoreApplication::translate("Studies", "%1, %2", "what an axis shows, its unit")
      .arg(name, unit);
}

} // namespace

QString x_axis_label(const StudyFigure& figure) {
  return with_unit(figure.x_name, figure.x_unit);
}

QString y_axis_label(const StudyFigure& figure) {
  return with_unit(figure.y_name, figure.y_unit);
}

QString as_table(const StudyFigure& figure) {
  QString table;
  for (const StudyCurve& curve : figure.curves) {
    table += x_axis_label(figure) + QLatin1Char('\t') + with_unit(curve.label, figure.y_unit) +
             QLatin1Char('\n');
    for (std::size_t i = 0; i < curve.x.size(); ++i) {
      table += number_text(curve.x[i], 6) + QLatin1Char('\t') + number_text(curve.y[i], 6) +
               QLatin1Char('\n');
    }
    table += QLatin1Char('\n');
  }
  return table;
}

} // namespace feedwright
