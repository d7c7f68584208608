#include "core/checks/source_leads.h"

namespace pumpwright {
namespace {

bool conductsSomehow(const Branch& branch) {
    return conducts(branch) || branch.sort == BranchSort::Passive;
}

} // namespace

std::vector<SourceLeads> sourceLeadsOf(const LeadGraph& graph) {
    std::vector<SourceLeads> leads;
    for (const Branch& source : graph.branches()) {
        if (source.sort != BranchSort::Source) {
            continue;
        }
        const auto from = [&](const LeadGraph::MayPass& mayPass) {
            return graph.tree(source.fromEnd(), source.toNet, false, mayPass);
        };
        const auto back = [&](const LeadGraph::MayPass& mayPass) {
            return graph.tree(source.toEnd(), source.fromNet, true, mayPass);
        };
        leads.push_back({source, from(conducts), from(conductsUnfused), back(conducts), from(conductsSomehow),
                         back(conductsSomehow)});
    }
    return leads;
}

} // namespace pumpwright
