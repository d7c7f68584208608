#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// The lamp's switch straight on the battery.
Circuit unfused() {
    return CircuitBuilder()
        .part("supply", "G1", {{"internalResistance_ohm", 0.012}})
        .part("hand-switch", "S1", {{"make_A", 100}})
        .part("lamp", "P1", {{"ratedPower_W", 60}})
        .wire("G1.30", "S1.1", 2.5e-6, 1)
        .wire("S1.2", "P1.1", 2.5e-6, 1)
        .wire("P1.2", "G1.31", 2.5e-6, 1)
        .build();
}

} // namespace

TEST_CASE("a load on the battery without a fuse is found, with the wires to it",
          "[checks][unfused-supply-lead][raises]") {
    const Finding finding = onlyFinding("unfused-supply-lead", unfused());
    CHECK(finding.word == SignalWord::Warning);
    CHECK(finding.parts == std::vector<PartId>{{"G1"}, {"P1"}});
    CHECK(finding.wires == std::vector<WireId>{{"w1"}, {"w2"}});
    CHECK(finding.value == Approx(0));
    CHECK(finding.limit == Approx(1));
    checkComplete(finding);
}

TEST_CASE("the remedy puts a fuse at the battery that suits the load", "[checks][unfused-supply-lead]") {
    const Circuit circuit = unfused();
    const Finding finding = onlyFinding("unfused-supply-lead", circuit);
    checkRemedy(circuit, finding);
    const Circuit cured = afterRemedy(circuit, finding);
    // 5 A are 80 % of 6.25 A: the next size is 7.5 A.
    for (const auto& [id, part] : cured.parts) {
        if (part.kind == "fuse") {
            CHECK(part.values.at("rating_A") == Approx(7.5));
        }
    }
    CHECK(cured.parts.size() == circuit.parts.size() + 1);
    CHECK(findings("fuse-smaller-than-load", cured).empty());
}

TEST_CASE("a second lead past the fuse is found beside the fused one", "[checks][unfused-supply-lead]") {
    CircuitBuilder builder = switchedLamp();
    const Circuit circuit =
        builder.part("buzzer", "P2").part("ground", "X3").wire("G1.30", "P2.+").wire("P2.-", "X3.31").build();
    CHECK(onlyFinding("unfused-supply-lead", circuit).wires == std::vector<WireId>{{"w6"}});
}

TEST_CASE("a capacitor straight on the battery wants a fuse as well", "[checks][unfused-supply-lead]") {
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1")
                                .part("capacitor", "C1")
                                .wire("G1.30", "C1.+")
                                .wire("C1.-", "G1.31")
                                .build();
    CHECK(onlyFinding("unfused-supply-lead", circuit).parts.back() == PartId{"C1"});
}

TEST_CASE("a fuse in the return only does not count", "[checks][unfused-supply-lead]") {
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1")
                                .part("lamp", "P1")
                                .part("fuse", "F1")
                                .wire("G1.30", "P1.1")
                                .wire("P1.2", "F1.1")
                                .wire("F1.2", "G1.31")
                                .build();
    CHECK(findings("unfused-supply-lead", circuit).size() == 1);
}

TEST_CASE("a fuse behind the switch but before the load is near enough to pass",
          "[checks][unfused-supply-lead][near-miss]") {
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1")
                                .part("hand-switch", "S1")
                                .part("fuse", "F1")
                                .part("lamp", "P1")
                                .wire("G1.30", "S1.1")
                                .wire("S1.2", "F1.1")
                                .wire("F1.2", "P1.1")
                                .wire("P1.2", "G1.31")
                                .build();
    CHECK(findings("unfused-supply-lead", circuit).empty());
}

TEST_CASE("a sound circuit has every load behind a fuse", "[checks][unfused-supply-lead]") {
    CHECK(findings("unfused-supply-lead", soundVan().build()).empty());
}

TEST_CASE("one fuse in the lead makes the difference", "[checks][unfused-supply-lead][at-limit]") {
    const auto over = [](const char* kind, const char* near, const char* far) {
        return CircuitBuilder()
            .part("supply", "G1")
            .part(kind, "Y1")
            .part("lamp", "P1")
            .wire("G1.30", std::string("Y1.") + near)
            .wire(std::string("Y1.") + far, "P1.1")
            .wire("P1.2", "G1.31")
            .build();
    };
    CHECK(findings("unfused-supply-lead", over("fuse", "1", "2")).empty());
    const Finding finding = onlyFinding("unfused-supply-lead", over("connector", "1a", "1b"));
    CHECK(finding.value == Approx(0));
    CHECK(finding.limit == Approx(1));
}
