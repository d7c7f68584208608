#pragma once

#include "core/checks/lead_graph.h"

#include <vector>

namespace pumpwright {

/// The ways from a source's plus and to its minus, found once for all rules.
struct SourceLeads {
    const Branch& source;
    LeadTree fromPlus;        ///< over wires, fuses, plugs, contacts and diodes, not into the minus net
    LeadTree fromPlusUnfused; ///< the same without fuses
    LeadTree toMinus;         ///< not from the plus net
    // Over resistors and the like as well.
    LeadTree fromPlusSomehow;
    LeadTree toMinusSomehow;
};

/// One for each source, in order of branches. Refers to the graph.
std::vector<SourceLeads> sourceLeadsOf(const LeadGraph& graph);

} // namespace pumpwright
