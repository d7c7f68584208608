#include "core/checks/current_loop.h"

#include "core/checks/survey.h"

#include <algorithm>
#include <functional>
#include <optional>

namespace pumpwright {
namespace {

/// Numbers the groups of branches of which any two lie on a common loop; one that lies on no loop is a group
/// of its own. Tarjan's biconnected components, without recursion so that a long chain of parts cannot
/// exhaust the stack.
class LoopFinder {
public:
    LoopFinder(const std::vector<Branch>& branches, std::size_t netCount)
        : m_branches(branches), m_at(netCount), m_order(netCount, 0), m_low(netCount, 0),
          m_groups(branches.size()) {
        for (std::size_t i = 0; i < branches.size(); ++i) {
            if (branches[i].fromNet == branches[i].toNet) {
                m_groups[i] = m_groupCount++;
                continue;
            }
            m_at[branches[i].fromNet].push_back(i);
            m_at[branches[i].toNet].push_back(i);
        }
    }

    const std::vector<std::size_t>& groups() {
        for (std::size_t net = 0; net < m_at.size(); ++net) {
            if (m_order[net] == 0) {
                walkFrom(net);
            }
        }
        return m_groups;
    }

private:
    struct Visit {
        std::size_t net;
        std::optional<std::size_t> arrival; ///< branch that led here
        std::size_t next = 0;               ///< which of the net's branches is looked at next
    };

    void enter(std::size_t net, std::optional<std::size_t> arrival) {
        m_order[net] = m_low[net] = ++m_clock;
        m_visits.push_back({net, arrival});
    }

    void walkFrom(std::size_t root) {
        enter(root, std::nullopt);
        while (!m_visits.empty()) {
            Visit& visit = m_visits.back();
            if (visit.next == m_at[visit.net].size()) {
                leave();
                continue;
            }
            const std::size_t branch = m_at[visit.net][visit.next++];
            const std::size_t other = otherNet(branch, visit.net);
            if (branch == visit.arrival) {
                continue;
            }
            if (m_order[other] == 0) {
                m_open.push_back(branch);
                enter(other, branch);
            } else if (m_order[other] < m_order[visit.net]) {
                m_open.push_back(branch);
                m_low[visit.net] = std::min(m_low[visit.net], m_order[other]);
            }
        }
    }

    void leave() {
        const Visit done = m_visits.back();
        m_visits.pop_back();
        if (!done.arrival) {
            return;
        }
        const std::size_t parent = otherNet(*done.arrival, done.net);
        m_low[parent] = std::min(m_low[parent], m_low[done.net]);
        if (m_low[done.net] < m_order[parent]) {
            return;
        }
        const std::size_t group = m_groupCount++;
        for (std::size_t branch = m_branches.size(); branch != *done.arrival;) {
            branch = m_open.back();
            m_open.pop_back();
            m_groups[branch] = group;
        }
    }

    std::size_t otherNet(std::size_t branch, std::size_t net) const {
        return m_branches[branch].fromNet == net ? m_branches[branch].toNet : m_branches[branch].fromNet;
    }

