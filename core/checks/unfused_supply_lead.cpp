#include "core/checks/remedy_edit.h"
#include "core/checks/standard_size.h"
#include "core/checks/survey.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

namespace pumpwright {
namespace {

/// What hangs on one wire at a source's plus terminal without a fuse between.
struct Unfused {
    std::set<PartId> parts;
    std::set<WireId> wires;
    double running_A = 0;
};

bool usesCurrent(const Branch& branch) {
    return branch.sort == BranchSort::Load || branch.sort == BranchSort::Coil ||
           branch.sort == BranchSort::Storage || branch.sort == BranchSort::Passive;
}

double runningCurrent_A(const Survey& survey, const Branch& branch) {
    for (const std::size_t number : survey.pathsOf(branch.part)) {
        const LoadPath& path = survey.loadPaths()[number];
        if (path.load.from == branch.from || path.load.to == branch.from) {
            return path.load.running_A;
        }
    }
    return 0;
}

/// By the first wire of the way, the loads that current reaches without a fuse.
std::map<WireId, Unfused> unfusedLeads(const Survey& survey, const SourceLeads& source) {
    std::map<WireId, Unfused> leads;
    for (const Branch& branch : survey.branches()) {
        if (!usesCurrent(branch)) {
            continue;
        }
        for (const End& end : {branch.fromEnd(), branch.toEnd()}) {
            const auto way = source.fromPlusUnfused.way(end);
            if (!way || way->empty()) {
                continue;
            }
            Unfused& lead = leads[*way->front().wire];
            lead.running_A += lead.parts.insert(branch.part).second ? runningCurrent_A(survey, branch) : 0;
            for (const LeadStep& step : *way) {
                if (step.wire) {
                    lead.wires.insert(*step.wire);
                }
            }
        }
    }
    return leads;
}

Remedy fuseRemedy(const Survey& survey, const Branch& source, const WireId& first, const Unfused& lead) {
    const double wanted_A = lead.running_A / survey.circuit().limits.continuousFuseShare;
    const double rating_A = fuseAtLeast_A(wanted_A).value_or(fuseRatings_A().back());
    const Text text = say("Put a fuse of {} into {} at {}.", amount(rating_A, QuantityKind::Current),
                          nameOf(survey.circuit(), first), nameOf(survey.circuit(), source.part));
    return {text, fuseEdit(survey.circuit(), first, source.fromEnd(), rating_A,
                           say("Add a fuse to {}", nameOf(survey.circuit(), first)))};
}

Finding findingFor(const Rule& rule, const Survey& survey, const Branch& source, const WireId& first,
                   const Unfused& lead) {
    Finding finding = newFinding(rule);
    const std::vector<PartId> fed(lead.parts.begin(), lead.parts.end());
    finding.parts = fed;
    finding.parts.insert(finding.parts.begin(), source.part);
    finding.wires.assign(lead.wires.begin(), lead.wires.end());
    finding.value = 0;
    finding.limit = 1;
    finding.what = say("{} leads from {} to {} without a fuse.", nameOf(survey.circuit(), first),
                       nameOf(survey.circuit(), source.part), listOf(namesOf(survey.circuit(), fed)));
    finding.why = say("When this wire chafes through, the battery feeds the short until something burns.");
    finding.remedies = {fuseRemedy(survey, source, first, lead)};
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const SourceLeads& source : survey.sources()) {
        for (const auto& [first, lead] : unfusedLeads(survey, source)) {
            findings.push_back(findingFor(rule, survey, source.source, first, lead));
        }
    }
    return findings;
}

} // namespace

extern const Rule kUnfusedSupplyLead{"unfused-supply-lead",
                                     words("Supply lead without a fuse"),
                                     SignalWord::Warning,
                                     words("33 CFR 183.455(b)"),
                                     false,
                                     check};

} // namespace pumpwright
