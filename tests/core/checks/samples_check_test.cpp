#include "core/files/circuit_file.h"
#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

// ctest starts the tests in the root of the sources.

namespace {

Circuit sample(const std::string& name) {
    const auto circuit = readCircuit("samples/" + name + ".pumpwright");
    REQUIRE(circuit.has_value());
    return *circuit;
}

} // namespace

TEST_CASE("circuits that were put right raise nothing above a notice", "[checks][samples]") {
    for (const char* name : {"put-right", "solid-state"}) {
        INFO(name);
        const Circuit circuit = sample(name);
        const DriveResult drive = simulateDrive(circuit);
        REQUIRE(drive.status == DriveStatus::Finished);
        for (const Finding& finding : allFindings(circuit, &drive)) {
            INFO(finding.rule << ": " << finding.what.english());
            CHECK(finding.word == SignalWord::Notice);
        }
    }
}

TEST_CASE("the first try keeps the faults that it is there to show", "[checks][samples]") {
    const Circuit circuit = sample("first-try");
    const DriveResult drive = simulateDrive(circuit);
    std::set<std::string> raised;
    for (const Finding& finding : allFindings(circuit, &drive)) {
        raised.insert(finding.rule);
    }
    for (const char* rule : {"coil-without-suppression", "relay-chatter", "wire-over-capacity",
                             "fuse-larger-than-wire", "unfused-supply-lead", "open-terminal"}) {
        INFO(rule);
        CHECK(raised.contains(rule));
    }
}
