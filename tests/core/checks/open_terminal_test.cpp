#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

TEST_CASE("a pump without its ground wire has an open terminal", "[checks][open-terminal][raises]") {
    Circuit circuit = soundVan().build();
    circuit.wires.erase(WireId{"w5"}); // M1.- to X2.31
    const auto found = findings("open-terminal", circuit);
    REQUIRE(found.size() == 2); // the pump and the ground point that it was wired to
    CHECK(found[0].parts == std::vector<PartId>{{"M1"}});
    CHECK(found[0].what.english().find("terminal -") != std::string::npos);
    CHECK(found[1].parts == std::vector<PartId>{{"X2"}});
    checkComplete(found[0]);
}

TEST_CASE("a wire that ends on an empty splice leaves its terminal open", "[checks][open-terminal]") {
    const Circuit circuit = CircuitBuilder()
                                .part("resistor", "R1")
                                .part("resistor", "R2")
                                .part("splice", "X1")
                                .wire("R1.1", "R2.1")
                                .wire("R1.2", "R2.2")
                                .build();
    CHECK(onlyFinding("open-terminal", circuit).parts == std::vector<PartId>{{"X1"}});
    CircuitBuilder builder =
        CircuitBuilder().part("resistor", "R1").part("splice", "X1").wire("R1.1", "X1.1");
    const Finding finding = onlyFinding("open-terminal", builder.build());
    CHECK(finding.parts == std::vector<PartId>{{"R1"}});
    CHECK(finding.wires == std::vector<WireId>{{"w1"}});
    CHECK(finding.value == Approx(2)); // both of R1
}

TEST_CASE("terminals joined at a splice are not open", "[checks][open-terminal]") {
    const Circuit circuit = CircuitBuilder()
                                .part("resistor", "R1")
                                .part("resistor", "R2")
                                .part("splice", "X1")
                                .wire("R1.1", "X1.1")
                                .wire("X1.1", "R2.1")
                                .wire("R1.2", "R2.2")
                                .build();
    CHECK(findings("open-terminal", circuit).empty());
}

TEST_CASE("the spare contact of a changeover relay and a spare plug may stay open",
          "[checks][open-terminal][near-miss]") {
    CircuitBuilder builder = soundVan({{"suppression", "diode"}, {"contacts", "changeover"}});
    builder.part("connector", "X8");
    CHECK(findings("open-terminal", builder.build()).empty());
}

TEST_CASE("deleting the part takes the open terminal away", "[checks][open-terminal]") {
    CircuitBuilder builder = soundVan();
    const Circuit circuit = builder.part("buzzer", "P9").build();
    const Finding finding = onlyFinding("open-terminal", circuit);
    CHECK(finding.value == Approx(2));
    checkRemedy(circuit, finding, 1);
}

TEST_CASE("a sound circuit has no open terminal", "[checks][open-terminal]") {
    CHECK(findings("open-terminal", soundVan().build()).empty());
    CHECK(findings("open-terminal", switchedLamp().build()).empty());
}

TEST_CASE("one wire to another part is enough", "[checks][open-terminal][at-limit]") {
    const auto joined = [](bool secondEnd) {
        CircuitBuilder builder;
        builder.part("resistor", "R1").part("resistor", "R2").wire("R1.1", "R2.1");
        return (secondEnd ? builder.wire("R1.2", "R2.2") : builder).build();
    };
    CHECK(findings("open-terminal", joined(true)).empty());
    const auto found = findings("open-terminal", joined(false));
    REQUIRE(found.size() == 2);
    CHECK(found[0].value == Approx(1));
    CHECK(found[0].limit == Approx(0));
}
