#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

Circuit withDiodes(CircuitBuilder::Choices relay, int count) {
    CircuitBuilder builder = soundVan(relay);
    for (int i = 0; i < count; ++i) {
        const std::string name = "Y" + std::to_string(i);
        builder.part("diode", name).wire(name + ".K", "K1.86").wire(name + ".A", "K1.85");
    }
    return builder.build();
}

} // namespace

TEST_CASE("one suppression is enough, built in or outside", "[checks][suppression-twice][near-miss]") {
    CHECK(findings("suppression-twice", withDiodes({{"suppression", "diode"}}, 0)).empty());
    CHECK(findings("suppression-twice", withDiodes({}, 1)).empty());
}

TEST_CASE("a second one is one too many", "[checks][suppression-twice][raises][at-limit]") {
    const Circuit circuit = withDiodes({{"suppression", "resistor"}}, 1);
    const Finding finding = onlyFinding("suppression-twice", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"K1"}, {"Y0"}});
    CHECK(finding.value == Approx(2));
    CHECK(finding.limit == Approx(1)); // and one alone is silent, above
    CHECK(finding.word == SignalWord::Notice);
    checkComplete(finding);
    checkRemedy(circuit, finding);
    CHECK(findings("suppression-twice", withDiodes({}, 2)).size() == 1);
}
