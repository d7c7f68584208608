#pragma once

#include "core/checks/rule.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"
#include "tests/support/recording_builder.h"
#include "tests/support/van_circuit.h"

#include <algorithm>
#include <set>

namespace pumpwright {

inline const Rule& ruleOf(std::string_view id) {
    const auto all = rules();
    const auto found = std::find_if(all.begin(), all.end(), [&](const Rule* rule) { return rule->id == id; });
    REQUIRE(found != all.end());
    return **found;
}

/// What one rule finds in a circuit, with or without a drive.
inline std::vector<Finding> findings(std::string_view rule, const Circuit& circuit,
                                     const DriveResult* drive = nullptr) {
    const Nets nets = findNets(circuit);
    return findingsOf(ruleOf(rule), {circuit, nets, drive});
}

inline std::vector<Finding> allFindings(const Circuit& circuit, const DriveResult* drive = nullptr) {
    const Nets nets = findNets(circuit);
    return checkCircuit({circuit, nets, drive});
}

/// The one thing that the rule finds.
inline Finding onlyFinding(std::string_view rule, const Circuit& circuit,
                           const DriveResult* drive = nullptr) {
    const std::vector<Finding> found = findings(rule, circuit, drive);
    REQUIRE(found.size() == 1);
    return found.front();
}

inline Circuit afterRemedy(Circuit circuit, const Finding& finding, std::size_t remedy = 0) {
    REQUIRE(remedy < finding.remedies.size());
    REQUIRE(finding.remedies[remedy].edit.has_value());
    applyEdit(circuit, *finding.remedies[remedy].edit);
    return circuit;
}

/// Rules that raise DANGER or WARNING without a drive.
inline std::set<std::string> alarms(const Circuit& circuit) {
    std::set<std::string> raised;
    for (const Finding& finding : allFindings(circuit)) {
        if (finding.word <= SignalWord::Warning) {
            raised.insert(finding.rule);
        }
    }
    return raised;
}

/// Applies the remedy, checks that the rule falls silent and that no DANGER or WARNING comes up that was not
/// there before.
inline void checkRemedy(const Circuit& circuit, const Finding& finding, std::size_t remedy = 0) {
    const Circuit cured = afterRemedy(circuit, finding, remedy);
    CHECK(findings(finding.rule, cured).empty());
    const std::set<std::string> before = alarms(circuit);
    for (const std::string& rule : alarms(cured)) {
        INFO("raised by the remedy: " << rule);
        CHECK(before.contains(rule));
    }
}

/// Every field that a finding must carry.
inline void checkComplete(const Finding& finding) {
    CHECK_FALSE(finding.title.empty());
    CHECK_FALSE(finding.subjects().empty());
    CHECK_FALSE(finding.what.isEmpty());
    CHECK_FALSE(finding.source.empty());
    CHECK_FALSE(finding.why.isEmpty());
    REQUIRE_FALSE(finding.remedies.empty());
    for (const Remedy& remedy : finding.remedies) {
        CHECK_FALSE(remedy.text.isEmpty());
        CHECK((!remedy.edit || (!remedy.edit->changes.empty() && !remedy.edit->name.empty())));
    }
}

/// The van's pump on vacuum switch and relay, everything as it should be.
inline CircuitBuilder soundVan(CircuitBuilder::Choices relayChoices = {{"suppression", "diode"}}) {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder, relayChoices).wire("F1.2", "B1.1", 0.75e-6, 1).wire("B1.2", "K1.86", 0.75e-6, 1);
    return builder;
}

/// The same with an ignition switch S1 before the vacuum switch.
inline CircuitBuilder keyedVan() {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder, {{"suppression", "diode"}})
        .part("hand-switch", "S1")
        .wire("F1.2", "S1.1", 0.75e-6, 1)
        .wire("S1.2", "B1.1", 0.75e-6, 1)
        .wire("B1.2", "K1.86", 0.75e-6, 1);
    return builder;
}

/// Battery G1, fuse F1, switch S1, lamp P1: w1 from G1 to F1, w2 to S1, w3 to P1, w4 to ground, w5 from G1 to
/// ground. 60 W at 12 V are 5 A.
inline CircuitBuilder switchedLamp(CircuitBuilder::Values lamp = {{"ratedPower_W", 60}},
                                   CircuitBuilder::Values contact = {{"make_A", 100}},
                                   CircuitBuilder::Values fuse = {{"rating_A", 10}}, double area_m2 = 2.5e-6,
                                   double length_m = 1) {
    return CircuitBuilder()
        .part("supply", "G1", {{"internalResistance_ohm", 0.01}})
        .part("fuse", "F1", fuse)
        .part("hand-switch", "S1", contact)
        .part("lamp", "P1", lamp)
        .part("ground", "X1")
        .part("ground", "X2")
        .wire("G1.30", "F1.1", area_m2, 0.1)
        .wire("F1.2", "S1.1", area_m2, length_m)
        .wire("S1.2", "P1.1", area_m2, length_m)
        .wire("P1.2", "X1.31", area_m2, length_m)
        .wire("G1.31", "X2.31", 6e-6, 0.5);
}

} // namespace pumpwright
