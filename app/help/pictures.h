// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Pictures in the pages of help, drawn when they are shown:
//   train:MACHINE/AXIS            the drawing of a sample's axis, counted from 1
//   train:MACHINE/AXIS/SLOT=TYPE  the same with another part in a place
//   ladder:MACHINE/AXIS/SCALE     its limits of feed, thrust or other
//   study:MACHINE/AXIS/STUDY      thrust, acceleration, stretch or motor
//   picture:NAME                  a diagram (help/diagrams.h)

#include "window/style.h"

#include <QFont>
#include <QImage>
#include <QString>

#include <optional>

namespace feedwright {

struct PictureFrame {
  Look look;
  QFont font;
  double width = 600.0;
  double pixel_ratio = 1.0; ///< dots to a unit of width
};

struct Diagram;

/// The frame's font, or smaller letters where the frame is too narrow for a diagram's words; no
/// smaller than letters usually are.
QFont diagram_font(const Diagram& diagram, const PictureFrame& frame);

/// Nothing if there is no such picture.
std::optional<QImage> help_picture(const QString& name, const PictureFrame& frame);

} // namespace feedwright
