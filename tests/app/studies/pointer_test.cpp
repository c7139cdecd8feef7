// SPDX-License-Identifier: GPL-3.0-or-later
#include "studies/studies_view.h"
#include "studies/study_canvas.h"
#include "support/studies.h"
#include "support/window.h"

#include <qcustomplot.h>

using namespace feedwright;
using feedwright::testing::machine_in;

TEST_CASE("what the pointer reads off goes with it, and the plot stands still meanwhile") {
  for (const Study study : {Study::thrust, Study::stretch, Study::torque}) {
    feedwright::testing::Shown shown(machine_in("/sample-machines/", "plank-router"));
    shown.window->show_study(static_cast<int>(study));
    QCoreApplication::processEvents();
    StudyCanvas& canvas = shown.window->studies().canvas();
    QCustomPlot& plot = canvas.plot();
    plot.replot(QCustomPlot::rpImmediateRefresh);
    const QString sentence = canvas.reading();
    const QSize before = plot.size();
    QTest::mouseMove(&plot, plot.axisRect()->center());
    QCoreApplication::processEvents();
    CHECK(canvas.reading() != sentence);
    CHECK(plot.size() == before);
    QEvent leave(QEvent::Leave);
    QCoreApplication::sendEvent(&plot, &leave);
    QCoreApplication::processEvents();
    CHECK(canvas.reading() == sentence);
    CHECK(plot.findChildren<QObject*>(QStringLiteral("cursor_line")).isEmpty());
    CHECK(plot.size() == before);
    // The keyboard's stays, wherever the pointer goes.
    QTest::keyClick(&plot, Qt::Key_Right);
    QCoreApplication::sendEvent(&plot, &leave);
    CHECK(canvas.reading() != sentence);
  }
}
