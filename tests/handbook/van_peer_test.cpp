#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/van_by_hand.h"
#include "tests/support/van_circuit.h"

#include <algorithm>
#include <cmath>

// Whole drives against the same circuits written out by hand as equations and solved by CVODE of SUNDIALS at
// 1e-10 with root finding: same events in the same order, each within 0.1 ms, traces within 0.1 % of scale.

using namespace pumpwright;
using namespace pumpwright::test;

namespace {

constexpr double kArea_m2 = 6e-6; // the wires of VanByHand
constexpr double kLength_m = 0.1;

CircuitBuilder& wire(CircuitBuilder& builder, std::string_view from, std::string_view to) {
    return builder.wire(from, to, kArea_m2, kLength_m);
}

void addLamps(CircuitBuilder& builder) {
    builder.part("pedal-switch", "S2").part("splice", "X6").part("diode", "R1");
    wire(builder, "X5.1", "S2.1");
    wire(builder, "S2.2", "X6.1");
    wire(builder, "X6.1", "R1.A");
    wire(builder, "R1.K", "K1.86");
    for (const std::string number : {"1", "2"}) {
        builder.part("lamp", "P" + number, {{"ratedPower_W", 21}}).part("ground", "X7" + number);
        wire(builder, "X6.1", "P" + number + ".1");
        wire(builder, "P" + number + ".2", "X7" + number + ".31");
    }
}

Circuit circuitOf(const VanByHand& van) {
    CircuitBuilder builder =
        vanVacuumSide({{"setPoint_Pa", van.setPoint_Pa}, {"differential_Pa", van.differential_Pa}});
    builder.part("supply", "G1")
        .part("splice", "X5")
        .part("relay", "K1", {}, {{"suppression", "diode"}})
        .part("ground", "X1")
        .part("ground", "X2")
        .part("ground", "X3");
    for (const auto& [from, to] : {std::pair{"G1.31", "X1.31"},
                                   {"G1.30", "X5.1"},
                                   {"X5.1", "K1.30"},
                                   {"K1.87", "M1.+"},
                                   {"M1.-", "X2.31"},
                                   {"K1.85", "X3.31"}}) {
        wire(builder, from, to);
    }
    if (van.trigger == VanByHand::Trigger::BrakeLamps) {
        addLamps(builder);
    } else {
        wire(builder, "X5.1", "B1.1");
        wire(builder, "B1.2", "K1.86");
    }
    DrivePlan plan;
    plan.duration_s = van.duration_s;
    plan.initialVacuum_Pa = van.initialVacuum_Pa;
    plan.presses = van.presses;
    return builder.plan(plan).build();
}

std::vector<VanByHand::Event> eventsOf(const VanByHand& van, const DriveResult& drive) {
    std::vector<VanByHand::Event> events;
    const bool lamps = van.trigger == VanByHand::Trigger::BrakeLamps;
    for (const DriveEvent& event : drive.recording.events) {
        if (lamps && event.id == "B1") {
            continue; // nothing hangs on it
        }
        events.push_back({event.time_s, (event.id == "S2" ? "pedal: " : "") + event.what});
    }
    return events;
}

void compareEvents(const std::vector<VanByHand::Event>& ours, const std::vector<VanByHand::Event>& peers) {
    double worst_s = 0;
    for (std::size_t i = 0; i < std::min(ours.size(), peers.size()); ++i) {
        INFO("event " << i << " at " << peers[i].time_s);
        REQUIRE(ours[i].what == peers[i].what);
        worst_s = std::max(worst_s, std::abs(ours[i].time_s - peers[i].time_s));
    }
    CAPTURE(worst_s);
    CHECK(ours.size() == peers.size());
    CHECK(worst_s < 1e-4);
}

/// Whether something has just jumped or is about to: there a trace may be anything from before to after.
bool nearEvent(const std::vector<VanByHand::Event>& events, double time_s) {
    constexpr double kNear_s = 0.01;
    return std::any_of(events.begin(), events.end(), [&](const VanByHand::Event& event) {
        return std::abs(event.time_s - time_s) < kNear_s;
    });
}

void compareTraces(const VanByHand::Drive& peer, const Recording& ours) {
    struct Trace {
        const char* name;
        const Channel* channel;
        double VanByHand::Sample::*member;
        double allowed; ///< 0.1 % of scale
    };
    const std::array traces{
        Trace{"vacuum", ours.port(endOf("A1.vacuum")), &VanByHand::Sample::vacuum_Pa, 101},
        Trace{"speed", ours.part({"M1"}, probe::kSpeed), &VanByHand::Sample::speed_radps, 0.3},
        Trace{"current", ours.part({"M1"}, probe::kCurrent), &VanByHand::Sample::current_A, 0.012},
        Trace{"supply", ours.terminal(endOf("X5.1")), &VanByHand::Sample::supply_V, 0.0126}};
    for (const Trace& trace : traces) {
        REQUIRE(trace.channel != nullptr);
        double worst = 0;
        double at_s = 0;
        for (const VanByHand::Sample& sample : peer.samples) {
            const double off = std::abs(trace.channel->at(sample.time_s) - sample.*(trace.member));
            if (off > worst && !nearEvent(peer.events, sample.time_s)) {
                worst = off;
                at_s = sample.time_s;
            }
        }
        INFO(trace.name << " worst " << worst << " at " << at_s << " s");
        CHECK(worst <= trace.allowed + trace.channel->probe.resolution);
    }
}

void compare(VanByHand van, double peers = 1e-10, double ours = 1e-8) {
    van.sampleEvery_s = 0.0503; // in step with nothing
    const VanByHand::Drive peer = van.drive(peers);
    REQUIRE(peer.finished);
    const Circuit circuit = circuitOf(van);
    DriveOptions fine;
    fine.relativeTolerance = ours;
    const DriveResult drive = simulateDrive(circuit, fine);
    CAPTURE(drive.message);
    REQUIRE(drive.status == DriveStatus::Finished);
    CAPTURE(peer.events.size());
    CHECK(peer.events.size() > 3);
    compareEvents(eventsOf(van, drive), peer.events);
    compareTraces(peer, drive.recording);
}

} // namespace

TEST_CASE("pumping down and a full episode of chatter go as the equations by hand do",
          "[handbook][van][peer]") {
    VanByHand van;
    van.duration_s = 30;
    compare(van);
}

TEST_CASE("a pump that the brake lamps trigger goes as the equations by hand do", "[handbook][van][peer]") {
    VanByHand van;
    van.trigger = VanByHand::Trigger::BrakeLamps;
    van.initialVacuum_Pa = 60e3;
    van.duration_s = 40;
    van.presses = {
        {3, 2, 100, 0.2, {}}, {10, 0.5, 200, 0.1, {}}, {11.5, 4, 60, 0.3, {}}, {30, 3, 250, 0.2, {}}};
    compare(van, 1e-9);
}

TEST_CASE("ten minutes with ten presses go as the equations by hand do", "[handbook][van][peer]") {
    VanByHand van;
    van.differential_Pa = 8e3;
    van.duration_s = 600;
    for (int i = 0; i < 10; ++i) {
        van.presses.push_back({40.0 + 55 * i, 1.5 + 0.1 * i, 120 + 20.0 * (i % 4), 0.2, {}});
    }
    compare(van, 1e-10, 1e-7);
}
