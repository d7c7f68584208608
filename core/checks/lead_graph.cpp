#include "core/checks/lead_graph.h"

#include <algorithm>
#include <unordered_set>

namespace pumpwright {

LeadGraph::LeadGraph(const Circuit& circuit, const Nets& nets, const FeaturesOf& features,
                     const std::vector<Branch>& branches)
    : m_nets(nets), m_branches(branches) {
    m_numbers.reserve(nets.netOf.size());
    for (const auto& [end, net] : nets.netOf) {
        m_numbers.emplace(end, m_ends.size());
        m_ends.push_back(&end);
        m_netOfEnd.push_back(net);
    }
    m_edges.resize(m_ends.size());
    m_into.resize(m_ends.size());
    for (const auto& [id, wire] : circuit.wires) {
        const auto from = numberOf(wire.from);
        const auto to = numberOf(wire.to);
        if (from && to) {
            join(*from, *to, &id);
        }
    }
    std::optional<std::size_t> body;
    for (std::size_t i = 0; i < m_ends.size(); ++i) {
        if (features.at(m_ends[i]->part).ground) {
            if (body) {
                join(*body, i, nullptr);
            }
            body = body.value_or(i);
        }
    }
    for (std::size_t i = 0; i < branches.size(); ++i) {
        const std::size_t from = *numberOf(branches[i].fromEnd());
        const std::size_t to = *numberOf(branches[i].toEnd());
        m_edges[from].push_back({to, i, nullptr});
        m_into[to].push_back({from, i, nullptr});
        if (!branches[i].oneWay) {
            m_edges[to].push_back({from, i, nullptr});
            m_into[from].push_back({to, i, nullptr});
        }
    }
}

void LeadGraph::join(std::size_t a, std::size_t b, const WireId* wire) {
    for (auto* edges : {&m_edges, &m_into}) {
        (*edges)[a].push_back({b, std::nullopt, wire});
        (*edges)[b].push_back({a, std::nullopt, wire});
    }
}

std::optional<std::size_t> LeadGraph::numberOf(const End& end) const {
    const auto found = m_numbers.find(end);
    return found == m_numbers.end() ? std::nullopt : std::optional(found->second);
}

LeadStep LeadGraph::stepOf(const Edge& edge) const {
    return {edge.wire == nullptr ? std::nullopt : std::optional(*edge.wire), edge.branch, *m_ends[edge.to]};
}

bool LeadGraph::mayGo(const Edge& edge, std::optional<std::size_t> avoidNet, const MayPass& mayPass) const {
    return !(avoidNet && m_netOfEnd[edge.to] == *avoidNet) &&
           (!edge.branch || mayPass(m_branches[*edge.branch]));
}

std::vector<std::size_t> LeadGraph::spread(std::size_t start, std::optional<std::size_t> goal,
                                           std::optional<std::size_t> avoidNet, const MayPass& mayPass,
                                           Arrivals& arrivals) const {
    arrivals.emplace(start, Arrival{});
    std::vector<std::size_t> order{start};
    for (std::size_t next = 0; next < order.size() && !(goal && arrivals.contains(*goal)); ++next) {
        for (const Edge& edge : m_edges[order[next]]) {
            if (!arrivals.contains(edge.to) && mayGo(edge, avoidNet, mayPass)) {
                arrivals.emplace(edge.to, Arrival{order[next], &edge});
                order.push_back(edge.to);
            }
        }
    }
    return order;
}

std::optional<std::vector<LeadStep>> LeadGraph::way(const End& from, const End& to,
                                                    std::optional<std::size_t> avoidNet,
                                                    const MayPass& mayPass) const {
    const auto start = numberOf(from);
    const auto goal = numberOf(to);
    if (!start || !goal) {
        return std::nullopt;
    }
    Arrivals arrivals;
    spread(*start, goal, avoidNet, mayPass, arrivals);
    if (!arrivals.contains(*goal)) {
        return std::nullopt;
    }
    std::vector<LeadStep> steps;
    for (std::size_t at = *goal; at != *start; at = arrivals.at(at).from) {
        steps.push_back(stepOf(*arrivals.at(at).by));
    }
    std::reverse(steps.begin(), steps.end());
    return steps;
}

std::vector<LeadStep> LeadGraph::reach(const End& from, std::optional<std::size_t> avoidNet,
                                       const MayPass& mayPass) const {
    const auto start = numberOf(from);
    if (!start) {
        return {};
    }
    Arrivals arrivals;
    const std::vector<std::size_t> order = spread(*start, std::nullopt, avoidNet, mayPass, arrivals);
    std::vector<LeadStep> steps;
    for (std::size_t i = 1; i < order.size(); ++i) {
        steps.push_back(stepOf(*arrivals.at(order[i]).by));
    }
    return steps;
}

LeadTree LeadGraph::tree(const End& root, std::optional<std::size_t> avoidNet, bool backwards,
                         const MayPass& mayPass) const {
    const auto number = numberOf(root);
    LeadTree tree(*this, number.value_or(0), backwards);
    if (!number) {
        return tree;
    }
    tree.m_arrivals.resize(m_ends.size());
    std::vector<std::size_t> order{*number};
    for (std::size_t next = 0; next < order.size(); ++next) {
        for (const Edge& edge : (backwards ? m_into : m_edges)[order[next]]) {
            if (edge.to != *number && tree.m_arrivals[edge.to].by == nullptr &&
                mayGo(edge, avoidNet, mayPass)) {
                tree.m_arrivals[edge.to] = {order[next], &edge};
                order.push_back(edge.to);
            }
        }
    }
    return tree;
}

std::vector<LeadStep> LeadGraph::oneWaysInto(const End& end) const {
    std::vector<LeadStep> steps;
    const auto number = numberOf(end);
    for (const Edge& edge : number ? m_into[*number] : std::vector<Edge>{}) {
        if (edge.branch && m_branches[*edge.branch].oneWay) {
            steps.push_back(stepOf(edge));
        }
    }
    return steps;
}

std::vector<LeadGraph::TerminalUse> LeadGraph::terminalUses() const {
    std::vector<TerminalUse> uses;
    uses.reserve(m_ends.size());
    for (std::size_t i = 0; i < m_ends.size(); ++i) {
        TerminalUse use{m_ends[i], m_netOfEnd[i], false, false};
        for (const auto* edges : {&m_edges[i], &m_into[i]}) {
            for (const Edge& edge : *edges) {
                use.wired = use.wired || edge.wire != nullptr;
                use.leadsOn = use.leadsOn || edge.wire == nullptr;
            }
        }
        uses.push_back(use);
    }
    return uses;
}

std::vector<End> LeadGraph::wiredTo(const End& end) const {
    std::vector<std::size_t> order;
    std::unordered_set<std::size_t> seen;
    if (const auto number = numberOf(end)) {
        order.push_back(*number);
        seen.insert(*number);
    }
    for (std::size_t next = 0; next < order.size(); ++next) {
        for (const Edge& edge : m_edges[order[next]]) {
            if (edge.wire != nullptr && seen.insert(edge.to).second) {
                order.push_back(edge.to);
            }
        }
    }
    std::vector<End> ends;
    for (const std::size_t number : order) {
        ends.push_back(*m_ends[number]);
    }
    return ends;
}

bool LeadTree::reaches(const End& end) const {
    const auto number = m_graph->numberOf(end);
    return number && !m_arrivals.empty() && (*number == m_root || m_arrivals[*number].by != nullptr);
}

std::optional<std::vector<LeadStep>> LeadTree::way(const End& end) const {
    if (!reaches(end)) {
        return std::nullopt;
    }
    std::vector<LeadStep> steps;
    for (std::size_t at = *m_graph->numberOf(end); at != m_root; at = m_arrivals[at].from) {
        LeadStep step = m_graph->stepOf(*m_arrivals[at].by);
        if (m_backwards) {
            step.to = *m_graph->m_ends[m_arrivals[at].from];
        }
        steps.push_back(std::move(step));
    }
    if (!m_backwards) {
        std::reverse(steps.begin(), steps.end());
    }
    return steps;
}

} // namespace pumpwright
