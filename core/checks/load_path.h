#pragma once

#include "core/checks/source_leads.h"

#include <map>
#include <optional>
#include <vector>

namespace pumpwright {

/// How one load gets its current: from a source's plus terminal to the load, and from there back to minus.
struct LoadPath {
    PartId part;
    std::size_t branch = 0;       ///< number in the survey's branches
    Load load;                    ///< turned, where that is needed, so that `from` is on the plus side
    std::optional<PartId> source; ///< nothing feeds the load where this is empty, and the ways are too
    std::vector<LeadStep> feed;
    std::vector<LeadStep> back;
};

/// The way to every load and every coil, in order of parts. A way leads over wires, fuses, plugs, contacts
/// (whatever their state) and diodes in their direction; over resistors and the like only where there is no
/// other. Of several ways it is the one with the fewest steps.
std::vector<LoadPath> loadPathsOf(const std::vector<SourceLeads>& sources, const FeaturesOf& features,
                                  const std::vector<Branch>& branches, double supplyVoltage_V);

/// What a conductor must carry by the nameplates of the loads that it feeds.
struct ExpectedCurrent {
    double running_A = 0;   ///< all loads running
    double inrush_A = 0;    ///< the load with the highest inrush starts while the others run
    double together_A = 0;  ///< all loads start at once, as behind one contact
    bool inductive = false; ///< a motor or coil is among the loads
};

struct ExpectedCurrents {
    std::map<WireId, ExpectedCurrent> wires;
    std::map<std::size_t, ExpectedCurrent> branches; ///< by number in the survey's branches
};

ExpectedCurrents expectedCurrentsOf(const std::vector<LoadPath>& paths);

} // namespace pumpwright
