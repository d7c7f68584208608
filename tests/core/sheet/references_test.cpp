#include "core/sheet/references.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

using namespace pumpwright;

TEST_CASE("references are ordered by letter and then by number", "[sheet][references]") {
    CHECK(referenceBefore("W2", "W10"));
    CHECK_FALSE(referenceBefore("W10", "W2"));
    CHECK(referenceBefore("F9", "K1"));
    CHECK(referenceBefore("K1", "K1a"));
    CHECK_FALSE(referenceBefore("K1", "K1"));
}

TEST_CASE("zeros before a number do not change its place, and long numbers do not overflow",
          "[sheet][references]") {
    CHECK_FALSE(referenceBefore("W02", "W2"));
    CHECK_FALSE(referenceBefore("W2", "W02"));
    CHECK(referenceBefore("W99999999999999999998", "W99999999999999999999"));
    CHECK(referenceBefore("W9", "W99999999999999999999"));
}

TEST_CASE("joined references are sorted", "[sheet][references]") {
    CHECK(joinedReferences({"W10", "W2", "K1"}) == "K1, W2, W10");
    CHECK(joinedReferences({}).empty());
}

TEST_CASE("a part is called by its reference and kind, an unknown one by its id", "[sheet][references]") {
    const Circuit circuit = CircuitBuilder().part("resistor", "R4").build();
    CHECK(partName(circuit, PartId{"R4"}) == "R4 resistor");
    CHECK(partName(circuit, PartId{"gone"}) == "gone");
}

TEST_CASE("a label within a sentence loses its capital, shorthand keeps it", "[sheet][references]") {
    CHECK(lowerFirst("Capacity") == "capacity");
    CHECK(lowerFirst("LED lamp") == "LED lamp");
    CHECK(lowerFirst("Ω") == "Ω");
    CHECK(lowerFirst("").empty());
}
