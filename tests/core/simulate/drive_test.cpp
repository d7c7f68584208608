#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <atomic>
#include <cmath>

using namespace pumpwright;

namespace {

Circuit van(double duration_s) {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 55e3}, {"differential_Pa", 3e3}});
    addPumpFeed(builder, {{"suppression", "diode"}})
        .wire("F1.2", "B1.1", 0.75e-6)
        .wire("B1.2", "K1.86", 0.75e-6);
    return builder.plan(standingPlan(duration_s)).build();
}

bool same(const Recording& a, const Recording& b) {
    bool equal = a.channels.size() == b.channels.size() && a.events.size() == b.events.size();
    for (std::size_t i = 0; equal && i < a.channels.size(); ++i) {
        equal = a.channels[i].key == b.channels[i].key && a.channels[i].times_s == b.channels[i].times_s &&
                a.channels[i].values == b.channels[i].values;
    }
    return equal;
}

} // namespace

TEST_CASE("the same circuit gives the same recording to the bit", "[simulate][drive]") {
    CHECK(same(simulateDrive(van(15)).recording, simulateDrive(van(15)).recording));
}

TEST_CASE("a tighter tolerance moves no event by more than a millisecond", "[simulate][drive]") {
    DriveOptions tight;
    tight.relativeTolerance = 1e-7;
    const DriveResult usual = simulateDrive(van(10));
    const DriveResult exact = simulateDrive(van(10), tight);
    REQUIRE(usual.recording.events.size() == exact.recording.events.size());
    for (std::size_t i = 0; i < exact.recording.events.size(); ++i) {
        CHECK(usual.recording.events[i].what == exact.recording.events[i].what);
        CHECK(usual.recording.events[i].time_s == Approx(exact.recording.events[i].time_s).margin(1e-3));
    }
}

TEST_CASE("a cancelled run says so and keeps what it had", "[simulate][drive]") {
    std::atomic<bool> cancel = true;
    DriveOptions options;
    options.cancel = &cancel;
    const DriveResult run = simulateDrive(van(1000), options);
    CHECK(run.status == DriveStatus::Cancelled);
    CHECK(run.recording.duration_s < 1000);
    CHECK(run.recording.port(endOf("A1.vacuum"))->at(0) == Approx(0).margin(50));
}

TEST_CASE("progress rises to the end of the plan", "[simulate][drive]") {
    double last = 0;
    DriveOptions options;
    options.progress = [&](double share) {
        CHECK(share >= last);
        CHECK(share <= 1);
        last = share;
    };
    CHECK(simulateDrive(van(30), options).status == DriveStatus::Finished);
    CHECK(last > 0);
}

TEST_CASE("an empty sheet, parts without wires and a circuit without a supply all run", "[simulate][drive]") {
    CHECK(simulateDrive(CircuitBuilder().build()).status == DriveStatus::Finished);
    const Circuit loose = CircuitBuilder()
                              .part("relay", "K1")
                              .part("supply", "G1")
                              .part("booster", "A1")
                              .part("lamp", "P1")
                              .build();
    CHECK(simulateDrive(loose).status == DriveStatus::Finished);
    const Circuit dead = CircuitBuilder()
                             .part("relay", "K1")
                             .part("lamp", "P1")
                             .wire("K1.86", "P1.1")
                             .wire("K1.85", "P1.2")
                             .build();
    const DriveResult run = simulateDrive(dead);
    CHECK(run.status == DriveStatus::Finished);
    CHECK(run.recording.terminal(endOf("K1.86"))->at(1) == Approx(0).margin(1e-6));
}

TEST_CASE("a dead short heats its wire, and the run goes on", "[simulate][drive]") {
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1")
                                .part("fuse", "F1", {{"rating_A", 10}})
                                .wire("G1.30", "F1.1", 1.5e-6, 0.5)
                                .wire("F1.2", "G1.31", 1.5e-6, 0.5)
                                .plan(standingPlan(10))
                                .build();
    const DriveResult run = simulateDrive(circuit);
    REQUIRE(run.status == DriveStatus::Finished);
    CHECK(run.recording.part(PartId{"F1"}, probe::kOpenShare)->at(10) >= 1);
    CHECK(run.recording.wire(WireId{"w1"}, probe::kCurrent)->extremes(0, 10).highest > 300);
    CHECK(std::abs(run.recording.wire(WireId{"w1"}, probe::kCurrent)->at(10)) < 0.01);
}

// Closed form of first-order response: T = τ·ln((I0 − id)/(I0 − ip)) + τ·ln((ip + Id)/(id + Id)) and the
// armature's travels, during which the current goes on with its exponential. Here travel is short against τ
// = 7.8 ms.
TEST_CASE("a relay fed through its own break contact hums as its coil and armature allow",
          "[simulate][drive]") {
    const double travel_s = 2e-4;
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1", {{"internalResistance_ohm", 1e-3}})
                                .part("relay", "K1",
                                      {{"operateTime_s", travel_s},
                                       {"releaseTime_s", travel_s},
                                       {"pullInVoltage_V", 7.2},
                                       {"dropOutVoltage_V", 2.4}},
                                      {{"contacts", "changeover"}, {"suppression", "diode"}})
                                .wire("G1.30", "K1.30", 10e-6, 0.1)
                                .wire("K1.87a", "K1.86", 10e-6, 0.1)
                                .wire("K1.85", "G1.31", 10e-6, 0.1)
                                .plan(standingPlan(0.5))
                                .build();
    const DriveResult run = simulateDrive(circuit);
    REQUIRE(run.status == DriveStatus::Finished);
    std::vector<double> pulls;
    for (const DriveEvent& event : run.recording.events) {
        if (event.what == "armature pulls in") {
            pulls.push_back(event.time_s);
        }
    }
    REQUIRE(pulls.size() > 20);
    const double period_s = (pulls.back() - pulls[5]) / static_cast<double>(pulls.size() - 6);
    const double tau_s = 0.7 / 90;
    const double full_A = 12.65 / 90;
    const double pull_A = 7.2 / 90;
    const double drop_A = 2.4 / 90;
    const double diode_A = 0.75 / 90;
    const double peak_A = full_A - (full_A - pull_A) * std::exp(-travel_s / tau_s);
    const double low_A = (drop_A + diode_A) * std::exp(-travel_s / tau_s) - diode_A;
    const double expected_s = tau_s * std::log((full_A - low_A) / (full_A - peak_A)) +
                              tau_s * std::log((peak_A + diode_A) / (low_A + diode_A));
    CHECK(period_s == Approx(expected_s).epsilon(0.03));
}
