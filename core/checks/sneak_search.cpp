#include "core/checks/sneak_search.h"

#include "core/checks/carried_current.h"
#include "core/checks/island_circuit.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <deque>
#include <map>
#include <random>

namespace pumpwright {
namespace {

using Joint = IslandCircuit::Joint;
using Edge = IslandCircuit::Edge;

// Shares of the supply voltage. Common practice, no published source, both.
constexpr double kLampGlows = 0.5; ///< at half its voltage a filament takes a quarter of its power or more
constexpr double kMotorTurns = 0.25;
/// A large island is sampled more thinly, so that a check stays quick: tries times edges squared.
constexpr std::uint64_t kMostWork = 1U << 24U;
constexpr std::uint64_t kLeastTried = 64;
constexpr std::uint64_t kSeed = 20'010'913; ///< any number would do

/// The input at these terminals, or null.
const ControlInput* inputAt(const Features& features, const Branch& branch) {
    for (const ControlInput& input : features.inputs) {
        if (input.plus == branch.from && input.minus == branch.to) {
            return &input;
        }
    }
    return nullptr;
}

/// [V] from which a load does something: what is held in by a command that has gone stays in with less than
/// what pulled it in.
double limit_V(const Survey& survey, const Branch& branch, bool hasOwnWay) {
    const Features& features = survey.features(branch.part);
    const double supply_V = survey.supplyVoltage_V();
    if (branch.sort == BranchSort::Coil) {
        const Coil& coil = features.coils[branch.index];
        return (hasOwnWay ? coil.dropOut_A : coil.pullIn_A) * coil.resistance_ohm;
    }
    if (const ControlInput* input = inputAt(features, branch)) {
        return hasOwnWay ? input->off_V : input->on_V;
    }
    const Load& load = features.loads[branch.index];
    if (load.sort == LoadSort::Motor) {
        return kMotorTurns * supply_V;
    }
    return load.minimum_V > 0 ? load.minimum_V : kLampGlows * supply_V;
}

/// A load of the island, and how it is meant to be fed.
struct Candidate {
    std::size_t edge = 0;
    std::optional<std::size_t> own; ///< number of its load path
    double limit_V = 0;
    bool brakeLamp = false;
    bool commands = false; ///< a coil, an input, or a pump: nobody puts one in series with a load on purpose
    std::optional<std::size_t> fuse; ///< variable of the last fuse before it
};

struct Best {
    IslandState state = 0;
    int cost = 0;
    double voltage_V = 0;
    bool throughLoad = false;
};

class Search {
public:
    Search(const Survey& survey, const SneakIsland& island)
        : m_survey(survey), m_circuit(survey, island), m_sound(survey, {island.branches, {}, {}}),
          m_groundLost(island.lostGround.has_value()) {
        for (std::size_t i = 0; i < m_circuit.edges().size(); ++i) {
            if (m_circuit.edges()[i].joint == Joint::Load) {
                addCandidate(i);
            }
        }
        for (std::size_t i = 0; i < variables(); ++i) {
            m_fuses |= m_circuit.variables()[i].fuse ? stateOf(i) : 0;
        }
    }

    SneakSearch run() {
        SneakSearch search;
        search.combinations = std::exp2(static_cast<double>(variables()));
        if (search.combinations <= static_cast<double>(kMostCombinations)) {
            search.tried = IslandState{1} << variables();
            for (IslandState state = 0; state < search.tried; ++state) {
                look(state);
            }
        } else {
            search.tried = sample();
        }
        for (const auto& [candidate, best] : m_best) {
            search.victims.push_back(victimOf(m_candidates[candidate], best));
        }
        return search;
    }

private:
    std::size_t variables() const { return m_circuit.variables().size(); }

    void addCandidate(std::size_t edge) {
        const std::size_t number = m_circuit.edges()[edge].branch;
        const Branch& branch = m_survey.branches()[number];
        const Features& features = m_survey.features(branch.part);
        Candidate candidate;
        candidate.edge = edge;
        candidate.commands =
            branch.sort == BranchSort::Coil || features.pump || inputAt(features, branch) != nullptr;
        for (const std::size_t path : m_survey.pathsOf(branch.part)) {
            const LoadPath& own = m_survey.loadPaths()[path];
            if (own.branch == number && own.source) {
                candidate.own = path;
                candidate.brakeLamp = isBrakeLamp(m_survey, own);
                candidate.fuse = lastFuse(own);
            }
        }
        candidate.limit_V = limit_V(m_survey, branch, candidate.own.has_value());
        m_candidates.push_back(candidate);
    }

