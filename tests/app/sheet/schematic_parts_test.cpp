#include "app/desktop/circuit/circuit_painter.h"
#include "app/desktop/sheet/schematic_parts.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <QImage>
#include <QPainter>

using namespace pumpwright;

namespace {

constexpr QRectF kPage{0, 0, 2600, 1700};

/// Two resistors so many grid steps apart.
Circuit spreadCircuit(int right, int down) {
    Circuit circuit = CircuitBuilder().part("resistor", "R1").part("resistor", "R2").build();
    circuit.parts.at(PartId{"R2"}).at = {right, down};
    return circuit;
}

bool hasInk(const QImage& image, const QRect& where) {
    for (int y = where.top(); y <= where.bottom(); ++y) {
        for (int x = where.left(); x <= where.right(); ++x) {
            if (qGray(image.pixel(x, y)) < 128) {
                return true;
            }
        }
    }
    return false;
}

} // namespace

TEST_CASE("a circuit that can be read on the overview is not divided", "[sheet][schematic]") {
    CHECK(SchematicParts(spreadCircuit(10, 5), kPage, kPage).count() == 0);
    CHECK(SchematicParts(Circuit{}, kPage, kPage).count() == 0);
}

TEST_CASE("a wide circuit is divided side by side, a tall one one below the other, into few parts",
          "[sheet][schematic]") {
    const SchematicParts wide(spreadCircuit(100, 5), kPage, kPage);
    CHECK(wide.count() >= 2);
    CHECK(wide.count() <= 3);
    const SchematicParts huge(spreadCircuit(1000, 1000), kPage, kPage);
    CHECK(huge.count() > 100);
}

TEST_CASE("every part of a divided schematic shows its piece", "[sheet][schematic]") {
    const Circuit circuit = spreadCircuit(100, 5);
    const SchematicParts parts(circuit, kPage, kPage);
    for (const int part : {0, parts.count() - 1}) {
        QImage image(2600, 1700, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        parts.paint(painter, circuit, part);
        painter.end();
        CHECK(hasInk(image, QRect(100, 150, 2400, 1450)));
    }
}

TEST_CASE("texts that somebody moved are printed where they stand", "[sheet][schematic]") {
    const auto hasInkAtBottomLeft = [](const Circuit& circuit) {
        const SchematicParts parts(circuit, kPage, kPage);
        QImage image(kPage.size().toSize(), QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        parts.paintOverview(painter, circuit);
        painter.end();
        return hasInk(image, QRect(0, image.height() / 2, image.width() / 2, image.height() / 2));
    };
    Circuit circuit = spreadCircuit(40, 40);
    CHECK_FALSE(hasInkAtBottomLeft(circuit));
    circuit.parts.at(PartId{"R1"}).labelFrom = LabelOffset{0, 170};
    CHECK(hasInkAtBottomLeft(circuit));
}
