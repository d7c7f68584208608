#include "core/checks/sneak_island.h"

#include "core/checks/carried_current.h"
#include "core/checks/net_spread.h"
#include "core/parts/part_kind.h"

#include <algorithm>
#include <limits>

namespace pumpwright {
namespace {

constexpr std::size_t kCutOff = std::numeric_limits<std::size_t>::max();

/// Nets as nodes; terminals that a lost ground cuts off are one more.
class Nodes {
public:
    explicit Nodes(const Survey& survey) : m_survey(survey) {
        for (const Branch& branch : survey.branches()) {
            if (branch.sort == BranchSort::Source) {
                m_poles.insert(branch.fromNet);
                m_poles.insert(branch.toNet);
            }
        }
    }

    bool isPole(std::size_t node) const { return m_poles.contains(node); }
    bool isGround(const End& end) const { return m_survey.features(end.part).ground; }

    /// Terminals that wires join with this one.
    std::set<End> joinedWith(const End& start) const {
        const std::vector<End> ends = m_survey.leads().wiredTo(start);
        return {ends.begin(), ends.end()};
    }

    /// Numbers of the branches that end on one of these terminals, in order. A part's branches stand
    /// together.
    std::vector<std::size_t> branchesOn(const std::set<End>& ends) const {
        std::vector<std::size_t> numbers;
        const std::vector<Branch>& all = m_survey.branches();
        for (const End& end : ends) {
            auto branch =
                std::lower_bound(all.begin(), all.end(), end.part,
                                 [](const Branch& one, const PartId& part) { return one.part < part; });
            for (; branch != all.end() && branch->part == end.part; ++branch) {
                if (branch->fromEnd() == end || branch->toEnd() == end) {
                    numbers.push_back(m_survey.numberOf(*branch));
                }
            }
        }
        std::sort(numbers.begin(), numbers.end());
        numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
        return numbers;
    }

private:
    const Survey& m_survey;
    std::set<std::size_t> m_poles;
};

std::size_t nodeOf(const SneakIsland& island, const End& end, std::size_t net) {
    return island.cutOff.contains(end) ? kCutOff : net;
}

/// Adds everything that hangs together with the branches that are there, short of the poles.
void grow(const Survey& survey, const Nodes& nodes, SneakIsland& island, std::vector<bool>& taken) {
    std::set<std::size_t> seen;
    std::vector<std::size_t> open = island.branches;
    while (!open.empty()) {
        const Branch& branch = survey.branches()[open.back()];
        open.pop_back();
        for (const auto& [end, net] :
             {std::pair{branch.fromEnd(), branch.fromNet}, {branch.toEnd(), branch.toNet}}) {
            const std::size_t node = nodeOf(island, end, net);
            if (node == kCutOff || nodes.isPole(node) || !seen.insert(node).second) {
                continue;
            }
            for (const std::size_t next : survey.branchesAt(node)) {
                if (!taken[next]) {
                    taken[next] = true;
                    island.branches.push_back(next);
                    open.push_back(next);
                }
            }
        }
    }
    std::sort(island.branches.begin(), island.branches.end());
}

std::size_t countOf(const Survey& survey, const SneakIsland& island, BranchSort sort) {
    return static_cast<std::size_t>(
        std::count_if(island.branches.begin(), island.branches.end(),
                      [&](std::size_t number) { return survey.branches()[number].sort == sort; }));
}

bool floats(const Survey& survey, const Nodes& nodes, std::size_t number) {
    const Branch& branch = survey.branches()[number];
    return isConsumer(branch) && !nodes.isPole(branch.fromNet) && !nodes.isPole(branch.toNet);
}

bool mixesPedalAndOthers(const Survey& survey, const SneakIsland& island) {
    bool pedal = false;
    bool other = false;
    for (const std::size_t number : island.branches) {
        const Branch& branch = survey.branches()[number];
        if (isOperated(branch)) {
            const bool byPedal = branch.by == Operator::Pedal;
            pedal = pedal || byPedal;
            other = other || !byPedal;
        }
    }
    return pedal && other;
}

/// Current flows from pole to pole: without both of them nothing flows at all.
bool touchesBothPoles(const Survey& survey, const SneakIsland& island) {
    bool plus = false;
    bool minus = false;
    for (const std::size_t number : island.branches) {
        const Branch& branch = survey.branches()[number];
        for (const auto& [end, net] :
             {std::pair{branch.fromEnd(), branch.fromNet}, {branch.toEnd(), branch.toNet}}) {
            const std::size_t node = nodeOf(island, end, net);
            plus = plus || std::any_of(survey.sources().begin(), survey.sources().end(),
                                       [&](const SourceLeads& one) { return one.source.fromNet == node; });
            minus = minus || std::any_of(survey.sources().begin(), survey.sources().end(),
                                         [&](const SourceLeads& one) { return one.source.toNet == node; });
        }
    }
    return plus && minus;
}

bool isSuspect(const Survey& survey, const Nodes& nodes, const SneakIsland& island) {
    return std::any_of(island.branches.begin(), island.branches.end(),
                       [&](std::size_t number) { return floats(survey, nodes, number); }) ||
           countOf(survey, island, BranchSort::Fuse) > 1 || mixesPedalAndOthers(survey, island);
}

void addSoundIslands(const Survey& survey, const Nodes& nodes, std::vector<SneakIsland>& islands) {
    std::vector<bool> taken(survey.branches().size(), false);
    for (std::size_t i = 0; i < taken.size(); ++i) {
        if (taken[i] || survey.branches()[i].sort == BranchSort::Source) {
            continue;
        }
        SneakIsland island{{i}, {}, {}};
        taken[i] = true;
        grow(survey, nodes, island, taken);
        if (isSuspect(survey, nodes, island) && touchesBothPoles(survey, island)) {
            islands.push_back(std::move(island));
        }
    }
}

/// What depends on one ground point alone, if it is two loads or more.
void addLostGround(const Survey& survey, const Nodes& nodes, const PartId& ground,
                   std::vector<SneakIsland>& islands) {
    const End bolt{ground, kindOf(survey.part(ground)).terminals(survey.part(ground)).front().name};
    SneakIsland island{{}, ground, nodes.joinedWith(bolt)};
    const bool keepsBody = std::any_of(island.cutOff.begin(), island.cutOff.end(),
                                       [&](const End& end) { return end != bolt && nodes.isGround(end); });
    island.branches = nodes.branchesOn(island.cutOff);
    const bool feedsAll = countOf(survey, island, BranchSort::Source) > 0;
    const auto consumers =
        std::count_if(island.branches.begin(), island.branches.end(),
                      [&](std::size_t number) { return isConsumer(survey.branches()[number]); });
    if (keepsBody || feedsAll || consumers < 2) {
        return;
    }
    std::vector<bool> taken(survey.branches().size(), false);
    for (const std::size_t number : island.branches) {
        taken[number] = true;
    }
    grow(survey, nodes, island, taken);
    if (touchesBothPoles(survey, island)) {
        islands.push_back(std::move(island));
    }
}

} // namespace

bool isConsumer(const Branch& branch) {
    return branch.sort == BranchSort::Load || branch.sort == BranchSort::Coil;
}

bool isBrakeLamp(const Survey& survey, const LoadPath& path) {
    if (path.load.sort != LoadSort::Lamp && path.load.sort != LoadSort::Electronic) {
        return false;
    }
    bool pedal = false;
    for (const std::vector<LeadStep>* way : {&path.feed, &path.back}) {
        for (const LeadStep& step : *way) {
            if (step.branch && isOperated(survey.branches()[*step.branch])) {
                if (survey.branches()[*step.branch].by != Operator::Pedal) {
                    return false;
                }
                pedal = true;
            }
        }
    }
    return pedal && survey.features(path.part).contacts.empty();
}

std::vector<SneakIsland> sneakIslands(const Survey& survey) {
    const Nodes nodes(survey);
    std::vector<SneakIsland> islands;
    addSoundIslands(survey, nodes, islands);
    for (const auto& [id, features] : survey.allFeatures()) {
        if (features.ground) {
            addLostGround(survey, nodes, id, islands);
        }
    }
    return islands;
}

} // namespace pumpwright
