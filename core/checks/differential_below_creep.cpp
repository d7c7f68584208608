#include "core/checks/controls.h"
#include "core/checks/running_state.h"
#include "core/checks/set_point.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// [s] in which the gas is warm again after a fast pump-down; a leak takes longer. Common practice, no
/// published source.
constexpr double kCreep_s = 10;
/// What recorded curves may lie beside the true ones at least, of the differential.
constexpr double kRecorded = 0.02;

/// How far the vacuum falls back after a pump has stopped.
struct Creep {
    double value_Pa = 0;
    double room_Pa = 0; ///< that there was for it, down to where the switch closes
    double at_s = 0;
    bool closes() const { return value_Pa > 0 && value_Pa >= room_Pa; }
};

bool pressedIn(const DrivePlan& plan, double from_s, double to_s) {
    return std::any_of(plan.presses.begin(), plan.presses.end(), [&](const Press& press) {
        const double end_s = press.at_s + std::max(press.hold_s, press.rise_s) + press.rise_s;
        return press.at_s < to_s && end_s > from_s;
    });
}

/// The stop after which the vacuum came nearest to where the switch closes, without a press in between.
Creep worstCreep(const Survey& survey, double duration_s, const SetPoint& setPoint, const Channel& vacuum,
                 const LoadPath& pump) {
    Creep worst;
    const double beside_Pa =
        std::max(kRecorded * (setPoint.opens_Pa - setPoint.closes_Pa), vacuum.probe.resolution);
    for (const TimeSpan& run : runningSpans(survey, pump.part, pump.load)) {
        const double to_s = std::min(run.to_s + kCreep_s, duration_s);
        if (pressedIn(survey.circuit().plan, run.to_s, to_s) || to_s <= run.to_s) {
            continue;
        }
        const Extremes after = vacuum.extremes(run.to_s, to_s);
        const double peak_Pa = vacuum.at(run.to_s);
        if (peak_Pa < setPoint.opens_Pa - beside_Pa) {
            continue; // not this switch stopped the pump
        }
        const Creep creep{peak_Pa - after.lowest, peak_Pa - setPoint.closes_Pa - beside_Pa, run.to_s};
        if (worst.value_Pa == 0 || creep.value_Pa - creep.room_Pa > worst.value_Pa - worst.room_Pa) {
            worst = creep;
        }
    }
    return worst;
}

Finding findingFor(const Rule& rule, const Survey& survey, const SetPoint& setPoint, const Creep& creep) {
    const std::string name = nameOf(survey.circuit(), setPoint.part);
    Finding finding = newFinding(rule);
    finding.parts = {setPoint.part};
    finding.value = creep.value_Pa;
    finding.limit = creep.room_Pa;
    finding.kind = QuantityKind::PressureDifference;
    finding.at_s = creep.at_s;
    finding.what = say("After the pump's stop at {} the vacuum falls back by {} within {}; {} closes again "
                       "after {}.",
                       amount(creep.at_s, QuantityKind::Time), amount(creep.value_Pa, finding.kind),
                       amount(kCreep_s, QuantityKind::Time), name, amount(creep.room_Pa, finding.kind));
    finding.why =
        say("Gas that was pumped down fast warms up again and its pressure rises: the pump starts anew.");
    if (auto remedy = widerDifferential(survey, setPoint.part)) {
        finding.remedies.push_back(std::move(*remedy));
    }
    finding.remedies.push_back(
        {say("Let a timer with delay on release run the pump on after the switch has opened."), {}});
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    const Recording* recording = survey.recording();
    if (recording == nullptr) {
        return findings;
    }
    for (const std::size_t number : pumpPaths(survey)) {
        const LoadPath& pump = survey.loadPaths()[number];
        for (const PartId& part : controllingParts(survey, pump)) {
            const Channel* vacuum = recording->port({part, survey.features(part).sensingPort});
            const auto setPoint = vacuum == nullptr ? std::nullopt : setPointOf(survey, part);
            if (!setPoint) {
                continue;
            }
            const Creep creep = worstCreep(survey, recording->duration_s, *setPoint, *vacuum, pump);
            if (creep.closes()) {
                findings.push_back(findingFor(rule, survey, *setPoint, creep));
            }
        }
    }
    return findings;
}

} // namespace

extern const Rule kDifferentialBelowCreep{"differential-below-creep",
                                          words("Differential smaller than the pressure's creep back"),
                                          SignalWord::Caution,
                                          words("common practice, no published source"),
                                          true,
                                          check};

} // namespace pumpwright