    const std::vector<Branch>& m_branches;
    std::vector<std::vector<std::size_t>> m_at;
    std::vector<std::size_t> m_order;
    std::vector<std::size_t> m_low;
    std::vector<std::size_t> m_open;
    std::vector<Visit> m_visits;
    std::vector<std::size_t> m_groups;
    std::size_t m_groupCount = 0;
    std::size_t m_clock = 0;
};

using MayPass = std::function<bool(const Branch&)>;

/// Nets that current reaches from `start` (or, backwards, from which it reaches `start`) without passing
/// through the net `end`. Sources themselves are no way.
std::vector<bool> spread(const Survey& survey, std::size_t start, std::size_t end, bool backwards,
                         const MayPass& mayPass) {
    std::vector<bool> reached(survey.nets().nets.size(), false);
    std::vector<std::size_t> open{start};
    reached[start] = true;
    while (!open.empty()) {
        const std::size_t net = open.back();
        open.pop_back();
        if (net == end) {
            continue;
        }
        for (const std::size_t number : survey.branchesAt(net)) {
            const Branch& branch = survey.branches()[number];
            const std::size_t first = backwards ? branch.toNet : branch.fromNet;
            const std::size_t last = backwards ? branch.fromNet : branch.toNet;
            if (branch.sort == BranchSort::Source || !mayPass(branch) || (branch.oneWay && first != net)) {
                continue;
            }
            const std::size_t other = first == net ? last : first;
            if (!reached[other]) {
                reached[other] = true;
                open.push_back(other);
            }
        }
    }
    return reached;
}

SourceReach reachOf(const Survey& survey, const Branch& source, const MayPass& mayPass) {
    return {source.fromNet, source.toNet, spread(survey, source.fromNet, source.toNet, false, mayPass),
            spread(survey, source.toNet, source.fromNet, true, mayPass)};
}

std::vector<SourceReach> reachesOf(const Survey& survey, const MayPass& mayPass) {
    std::vector<SourceReach> reaches;
    for (const Branch& source : survey.branches()) {
        if (source.sort == BranchSort::Source) {
            reaches.push_back(reachOf(survey, source, mayPass));
        }
    }
    return reaches;
}

bool everyButStorage(const Branch& branch) {
    return branch.sort != BranchSort::Storage;
}

bool sameNets(const Branch& branch, std::size_t first, std::size_t second) {
    return (branch.fromNet == first && branch.toNet == second) ||
           (branch.fromNet == second && branch.toNet == first);
}

PlusSide plusSide(const std::vector<SourceReach>& reaches, std::size_t first, std::size_t second) {
    bool firstIsPlus = false;
    bool secondIsPlus = false;
    for (const SourceReach& reach : reaches) {
        firstIsPlus = firstIsPlus || reach.flows(first, second);
        secondIsPlus = secondIsPlus || reach.flows(second, first);
    }
    if (firstIsPlus && secondIsPlus) {
        return PlusSide::Either;
    }
    return firstIsPlus ? PlusSide::First : secondIsPlus ? PlusSide::Second : PlusSide::None;
}

/// Branches at the net that has fewer of them.
const std::vector<std::size_t>& branchesAtEither(const Survey& survey, std::size_t one, std::size_t other) {
    const auto& atOne = survey.branchesAt(one);
    const auto& atOther = survey.branchesAt(other);
    return atOne.size() <= atOther.size() ? atOne : atOther;
}

bool joinedDirectly(const Survey& survey, std::size_t first, std::size_t second) {
    const auto& near = branchesAtEither(survey, first, second);
    return std::any_of(near.begin(), near.end(), [&](std::size_t number) {
        return conducts(survey.branches()[number]) && sameNets(survey.branches()[number], first, second);
    });
}

} // namespace

std::vector<LoopState> loopStates(const Survey& survey) {
    const std::vector<Branch>& branches = survey.branches();
    const std::vector<std::size_t> groups = LoopFinder(branches, survey.nets().nets.size()).groups();
    std::vector<LoopState> states(branches.size(), LoopState::None);
    std::vector<std::size_t> sizes(branches.size() + 1, 0);
    for (const std::size_t group : groups) {
        ++sizes[group];
    }
    for (std::size_t s = 0; s < branches.size(); ++s) {
        if (branches[s].sort != BranchSort::Source || sizes[groups[s]] < 2) {
            continue;
        }
        states[s] = LoopState::Loop;
        const SourceReach reach = reachOf(survey, branches[s], everyButStorage);
        for (std::size_t i = 0; i < branches.size(); ++i) {
            const Branch& one = branches[i];
            if (one.sort == BranchSort::Source || groups[i] != groups[s] || states[i] == LoopState::Loop) {
                continue;
            }
            // A diode may stand against the source on purpose, to take up a winding's current; a capacitor
            // carries none for long.
            const bool flows = one.sort == BranchSort::Rectifier || one.sort == BranchSort::Storage ||
                               reach.flows(one.fromNet, one.toNet) ||
                               (!one.oneWay && reach.flows(one.toNet, one.fromNet));
            states[i] = flows ? LoopState::Loop : LoopState::Blocked;
        }
    }
    return states;
}

PlusSide plusSide(const Survey& survey, std::size_t first, std::size_t second) {
    const auto without = [&](bool overLoads) {
        return reachesOf(survey, [&](const Branch& branch) {
            return (overLoads ? everyButStorage(branch) : conducts(branch)) &&
                   !sameNets(branch, first, second);
        });
    };
    const PlusSide direct = joinedDirectly(survey, first, second)
                                ? plusSide(without(false), first, second)
                                : plusSide(survey.sourceReaches(), first, second);
    return direct != PlusSide::None ? direct : plusSide(without(true), first, second);
}

std::vector<SourceReach> sourceReaches(const Survey& survey) {
    return reachesOf(survey, conducts);
}

bool isWinding(const Survey& survey, const Branch& branch) {
    return branch.sort == BranchSort::Coil ||
           (branch.sort == BranchSort::Load &&
            survey.features(branch.part).loads[branch.index].sort == LoadSort::Motor);
}

bool liesAcrossWinding(const Survey& survey, const Branch& branch) {
    const auto& near = branchesAtEither(survey, branch.fromNet, branch.toNet);
    return std::any_of(near.begin(), near.end(), [&](std::size_t number) {
        const Branch& other = survey.branches()[number];
        return isWinding(survey, other) && sameNets(other, branch.fromNet, branch.toNet);
    });
}

} // namespace pumpwright
