#include "app/desktop/sheet/drive_figure.h"
#include "app/desktop/sheet/written_file.h"

#include <QBuffer>
#include <QFileInfo>
#include <QImage>
#include <QPainter>
#include <QSvgGenerator>

namespace pumpwright {
namespace {

constexpr QSize kPixels(1800, 1200);

void paintChart(QPaintDevice& device, const DriveFigure& figure) {
    constexpr double kMargin = 40;
    constexpr double kScale = 0.7; ///< pixels to a sheet unit
    QPainter painter(&device);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(kScale, kScale);
    const QRectF box(kMargin, kMargin, kPixels.width() / kScale - 2 * kMargin,
                     kPixels.height() / kScale - 2 * kMargin);
    paintDriveFigure(painter, box, figure);
}

QByteArray pngOf(const DriveFigure& figure) {
    QImage image(kPixels, QImage::Format_RGB32);
    image.fill(Qt::white);
    paintChart(image, figure);
    QBuffer picture;
    picture.open(QIODevice::WriteOnly);
    image.save(&picture, "PNG");
    return picture.data();
}

QByteArray svgOf(const DriveFigure& figure) {
    QBuffer drawing;
    QSvgGenerator generator;
    generator.setOutputDevice(&drawing);
    generator.setSize(kPixels);
    generator.setViewBox(QRect(QPoint(), kPixels));
    paintChart(generator, figure);
    return drawing.data();
}

} // namespace

Result<void> writeDriveChart(const QString& path, const DriveResult& drive, const Circuit& circuit) {
    const QString suffix = QFileInfo(path).suffix().toLower();
    if (suffix != QLatin1String("png") && suffix != QLatin1String("svg")) {
        return unwritableFile(path, QStringLiteral("The drive chart can't be written in this form. End the "
                                                   "file name in .png or .svg."));
    }
    const DriveFigure figure = driveFigure(circuit, drive);
    return writeWholeFile(path, suffix == QLatin1String("png") ? pngOf(figure) : svgOf(figure),
                          QStringLiteral("The drive chart"));
}

} // namespace pumpwright
