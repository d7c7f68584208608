#include "app/desktop/circuit/free_place.h"
#include "app/desktop/circuit/offered_ends.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

using namespace pumpwright;

namespace {

Circuit circuit() {
    return CircuitBuilder()
        .part("fuse", "F1")
        .part("relay", "K1")
        .part("relay", "K11")
        .part("reservoir", "C1")
        .part("tee", "X1")
        .wire("F1.2", "K1.30")
        .build();
}

std::optional<End> first(const std::vector<End>& ends) {
    return ends.empty() ? std::nullopt : std::optional(ends.front());
}

} // namespace

TEST_CASE("a typed text means reference and number, run together or not", "[offered-ends]") {
    for (const char* text : {"k186", "K1 86", "K1.86", "k1:86"}) {
        INFO(text);
        CHECK(first(typedEnds(circuit(), QString::fromLatin1(text), EndSort::Terminal)) == endOf("K1.86"));
    }
    CHECK(typedEnds(circuit(), QStringLiteral("k9"), EndSort::Terminal).empty());
    CHECK(typedEnds(circuit(), {}, EndSort::Terminal).empty());
}

TEST_CASE("a reference alone means its free ends first, and not a longer reference", "[offered-ends]") {
    CHECK(first(typedEnds(circuit(), QStringLiteral("f1"), EndSort::Terminal)) == endOf("F1.1"));
    const auto ends = typedEnds(circuit(), QStringLiteral("k1"), EndSort::Terminal);
    REQUIRE(ends.size() > 4);
    CHECK(ends.front().part == PartId{"K1"});
    CHECK(ends.front() != endOf("K1.30"));
    CHECK(ends.back().part == PartId{"K11"});
}

TEST_CASE("a number alone means an end of that number, free before used, of the part at hand first",
          "[offered-ends]") {
    CHECK(first(typedEnds(circuit(), QStringLiteral("87"), EndSort::Terminal)) == endOf("K1.87"));
    CHECK(first(typedEnds(circuit(), QStringLiteral("87"), EndSort::Terminal, PartId{"K11"})) ==
          endOf("K11.87"));
    CHECK(first(typedEnds(circuit(), QStringLiteral("30"), EndSort::Terminal)) == endOf("K11.30"));
    CHECK(first(typedEnds(circuit(), QStringLiteral("30"), EndSort::Terminal, PartId{"K1"})) ==
          endOf("K11.30"));
    CHECK(typedEnds(circuit(), QStringLiteral("99"), EndSort::Terminal).empty());
}

TEST_CASE("hoses are offered ports, wires terminals", "[offered-ends]") {
    CHECK(first(typedEnds(circuit(), QStringLiteral("c1"), EndSort::Port)) == endOf("C1.a"));
    CHECK(typedEnds(circuit(), QStringLiteral("c1"), EndSort::Terminal).empty());
    CHECK(typedEnds(circuit(), QStringLiteral("f1"), EndSort::Port).empty());
}

TEST_CASE("a line goes on from a free end, to the nearest free end of another part", "[offered-ends]") {
    CHECK(freeEndOf(circuit(), {"F1"}, EndSort::Terminal) == endOf("F1.1"));
    CHECK(freeEndOf(circuit(), {"F1"}, EndSort::Port) == std::nullopt);
    CHECK(freeEndOf(circuit(), {"gone"}, EndSort::Terminal) == std::nullopt);
    const auto target = nearestFreeEnd(circuit(), layoutOf(circuit()), endOf("F1.1"), EndSort::Terminal);
    REQUIRE(target);
    CHECK(target->part == PartId{"K1"});
    CHECK(*target != endOf("K1.30"));
}

TEST_CASE("a part is offered a place with room round it, below the area where that is full", "[free-place]") {
    const QRectF area(0, 0, 40 * kStep, 20 * kStep);
    Circuit growing;
    for (int i = 0; i < 30; ++i) {
        Part part = circuit().parts.at({"K1"});
        part.at = freePlace(layoutOf(growing), part, area);
        const QRectF extent = pictureOf(part).extent.translated(scenePoint(part.at));
        CHECK(extent.left() >= area.left());
        CHECK(extent.right() <= area.right());
        for (const auto& [id, picture] : layoutOf(growing).parts) {
            CHECK_FALSE(picture.extent.translated(picture.origin()).intersects(extent));
        }
        growing.parts.emplace(PartId{std::to_string(i)}, part);
    }
}
