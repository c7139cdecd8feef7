// SPDX-License-Identifier: GPL-3.0-or-later
#include "train/svg_device.h"

#include <QFontInfo>
#include <QPaintEngine>
#include <QPainterPath>
#include <QPen>

#include <utility>

namespace feedwright {

namespace {

constexpr int dots_per_inch = 96; // a CSS pixel

QString number(double value) {
  return QString::number(value, 'f', 2);
}

QString colour(const char* what, const QColor& shade) {
  QString text = QStringLiteral(" %1=\"%2\"").arg(QLatin1String(what), shade.name());
  if (shade.alpha() < 255) {
    text += QStringLiteral(" %1-opacity=\"%2\"").arg(QLatin1String(what), number(shade.alphaF()));
  }
  return text;
}

QString path_data(const QPainterPath& path) {
  QString data;
  for (int i = 0; i < path.elementCount(); ++i) {
    const QPainterPath::Element at = path.elementAt(i);
    const char* letter = at.isMoveTo() ? "M" : at.isLineTo() ? "L" : at.isCurveTo() ? "C" : "";
    data +=
        QLatin1String(letter) + number(at.x) + QLatin1Char(' ') + number(at.y) + QLatin1Char(' ');
  }
  return data.trimmed();
}

} // namespace

class SvgEngine : public QPaintEngine {
public:
  SvgEngine() : QPaintEngine(QPaintEngine::AllFeatures) {}

  bool begin(QPaintDevice*) override {
    body_.clear();
    return true;
  }
  bool end() override { return true; }
  Type type() const override { return QPaintEngine::User; }

  void updateState(const QPaintEngineState& now) override {
    if (now.state() & DirtyPen) {
      pen_ = now.pen();
    }
    if (now.state() & DirtyBrush) {
      brush_ = now.brush();
    }
    if (now.state() & DirtyTransform) {
      transform_ = now.transform();
    }
  }

  void drawPath(const QPainterPath& path) override {
    body_ += QStringLiteral("<path d=\"%1\"").arg(path_data(transform_.map(path))) + fill() +
             stroke() + QStringLiteral("/>\n");
  }

  void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override {
    QPainterPath path;
    path.addPolygon(QPolygonF(QList<QPointF>(points, points + count)));
    if (mode != PolylineMode) {
      path.closeSubpath();
      drawPath(path);
      return;
    }
    const QBrush kept = std::exchange(brush_, QBrush(Qt::NoBrush));
    drawPath(path);
    brush_ = kept;
  }

  void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}

  void drawTextItem(const QPointF& at, const QTextItem& item) override {
    const QFontInfo font(item.font());
    const QPointF place = transform_.map(at);
    body_ += QStringLiteral("<text x=\"%1\" y=\"%2\" font-family=\"%3\" font-size=\"%4\"%5%6>%7"
                            "</text>\n")
                 .arg(number(place.x()), number(place.y()),
                      font.family().toHtmlEscaped() + QStringLiteral(", sans-serif"),
                      number(font.pointSizeF() * dots_per_inch / 72.0),
                      font.bold() ? QStringLiteral(" font-weight=\"bold\"") : QString(),
                      colour("fill", pen_.color()), item.text().toHtmlEscaped());
  }

  const QString& body() const { return body_; }

private:
  QString fill() const {
    return brush_.style() == Qt::NoBrush ? QStringLiteral(" fill=\"none\"")
                                         : colour("fill", brush_.color());
  }

  QString stroke() const {
    if (pen_.style() == Qt::NoPen) {
      return {};
    }
    const double width = pen_.widthF() > 0.0 ? pen_.widthF() : 1.0;
    QString text =
        colour("stroke", pen_.color()) + QStringLiteral(" stroke-width=\"%1\"").arg(number(width));
    if (pen_.style() != Qt::SolidLine) {
      QStringList dashes;
      for (const double dash : pen_.dashPattern()) {
        dashes << number(dash * width);
      }
      text += QStringLiteral(" stroke-dasharray=\"%1\"").arg(dashes.join(QLatin1Char(' ')));
      if (pen_.dashOffset() != 0.0) {
        text += QStringLiteral(" stroke-dashoffset=\"%1\"").arg(number(pen_.dashOffset() * width));
      }
    }
    return text;
  }

  QString body_;
  QPen pen_;
  QBrush brush_;
  QTransform transform_;
};

SvgDevice::SvgDevice(const QSize& size) : size_(size), engine_(std::make_unique<SvgEngine>()) {}

SvgDevice::~SvgDevice() = default;

QPaintEngine* SvgDevice::paintEngine() const {
  return engine_.get();
}

QByteArray SvgDevice::document() const {
  return QStringLiteral("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1\" height=\"%2\" "
                        "viewBox=\"0 0 %1 %2\">\n%3</svg>\n")
      .arg(QString::number(size_.width()), QString::number(size_.height()), engine_->body())
      .toUtf8();
}

int SvgDevice::metric(PaintDeviceMetric metric) const {
  constexpr double millimetres = 25.4;
  switch (metric) {
  case PdmWidth: return size_.width();
  case PdmHeight: return size_.height();
  case PdmWidthMM: return qRound(size_.width() * millimetres / dots_per_inch);
  case PdmHeightMM: return qRound(size_.height() * millimetres / dots_per_inch);
  case PdmNumColors: return -1;
  case PdmDepth: return 32;
  case PdmDpiX:
  case PdmDpiY:
  case PdmPhysicalDpiX:
  case PdmPhysicalDpiY: return dots_per_inch;
  case PdmDevicePixelRatio: return 1;
  case PdmDevicePixelRatioScaled: return qRound(devicePixelRatioFScale());
  }
  return 0;
}

} // namespace feedwright
