#pragma once

#include "core/checks/branch.h"
#include "core/circuit/circuit.h"

#include <functional>
#include <optional>
#include <vector>

namespace pumpwright {

/// One step along conductors: over a wire, through a branch, or (neither) over the vehicle's body.
struct LeadStep {
    std::optional<WireId> wire;
    std::optional<std::size_t> branch; ///< number in the survey's branches
    End to;
};

/// Terminals and what leads from one to the next, wire by wire: what nets leave out.
class LeadGraph {
public:
    /// Whether a walk may take this branch; wires and the body are always open. Branches that conduct one way
    /// are asked about in that direction only.
    using MayPass = std::function<bool(const Branch& branch)>;

    LeadGraph(const Circuit& circuit, const Nets& nets, const FeaturesOf& features,
              const std::vector<Branch>& branches);

    /// The way with the fewest steps from one terminal to another, nothing if there is none. It does not lead
    /// into the net `avoidNet`.
    std::optional<std::vector<LeadStep>>
    way(const End& from, const End& to, std::optional<std::size_t> avoidNet, const MayPass& mayPass) const;

    /// Every step that can be made from a terminal, in order of distance, each terminal reached once.
    std::vector<LeadStep> reach(const End& from, std::optional<std::size_t> avoidNet,
                                const MayPass& mayPass) const;

    const std::vector<Branch>& branches() const { return m_branches; }
    const Nets& nets() const { return m_nets; }

private:
    struct Edge {
        std::size_t to;
        std::optional<std::size_t> branch;
        const WireId* wire;
    };
    struct Arrival {
        bool reached = false;
        std::size_t from = 0;
        const Edge* by = nullptr;
    };

    void join(std::size_t a, std::size_t b, const WireId* wire);
    std::vector<std::size_t> spread(std::size_t start, std::optional<std::size_t> goal,
                                    std::optional<std::size_t> avoidNet, const MayPass& mayPass,
                                    std::vector<Arrival>& arrivals) const;
    LeadStep stepOf(const Edge& edge) const;
    std::optional<std::size_t> numberOf(const End& end) const;

    const Nets& m_nets;
    const std::vector<Branch>& m_branches;
    std::vector<const End*> m_ends;
    std::vector<std::size_t> m_netOfEnd;
    std::map<End, std::size_t> m_numbers;
    std::vector<std::vector<Edge>> m_edges;
};

} // namespace pumpwright
