#pragma once

#include "core/checks/branch.h"
#include "core/circuit/circuit.h"

#include <functional>
#include <optional>
#include <unordered_map>
#include <vector>

namespace pumpwright {

/// One step along conductors: over a wire, through a branch, or (neither) over the vehicle's body.
struct LeadStep {
    std::optional<WireId> wire;
    std::optional<std::size_t> branch; ///< number in the survey's branches
    End to;
};

struct EndHash {
    std::size_t operator()(const End& end) const {
        constexpr std::size_t kSpread = 0x9e3779b97f4a7c15;
        return std::hash<std::string>()(end.part.text) * kSpread + std::hash<std::string>()(end.terminal);
    }
};

/// The ways with the fewest steps between one terminal and all others, found at once. Refers to its graph.
class LeadTree;

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

    /// The same for every terminal: ways from this one, or (backwards) to it.
    LeadTree tree(const End& root, std::optional<std::size_t> avoidNet, bool backwards,
                  const MayPass& mayPass) const;

    /// Branches that lead into a terminal and not out of it, each with the terminal that it comes from.
    std::vector<LeadStep> oneWaysInto(const End& end) const;

    /// What ends on a terminal beside it.
    struct TerminalUse {
        const End* end;
        std::size_t net;
        bool wired;   ///< a wire
        bool leadsOn; ///< a way through the part, or the body
    };
    /// Of every terminal, in order of parts.
    std::vector<TerminalUse> terminalUses() const;
    /// Terminals that wires join with this one, itself among them, in no order.
    std::vector<End> wiredTo(const End& end) const;

    const std::vector<Branch>& branches() const { return m_branches; }
    const Nets& nets() const { return m_nets; }

private:
    friend class LeadTree;
    struct Edge {
        std::size_t to;
        std::optional<std::size_t> branch;
        const WireId* wire;
    };
    struct Arrival {
        std::size_t from = 0;
        const Edge* by = nullptr;
    };
    using Arrivals = std::unordered_map<std::size_t, Arrival>;

    void join(std::size_t a, std::size_t b, const WireId* wire);
    std::vector<std::size_t> spread(std::size_t start, std::optional<std::size_t> goal,
                                    std::optional<std::size_t> avoidNet, const MayPass& mayPass,
                                    Arrivals& arrivals) const;
    bool mayGo(const Edge& edge, std::optional<std::size_t> avoidNet, const MayPass& mayPass) const;
    LeadStep stepOf(const Edge& edge) const;
    std::optional<std::size_t> numberOf(const End& end) const;

    const Nets& m_nets;
    const std::vector<Branch>& m_branches;
    std::vector<const End*> m_ends;
    std::vector<std::size_t> m_netOfEnd;
    std::unordered_map<End, std::size_t, EndHash> m_numbers;
    std::vector<std::vector<Edge>> m_edges; ///< out of each terminal
    std::vector<std::vector<Edge>> m_into;  ///< the same, turned round: `to` is where it comes from
};

class LeadTree {
public:
    bool reaches(const End& end) const;
    /// The way between the root and this terminal, in the direction of the current; nothing if there is none.
    std::optional<std::vector<LeadStep>> way(const End& end) const;

private:
    friend class LeadGraph;
    LeadTree(const LeadGraph& graph, std::size_t root, bool backwards)
        : m_graph(&graph), m_root(root), m_backwards(backwards) {}

    const LeadGraph* m_graph;
    std::size_t m_root;
    bool m_backwards;
    std::vector<LeadGraph::Arrival> m_arrivals; ///< empty where the root is no terminal
};

} // namespace pumpwright
