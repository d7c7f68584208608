#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// Two wires meet in X9, which lies so far from the origin of the fuse; the fuse's ends are two steps from
/// it.
Circuit spliceAt(int right, int down) {
    CircuitBuilder builder = switchedLamp();
    Circuit circuit = builder.part("splice", "X9")
                          .part("lamp", "P2")
                          .wire("S1.2", "X9.1")
                          .wire("X9.1", "P2.1")
                          .wire("P2.2", "G1.31")
                          .build();
    const GridPoint fuse = circuit.parts.at(PartId{"F1"}).at;
    circuit.parts.at(PartId{"X9"}).at = {fuse.x + right, fuse.y + down};
    return circuit;
}

} // namespace

TEST_CASE("a splice under a fuse's symbol is not seen", "[checks][splice-hidden][raises]") {
    Circuit circuit = spliceAt(0, 0);
    circuit.wires.at(WireId{"w6"}).bends = {{3, 3}};
    const Finding finding = onlyFinding("splice-hidden", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"X9"}, {"F1"}});
    CHECK(finding.value == Approx(2)); // up or down over the fuse's edge, which is one step away
    CHECK(finding.word == SignalWord::Notice);
    checkComplete(finding);
    checkRemedy(circuit, finding);
    CHECK(afterRemedy(circuit, finding).wires.at(WireId{"w6"}).bends.empty());
}

TEST_CASE("on a symbol's edge a splice is hidden, a step beside it is not",
          "[checks][splice-hidden][near-miss][at-limit]") {
    CHECK(findings("splice-hidden", spliceAt(2, 0)).size() == 1);
    CHECK(findings("splice-hidden", spliceAt(3, 0)).empty());
    CHECK(onlyFinding("splice-hidden", spliceAt(0, 1)).value == Approx(1));
    CHECK(findings("splice-hidden", spliceAt(0, 2)).empty());
}

TEST_CASE("two splices on one point look like one", "[checks][splice-hidden]") {
    Circuit circuit = spliceAt(6, 6);
    circuit.parts.emplace(PartId{"X10"}, circuit.parts.at(PartId{"X9"}));
    CHECK(findings("splice-hidden", circuit).size() == 2);
    circuit.parts.at(PartId{"X10"}).at.x += 1;
    CHECK(findings("splice-hidden", circuit).empty());
}
