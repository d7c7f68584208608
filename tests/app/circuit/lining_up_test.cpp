#include "app/desktop/circuit/lining_up.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

using namespace pumpwright;

namespace {

const std::vector<GridPoint> kOne{{0, 0}};

QPointF steps(double x, double y) {
    return {x * kStep, y * kStep};
}

} // namespace

TEST_CASE("without a terminal near, a move goes to the grid", "[lining-up]") {
    CHECK(linedUp(kOne, {}, steps(2.4, -3.6)) == GridPoint{2, -4});
    CHECK(linedUp(kOne, {{10, 200}}, steps(9.3, 5)) == GridPoint{9, 5});
}

TEST_CASE("a terminal that comes close to a line goes onto it, each direction by itself", "[lining-up]") {
    CHECK(linedUp(kOne, {{10, 20}}, steps(9.3, 5)) == GridPoint{10, 5});
    CHECK(linedUp(kOne, {{10, 20}}, steps(10.7, 5.2)) == GridPoint{10, 5});
    CHECK(linedUp(kOne, {{10, 20}}, steps(3, 20.7)) == GridPoint{3, 20});
    CHECK(linedUp({{0, 0}, {4, 0}}, {{10, 20}}, steps(6.6, 5)) == GridPoint{6, 5});
}

TEST_CASE("every place of the grid stays in reach, also between two lines", "[lining-up]") {
    for (int x = -5; x <= 5; ++x) {
        CHECK(linedUp(kOne, {{x - 1, 9}, {x + 1, 9}}, steps(x, 0)).x == x);
    }
}

TEST_CASE("the guide is the shortest line between terminals in line", "[lining-up]") {
    const std::vector<GridPoint> staying{{10, 20}, {10, 12}, {3, 5}};
    CHECK(guidesOf(kOne, staying, {10, 5}) == std::vector<GuideLine>{{{10, 12}, {10, 5}}, {{3, 5}, {10, 5}}});
    CHECK(guidesOf(kOne, staying, {11, 6}).empty());
}

TEST_CASE("the terminals of parts, and of all others", "[lining-up]") {
    const Circuit circuit = CircuitBuilder().part("fuse", "F1").part("lamp", "P1").build();
    const CircuitLayout layout = layoutOf(circuit);
    CHECK(terminalsOf(layout, {{"F1"}}) == terminalsOf(circuit.parts.at({"F1"})));
    CHECK(terminalsBeside(layout, {{"F1"}}) == terminalsOf(circuit.parts.at({"P1"})));
}
