#include "app/desktop/sheet/drive_figure.h"

#include <QImage>
#include <QImageWriter>
#include <QPainter>
#include <QSaveFile>

namespace pumpwright {

Result<void> writeDriveChartPng(const QString& path, const DriveResult& drive, const Circuit& circuit) {
    constexpr QSize kPixels(1800, 1200);
    constexpr double kMargin = 40;
    constexpr double kScale = 0.7; ///< pixels to a sheet unit
    QImage image(kPixels, QImage::Format_RGB32);
    image.fill(Qt::white);
    {
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.scale(kScale, kScale);
        const QRectF box(kMargin, kMargin, kPixels.width() / kScale - 2 * kMargin,
                         kPixels.height() / kScale - 2 * kMargin);
        paintDriveFigure(painter, box, driveFigure(circuit, drive));
    }
    QSaveFile file(path);
    QImageWriter writer(&file, "png");
    if (!file.open(QIODevice::WriteOnly) || !writer.write(image) || !file.commit()) {
        return tl::unexpected(
            Error{ErrorCode::FileUnwritable,
                  QStringLiteral("The drive chart can't be written: %1. Choose another folder or file name.")
                      .arg(file.errorString())
                      .toStdString(),
                  {path.toStdString(), 0, {}}});
    }
    return {};
}

} // namespace pumpwright
