// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// One function a study; study_figure() chooses among them.

#include "studies/study_figure.h"

namespace feedwright {

StudyFigure thrust_figure(const StudySubject& subject);
StudyFigure acceleration_figure(const StudySubject& subject);
StudyFigure stretch_figure(const StudySubject& subject);
/// The same of a belt that hauls.
StudyFigure belt_stretch_figure(const StudySubject& subject);
StudyFigure motor_figure(const StudySubject& subject);
StudyFigure move_figure(const StudySubject& subject);
StudyFigure errors_figure(const StudySubject& subject);
StudyFigure torque_figure(const StudySubject& subject);

} // namespace feedwright
