#include "core/checks/protected_wires.h"

#include <set>

namespace pumpwright {
namespace {

/// Terminals that a source feeds without this fuse.
std::set<End> fedWithout(const Survey& survey, const Branch& source, const Branch& fuse) {
    std::set<End> fed{source.fromEnd()};
    const auto steps = survey.leads().reach(source.fromEnd(), source.toNet, [&](const Branch& branch) {
        return conducts(branch) && branch.part != fuse.part;
    });
    for (const LeadStep& step : steps) {
        fed.insert(step.to);
    }
    return fed;
}

} // namespace

std::vector<WireId> protectedWires(const Survey& survey, const Branch& fuse) {
    std::set<WireId> wires;
    for (const Branch& source : survey.branches()) {
        if (source.sort != BranchSort::Source) {
            continue;
        }
        const std::set<End> fed = fedWithout(survey, source, fuse);
        const bool fromFed = fed.contains(fuse.fromEnd());
        if (fromFed == fed.contains(fuse.toEnd())) {
            continue;
        }
        const End behind = fromFed ? fuse.toEnd() : fuse.fromEnd();
        for (const LeadStep& step : survey.leads().reach(behind, source.toNet, conductsUnfused)) {
            if (step.wire && !fed.contains(step.to)) {
                wires.insert(*step.wire);
            }
        }
    }
    return {wires.begin(), wires.end()};
}

} // namespace pumpwright
