#pragma once

#include "core/circuit/circuit.h"

#include <map>
#include <vector>

namespace pumpwright {

/// A terminal or port of a part.
using Node = End;

/// Terminals that wires join (and all ground points, which the vehicle's body joins).
struct Net {
    std::vector<Node> terminals; ///< in order
    std::vector<WireId> wires;   ///< in order
    bool ground = false;         ///< a ground point or the body is part of it
};

/// Ports that hoses join.
struct VacuumNet {
    std::vector<Node> ports;
    std::vector<HoseId> hoses;
};

/// What is joined with what in a circuit. Every terminal and port of every part is in exactly one net.
struct Nets {
    std::vector<Net> nets;
    std::vector<VacuumNet> vacuumNets;
    std::map<Node, std::size_t> netOf;
    std::map<Node, std::size_t> vacuumNetOf;
};

Nets findNets(const Circuit& circuit);

} // namespace pumpwright
