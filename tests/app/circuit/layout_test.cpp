#include "app/desktop/circuit/canvas_edits.h"
#include "app/desktop/circuit/layout.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <algorithm>

using namespace pumpwright;

namespace {

Circuit van() {
    CircuitBuilder builder = vanVacuumSide();
    return addPumpFeed(builder).build();
}

void checkEnds(const Circuit& circuit, const CircuitLayout& layout) {
    for (const auto& [id, wire] : circuit.wires) {
        INFO(wire.reference);
        const LinePicture& picture = layout.wires.at(id);
        CHECK(picture.corners.front() == layout.parts.at(wire.from.part).point(wire.from.terminal)->at);
        CHECK(picture.corners.back() == layout.parts.at(wire.to.part).point(wire.to.terminal)->at);
    }
}

} // namespace

TEST_CASE("every wire ends on its terminals, wherever the parts are and however they are turned",
          "[layout]") {
    Circuit circuit = van();
    checkEnds(circuit, layoutOf(circuit));
    SelectedObjects relay{{{"K1"}}, {}, {}};
    for (int turn = 0; turn < 4; ++turn) {
        applyEdit(circuit, rotation(circuit, relay));
        checkEnds(circuit, layoutOf(circuit));
        applyEdit(circuit, mirroring(circuit, relay));
        applyEdit(circuit, movement(circuit, relay, {5, 7}));
        checkEnds(circuit, layoutOf(circuit));
    }
}

TEST_CASE("the layout follows from the circuit alone, not from the way to it", "[layout]") {
    Circuit circuit = van();
    CircuitLayout stepwise = layoutOf(circuit);
    applyEdit(circuit, movement(circuit, {{{"K1"}, {"M1"}}, {}, {}}, {4, 9}));
    stepwise = layoutOf(circuit, std::move(stepwise));
    applyEdit(circuit, rotation(circuit, {{{"F1"}}, {}, {}}));
    stepwise = layoutOf(circuit, std::move(stepwise));
    const CircuitLayout fresh = layoutOf(circuit);
    CHECK(stepwise.wires == fresh.wires);
    CHECK(stepwise.hoses == fresh.hoses);
}

TEST_CASE("no wire crosses a part's body in the van's circuit", "[layout]") {
    const Circuit circuit = van();
    const CircuitLayout layout = layoutOf(circuit);
    for (const auto& [wireId, wire] : layout.wires) {
        for (const auto& [partId, part] : layout.parts) {
            const QRectF inside = part.body.translated(part.origin()).adjusted(6, 6, -6, -6);
            for (int i = 0; i + 1 < wire.path.size(); ++i) {
                const QRectF stretch =
                    QRectF(wire.path[i], wire.path[i + 1]).normalized().adjusted(-1, -1, 1, 1);
                INFO(wireId.text << " and " << partId.text);
                CHECK_FALSE(inside.intersects(stretch));
            }
        }
    }
}

TEST_CASE("a wire whose part is missing is left out instead of drawn to nowhere", "[layout]") {
    Circuit circuit = van();
    circuit.parts.erase({"F1"});
    const CircuitLayout layout = layoutOf(circuit);
    CHECK(layout.wires.size() == circuit.wires.size() - 2);
}

TEST_CASE("a label says reference, colour letters and area", "[layout]") {
    Wire wire;
    wire.reference = "W7";
    wire.colour = "RDBU";
    wire.area_m2 = 2.5e-6;
    CHECK(wireLabel(wire) == QStringLiteral("W7 RDBU 2.5 mm\u00b2"));
}

TEST_CASE("terminals know how many lines end on them", "[layout]") {
    const Circuit circuit = CircuitBuilder()
                                .part("splice", "X1")
                                .part("lamp", "P1")
                                .part("lamp", "P2")
                                .wire("X1.1", "P1.1")
                                .wire("X1.1", "P2.1")
                                .build();
    const CircuitLayout layout = layoutOf(circuit);
    CHECK(layout.linesAt(layout.parts.at({"X1"})) == std::vector<int>{2});
    CHECK(layout.linesAt(layout.parts.at({"P1"})) == std::vector<int>{1, 0});
}

TEST_CASE("an empty circuit has an empty layout", "[layout]") {
    CHECK(layoutOf(Circuit{}).bounds().isEmpty());
}
