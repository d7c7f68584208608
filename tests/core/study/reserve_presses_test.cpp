#include "core/study/trials.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

using namespace pumpwright;

namespace {

/// Presses that the stored vacuum is good for with a reservoir of this volume at the tee.
int reserveWith(double volume_m3, double force_N) {
    Circuit circuit = vanVacuumSide()
                          .part("reservoir", "C1", {{"volume_m3", volume_m3}})
                          .part("tee", "X8")
                          .hose("A1.vacuum", "X8.a")
                          .hose("X8.c", "C1.a")
                          .build();
    circuit.plan = standingPlan(20);
    circuit.plan.initialVacuum_Pa = 70e3;
    circuit.plan.presses = {{5, 1.5, force_N, 0.2}};
    const DriveResult drive = simulateDrive(circuit);
    REQUIRE(drive.status == DriveStatus::Finished);
    return reservePresses(circuit, drive.recording);
}

} // namespace

TEST_CASE("a larger tank never leaves fewer presses in reserve, whatever their force", "[study][property]") {
    for (const double force_N : {40.0, 60.0, 80.0}) {
        int before = 0;
        for (const double volume_m3 : {0.1e-3, 0.5e-3, 1e-3, 2e-3, 4e-3, 8e-3}) {
            const int reserve = reserveWith(volume_m3, force_N);
            CAPTURE(force_N, volume_m3, reserve);
            CHECK(reserve >= before);
            before = reserve;
        }
        CHECK(before > 0);
    }
}
