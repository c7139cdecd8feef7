// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/copy_train.h"

#include "train/paint_train.h"
#include "train/svg_device.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QMimeData>
#include <QPainter>

namespace feedwright {

namespace {

void paint_on(QPainter& painter, const TrainGeometry& train, const QSize& size, const QFont& font) {
  const Look look = Look::light_look();
  TrainOptions options;
  options.font = font;
  const QRectF paper(0.0, 0.0, size.width(), size.height());
  painter.fillRect(paper, look.paper);
  constexpr double margin = 8.0;
  paint_train(painter, train, paper.adjusted(margin, margin, -margin, -margin), look, options);
}

} // namespace

QImage train_image(const TrainGeometry& train, const QSize& size, const QFont& font) {
  constexpr int dots = 2;
  QImage image(size * dots, QImage::Format_RGB32);
  image.setDevicePixelRatio(dots);
  QPainter painter(&image);
  paint_on(painter, train, size, font);
  painter.end();
  return image;
}

QByteArray train_svg(const TrainGeometry& train, const QSize& size, const QFont& font) {
  SvgDevice device(size);
  QPainter painter(&device);
  paint_on(painter, train, size, font);
  painter.end();
  return device.document();
}

void copy_train(const TrainGeometry& train, const QSize& size, const QFont& font) {
  auto* copied = new QMimeData;
  copied->setImageData(train_image(train, size, font));
  copied->setData(QStringLiteral("image/svg+xml"), train_svg(train, size, font));
  QGuiApplication::clipboard()->setMimeData(copied);
}

} // namespace feedwright
