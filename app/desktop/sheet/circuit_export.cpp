#include "app/desktop/sheet/circuit_export.h"

#include "app/desktop/circuit/circuit_painter.h"
#include "app/desktop/sheet/written_file.h"

#include <QBuffer>
#include <QFileInfo>
#include <QImage>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>

#include <algorithm>

namespace pumpwright {
namespace {

constexpr double kUnitsPerMillimetre = 4; ///< of the scene: 20 to 5 mm

/// Never empty, so that an empty circuit gives an empty drawing.
QSizeF drawingSize(const Circuit& circuit) {
    return circuitBounds(circuit).size().expandedTo({1, 1});
}

void paintInto(QPaintDevice& device, const Circuit& circuit, const QSizeF& size, double scale) {
    QPainter painter(&device);
    painter.scale(scale, scale);
    paintCircuit(painter, circuit, QRectF(QPointF(), size), PaintStyle::Print);
}

QByteArray svgOf(const Circuit& circuit, const QSizeF& size) {
    QBuffer drawing;
    QSvgGenerator generator;
    generator.setOutputDevice(&drawing);
    generator.setSize(size.toSize());
    generator.setViewBox(QRectF(QPointF(), size));
    paintInto(generator, circuit, size, 1);
    return drawing.data();
}

/// Two pixels to a scene unit, which is 203 dpi; less for circuits beyond 8,000 pixels.
QByteArray pngOf(const Circuit& circuit, const QSizeF& size) {
    constexpr double kMost = 8000;
    const double scale = std::min({2.0, kMost / size.width(), kMost / size.height()});
    QImage image((size * scale).toSize().expandedTo({1, 1}), QImage::Format_RGB32);
    image.fill(Qt::white);
    paintInto(image, circuit, size, scale);
    QBuffer picture;
    picture.open(QIODevice::WriteOnly);
    image.save(&picture, "PNG");
    return picture.data();
}

QByteArray pdfOf(const Circuit& circuit, const QSizeF& size) {
    constexpr double kMillimetresPerInch = 25.4;
    QBuffer file;
    file.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&file);
        writer.setCreator(QStringLiteral("Pumpwright"));
        writer.setResolution(600);
        writer.setPageLayout(
            {QPageSize(size / kUnitsPerMillimetre, QPageSize::Millimeter, QString(), QPageSize::ExactMatch),
             QPageLayout::Portrait, QMarginsF()});
        paintInto(writer, circuit, size, writer.resolution() / kMillimetresPerInch / kUnitsPerMillimetre);
    }
    return file.data();
}

} // namespace

Result<void> writeCircuitDrawing(const QString& path, const Circuit& circuit) {
    const QString suffix = QFileInfo(path).suffix().toLower();
    const QSizeF size = drawingSize(circuit);
    QByteArray bytes;
    if (suffix == QLatin1String("svg")) {
        bytes = svgOf(circuit, size);
    } else if (suffix == QLatin1String("png")) {
        bytes = pngOf(circuit, size);
    } else if (suffix == QLatin1String("pdf")) {
        bytes = pdfOf(circuit, size);
    } else {
        return unwritableFile(
            path, QStringLiteral("The drawing can't be written in this form. End the file name in "
                                 ".svg, .png or .pdf."));
    }
    return writeWholeFile(path, bytes, QStringLiteral("The drawing"));
}

} // namespace pumpwright
