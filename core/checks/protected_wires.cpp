#include "core/checks/protected_wires.h"

#include <algorithm>
#include <set>

namespace pumpwright {
namespace {

bool passes(const std::optional<std::vector<LeadStep>>& way, const Survey& survey, const PartId& part) {
    return way && std::any_of(way->begin(), way->end(), [&](const LeadStep& step) {
               return step.branch && survey.branches()[*step.branch].part == part;
           });
}

/// The end of a fuse to which the shortest way from a source leads over the fuse.
std::optional<End> farEnd(const Survey& survey, const SourceLeads& source, const Branch& fuse) {
    for (const End& end : {fuse.toEnd(), fuse.fromEnd()}) {
        if (passes(source.fromPlus.way(end), survey, fuse.part)) {
            return end;
        }
    }
    return std::nullopt;
}

/// Terminals behind a fuse that the source feeds without it as well.
std::set<End> fedWithout(const Survey& survey, const SourceLeads& source, const Branch& fuse,
                         const End& behind) {
    const auto avoid = [&](const Branch& branch) { return conducts(branch) && branch.part != fuse.part; };
    std::set<End> region{behind};
    for (const LeadStep& step : survey.leads().reach(behind, source.source.toNet, avoid)) {
        region.insert(step.to);
    }
    if (region.contains(source.source.fromEnd())) {
        return region;
    }
    std::set<End> fed;
    for (const End& end : region) {
        for (const LeadStep& into : survey.leads().oneWaysInto(end)) {
            const bool fromOutside = !region.contains(into.to) && source.fromPlus.reaches(into.to);
            if (!fromOutside || !conducts(survey.branches()[*into.branch]) || !fed.insert(end).second) {
                continue;
            }
            for (const LeadStep& step : survey.leads().reach(end, source.source.toNet, avoid)) {
                fed.insert(step.to);
            }
        }
    }
    return fed;
}

} // namespace

std::vector<WireId> protectedWires(const Survey& survey, const Branch& fuse) {
    std::set<WireId> wires;
    for (const SourceLeads& source : survey.sources()) {
        const auto behind = farEnd(survey, source, fuse);
        if (!behind) {
            continue;
        }
        const std::set<End> fed = fedWithout(survey, source, fuse, *behind);
        if (fed.contains(*behind)) {
            continue;
        }
        for (const LeadStep& step : survey.leads().reach(*behind, source.source.toNet, conductsUnfused)) {
            if (step.wire && !fed.contains(step.to)) {
                wires.insert(*step.wire);
            }
        }
    }
    return {wires.begin(), wires.end()};
}

} // namespace pumpwright
