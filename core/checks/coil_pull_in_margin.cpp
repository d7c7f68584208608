#include "core/checks/lead_values.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/standard_size.h"
#include "core/checks/wording.h"
#include "core/parts/conductor.h"

#include <fmt/format.h>

#include <map>
#include <set>

namespace pumpwright {
namespace {

/// [K] that a coil's own heat adds once it has been in for long. Common practice, no published source.
constexpr double kOwnHeat_K = 30;
/// Energising voltage at least 110 % of the least that pulls it in [Caltrans equipment electrical standards
/// 8.3].
constexpr double kMargin = 1.10;

/// A coil at its hottest and what it gets over its wires.
struct HotCoil {
    double coil_ohm = 0;
    double lead_ohm = 0;
    double supply_V = 0;
    double needs_V = 0;

    double gets_V(double lead) const { return supply_V * coil_ohm / (coil_ohm + lead); }
};

HotCoil hotCoilOf(const Survey& survey, const LoadPath& path) {
    const ProjectLimits& limits = survey.circuit().limits;
    const Coil& coil = survey.features(path.part).coils[survey.branches()[path.branch].index];
    HotCoil hot;
    hot.coil_ohm = coil.resistance_ohm * copperWarmShare(limits.ambient_K + kOwnHeat_K);
    hot.lead_ohm = resistance_ohm(survey, path.feed) + resistance_ohm(survey, path.back);
    hot.supply_V = limits.lowestSupply_V;
    hot.needs_V = kMargin * coil.pullIn_A * hot.coil_ohm;
    return hot;
}

/// Lays every wire of the coil's circuit that is thinner in the first gauge with which the coil gets enough.
std::optional<Remedy> gaugeRemedy(const Survey& survey, const LoadPath& path, const HotCoil& hot) {
    std::set<WireId> wires;
    for (const std::vector<LeadStep>* way : {&path.feed, &path.back}) {
        for (const LeadStep& step : *way) {
            if (step.wire) {
                wires.insert(*step.wire);
            }
        }
    }
    for (const double area_m2 : wireAreas_m2()) {
        double lead_ohm = hot.lead_ohm;
        std::map<WireId, double> thicker;
        for (const WireId& id : wires) {
            const Wire& wire = survey.circuit().wires.at(id);
            if (wire.area_m2 < area_m2) {
                lead_ohm -= resistance_ohm(survey, wire) * (1 - wire.area_m2 / area_m2);
                thicker.emplace(id, area_m2);
            }
        }
        if (hot.gets_V(lead_ohm) >= hot.needs_V) {
            std::vector<WireId> ids;
            for (const auto& [id, area] : thicker) {
                ids.push_back(id);
            }
            const Text text = say("{} in {}", listOf(namesOf(survey.circuit(), ids)),
                                  amount(area_m2, QuantityKind::WireArea));
            return Remedy{say("Lay {}.", text), areaEdit(survey.circuit(), thicker, say("Lay {}", text))};
        }
    }
    return std::nullopt;
}

Finding findingFor(const Rule& rule, const Survey& survey, const LoadPath& path, const HotCoil& hot) {
    const ProjectLimits& limits = survey.circuit().limits;
    const std::string name = nameOf(survey.circuit(), path.part);
    Finding finding = newFinding(rule);
    finding.parts = {path.part};
    finding.value = hot.gets_V(hot.lead_ohm);
    finding.limit = hot.needs_V;
    finding.kind = QuantityKind::Voltage;
    finding.what = say("With {} of supply the coil of {} gets {}; hot, at {}, it needs {}.",
                       amount(limits.lowestSupply_V, finding.kind), name, amount(finding.value, finding.kind),
                       amount(limits.ambient_K + kOwnHeat_K, QuantityKind::Temperature),
                       amount(finding.limit, finding.kind));
    finding.why = say("A hot relay that has dropped out does not pull in again while the supply is low.");
    if (const auto gauge = gaugeRemedy(survey, path, hot)) {
        finding.remedies.push_back(*gauge);
    }
    finding.remedies.push_back(
        {say("Choose a relay that pulls in at less as {}, or fit it where it is cooler.", name), {}});
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const LoadPath& path : survey.loadPaths()) {
        if (survey.branches()[path.branch].sort != BranchSort::Coil || !path.source) {
            continue;
        }
        const HotCoil hot = hotCoilOf(survey, path);
        if (hot.gets_V(hot.lead_ohm) < hot.needs_V) {
            findings.push_back(findingFor(rule, survey, path, hot));
        }
    }
    return findings;
}

} // namespace

extern const Rule kCoilPullInMargin{
    "coil-pull-in-margin",
    words("Relay may not pull in when hot"),
    SignalWord::Warning,
    words("Caltrans equipment electrical standards 8.3; lowest supply set in the "
          "project's limits"),
    false,
    check};

} // namespace pumpwright
