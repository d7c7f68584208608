#include "app/desktop/circuit/clipboard.h"

#include "app/desktop/circuit/circuit_painter.h"
#include "core/files/circuit_file.h"

#include <QBuffer>
#include <QImage>
#include <QMimeData>
#include <QPainter>
#include <QSvgGenerator>

#include <algorithm>

namespace pumpwright {
namespace {

using namespace Qt::StringLiterals;

constexpr double kImageScale = 2;    ///< pixels to a scene unit
constexpr double kMostPixels = 4000; ///< of a side: parts may lie kilometres of paper apart
constexpr double kMargin = 10;       ///< scene units round the picture

QByteArray svgOf(const Circuit& fragment, const QSizeF& size) {
    QBuffer buffer;
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setViewBox(QRectF(QPointF(), size));
    generator.setSize(size.toSize());
    QPainter painter(&generator);
    paintCircuit(painter, fragment, QRectF(QPointF(), size).adjusted(kMargin, kMargin, -kMargin, -kMargin),
                 PaintStyle::Light);
    painter.end();
    return buffer.data();
}

QImage imageOf(const Circuit& fragment, const QSizeF& size) {
    const double scale = std::min({kImageScale, kMostPixels / size.width(), kMostPixels / size.height()});
    QImage image((size * scale).toSize().expandedTo({1, 1}), QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.scale(scale, scale);
    paintCircuit(painter, fragment, QRectF(QPointF(), size).adjusted(kMargin, kMargin, -kMargin, -kMargin),
                 PaintStyle::Light);
    return image;
}

} // namespace

std::unique_ptr<QMimeData> clipboardData(const Circuit& fragment) {
    const QSizeF size = circuitBounds(fragment).size() + QSizeF(2 * kMargin, 2 * kMargin);
    auto data = std::make_unique<QMimeData>();
    data->setData(QString::fromLatin1(kFragmentMimeType), QByteArray::fromStdString(fragmentText(fragment)));
    data->setData(u"image/svg+xml"_s, svgOf(fragment, size));
    data->setImageData(imageOf(fragment, size));
    return data;
}

std::optional<Circuit> fragmentFrom(const QMimeData& data) {
    const QString type = QString::fromLatin1(kFragmentMimeType);
    if (!data.hasFormat(type)) {
        return std::nullopt;
    }
    Result<Circuit> fragment = parseFragment(data.data(type).toStdString());
    return fragment ? std::optional(std::move(*fragment)) : std::nullopt;
}

} // namespace pumpwright
