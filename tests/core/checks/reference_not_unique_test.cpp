#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

TEST_CASE("two parts of one name cannot be told apart",
          "[checks][reference-not-unique][raises][near-miss][at-limit]") {
    Circuit circuit = soundVan().build();
    CHECK(findings("reference-not-unique", circuit).empty());
    circuit.parts.at(PartId{"X2"}).reference = "X1";
    const Finding finding = onlyFinding("reference-not-unique", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"X1"}, {"X2"}});
    CHECK(finding.value == Approx(2));
    CHECK(finding.word == SignalWord::Notice);
    checkComplete(finding);
    checkRemedy(circuit, finding);
    CHECK(afterRemedy(circuit, finding).parts.at(PartId{"X1"}).reference == "X1");
}

TEST_CASE("a part without a reference is one too many", "[checks][reference-not-unique]") {
    Circuit circuit = soundVan().build();
    circuit.parts.at(PartId{"K1"}).reference = "";
    const Finding finding = onlyFinding("reference-not-unique", circuit);
    CHECK(finding.what.english().find("1 part has no reference") != std::string::npos);
    checkRemedy(circuit, finding);
}

TEST_CASE("wires and hoses are told apart by their references too", "[checks][reference-not-unique]") {
    Circuit circuit = soundVan().build();
    circuit.wires.at(WireId{"w3"}).reference = "W2";
    const Finding wires = onlyFinding("reference-not-unique", circuit);
    CHECK(wires.wires == std::vector<WireId>{{"w2"}, {"w3"}});
    checkComplete(wires);
    checkRemedy(circuit, wires);
    circuit = soundVan().build();
    circuit.hoses.at(HoseId{"h1"}).reference = "";
    const Finding hoses = onlyFinding("reference-not-unique", circuit);
    CHECK(hoses.hoses == std::vector<HoseId>{{"h1"}});
    CHECK(hoses.what.english().find("1 hose has no reference") != std::string::npos);
    checkRemedy(circuit, hoses);
}
