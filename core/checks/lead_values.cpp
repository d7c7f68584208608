#include "core/checks/lead_values.h"

#include "core/parts/conductor.h"
#include "core/parts/fuse_band.h"
#include "core/parts/part_kind.h"

#include <algorithm>

namespace pumpwright {
namespace {

double wires_ohm(const Survey& survey, const std::vector<LeadStep>& way) {
    double sum_ohm = 0;
    for (const LeadStep& step : way) {
        sum_ohm += step.wire ? resistance_ohm(survey, survey.circuit().wires.at(*step.wire)) : 0;
    }
    return sum_ohm;
}

} // namespace

int bundledOf(const Survey& survey, const Wire& wire) {
    return std::max(wire.bundled, survey.circuit().limits.leastBundled);
}

double capacity_A(const Survey& survey, const Wire& wire) {
    return capacity_A(survey, wire, wire.area_m2);
}

double capacity_A(const Survey& survey, const Wire& wire, double area_m2) {
    return ampacity_A(area_m2, wire.insulation, survey.circuit().limits.ambient_K, bundledOf(survey, wire));
}

double resistance_ohm(const Survey& survey, const Wire& wire) {
    return copperResistivity_ohmm(survey.circuit().limits.ambient_K) * wire.length_m / wire.area_m2;
}

double resistance_ohm(const Survey& survey, const std::vector<LeadStep>& way) {
    double sum_ohm = wires_ohm(survey, way);
    for (const LeadStep& step : way) {
        if (step.branch && survey.branches()[*step.branch].sort == BranchSort::Fuse) {
            const FuseRating& fuse = *survey.features(survey.branches()[*step.branch].part).fuse;
            sum_ohm += fuseResistance_ohm(fuse.type, fuse.rating_A);
        }
    }
    return sum_ohm;
}

double groundLead_ohm(const Survey& survey, const SourceLeads& source) {
    std::optional<double> least_ohm;
    for (const auto& [id, features] : survey.allFeatures()) {
        if (!features.ground) {
            continue;
        }
        const PartKind& kind = kindOf(survey.part(id));
        const auto way = source.toMinus.way({id, kind.terminals(survey.part(id)).front().name});
        if (way) {
            const double lead_ohm =
                wires_ohm(survey, *way) + kind.value(survey.part(id), "contactResistance_ohm");
            least_ohm = std::min(least_ohm.value_or(lead_ohm), lead_ohm);
        }
    }
    return least_ohm.value_or(0);
}

double faultCurrent_A(const Survey& survey, const Branch& source, const std::vector<LeadStep>& way) {
    const Source& facts = *survey.features(source.part).source;
    const double loop_ohm =
        facts.resistance_ohm + wires_ohm(survey, way) + survey.groundLead_ohm(source.part);
    return facts.emf_V / std::max(loop_ohm, 1e-4);
}

} // namespace pumpwright