    std::optional<std::size_t> lastFuse(const LoadPath& own) const {
        std::optional<std::size_t> last;
        for (const LeadStep& step : own.feed) {
            for (const Edge& edge : m_circuit.edges()) {
                if (step.branch == edge.branch && edge.joint == Joint::Fuse) {
                    last = edge.variable;
                }
            }
        }
        return last;
    }

    /// States with few changes from rest first, each alone and in pairs, then others at random.
    std::uint64_t sample() {
        const std::uint64_t edges = m_circuit.edges().size();
        const std::uint64_t most = std::clamp(kMostWork / (edges * edges), kLeastTried, kMostCombinations);
        std::uint64_t tried = 0;
        const std::size_t count = std::min(variables(), kMostVariables);
        for (std::size_t i = 0; i < count; ++i) {
            for (std::size_t j = i; j < count && tried < most / 2; ++j, ++tried) {
                look(stateOf(i) | stateOf(j));
            }
        }
        std::mt19937_64 random(kSeed);
        for (; tried < most; ++tried) {
            look(random() & ((IslandState{1} << count) - 1));
        }
        return tried;
    }

    void look(IslandState state) {
        if (!m_circuit.enter(state) || (m_groundLost && !m_sound.enter(state))) {
            return;
        }
        const int cost = costOf(state);
        for (std::size_t i = 0; i < m_candidates.size(); ++i) {
            const auto known = m_best.find(i);
            if (known == m_best.end() || known->second.cost > cost) {
                judge(i, state, cost);
            }
        }
    }

    void judge(std::size_t index, IslandState state, int cost) {
        const Candidate& candidate = m_candidates[index];
        const Edge& edge = m_circuit.edges()[candidate.edge];
        if (m_circuit.isFed(edge)) {
            judgeFed(index, state, cost);
        } else if (m_circuit.mayFloat() && (candidate.own || candidate.commands) &&
                   !(m_groundLost && m_sound.isFed(m_sound.edges()[candidate.edge]))) {
            const double voltage_V = voltageAt(edge);
            if (voltage_V >= candidate.limit_V && voltage_V > 0) {
                m_best[index] = {state, cost, voltage_V, true};
            }
        }
    }

    /// A load that is fed without another load on the way: by its own contacts, as it should be, or not.
    void judgeFed(std::size_t index, IslandState state, int cost) {
        const Candidate& candidate = m_candidates[index];
        const Edge& edge = m_circuit.edges()[candidate.edge];
        const double supply_V = m_survey.supplyVoltage_V();
        if (m_groundLost || !candidate.own) {
            return;
        }
        if (candidate.brakeLamp && !isOn(candidate, state)) {
            m_best[index] = {state, cost, supply_V, false};
        } else if (candidate.fuse && isChanged(state, *candidate.fuse) &&
                   m_circuit.isFedWithoutDiodes(edge)) {
            // Fed over another fuse. Where its own contacts are open and those of something else are not, it
            // would be fed with its own fuse in order as well.
            const bool withoutFault = !isOn(candidate, state) && somethingElseIsOn(candidate, state);
            const IslandState shown = withoutFault ? state & ~stateOf(*candidate.fuse) : state;
            m_best[index] = {shown, costOf(shown), supply_V, false};
        }
    }

    int costOf(IslandState state) const { return std::popcount(state) + 16 * std::popcount(state & m_fuses); }

    double voltageAt(const Edge& edge) {
        const std::vector<double>& shares = m_circuit.voltages();
        const double share = shares[edge.a] - shares[edge.b];
        return (edge.oneWay ? share : std::abs(share)) * m_survey.supplyVoltage_V();
    }

    /// Whether every contact on a load's own way is closed.
    bool isOn(const Candidate& candidate, IslandState state) const {
        const LoadPath& own = m_survey.loadPaths()[*candidate.own];
        return std::all_of(m_circuit.edges().begin(), m_circuit.edges().end(), [&](const Edge& edge) {
            return edge.joint != Joint::Switch || !isOnWay(own, edge.branch) || m_circuit.isShut(edge, state);
        });
    }

    bool somethingElseIsOn(const Candidate& candidate, IslandState state) const {
        return std::any_of(m_candidates.begin(), m_candidates.end(), [&](const Candidate& other) {
            return other.own && !other.commands && other.edge != candidate.edge &&
                   other.fuse != candidate.fuse && other.fuse && !isChanged(state, *other.fuse) &&
                   isOn(other, state);
        });
    }

