#pragma once

#include "core/files/catalogue.h"
#include "core/nets/nets.h"
#include "tests/app/window/bench.h"

#include <QFile>

#include <algorithm>
#include <set>

namespace pumpwright {

// The first circuit that somebody draws, however it is drawn: what it must be in the end.

/// What the program itself offers.
inline Catalogue wholeCatalogue() {
    const auto catalogue = readCatalogue({"resources/catalogue/parts.json"});
    REQUIRE(catalogue);
    return *catalogue;
}

/// "F1.2", whatever the ids are.
inline std::string endName(const Circuit& circuit, const End& end) {
    return circuit.parts.at(end.part).reference + "." + end.terminal;
}

inline std::multiset<std::string> kindNames(const Circuit& circuit) {
    std::multiset<std::string> kinds;
    for (const auto& [id, part] : circuit.parts) {
        kinds.insert(part.kind);
    }
    return kinds;
}

/// The terminals that wires join, net by net.
inline std::set<std::set<std::string>> joinedTerminals(const Circuit& circuit) {
    std::set<std::set<std::string>> joined;
    for (const Net& net : findNets(circuit).nets) {
        std::set<std::string> names;
        for (const Node& terminal : net.terminals) {
            names.insert(endName(circuit, terminal));
        }
        joined.insert(names);
    }
    return joined;
}

inline std::set<std::set<std::string>> joinedPorts(const Circuit& circuit) {
    std::set<std::set<std::string>> joined;
    for (const VacuumNet& net : findNets(circuit).vacuumNets) {
        std::set<std::string> names;
        for (const Node& port : net.ports) {
            names.insert(endName(circuit, port));
        }
        joined.insert(names);
    }
    return joined;
}

/// A vacuum switch starts a timer, which feeds the coil of a relay with a diode across it, which feeds the
/// pump. K1 is the timer, K2 the relay.
inline void checkFirstCircuit(const Circuit& circuit) {
    CHECK(kindNames(circuit) == std::multiset<std::string>{"supply", "fuse", "vacuum-switch", "timer",
                                                           "relay", "diode", "pump", "ground", "booster"});
    CHECK(circuit.wires.size() >= 12);
    CHECK(joinedTerminals(circuit) ==
          std::set<std::set<std::string>>{{"G1.30", "F1.1"},
                                          {"F1.2", "K1.15", "K1.30", "K2.30", "B1.1"},
                                          {"B1.2", "K1.S"},
                                          {"K1.87", "K2.86", "R1.K"},
                                          {"K2.87", "M1.+"},
                                          {"X1.31", "G1.31", "K1.31", "K2.85", "R1.A", "M1.-"}});
    CHECK(joinedPorts(circuit) == std::set<std::set<std::string>>{{"A1.vacuum", "B1.vacuum", "M1.inlet"}});
}

/// The vacuum in the booster when the drive ends.
inline double vacuumAtTheEnd_Pa(WindowBench& bench) {
    const Recording& recording = bench.window.analysis().drive()->recording;
    for (const auto& [id, part] : bench.window.document().circuit().parts) {
        if (part.kind == "booster") {
            const Channel* channel = recording.port({id, "vacuum"});
            REQUIRE(channel != nullptr);
            return channel->at(recording.duration_s);
        }
    }
    FAIL("there is no booster");
    return 0;
}

/// Its findings are there and none is a DANGER, and in its drive the pump evacuates the booster and keeps it
/// so: the vacuum switch closes below 50 kPa.
inline void checkItWorks(WindowBench& bench) {
    constexpr double kSwitchCloses_Pa = 50'000;
    bench.waitForAnalysis();
    const auto& findings = bench.window.analysis().findings();
    CHECK(findings.size() >= 2);
    CHECK(std::none_of(findings.begin(), findings.end(),
                       [](const Finding& one) { return one.word == SignalWord::Danger; }));
    REQUIRE(bench.window.analysis().drive());
    CHECK(bench.window.analysis().drive()->recording.duration_s ==
          Approx(bench.window.document().circuit().plan.duration_s));
    CHECK(vacuumAtTheEnd_Pa(bench) > 0.95 * kSwitchCloses_Pa);
}

inline void checkPdf(const QString& path) {
    QFile pdf(path);
    REQUIRE(QTest::qWaitFor([&] { return pdf.exists(); }, 120000));
    REQUIRE(pdf.open(QIODevice::ReadOnly));
    CHECK(pdf.read(5) == "%PDF-");
    CHECK(pdf.size() > 20'000);
}

} // namespace pumpwright
