#include "tests/core/checks/equipped_van.h"

using namespace pumpwright;

namespace {

/// A coil without suppression and a fuse too large for one wire: CAUTION and WARNING.
Circuit faulty() {
    Circuit circuit = equippedVan({}).build();
    circuit.parts.at(PartId{"F1"}).values["rating_A"] = 40;
    return circuit;
}

Waiver waiverFor(const Finding& finding) {
    return {finding.rule, finding.subjects(), "measured", "ab", finding.value};
}

} // namespace

TEST_CASE("a sound circuit gets no finding above a notice", "[checks]") {
    for (const Finding& finding : allFindings(equippedVan().build())) {
        INFO(finding.rule + ": " + finding.what.english());
        CHECK(finding.word == SignalWord::Notice);
    }
    for (const Finding& finding : allFindings(switchedLamp().build())) {
        FAIL_CHECK(finding.rule + ": " + finding.what.english());
    }
}

TEST_CASE("findings come worst signal word first, then farthest over the limit", "[checks]") {
    Circuit circuit = faulty();
    circuit.wires.erase(WireId{"w5"}); // M1.- to X2.31
    const std::vector<Finding> found = allFindings(circuit);
    REQUIRE(found.size() >= 3);
    CHECK(std::is_sorted(found.begin(), found.end(),
                         [](const Finding& a, const Finding& b) { return a.word < b.word; }));
    CHECK(found.front().rule == "no-return-path"); // against a limit of zero
    CHECK(found[1].rule == "fuse-larger-than-wire");
}

TEST_CASE("a waiver is attached to its finding while the value is no worse", "[checks]") {
    Circuit circuit = faulty();
    const Finding fuse = onlyFinding("fuse-larger-than-wire", circuit);
    circuit.waivers = {waiverFor(fuse)};
    for (const Finding& finding : allFindings(circuit)) {
        CHECK(finding.waiver.has_value() == (finding.rule == fuse.rule));
    }
    circuit.parts.at(PartId{"F1"}).values["rating_A"] = 50;
    for (const Finding& finding : allFindings(circuit)) {
        CHECK_FALSE(finding.waiver.has_value());
    }
}

TEST_CASE("a waiver for other wires does not hold", "[checks]") {
    Circuit circuit = faulty();
    Waiver waiver = waiverFor(onlyFinding("fuse-larger-than-wire", circuit));
    waiver.subjects.push_back("w99");
    circuit.waivers = {waiver};
    for (const Finding& finding : allFindings(circuit)) {
        CHECK_FALSE(finding.waiver.has_value());
    }
}

TEST_CASE("where less is worse a waiver ends when the value falls", "[checks]") {
    Circuit circuit = equippedVan().build();
    circuit.plan.presses = {Press{10, 2, 100, 0.2}};
    const auto giving = [](double force_N) {
        return RecordingBuilder(60)
            .part("A1", probe::kAssistAsked, {{0, 1000}, {60, 1000}})
            .part("A1", probe::kAssist, {{0, force_N}, {60, force_N}})
            .drive();
    };
    const DriveResult first = giving(800);
    circuit.waivers = {waiverFor(onlyFinding("press-without-assist", circuit, &first))};
    CHECK(allFindings(circuit, &first).front().waiver.has_value());
    const DriveResult better = giving(900);
    CHECK(allFindings(circuit, &better).front().waiver.has_value());
    const DriveResult worse = giving(700);
    CHECK_FALSE(allFindings(circuit, &worse).front().waiver.has_value());
}

TEST_CASE("an empty circuit is checked without findings", "[checks]") {
    CHECK(allFindings(Circuit{}).empty());
}

TEST_CASE("signal words are named as they are printed, worst first", "[checks][finding]") {
    // ANSI Z535.6: DANGER, WARNING, CAUTION, NOTICE.
    CHECK(signalWordName(SignalWord::Danger) == "DANGER");
    CHECK(signalWordName(SignalWord::Warning) == "WARNING");
    CHECK(signalWordName(SignalWord::Caution) == "CAUTION");
    CHECK(signalWordName(SignalWord::Notice) == "NOTICE");
    CHECK(SignalWord::Danger < SignalWord::Notice);
}

TEST_CASE("the subjects of a finding are its ids in order", "[checks][finding]") {
    Finding finding;
    finding.parts = {{"p2"}, {"p1"}};
    finding.wires = {{"w1"}};
    finding.hoses = {{"h1"}};
    CHECK(finding.subjects() == std::vector<std::string>{"h1", "p1", "p2", "w1"});
}
