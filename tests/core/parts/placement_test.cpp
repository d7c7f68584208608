#include "core/parts/part_kind.h"
#include "core/parts/placement.h"
#include "tests/support/catch.h"

using namespace pumpwright;

namespace {

Footprint footprint(const char* kind, int quarterTurns) {
    Part part = newPart(*findPartKind(kind), "Y1", {10, 20});
    part.quarterTurns = quarterTurns;
    return footprintOf(part);
}

} // namespace

TEST_CASE("a fuse takes up two steps to its ends and one to its sides", "[parts][placement]") {
    const Footprint flat = footprint("fuse", 0); // terminals two steps left and right
    CHECK(flat.least == GridPoint{8, 19});
    CHECK(flat.most == GridPoint{12, 21});
    CHECK(flat.covers({12, 21}));
    CHECK_FALSE(flat.covers({13, 20}));
    CHECK_FALSE(flat.covers({10, 22}));
}

TEST_CASE("what a part takes up turns with it", "[parts][placement]") {
    const Footprint upright = footprint("fuse", 1);
    CHECK(upright.least == GridPoint{9, 18});
    CHECK(upright.most == GridPoint{11, 22});
}

TEST_CASE("ports count like terminals", "[parts][placement]") {
    CHECK(footprint("pump", 0).covers({7, 20})); // the inlet, three steps to the left
}
