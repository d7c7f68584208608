#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

constexpr double kInHg_Pa = 3386.389;

/// A pump that reaches 86 % of ambient and a switch that opens at this vacuum, up to this altitude.
Circuit upTo(double altitude_m, double opens_inHg, double tolerance = 0) {
    CircuitBuilder builder = soundVan();
    Circuit circuit = builder.build();
    circuit.parts.at(PartId{"M1"}).values["ultimateTolerance_share"] = tolerance;
    Part& sensor = circuit.parts.at(PartId{"B1"});
    sensor.values["differential_Pa"] = 10e3;
    sensor.values["setPoint_Pa"] = opens_inHg * kInHg_Pa - 10e3;
    circuit.plan.altitude = {{0, 0}, {60, altitude_m}};
    return circuit;
}

} // namespace

TEST_CASE("an 86 % pump reaches 20, 22 and 25 inHg up to 2080, 1300 and 240 m",
          "[checks][set-point-out-of-reach][raises][near-miss][at-limit]") {
    // A published pump test with a final vacuum of 86 % of ambient, and the atmosphere of ISO 2533.
    struct Row {
        double opens_inHg;
        double altitude_m;
    };
    for (const Row& row : {Row{20, 2080}, Row{22, 1300}, Row{25, 240}}) {
        INFO(row.opens_inHg);
        CHECK(findings("set-point-out-of-reach", upTo(row.altitude_m - 20, row.opens_inHg)).empty());
        const Circuit circuit = upTo(row.altitude_m + 20, row.opens_inHg);
        const Finding finding = onlyFinding("set-point-out-of-reach", circuit);
        CHECK(finding.word == SignalWord::Warning);
        CHECK(finding.parts == std::vector<PartId>{{"B1"}});
        checkComplete(finding);
        checkRemedy(circuit, finding);
    }
}

TEST_CASE("what only a new pump reaches is a caution", "[checks][set-point-out-of-reach]") {
    const Finding finding = onlyFinding("set-point-out-of-reach", upTo(2000, 20, 0.05));
    CHECK(finding.word == SignalWord::Caution);
    CHECK(finding.what.english().find("a worn pump") != std::string::npos);
}

TEST_CASE("without a pump nothing is out of its reach", "[checks][set-point-out-of-reach]") {
    const Circuit circuit = CircuitBuilder().part("vacuum-switch", "B1", {{"setPoint_Pa", 95e3}}).build();
    CHECK(findings("set-point-out-of-reach", circuit).empty());
}
