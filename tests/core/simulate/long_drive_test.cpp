#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <algorithm>

using namespace pumpwright;

namespace {

/// The van with hardly a leak, and three presses that begin at `at_s`.
Circuit pressedAt(double at_s) {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder, {{"suppression", "diode"}})
        .wire("F1.2", "B1.1", 0.75e-6)
        .wire("B1.2", "K1.86", 0.75e-6);
    DrivePlan plan = standingPlan(at_s + 60);
    for (const double after_s : {0.0, 8.0, 16.0}) {
        plan.presses.push_back({at_s + after_s, 1, 150});
    }
    Circuit circuit = builder.plan(plan).build();
    circuit.parts.at({"A1"}).values["leakHole_m"] = 1e-7;
    circuit.parts.at({"R9"}).values["backLeakHole_m"] = 1e-7;
    return circuit;
}

long eventsFrom(const Recording& recording, double from_s) {
    return std::ranges::count_if(recording.events,
                                 [&](const DriveEvent& event) { return event.time_s >= from_s; });
}

} // namespace

TEST_CASE("what switches after a day goes on as it does in the first minutes", "[simulate][drive]") {
    constexpr double kMinutes_s = 120;
    constexpr double kDay_s = 86400;
    const DriveResult early = simulateDrive(pressedAt(kMinutes_s));
    const DriveResult late = simulateDrive(pressedAt(kDay_s));
    CAPTURE(late.message);
    REQUIRE(early.status == DriveStatus::Finished);
    REQUIRE(late.status == DriveStatus::Finished);
    const long events = eventsFrom(early.recording, kMinutes_s);
    CHECK(events > 4);
    CHECK(eventsFrom(late.recording, kDay_s) == events);
}
