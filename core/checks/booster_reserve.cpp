#include "core/checks/booster_reserve.h"

#include "core/checks/carried_current.h"
#include "core/checks/controls.h"
#include "core/checks/set_point.h"
#include "core/checks/vacuum_lines.h"
#include "core/units/atmosphere.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pumpwright {
namespace {

constexpr int kMostPresses = 100;
/// Of the travel, assist and pressure depend on each other; each round brings them nearer by a factor of ten.
constexpr int kRounds = 12;

double command_N(const BoosterFacts& facts, double rod_N) {
    return std::max(0.0, (facts.boostRatio - 1) * (rod_N - facts.cutIn_N));
}

/// [m] The hydraulics ask for a travel that grows with the output force up to the stop.
double travel_m(const BoosterFacts& facts, double output_N) {
    const double share = output_N / facts.fullTravelForce_N;
    return facts.travelMax_m * share / std::pow(1 + std::pow(share, 4), 0.25);
}

double hoseVolume_m3(const Hose& hose) {
    return std::numbers::pi / 4 * hose.innerDiameter_m * hose.innerDiameter_m * hose.length_m;
}

using Lines = std::map<End, std::size_t>;

/// [m³] of reservoirs and hoses, by line.
std::map<std::size_t, double> volumesOn(const Survey& survey, const Lines& lines) {
    std::map<std::size_t, double> volumes_m3;
    for (const auto& [id, features] : survey.allFeatures()) {
        const auto volume_m3 =
            features.airWays.empty() ? std::nullopt : nameplateValue(survey.part(id), "volume_m3");
        if (volume_m3) {
            volumes_m3[lines.at({id, features.airWays.front().from})] += *volume_m3;
        }
    }
    for (const auto& [id, hose] : survey.circuit().hoses) {
        const auto from = lines.find(hose.from);
        const auto to = lines.find(hose.to);
        if (from != lines.end() && to != lines.end() && from->second == to->second) {
            volumes_m3[from->second] += hoseVolume_m3(hose);
        }
    }
    return volumes_m3;
}

/// [Pa] The lowest set point of the switches that command a pump, by line.
std::map<std::size_t, double> keptOn(const Survey& survey, const Lines& lines) {
    std::map<std::size_t, double> kept_Pa;
    for (const std::size_t number : pumpPaths(survey)) {
        for (const std::size_t contact : allControlsOf(survey, survey.loadPaths()[number])) {
            const PartId& part = survey.branches()[contact].part;
            const std::string& sensing = survey.features(part).sensingPort;
            const auto setPoint = sensing.empty() ? std::nullopt : setPointOf(survey, part);
            if (setPoint) {
                const std::size_t line = lines.at({part, sensing});
                const auto known = kept_Pa.emplace(line, setPoint->closes_Pa).first;
                known->second = std::min(known->second, setPoint->closes_Pa);
            }
        }
    }
    return kept_Pa;
}

} // namespace

IsolatedPress isolatedPress(const IsolatedBooster& booster, double pressure_Pa, double pedalForce_N) {
    const BoosterFacts& facts = booster.facts;
    const double vacuumSide_m3 = facts.vacuumVolume_m3 + booster.beside_m3;
    const double rod_N = facts.pedalRatio * pedalForce_N;
    IsolatedPress press;
    press.asked_N = command_N(facts, rod_N);
    press.given_N = press.asked_N;
    double swept_m3 = 0;
    double working_Pa = pressure_Pa;
    for (int round = 0; round < kRounds; ++round) {
        const double way_m = travel_m(facts, press.given_N + rod_N);
        swept_m3 = std::min(facts.area_m2 * way_m, 0.95 * facts.vacuumVolume_m3);
        const double spring_N = facts.springForce_N + facts.springRate_Npm * way_m;
        // The check valve opens outward when the stroke compresses the vacuum side to the ambient pressure.
        const double vacuum_Pa =
            std::min(pressure_Pa * vacuumSide_m3 / (vacuumSide_m3 - swept_m3), booster.ambient_Pa);
        working_Pa = std::min(vacuum_Pa + (press.asked_N + spring_N) / facts.area_m2, booster.ambient_Pa);
        press.given_N = std::clamp(facts.area_m2 * (working_Pa - vacuum_Pa) - spring_N, 0.0, press.asked_N);
    }
    const double kept =
        std::min(pressure_Pa * vacuumSide_m3, booster.ambient_Pa * (vacuumSide_m3 - swept_m3));
    press.pressure_Pa = std::min((kept + working_Pa * (facts.workingVolume_m3 + swept_m3)) /
                                     (vacuumSide_m3 + facts.workingVolume_m3),
                                 booster.ambient_Pa);
    return press;
}

int reservePresses(const IsolatedBooster& booster, double vacuum_Pa, double pedalForce_N, double share) {
    double pressure_Pa = std::max(0.0, booster.ambient_Pa - vacuum_Pa);
    int presses = 0;
    while (presses < kMostPresses) {
        const IsolatedPress press = isolatedPress(booster, pressure_Pa, pedalForce_N);
        if (press.share() < share) {
            break;
        }
        pressure_Pa = press.pressure_Pa;
        ++presses;
    }
    return presses;
}

std::vector<BoosterReserve> boosterReserves(const Survey& survey) {
    const Lines lines = vacuumLines(survey);
    const std::map<std::size_t, double> volumes_m3 = volumesOn(survey, lines);
    const std::map<std::size_t, double> kept_Pa = keptOn(survey, lines);
    const double ambient_Pa = standardPressure_Pa(highestAltitude_m(survey.circuit().plan));
    std::vector<BoosterReserve> reserves;
    for (const End& port : boosterPorts(survey)) {
        const std::size_t line = lines.at(port);
        const auto volume = volumes_m3.find(line);
        const auto kept = kept_Pa.find(line);
        reserves.push_back({port,
                            {*survey.features(port.part).booster,
                             volume == volumes_m3.end() ? 0 : volume->second, ambient_Pa},
                            kept == kept_Pa.end() ? std::nullopt : std::optional(kept->second)});
    }
    return reserves;
}

double usualPedalForce_N(const DrivePlan& plan) {
    if (plan.presses.empty()) {
        return Press{}.force_N;
    }
    std::vector<double> forces_N;
    for (const Press& press : plan.presses) {
        forces_N.push_back(press.force_N);
    }
    const auto middle = forces_N.begin() + static_cast<std::ptrdiff_t>(forces_N.size() / 2);
    std::nth_element(forces_N.begin(), middle, forces_N.end());
    return *middle;
}

double highestAltitude_m(const DrivePlan& plan) {
    double highest = 0;
    for (const AltitudePoint& point : plan.altitude) {
        highest = std::max(highest, point.altitude_m);
    }
    return highest;
}

} // namespace pumpwright
