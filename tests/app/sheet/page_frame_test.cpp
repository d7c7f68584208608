#include "app/desktop/sheet/page_frame.h"
#include "tests/support/catch.h"

#include <QImage>
#include <QPainter>

using namespace pumpwright;

namespace {

/// A pixel is a sheet unit, a tenth of a millimetre.
QImage frameOn(SheetSize size) {
    QImage image(sheetExtent(size).toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    PageFrame(size).paintFrame(painter);
    return image;
}

/// Dark pixels of a row or column between two positions.
int inkAcross(const QImage& image, QPoint from, QPoint to) {
    int ink = 0;
    const QPoint step((to.x() > from.x()) - (to.x() < from.x()), (to.y() > from.y()) - (to.y() < from.y()));
    for (QPoint at = from; at != to; at += step) {
        ink += qGray(image.pixel(at)) < 128 ? 1 : 0;
    }
    return ink;
}

} // namespace

TEST_CASE("the frame leaves 20 mm to file the sheet and 10 mm on the other sides, in a line of 0.7 mm",
          "[sheet][frame]") {
    // ISO 5457, 4.2 (borders and frame): value from memory of ISO 5457.
    const QImage image = frameOn(SheetSize::A4); // 297 mm × 210 mm on its side
    const int y = 700;
    const int x = 700;
    CHECK(inkAcross(image, {196, y}, {204, y}) == 7);
    CHECK(inkAcross(image, {2866, y}, {2874, y}) == 7);
    CHECK(inkAcross(image, {x, 96}, {x, 104}) == 7);
    CHECK(inkAcross(image, {x, 1996}, {x, 2004}) == 7);
    CHECK(inkAcross(image, {210, y}, {700, y}) == 0);
}

TEST_CASE("centring marks stand on the axes of all four sides", "[sheet][frame]") {
    // ISO 5457, 4.3 (centring marks), 0.7 mm wide: value from memory of ISO 5457. The axes are those of the
    // frame.
    const QImage image = frameOn(SheetSize::A4);
    const int x = (200 + 2870) / 2;
    const int y = (100 + 2000) / 2;
    CHECK(inkAcross(image, {x - 20, 75}, {x + 20, 75}) == 7);
    CHECK(inkAcross(image, {x - 20, 2025}, {x + 20, 2025}) == 7);
    CHECK(inkAcross(image, {175, y - 20}, {175, y + 20}) == 7);
    CHECK(inkAcross(image, {2895, y - 20}, {2895, y + 20}) == 7);
}

TEST_CASE("zones are 50 mm long from the axes outwards, with letters and numbers", "[sheet][frame]") {
    // ISO 5457, 4.4 (grid reference system): value from memory of ISO 5457.
    const QImage image = frameOn(SheetSize::A4);
    const int x = (200 + 2870) / 2;
    for (const int edge : {x - 500, x + 500, x + 1000}) {
        CHECK(inkAcross(image, {edge - 10, 70}, {edge + 10, 70}) > 0);
    }
    CHECK(inkAcross(image, {x + 200, 75}, {x + 300, 75}) > 0); // the zone's number
}
