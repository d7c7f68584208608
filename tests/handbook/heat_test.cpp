#include "core/parts/fuse_band.h"
#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <cmath>
#include <string>

using namespace pumpwright;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

/// Battery, fuse and a resistor that draws about the asked current, over short wires.
Circuit fused(double rating_A, double current_A, const std::string& type, const std::string& band) {
    DrivePlan plan;
    plan.duration_s = 1000;
    return CircuitBuilder()
        .part("supply", "G1", {{"internalResistance_ohm", 1e-3}})
        .part("fuse", "F1", {{"rating_A", rating_A}}, {{"type", type}, {"band", band}})
        .part("resistor", "R1", {{"resistance_ohm", 12.65 / current_A}})
        .wire("G1.30", "F1.1", 25e-6, 0.1)
        .wire("F1.2", "R1.1", 25e-6, 0.1)
        .wire("R1.2", "G1.31", 25e-6, 0.1)
        .plan(plan)
        .build();
}

} // namespace

TEST_CASE("a fuse in a circuit opens when its band says, at whichever edge", "[handbook][fuse]") {
    // Data sheets of blade fuses that name ISO 8820-3: type C at 200 % 0.15 to 5 s.
    for (const std::string band : {"fast", "middle", "slow"}) {
        const DriveResult result = simulateDrive(fused(10, 20, "C", band));
        INFO(band << ": " << result.message);
        REQUIRE(result.status == DriveStatus::Finished);
        REQUIRE(result.recording.events.size() == 1);
        const DriveEvent& event = result.recording.events.front();
        CHECK(event.what == "fuse opens");
        const double current_A = result.recording.part({"F1"}, probe::kCurrent)->at(event.time_s / 2);
        CHECK_THAT(event.time_s, WithinRel(openingTime_s(FuseType::C, current_A / 10, fuseEdge(band)), 0.01));
        CHECK(event.time_s > 0.15);
        CHECK(event.time_s < 6); // the wires and the fuse itself leave a little less than 200 %
        CHECK(result.recording.part({"F1"}, probe::kCurrent)->at(900) < 1e-6);
        CHECK_THAT(result.recording.part({"F1"}, probe::kOpenShare)->at(900), WithinAbs(1, 1e-6));
    }
}

TEST_CASE("a fuse at its rating carries on", "[handbook][fuse]") {
    const DriveResult result = simulateDrive(fused(10, 10, "C", "fast"));
    REQUIRE(result.status == DriveStatus::Finished);
    CHECK(result.recording.events.empty());
    CHECK(result.recording.part({"F1"}, probe::kOpenShare)->at(1000) < 1e-3);
}

TEST_CASE("a wire that carries a constant current warms up as 1 − e^(−t/τ)", "[handbook][wire]") {
    // First-order response with the textbook's τ 79 s and 6.0 K·m/W for 2.5 mm²; at 15 A and 6.9 mohm/m
    // about 9.3 K, and the copper's own warming adds 4 %.
    DrivePlan plan;
    plan.duration_s = 600;
    const Circuit circuit =
        CircuitBuilder()
            .part("supply", "G1", {{"internalResistance_ohm", 1e-3}, {"capacity_C", 3.6e6}})
            .part("resistor", "R1", {{"resistance_ohm", 12.65 / 15}})
            .wire("G1.30", "R1.1", 2.5e-6, 1)
            .wire("R1.2", "G1.31", 25e-6, 0.1)
            .plan(plan)
            .build();
    const DriveResult result = simulateDrive(circuit);
    REQUIRE(result.status == DriveStatus::Finished);
    const Channel* temperature = result.recording.wire({"w1"}, probe::kTemperature);
    const double current_A = result.recording.wire({"w1"}, probe::kCurrent)->at(300);
    const double final_K = temperature->at(600) - plan.ambient_K;
    const double power_WperM = current_A * current_A * 1.7241e-8 * (1 + 0.00393 * final_K) / 2.5e-6;
    CHECK_THAT(final_K, WithinRel(6.0 * power_WperM, 0.015));
    // Copper that warms makes more heat, so the rise takes longer: τ/(1 − 0.00393/K · 6.0 K·m/W · P20).
    const double coldPower_WperM = current_A * current_A * 1.7241e-8 / 2.5e-6;
    const double slowed = 1 - 0.00393 * 6.0 * coldPower_WperM;
    const double shareAfterTau = (temperature->at(79) - plan.ambient_K) / final_K;
    // The recording resolves 0.1 K of the 10 K.
    CHECK_THAT(shareAfterTau, WithinAbs(1 - std::exp(-slowed), 0.012));
}

TEST_CASE("a lamp's inrush is ten to fifteen times its current and gone in a fraction of a second",
          "[handbook][lamp]") {
    // Multiples of 10 to 15 for filament lamps: load tables of relay and switch makers.
    DrivePlan plan;
    plan.duration_s = 2;
    plan.switchMoves = {{0.5, {"S1"}, true}};
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1", {{"stateOfCharge_share", 0.1618}})
                                .part("hand-switch", "S1")
                                .part("lamp", "P1", {{"ratedPower_W", 21}})
                                .wire("G1.30", "S1.1")
                                .wire("S1.2", "P1.1")
                                .wire("P1.2", "G1.31")
                                .plan(plan)
                                .build();
    const DriveResult result = simulateDrive(circuit);
    REQUIRE(result.status == DriveStatus::Finished);
    const Channel* current = result.recording.part({"P1"}, probe::kCurrent);
    const double steady_A = current->at(2);
    CHECK_THAT(steady_A, WithinRel(21.0 / 12, 0.03));
    const double peak_A = current->extremes(0.5, 2).highest;
    CHECK(peak_A > 10 * steady_A);
    CHECK(peak_A < 15 * steady_A);
    CHECK(current->at(0.7) < 1.1 * steady_A);
}

TEST_CASE("a solid-state relay's junction ends at surroundings plus loss times thermal resistance",
          "[handbook][heat]") {
    // P = I²·R, Tj = Ta + P·Rth: textbook. 20 A, 10 mohm (25 °C), 10 K/W, 20 °C.
    DrivePlan plan;
    plan.duration_s = 3600;
    const Circuit circuit =
        CircuitBuilder()
            .part("supply", "G1", {{"internalResistance_ohm", 1e-3}, {"capacity_C", 3.6e6}})
            .part("solid-state-relay", "K1")
            .part("resistor", "R1", {{"resistance_ohm", 12.65 / 20}})
            .wire("G1.30", "K1.A1", 0.75e-6, 0.1)
            .wire("K1.A2", "G1.31", 0.75e-6, 0.1)
            .wire("G1.30", "K1.1", 25e-6, 0.1)
            .wire("K1.2", "R1.1", 25e-6, 0.1)
            .wire("R1.2", "G1.31", 25e-6, 0.1)
            .plan(plan)
            .build();
    const DriveResult result = simulateDrive(circuit);
    REQUIRE(result.status == DriveStatus::Finished);
    const double current_A = result.recording.part({"K1"}, probe::kContactCurrent)->at(3600);
    const double junction_K = result.recording.part({"K1"}, probe::kTemperature)->at(3600);
    // With 0.7 %/K from 25 °C the rise is the solution of r = P25·Rth·(1 + 0.007·(r − 5)).
    const double cold_K = current_A * current_A * 0.010 * 10;
    const double rise_K = cold_K * (1 - 0.007 * 5) / (1 - 0.007 * cold_K);
    CHECK_THAT(junction_K - plan.ambient_K, WithinRel(rise_K, 0.01));
}
