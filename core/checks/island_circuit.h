#pragma once

#include "core/checks/sneak_island.h"

#include <cstdint>
#include <map>

namespace pumpwright {

/// Which switches and relays are operated and which fuses are blown: a bit for each variable.
using IslandState = std::uint64_t;

/// Variables from this number on stay at rest.
inline constexpr std::size_t kMostVariables = 63;

inline IslandState stateOf(std::size_t variable) {
    return variable < kMostVariables ? IslandState{1} << variable : 0;
}
inline bool isChanged(IslandState state, std::size_t variable) {
    return (state & stateOf(variable)) != 0;
}

/// An island as a small network that is quick to look at in one state after another. Node 0 is plus, node 1
/// minus.
class IslandCircuit {
public:
    enum class Joint { Switch, Fuse, Fixed, OneWay, Load, Resistor };
    struct Edge {
        std::size_t branch;
        std::size_t a; ///< for one-way edges current flows from a to b
        std::size_t b;
        Joint joint;
        bool oneWay;
        std::size_t variable; ///< of switches and fuses
        bool shutAtRest;      ///< of switches
        double conductance_S; ///< of loads and resistors
    };
    struct Variable {
        PartId part;
        bool fuse;
    };

    IslandCircuit(const Survey& survey, const SneakIsland& island);

    const std::vector<Edge>& edges() const { return m_edges; }
    const std::vector<Variable>& variables() const { return m_variables; }

    /// Whether an edge joins its nodes in this state; loads and resistors never do.
    bool isShut(const Edge& edge, IslandState state) const;

    /// Works the island out in one state; false if it shorts the source, which is another rule's matter.
    bool enter(IslandState state);

    // Of the state that was entered last.
    /// Over contacts, fuses, diodes and resistors alone current reaches the edge from plus and leaves to
    /// minus.
    bool isFed(const Edge& edge) const { return isFed(m_fed, edge); }
    /// The same without diodes, which somebody has put there on purpose.
    bool isFedWithoutDiodes(const Edge& edge) const { return isFed(m_withoutDiodes, edge); }
    /// Whether something may flow through several loads: else the voltages are those that isFed() says.
    bool mayFloat() const { return m_mayFloat; }
    /// Voltages of all nodes, as shares of the supply's.
    const std::vector<double>& voltages();

private:
    struct Reach {
        std::vector<char> plus;  ///< by root: plus reaches it
        std::vector<char> minus; ///< it reaches minus
    };

    std::size_t addNode(const SneakIsland& island, const End& end, std::size_t net);
    void addEdge(const SneakIsland& island, std::size_t number);
    std::size_t variableOf(const PartId& part, bool fuse);
    void join(std::size_t a, std::size_t b);
    void findReach(Reach& reach, bool overDiodes, bool overResistors) const;
    bool isShorted() const;
    bool isFed(const Reach& reach, const Edge& edge) const;
    bool isHeld(std::size_t root) const { return m_held.plus[root] != 0 || m_held.minus[root] != 0; }
    bool someLoadsFloat();
    std::vector<std::size_t> floatingRoots() const;
    void solve(const std::vector<std::size_t>& floating, const std::vector<char>& conducts);

    const Survey& m_survey;
    std::vector<Edge> m_edges;
    std::vector<Variable> m_variables;
    std::map<std::size_t, std::size_t> m_nodes; ///< by net; what a lost ground cuts off has a key of its own
    std::size_t m_nodeCount = 2;
    std::vector<std::size_t> m_roots;  ///< by node: the lowest of those that are joined with it
    std::vector<std::size_t> m_groups; ///< by root: those that loads join
    Reach m_held;                      ///< over contacts, fuses and diodes
    Reach m_fed;                       ///< and resistors
    Reach m_withoutDiodes;
    bool m_mayFloat = false;
    std::vector<double> m_voltages;
};

} // namespace pumpwright
