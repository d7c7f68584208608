#include "core/checks/booster_reserve.h"
#include "core/study/trials.h"
#include "tests/core/checks/run_rule.h"

#include <array>

using namespace pumpwright;

namespace {

Circuit van(double setPoint_Pa) {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", setPoint_Pa}});
    addPumpFeed(builder).wire("F1.2", "B1.1", 0.75e-6, 1).wire("B1.2", "K1.86", 0.75e-6, 1);
    return builder.build();
}

} // namespace

TEST_CASE("a switch at 30 kPa leaves too few presses when the pump dies",
          "[checks][reserve-presses][raises]") {
    const Circuit circuit = van(30e3);
    const Finding finding = onlyFinding("reserve-presses", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"A1"}});
    CHECK(finding.value < 2);
    CHECK(finding.limit == Approx(2));
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("a switch at 55 kPa leaves enough", "[checks][reserve-presses][near-miss]") {
    CHECK(findings("reserve-presses", van(55e3)).empty());
}

TEST_CASE("the project's number of presses is the limit", "[checks][reserve-presses][at-limit]") {
    Circuit circuit = van(55e3);
    circuit.limits.reservePresses = 100;
    const Finding finding = onlyFinding("reserve-presses", circuit);
    const int reserve = static_cast<int>(finding.value);
    circuit.limits.reservePresses = reserve;
    CHECK(findings("reserve-presses", circuit).empty());
    circuit.limits.reservePresses = reserve + 1;
    CHECK(findings("reserve-presses", circuit).size() == 1);
}

TEST_CASE("full presses use up an isolated booster as the mass balance has it", "[checks][reserve-presses]") {
    // Gas law and mass balance, isothermal, with the chambers of PATH report UCB-ITS-PRR-97-21 (1997) at
    // second hand: 33.0, 62.5, 87.4, 101.3 kPa with 10 mm of travel; assist 3138, 1120, 0 N.
    BoosterFacts facts;
    facts.area_m2 = 0.0533;
    facts.vacuumVolume_m3 = 2.4e-3;
    facts.workingVolume_m3 = 0.43e-3;
    facts.travelMax_m = 0.010;
    facts.fullTravelForce_N = 1;
    facts.boostRatio = 1000;
    facts.pedalRatio = 4;
    const IsolatedBooster booster{facts, 0, 101'325};
    constexpr std::array kPressures_Pa{62.5e3, 87.4e3, 101.3e3};
    constexpr std::array kAssists_N{3138, 1120, 0};
    double pressure_Pa = 33e3;
    for (std::size_t i = 0; i < kPressures_Pa.size(); ++i) {
        const IsolatedPress press = isolatedPress(booster, pressure_Pa, 2000);
        CHECK(press.given_N == Approx(kAssists_N[i]).epsilon(0.002).margin(5));
        CHECK(press.pressure_Pa == Approx(kPressures_Pa[i]).epsilon(0.001));
        pressure_Pa = press.pressure_Pa;
    }
}

TEST_CASE("a reservoir beside the booster adds presses in proportion", "[checks][reserve-presses]") {
    Circuit circuit = van(30e3);
    const Circuit cured = afterRemedy(circuit, onlyFinding("reserve-presses", circuit));
    circuit.limits.reservePresses = 100;
    Circuit more = cured;
    more.limits.reservePresses = 100;
    CHECK(onlyFinding("reserve-presses", more).value > onlyFinding("reserve-presses", circuit).value);
}

TEST_CASE("the count comes near what the simulation of the same presses gives", "[checks][reserve-presses]") {
    // The engine has heat, valve flow and leaks; the balance is isothermal and tight.
    Circuit circuit = van(55e3);
    circuit.plan = standingPlan(10);
    circuit.plan.initialVacuum_Pa = 55e3;
    circuit.plan.presses = {{30, 1.5, 60, 0.2}};
    circuit.wires.clear();
    const DriveResult still = simulateDrive(circuit);
    const int simulated = reservePresses(circuit, still.recording);
    const Nets nets = findNets(circuit);
    const CheckInputs inputs{circuit, nets};
    const Survey survey(inputs);
    const int balanced = reservePresses(boosterReserves(survey).front().booster, 55e3, 60, 0.95);
    CHECK(std::abs(simulated - balanced) <= 1);
    CHECK(simulated >= 1);
}

TEST_CASE("without a vacuum switch nobody knows with how much vacuum the pump dies",
          "[checks][reserve-presses]") {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder).part("pedal-switch", "S2").wire("F1.2", "S2.1").wire("S2.2", "K1.86");
    CHECK(findings("reserve-presses", builder.build()).empty());
}
