#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// Pump 5.5 A, relay coil at the battery's 12.65 V over 90 Ω, and the rest of the vehicle.
Circuit charged(double vehicleLoad_A, const char* by = "converter") {
    Circuit circuit = soundVan().build();
    Part& supply = circuit.parts.at(PartId{"G1"});
    supply.choices["charging"] = by;
    supply.values["chargeLimit_A"] = 40;
    supply.values["vehicleLoad_A"] = vehicleLoad_A;
    return circuit;
}

} // namespace

TEST_CASE("a converter that the vehicle uses up already is too weak for the pump",
          "[checks][charging-too-weak][raises]") {
    const Finding finding = onlyFinding("charging-too-weak", charged(36));
    CHECK(finding.parts == std::vector<PartId>{{"G1"}});
    CHECK(finding.value == Approx(36 + 5.5 + 0.137).epsilon(0.002));
    CHECK(finding.limit == Approx(40));
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
}

TEST_CASE("with some amperes left it is not", "[checks][charging-too-weak][near-miss]") {
    CHECK(findings("charging-too-weak", charged(30)).empty());
    CHECK(findings("charging-too-weak", charged(36, "none")).empty());
}

TEST_CASE("the charging limit may be used up to the last ampere", "[checks][charging-too-weak][at-limit]") {
    const double circuit_A = onlyFinding("charging-too-weak", charged(40)).value - 40;
    CHECK(findings("charging-too-weak", charged(39.999 - circuit_A)).empty());
    CHECK(findings("charging-too-weak", charged(40.001 - circuit_A)).size() == 1);
}
