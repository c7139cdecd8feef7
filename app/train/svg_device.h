// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What a painter draws, as an SVG document (W3C, SVG 1.1): lines, filled shapes and words; no
// pictures, no gradients, no clipping.

#include <QByteArray>
#include <QPaintDevice>
#include <QSize>

#include <memory>

namespace feedwright {

class SvgEngine;

class SvgDevice : public QPaintDevice {
public:
  explicit SvgDevice(const QSize& size);
  ~SvgDevice() override;

  QPaintEngine* paintEngine() const override;
  /// After the painter has ended. Deterministic.
  QByteArray document() const;

protected:
  int metric(PaintDeviceMetric metric) const override;

private:
  QSize size_;
  std::unique_ptr<SvgEngine> engine_;
};

} // namespace feedwright
