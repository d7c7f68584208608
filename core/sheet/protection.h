#pragma once

#include "core/circuit/circuit.h"
#include "core/nets/nets.h"

#include <map>
#include <set>

namespace pumpwright {

/// What stands between the supplies and one wire.
struct Protection {
    bool live = false;      ///< current from a supply can come here
    bool returns = false;   ///< on the way back: ground, or the supply's minus
    bool unfused = false;   ///< on some way no fuse lies before it
    std::set<PartId> fuses; ///< the last fuse before it, for each way that has one
};

/// Protection of every wire, found by walking from the supplies' plus terminals through everything that joins
/// nets (fuses, contacts in any position, diodes in their direction), and through loads only to where no such
/// way leads.
std::map<WireId, Protection> wireProtection(const Circuit& circuit, const Nets& nets);

} // namespace pumpwright