    static bool isOnWay(const LoadPath& path, std::size_t branch) {
        const auto has = [&](const std::vector<LeadStep>& way) {
            return std::any_of(way.begin(), way.end(),
                               [&](const LeadStep& step) { return step.branch == branch; });
        };
        return has(path.feed) || has(path.back);
    }

    SneakVictim victimOf(const Candidate& candidate, const Best& best) {
        m_circuit.enter(best.state);
        const Edge& edge = m_circuit.edges()[candidate.edge];
        SneakVictim victim{edge.branch, best.voltage_V, candidate.limit_V, {}, {}, {}, best.throughLoad};
        const std::vector<double>& voltages = m_circuit.voltages();
        const bool forward = edge.oneWay || voltages[edge.a] >= voltages[edge.b];
        for (const std::size_t one : way(0, forward ? edge.a : edge.b, candidate.edge, best)) {
            victim.path.push_back(m_circuit.edges()[one].branch);
        }
        victim.path.push_back(edge.branch);
        for (const std::size_t one : way(forward ? edge.b : edge.a, 1, candidate.edge, best)) {
            victim.path.push_back(m_circuit.edges()[one].branch);
        }
        for (std::size_t i = 0; i < variables(); ++i) {
            const IslandCircuit::Variable& variable = m_circuit.variables()[i];
            if (variable.fuse && isChanged(best.state, i)) {
                victim.blown.push_back(variable.part);
            } else if (!variable.fuse && onPath(victim, variable.part)) {
                victim.operated.push_back(variable.part);
            }
        }
        return victim;
    }

    bool onPath(const SneakVictim& victim, const PartId& part) const {
        return std::any_of(victim.path.begin(), victim.path.end(), [&](std::size_t number) {
            const Branch& branch = m_survey.branches()[number];
            return branch.part == part && branch.sort == BranchSort::Contact;
        });
    }

    /// Where current flows from one node to another: the way with the fewest loads.
    std::vector<std::size_t> way(std::size_t from, std::size_t to, std::size_t victim, const Best& best) {
        std::map<std::size_t, std::pair<std::size_t, std::size_t>> cameFrom; // node -> node, edge
        std::deque<std::size_t> open{from};
        std::map<std::size_t, int> loadsTo{{from, 0}};
        while (!open.empty()) {
            const std::size_t node = open.front();
            open.pop_front();
            for (std::size_t i = 0; i < m_circuit.edges().size(); ++i) {
                const Edge& edge = m_circuit.edges()[i];
                if (i == victim || (edge.a != node && edge.b != node) || !flows(edge, node, best)) {
                    continue;
                }
                const std::size_t next = edge.a == node ? edge.b : edge.a;
                const int loads = loadsTo[node] + (edge.joint == Joint::Load ? 1 : 0);
                if (const auto known = loadsTo.find(next); known != loadsTo.end() && known->second <= loads) {
                    continue;
                }
                loadsTo[next] = loads;
                cameFrom[next] = {node, i};
                edge.joint == Joint::Load ? open.push_back(next) : open.push_front(next);
            }
        }
        std::vector<std::size_t> edges;
        for (std::size_t node = to; node != from && cameFrom.contains(node); node = cameFrom[node].first) {
            edges.push_back(cameFrom[node].second);
        }
        std::reverse(edges.begin(), edges.end());
        return edges;
    }

    bool flows(const Edge& edge, std::size_t node, const Best& best) {
        if (edge.oneWay && edge.a != node) {
            return false;
        }
        if (m_circuit.isShut(edge, best.state)) {
            return true;
        }
        const std::vector<double>& voltages = m_circuit.voltages();
        const double drop = voltages[node] - voltages[edge.a == node ? edge.b : edge.a];
        return drop > 0 && (edge.joint == Joint::Resistor || (edge.joint == Joint::Load && best.throughLoad));
    }

    const Survey& m_survey;
    IslandCircuit m_circuit;
    IslandCircuit m_sound; ///< the same with every ground in place
    bool m_groundLost;
    IslandState m_fuses = 0;
    std::vector<Candidate> m_candidates;
    std::map<std::size_t, Best> m_best; ///< by number of the candidate
};

} // namespace

SneakSearch searchSneaks(const Survey& survey, const SneakIsland& island) {
    return Search(survey, island).run();
}

} // namespace pumpwright
