// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/study_figure.h"

#include "studies/figures.h"

#include <algorithm>

namespace feedwright {

namespace {

StudyFigure made(Study study, const StudySubject& subject) {
  switch (study) {
  case Study::thrust: return thrust_figure(subject);
  case Study::acceleration: return acceleration_figure(subject);
  case Study::stretch: return stretch_figure(subject);
  case Study::motor: return motor_figure(subject);
  case Study::move: return move_figure(subject);
  case Study::errors: return errors_figure(subject);
  case Study::torque: break;
  }
  return torque_figure(subject);
}

} // namespace

bool StudyFigure::is_empty() const {
  return stacks.empty() && std::ranges::all_of(panels, [](const StudyPanel& panel) {
           return std::ranges::all_of(panel.curves,
                                      [](const StudyCurve& curve) { return curve.x.empty(); });
         });
}

StudyFigure study_figure(Study study, const StudySubject& subject) {
  StudyFigure figure = made(study, subject);
  figure.title = study_name(study);
  return figure;
}

} // namespace feedwright
