#include "core/checks/island_circuit.h"

#include "core/checks/carried_current.h"
#include "core/checks/net_spread.h"
#include "core/checks/set_point.h"

#include <Eigen/Dense>

#include <algorithm>
#include <limits>
#include <numeric>

namespace pumpwright {
namespace {

constexpr std::size_t kPlus = 0;
constexpr std::size_t kMinus = 1;
constexpr std::size_t kCutOff = std::numeric_limits<std::size_t>::max();
constexpr int kDiodeRounds = 8;    ///< in which diodes find whether they conduct
constexpr double kDiode_S = 100;   ///< of a diode that conducts
constexpr double kLeak_S = 1e-12;  ///< so that a node on nothing has a voltage
constexpr double kNoLoad_A = 1e-4; ///< nameplates that say nothing

/// [S] What a load or resistor is by its nameplate; a motor that stands still counts.
double conductance_S(const Survey& survey, const Branch& branch) {
    const double supply_V = survey.supplyVoltage_V();
    if (branch.sort == BranchSort::Coil) {
        return 1 / std::max(survey.features(branch.part).coils[branch.index].resistance_ohm, 1e-3);
    }
    if (branch.sort == BranchSort::Load) {
        const Load& load = survey.features(branch.part).loads[branch.index];
        const double current_A = load.sort == LoadSort::Motor ? load.inrush_A : load.running_A;
        return std::max(current_A, kNoLoad_A) / supply_V;
    }
    const auto resistance_ohm = nameplateValue(survey.part(branch.part), "resistance_ohm");
    return 1 / std::max(resistance_ohm.value_or(1e4), 1e-3);
}

IslandCircuit::Joint jointOf(const Branch& branch) {
    using Joint = IslandCircuit::Joint;
    switch (branch.sort) {
    case BranchSort::Fuse:
        return Joint::Fuse;
    case BranchSort::Contact:
        return isOperated(branch) ? Joint::Switch : Joint::Fixed;
    case BranchSort::Rectifier:
        return Joint::OneWay;
    case BranchSort::Load:
    case BranchSort::Coil:
        return Joint::Load;
    case BranchSort::Passive:
        return Joint::Resistor;
    case BranchSort::Plug:
    case BranchSort::Source:
    case BranchSort::Storage:
        return Joint::Fixed;
    }
    return Joint::Fixed;
}

} // namespace

IslandCircuit::IslandCircuit(const Survey& survey, const SneakIsland& island) : m_survey(survey) {
    for (const Branch& branch : survey.branches()) {
        if (branch.sort == BranchSort::Source) {
            m_nodes.emplace(branch.fromNet, kPlus);
            m_nodes.emplace(branch.toNet, kMinus);
        }
    }
    for (const std::size_t number : island.branches) {
        const BranchSort sort = survey.branches()[number].sort;
        if (sort != BranchSort::Source && sort != BranchSort::Storage) {
            addEdge(island, number);
        }
    }
}

std::size_t IslandCircuit::addNode(const SneakIsland& island, const End& end, std::size_t net) {
    const std::size_t key = island.cutOff.contains(end) ? kCutOff : net;
    const auto [node, isNew] = m_nodes.emplace(key, m_nodeCount);
    m_nodeCount += isNew ? 1 : 0;
    return node->second;
}

std::size_t IslandCircuit::variableOf(const PartId& part, bool fuse) {
    const auto found = std::find_if(m_variables.begin(), m_variables.end(),
                                    [&](const Variable& one) { return one.part == part; });
    if (found == m_variables.end()) {
        m_variables.push_back({part, fuse});
        return m_variables.size() - 1;
    }
    return static_cast<std::size_t>(found - m_variables.begin());
}

void IslandCircuit::addEdge(const SneakIsland& island, std::size_t number) {
    const Branch& branch = m_survey.branches()[number];
    const Joint joint = jointOf(branch);
    Edge edge{number,
              addNode(island, branch.fromEnd(), branch.fromNet),
              addNode(island, branch.toEnd(), branch.toNet),
              joint,
              branch.oneWay || joint == Joint::OneWay,
              0,
              false,
              0};
    if (joint == Joint::Switch || joint == Joint::Fuse) {
        edge.variable = variableOf(branch.part, joint == Joint::Fuse);
        edge.shutAtRest = joint == Joint::Fuse || contactOf(m_survey, branch).closedAtRest;
    } else if (joint == Joint::Load || joint == Joint::Resistor) {
        edge.conductance_S = conductance_S(m_survey, branch);
    }
    m_edges.push_back(edge);
}

bool IslandCircuit::isShut(const Edge& edge, IslandState state) const {
    if (edge.joint == Joint::Switch || edge.joint == Joint::Fuse) {
        return isChanged(state, edge.variable) != edge.shutAtRest;
    }
    return edge.joint == Joint::Fixed || edge.joint == Joint::OneWay;
}

void IslandCircuit::join(std::size_t a, std::size_t b) {
    const std::size_t keep = std::min(m_roots[a], m_roots[b]);
    const std::size_t give = std::max(m_roots[a], m_roots[b]);
    for (std::size_t& root : m_roots) {
        root = root == give ? keep : root;
    }
}

bool IslandCircuit::enter(IslandState state) {
    m_roots.resize(m_nodeCount);
    std::iota(m_roots.begin(), m_roots.end(), std::size_t{0});
    for (const Edge& edge : m_edges) {
        if (edge.joint != Joint::OneWay && isShut(edge, state)) {
            join(edge.a, edge.b);
        }
    }
    findReach(m_held, true, false);
    if (isShorted()) {
        return false;
    }
    findReach(m_withoutDiodes, false, false);
    findReach(m_fed, true, true);
    m_mayFloat = someLoadsFloat();
    m_voltages.clear();
    return true;
}

/// The poles themselves are never left again.
void IslandCircuit::findReach(Reach& reach, bool overDiodes, bool overResistors) const {
    reach.plus.assign(m_nodeCount, 0);
    reach.minus.assign(m_nodeCount, 0);
    reach.plus[kPlus] = 1;
    reach.minus[kMinus] = 1;
    bool grew = false;
    const auto spread = [&grew](std::vector<char>& reached, std::size_t from, std::size_t to) {
        if (reached[from] != 0 && reached[to] == 0 && to != kPlus && to != kMinus) {
            reached[to] = 1;
            grew = true;
        }
    };
    do {
        grew = false;
        for (const Edge& edge : m_edges) {
            if ((edge.joint != Joint::OneWay || !overDiodes) &&
                (edge.joint != Joint::Resistor || !overResistors)) {
                continue;
            }
            const std::size_t a = m_roots[edge.a];
            const std::size_t b = m_roots[edge.b];
            spread(reach.plus, a, b);
            spread(reach.minus, b, a);
            if (!edge.oneWay) {
                spread(reach.plus, b, a);
                spread(reach.minus, a, b);
            }
        }
    } while (grew);
}

bool IslandCircuit::isShorted() const {
    return m_roots[kMinus] == kPlus || std::any_of(m_edges.begin(), m_edges.end(), [&](const Edge& edge) {
               return edge.joint == Joint::OneWay && m_held.plus[m_roots[edge.a]] != 0 &&
                      m_held.minus[m_roots[edge.b]] != 0;
           });
}

bool IslandCircuit::isFed(const Reach& reach, const Edge& edge) const {
    const std::size_t a = m_roots[edge.a];
    const std::size_t b = m_roots[edge.b];
    return (reach.plus[a] != 0 && reach.minus[b] != 0) ||
           (!edge.oneWay && reach.plus[b] != 0 && reach.minus[a] != 0);
}

/// Groups of nodes that nothing holds, joined by loads, of which some touch both poles.
bool IslandCircuit::someLoadsFloat() {
    m_groups = m_roots;
    const auto free = [&](std::size_t node) { return !isHeld(m_roots[node]); };
    for (const Edge& edge : m_edges) {
        const std::size_t a = m_groups[edge.a];
        const std::size_t b = m_groups[edge.b];
        if (free(edge.a) && free(edge.b) && a != b) {
            std::replace(m_groups.begin(), m_groups.end(), std::max(a, b), std::min(a, b));
        }
    }
    std::vector<int> touches(m_nodeCount, 0);
    for (const Edge& edge : m_edges) {
        for (const auto& [one, other] : {std::pair{edge.a, edge.b}, {edge.b, edge.a}}) {
            if (free(one) && !free(other) && edge.conductance_S > 0) {
                touches[m_groups[one]] |= m_held.plus[m_roots[other]] != 0 ? 1 : 2;
            }
        }
    }
    return std::find(touches.begin(), touches.end(), 3) != touches.end();
}

std::vector<std::size_t> IslandCircuit::floatingRoots() const {
    std::vector<std::size_t> roots;
    for (std::size_t node = 0; node < m_nodeCount; ++node) {
        if (m_roots[node] == node && !isHeld(node)) {
            roots.push_back(node);
        }
    }
    return roots;
}

/// Kirchhoff's current law at the nodes that nothing holds.
void IslandCircuit::solve(const std::vector<std::size_t>& floating, const std::vector<char>& conducts) {
    const auto size = static_cast<Eigen::Index>(floating.size());
    std::vector<Eigen::Index> row(m_nodeCount, -1);
    for (Eigen::Index i = 0; i < size; ++i) {
        row[floating[static_cast<std::size_t>(i)]] = i;
    }
    Eigen::MatrixXd matrix = kLeak_S * Eigen::MatrixXd::Identity(size, size);
    Eigen::VectorXd currents = Eigen::VectorXd::Zero(size);
    for (std::size_t i = 0; i < m_edges.size(); ++i) {
        const Edge& edge = m_edges[i];
        const double conductance_S = edge.joint == Joint::OneWay ? kDiode_S : edge.conductance_S;
        for (const auto& [one, other] : {std::pair{edge.a, edge.b}, {edge.b, edge.a}}) {
            const Eigen::Index at = row[m_roots[one]];
            if (at < 0 || conducts[i] == 0) {
                continue;
            }
            matrix(at, at) += conductance_S;
            if (row[m_roots[other]] >= 0) {
                matrix(at, row[m_roots[other]]) -= conductance_S;
            } else {
                currents(at) += conductance_S * m_voltages[m_roots[other]];
            }
        }
    }
    const Eigen::VectorXd voltages = matrix.ldlt().solve(currents);
    for (Eigen::Index i = 0; i < size; ++i) {
        m_voltages[floating[static_cast<std::size_t>(i)]] = voltages(i);
    }
}

const std::vector<double>& IslandCircuit::voltages() {
    if (!m_voltages.empty()) {
        return m_voltages;
    }
    m_voltages.assign(m_nodeCount, 0);
    for (std::size_t node = 0; node < m_nodeCount; ++node) {
        m_voltages[node] = m_held.plus[m_roots[node]] != 0 ? 1 : 0;
    }
    std::vector<char> conducts;
    for (const Edge& edge : m_edges) {
        conducts.push_back(edge.joint == Joint::OneWay || edge.conductance_S > 0 ? 1 : 0);
    }
    const std::vector<std::size_t> floating = floatingRoots();
    bool changed = true;
    for (int round = 0; changed && round < kDiodeRounds; ++round) {
        solve(floating, conducts);
        changed = false;
        for (std::size_t i = 0; i < m_edges.size(); ++i) {
            const Edge& edge = m_edges[i];
            const char now = m_voltages[m_roots[edge.a]] >= m_voltages[m_roots[edge.b]] ? 1 : 0;
            if (edge.oneWay && conducts[i] != now) {
                conducts[i] = now;
                changed = true;
            }
        }
    }
    for (std::size_t node = 0; node < m_nodeCount; ++node) {
        m_voltages[node] = m_voltages[m_roots[node]];
    }
    return m_voltages;
}

} // namespace pumpwright
