#include "core/nets/nets.h"

#include "core/parts/part_kind.h"

#include <algorithm>
#include <numeric>

namespace pumpwright {
namespace {

/// Disjoint sets of numbers 0…n-1, joined by the smaller root so that the outcome has one fixed order.
class DisjointSets {
public:
    explicit DisjointSets(std::size_t count) : m_parent(count) {
        std::iota(m_parent.begin(), m_parent.end(), std::size_t{0});
    }

    std::size_t root(std::size_t one) {
        while (m_parent[one] != one) {
            m_parent[one] = m_parent[m_parent[one]];
            one = m_parent[one];
        }
        return one;
    }

    void join(std::size_t a, std::size_t b) {
        const std::size_t rootA = root(a);
        const std::size_t rootB = root(b);
        m_parent[std::max(rootA, rootB)] = std::min(rootA, rootB);
    }

private:
    std::vector<std::size_t> m_parent;
};

/// The nodes of a circuit in order, their numbers, and what is joined so far.
class Joints {
public:
    explicit Joints(std::vector<Node> nodes) : m_nodes(std::move(nodes)), m_sets(m_nodes.size()) {
        for (std::size_t i = 0; i < m_nodes.size(); ++i) {
            m_numbers.emplace(m_nodes[i], i);
        }
    }

    /// A connection whose end is no terminal of any part joins nothing.
    void join(const Node& a, const Node& b) {
        const auto numberA = m_numbers.find(a);
        const auto numberB = m_numbers.find(b);
        if (numberA != m_numbers.end() && numberB != m_numbers.end()) {
            m_sets.join(numberA->second, numberB->second);
        }
    }

    /// The group of every node; groups are numbered in the order of their first node.
    std::map<Node, std::size_t> groups() {
        std::map<Node, std::size_t> groupOf;
        std::map<std::size_t, std::size_t> groupOfRoot;
        for (std::size_t i = 0; i < m_nodes.size(); ++i) {
            groupOf.emplace(m_nodes[i],
                            groupOfRoot.try_emplace(m_sets.root(i), groupOfRoot.size()).first->second);
        }
        return groupOf;
    }

private:
    std::vector<Node> m_nodes;
    std::map<Node, std::size_t> m_numbers;
    DisjointSets m_sets;
};

std::size_t groupCount(const std::map<Node, std::size_t>& groupOf) {
    std::size_t count = 0;
    for (const auto& [node, group] : groupOf) {
        count = std::max(count, group + 1);
    }
    return count;
}

/// All terminals (or ports) of all parts, in order.
template <class SpecsOf>
std::vector<Node> nodesOf(const Circuit& circuit, SpecsOf specsOf) {
    std::vector<Node> nodes;
    for (const auto& [id, part] : circuit.parts) {
        for (const TerminalSpec& spec : specsOf(kindOf(part), part)) {
            nodes.push_back({id, spec.name});
        }
    }
    std::sort(nodes.begin(), nodes.end());
    return nodes;
}

/// Joins the ends of wires (or hoses).
template <class Connections>
void joinEnds(Joints& joints, const Connections& connections) {
    for (const auto& [id, connection] : connections) {
        joints.join(connection.from, connection.to);
    }
}

/// Calls `take(group, id)` for every wire (or hose) that joins two nodes.
template <class Connections, class Take>
void shareOut(const Connections& connections, const std::map<Node, std::size_t>& groupOf, Take take) {
    for (const auto& [id, connection] : connections) {
        const auto group = groupOf.find(connection.from);
        if (group != groupOf.end() && groupOf.contains(connection.to)) {
            take(group->second, id);
        }
    }
}

std::vector<TerminalSpec> terminalsOf(const PartKind& kind, const Part& part) {
    return kind.terminals(part);
}

std::vector<PortSpec> portsOf(const PartKind& kind, const Part& part) {
    return kind.ports(part);
}

/// Terminals of ground points: the vehicle's body joins them all.
std::vector<Node> groundNodes(const Circuit& circuit) {
    std::vector<Node> nodes;
    for (const auto& [id, part] : circuit.parts) {
        const PartKind& kind = kindOf(part);
        if (kind.features(part).ground) {
            for (const TerminalSpec& terminal : kind.terminals(part)) {
                nodes.push_back({id, terminal.name});
            }
        }
    }
    return nodes;
}

void findElectricalNets(const Circuit& circuit, Nets& nets) {
    Joints joints(nodesOf(circuit, terminalsOf));
    joinEnds(joints, circuit.wires);
    const std::vector<Node> grounds = groundNodes(circuit);
    for (const Node& ground : grounds) {
        joints.join(grounds.front(), ground);
    }
    nets.netOf = joints.groups();
    nets.nets.resize(groupCount(nets.netOf));
    for (const auto& [node, net] : nets.netOf) {
        nets.nets[net].terminals.push_back(node);
    }
    shareOut(circuit.wires, nets.netOf,
             [&](std::size_t net, const WireId& id) { nets.nets[net].wires.push_back(id); });
    for (const Node& ground : grounds) {
        nets.nets[nets.netOf.at(ground)].ground = true;
    }
}

void findVacuumNets(const Circuit& circuit, Nets& nets) {
    Joints joints(nodesOf(circuit, portsOf));
    joinEnds(joints, circuit.hoses);
    nets.vacuumNetOf = joints.groups();
    nets.vacuumNets.resize(groupCount(nets.vacuumNetOf));
    for (const auto& [node, net] : nets.vacuumNetOf) {
        nets.vacuumNets[net].ports.push_back(node);
    }
    shareOut(circuit.hoses, nets.vacuumNetOf,
             [&](std::size_t net, const HoseId& id) { nets.vacuumNets[net].hoses.push_back(id); });
}

} // namespace

Nets findNets(const Circuit& circuit) {
    Nets nets;
    findElectricalNets(circuit, nets);
    findVacuumNets(circuit, nets);
    return nets;
}

} // namespace pumpwright
