#include "core/files/circuit_file.h"
#include "tests/core/checks/equipped_van.h"

#include <filesystem>

using namespace pumpwright;

// ctest starts the tests in the root of the sources.

namespace {

/// Circuits with many faults, each with a name.
std::map<std::string, Circuit> faultyCircuits() {
    std::map<std::string, Circuit> circuits;
    for (const auto& entry : std::filesystem::directory_iterator("samples")) {
        circuits.emplace(entry.path().stem().string(), readCircuit(entry.path().string()).value());
    }
    circuits.emplace("van without key, lamp and suppression", soundVan({}).build());
    circuits.emplace(
        "lamp over its switch",
        switchedLamp({{"ratedPower_W", 200}}, {{"make_A", 30}}, {{"rating_A", 40}}, 1e-6, 6).build());
    CircuitBuilder turned = soundVan({});
    circuits.emplace("diode the wrong way round",
                     turned.part("diode", "R1").wire("R1.A", "K1.86").wire("R1.K", "K1.85").build());
    CircuitBuilder pumpSide = soundVan();
    Circuit moved = pumpSide.build();
    moved.hoses.at(HoseId{"h2"}).from = endOf("M1.inlet"); // the switch's hose
    circuits.emplace("switch on the pump's side", std::move(moved));
    return circuits;
}

std::map<std::string, std::size_t> alarmCounts(const std::vector<Finding>& findings) {
    std::map<std::string, std::size_t> counts;
    for (const Finding& finding : findings) {
        counts[finding.rule] += finding.word <= SignalWord::Warning ? 1U : 0U;
    }
    return counts;
}

bool holds(const std::vector<Finding>& findings, const Finding& wanted) {
    return std::any_of(findings.begin(), findings.end(), [&](const Finding& one) {
        return one.rule == wanted.rule && one.subjects() == wanted.subjects();
    });
}

std::vector<Finding> findingsWith(const Circuit& circuit, bool driven) {
    if (!driven) {
        return allFindings(circuit);
    }
    const DriveResult drive = simulateDrive(circuit);
    return allFindings(circuit, &drive);
}

/// Applies every remedy of every finding that the program can do, and collects the rules that had one.
std::set<std::string> checkRemediesOf(const std::string& name, const Circuit& circuit, bool driven) {
    std::set<std::string> rules;
    const std::vector<Finding> before = findingsWith(circuit, driven);
    std::map<std::string, std::size_t> alarmsBefore = alarmCounts(before);
    for (const Finding& finding : before) {
        if (finding.at_s.has_value() != driven) {
            continue;
        }
        for (const Remedy& remedy : finding.remedies) {
            if (!remedy.edit) {
                continue;
            }
            INFO(name << ": " << finding.what.english() << " " << remedy.text.english());
            Circuit cured = circuit;
            applyEdit(cured, *remedy.edit);
            const std::vector<Finding> after = findingsWith(cured, driven);
            CHECK_FALSE(holds(after, finding));
            for (const auto& [rule, count] : alarmCounts(after)) {
                INFO("raised by the remedy: " << rule);
                CHECK(count <= alarmsBefore[rule]);
            }
            rules.insert(finding.rule);
        }
    }
    return rules;
}

} // namespace

TEST_CASE("after each remedy the finding is gone and no new DANGER or WARNING appears",
          "[checks][remedies]") {
    std::set<std::string> rules;
    for (const auto& [name, circuit] : faultyCircuits()) {
        rules.merge(checkRemediesOf(name, circuit, false));
    }
    // A fuse, its rating, a gauge, a lamp, a diode added and turned, a power relay, the booster's side.
    for (const char* rule : {"unfused-supply-lead", "fuse-larger-than-wire", "wire-over-capacity",
                             "no-vacuum-warning", "coil-without-suppression", "suppression-diode-reversed",
                             "contact-making-current", "switch-on-pump-side"}) {
        INFO(rule);
        CHECK(rules.contains(rule));
    }
}

TEST_CASE("remedies of what a drive shows hold in a drive", "[checks][remedies][drive]") {
    const Circuit circuit = readCircuit("samples/six-ideas.pumpwright").value();
    const std::set<std::string> rules = checkRemediesOf("six-ideas", circuit, true);
    CHECK(rules.contains("relay-chatter"));
    CHECK(rules.contains("differential-below-creep"));
}
