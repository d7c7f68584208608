#include "app/desktop/circuit/find_objects.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

using namespace pumpwright;

namespace {

Circuit circuit() {
    return CircuitBuilder()
        .part("fuse", "F1", {{"rating_A", 15}})
        .part("fuse", "F10", {{"rating_A", 20}})
        .part("lamp", "P1")
        .wire("F1.2", "P1.1", 0.75e-6)
        .build();
}

} // namespace

TEST_CASE("an exact reference comes before those that only begin so", "[find]") {
    const auto found = findObjects(circuit(), QStringLiteral("f1"));
    REQUIRE(found.size() == 2);
    CHECK(found[0] == SelectedObjects{{{"F1"}}, {}, {}});
    CHECK(found[1] == SelectedObjects{{{"F10"}}, {}, {}});
}

TEST_CASE("values are found as they are shown", "[find]") {
    CHECK(findObjects(circuit(), QStringLiteral("20 A")).front() == SelectedObjects{{{"F10"}}, {}, {}});
    CHECK(findObjects(circuit(), QStringLiteral("0.75 mm²")).front() == SelectedObjects{{}, {{"w1"}}, {}});
}

TEST_CASE("kinds are found, and nothing for an empty or a foreign text", "[find]") {
    CHECK(findObjects(circuit(), QStringLiteral("fuse")).size() == 2);
    CHECK(findObjects(circuit(), QStringLiteral("  ")).empty());
    CHECK(findObjects(circuit(), QStringLiteral("zebra")).empty());
}
