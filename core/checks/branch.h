#pragma once

#include "core/nets/nets.h"
#include "core/parts/features.h"

#include <map>
#include <string>
#include <vector>

namespace pumpwright {

/// What a way for current through a part is to the rules.
enum class BranchSort {
    Source,    ///< from its plus to its minus terminal
    Fuse,      ///< joins until it opens
    Plug,      ///< always joins: a connector's way
    Contact,   ///< joins while closed
    Rectifier, ///< joins from anode to cathode
    Load,
    Coil,
    Storage, ///< a capacitor: no direct current
    Passive  ///< anything else that carries current: a resistor
};

/// One way for current through one part, between the nets of two of its terminals.
struct Branch {
    PartId part;
    std::string from;
    std::string to;
    std::size_t fromNet = 0;
    std::size_t toNet = 0;
    BranchSort sort = BranchSort::Passive;
    std::size_t index = 0; ///< in the part's features, of the contact, coil or load
    bool oneWay = false;
    Operator by = Operator::None; ///< what moves the contact

    End fromEnd() const { return {part, from}; }
    End toEnd() const { return {part, to}; }
};

/// Whether a branch conducts with next to no loss in some state: fuse, plug, contact, diode in its direction.
bool conducts(const Branch& branch);
/// The same without fuses.
bool conductsUnfused(const Branch& branch);

using FeaturesOf = std::map<PartId, Features>;

/// All branches of a circuit, in order of parts. Each pair of terminals gives one branch, of the sort that
/// says most about it; terminals that the part does not have give none.
std::vector<Branch> branchesOf(const Nets& nets, const FeaturesOf& features);

} // namespace pumpwright
