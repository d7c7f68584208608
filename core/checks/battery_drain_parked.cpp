#include "core/checks/carried_current.h"
#include "core/checks/controls.h"
#include "core/checks/standing_state.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// Of a battery's charge, so that the rest still starts the vehicle. Common practice, no published source.
constexpr double kDrainShare = 0.5;

struct Drain {
    double current_A = 0;
    std::vector<PartId> parts; ///< that take it, the one that takes most first
};

/// A booster empties itself within hours: what its vacuum switches feed is on then, unless a pump that runs
/// without a key keeps them off.
StandingState parkedState(const Survey& survey) {
    StandingState empty = standingState(survey, {.vacuumLow = true});
    const std::vector<std::size_t> pumps = pumpPaths(survey);
    const bool runs =
        std::any_of(pumps.begin(), pumps.end(), [&](std::size_t path) { return empty.fed[path]; });
    return runs ? standingState(survey, {}) : empty;
}

/// [A] that a semiconductor lets through while it is off, to a load behind it.
double leakage_A(const Survey& survey, const StandingState& state, std::size_t branch) {
    const Branch& one = survey.branches()[branch];
    const bool feedsSomething = survey.expectedCurrents().branches.contains(branch);
    return one.sort == BranchSort::Contact && !state.shuts[branch] && feedsSomething &&
                   survey.liveNets()[one.fromNet]
               ? contactOf(survey, one).leakage_A
               : 0;
}

Drain drainOf(const Survey& survey, const PartId& source) {
    const StandingState state = parkedState(survey);
    std::vector<std::pair<double, PartId>> takers;
    for (std::size_t i = 0; i < state.fed.size(); ++i) {
        const LoadPath& path = survey.loadPaths()[i];
        if (state.fed[i] && path.source == source) {
            takers.emplace_back(path.load.running_A, path.part);
        }
    }
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        if (const double leak_A = leakage_A(survey, state, i); leak_A > 0) {
            takers.emplace_back(leak_A, survey.branches()[i].part);
        }
    }
    std::stable_sort(takers.begin(), takers.end(),
                     [](const auto& one, const auto& other) { return one.first > other.first; });
    Drain drain;
    for (const auto& [current_A, part] : takers) {
        drain.current_A += current_A;
        if (std::find(drain.parts.begin(), drain.parts.end(), part) == drain.parts.end()) {
            drain.parts.push_back(part);
        }
    }
    return drain;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    const double parked_s = survey.circuit().limits.parked_s;
    std::vector<Finding> findings;
    for (const auto& [id, features] : survey.allFeatures()) {
        if (!features.source || features.source->capacity_C <= 0) {
            continue;
        }
        const Drain drain = drainOf(survey, id);
        const double limit_C = kDrainShare * features.source->capacity_C;
        if (drain.current_A * parked_s <= limit_C) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.parts = {id};
        finding.parts.insert(finding.parts.end(), drain.parts.begin(), drain.parts.end());
        finding.value = drain.current_A * parked_s;
        finding.limit = limit_C;
        finding.kind = QuantityKind::Charge;
        finding.what = say("With everything switched off, {} {} {}: {} in {}; {} may lose {}.",
                           listOf(namesOf(survey.circuit(), drain.parts)),
                           drain.parts.size() == 1 ? say("draws") : say("draw"),
                           amount(drain.current_A, QuantityKind::Current),
                           amount(finding.value, finding.kind), amount(parked_s, QuantityKind::Time),
                           nameOf(survey.circuit(), id), amount(limit_C, finding.kind));
        finding.why = say("A battery that is drained below half starts no engine and ages fast.");
        finding.remedies = {
            {say("Feed {} over a contact of the ignition switch, after its fuse.",
                 nameOf(survey.circuit(), drain.parts.front())),
             {}},
            {say("State a shorter time between two charges, if the vehicle is never left longer."), {}}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kBatteryDrainParked{"battery-drain-parked",
                                      words("Battery drained while parked"),
                                      SignalWord::Caution,
                                      words("common practice, no published source"),
                                      false,
                                      check};

} // namespace pumpwright
