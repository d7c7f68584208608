#include "app/desktop/circuit/circuit_painter.h"
#include "app/desktop/circuit/drawing.h"
#include "app/desktop/circuit/palette.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <QImage>
#include <QPainter>

using namespace pumpwright;

namespace {

Circuit van() {
    CircuitBuilder builder = vanVacuumSide();
    Circuit circuit = addPumpFeed(builder).build();
    circuit.wires.at({"w2"}).colour = "RD";
    return circuit;
}

QImage painted(const QRectF& target, PaintStyle style) {
    QImage image(900, 600, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintCircuit(painter, van(), target, style);
    return image;
}

int inkOutside(const QImage& image, const QRect& area) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            count += !area.contains(x, y) && image.pixel(x, y) != qRgb(255, 255, 255) ? 1 : 0;
        }
    }
    return count;
}

int mostColour(const QImage& image) {
    int most = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            most = std::max(most, image.pixelColor(x, y).saturation());
        }
    }
    return most;
}

} // namespace

TEST_CASE("on paper a line below a part's text is parted round the letters", "[painter]") {
    const PartPicture picture = pictureOf(van().parts.begin()->second);
    REQUIRE_FALSE(picture.texts.empty());
    const auto paperLeft = [&](double textScale) {
        QImage image(400, 400, QImage::Format_ARGB32_Premultiplied);
        image.fill(Qt::gray); // a line as wide as the sheet
        QPainter painter(&image);
        painter.translate(200, 200);
        CircuitDrawing(lightPalette(), textScale).drawTexts(painter, picture, {});
        painter.end();
        int count = 0;
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x) {
                count += image.pixelColor(x, y) == lightPalette().paper ? 1 : 0;
            }
        }
        return count;
    };
    CHECK(paperLeft(1.5) > 100);
    CHECK(paperLeft(1) == 0);
}

TEST_CASE("a circuit is drawn inside its target and fills it one way", "[painter]") {
    const QRect target(100, 50, 700, 400);
    const QImage image = painted(target, PaintStyle::Print);
    CHECK(inkOutside(image, target.adjusted(-1, -1, 1, 1)) == 0);
    CHECK(inkOutside(image, {}) > 1000);
    const QRectF bounds = circuitBounds(van());
    const double scale = std::min(target.width() / bounds.width(), target.height() / bounds.height());
    CHECK(scale > 0);
    CHECK(smallestTextHeight() > 0);
}

TEST_CASE("print has no colour, the screen has", "[painter]") {
    CHECK(mostColour(painted({0, 0, 900, 600}, PaintStyle::Print)) == 0);
    CHECK(mostColour(painted({0, 0, 900, 600}, PaintStyle::Light)) > 100);
}

TEST_CASE("nothing is drawn of an empty circuit or into an empty target", "[painter]") {
    CHECK(circuitBounds({}).isEmpty());
    CHECK(inkOutside(painted({}, PaintStyle::Print), {}) == 0);
}
