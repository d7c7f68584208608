#include "app/desktop/circuit/arranging.h"
#include "app/desktop/circuit/part_picture.h"
#include "core/files/circuit_file.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <cmath>

using namespace pumpwright;

namespace {

const SelectedObjects kAll{{{"F1"}, {"K1"}, {"P1"}, {"M1"}}, {}, {}};

/// Symbols of different widths and heights, none in line.
Circuit scattered() {
    Circuit circuit = CircuitBuilder()
                          .part("fuse", "F1")
                          .part("relay", "K1")
                          .part("lamp", "P1")
                          .part("pump", "M1")
                          .wire("F1.2", "K1.30")
                          .wire("K1.87", "P1.1")
                          .build();
    circuit.parts.at({"F1"}).at = {-3, 2};
    circuit.parts.at({"K1"}).at = {11, -5};
    circuit.parts.at({"P1"}).at = {20, 31};
    circuit.parts.at({"M1"}).at = {41, 13};
    circuit.wires.at({"w1"}).bends = {{5, 5}, {9, 5}};
    return circuit;
}

Circuit arranged(const Circuit& circuit, const SelectedObjects& objects, Arrangement how) {
    Circuit copy = circuit;
    const Edit back = applyEdit(copy, arranging(circuit, objects, how));
    Circuit restored = copy;
    applyEdit(restored, back);
    CHECK(circuitText(restored) == circuitText(circuit));
    return copy;
}

/// Where a symbol is on the sheet, in grid steps.
QRectF body(const Circuit& circuit, const char* id) {
    const PartPicture picture = pictureOf(circuit.parts.at({id}));
    const QRectF scene = picture.body.translated(picture.origin());
    return {scene.topLeft() / kStep, scene.size() / kStep};
}

} // namespace

TEST_CASE("edges come into line with the outermost, which stays, and keep their height", "[arranging]") {
    const Circuit before = scattered();
    const Circuit left = arranged(before, kAll, Arrangement::LeftEdges);
    const Circuit bottom = arranged(before, kAll, Arrangement::BottomEdges);
    for (const PartId& id : kAll.parts) {
        INFO(id.text);
        CHECK(std::lround(body(left, id.text.c_str()).left()) == std::lround(body(before, "F1").left()));
        CHECK(left.parts.at(id).at.y == before.parts.at(id).at.y);
        CHECK(std::lround(body(bottom, id.text.c_str()).bottom()) ==
              std::lround(body(before, "P1").bottom()));
        CHECK(bottom.parts.at(id).at.x == before.parts.at(id).at.x);
    }
    CHECK(left.parts.at({"F1"}) == before.parts.at({"F1"}));
}

TEST_CASE("middles come into line within half a step", "[arranging]") {
    const Circuit across = arranged(scattered(), kAll, Arrangement::MiddlesAcross);
    const Circuit down = arranged(scattered(), kAll, Arrangement::MiddlesDown);
    for (const char* id : {"K1", "P1", "M1"}) {
        INFO(id);
        CHECK(std::abs(body(across, id).center().x() - body(across, "F1").center().x()) <= 0.5);
        CHECK(std::abs(body(down, id).center().y() - body(down, "F1").center().y()) <= 0.5);
    }
}

TEST_CASE("gaps from part to part become equal; the first part stays", "[arranging]") {
    const Circuit after = arranged(scattered(), kAll, Arrangement::GapsAcross);
    const double first = body(after, "K1").left() - body(after, "F1").right();
    CHECK(first >= 1);
    // Symbols that are not whole steps wide differ by the rest.
    CHECK(std::abs(body(after, "P1").left() - body(after, "K1").right() - first) < 1);
    CHECK(std::abs(body(after, "M1").left() - body(after, "P1").right() - first) < 1);
    CHECK(after.parts.at({"F1"}) == scattered().parts.at({"F1"}));
}

TEST_CASE("parts on one heap are set apart", "[arranging]") {
    Circuit heap = scattered();
    for (auto& [id, part] : heap.parts) {
        part.at = {4, 4};
    }
    const Circuit after = arranged(heap, kAll, Arrangement::GapsDown);
    for (const PartId& one : kAll.parts) {
        for (const PartId& other : kAll.parts) {
            CHECK(
                (one == other || !body(after, one.text.c_str()).intersects(body(after, other.text.c_str()))));
        }
    }
}

TEST_CASE("arranging a second time changes nothing", "[arranging]") {
    for (const Arrangement how : kArrangements) {
        const Circuit once = arranged(scattered(), kAll, how);
        INFO(static_cast<int>(how));
        CHECK(circuitText(arranged(once, kAll, how)) == circuitText(once));
        CHECK(circuitText(once) != circuitText(scattered()));
    }
}

TEST_CASE("wires follow as for a move: corners go with ends that move alike, else they stay", "[arranging]") {
    Circuit circuit = scattered();
    const SelectedObjects pair{{{"F1"}, {"K1"}, {"P1"}}, {}, {}};
    CHECK(arranged(circuit, pair, Arrangement::LeftEdges).wires == circuit.wires);
    circuit.parts.at({"K1"}).at.x = circuit.parts.at({"F1"}).at.x = 30;
    circuit.wires.at({"w1"}).bends = {{31, 5}};
    const Circuit after = arranged(circuit, pair, Arrangement::MiddlesAcross);
    const int by = after.parts.at({"F1"}).at.x - 30;
    REQUIRE(by != 0);
    REQUIRE(after.parts.at({"K1"}).at.x - 30 == by);
    CHECK(after.wires.at({"w1"}).bends == std::vector<GridPoint>{{31 + by, 5}});
}

TEST_CASE("undo names what was aligned; too few parts make no change", "[arranging]") {
    const SelectedObjects two{{{"F1"}, {"K1"}}, {}, {}};
    CHECK(arranging(scattered(), two, Arrangement::LeftEdges).name == "Align F1, K1 left");
    CHECK(canArrange(two, Arrangement::TopEdges));
    CHECK_FALSE(canArrange(two, Arrangement::GapsDown));
    CHECK_FALSE(canArrange({{{"F1"}}, {}, {}}, Arrangement::TopEdges));
    CHECK(arranging(scattered(), two, Arrangement::GapsDown).changes.empty());
}
