#include "app/desktop/circuit/geometry.h"
#include "tests/support/catch.h"

using namespace pumpwright;

TEST_CASE("turning grid points and turning drawings agree in all eight positions", "[geometry]") {
    for (int position = 0; position < 8; ++position) {
        Part part;
        part.quarterTurns = position % 4;
        part.mirrored = position >= 4;
        for (const GridPoint local : {GridPoint{2, 0}, GridPoint{-3, 5}, GridPoint{0, -1}}) {
            INFO("position " << position);
            CHECK(nearestGridPoint(turning(part).map(scenePoint(local))) == turned(part, local));
        }
    }
}

TEST_CASE("a quarter turn is clockwise, as people see it", "[geometry]") {
    Part part;
    part.quarterTurns = 1;
    CHECK(turned(part, {0, -2}) == GridPoint{2, 0});
    part.mirrored = true;
    CHECK(turned(part, {2, 0}) == GridPoint{0, -2});
}

TEST_CASE("places snap to the nearest grid point", "[geometry]") {
    CHECK(nearestGridPoint({29.9, -9.9}) == GridPoint{1, 0});
    CHECK(nearestGridPoint({30.1, -10.1}) == GridPoint{2, -1});
}

TEST_CASE("a side's opposite leads back", "[geometry]") {
    for (const Side side : {Side::Right, Side::Down, Side::Left, Side::Up}) {
        CHECK(stepTowards(side) + stepTowards(opposite(side)) == GridPoint{0, 0});
    }
}
